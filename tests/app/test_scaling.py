"""The window at every scale that screens come in, each in a process of its own, as Qt takes a scale at its start."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from functools import lru_cache
from pathlib import Path

import pytest
from PySide6.QtGui import QFontInfo
from PySide6.QtWidgets import QApplication, QWidget

from app.settings import SCALES, Settings
from app.theme import FAMILY
from core.samples import sample_bytes, sample_names
from core.storage import load

ROOT = Path(__file__).parent.parent.parent
FIRST = sample_names()[0]
# HEATERLOOM_PICTURES names a folder that keeps the pictures of all samples for looking at
KEPT = os.environ.get("HEATERLOOM_PICTURES", "")


def look(name: str, theme: str, scale: str, folder: Path) -> dict:
    target = Path(KEPT or folder) / f"{name}-{theme}-{scale}.png"
    target.parent.mkdir(parents=True, exist_ok=True)
    done = subprocess.run(
        [sys.executable, "-m", "tests.app.scaled_window", name, theme, str(target)],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "QT_SCALE_FACTOR": scale},
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    assert target.exists()
    return json.loads(done.stdout.splitlines()[-1])


@pytest.fixture(scope="module")
def looks(tmp_path_factory: pytest.TempPathFactory):
    """The first sample in the light theme, each scale opened once."""

    @lru_cache
    def at(scale: str) -> dict:
        return look(FIRST, "light", scale, tmp_path_factory.mktemp("scaled"))

    return at


def check(found: dict, scale: str) -> None:
    assert found["ratio"] == pytest.approx(float(scale))
    assert found["size"] == [round(1280 * float(scale)), round(720 * float(scale))]
    assert found["cut"] == []
    assert found["outside"] == []
    assert found["families"] == {}
    assert found["canvas"] >= 0.6
    assert found["icon"] == [round(24 * float(scale))] * 2, "an icon has a dot for each dot of the screen"


@pytest.mark.parametrize("scale", SCALES)
def test_nothing_is_cut_and_all_is_sharp(looks, scale: str) -> None:
    found = looks(scale)
    check(found, scale)
    if float(scale) > 1:
        # lines are as many dots thicker as the scale says, their edges stay one dot wide; a picture of the
        # drawing blown up would have edges that grow with it
        assert found["edge"] <= looks("1")["edge"] / float(scale) * 1.35


@pytest.mark.slow
@pytest.mark.parametrize("name", sample_names())
@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("scale", ["1", "2"])
def test_every_sample_in_both_themes(tmp_path: Path, name: str, theme: str, scale: str) -> None:
    check(look(name, theme, scale, tmp_path), scale)


def test_a_chosen_size_is_remembered_and_told(open_window, settings: Settings) -> None:
    window = open_window(load(sample_bytes(FIRST)))
    assert [action.text() for action in window.menus.scales.actions()] == [
        "100\u2009%", "125\u2009%", "150\u2009%", "200\u2009%", "300\u2009%"
    ]  # fmt: skip
    window.menus.scales.actions()[3].trigger()
    assert settings.scale == "2"
    assert "started again" in window.banner.label.text()
    settings._store.setValue("scale", "17")
    assert settings.scale == "1"


@pytest.mark.parametrize(("given", "wanted"), [({}, "1.5"), ({"QT_SCALE_FACTOR": "2"}, "2")])
def test_the_chosen_size_is_used_at_the_next_start(
    tmp_path: Path, given: dict[str, str], wanted: str
) -> None:
    settings = Settings(tmp_path / "heaterloom" / "settings.ini")
    settings.scale = "1.5"
    del settings
    code = (
        "from app.desktop import launch; application, window = launch(None); "
        "print(window.devicePixelRatioF()); window.close()"
    )
    environment = {key: value for key, value in os.environ.items() if key != "QT_SCALE_FACTOR"}
    done = subprocess.run(
        [sys.executable, "-c", code],
        env={**environment, "QT_QPA_PLATFORM": "offscreen", "XDG_CONFIG_HOME": str(tmp_path), **given},
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    assert done.stdout.split()[-1] == wanted or float(done.stdout.split()[-1]) == float(wanted)


def test_every_widget_writes_in_the_bundled_font(open_window, qtbot) -> None:
    window = open_window(load(sample_bytes("five-mistakes")))
    window.selection.set(["V1"])
    window.view.add_field.enter()
    window.view.add_field.setText("ECC")
    window.view.add_field.textEdited.emit("ECC")
    window.side.show_parts()
    window.banner.show_message("something", "Do it")
    window.save_picture()
    window.menus.view.popup(window.pos())
    QApplication.processEvents()
    strange = {
        f"{type(widget).__name__} {widget.objectName()}"
        for widget in (window, *window.findChildren(QWidget))
        if QFontInfo(widget.font()).family() != FAMILY
    }
    window.menus.view.close()
    assert strange == set()
