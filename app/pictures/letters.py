"""The letters of an SVG file: text in the bundled font, which travels in the file, or outlines.

Text can be searched and copied; a browser shows it in the embedded font. Programs that do not read embedded
fonts show another one where the bundled font is not installed: for those the letters can be drawn as shapes.
"""

from __future__ import annotations

import base64
import re
from html import unescape

from PySide6.QtGui import QFont, QPainterPath

from app.theme import FAMILY, searchable
from resources import read_bytes

_FILES = ((400, "Inter-Regular.woff2"), (700, "Inter-Bold.woff2"))
_TEXT = re.compile(r"<text (?P<attributes>[^>]*)>(?P<text>[^<]*)</text>")
_ATTRIBUTE = re.compile(r'([\w:-]+)="([^"]*)"')


def with_font(svg: str) -> str:
    """The drawing with the bundled font in it, cut down to the signs of European scripts and the trade."""
    faces = "".join(
        f'@font-face{{font-family:"{FAMILY}";font-weight:{weight};'
        f"src:url(data:font/woff2;base64,{base64.b64encode(read_bytes('fonts', name)).decode()}) "
        'format("woff2")}\n'
        for weight, name in _FILES
    )
    return svg.replace("<defs>", f'<defs>\n<style type="text/css">\n{faces}</style>', 1)


def with_outlines(svg: str) -> str:
    """The drawing with every text as a shape."""
    return _TEXT.sub(_outline, svg)


def _outline(found: re.Match[str]) -> str:
    given = dict(_ATTRIBUTE.findall(found["attributes"]))
    font = QFont(given["font-family"])
    font.setPixelSize(round(float(given["font-size"])))
    font.setBold(int(given["font-weight"]) >= 600)
    path = QPainterPath()
    path.addText(float(given["x"]), float(given["y"]), searchable(font), unescape(found["text"]))
    return f'<path fill="{given["fill"]}" fill-rule="nonzero" stroke="none" d="{_steps(path)}"/>'


def _steps(path: QPainterPath) -> str:
    """A path in the words of SVG, to a hundredth of a unit."""
    words: list[str] = []
    number, count = 0, path.elementCount()
    while number < count:
        here = path.elementAt(number)
        if here.type == QPainterPath.ElementType.CurveToElement:
            points = [path.elementAt(number + step) for step in range(3)]
            words.append("C" + " ".join(f"{point.x:.2f},{point.y:.2f}" for point in points))
            number += 3
            continue
        letter = "M" if here.type == QPainterPath.ElementType.MoveToElement else "L"
        words.append(f"{letter}{here.x:.2f},{here.y:.2f}")
        number += 1
    return "".join(words)
