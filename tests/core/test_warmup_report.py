"""What switching on tells: data, lines, table and verdict, held against a run made up by hand."""

from __future__ import annotations

import csv
import io
import json
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.results import Unsolved, sentence
from core.warmup.results import Bound, Event
from core.warmup_report import account_lines, remarks, verdict, warmup_csv, warmup_report
from tests.core.made_up_warmup import FAULT, GRID, MadeUpAnswer, heater, made_up, supply, with_parts

TWO = {"V1": (3.0, 1.0), "V2": (6.0, 1.62)}


def told(answer: MadeUpAnswer) -> str:
    return "\n".join(account_lines(answer)).replace("\u2009", " ")


def said(answer: MadeUpAnswer) -> str:
    run = answer.runs["nominal"]
    return str(verdict(run.summary, run.end_s)).replace("\u2009", " ")


def with_summary(answer: MadeUpAnswer, **changes) -> MadeUpAnswer:
    import msgspec

    run = answer.runs["nominal"]
    summary = msgspec.structs.replace(run.summary, **changes)
    return replace(answer, runs={"nominal": replace(run, summary=summary)})


def test_the_object_is_the_contracts() -> None:
    answer = made_up(TWO, events=(Event(0.0, "T1", "at its limit"), Event(4.2, "T1", "regulates")))
    found = warmup_report(answer)
    assert (found["format"], found["version"]) == ("heaterloom-warmup", 1)
    (section,) = found["heaters"]["V2"]
    assert {"pins", "v", "a", "heater_k", "cathode_k", "peak_v", "peak_v_ratio", "ready_s"} <= set(section)
    for name in ("v", "a", "heater_k", "cathode_k"):
        assert len(section[name]) == len(found["t_s"]) == len(GRID)
    assert section["peak_v_ratio"] == pytest.approx(1.62)
    assert section["v"][0] == pytest.approx(section["peak_v"])
    assert {"v", "a", "peak_a", "restarts", "starts"} <= set(found["supplies"]["T1"])
    assert found["supplies"]["T1"]["starts"] is True
    assert found["events"] == [
        {"t_s": 0.0, "part": "T1", "what": "at its limit"},
        {"t_s": 4.2, "part": "T1", "what": "regulates"},
    ]
    assert [each["name"] for each in found["conditions"]] == ["nominal"]


def test_findings_have_the_shape_of_check() -> None:
    (finding,) = warmup_report(made_up(TWO, findings=(FAULT,)))["findings"]
    assert set(finding) == {
        "rule", "severity", "where", "condition", "value", "limit", "unit", "says", "mend", "source"
    }  # fmt: skip
    assert finding["value"] is None  # it was infinite


def test_parts_besides_heaters_and_supplies_are_told_in_time() -> None:
    branches = warmup_report(with_parts(made_up(TWO)))["branches"]
    assert {name: each["kind"] for name, each in branches.items()} == {
        "RT1": "thermistor", "K1": "relay", "F1": "fuse", "R1": "resistor"
    }  # fmt: skip
    assert branches["RT1"]["kelvin"][0] == pytest.approx(298.15)
    assert branches["K1"]["pulled_in"].count(True) == int((GRID >= 3.0).sum())
    assert branches["F1"]["excess_i2t"] is None and branches["F1"]["seconds_over"] == [[2.0, 0.5]]


@given(st.lists(st.floats(), min_size=1, max_size=8))
def test_whatever_the_run_says_the_json_is_valid_and_rounded(values: list[float]) -> None:
    t_s = np.arange(len(values), dtype=float)
    answer = made_up({"V1": (3.0, 1.0)}, {"T1": supply(asked_a=values[0], energy_j=values[-1])}, t_s=t_s)
    answer.runs["nominal"].shown.supplies["T1"] = (
        answer.runs["nominal"].shown.supplies["T1"]._replace(a=np.array(values))
    )
    found = json.loads(json.dumps(warmup_report(answer), allow_nan=False))
    for value, printed in zip(values, found["supplies"]["T1"]["a"], strict=True):
        if math.isfinite(value):
            assert printed == pytest.approx(value, abs=6e-10, rel=1e-15)
            assert math.copysign(1, printed) == 1 or printed < 0
        else:
            assert printed is None
    assert (found["supplies"]["T1"]["asked_a"] is None) == (not math.isfinite(values[0]))


def test_a_condition_that_was_not_computed_is_an_error() -> None:
    for report in (warmup_report, warmup_csv, lambda *given: list(account_lines(*given))):
        with pytest.raises(KeyError):
            report(made_up(TWO), "after a dip")


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({}, "It starts; the last tube is ready after 12.5 s."),
        ({"outcome": "retries", "restarts": 54}, "T1 does not start: it cuts out and tries again, 54 times in 60.0 s."),
        ({"outcome": "latched"}, "T1 does not start: it has latched off."),
        ({"outcome": "limits", "end_a": 2.5}, "T1 does not start: it stays at its limit, at 2.50 A."),
        ({"outcome": "slow"}, "T1 is still at its limit after 60.0 s."),
    ],
)  # fmt: skip
def test_the_verdict_says_how_it_ends(change: dict, words: str) -> None:
    assert said(made_up(TWO, {"T1": supply(**change)})) == words


