"""The warm-up: the same circuit in time, from cold heaters to the steady state."""

from core.warmup.line import Progress
from core.warmup.results import Start, Traces, WarmupSummary
from core.warmup.run import WarmupRun, warm_up

__all__ = ["Progress", "Start", "Traces", "WarmupRun", "WarmupSummary", "warm_up"]
