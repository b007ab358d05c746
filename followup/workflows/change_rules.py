"""Change the shop's rules: a new version with its author and why, or the way back to an old one.

1. Only rules of the pages that the author may change are taken; the others stay as they are.
2. Everything is checked, and all that is wrong is told at once, in words, by rule.
3. The version that the author looked at must still be the newest: two people at the same time cannot undo each other.
4. The new version and a line of the audit trail are one transaction.
The way back is a new version with the old one's content, checked like any other; the owner's switches do not go back.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import asdict, dataclass, field, fields, replace
from datetime import date, datetime, time
from typing import Any

from followup.core.advisories import BOUND_BY_CODE
from followup.core.items import BY_CODE
from followup.core.planning.hours import LEGAL_FROM, LEGAL_TO
from followup.core.shop import RULES, WEEKDAYS, Shop, ShopRules, plain, wall_time
from followup.core.wording_checks import check_wording
from followup.storage import shops
from followup.storage.store import Store
from followup.wording import LANGUAGES

SOMEBODY_ELSE = "Somebody changed the rules in the meantime. Look at them again; what you typed still stands here."
NOTHING_NEW = "Nothing is changed: the rules stand as they are."
LONGEST_PRICE_TEXT = 200
LONGEST_AMOUNT = 40
MOST_LABOR_HOURS = 500.0
# What belongs to a whole text and not to a part that stands inside one.
_OF_A_WHOLE_TEXT = ("shop first", "phone number", "car", "price")


@dataclass(frozen=True)
class RulesAnswer:
    """The new version's number, or what is wrong, in words, by rule ("" for all of them)."""

    version: int | None
    wrong: Mapping[str, str] = field(default_factory=dict)


def change_rules(
    store: Store,
    shop_id: int,
    pages: Iterable[str],
    news: Mapping[str, Any],
    based_on: int,
    author: str,
    because: str,
    now: datetime,
) -> RulesAnswer:
    """Keep `news` (by rule) as a new version; rules of other pages than `pages` in it are a mistake (`ValueError`)."""
    mine = {one.name for one in RULES if one.metadata["page"] in tuple(pages)}
    if strange := sorted(set(news) - mine):
        raise ValueError(f"not rules of these pages: {', '.join(strange)}")
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        rules = replace(shop.rules, **news)
        if wrong := check_rules(rules, shop):
            return RulesAnswer(None, wrong)
        if shop.rules_version != based_on:
            return RulesAnswer(None, {"": SOMEBODY_ELSE})
        changed = [name for name in sorted(news) if plain(getattr(shop.rules, name)) != plain(news[name])]
        if not changed:
            return RulesAnswer(None, {"": NOTHING_NEW})
        version = shops.save_rules(connection, shop_id, rules, author, now, because)
        before, after = asdict(shop.rules), asdict(rules)
        shops.note(
            connection, shop_id, now, author, "changed the rules", f"version {version}",
            {name: before[name] for name in changed}, {name: after[name] for name in changed},
        )  # fmt: skip
    return RulesAnswer(version)


def bring_back(
    store: Store, shop_id: int, version: int, based_on: int, author: str, now: datetime, pages: Iterable[str]
) -> RulesAnswer:
    """Make the rules of `pages` as they were in an old version; 0 is as shipped. `LookupError` where there is none of
    that number."""
    with store.read() as connection:
        bodies = {row["version"]: row["body"] for row in shops.versions(connection, shop_id, "rules")}
    if version and version not in bodies:
        raise LookupError(f"There is no version {version}.")
    body = bodies.get(version, {})
    pages = tuple(pages)
    # A version that is older than a rule does not know it: then the rule goes back to its default.
    old = asdict(ShopRules(**{one.name: body[one.name] for one in RULES if one.name in body}))
    news = {one.name: old[one.name] for one in RULES if one.metadata["page"] in pages}
    return change_rules(
        store,
        shop_id,
        pages,
        news,
        based_on,
        author,
        f"back to version {version}" if version else "back to the rules as shipped",
        now,
    )


def check_rules(rules: ShopRules, shop: Shop) -> dict[str, str]:
    """What is wrong with the rules, in words, by rule; {} where they may be kept."""
    wrong = {one.name: why for one in fields(rules) if (why := _check_one(one.name, rules))}
    if not wrong and rules.hand_over_below_certainty > rules.ask_below_certainty:
        wrong["hand_over_below_certainty"] = "This must not be above the certainty below which we ask back."
    if not wrong and bool(rules.winter_from) != bool(rules.winter_until):
        wrong["winter_from"] = "Give both days of the invites before winter, or none."
    if "price_text" not in wrong and (why := _check_price_text(rules.price_text, shop)):
        wrong["price_text"] = why
    return wrong


def _check_one(name: str, rules: ShopRules) -> str | None:
    value = getattr(rules, name)
    about = next(one for one in RULES if one.name == name).metadata
    if about["least"] is not None and not about["least"] <= value <= about["most"]:
        return outside(about["least"], about["most"])
    check = _CHECKS.get(name)
    return check(value) if check else None


