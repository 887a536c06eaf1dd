"""The fields of a part, a wire or the sheet: names, how they are read, and what stands for a default.

A form is a value; reading an input and making the edit are pure. Nothing here knows a widget.
"""

from __future__ import annotations

from dataclasses import dataclass
from types import NoneType, UnionType
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

import msgspec
from PySide6.QtCore import QCoreApplication

from app.kinds import kind_word
from app.panes.defaults import stand_in
from app.panes.figures import exact_text
from app.panes.gauge import parse_gauge
from app.panes.reading import read_colour, read_place, read_terminal
from app.panes.words import gauge_text, length_text
from app.speech import spoken
from core import edits
from core.catalogue import Catalogue
from core.edits import Edit
from core.edits.pairs import set_pair
from core.errors import QuantityError
from core.fields import label_of
from core.sheet import REMARK_KINDS, AnyPart, Mains, Sheet, Tube, Wire
from core.units import FIELD_DIMENSIONS, Dimension, parse

Role = Literal["number", "flag", "choice", "text", "type", "id", "gauge", "place"]
SHEET = ""
_UNIONS = (Union, UnionType)


@dataclass(frozen=True)
class Field:
    """One row of a form. ``placeholder`` is what counts while the field is empty; ``default`` its value."""

    name: str
    label: str
    role: Role
    text: str
    placeholder: str = ""
    dimension: Dimension | None = None
    choices: tuple[str, ...] = ()
    checked: bool = False
    required: bool = False
    default: Any = None


@dataclass(frozen=True)
class Form:
    """All fields of one part, wire, or (subject ``SHEET``) the sheet itself."""

    subject: str
    heading: str
    kind: str
    fields: tuple[Field, ...]


def form_of(sheet: Sheet, catalogue: Catalogue, subject: str) -> Form | None:
    """The form of a part or wire by id, or of the sheet; None where there is no such part or wire."""
    if subject == SHEET:
        return _sheet_form(sheet)
    part = sheet.part_by_id.get(subject)
    if part is not None:
        return _part_form(sheet, catalogue, part)
    wire = sheet.wire_by_id.get(subject)
    return _wire_form(wire) if wire is not None else None


def pair_form(sheet: Sheet, pair: tuple[str, str]) -> Form:
    """The form of a twisted pair: that of its first wire, whose gauge, length and colour are those of both."""
    heading = QCoreApplication.translate("fields", "Pair {first} and {second}")
    form = _wire_form(sheet.wire_by_id[pair[0]])
    return Form(form.subject, heading.format(first=pair[0], second=pair[1]), form.kind, form.fields)


def _label(name: str) -> str:
    return spoken(label_of(name))


def _number(name: str, value: float | None, required: bool = True) -> Field:
    dimension = FIELD_DIMENSIONS[name]
    text = "" if value is None else exact_text(value, dimension)
    return Field(name, _label(name), "number", text, dimension=dimension, required=required)


def _sheet_form(sheet: Sheet) -> Form:
    mains = sheet.mains
    numbers = [_number(name, getattr(mains, name)) for name in ("nominal_v", "low_pct", "high_pct", "hz")]
    title = Field("title", QCoreApplication.translate("fields", "title"), "text", sheet.title)
    heading = QCoreApplication.translate("fields", "The sheet")
    return Form(SHEET, heading, "sheet", (title, *numbers, _number("ambient_c", sheet.ambient_c)))


def _id_field(subject: str) -> Field:
    return Field("id", QCoreApplication.translate("fields", "id"), "id", subject, required=True)


def _wire_form(wire: Wire) -> Form:
    strap = QCoreApplication.translate("fields", "none (ideal strap)")
    plain = QCoreApplication.translate("fields", "not given")
    translate = QCoreApplication.translate
    fields = (
        _id_field(wire.id),
        Field("start", translate("fields", "from"), "text", wire.start, required=True),
        Field("end", translate("fields", "to"), "text", wire.end, required=True),
        Field("gauge", translate("fields", "gauge"), "gauge", gauge_text(wire), strap),
        Field("length_m", _label("length_m"), "number", length_text(wire), strap, Dimension.METRES),
        Field("colour", translate("fields", "colour"), "text", wire.colour or "", plain),
        Field("twist", translate("fields", "twisted pair"), "text", wire.twist or "", plain),
    )
    return Form(wire.id, translate("fields", "Wire {id}").format(id=wire.id), "wire", fields)


def _part_form(sheet: Sheet, catalogue: Catalogue, part: AnyPart) -> Form:
    hints = get_type_hints(type(part))
    fields = [_id_field(part.id)]
    for info in msgspec.structs.fields(type(part)):
        if info.name not in ("id", "at", "turn", "mirror") and not _pointless(catalogue, part, info.name):
            fields.append(_part_field(sheet, catalogue, part, info, hints[info.name]))
    place = ", ".join(exact_text(number, Dimension.NUMBER) for number in part.at)
    fields.append(Field("at", _label("at"), "place", place, required=True))
    if part.kind not in REMARK_KINDS:
        turns = ("0", "90", "180", "270")
        turn = QCoreApplication.translate("fields", "turned by")
        fields.append(Field("turn", turn, "choice", str(part.turn), choices=turns))
        if not isinstance(part, Tube):
            fields.append(Field("mirror", _label("mirror"), "flag", "", checked=part.mirror, default=False))
    heading = f"{kind_word(part.kind)} {part.id}"
    return Form(part.id, heading[0].upper() + heading[1:], part.kind, tuple(fields))


