"""The panes around the drawing."""
