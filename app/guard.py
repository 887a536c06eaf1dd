"""Keeping exceptions inside the methods that Qt calls.

PySide 6.10 on Python 3.11 ends the process when an exception that nobody has looked at yet, such as a KeyError
raised by a dict, leaves an overridden event method. Guarded classes hand such exceptions to the interpreter's
hook, which logs them and tells the user, and the program goes on.
"""

from __future__ import annotations

import functools
import sys
from collections.abc import Callable
from typing import Any, TypeVar

Class = TypeVar("Class", bound=type)

# methods without "Event" in their name, and what Qt gets back where an answer is wanted: nothing, not handled
_ANSWERS = {
    "event": False,
    "eventFilter": False,
    "viewportEvent": False,
    "focusNextPrevChild": False,
    "paint": None,
    "data": None,
    "setData": False,
}


def guarded(cls: Class) -> Class:
    """Class decorator: guard every event method, paint, data and setData that the class itself overrides."""
    for name, method in list(vars(cls).items()):
        if callable(method) and (name.endswith("Event") or name in _ANSWERS):
            setattr(cls, name, _guard(method, _ANSWERS.get(name)))
    return cls


def _guard(method: Callable[..., Any], answer: object) -> Callable[..., Any]:
    @functools.wraps(method)
    def call(*arguments: Any) -> Any:
        try:
            return method(*arguments)
        except Exception:
            sys.excepthook(*sys.exc_info())
            return answer

    return call
