"""Proposals for a soft start: sized by arithmetic, tried in the warm-up, carried as remedies."""

from core.softstart.results import Figures, Goal, Shown, Variant, Way
from core.softstart.variants import variants

__all__ = ["Figures", "Goal", "Shown", "Variant", "Way", "variants"]
