"""Relays in the state that a start from cold leads to, over all lines that they couple.

A coil in one line may work a contact in another. Lines meet nowhere else than in their relays, so each is solved by
itself with the relays as they stand, and the relays act on all of them together until none moves any more.
"""

from __future__ import annotations

from core.circuit import Island
from core.elements.branch import Coil
from core.results import Condition, Unsolved
from core.sentences import sentence
from core.solution import Answer, solve_island

Answers = tuple[Answer, ...]
"""One for each member of a cluster."""

MAX_RELAY_TRIES = 20  # and one more for each relay: in a chain of relays each may work the next


def solve_cluster(
    cluster: Island, conditions: tuple[Condition, ...], ambient_k: float
) -> tuple[Answers, ...]:
    """Answers for the members of a cluster at every condition; an unsolvable member has an :class:`Unsolved`."""
    if Coil not in cluster.kinds:
        return tuple((answer,) for answer in solve_island(cluster, conditions, frozenset(), ambient_k))
    return tuple(_Relays(cluster, condition, ambient_k).settle() for condition in conditions)


class _Relays:
    """The relays of one cluster at one condition."""

    def __init__(self, cluster: Island, condition: Condition, ambient_k: float) -> None:
        self._members = cluster.members
        self._condition = condition
        self._ambient_k = ambient_k
        self._coils = {b.key: law for b in cluster.branches if isinstance(law := b.law, Coil)}
        self._known: dict[tuple[int, frozenset[str]], Answer] = {}

    def settle(self) -> Answers:
        """Start released and let relays act until none changes; a cold start is the instant before any moves."""
        pulled: frozenset[str] = frozenset()
        seen: list[frozenset[str]] = []
        while True:
            answers = self._solve(pulled)
            after = pulled if self._condition.cold else self._after(answers, pulled)
            if after == pulled:
                return answers
            seen.append(pulled)
            pulled = after
            if pulled in seen or len(seen) == MAX_RELAY_TRIES + len(self._coils):
                return self._chattering(answers, _restless(seen, pulled))

    def _solve(self, pulled: frozenset[str]) -> Answers:
        """Every member with these relays pulled in; one whose relays stand as before is not solved again."""
        found = []
        for at, member in enumerate(self._members):
            own = pulled & member.relays
            if (at, own) not in self._known:
                self._known[at, own] = solve_island(member, (self._condition,), own, self._ambient_k)[0]
            found.append(self._known[at, own])
        return tuple(found)

    def _after(self, answers: Answers, pulled: frozenset[str]) -> frozenset[str]:
        """Which relays are pulled in next; one whose line has no answer counts as released."""
        after = set()
        for answer in answers:
            if not isinstance(answer, Unsolved):
                for relay, coil in self._coils.items():
                    at_work = answer.branches.get(relay)
                    least = coil.drop_out_v if relay in pulled else coil.pull_in_v
                    if at_work is not None and at_work.v >= least:
                        after.add(relay)
        return frozenset(after)

    def _chattering(self, answers: Answers, restless: frozenset[str]) -> Answers:
        """No answer for the lines in which a relay has a contact that never comes to rest; the others keep theirs."""
        ids = tuple(relay for relay in self._coils if relay in restless)
        reason = (
            sentence("the relay chatters: pulling in takes away what pulled it in")
            if len(ids) == 1
            else sentence("the relays chatter: pulling in takes away what pulled them in")
        )
        return tuple(
            Unsolved(reason, ids, member.terminals) if member.relays & restless else answer
            for member, answer in zip(self._members, answers, strict=True)
        )


def _restless(seen: list[frozenset[str]], again: frozenset[str]) -> frozenset[str]:
    """Relays that move for ever: in the states since the one that came ``again``, or in all where none did."""
    ring = seen[seen.index(again) :] if again in seen else seen
    return frozenset.union(*ring) - frozenset.intersection(*ring)
