"""Sheets that show a finding whose remedy is exact: by rule, with the title of the remedy that is tried."""

from __future__ import annotations

from tests.core.mending_pins import PINS
from tests.core.mending_supplies import SUPPLIES
from tests.core.mending_volts import VOLTS

SHEETS = {**PINS, **VOLTS, **SUPPLIES}
