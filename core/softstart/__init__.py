"""Proposals for a soft start of a supply: sized by arithmetic and from the catalogue."""
