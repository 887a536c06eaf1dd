"""The drawing: scene, items, gestures and symbols."""
