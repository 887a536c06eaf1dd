"""The instant that is looked at is announced when it is another one, and only then."""

from __future__ import annotations

from app.warmup.playhead import Playhead


def test_each_new_instant_is_announced_once() -> None:
    playhead, said = Playhead(), []
    playhead.changed.connect(said.append)
    assert playhead.t_s is None
    for instant in (2.5, 2.5, 0.0, None, None):
        playhead.set(instant)
    assert said == [2.5, 0.0, None]
    assert playhead.t_s is None
