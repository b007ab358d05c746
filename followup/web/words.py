"""How pages write days, times, numbers and phone numbers. Times are the shop's own, by its zone."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

from flask import Flask, g, has_request_context
from markupsafe import Markup, escape

from followup.core.item import Catalogue
from followup.core.items import BY_CODE
from followup.web.house import house
from followup.web.login import me
from followup.workflows import sign_in as signing
from followup.workflows.look_at_catalogue import look_at_catalogue

# Not strftime's: those change with the machine's language.
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


def shop() -> signing.ShopHead:
    """The shop of the one who asks; read once a request."""
    if "shop_head" not in g:
        g.shop_head = signing.shop_head(house().store, me().shop_id)
    head: signing.ShopHead = g.shop_head
    return head


def catalogue() -> Catalogue:
    """The items of the shop of the one who asks, read once a request; those that are shipped where nobody asks."""
    if not has_request_context():
        return BY_CODE
    if "catalogue" not in g:
        g.catalogue = look_at_catalogue(house().store, me().shop_id)
    found: Catalogue = g.catalogue
    return found


def local(at: datetime) -> datetime:
    """An instant on the shop's clock."""
    return at.astimezone(ZoneInfo(shop().zone))


def today() -> date:
    """The shop's day."""
    return local(house().now()).date()


def day(on: date) -> str:
    """`Tue, Nov 24, 2026`."""
    return f"{WEEKDAYS[on.weekday()]}, {MONTHS[on.month - 1]} {on.day}, {on.year}"


def clock_time(at: datetime) -> str:
    """`2:05 pm`, of a local time."""
    return f"{at.hour % 12 or 12}:{at.minute:02} {'am' if at.hour < 12 else 'pm'}"


def day_tag(on: date) -> Markup:
    """A day for people and for machines."""
    return Markup('<time datetime="{}">{}</time>').format(on.isoformat(), day(on))


def instant_tag(at: datetime) -> Markup:
    """An instant, as the shop's day and time."""
    here = local(at)
    return Markup('<time datetime="{}">{}, {}</time>').format(here.isoformat(), day(here.date()), clock_time(here))


def number(value: float) -> str:
    """`48,210`; decimals only where there are some."""
    return f"{value:,.0f}" if value == int(value) else f"{value:,.1f}"


def percent(share: float) -> str:
    """`80 %`."""
    return f"{100 * share:.0f} %"


def phone_number(number_e164: str) -> str:
    """`(312) 555-0147` for a US number, else as it is."""
    if number_e164.startswith("+1") and len(number_e164) == 12 and number_e164[1:].isdigit():
        return f"({number_e164[2:5]}) {number_e164[5:8]}-{number_e164[8:]}"
    return number_e164


def count(how_many: int, one: str, more: str | None = None) -> str:
    """`1 text`, `3 texts`; `more` where the plural is not one with an s."""
    return f"{how_many:,} {one if how_many == 1 else more or one + 's'}"


def lines(text: str) -> Markup:
    """A text of several lines, escaped, its breaks kept."""
    return Markup("<br>").join(escape(line) for line in text.split("\n"))


def add_to(app: Flask) -> None:
    """Every template has these as filters."""
    filters = {
        "day": day_tag,
        "day_words": day,
        "instant": instant_tag,
        "number": number,
        "percent": percent,
        "phone_number": phone_number,
        "lines": lines,
    }
    app.jinja_env.filters.update(filters)
    app.jinja_env.globals.update(count=count, today=today)
