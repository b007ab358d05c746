"""What every way of sending texts can do, and what may go wrong, in the program's own words.

Sending has three ends and no fourth: a receipt; `ProvenRefused`, when the text provably did not leave and may be tried
again or given up; `OutcomeUnknown`, when nobody here can tell. Only the first two allow another attempt.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar, Protocol, runtime_checkable

LONGEST_BODY = 1600
LONGEST_VALIDITY_SECONDS = 36_000
_E164 = re.compile(r"\+[1-9][0-9]{6,14}")
_SHORT_CODE = re.compile(r"[0-9]{3,8}")


@runtime_checkable
class Fields(Protocol):
    """The fields of a posted form; a name may come several times."""

    def getlist(self, key: str, /) -> list[str]: ...

    def __iter__(self) -> Iterator[str]: ...


class Headers(Protocol):
    """The headers of a request, found whatever their case."""

    def get(self, key: str, /) -> str | None: ...


@dataclass(frozen=True)
class OutgoingText:
    """A text that is about to leave, in attempt number `attempt` of the row `public_id`.

    `to` and `sender` are E.164 (the sender may be a short code); `valid_seconds` is how long a provider may still
    deliver it (1 to 36,000).
    """

    to: str
    sender: str
    body: str
    status_callback_url: str
    valid_seconds: int
    public_id: str
    attempt: int

    def __post_init__(self) -> None:
        if not _E164.fullmatch(self.to) or not _is_number(self.sender):
            raise ValueError("A text goes to an E.164 number, from one or from a short code.")
        if not 1 <= self.valid_seconds <= LONGEST_VALIDITY_SECONDS:
            raise ValueError(f"A text is valid for 1 to {LONGEST_VALIDITY_SECONDS} seconds.")
        if not 1 <= len(self.body) <= LONGEST_BODY:
            raise ValueError(f"A text has 1 to {LONGEST_BODY} characters.")


@dataclass(frozen=True)
class SentReceipt:
    """The provider took the text; `status` is a key of `DELIVERY_RANK` or a word not known yet."""

    provider_id: str
    status: str


@dataclass(frozen=True)
class Found:
    """A text that the provider's own list shows as taken."""

    provider_id: str
    to: str
    sender: str
    body: str
    created_at: datetime
    status: str


@dataclass(frozen=True)
class InboundText:
    """What a customer wrote. `received_at` is None where the provider did not say: take the time of arrival.

    `provider_caught` names the provider's own keyword (`stop`, `start`, `help`) that it has already answered.
    """

    provider_id: str
    sender: str
    to: str
    body: str
    media_count: int = 0
    provider_caught: str | None = None
    received_at: datetime | None = None


@dataclass(frozen=True)
class StatusReport:
    """What became of a text. Reports come in any order and several times; `problem` says why one did not arrive."""

    provider_id: str
    status: str
    code: int | None = None
    problem: type[ProvenRefused] | None = None


class ProvenRefused(Exception):
    """The text provably did not leave."""

    # Another attempt would end the same way: never retried.
    is_permanent: ClassVar[bool] = False
    # The next text would meet it as well: the sender rests and the owner is told.
    is_about_sender: ClassVar[bool] = False
    # Waiting in line is no attempt.
    counts_as_attempt: ClassVar[bool] = True

    def __init__(self, code: int | None = None, words: str = "", retry_after_seconds: int | None = None) -> None:
        """`code` is the provider's; `words` name no customer; `retry_after_seconds` where the provider asked for it."""
        self.code = code
        self.words = words or (type(self).__doc__ or "")
        self.retry_after_seconds = retry_after_seconds
        super().__init__(self.words if code is None else f"{self.words} ({code})")


class NotAccepted(ProvenRefused):
    """The provider could not be reached, so nothing was handed over."""

    # It may be away for hours, which no text must end by.
    counts_as_attempt = False


class OptedOut(ProvenRefused):
    """The provider keeps this number as opted out."""

    is_permanent = True


class BadNumber(ProvenRefused):
    """The number does not exist or cannot receive texts."""

    is_permanent = True


