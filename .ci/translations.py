"""What is to be translated: gather it from the source, keep the files in step, make what the program loads.

    python .ci/translations.py extract     bring resources/languages/*.ts in step with the source
    python .ci/translations.py release     make the .qm files from them
    python .ci/translations.py missing     list what a language still lacks

Texts are found in the code as whole literals, by themselves or in a table with a name:
``self.tr("…")`` (context: the class), ``translate("context", "…")``
and ``QT_TRANSLATE_NOOP("context", "…")``, functions of a module that hand their text on to ``translate``, and
``sentence("…")`` (context ``model``). Anything else in these places is refused, as nobody could translate it.
"""

from __future__ import annotations

import ast
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "resources" / "languages"
PACKAGES = ("app", "core")
MODEL = "model"
Message = tuple[str, str]
"""Context and source text."""
Translations = dict[Message, str]


class NotLiteralError(Exception):
    """A text to be translated that is no whole literal."""


def gather(root: Path = ROOT) -> dict[Message, str]:
    """Every text to be translated, with the file it stands in first.

    Raises
    ------
    NotLiteralError
        With every place where the text cannot be found without running the program.
    """
    trees = {
        path.relative_to(root).with_suffix("").as_posix().replace("/", "."): ast.parse(
            path.read_text("utf-8")
        )
        for package in PACKAGES
        for path in sorted((root / package).rglob("*.py"))
    }
    speakers = {
        (module.removesuffix(".__init__"), name): context
        for module, tree in trees.items()
        for name, context in _speakers(tree)
    }
    found: dict[Message, str] = {}
    refused: list[str] = []
    for module, tree in trees.items():
        reader = _Reader(module, _speakers_known_in(tree, module, speakers), _bound_in(tree))
        reader.visit(tree)
        for message in reader.found:
            found.setdefault(message, f"{module.replace('.', '/')}.py")
        refused += reader.refused
    if refused:
        raise NotLiteralError("\n".join(refused))
    return found


def _speakers(tree: ast.Module) -> Iterator[tuple[str, str]]:
    """Functions of a module that translate the text they are given, with their context."""
    for node in tree.body:
        if isinstance(node, ast.FunctionDef) and isinstance(node.body[-1], ast.Return):
            call = node.body[-1].value
            given = {argument.arg for argument in node.args.args}
            if isinstance(call, ast.Call) and _called(call) == "translate" and len(call.args) == 2:
                context, text = call.args
                if isinstance(context, ast.Constant) and isinstance(text, ast.Name) and text.id in given:
                    yield node.name, str(context.value)


def _speakers_known_in(tree: ast.Module, module: str, speakers: dict[tuple[str, str], str]) -> dict[str, str]:
    """Contexts of the speakers that a module defines or imports, by the name they are called with there."""
    known = {name: context for (home, name), context in speakers.items() if home == module}
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module:
            for alias in node.names:
                here = alias.asname or alias.name
                if (node.module, alias.name) in speakers:
                    known[here] = speakers[node.module, alias.name]
                for (home, name), context in speakers.items():
                    if home == f"{node.module}.{alias.name}":
                        known[f"{here}.{name}"] = context
    return known


def _called(call: ast.Call) -> str:
    """The last name of what is called."""
    func = call.func
    return func.id if isinstance(func, ast.Name) else func.attr if isinstance(func, ast.Attribute) else ""


class _Reader(ast.NodeVisitor):
    """Finds the texts of one module."""

    def __init__(self, module: str, speakers: dict[str, str], bound: Mapping[str, list[ast.expr]]) -> None:
        self.module = module
        self.bound = bound
        self.speakers = speakers
        self.classes: list[str] = []
        self.found: list[Message] = []
        self.refused: list[str] = []

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        self.classes.append(node.name)
        self.generic_visit(node)
        self.classes.pop()

    def visit_Call(self, node: ast.Call) -> None:
        for context, text in self._asked(node):
            texts = _literals(text, self.bound)
            if texts is None:
                self.refused.append(f"{self.module}, line {node.lineno}: {ast.unparse(node)[:90]}")
            self.found += [(context, each) for each in texts or ()]
        self.generic_visit(node)

    def _asked(self, call: ast.Call) -> Iterator[tuple[str, ast.expr]]:
        """Context and text of a call that translates."""
        name, arguments = _called(call), call.args
        if name in ("translate", "QT_TRANSLATE_NOOP") and len(arguments) > 1:
            context, text = arguments[:2]
            if not isinstance(context, ast.Constant):
                return
            handed_on = isinstance(text, ast.Name) and context.value in self.speakers.values()
            if (context.value != MODEL and not handed_on) or _literals(text, self.bound):
                yield str(context.value), text
        elif name == "sentence" and arguments:
            yield MODEL, arguments[0]
        elif arguments:
            spelled = ast.unparse(call.func)
            if spelled in self.speakers:
                yield self.speakers[spelled], arguments[0]
            elif name == "tr" and spelled == "self.tr" and self.classes:
                yield self.classes[-1], arguments[0]
            elif name == "tr":
                # whose class would be the context cannot be seen here
                yield spelled, ast.Name("unknown")


