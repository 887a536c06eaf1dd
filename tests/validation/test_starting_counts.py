"""A switching supply that started four boards of tubes and not five.

Source: a builder's blog, April 2013: a 12 V 3 A switching supply started four boards of little more than 2 A in all,
with five its output stayed at nothing and it was unharmed. The boards take 0.52 A each; hot they have 5.33 times
their cold resistance. Neither the threshold nor the cut-out time of that supply is known, so four are uncertain, and
five are what the supply certainly did not start. No tolerance: these are whole numbers.
"""

from __future__ import annotations

import pytest

from core.sheet import DcSupply, Overload
from core.starting import most_that_start

RATED_V, RATED_A, COLD_RATIO = 12.0, 0.52, 5.33


def supply(limit_a: float = 3.0, overload: Overload = "hiccup") -> DcSupply:
    return DcSupply(id="U1", set_v=RATED_V, limit_a=limit_a, overload=overload)


@pytest.fixture(scope="module")
def counts():
    return most_that_start(RATED_V, RATED_A, COLD_RATIO, supply()).by_overload


def test_four_on_a_supply_that_retries_are_uncertain(counts) -> None:
    """It did start them, but by its rating and any usual cut-out time it need not have."""
    assert counts["hiccup"].verdict(4) == "uncertain"


def test_five_on_a_supply_that_retries_do_not_start(counts) -> None:
    """Neither did they, however willing such supplies are."""
    assert counts["hiccup"].verdict(5) == "does not start"


@pytest.mark.parametrize("number", [4, 5])
def test_a_supply_that_holds_at_its_limit_starts_both(counts, number: int) -> None:
    """It warms the heaters slowly: 2.08 A and 2.6 A are below its 3 A."""
    assert counts["constant-current"].verdict(number) == "starts"


@pytest.mark.parametrize("overload", ["constant-current", "hiccup", "foldback", "latch-off"])
def test_ten_times_the_steady_current_starts_anything(overload: Overload) -> None:
    """The cold current is 5.33 times the steady one, so such a supply never comes to its limit."""
    found = most_that_start(RATED_V, RATED_A, COLD_RATIO, supply(10 * 5 * RATED_A, overload), most=5)
    assert found.by_overload[overload].verdict(5) == "starts"
