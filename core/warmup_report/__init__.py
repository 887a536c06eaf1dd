"""What switching on tells, as plain data, as lines to read, as a table, and in one sentence."""

from core.warmup_report.account import account_lines
from core.warmup_report.data import FORMAT, VERSION, warmup_report
from core.warmup_report.table import warmup_csv
from core.warmup_report.verdict import remarks, verdict

__all__ = ["FORMAT", "VERSION", "account_lines", "remarks", "verdict", "warmup_csv", "warmup_report"]
