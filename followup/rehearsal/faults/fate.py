"""What becomes of one request to take a text, drawn from a seed: taken or not, how it is answered, what is told later.

Late accepts, lagging lists, missing reports and bodies that are no longer shown were all seen by users of providers.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from random import Random

LATEST_ACCEPT = timedelta(seconds=26)
LONGEST_LAG = timedelta(minutes=15)
STATUSES = ("queued", "sending", "sent", "delivered")

# How often each happens, in percent: taken and answered is the rest.
TAKEN = {
    "silent": 4, "late": 5, "reset": 4, "closed": 3, "500": 3, "503": 3, "half an answer": 3, "HTML": 3, "no sid": 3,
}  # fmt: skip
NOT_TAKEN = {
    "silent, not taken": 2, "500, not taken": 2, "429": 4, "429 for 20 s": 2, "21211": 2, "21610": 2, "400": 1,
}  # fmt: skip
PROVEN_REFUSALS = ("429", "429 for 20 s", "21211", "21610", "400", "20003")
PERMANENT = ("21211", "21610")
ANSWERED = "answered"


@dataclass(frozen=True)
class Fate:
    """`how` it is answered; where it is taken, when (`late_by`), from when the list shows it (`lag`), whether the list
    still shows its words, and its reports with their delays, in the order in which they are sent."""

    how: str
    is_taken: bool = True
    late_by: timedelta = timedelta(0)
    lag: timedelta = timedelta(0)
    is_redacted: bool = False
    reports: tuple[tuple[timedelta, str], ...] = ()

    @property
    def is_proven_refusal(self) -> bool:
        """Whether the answer proves that nothing was taken."""
        return self.how in PROVEN_REFUSALS


class Fates:
    """Draws a fate for the n-th request to a number: the same for the same seed, whatever else happens between."""

    def __init__(
        self, seed: int, *, first: tuple[str, ...] = (), share: float = 1.0, latest: timedelta = timedelta(seconds=300)
    ) -> None:
        """`first` are the ways in which the first request to each number is answered, one number after the other.

        `share` of the usual faults happen; a delivery report comes as late as `latest`.
        """
        self._seed = seed
        self._first = first
        self._share, self._latest = share, latest
        self._asked: dict[str, int] = {}
        self._lists_asked = 0

    def draw(self, number: str) -> Fate:
        """The fate of the next request to that number."""
        nth = self._asked[number] = self._asked.get(number, 0) + 1
        random = Random(f"{self._seed} {number} {nth}")
        how = (
            self._first[(len(self._asked) - 1) % len(self._first)]
            if self._first and nth == 1
            else _how(random, self._share)
        )
        if how in NOT_TAKEN or how in PROVEN_REFUSALS:
            return Fate(how, is_taken=False)
        late_by = LATEST_ACCEPT * random.uniform(0.05, 1) if how == "late" else timedelta(0)
        lag = LONGEST_LAG * random.random() if random.random() < 0.3 else timedelta(0)
        return Fate(how, True, late_by, lag, random.random() < 0.1, _reports(random, self._latest))

    def list_fails(self) -> bool:
        """Whether the list cannot be read this time."""
        self._lists_asked += 1
        return Random(f"{self._seed} list {self._lists_asked}").random() < 0.1 * self._share


def _how(random: Random, share: float) -> str:
    chances = {name: share * chance for name, chance in {**TAKEN, **NOT_TAKEN}.items()}
    names = [*chances, ANSWERED]
    return random.choices(names, [*chances.values(), 100 - sum(chances.values())])[0]


def _reports(random: Random, latest: timedelta) -> tuple[tuple[timedelta, str], ...]:
    """In any order, some twice, sometimes none at all; the first may come before the answer to the request."""
    if random.random() < 0.3:
        return ()
    told = random.sample(STATUSES, random.randint(1, 3))
    told += random.sample(told, random.randint(0, 1))
    delays = sorted(latest * random.random() for _ in told)
    if random.random() < 0.25:
        delays[0] = timedelta(0)
    return tuple(zip(delays, told, strict=True))
