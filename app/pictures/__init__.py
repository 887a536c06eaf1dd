"""Pictures and prints of a sheet: the same painting as on the screen, into files and onto paper."""
