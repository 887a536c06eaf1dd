"""Catalogue rows, sample sheets, fonts, icons: data only."""