def outside(least: float, most: float) -> str:
    """What a number outside its limits is answered with; shares are said in per cent, as the page asks for them."""
    if most <= 1 and (least, most) != (0, 1) and isinstance(most, float):
        return f"Give {least * 100:g} to {most * 100:g} %."
    return f"Give {least:g} to {most:g}."


def _check_hours(hours: Mapping[str, Any], from_time: time = time(0), to_time: time = time(23, 59)) -> str | None:
    for day, (opens, closes) in hours.items():
        if day not in WEEKDAYS:
            return "There is no such weekday."
        begin, end = wall_time(opens), wall_time(closes)
        if begin >= end:
            return f"{day.title()}: the end must be later than the beginning."
        if begin < from_time or end > to_time:
            return f"{day.title()}: no texts before {from_time:%H:%M} or after {to_time:%H:%M}, wherever the phone is."
    return None


def _check_open_hours(hours: Mapping[str, Any]) -> str | None:
    return _check_hours(hours) if hours else "The shop must be open on one day at least."


def _check_text_hours(hours: Mapping[str, Any]) -> str | None:
    return _check_hours(hours, LEGAL_FROM, LEGAL_TO)


def _check_invite_hours(hours: Mapping[str, Any]) -> str | None:
    return "No invites leave on a Sunday: leave it empty." if "sun" in hours else _check_text_hours(hours)


def _check_days(days: list[str]) -> str | None:
    for day in days:
        try:
            date.fromisoformat(day)
        except ValueError:
            return f"{day[:20]!r} is no day. Write days like 2026-12-24, one a line."
    return None


def _check_month_day(day: str) -> str | None:
    """Month and day of every year: a leap day is none."""
    if not day:
        return None
    try:
        is_well = f"{date.fromisoformat(f'2001-{day}'):%m-%d}" == day
    except ValueError:
        is_well = False
    return None if is_well else f"{day[:20]!r} is no day of the year. Write it like 09-17."


def _check_labor(hours: Mapping[str, float]) -> str | None:
    unknown = set(hours) - set(ShopRules().labor_hours)
    if unknown:
        return "There is no such skill."
    if any(not 0 <= one <= MOST_LABOR_HOURS for one in hours.values()):
        return f"Give 0 to {MOST_LABOR_HOURS:g} hours for each skill."
    return None


def _check_limits(kind: str) -> Callable[[Mapping[str, float]], str | None]:
    def check(values: Mapping[str, float]) -> str | None:
        for code, value in values.items():
            item = BY_CODE.get(code)
            usual = None if item is None else item.legal_limit if kind == "legal" else item.action_limit
            if item is None or usual is None:
                return f"{code} has no such limit."
            # A limit of another size is a slip of the finger or of the unit.
            least, most = sorted((usual.value / 4, usual.value * 4))
            if not least <= value <= most:
                return f"{item.words}: give {least:g} to {most:g} {usual.unit}, or leave it empty for {usual.value:g}."
        return None

    return check


def _check_bounds(values: Mapping[str, float]) -> str | None:
    for code, value in values.items():
        bound = BOUND_BY_CODE.get(code)
        if bound is None:
            return f"{code} is no such bound."
        least, most = bound.value / 2, bound.value * 2
        if not least <= value <= most:
            return f"{bound.words}: give {least:g} to {most:g} {bound.unit}, or leave it empty for {bound.value:g}."
    return None


def _check_free(services: Mapping[str, str]) -> str | None:
    for code, amount in services.items():
        item = BY_CODE.get(code)
        if item is None or not item.is_top_off_free:
            return f"{item.words if item else code} is no free top-off."
        if len(amount) > LONGEST_AMOUNT or not amount.isprintable():
            return f"{item.words}: say how much in at most {LONGEST_AMOUNT} characters."
    return None


def _check_price_text(text: str, shop: Shop) -> str | None:
    if len(text) > LONGEST_PRICE_TEXT:
        return f"Give at most {LONGEST_PRICE_TEXT} characters: it stands inside a longer text."
    if not text:
        return None
    faults = [
        fault.says
        for language in LANGUAGES
        for fault in check_wording(text, "from_a_person", language, {"shop": shop.name})
        if fault.is_stopping and fault.rule not in _OF_A_WHOLE_TEXT
    ]
    return " ".join(dict.fromkeys(faults)) or None


_CHECKS: dict[str, Callable[[Any], str | None]] = {
    "open_hours": _check_open_hours,
    "invite_hours": _check_invite_hours,
    "visit_text_hours": _check_text_hours,
    "closed_on": _check_days,
    "winter_from": _check_month_day,
    "winter_until": _check_month_day,
    "labor_hours": _check_labor,
    "action_limits": _check_limits("action"),
    "legal_limits": _check_limits("legal"),
    "advisory_bounds": _check_bounds,
    "free_services": _check_free,
}
