"""The reply contract as types: what goes into understanding and what comes out, as JSON.

`ReplyIn.model_validate_json` reads one line; `ReplyOut.model_dump_json` writes one. Times are wall times at the shop
without an offset, `2026-03-05T09:30`; an hour without a day is `T09:30`.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Annotated, Literal
from zoneinfo import ZoneInfo

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, NaiveDatetime, field_validator

from followup.core.replies.meaning import MEANINGS

WEEKDAYS: tuple[str, ...] = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")

USUAL_HOURS: dict[str, tuple[str, str]] = {
    **dict.fromkeys(WEEKDAYS[:5], ("07:30", "18:00")),
    "sat": ("08:00", "14:00"),
}
"""Opening hours where the context names none."""

ClockText = Annotated[str, Field(pattern=r"^([01]\d|2[0-3]):[0-5]\d$")]
Asked = Literal["visit", "day", "time", "slot", "confirm", "odometer", "car", "walk_in", "after_visit", "confirm_stop"]
Question = Literal["day", "time", "am_or_pm", "slot", "car", "odometer", "confirm_stop"]
Need = Literal["wait", "ride", "loaner", "early_drop", "late_pickup"]
DistanceUnit = Literal["mi", "km"]
Grain = Literal["time", "part", "day", "week"]
Language = Literal["en", "es"]
Verdict = Literal["same", "better", "worse", "other"]


def _as_tuple(value: object) -> object:
    """A JSON list as a tuple, null as an empty one: what a validator before the strict one must do itself."""
    if value is None:
        return ()
    return tuple(value) if isinstance(value, list) else value


def _as_moment(value: object) -> object:
    """An ISO moment read from JSON text; anything else is left to the strict check."""
    try:
        return datetime.fromisoformat(value) if isinstance(value, str) else value
    except ValueError:
        return value


def _as_day(value: object) -> object:
    """An ISO date read from JSON text; anything else is left to the strict check."""
    try:
        return date.fromisoformat(value) if isinstance(value, str) else value
    except ValueError:
        return value


def _pair(value: object) -> object:
    """Opening hours with each list of two as a tuple; null is the usual hours."""
    if value is None:
        return dict(USUAL_HOURS)
    if not isinstance(value, dict):
        return value
    return {day: tuple(span) if isinstance(span, list) else span for day, span in value.items()}


Moment = Annotated[NaiveDatetime, BeforeValidator(_as_moment)]
Day = Annotated[date, BeforeValidator(_as_day)]


class KnownOdometer(BaseModel):
    """The last known reading of the car under discussion; `per_day` is the expected distance a day in `unit`."""

    model_config = ConfigDict(strict=True, frozen=True)

    value: float = Field(ge=0)
    unit: DistanceUnit = "mi"
    on: date | None = None
    per_day: float | None = Field(default=None, ge=0)


class ReplyIn(BaseModel):
    """One text as received, with what the program knew when it came."""

    model_config = ConfigDict(strict=True, frozen=True)

    text: str
    now: NaiveDatetime
    zone: str = "America/Chicago"
    hours: Annotated[dict[str, tuple[ClockText, ClockText]], BeforeValidator(_pair)] = Field(
        default_factory=lambda: dict(USUAL_HOURS)
    )
    closed_on: Annotated[tuple[Day, ...], BeforeValidator(_as_tuple)] = ()
    offered: Annotated[tuple[Moment, ...], BeforeValidator(_as_tuple)] = ()
    asked: Asked | None = "visit"
    about: date | None = None
    booked: NaiveDatetime | None = None
    cars: Annotated[tuple[str, ...], BeforeValidator(_as_tuple)] = ()
    odometer: KnownOdometer | None = None
    order: Literal["month-first", "day-first"] = "month-first"
    language: Language | None = None

    @field_validator("zone")
    @classmethod
    def _zone_exists(cls, zone: str) -> str:
        try:
            ZoneInfo(zone)
        except (KeyError, ValueError, OSError) as fault:
            raise ValueError(f"no such time zone: {zone!r}; name one of the IANA list, like America/Chicago") from fault
        return zone

    @field_validator("hours")
    @classmethod
    def _days_exist(cls, hours: dict[str, tuple[str, str]]) -> dict[str, tuple[str, str]]:
        for day, (opens, closes) in hours.items():
            if day not in WEEKDAYS:
                raise ValueError(f"no such weekday: {day!r}; use {', '.join(WEEKDAYS)}")
            if opens >= closes:
                raise ValueError(f"{day} closes at {closes}, not after it opens at {opens}")
        return hours


class TimeWindow(BaseModel):
    """A visit time: a point (`end` null), a part of a day, a whole day, or a week. ISO local, or `T15:00` alone."""

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid")

    start: str
    end: str | None
    grain: Grain


class OdometerReading(BaseModel):
    """A reading that the customer told."""

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid")

    value: int
    unit: DistanceUnit


class ReplyOut(BaseModel):
    """What a reply says: the one result of understanding, kept as JSON and read back by `model_validate_json`."""

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid")

    meanings: tuple[str, ...] = Field(min_length=1)
    times: tuple[TimeWindow, ...] = ()
    avoid: tuple[TimeWindow, ...] = ()
    chosen: str | None = None
    until: str | None = None
    odometer: OdometerReading | None = None
    car: str | None = None
    needs: tuple[Need, ...] = ()
    certainty: float = Field(ge=0, le=1)
    question: Question | None = None
    handoff: bool
    language: Language | None = None

    @field_validator("meanings")
    @classmethod
    def _codes_exist(cls, codes: tuple[str, ...]) -> tuple[str, ...]:
        unknown = [code for code in codes if code not in MEANINGS]
        if unknown:
            raise ValueError(f"no such meaning: {', '.join(unknown)}")
        return codes


class Meant(BaseModel):
    """What the customer meant: the meaning that leads and, where one was said, the start of the visit or its day (ISO).

    `start` None: nothing was said about the time, so none is compared.
    """

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid")

    meaning: str
    start: str | None = None

    @field_validator("meaning")
    @classmethod
    def _is_known(cls, meaning: str) -> str:
        if meaning not in MEANINGS:
            raise ValueError(f"no such meaning: {meaning!r}; there are {', '.join(MEANINGS)}")
        return meaning


class Correction(BaseModel):
    """One line of what advisors put right, as it is kept, exported and replayed."""

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid")

    reply: ReplyIn
    read: ReplyOut
    meant: Meant


class Replayed(BaseModel):
    """What a correction gives with the present program beside what it gave then."""

    model_config = ConfigDict(strict=True, frozen=True)

    text: str
    meant: Meant
    then: ReplyOut
    now: ReplyOut
    verdict: Verdict
