"""What each kind of part is called on screen."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def kind_word(kind: str) -> str:
    """The name of a kind of part within a sentence or a table."""
    words = {
        "tube": QCoreApplication.translate("parts", "tube"),
        "lamp": QCoreApplication.translate("parts", "lamp"),
        "winding": QCoreApplication.translate("parts", "winding"),
        "tapped winding": QCoreApplication.translate("parts", "centre-tapped winding"),
        "dc_supply": QCoreApplication.translate("parts", "DC supply"),
        "battery": QCoreApplication.translate("parts", "battery"),
        "mains_feed": QCoreApplication.translate("parts", "mains feed"),
        "rectified_supply": QCoreApplication.translate("parts", "rectified supply"),
        "resistor": QCoreApplication.translate("parts", "resistor"),
        "thermistor": QCoreApplication.translate("parts", "thermistor"),
        "relay": QCoreApplication.translate("parts", "relay"),
        "fuse": QCoreApplication.translate("parts", "fuse"),
        "capacitor": QCoreApplication.translate("parts", "capacitor"),
        "diode": QCoreApplication.translate("parts", "diode"),
        "switch": QCoreApplication.translate("parts", "switch"),
        "balance": QCoreApplication.translate("parts", "hum balance"),
        "elevation": QCoreApplication.translate("parts", "elevation"),
        "chassis": QCoreApplication.translate("parts", "chassis"),
        "joint": QCoreApplication.translate("parts", "joint"),
        "note": QCoreApplication.translate("parts", "note"),
        "frame": QCoreApplication.translate("parts", "frame"),
    }
    return words.get(kind, kind.replace("_", " "))


def kind_title(kind: str) -> str:
    """The name of a kind of part standing by itself."""
    word = kind_word(kind)
    return word[:1].upper() + word[1:]
