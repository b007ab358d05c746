"""All that planning looks at for one phone, person and car: plain values that a workflow fills from the store."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime
from functools import cached_property

from followup.core.advisories import Advisory
from followup.core.consent import ConsentStanding
from followup.core.customer import Person, Phone
from followup.core.planning.best_hour import HourPicture, Leaving
from followup.core.planning.hours import Where
from followup.core.planning.state_hours import state_of
from followup.core.shop import Shop
from followup.core.visit import Recommendation, Visit, Work
from followup.core.wall import day_of

ItemAt = tuple[str, str]
"""An item's code and its position ("" where it has none)."""


@dataclass(frozen=True)
class DueItem:
    """One item of the car with its chances today (0-1), out of its due window.

    `chance_by_lead`: due within the lead time; `chance_joined`: within lead plus the joining days; `chance_near`:
    so near its limit by then that the visit does the work, None where that is not asked; `chance_legal`: at its legal
    limit within the lead time; `is_past_legal`: already past it. `measured_on`: the last reading or
    replacement that the forecast used. `is_free_top_off`: the shop tops it off free.
    """

    item: str
    position: str
    chance_by_lead: float
    chance_joined: float
    measured_on: date | None = None
    likely_on: date | None = None
    chance_legal: float = 0.0
    is_past_legal: bool = False
    is_free_top_off: bool = False
    chance_near: float | None = None

    @property
    def at(self) -> ItemAt:
        """Item and position."""
        return self.item, self.position


@dataclass(frozen=True)
class EarlierInvite:
    """An invite to this phone that left or is planned (dropped and failed ones do not count); `at` is when."""

    reason: str
    raised_by: str
    try_number: int
    at: datetime
    vehicle: str
    items: tuple[ItemAt, ...] = ()


@dataclass(frozen=True)
class BookingSeen:
    """A booking request of this car, however it was made (text, phone, counter), with the work that it was for."""

    code: str
    state: str
    starts_at: datetime | None
    asked_at: datetime
    items: tuple[ItemAt, ...] = ()


@dataclass(frozen=True)
class Rest:
    """What the customer said of an item: `no`, `later` or `done`. `until` None: by the shop's rule; for `done` until
    it is measured again."""

    item: str
    position: str
    because: str
    from_on: date
    until: date | None = None


@dataclass(frozen=True)
class Recall:
    """A recall that staff entered for this car."""

    code: str
    entered_on: date


@dataclass(frozen=True)
class Paced:
    """The week that an invite about due work is paced into: it waits until that Monday (None: past all weeks that are
    paced), and `says` why. `is_legal`: even a legal limit waits, since nothing at all is free."""

    until_on: date | None
    says: str
    is_legal: bool = False


@dataclass(frozen=True)
class SetChange:
    """The season in which the shop changes sets of tires and has drawn this car; `until_on` is its last day."""

    season_id: int
    to_set: str
    began_on: date
    until_on: date


@dataclass(frozen=True)
class NumberPicture:
    """All that decides about one number, whatever the car: what `number_rules.may_text` is asked with.

    The persons' facts hold where one of those who use the phone has them; `nobody_because` is why the last tie of a
    person to the number ended. `has_open_symptom`, `has_open_complaint` and `is_with_a_person` are the thread's, and
    `open_since` is when the oldest symptom or complaint that is open came.
    `written_at` is when the number last wrote, `unread_since` when the oldest text came that nothing has read yet.
    `invites` are the others to this number; `told_at` when texts about the same subject left. `needs_registration`:
    texts would reach real phones, and the registration is missing.
    """

    shop: Shop
    phone: Phone
    consent: ConsentStanding
    is_deceased: bool = False
    is_fleet: bool = False
    paused_until: date | None = None
    has_open_symptom: bool = False
    has_open_complaint: bool = False
    is_with_a_person: bool = False
    is_frozen: bool = False
    open_since: datetime | None = None
    nobody_because: str | None = None
    needs_registration: bool = False
    written_at: datetime | None = None
    unread_since: datetime | None = None
    invites: tuple[EarlierInvite, ...] = ()
    told_at: tuple[datetime, ...] = ()

    @property
    def where(self) -> Where:
        """Where the phone may be."""
        return Where(self.phone.zones, state_of(self.phone.number))

    def day(self, now: datetime) -> date:
        """The shop's day at that instant."""
        return day_of(now, self.shop.zone)


