"""What texts bring, learned from this shop's own: how likely a booking is, and in which week after the text the visit.

Both are drawn towards what is usual by the weight of a hundred texts, so that a shop that has sent few is paced as
usual, and one that has sent a thousand by its own customers.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from followup.core.planning.pacing.weeks import BOOKED_ON_TRY, LANDING_SHARES

# So many texts count as much as what is usual (assumption); of as many first texts come the visits that the shares do.
USUAL_WEIGHS_TEXTS = 100
# A booking came of a text where it was asked for within the weeks in which its visits are counted.
COUNTS_FOR_DAYS = 7 * len(LANDING_SHARES)


@dataclass(frozen=True)
class Brought:
    """`booked`: chances (0-1) of a booking by a first and by a second text; `landing`: shares of the visits in each
    week after the text, which sum to 1; `texts` and `visits`: how many of the shop's own these rest on."""

    booked: tuple[float, ...] = BOOKED_ON_TRY
    landing: tuple[float, ...] = LANDING_SHARES
    texts: tuple[int, ...] = (0, 0)
    visits: int = 0

    def chance(self, try_number: int) -> float:
        """The chance that this text brings a booking."""
        return self.booked[min(try_number, len(self.booked)) - 1]


USUAL = Brought()


def learn_brought(texts: Iterable[tuple[int, bool]], landed_days: Iterable[float]) -> Brought:
    """Out of texts, (number of the try, whether a booking came of it) each, and the days from text to visit of those
    that were booked. Who comes later than four weeks counts in the fourth."""
    sent, came = Counter[int](), Counter[int]()
    for number, is_booked in texts:
        of = min(number, len(BOOKED_ON_TRY))
        sent[of] += 1
        came[of] += is_booked
    last = len(LANDING_SHARES) - 1
    weeks = Counter(min(max(int(days // 7), 0), last) for days in landed_days)
    visits, usual_visits = weeks.total(), USUAL_WEIGHS_TEXTS * BOOKED_ON_TRY[0]
    booked = tuple(
        (came[number] + usual * USUAL_WEIGHS_TEXTS) / (sent[number] + USUAL_WEIGHS_TEXTS)
        for number, usual in enumerate(BOOKED_ON_TRY, start=1)
    )
    landing = tuple(
        (weeks[week] + usual * usual_visits) / (visits + usual_visits) for week, usual in enumerate(LANDING_SHARES)
    )
    return Brought(booked, landing, tuple(sent[number] for number in range(1, len(BOOKED_ON_TRY) + 1)), visits)