def test_the_verdict_counts_what_else_does_not_start() -> None:
    bad, good = supply(outcome="latched"), supply()
    assert said(made_up(TWO, {"T1": good, "T2": bad})) == "T2 does not start: it has latched off."
    assert said(made_up(TWO, {"T1": bad, "T2": bad})).endswith("One more supply does not start.")
    assert said(made_up(TWO, {"T1": bad, "T2": bad, "T3": bad})).endswith("2 more supplies do not start.")


def test_the_verdict_names_tubes_that_do_not_get_ready() -> None:
    answer = made_up(TWO)
    one = {"V1": (heater("V1"),), "V2": (heater("V2", ready_s=None),)}
    both = {name: (heater(name, ready_s=None),) for name in TWO}
    lamp = {"L1": (heater("L1", ready_s=None, has_cathode=False),)}
    assert said(with_summary(answer, heaters=one)) == "It starts, but V2 is not ready after 60.0 s."
    assert said(with_summary(answer, heaters=both)) == "It starts, but V1 and V2 are not ready after 60.0 s."
    assert said(with_summary(answer, heaters=lamp)) == "It starts."


def test_a_sheet_without_heaters_or_supplies_is_told_plainly() -> None:
    assert said(made_up({}, {})) == "There is no heater to warm up."
    assert said(made_up(TWO, {})) == "No supply feeds the heaters."
    assert "There is no heater to warm up." in told(made_up({}, {}))


def test_what_was_not_computed_is_told() -> None:
    bounds = (Bound(2.5, sentence("too much switched"), ("T1",)),)
    unsolved = (Unsolved(sentence("it has a capacitor"), ("C1", "T2")),)
    answer = with_summary(made_up(TWO), bounds=bounds, unsolved=unsolved)
    words = [str(one).replace("\u2009", " ") for one in remarks(answer.runs["nominal"].summary)]
    assert words == ["At 2.50 s: too much switched (T1).", "Not computed: it has a capacitor (C1, T2)."]
    assert all(word in told(answer) for word in words)
    assert warmup_report(answer)["remarks"][0].startswith("At 2.50")


def test_the_account_says_how_hard_it_is_on_whom() -> None:
    text = told(with_parts(made_up(TWO, findings=(FAULT,))))
    for words in (
        "Made up",
        "switched on cold, nominal, 230 V, 60.0 s",
        "T1     starts: asked for 14.9 A, peak 3.00 A at 250 ms, limit 3.00 A, regulates from 4.20 s",
        "V2 4-5     peak 10.2 V, 162 % of its rating, at 0 s; ready after 12.5 s",
        "RT1    thermistor: peak 3.00 A and 420.0 K, 5.00 Ω cold, 400 mΩ at the end",
        "K1     relay: pulls in at 3.00 s, its contact closes at 3.01 s, peak 2.50 A through its contact",
        "R1     resistor: peak 9.00 W, 120 J in all",
        "fault: supply-will-not-start: T1 does not start at nominal",
        "    It cuts out. Use a thermistor.",
    ):
        assert words in text, words
    assert "No findings." in told(made_up(TWO))


def test_the_first_twenty_events_are_written_out_and_the_rest_counted() -> None:
    events = tuple(Event(float(at), "T1", "tries again") for at in range(1, 24))
    lines = told(made_up(TWO, events=events)).splitlines()
    assert sum("tries again" in line for line in lines) == 20
    assert "  and 3 more" in lines
    assert "  and" not in told(made_up(TWO, events=events[:20]))


def test_other_conditions_have_a_line_each() -> None:
    answer = made_up(TWO)
    bad = made_up(TWO, {"T1": supply(outcome="latched")}).runs["nominal"]
    answer = replace(answer, runs={**answer.runs, "low mains": bad})
    assert "  low mains,     230 V  T1 does not start: it has latched off." in told(answer).splitlines()
    assert [each["says"] for each in warmup_report(answer)["conditions"]][1].startswith("T1 does not")


def test_the_table_is_read_back_by_any_reader() -> None:
    answer = with_parts(made_up(TWO))
    text = warmup_csv(answer)
    assert text.count("\r\n") == len(GRID) + 1 and text.replace("\r\n", "").count("\n") == 0
    heading, *rows = csv.reader(io.StringIO(text, newline=""))
    assert heading == [
        "t_s", "T1 (V)", "T1 (A)",
        "V1 4-5 (V)", "V1 4-5 (A)", "V1 4-5 heater (K)", "V1 4-5 cathode (K)",
        "V2 4-5 (V)", "V2 4-5 (A)", "V2 4-5 heater (K)", "V2 4-5 cathode (K)",
        "RT1 (V)", "RT1 (A)", "RT1 (K)", "K1 (V)", "K1 (A)", "F1 (V)", "F1 (A)", "R1 (V)", "R1 (A)",
        "K1 pulled in (0/1)",
    ]  # fmt: skip
    assert {len(row) for row in rows} == {len(heading)}
    table = np.array(rows, dtype=float)
    shown = answer.runs["nominal"].shown
    assert table[:, 0] == pytest.approx(GRID, abs=1e-9)
    assert table[:, 6] == pytest.approx(shown.heaters["V1:4-5"].cathode_k, abs=1e-9)
    assert table[:, -1] == pytest.approx((GRID >= 3.0).astype(float))


def test_what_is_not_finite_is_an_empty_cell() -> None:
    answer = made_up({"V1": (3.0, 1.0)}, t_s=np.array([0.0, 1.0]))
    answer.runs["nominal"].shown.supplies["T1"].a[0] = float("inf")
    assert warmup_csv(answer).splitlines()[1].split(",")[2] == ""
