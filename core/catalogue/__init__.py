"""Types of tubes, lamps, thermistors, relays, fuses and wire, each value with its source and certainty."""

from core.catalogue.catalogue import Catalogue, load_builtin, load_user
from core.catalogue.search import SearchHit

__all__ = ["Catalogue", "SearchHit", "load_builtin", "load_user"]
