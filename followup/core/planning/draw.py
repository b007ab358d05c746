"""Fair draws: the same customer, the same draw, whoever asks and however often; nobody can steer it.

A draw is a hash of what is drawn for and of the phone, read as a number between 0 and 1. It needs no row, so that a
text that is planned, sent and counted by three processes falls into the same group.
"""

from __future__ import annotations

from datetime import date
from hashlib import sha256

from followup.core.planning.picture import Because, CarPicture

# What is measured by leaving it out. A legal limit, a recall, a missed visit and the question after a visit are for
# the customer's own good and never left out.
MEASURED_REASONS = (
    "due_work", "set_change", "free_service", "winter_battery", "winter_top_off", "long_unseen", "odometer_question",
)  # fmt: skip


def drawn(what_for: str, phone_id: int) -> float:
    """A number from 0 (may be) to 1 (never), even over phones for each `what_for` (SHA-256, its first 53 bits)."""
    digest = sha256(f"{what_for} {phone_id}".encode()).digest()
    return (int.from_bytes(digest[:8], "big") >> 11) / 2**53


def is_second(trial_key: str, phone_id: int) -> bool:
    """Whether a phone reads the second wording of a trial: one in two."""
    return drawn(f"wording {trial_key}", phone_id) >= 0.5


def is_without_invites(share: float, shop_id: int, on: date, phone_id: int) -> bool:
    """Whether a phone is in the small group that gets no invites in the year of `on`; drawn anew each year, so that
    nobody is left out for good."""
    return drawn(f"without invites {shop_id} {on.year}", phone_id) < share


def left_out(picture: CarPicture, reason: str, now_on: date, *, is_legal: bool) -> Because | None:
    """Why this phone gets no such invite: it was drawn into the group without; None where it was not."""
    share = picture.shop.rules.without_invites_share
    if is_legal or reason not in MEASURED_REASONS:
        return None
    if not is_without_invites(share, picture.shop.id, now_on, picture.phone.id):
        return None
    says = f"drawn into the {share:.0%} who get no invites in {now_on.year}, to measure what texts bring"
    return Because("without_invites", says)
