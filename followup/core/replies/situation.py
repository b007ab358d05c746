"""Everything that the decision about a reply looks at, read once."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.replies.contract import ReplyIn
from followup.core.replies.mentions import Setting
from followup.core.replies.offers import Pick
from followup.core.replies.plain import Plain
from followup.core.replies.said import Said
from followup.core.replies.times import Read

STANDS_AFTER_START = timedelta(hours=2)
"""How long after its start a booking still stands."""


@dataclass(frozen=True)
class Situation:
    """A reply, read: the text, its times, and what was known when it came."""

    reply: ReplyIn
    plain: Plain
    setting: Setting
    read: Read
    pick: Pick
    said: Said
    booked: datetime | None
    """The start of the booking that still stands."""

    @property
    def asked(self) -> str | None:
        """What our last message asked; a visit asked about a standing booking reads like its confirmation."""
        return self.said.asked

    @property
    def today(self) -> date:
        """The day on which the text came."""
        return self.reply.now.date()

    @property
    def text(self) -> str:
        """The plain text."""
        return self.plain.text

    @property
    def about(self) -> date | None:
        """The day that an hour without a day belongs to."""
        return day_about(self.reply, self.booked)


def standing(reply: ReplyIn) -> datetime | None:
    """The booking of the context where it still stands at `now`."""
    if reply.booked and reply.now <= reply.booked + STANDS_AFTER_START:
        return reply.booked
    return None


def day_about(reply: ReplyIn, booked: datetime | None) -> date | None:
    """The day under discussion: as told, else the one day of the offers, else that of the booking."""
    if reply.about:
        return reply.about
    days = {offer.date() for offer in reply.offered}
    if len(days) == 1:
        return days.pop()
    return booked.date() if booked and not days else None
