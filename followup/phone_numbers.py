"""Phone numbers as they come in: one way of writing them (E.164), what kind of line, and where they may be.

A number is not a place: people move and keep it, and a new area code is reported with fewer zones than the one that it
was laid over. So the zones are those of the whole area code, and a text leaves only when its hour is open in each.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

LineType = Literal["mobile", "landline", "mobile_or_landline", "toll_free", "internet", "other"]

# Area codes laid over an older one that spans two time zones (facts of the North American plan, from memory).
_LAID_OVER = {"364": "270", "448": "850", "458": "541", "930": "812", "986": "208"}
_LONGEST_WRITTEN = 40


class NotANumber(Exception):
    """This is no phone number that exists."""


@dataclass(frozen=True)
class PhoneNumber:
    """A number that can exist. `zones` are IANA names, sorted; empty where nothing is known of them."""

    e164: str
    country: str | None
    line: LineType
    zones: tuple[str, ...]


def read_number(written: str, country: str = "US") -> PhoneNumber:
    """The number as written by a person in this country (ISO 3166, two letters); raises NotANumber.

    In the United States a line is mostly `mobile_or_landline`: the number does not tell.
    """
    # Imported here: 100 ms. The package's geocoder is never imported: 5 s and 200 MB.
    import phonenumbers

    # Letters spell no number here, and an extension cannot be texted.
    if len(written) > _LONGEST_WRITTEN or any(sign.isalpha() for sign in written):
        raise NotANumber(NotANumber.__doc__)
    try:
        number = phonenumbers.parse(written, country)
    except phonenumbers.NumberParseException:
        raise NotANumber(NotANumber.__doc__) from None
    if not phonenumbers.is_valid_number(number) or number.extension:
        raise NotANumber(NotANumber.__doc__)
    e164 = phonenumbers.format_number(number, phonenumbers.PhoneNumberFormat.E164)
    return PhoneNumber(
        e164=e164,
        country=phonenumbers.region_code_for_number(number),
        line=_line(phonenumbers.number_type(number)),
        zones=candidate_zones(e164),
    )


def candidate_zones(e164: str) -> tuple[str, ...]:
    """Every time zone that the number may be in, sorted; empty where unknown, when the shop's own zone alone counts."""
    if e164.startswith("+1") and len(e164) == 12:
        return _zones_of_area(e164[2:5]) or _zones_reported(e164)
    return _zones_reported(e164)


@lru_cache(maxsize=1024)
def _zones_of_area(area: str) -> tuple[str, ...]:
    """The union over all exchanges of an area code and of the one it was laid over: numbers move within it."""
    from phonenumbers.tzdata import TIMEZONE_DATA

    areas = tuple(f"1{one}" for one in (area, _LAID_OVER.get(area, area)))
    zones: set[str] = set()
    for prefix, reported in TIMEZONE_DATA.items():
        if prefix.startswith(areas):
            zones.update(reported)
    return tuple(sorted(zones))


def _zones_reported(e164: str) -> tuple[str, ...]:
    import phonenumbers
    from phonenumbers import timezone

    try:
        reported = timezone.time_zones_for_number(phonenumbers.parse(e164, None))
    except phonenumbers.NumberParseException:
        return ()
    return tuple(sorted(zone for zone in reported if zone != timezone.UNKNOWN_TIMEZONE))


def _line(kind: int) -> LineType:
    from phonenumbers import PhoneNumberType

    lines: dict[int, LineType] = {
        PhoneNumberType.MOBILE: "mobile",
        PhoneNumberType.FIXED_LINE: "landline",
        PhoneNumberType.FIXED_LINE_OR_MOBILE: "mobile_or_landline",
        PhoneNumberType.TOLL_FREE: "toll_free",
        PhoneNumberType.VOIP: "internet",
    }
    return lines.get(kind, "other")
