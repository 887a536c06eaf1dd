"""The command line without a screen: check, warmup, picture, samples."""

from __future__ import annotations

import argparse
import json
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from app.screen import need_libraries
from app.sources import SourceError, load_catalogue, open_sheet
from app.tables import write_warmup_csv
from core.errors import HeaterloomError
from core.results import NOMINAL
from core.samples import sample_bytes, sample_names

if TYPE_CHECKING:
    from core.catalogue import Catalogue
    from core.switch_on import SwitchOn

COMMANDS = ("check", "warmup", "picture", "samples")

OK, FAULTS, UNUSABLE = 0, 1, 2


def parser() -> argparse.ArgumentParser:
    """The grammar of the command line."""
    top = argparse.ArgumentParser(
        prog="heaterloom",
        description="Lay out the heater wiring of a valve amplifier and see every heater solved.",
        epilog="Without a command, SHEET is opened in the desktop program; without SHEET, a built-in sample.",
    )
    commands = top.add_subparsers(dest="command", metavar="COMMAND")
    check = commands.add_parser("check", help="solve a sheet and list what the rules find")
    check.add_argument("sheet", metavar="SHEET", help="a sheet file, or the name of a built-in sample")
    check.add_argument("--json", action="store_true", help="print one JSON object")
    _add_warmup(commands)
    picture = commands.add_parser("picture", help="draw a sheet into a file")
    picture.add_argument("sheet", metavar="SHEET", help="a sheet file, or the name of a built-in sample")
    picture.add_argument("file", metavar="FILE", help="the picture to write: .svg, .png or .pdf")
    picture.add_argument(
        "--no-values", action="store_true", help="the wiring only, without figures and marks"
    )
    picture.add_argument("--dark", action="store_true", help="pale ink on dark paper")
    picture.add_argument(
        "--title-block", action="store_true", help="with title, mains and a line for the date"
    )
    picture.add_argument(
        "--condition",
        choices=("nominal", "low", "high", "cold"),
        default="nominal",
        help="the mains it is shown at, or the instant of switch-on",
    )
    samples = commands.add_parser("samples", help="list the built-in sheets, or write one out")
    samples.add_argument("name", metavar="NAME", nargs="?", help="the sheet to write to standard output")
    return top


def _add_warmup(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    warmup = commands.add_parser("warmup", help="switch a sheet on and follow every heater until it is warm")
    warmup.add_argument("sheet", metavar="SHEET", help="a sheet file, or the name of a built-in sample")
    warmup.add_argument(
        "--seconds", type=float, default=60.0, metavar="N", help="how long it is followed, 0.1 to 3600; 60"
    )
    warmup.add_argument(
        "--dip",
        type=float,
        default=5.0,
        metavar="N",
        help="seconds without mains before a second start; 0: none",
    )
    warmup.add_argument("--dark", action="store_true", help="pale lines on dark paper")
    output = warmup.add_mutually_exclusive_group()
    output.add_argument("--json", action="store_true", help="print one JSON object")
    output.add_argument("--csv", metavar="FILE", help="write a table, one row a time")
    output.add_argument("--picture", metavar="FILE", help="draw it over time: .svg, .png or .pdf")


def run(arguments: list[str]) -> int:
    """Carry out a command; returns the exit status: 0 no fault, 1 at least one fault, 2 unusable input."""
    options = parser().parse_args(arguments)
    action = {"check": _check, "warmup": _warmup, "picture": _picture, "samples": _samples}[options.command]
    try:
        return action(options)
    except HeaterloomError as error:
        print(f"heaterloom: {error}", file=sys.stderr)
        return UNUSABLE


def _check(options: argparse.Namespace) -> int:
    from core.assess import assess  # noqa: PLC0415 - numerics only where they are needed
    from core.report import check_report, report_lines  # noqa: PLC0415

    sheet = open_sheet(options.sheet).sheet
    assessment = assess(sheet, _catalogue().with_types(sheet.types))
    if options.json:
        print(json.dumps(check_report(assessment), ensure_ascii=False, indent=1))
    else:
        print("\n".join(report_lines(assessment)))
    return FAULTS if any(finding.severity == "fault" for finding in assessment.findings) else OK


LEAST_S, MOST_S = 0.1, 3600.0


def _warmup(options: argparse.Namespace) -> int:
    from core.switch_on import Wish, switch_on  # noqa: PLC0415 - numerics only where they are needed
    from core.warmup_report import account_lines, warmup_report  # noqa: PLC0415

    seconds, dip_s = _within(options.seconds, LEAST_S, "--seconds"), _within(options.dip, 0.0, "--dip")
    target = _picture_target(options.picture) if options.picture else None
    sheet = open_sheet(options.sheet).sheet
    answer = switch_on(sheet, _catalogue().with_types(sheet.types), Wish(seconds, dip_s or None))
    if options.json:
        print(json.dumps(warmup_report(answer), ensure_ascii=False, indent=1))
    elif options.csv:
        write_warmup_csv(answer, NOMINAL, Path(options.csv))
    elif target:
        _draw_warmup(answer, target, options.dark)
    else:
        print("\n".join(account_lines(answer)))
    return FAULTS if any(finding.severity == "fault" for finding in answer.findings) else OK


def _picture_target(name: str) -> Path:
    target = Path(name)
    if target.suffix.lower() not in {".svg", ".png", ".pdf"}:
        raise SourceError(f"{target} does not say which kind of picture: end its name in .svg, .png or .pdf.")
    return target


def _draw_warmup(answer: SwitchOn, target: Path, dark: bool) -> None:
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    need_libraries(os.environ)
    from PySide6.QtWidgets import QApplication  # noqa: PLC0415

    from app.pictures.warmup_plot import write_warmup_picture  # noqa: PLC0415 - Qt only where it is needed
    from app.theme import load_fonts  # noqa: PLC0415

    application = QApplication.instance() or QApplication(["heaterloom"])
    load_fonts()
    write_warmup_picture(answer, NOMINAL, target, dark)
    del application


def _within(value: float, least: float, name: str) -> float:
    if not least <= value <= MOST_S:
        raise SourceError(f"{name} {value:g} is out of range: {least:g} to {MOST_S:g} seconds are expected.")
    return value


def _catalogue() -> Catalogue:
    """The built-in types and the user's own; what is wrong with the latter is said."""
    catalogue, problems = load_catalogue()
    for problem in problems:
        print(f"heaterloom: own types ignored: {problem}", file=sys.stderr)
    return catalogue


def _picture(options: argparse.Namespace) -> int:
    target = _picture_target(options.file)
    sheet = open_sheet(options.sheet).sheet
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    need_libraries(os.environ)
    from app.pictures.files import write_picture  # noqa: PLC0415 - Qt only where it is needed
    from app.pictures.options import PictureOptions, condition_named  # noqa: PLC0415

    wanted = PictureOptions(values=not options.no_values, dark=options.dark, title_block=options.title_block)
    condition = condition_named(options.condition, sheet.mains)
    write_picture(sheet, _catalogue(), target, condition, wanted)
    return OK


def _samples(options: argparse.Namespace) -> int:
    if options.name is None:
        print("\n".join(sample_names()))
        return OK
    if options.name not in sample_names():
        raise SourceError(f"There is no built-in sheet {options.name}: {', '.join(sample_names())}.")
    sys.stdout.buffer.write(sample_bytes(options.name))
    sys.stdout.buffer.flush()
    return OK