def _bound_in(tree: ast.Module) -> dict[str, list[ast.expr]]:
    """What each plain name of a module is given, or is taken from in a loop."""
    found: dict[str, list[ast.expr]] = {}
    for node in ast.walk(tree):
        match node:
            case ast.Assign(targets=targets, value=value):
                pass
            case ast.AnnAssign(target=target, value=ast.expr() as value):
                targets = [target]
            case ast.For(target=target, iter=value) | ast.comprehension(target=target, iter=value):
                targets = [target]
            case _:
                continue
        for target in targets:
            if isinstance(target, ast.Name):
                found.setdefault(target.id, []).append(value)
    return found


def _literals(node: ast.expr, bound: Mapping[str, list[ast.expr]]) -> list[str] | None:
    """The texts that an expression may stand for: a literal, a choice, a table, or a name of these; else None."""
    match node:
        case ast.Constant(value=str(text)):
            return [text]
        case ast.IfExp():
            parts = [node.body, node.orelse]
        case ast.Dict():
            parts = node.values
        case ast.Tuple() | ast.List():
            parts = node.elts
        case ast.Subscript():
            parts = [node.value]
        case ast.Name(id=name) if bound.get(name):
            parts, bound = bound[name], {**bound, name: []}
        case _:
            return None
    found = [_literals(part, bound) for part in parts]
    return None if not found or None in found else [text for texts in found for text in texts or ()]


def read(path: Path) -> Translations:
    """The translations of a .ts file; empty text where one is not finished."""
    found: Translations = {}
    for context in ET.parse(path).getroot().iter("context"):
        for message in context.iter("message"):
            told = message.find("translation")
            finished = told is not None and told.get("type") is None
            text = (told.text or "") if told is not None and finished else ""
            found[context.findtext("name", ""), message.findtext("source", "")] = text
    return found


def write(path: Path, language: str, messages: Iterable[Message], translations: Translations) -> None:
    """Write a .ts file: contexts by name, texts in the order of the source."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    contexts: dict[str, list[str]] = {}
    for context, source in messages:
        contexts.setdefault(context, []).append(source)
    for name in sorted(contexts):
        context = ET.SubElement(root, "context")
        ET.SubElement(context, "name").text = name
        for source in contexts[name]:
            message = ET.SubElement(context, "message")
            ET.SubElement(message, "source").text = source
            told = ET.SubElement(message, "translation")
            told.text = translations.get((name, source), "")
            if not told.text:
                told.set("type", "unfinished")
    ET.indent(root, " ")
    text = ET.tostring(root, "unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{text}\n', "utf-8")


def release(path: Path, target: Path) -> None:
    """Make the file that the program loads from a .ts file."""
    import PySide6  # noqa: PLC0415 - to gather texts nothing but Python is needed

    folder = Path(PySide6.__file__).parent
    tool = next(one for one in (folder / "lrelease", folder / "lrelease.exe") if one.exists())
    command = [str(tool), "-silent", "-nounfinished", str(path), "-qm", str(target)]
    subprocess.run(command, check=True, capture_output=True)


def languages() -> list[Path]:
    """The .ts files."""
    return sorted(FOLDER.glob("*.ts"))


def main(task: str) -> None:
    """Carry out one task."""
    messages = gather()
    for path in languages():
        if task == "extract":
            write(path, path.stem.rpartition("_")[2], messages, read(path))
        elif task == "release":
            release(path, path.with_suffix(".qm"))
        else:
            known = read(path)
            for context, source in messages:
                if not known.get((context, source)):
                    print(f"{path.name}: {context}: {source}")


if __name__ == "__main__":
    if sys.argv[1:] not in (["extract"], ["release"], ["missing"]):
        sys.exit(__doc__)
    main(sys.argv[1])
