"""The warm-up: the same circuit in time, from cold heaters to the steady state."""
