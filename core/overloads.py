"""When a supply, a resistor or a fuse carries too much, decided once for the rules and the drawing.

Without numerics, as the drawing asks it before they are loaded.
"""

from __future__ import annotations

from core.results import ROUNDING, BranchPoint, SupplyPoint
from core.sheet import Fuse, Resistor


def is_overloaded(supply: SupplyPoint) -> bool:
    """Whether a supply is asked for more than it may give."""
    load = supply.load_pct
    return load is not None and load > 100 * (1 + ROUNDING)


def is_too_hot(resistor: Resistor, branch: BranchPoint) -> bool:
    """Whether a resistor turns more into heat than it is rated for."""
    return resistor.rated_w is not None and branch.w > resistor.rated_w * (1 + ROUNDING)


def is_blown(fuse: Fuse, branch: BranchPoint) -> bool:
    """Whether a fuse carries more than it is made for, and will blow in the long run."""
    return branch.a > fuse.rated_a * (1 + ROUNDING)
