"""The command line, as a user runs it: output, messages, exit statuses."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from app.main import main
from core.samples import sample_bytes, sample_names
from core.sheet import Sheet
from core.storage import dump, load

DATA = Path(__file__).parent.parent / "data"
EXAMPLE = DATA / "sheet_v1.heaterloom"


def check_json(capsys, name: str) -> tuple[int, dict]:
    status = main(["check", name, "--json"])
    return status, json.loads(capsys.readouterr().out)


def test_check_prints_the_contracts_object(capsys) -> None:
    status, found = check_json(capsys, str(EXAMPLE))
    assert status in {0, 1}
    assert (found["format"], found["version"]) == ("heaterloom-check", 1)
    assert [c["name"] for c in found["conditions"]] == ["nominal", "low mains", "high mains"]
    nominal = found["conditions"][0]
    assert nominal["mains_v"] == 230.0
    first = nominal["heaters"]["V1"][0]
    assert set(first) == {
        "pins", "v", "a", "w", "rated_v", "rated_a", "deviation_pct", "heater_k", "cathode_k"
    }  # fmt: skip
    assert set(nominal["supplies"]["T1"]) == {"v", "a", "w", "load_pct"}
    assert nominal["nodes"]["E1.e"] == 0.0
    assert {"a", "w"} <= set(nominal["branches"]["w1"])
    for finding in found["findings"]:
        assert set(finding) == {
            "rule", "severity", "where", "condition", "value", "limit", "unit", "says", "mend", "source"
        }  # fmt: skip


def test_kirchhoff_holds_in_what_is_printed(capsys) -> None:
    _, found = check_json(capsys, str(EXAMPLE))
    nominal = found["conditions"][0]
    taken = sum(heater["a"] for heater in (*nominal["heaters"]["V1"], *nominal["heaters"]["V2"]))
    assert nominal["supplies"]["T1"]["a"] == pytest.approx(taken, abs=1e-8)
    assert nominal["branches"]["w1"]["a"] == pytest.approx(taken, abs=1e-8)


@pytest.mark.parametrize("name", sample_names())
def test_every_sample_checks_with_the_right_status(capsys, name: str) -> None:
    status, found = check_json(capsys, name)
    faults = [finding for finding in found["findings"] if finding["severity"] == "fault"]
    assert status == (1 if faults else 0)
    assert bool(faults) == (name == "five-mistakes")


def test_the_readable_report_names_heaters_and_findings(capsys) -> None:
    status = main(["check", "five-mistakes"])
    text = capsys.readouterr().out
    assert status == 1
    assert "V1" in text
    assert "fault: " in text


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"{", "not"),
        (b'{"format": "heaterloom-sheet", "version": 7}', "newer version"),
        (b'{"format": "heaterloom-sheet", "version": 1, "parts": [{"kind": "tube"}]}', "parts[0]"),
    ],
)
def test_an_unusable_file_gives_status_two_and_says_why(
    capsys, tmp_path: Path, content: bytes, words: str
) -> None:
    path = tmp_path / "bad.heaterloom"
    path.write_bytes(content)
    assert main(["check", str(path), "--json"]) == 2
    out = capsys.readouterr()
    assert out.out == ""
    assert words in out.err


def test_a_missing_file_and_a_folder_are_told_apart(capsys, tmp_path: Path) -> None:
    assert main(["check", str(tmp_path / "none")]) == 2
    assert "no file" in capsys.readouterr().err
    assert main(["check", str(tmp_path)]) == 2
    assert "folder" in capsys.readouterr().err


def test_samples_are_listed_and_written_out(capfdbinary) -> None:
    assert main(["samples"]) == 0
    assert capfdbinary.readouterr().out.decode().split() == list(sample_names())
    assert main(["samples", sample_names()[0]]) == 0
    assert capfdbinary.readouterr().out == sample_bytes(sample_names()[0])
    assert main(["samples", "nothing-like-it"]) == 2


@pytest.mark.parametrize(("kind", "head"), [("svg", b"<?xml"), ("png", b"\x89PNG"), ("pdf", b"%PDF")])
def test_pictures_of_every_kind(qapp, tmp_path: Path, kind: str, head: bytes) -> None:
    target = tmp_path / f"sheet.{kind}"
    assert main(["picture", sample_names()[0], str(target)]) == 0
    assert target.read_bytes().startswith(head)
    assert len(target.read_bytes()) > 5000


def test_a_picture_without_a_known_ending_is_refused(capsys, tmp_path: Path) -> None:
    assert main(["picture", sample_names()[0], str(tmp_path / "sheet.bmp")]) == 2
    assert ".svg" in capsys.readouterr().err


def test_own_types_are_used_and_their_mistakes_told(capsys, own_folders: Path) -> None:
    folder = own_folders / "xdg_data_home" / "heaterloom"
    folder.mkdir(parents=True)
    (folder / "tubes.csv").write_text("designation,pins\nX1,4-5\n")
    assert main(["check", str(EXAMPLE)]) in {0, 1}
    assert "tubes.csv" in capsys.readouterr().err


def run(code: str, **environment: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", code],
        env={**os.environ, **environment},
        capture_output=True,
        text=True,
        check=False,
    )


def test_check_imports_no_widgets() -> None:
    done = run(
        "import sys; from app.main import main; "
        f"main(['check', {str(EXAMPLE)!r}]); "
        "print([name for name in sys.modules if name.startswith('PySide6')])"
    )
    assert done.stdout.strip().endswith("[]"), done.stdout[-300:] + done.stderr


def test_without_a_display_there_is_a_sentence_and_no_traceback() -> None:
    done = run(
        "import sys; from app.main import main; sys.exit(main([]))",
        QT_QPA_PLATFORM="", DISPLAY="", WAYLAND_DISPLAY="",
    )  # fmt: skip
    assert done.returncode == 2
    assert "no display" in done.stderr
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize(
    "names",
    [
        {"DISPLAY": ":977", "WAYLAND_DISPLAY": ""},
        {"DISPLAY": "", "WAYLAND_DISPLAY": "wayland-977"},
        {"DISPLAY": ":977", "WAYLAND_DISPLAY": "wayland-977"},
    ],
)
def test_a_display_that_does_not_answer_is_told_without_an_abort(names: dict[str, str]) -> None:
    done = run("import sys; from app.main import main; sys.exit(main([]))", QT_QPA_PLATFORM="", **names)
    assert done.returncode == 2
    assert "does not answer" in done.stderr
    assert "heaterloom check" in done.stderr


def test_a_picture_without_a_library_is_answered_with_the_apt_line(tmp_path: Path) -> None:
    done = run(
        "import sys; sys.modules['PySide6.QtWidgets'] = None; from app.main import main; "
        f"sys.exit(main(['picture', {str(EXAMPLE)!r}, {str(tmp_path / 'a.svg')!r}]))",
        QT_QPA_PLATFORM="",
    )
    assert done.returncode == 2
    assert "apt-get install" in done.stderr
    assert "Traceback" not in done.stderr


def test_an_unusable_sheet_at_start_is_told_without_a_window(tmp_path: Path) -> None:
    bad = tmp_path / "bad.heaterloom"
    bad.write_text("{}")
    done = run(f"import sys; from app.main import main; sys.exit(main([{str(bad)!r}]))")
    assert done.returncode == 2
    assert "Traceback" not in done.stderr


def test_a_missing_library_is_answered_with_the_apt_line() -> None:
    done = run(
        "import sys; sys.modules['PySide6.QtWidgets'] = None; from app.main import main; sys.exit(main([]))",
        QT_QPA_PLATFORM="offscreen",
    )
    assert done.returncode == 2
    assert "apt-get install" in done.stderr
    assert "libegl1" in done.stderr
    assert "Traceback" not in done.stderr


def test_the_samples_are_sheets() -> None:
    for name in sample_names():
        assert load(sample_bytes(name), name).parts


@pytest.mark.parametrize(("name", "status"), [("cold-start", 1), ("cold-start-relay", 0)])
def test_warmup_tells_whether_it_starts(
    name: str, status: int, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    assert main(["warmup", name, "--seconds", "20", "--dip", "0"]) == status
    told = capsys.readouterr().out
    assert ("does not start" in told) == bool(status)
    assert bool(re.search(r"U1 +cuts out and tries again, \d+ times: asked for", told)) == bool(status)
    assert main(["warmup", name, "--seconds", "20", "--json"]) == status
    found = json.loads(capsys.readouterr().out)
    assert found["format"] == "heaterloom-warmup"
    assert found["supplies"]["U1"]["starts"] == (status == 0)
    assert len(found["t_s"]) == len(found["heaters"]["V3"][0]["v"])
    table = tmp_path / "run.csv"
    assert main(["warmup", name, "--seconds", "20", "--csv", str(table)]) == status
    assert table.read_text().splitlines()[0].startswith("t_s,U1 (V),U1 (A)")


@pytest.mark.parametrize(
    "given",
    [
        ["--seconds", "0"],
        ["--seconds", "1e9"],
        ["--dip", "-1"],
        ["--picture", "run.txt"],
        ["--csv", "no/where.csv"],
    ],
)
def test_warmup_refuses_what_it_cannot_use(given: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["warmup", "cold-start-relay", *given]) == 2
    assert capsys.readouterr().err.startswith("heaterloom: ")


@pytest.mark.parametrize("ending", [".svg", ".png", ".pdf"])
def test_warmup_draws_itself(ending: str, tmp_path: Path, qapp: QApplication) -> None:
    target = tmp_path / f"run{ending}"
    assert main(["warmup", "cold-start-relay", "--seconds", "20", "--picture", str(target)]) == 0
    assert target.read_bytes().startswith({".svg": b"<?xml", ".png": b"\x89PNG", ".pdf": b"%PDF"}[ending])


@pytest.mark.parametrize("output", [[], ["--json"], ["--csv", "run.csv"], ["--picture", "run.svg"]])
def test_warmup_of_an_empty_sheet_says_so(
    output: list[str],
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    qapp: QApplication,
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("empty.heaterloom").write_bytes(dump(Sheet(title="Empty")))
    assert main(["warmup", "empty.heaterloom", *output]) == 0
    told = capsys.readouterr().out + "".join(path.read_text() for path in tmp_path.glob("run.svg"))
    if "--csv" in output:
        assert Path("run.csv").read_text().splitlines()[0] == "t_s"
    else:
        assert "There is no heater to warm up." in told
