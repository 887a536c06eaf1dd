"""The warm-up drawer: what happens from switching on, second by second."""
