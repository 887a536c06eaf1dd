"""What the answers say about each part, in the form a symbol paints: values, not live objects."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

# ok = within tolerance, over, under, cold = open or unheated, none = nothing to say, stale = not yet solved
State = Literal["ok", "over", "under", "cold", "none", "stale"]


@dataclass(frozen=True)
class PartLook:
    """How one part looks at the chosen condition.

    ``kelvin`` is the heater temperature by section name (``4-9``; a lamp uses ``1-2``); ``values`` is the line
    of figures beside the symbol; ``pin_values`` the volts of each terminal; ``pulled_in`` a relay's state.
    ``remark`` says in words how it stands, in place of the mark's own word.
    """

    state: State = "none"
    values: str = ""
    kelvin: dict[str, float] = field(default_factory=dict)
    pin_values: dict[str, str] = field(default_factory=dict)
    pulled_in: bool = False
    remark: str = ""
