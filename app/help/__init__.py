"""The page of keys and gestures."""