def _pointless(catalogue: Catalogue, part: AnyPart, name: str) -> bool:
    """Whether a field means nothing here: one rating cannot override that of several heater sections."""
    if name not in ("rated_v", "rated_a") or not isinstance(part, Tube) or getattr(part, name) is not None:
        return False
    found = catalogue.tube(part.type)
    return found is not None and len(found.sections) > 1


def _part_field(sheet: Sheet, catalogue: Catalogue, part: AnyPart, info: Any, hint: Any) -> Field:
    value, label = getattr(part, info.name), _label(info.name)
    inner, _ = _without_none(hint)
    required = info.required
    if inner is bool:
        return Field(info.name, label, "flag", "", checked=bool(value), default=info.default)
    if get_origin(inner) is Literal:
        choices = tuple(str(choice) for choice in get_args(inner))
        return Field(info.name, label, "choice", str(value), choices=choices, default=info.default)
    default = None if required else info.default
    placeholder = "" if required else stand_in(sheet, catalogue, part, info.name, default)
    if inner in (float, int):
        dimension = FIELD_DIMENSIONS.get(info.name, Dimension.NUMBER)
        is_default = not required and value == default
        text = "" if value is None or is_default else exact_text(value, dimension)
        return Field(
            info.name, label, "number", text, placeholder, dimension, required=required, default=default
        )
    role: Role = "type" if info.name == "type" else "text"
    return Field(info.name, label, role, value or "", placeholder, required=required, default=default)


def _without_none(hint: Any) -> tuple[Any, bool]:
    if get_origin(hint) in _UNIONS:
        kept = [member for member in get_args(hint) if member is not NoneType]
        return (kept[0] if len(kept) == 1 else hint), len(kept) < len(get_args(hint))
    return hint, False


def edit_of(form: Form, field: Field, given: str | bool) -> Edit:
    """The edit that puts an input into a field.

    Raises QuantityError where the input is not understood; the edit itself raises EditError where it cannot
    be carried out.
    """
    if form.subject == SHEET:
        return _sheet_edit(field, str(given))
    value = _read(field, given)
    if field.role == "id":
        return edits.rename(form.subject, value)
    if form.kind == "wire":
        return _wire_edit(form.subject, field, value, str(given))
    if form.kind == Tube.__struct_config__.tag and field.name == "type":
        return edits.replace_type(form.subject, value)
    return edits.set_part(form.subject, **{field.name: value})


def _wire_edit(wire_id: str, field: Field, value: Any, given: str) -> Edit:
    if field.role == "gauge":
        return set_pair(wire_id, **parse_gauge(given))
    if field.name == "colour":
        return set_pair(wire_id, colour=read_colour(given))
    if field.name in ("start", "end"):
        return lambda sheet: edits.set_wire(wire_id, **{field.name: read_terminal(str(value), sheet)})(sheet)
    if field.name == "length_m":
        return set_pair(wire_id, length_m=value)
    return edits.set_wire(wire_id, **{field.name: value})


def _read(field: Field, given: str | bool) -> Any:
    if isinstance(given, bool):
        return given
    text = given.strip()
    if field.name == "turn":
        return int(text)
    if field.role == "choice":
        return text
    if not text:
        if field.required:
            needed = QCoreApplication.translate("fields", "Nothing is entered; {label} cannot be left out.")
            raise QuantityError(needed.format(label=field.label))
        return field.default
    if field.role == "number":
        return parse(text, field.dimension or Dimension.NUMBER)
    return read_place(text) if field.role == "place" else text


def _sheet_edit(field: Field, text: str) -> Edit:
    value = _read(field, text)
    if field.name == "title":
        return edits.set_sheet(title=value or "Untitled")
    if field.name == "ambient_c":
        return edits.set_sheet(ambient_c=value)

    def edit(sheet: Sheet) -> Sheet:
        mains: Mains = msgspec.structs.replace(sheet.mains, **{field.name: value})
        return edits.set_sheet(mains=mains)(sheet)

    return edit


def undo_text(form: Form, field: Field) -> str:
    """What the menu shows after the word Undo: ``Set R1 resistance``."""
    if form.subject == SHEET:
        if field.name == "title":
            return QCoreApplication.translate("fields", "Rename sheet")
        return QCoreApplication.translate("fields", "Set {label}").format(label=field.label)
    if field.role == "id":
        return QCoreApplication.translate("fields", "Rename {id}").format(id=form.subject)
    named = QCoreApplication.translate("fields", "Set {id} {label}")
    return named.format(id=form.subject, label=field.label)
