"""The window's menus."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from app.actions import SEPARATOR, Entry, fill, named_menu, set_apart
from app.dialogs import message_box
from app.language import LANGUAGES, SYSTEM, language_for
from app.settings import SCALES
from core.samples import sample_names, sample_title
from core.units import THIN_SPACE

if TYPE_CHECKING:
    from app.help.page import KeyPage
    from app.panes.side import SidePanes
    from app.window import MainWindow


class Menus(QObject):
    """Builds the menu bar of a window and keeps its changing parts up to date.

    Only the titles are made at first: they take their room, and the rest can wait until the drawing is seen.
    """

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        bar = window.menuBar()
        self._menus = [named_menu(bar, title) for title in self._titles()]
        for menu in self._menus:
            bar.addMenu(menu)
        set_apart(bar.actions())
        self.file, self.edit, self.arrange, self.view, self.help = self._menus
        self.key_page: KeyPage | None = None

    @property
    def all(self) -> tuple[QMenu, ...]:
        """The menus of the bar."""
        return tuple(self._menus)

    def fill(self, side: SidePanes) -> None:
        """Make the entries; the bar shows its titles before that."""
        from app.canvas.wire_actions import wire_entries  # noqa: PLC0415 - after the first painting

        window = self._window
        self._fill_file()
        self._fill_edit()
        fill(self.edit.addMenu(self.tr("&Wires")), wire_entries(window.view).values())
        self._fill_arrange()
        self._fill_view(side)
        self._fill_help()
        for menu in self._menus:
            set_apart(menu.actions())
        window.session.moved.connect(self._show_recent)
        self._show_recent()

    def _titles(self) -> tuple[str, ...]:
        return (
            self.tr("&File"),
            self.tr("&Edit"),
            self.tr("&Arrange"),
            self.tr("&View"),
            self.tr("&Help"),
        )

    def _fill_file(self) -> None:
        session, window = self._window.session, self._window
        fill(
            self.file,
            (
                Entry(self.tr("&New sheet"), session.new, ("Ctrl+N",)),
                Entry(self.tr("&Open\u2026"), session.open, ("Ctrl+O",)),
            ),
        )
        self.recent = self.file.addMenu(self.tr("Open &recent"))
        samples = self.file.addMenu(self.tr("Open a &sample"))
        titles = map(self.tr, map(sample_title, sample_names()))
        fill(samples, map(self._sample, sample_names(), titles))
        fill(
            self.file,
            (
                SEPARATOR,
                Entry(self.tr("&Save"), session.save, ("Ctrl+S",)),
                Entry(self.tr("Save &as\u2026"), session.save_as, ("Ctrl+Shift+S",)),
                Entry(self.tr("Save a &picture\u2026"), window.save_picture, ("Ctrl+E",)),
                Entry(self.tr("P&rint\u2026"), window.print_sheet, ("Ctrl+P",)),
                SEPARATOR,
                Entry(self.tr("&Quit"), window.close, ("Ctrl+Q",)),
            ),
        )

    def _sample(self, name: str, title: str) -> Entry:
        return Entry(title, lambda: self._window.session.open_sample(name))

    def _show_recent(self) -> None:
        self.recent.clear()
        names = self._window.settings.recent
        self.recent.setEnabled(bool(names))
        fill(self.recent, [self._recent(name) for name in names])

    def _recent(self, name: str) -> Entry:
        return Entry(name.replace("&", "&&"), lambda: self._window.session.open(name))

    def _fill_edit(self) -> None:
        stack, entries = self._window.document.undo_stack, self._window.view.entries
        undo = stack.createUndoAction(self.edit, self.tr("&Undo"))
        undo.setShortcuts([QKeySequence("Ctrl+Z")])
        redo = stack.createRedoAction(self.edit, self.tr("&Redo"))
        redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        self.edit.addActions([undo, redo])
        fill(
            self.edit,
            (
                SEPARATOR,
                *(entries[name] for name in ("cut", "copy", "paste", "duplicate", "delete")),
                SEPARATOR,
                *(entries[name] for name in ("add", "chain", "properties", "find", "replace type")),
                SEPARATOR,
                *(entries[name] for name in ("select all", "select connected", "select string")),
                SEPARATOR,
                Entry(self.tr("Re&name the sheet"), self._window.strip.edit_title),
            ),
        )

    def _fill_arrange(self) -> None:
        from app.canvas.arrange_actions import ALIGNING, DISTRIBUTING  # noqa: PLC0415 - after the first painting

        entries = self._window.view.entries
        fill(
            self.arrange,
            (
                *(entries[name] for name in ("turn right", "turn left", "turn as one", "turn left as one")),
                *(entries[name] for name in ("mirror", "mirror upright")),
                SEPARATOR,
            ),
        )
        lining = self.arrange.addMenu(self.tr("&Line up"))
        lining.setToolTipsVisible(True)
        fill(lining, [entries[name] for name in ALIGNING])
        lining.addSeparator()
        fill(lining, [entries[name] for name in DISTRIBUTING])
        fill(
            self.arrange,
            (
                entries["put on grid"],
                SEPARATOR,
                *(entries[name] for name in ("swap tubes", "swap places")),
                SEPARATOR,
                *(entries[name] for name in ("number tubes", "number selected")),
            ),
        )

    def _fill_view(self, side: SidePanes) -> None:
        from app.areas import area_entries  # noqa: PLC0415 - after the first painting
        from app.canvas.walk_actions import walk_entries  # noqa: PLC0415 - after the first painting
        from app.warmup.opening import warmup_entries  # noqa: PLC0415 - after the first painting

        window, entries = self._window, self._window.view.entries
        fill(
            self.view,
            (
                *(entries[name] for name in ("fit", "zoom in", "zoom out", "actual size")),
                SEPARATOR,
                *(entries[name] for name in ("show grid", "snap to grid")),
                SEPARATOR,
                *area_entries(window),
                Entry(self.tr("To the &drawing"), window.view.setFocus, ("Ctrl+Shift+D",)),
                Entry(self.tr("To the f&indings"), side.show_findings, ("Ctrl+Shift+F",)),
                Entry(self.tr("To the &properties"), side.show_properties, ("Ctrl+Shift+P",)),
                Entry(self.tr("To the pa&rts to add"), side.show_parts, ("Ctrl+Shift+K",)),
                Entry(self.tr("To the ta&bles"), side.show_tables, ("Ctrl+Shift+T",)),
                SEPARATOR,
            ),
        )
        fill(self.view.addMenu(self.tr("War&m-up")), warmup_entries(window))
        fill(self.view.addMenu(self.tr("&Go on the drawing")), walk_entries(window.view).values())
        self.panes = self.view.addMenu(self.tr("Pa&nes"))
        fill(self.panes, self._pane_entries(side))
        self._fill_themes(self.view.addMenu(self.tr("&Theme")))
        self.scales = self.view.addMenu(self.tr("Si&ze of everything"))
        self._fill_scales(self.scales)
        self._fill_languages(self.view.addMenu(self.tr("&Language")))

    def _pane_entries(self, side: SidePanes) -> list[Entry | None]:
        """Each pane ticked while it is open; one key closes it and brings it back."""
        switches = [
            Entry(
                pane.word, partial(side.toggle, key), (f"Alt+{number}",), checked=partial(side.is_open, key)
            )
            for number, (key, pane) in enumerate(side.panes.items(), start=1)
        ]
        return [*switches, SEPARATOR, Entry(self.tr("Restore the &usual panes"), side.restore_usual)]

    def _fill_choices(
        self, menu: QMenu, words: dict[str, str], current: str, choose: Callable[[str], None]
    ) -> None:
        """One of several, the current one marked."""
        group = QActionGroup(menu)
        for name, text in words.items():
            action = QAction(text, group)
            action.setCheckable(True)
            action.setChecked(name == current)
            action.triggered.connect(lambda _checked=False, name=name: choose(name))
            menu.addAction(action)
        set_apart(menu.actions())

    def _fill_themes(self, menu: QMenu) -> None:
        words = {"system": self.tr("As the &system"), "light": self.tr("&Light"), "dark": self.tr("&Dark")}
        window = self._window
        self._fill_choices(menu, words, window.settings.theme, window.set_theme_name)

    def _fill_scales(self, menu: QMenu) -> None:
        words = {factor: f"{float(factor):.0%}".replace("%", f"{THIN_SPACE}%") for factor in SCALES}
        window = self._window
        self._fill_choices(menu, words, window.settings.scale, window.set_scale)

    def _fill_languages(self, menu: QMenu) -> None:
        words = {SYSTEM: self.tr("As the &system"), **LANGUAGES}
        self._fill_choices(menu, words, self._window.settings.language, self._choose_language)

    def _choose_language(self, name: str) -> None:
        self._window.settings.language = name
        chosen = LANGUAGES[language_for(name)]
        text = self.tr("Heaterloom speaks {language} from its next start on.").format(language=chosen)
        self._window.banner.show_message(text)

    def _fill_help(self) -> None:
        fill(
            self.help,
            (
                Entry(self.tr("&Keys and gestures"), self._show_keys, ("F1",)),
                Entry(self.tr("&Cautions"), self._show_cautions),
                Entry(self.tr("&About Heaterloom"), self._show_about),
            ),
        )

    def _show_keys(self) -> None:
        """Show the page of keys and gestures, made when it is first asked for and kept up to date with the menus."""
        from app.help.key_table import all_sections  # noqa: PLC0415 - loaded when first needed
        from app.help.page import KeyPage  # noqa: PLC0415 - loaded when first needed

        if self.key_page is None:
            self.key_page = KeyPage((), self._window.theme, self._window)
        self.key_page.sections = all_sections(self._window)
        self.key_page.set_theme(self._window.theme)
        self.key_page.show()
        self.key_page.activateWindow()
        self.key_page.search.setFocus()

    def _show_cautions(self) -> None:
        self._tell(self.tr("Cautions"), "\n\n".join(map(self.tr, map(str, CAUTIONS))))

    def _show_about(self) -> None:
        text = self.tr(
            "Heaterloom lays out the heater wiring of valve amplifiers and solves every heater.\n\n"
            "Its figures are computed from published data and models, some of them unverified and marked so. "
            "They do not replace a measurement at the pins.\n\nMIT licence."
        )
        self._tell(self.tr("About Heaterloom"), text)

    def _tell(self, title: str, text: str) -> None:
        box = message_box(self._window)
        box.setText(title)
        box.setInformativeText(text)
        box.open()


SAMPLES = (
    QT_TRANSLATE_NOOP("Menus", "Rehearsal amplifier"),
    QT_TRANSLATE_NOOP("Menus", "Twelve volts on the bench"),
    QT_TRANSLATE_NOOP("Menus", "Mains string radio"),
    QT_TRANSLATE_NOOP("Menus", "Five mistakes"),
    QT_TRANSLATE_NOOP("Menus", "Cold start"),
    QT_TRANSLATE_NOOP("Menus", "Cold start with a thermistor"),
    QT_TRANSLATE_NOOP("Menus", "Cold start with thermistor and relay"),
)
"""The titles of the built-in sheets, which stand in their files."""

CAUTIONS = (
    QT_TRANSLATE_NOOP(
        "Menus",
        "High tension kills. Switch off, unplug, let capacitors discharge and measure before touching anything.",
    ),
    QT_TRANSLATE_NOOP(
        "Menus",
        "A heater string fed straight from the mains makes the chassis live. Work on it only with an isolating "
        "transformer, and leave mains wiring to those licensed for it where you live.",
    ),
    QT_TRANSLATE_NOOP(
        "Menus",
        "Heater windings may float at full high tension. Use insulated leads and a meter rated for it.",
    ),
    QT_TRANSLATE_NOOP(
        "Menus",
        "Droppers, thermistors and glass get hot enough to burn. Leave them room.",
    ),
    QT_TRANSLATE_NOOP(
        "Menus",
        "One fuse for each winding, never a bigger one than designed.",
    ),
    QT_TRANSLATE_NOOP(
        "Menus",
        "What this program says does not replace a measurement at the pins, nor your local codes.",
    ),
)
