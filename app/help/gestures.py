"""What the pointer and the plain keys do where no menu names them: the rest of the page is made from the menus."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

translate = QCoreApplication.translate
Gesture = tuple[str, str]


def _pointer() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "Drag from pin to pin"),
            translate("gestures", "a wire; on one socket a strap"),
        ),
        (
            translate("gestures", "Shift while a wire is drawn"),
            translate("gestures", "a joint where it is let go in the open"),
        ),
        (
            translate("gestures", "Drag a part"),
            translate("gestures", "moves it on the grid; with Alt off the grid"),
        ),
        (
            translate("gestures", "Click a part or a wire"),
            translate("gestures", "selects it; with Shift adds it or takes it away"),
        ),
        (
            translate("gestures", "Drag on the paper"),
            translate("gestures", "selects what the band touches; with Shift adds to what is selected"),
        ),
        (translate("gestures", "Double click a part or a wire"), translate("gestures", "its properties")),
        (
            translate("gestures", "Double click a note"),
            translate("gestures", "writes it; Ctrl+Enter keeps it, Escape keeps what was there"),
        ),
        (
            translate("gestures", "Drag the title of a frame"),
            translate("gestures", "moves it with what stands in it; with Alt alone"),
        ),
        (
            translate("gestures", "Drag an edge or a corner of a frame"),
            translate("gestures", "makes it larger or smaller"),
        ),
        (
            translate("gestures", "Click a part in the parts list, then the sheet"),
            translate("gestures", "places it there; with Shift it stays in hand for the next one"),
        ),
        (
            translate("gestures", "Drag a part from the parts list"),
            translate("gestures", "places it where it is dropped"),
        ),
        (translate("gestures", "Wheel"), translate("gestures", "scrolls; with Ctrl zooms about the pointer")),
        (
            translate("gestures", "Drag with the middle button or Space"),
            translate("gestures", "moves the paper"),
        ),
        (
            translate("gestures", "Right button"),
            translate("gestures", "the menu of what is there; gives up a part in hand"),
        ),
    )


def _wires() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "Ctrl and drag from pin to pin"),
            translate("gestures", "a twisted pair: the wire from the other end of the heater comes along"),
        ),
        (
            translate("gestures", "Drag from a pin onto a wire"),
            translate("gestures", "a joint where they meet"),
        ),
        (
            translate("gestures", "Drag a handle of the selected wire"),
            translate("gestures", "leads it another way; with Alt off the grid"),
        ),
        (
            translate("gestures", "Double click a handle"),
            translate("gestures", "lets the route find its way again"),
        ),
        (
            translate("gestures", "Ctrl and double click a wire"),
            translate("gestures", "splits it with a joint"),
        ),
        (
            translate("gestures", "Click a wire of a twisted pair"),
            translate("gestures", "selects both; with Alt only this one"),
        ),
    )


def _walking() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "Tab, Shift+Tab"),
            translate(
                "gestures",
                "next and previous part: left to right, then the row below; after the last out of the drawing",
            ),
        ),
        (
            translate("gestures", "Arrows"),
            translate("gestures", "move what is selected; with Alt by single units"),
        ),
        (
            translate("gestures", "Escape"),
            translate("gestures", "gives up what is under way, then the selection, then the instant on show"),
        ),
    )


def _pins() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "Arrows"),
            translate("gestures", "the next and the previous pin, round the socket"),
        ),
        (
            translate("gestures", "A digit or letter"),
            translate("gestures", "the pin of that name, or the next one that begins so"),
        ),
        (
            translate("gestures", "Enter"),
            translate("gestures", "begins a wire at the pin; at another pin lays it"),
        ),
        (
            translate("gestures", "Tab, Ctrl+arrows while a wire is laid"),
            translate("gestures", "go to the part where it ends; its likeliest pin is proposed"),
        ),
        (translate("gestures", "Ctrl+Enter at the other pin"), translate("gestures", "lays a twisted pair")),
        (translate("gestures", "/ while a wire is laid"), translate("gestures", "type where it ends")),
        (
            translate("gestures", "Escape"),
            translate("gestures", "gives the wire up, then steps out of the pins"),
        ),
    )


def _typing() -> tuple[Gesture, ...]:
    return (
        (translate("gestures", "ECC83, 10R 5 W, 6.3 V 3 A ct, relay"), translate("gestures", "adds a part")),
        (translate("gestures", "T1.a V1.4"), translate("gestures", "adds a wire between two pins")),
        (translate("gestures", "V1.4-5"), translate("gestures", "adds a strap on one socket")),
        (translate("gestures", "Down, Up"), translate("gestures", "choose among what is offered")),
        (
            translate("gestures", "Enter"),
            translate("gestures", "takes it; the drawing has the keyboard again"),
        ),
    )


def _tables() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "F2, or a double click"),
            translate("gestures", "edits a cell; figures are read as they are written"),
        ),
        (translate("gestures", "Enter"), translate("gestures", "shows the selected rows on the drawing")),
        (
            translate("gestures", "Ins"),
            translate("gestures", "to the line where a part or a wire is typed to be added"),
        ),
        (
            translate("gestures", "Del"),
            translate("gestures", "deletes the parts or wires of the selected rows"),
        ),
        (
            translate("gestures", "Escape"),
            translate(
                "gestures",
                "brings the old value back; a text that is refused stays until it is mended or given up",
            ),
        ),
        (
            translate("gestures", "Click on a heading"),
            translate("gestures", "sorts; the third click brings back the sheet's order"),
        ),
    )


def _chain() -> tuple[Gesture, ...]:
    return (
        (translate("gestures", "Enter"), translate("gestures", "builds the chain as it is shown")),
        (
            translate("gestures", "Alt+Up, Alt+Down, or a drag in the order"),
            translate("gestures", "moves a socket along the chain"),
        ),
        (translate("gestures", "Escape"), translate("gestures", "gives it up; nothing has happened")),
    )


def _playing() -> tuple[Gesture, ...]:
    return (
        (
            translate("gestures", "Click or drag on the time slider"),
            translate("gestures", "shows that instant everywhere; on a tick exactly when it switched"),
        ),
        (
            translate("gestures", "Left, Right"),
            translate("gestures", "a tenth of a second back or on; from ten seconds on a whole one"),
        ),
        (translate("gestures", "Page Up, Page Down"), translate("gestures", "ten seconds on or back")),
        (
            translate("gestures", "Home, End"),
            translate("gestures", "the instant of switching on, the last one"),
        ),
        (translate("gestures", "Space"), translate("gestures", "plays and pauses")),
        (translate("gestures", "Escape"), translate("gestures", "back to the steady state")),
    )


def sections() -> tuple[tuple[str, tuple[Gesture, ...]], ...]:
    """Every gesture, as what is done and what comes of it, under the heading of the place where it works."""
    return (
        (translate("gestures", "Pointer on the drawing"), _pointer()),
        (translate("gestures", "Pointer on wires"), _wires()),
        (translate("gestures", "Walking the drawing by keys"), _walking()),
        (translate("gestures", "In the pins of a part"), _pins()),
        (translate("gestures", "Typing into the add field"), _typing()),
        (translate("gestures", "In the tables"), _tables()),
        (translate("gestures", "While a chain is chosen"), _chain()),
        (translate("gestures", "On the time slider of a warm-up"), _playing()),
    )