@dataclass(frozen=True)
class CarPicture:
    """One car with the phone and person that an invite about it would go to, as everything stands at `now`.

    `vehicle` is the car's code. `is_tie_over`: sold, traded, totaled; `is_tie_held`: the number or the car is not
    theirs by their own word, until a person looked. `complained_on`: the last complaint. `is_with_a_person`: a person
    has the thread. `needs_registration`: texts would reach real phones, and the registration is missing.
    `is_odometer_worth_a_text`: the forecast gains more from a new reading than a text of its own costs,
    `is_odometer_asked_along`: it gains enough for a line in an invite that leaves anyway. `advisories`:
    what the readings show side by side; whether there is a text never hangs on them. `free_top_offs`: what this car has
    that the shop tops off free, read before or not. `paced`: the week that its
    invite is paced into, where it was placed and nothing is news since. `hour`: what the choice of its hour
    rests on; None where hours are not chosen. `set_change`: where the car was drawn to change its set of tires.
    """

    shop: Shop
    phone: Phone
    person: Person
    vehicle: str
    consent: ConsentStanding
    due: tuple[DueItem, ...] = ()
    advisories: tuple[Advisory, ...] = ()
    invites: tuple[EarlierInvite, ...] = ()
    visits: tuple[Visit, ...] = ()
    work: tuple[Work, ...] = ()
    recommendations: tuple[Recommendation, ...] = ()
    bookings: tuple[BookingSeen, ...] = ()
    rests: tuple[Rest, ...] = ()
    recalls: tuple[Recall, ...] = ()
    is_tie_over: bool = False
    is_tie_held: bool = False
    has_open_complaint: bool = False
    has_open_symptom: bool = False
    complained_on: date | None = None
    is_with_a_person: bool = False
    needs_registration: bool = False
    is_odometer_worth_a_text: bool = False
    is_odometer_asked_along: bool = False
    free_top_offs: tuple[str, ...] = ()
    paced: Paced | None = None
    hour: HourPicture | None = None
    set_change: SetChange | None = None

    @cached_property
    def of_number(self) -> NumberPicture:
        """What of it decides about the number, whatever the car."""
        return NumberPicture(
            self.shop, self.phone, self.consent, self.person.is_deceased, self.person.is_fleet,
            self.person.paused_until, self.has_open_symptom, self.has_open_complaint, self.is_with_a_person,
            needs_registration=self.needs_registration, invites=self.invites,
        )  # fmt: skip

    @property
    def where(self) -> Where:
        """Where the phone may be."""
        return self.of_number.where

    def day(self, now: datetime) -> date:
        """The shop's day at that instant."""
        return day_of(now, self.shop.zone)

    def last_closed(self) -> Visit | None:
        """The visit that closed last."""
        closed = [visit for visit in self.visits if visit.closed_at]
        return max(closed, key=lambda visit: visit.closed_at or visit.opened_at, default=None)


@dataclass(frozen=True)
class Because:
    """A rule and what it says of this case, in words for `followup plan` and the advisor's "why not"."""

    rule: str
    says: str


@dataclass(frozen=True)
class PlannedText:
    """An invite that is to leave at `leaves_at` (aware UTC). Unique by (phone, reason, raised_by, try).

    `because` says why, for the advisor's "why did she get this"; `advised` are the keys of the advisories that it
    tells too; `asks_odometer` where it asks for the reading along with the rest; `leaving` how its hour was
    chosen.
    """

    kind: str
    reason: str
    raised_by: str
    try_number: int
    phone_id: int
    person_id: int
    vehicle: str
    items: tuple[ItemAt, ...]
    leaves_at: datetime
    valid_until: datetime
    because: str
    is_legal: bool = False
    chance: float = 0.0
    advised: tuple[str, ...] = ()
    asks_odometer: bool = False
    leaving: Leaving | None = None

    @property
    def key(self) -> tuple[int, str, str, int]:
        """What is unique: planning twice plans nothing twice."""
        return self.phone_id, self.reason, self.raised_by, self.try_number


@dataclass(frozen=True)
class PhoneTask:
    """A call that an advisor makes because no text may say it; `key` is unique, so that it is listed once."""

    key: str
    says: str
    items: tuple[ItemAt, ...] = ()


@dataclass(frozen=True)
class Decision:
    """What is planned for one car now: at most one text, every reason against the others, and calls to make."""

    text: PlannedText | None
    why_not: tuple[Because, ...] = ()
    phone_tasks: tuple[PhoneTask, ...] = field(default=())