class RegionClosed(ProvenRefused):
    """The account may not send to this country."""

    is_permanent = True


class Filtered(ProvenRefused):
    """A carrier or the provider blocked the text; sending it again makes it worse."""

    is_permanent = True


class BadText(ProvenRefused):
    """The text itself was refused: empty, too long or too expensive."""

    is_permanent = True


class Unreachable(ProvenRefused):
    """The phone could not be reached just now."""


class RateLimited(ProvenRefused):
    """Too many texts at once; this one has to wait."""

    counts_as_attempt = False


class NotRegistered(ProvenRefused):
    """The sending number is not registered with the carriers, or not yet."""

    is_about_sender = True
    counts_as_attempt = False


class AccountRefused(ProvenRefused):
    """The provider refused the account or the sending number: look at the settings."""

    is_about_sender = True
    counts_as_attempt = False


class OutcomeUnknown(Exception):
    """Nobody here can tell whether the text left; it is looked up, never sent again by the machine."""


class LookUpFailed(Exception):
    """The provider's list could not be read; nothing is known from that."""


class UnusableHook(Exception):
    """A signed request lacks what it must hold."""


class ForeignHook(UnusableHook):
    """A signed request belongs to another account."""

    def __init__(self, about: InboundText | StatusReport) -> None:
        """`about` is what it says, for a person to look at."""
        self.about = about
        super().__init__(type(self).__doc__)


class Transport(Protocol):
    """A way of sending texts. Every one of them passes `tests/transports/test_contract.py`."""

    name: str
    address: str | None
    """Where the provider is; None where texts stay on this machine."""

    def send(self, text: OutgoingText) -> SentReceipt:
        """Hands over one text in exactly one request; raises ProvenRefused or OutcomeUnknown, nothing else."""
        ...

    def find_sent(self, to: str, sender: str, body: str, since: datetime) -> list[Found]:
        """The taken texts of exactly this wording since then, oldest first. None is no proof that none was taken.

        Raises LookUpFailed.
        """
        ...

    def list_inbound(self, to: str, since: datetime) -> list[InboundText]:
        """What customers wrote to that number since then, oldest first, for what hooks have missed.

        Raises LookUpFailed.
        """
        ...

    def is_genuine(self, url: str, fields: Fields | str, headers: Headers) -> bool:
        """Whether a request to a hook was signed by the provider; never raises.

        `url` is the configured public address with the raw path; `fields` the posted form as it came (all values of a
        repeated name), or the raw text of a body that is no form.
        """
        ...

    def read_inbound(self, fields: Fields) -> InboundText:
        """The text in a genuine request; raises UnusableHook or ForeignHook."""
        ...

    def read_status(self, fields: Fields) -> StatusReport:
        """The report in a genuine request; raises UnusableHook or ForeignHook."""
        ...


def one_value(fields: Fields, name: str, shape: str) -> str:
    """The value of a field that must come exactly once and match this regular expression as a whole.

    The shape is not for tidiness: the signed text has no marks between names and values, so that a captured request
    can be cut differently (`MessageSid=SM..NumMedia0`) and would count as a new one. Raises UnusableHook.
    """
    values = fields.getlist(name)
    if len(values) != 1 or not re.fullmatch(shape, values[0], re.ASCII):
        raise UnusableHook(f"{name} must be there once and hold what belongs there. {UnusableHook.__doc__}")
    return values[0]


def one_number(fields: Fields, name: str) -> str:
    """The same for an E.164 number or a short code."""
    return one_value(fields, name, f"{_E164.pattern}|{_SHORT_CODE.pattern}")


def body_of(fields: Fields, name: str) -> str:
    """The words of a text, which may be empty (a picture alone); databases refuse NUL, so it is shown as unreadable."""
    values = fields.getlist(name)
    if len(values) != 1:
        raise UnusableHook(f"{name} must be there once. {UnusableHook.__doc__}")
    return values[0].replace("\x00", "\ufffd")


def _is_number(value: str) -> bool:
    return bool(_E164.fullmatch(value) or _SHORT_CODE.fullmatch(value))
