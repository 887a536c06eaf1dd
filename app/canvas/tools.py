"""What works on the drawing beside the pointer: each tool is loaded and made when it is first asked for."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.canvas.arranging import Arranger
    from app.canvas.find_line import FindLine
    from app.canvas.pasting import Pasting
    from app.canvas.replace_line import ReplaceLine
    from app.canvas.view import SheetView

# ruff: noqa: PLC0415 - imports within functions are what this is for


class Tools:
    """The tools of one view."""

    def __init__(self, view: SheetView) -> None:
        self._view = view

    @cached_property
    def arranger(self) -> Arranger:
        """Puts the selected parts in order."""
        from app.canvas.arranging import Arranger

        return Arranger(self._view)

    @cached_property
    def pasting(self) -> Pasting:
        """What goes to the clipboard and comes from it."""
        from app.canvas.pasting import Pasting

        return Pasting(self._view)

    @cached_property
    def find_line(self) -> FindLine:
        """Asks what to look for."""
        from app.canvas.find_line import FindLine

        return FindLine(self._view)

    @cached_property
    def replace_line(self) -> ReplaceLine:
        """Asks for another tube type."""
        from app.canvas.replace_line import ReplaceLine

        return ReplaceLine(self._view)

    def find(self) -> None:
        """Ask what to look for."""
        self.find_line.enter()

    def replace_type(self) -> None:
        """Ask for another type for the selected tubes."""
        self.replace_line.enter()
