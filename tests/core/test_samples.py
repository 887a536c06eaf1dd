"""The built-in sheets: they load, and the rules say of them what they are meant to show."""

from __future__ import annotations

import pytest

from core.catalogue import load_builtin
from core.samples import sample_bytes, sample_names, sample_title
from core.storage import dump, load
from core.switch_on import Wish, switch_on
from tests.core.rule_sheets import assessed, findings

STARTS = ("cold-start", "cold-start-thermistor", "cold-start-relay")
MISTAKES = {"half-heated", "pin-not-heater", "heater-cathode-voltage", "supply-overload", "second-reference"}


def test_the_first_sample_is_the_amplifier() -> None:
    assert sample_names() == (
        "rehearsal-amplifier",
        "twelve-volt-bench",
        "mains-string-radio",
        "five-mistakes",
        "cold-start",
        "cold-start-thermistor",
        "cold-start-relay",
    )


@pytest.mark.parametrize("name", sample_names())
def test_samples_load_and_are_written_as_the_program_writes_them(name: str) -> None:
    sheet = load(sample_bytes(name), name)
    assert dump(sheet) == sample_bytes(name)
    assert sample_title(name) == sheet.title


def test_an_unknown_sample_is_an_error() -> None:
    with pytest.raises(KeyError):
        sample_bytes("no such sheet")
    with pytest.raises(KeyError):
        sample_bytes("../samples/rehearsal-amplifier")


@pytest.mark.parametrize("name", ["rehearsal-amplifier", "twelve-volt-bench", *STARTS])
def test_the_clean_samples_raise_nothing_but_notes(name: str) -> None:
    assert {one.severity for one in findings(load(sample_bytes(name)))} <= {"note"}


def test_the_mains_string_raises_its_usual_caution_only() -> None:
    found = [one for one in findings(load(sample_bytes("mains-string-radio"))) if one.severity != "note"]
    assert [(one.rule, one.severity) for one in found] == [("live-chassis", "caution")]


def test_five_mistakes_are_five() -> None:
    found = [one for one in findings(load(sample_bytes("five-mistakes"))) if one.severity != "note"]
    assert {one.rule for one in found} == MISTAKES
    # one place each, however many conditions
    assert len({(one.rule, one.where) for one in found}) == 5


@pytest.mark.parametrize("name", sample_names())
def test_sockets_stand_apart_on_the_grid(name: str) -> None:
    sheet = load(sample_bytes(name))
    sockets = [part.at for part in sheet.parts if part.kind == "tube"]
    assert all(x % 20 == 0 and y % 20 == 0 for x, y in (part.at for part in sheet.parts))
    apart = [max(abs(a[0] - b[0]), abs(a[1] - b[1])) for a in sockets for b in sockets if a != b]
    assert min(apart) >= 180
    assert max(x for x, _ in sockets) < 800


@pytest.mark.parametrize("name", sample_names())
def test_samples_are_solved_at_every_condition(name: str) -> None:
    points = assessed(load(sample_bytes(name))).points
    assert len(points) == 4
    assert all(not point.unsolved and point.residual_a < 1e-9 for point in points.values())


@pytest.mark.parametrize(("name", "starts"), [*zip(STARTS, (False, True, True), strict=True)])
def test_the_cold_start_fails_as_drawn_and_works_with_a_soft_start(name: str, starts: bool) -> None:
    answer = switch_on(load(sample_bytes(name)), load_builtin(), Wish(seconds=60.0, dip_s=None))
    summary = answer.runs["nominal"].summary
    assert summary.supplies["U1"].starts == starts
    assert summary.supplies["U1"].decided
    assert [finding.rule for finding in answer.findings] == ([] if starts else ["supply-will-not-start"])
    assert (summary.ready_s is not None) == starts


def test_the_relay_gives_the_heaters_their_volts_back() -> None:
    ends = {}
    for name in STARTS[1:]:
        answer = switch_on(load(sample_bytes(name)), load_builtin(), Wish(seconds=300.0, dip_s=None))
        ends[name] = answer.runs["nominal"].traces().heaters["V3:4-5"].v[-1] / 6.3
    assert 0.90 < ends[STARTS[1]] < 0.93
    assert 0.99 < ends[STARTS[2]] < 1.0
