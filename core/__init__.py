"""The pure model: sheet, catalogue, circuit, solver and rules. Knows no screen, clock or environment."""
