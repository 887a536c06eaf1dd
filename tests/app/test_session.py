"""New, open, save, recent, and the guard over unsaved changes."""

from __future__ import annotations

from pathlib import Path

import pytest

from app.document import Document
from app.session import CANCEL, DISCARD, SAVE, Session
from app.settings import Settings
from core import edits
from core.catalogue import load_builtin
from core.samples import sample_names
from core.sheet import Sheet, Tube
from core.storage import dump, load


class Answers:
    """An asker with answers prepared beforehand; remembers what it was told."""

    def __init__(self) -> None:
        self.unsaved = CANCEL
        self.open_path = ""
        self.save_path = ""
        self.overwrite = False
        self.told: list[str] = []

    def ask_unsaved(self, title: str) -> str:
        return self.unsaved

    def ask_open_path(self, folder: str) -> str:
        return self.open_path

    def ask_save_path(self, suggestion: str) -> str:
        return self.save_path

    def ask_overwrite(self, name: str) -> bool:
        self.told.append(name)
        return self.overwrite

    def tell(self, headline: str, text: str) -> None:
        self.told.append(f"{headline} {text}")


@pytest.fixture
def answers() -> Answers:
    return Answers()


@pytest.fixture
def session(qapp, settings: Settings, answers: Answers) -> Session:
    document = Document(Sheet(title="Bench"), load_builtin())
    return Session(document, settings, answers)


def edit(session: Session, name: str = "V1") -> None:
    session._document.apply("Add", edits.add_part(Tube(id=name, type="ECC83")))


def test_saving_asks_for_a_file_once_and_adds_the_ending(session, answers, tmp_path: Path) -> None:
    edit(session)
    assert session.is_dirty
    answers.save_path = str(tmp_path / "bench")
    assert session.save()
    target = tmp_path / "bench.heaterloom"
    assert load(target.read_bytes()) == session._document.sheet
    assert not session.is_dirty
    answers.save_path = ""
    edit(session, "V2")
    assert session.save()
    assert [part.id for part in load(target.read_bytes()).parts] == ["V1", "V2"]


def test_undoing_back_to_the_saved_state_is_clean(session, answers, tmp_path: Path) -> None:
    answers.save_path = str(tmp_path / "a.heaterloom")
    session.save()
    edit(session)
    assert session.is_dirty
    session._document.undo_stack.undo()
    assert not session.is_dirty


@pytest.mark.parametrize(("answer", "leaves"), [(CANCEL, False), (DISCARD, True)])
def test_the_guard_keeps_or_lets_go(session, answers, answer: str, leaves: bool) -> None:
    edit(session)
    answers.unsaved = answer
    session.new()
    assert (session._document.sheet.parts == ()) is leaves


def test_the_guard_saves_first_and_stays_when_that_fails(session, answers, tmp_path: Path) -> None:
    edit(session)
    answers.unsaved = SAVE
    answers.save_path = str(tmp_path / "no" / "such" / "folder" / "a.heaterloom")
    session.new()
    assert [part.id for part in session._document.sheet.parts] == ["V1"]
    assert "not saved" in answers.told[0]
    assert "does not exist" in answers.told[0]
    answers.save_path = str(tmp_path / "a.heaterloom")
    session.new()
    assert session._document.sheet.parts == ()
    assert (tmp_path / "a.heaterloom").exists()


def test_a_corrupt_file_leaves_the_open_sheet_and_says_where(session, answers, tmp_path: Path) -> None:
    bad = tmp_path / "bad.heaterloom"
    good = dump(Sheet(parts=(Tube(id="V1", type="ECC83"),)))
    bad.write_bytes(good.replace(b'"ECC83"', b"17"))
    before = session._document.sheet
    answers.open_path = str(bad)
    assert not session.open()
    assert session._document.sheet is before
    assert "parts[0].type" in answers.told[0]


def test_a_newer_file_is_refused_by_name(session, answers, tmp_path: Path) -> None:
    newer = tmp_path / "newer.heaterloom"
    newer.write_bytes(dump(Sheet()).replace(b'"version": 1', b'"version": 99'))
    before = session._document.sheet
    answers.open_path = str(newer)
    assert not session.open()
    assert session._document.sheet is before
    assert answers.told[0].startswith(
        "newer.heaterloom was not opened. 'newer.heaterloom' was made by a newer"
    )
    assert answers.told[0].endswith("Update the program to open it.")


def test_a_dot_in_a_name_is_no_ending(session, answers, tmp_path: Path) -> None:
    answers.save_path = str(tmp_path / "amp 6.3V")
    assert session.save_as()
    assert session.path == tmp_path / "amp 6.3V.heaterloom"


def test_a_file_that_is_there_under_the_added_ending_is_not_replaced_unasked(
    session, answers, tmp_path: Path
) -> None:
    old = tmp_path / "amp.heaterloom"
    old.write_text("precious")
    answers.save_path = str(tmp_path / "amp")
    assert not session.save_as()
    assert answers.told == ["amp.heaterloom"]
    assert old.read_text() == "precious"
    answers.overwrite = True
    assert session.save_as()
    assert load(old.read_bytes(), "amp").title == "Bench"


def test_an_empty_title_is_untitled(session) -> None:
    session._document.apply("Rename", edits.set_sheet(title=" "))
    assert session.name == "Untitled"


def test_recent_files_come_newest_first_without_doubles(session, answers, settings, tmp_path: Path) -> None:
    for name in ("a", "b", "a"):
        answers.save_path = str(tmp_path / f"{name}.heaterloom")
        session.save_as()
    assert [Path(name).stem for name in settings.recent] == ["a", "b"]


def test_a_sample_has_no_file_of_its_own(session, answers) -> None:
    session.open_sample(sample_names()[0])
    assert session.path is None
    assert session._document.sheet.parts
    answers.save_path = ""
    assert not session.save()


def test_a_missing_file_names_the_samples(session, answers) -> None:
    answers.open_path = "/nowhere/sheet.heaterloom"
    session.open()
    assert sample_names()[0] in answers.told[0]
