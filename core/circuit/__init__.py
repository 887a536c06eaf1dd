"""From the sheet to a graph of terminals and branches, its islands, and their index arrays."""

from core.circuit.build import Circuit, Island, build

__all__ = ["Circuit", "Island", "build"]
