"""What a provider of a trial keeps, and how its list shows it: requests for texts, and what customers wrote."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from email.utils import format_datetime
from typing import Any

from followup.rehearsal.faults.fate import Fate


@dataclass(frozen=True)
class Post:
    """One request that would have made a text; `sid` where one was taken."""

    public_id: str
    attempt: int
    to: str
    sender: str
    body: str
    valid_seconds: int
    callback: str
    at: datetime
    fate: Fate
    sid: str | None

    @property
    def taken_at(self) -> datetime:
        """When it was taken."""
        return self.at + self.fate.late_by


@dataclass
class Written:
    """What a customer wrote, and when the program first had it: by its hook, or from the list.

    `meant` is what the customer meant by it, for a judge.
    """

    sid: str
    sender: str
    to: str
    body: str
    at: datetime
    meant: str = ""
    lag: timedelta = timedelta(0)
    acknowledged_at: datetime | None = None
    listed_at: datetime | None = None

    @property
    def known_at(self) -> datetime | None:
        """When the program first could have read it."""
        return min((one for one in (self.acknowledged_at, self.listed_at) if one), default=None)


def as_json(post: Post | Written) -> dict[str, Any]:
    """A text as the provider's documents show it."""
    if isinstance(post, Written):
        return {
            "sid": post.sid, "to": post.to, "from": post.sender, "body": post.body, "status": "received",
            "direction": "inbound", "date_created": format_datetime(post.at), "date_sent": format_datetime(post.at),
            "num_media": "0", "error_code": None,
        }  # fmt: skip
    return {
        "sid": post.sid, "to": post.to, "from": post.sender, "body": "" if post.fate.is_redacted else post.body,
        "status": "queued", "direction": "outbound-api", "date_created": format_datetime(post.taken_at),
        "date_sent": None, "num_media": "0", "error_code": None,
    }  # fmt: skip
