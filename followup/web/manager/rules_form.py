"""Rules of the shop as fields of a form, and the form as rules again: made from `ShopRules`, so that none is forgotten.

How a rule is asked for follows from what its default is: hours of a week, days, a tick, a number (a share in per
cent), hours by skill, limits by item, free services, a text. What is typed is read here; whether it may be kept is
asked by the workflow.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import Field, dataclass
from typing import Any

from pydantic import create_model
from werkzeug.datastructures import MultiDict

from followup.core.advisories import BOUNDS
from followup.core.item import Item
from followup.core.items import ALL
from followup.core.planning.balance import balance_in_words
from followup.core.shop import RULES, WEEKDAYS, ShopRules
from followup.web import forms

DAY_NAMES = {
    "mon": "Monday", "tue": "Tuesday", "wed": "Wednesday", "thu": "Thursday", "fri": "Friday", "sat": "Saturday",
    "sun": "Sunday",
}  # fmt: skip
SKILLS = {"general": "General", "tires": "Tires and alignment", "brakes": "Brakes", "electric": "Electric"}
GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (
        "When a text is worth it",
        (
            "send_at_chance", "send_worn_at_chance", "near_at_chance", "lead_days", "lead_days_learned",
            "join_at_chance", "joined_within_days", "odometer_text_saves_days",
        ),
    ),
    (
        "Hours of texts",
        (
            "invite_hours", "learns_hours", "invites_an_hour", "visit_text_hours", "reminder_days", "links_visit",
            "asks_after_visit",
        ),
    ),
    (
        "How often",
        (
            "tries", "try_again_days", "try_again_days_legal", "invite_every_days", "invites_in_30_days",
            "invites_a_year",
        ),
    ),
    (
        "When invites rest",
        ("rest_after_visit_days", "rest_after_complaint_days", "rest_after_no_days", "rest_after_declined_days"),
    ),
    ("When the shop is open", ("open_hours", "closed_on", "closed_on_holidays")),
    (
        "What a day holds",
        (
            "labor_hours", "labor_share", "paces_invites", "check_in_minutes", "advisors_at_check_in",
            "waiting_places", "loaners", "shuttle_seats", "offer_held_hours",
        ),
    ),
    ("What texts bring", ("without_invites_share", "most_stops_per_100")),
    ("Replies", ("ask_below_certainty", "hand_over_below_certainty")),
    ("Free services", ("free_services", "invites_unseen", "unseen_months")),
    ("Before winter", ("writes_before_winter", "winter_from", "winter_until")),
    ("Limits and readings", ("action_limits", "legal_limits", "gauges_round_down")),
    ("Uneven wear and rotation", ("advise_at_chance", "advisory_bounds")),
)  # fmt: skip
# Chances that weigh too early against too late.
BALANCES = ("send_at_chance", "send_worn_at_chance")
# What no group names yet is asked for all the same.
OTHER = "Other rules"
Rule = Field[Any]
BY_NAME: Mapping[str, Rule] = {one.name: one for one in RULES}


@dataclass(frozen=True)
class Entry:
    """One thing to type: its field's name, label and unit; `usual` is what counts where it is left empty."""

    name: str
    label: str
    unit: str = ""
    usual: str = ""


@dataclass(frozen=True)
class RuleField:
    """One rule on the page: how it is asked for, in which words, within which limits, and its entries."""

    name: str
    kind: str
    words: str
    hint: str
    entries: tuple[Entry, ...]


def kind_of(rule: Rule) -> str:
    """How a rule is asked for: hours, days, tick, share, whole, labor, limits, bounds, services or text."""
    default = getattr(ShopRules(), rule.name)
    if rule.name.endswith("_limits"):
        return "limits"
    if rule.name == "advisory_bounds":
        return "bounds"
    if isinstance(default, dict):
        pairs = [isinstance(value, tuple | list) for value in default.values()]
        return "hours" if all(pairs) and pairs else {"labor_hours": "labor", "free_services": "services"}[rule.name]
    if isinstance(default, bool):
        return "tick"
    if isinstance(default, float):
        return "share"
    return {int: "whole", list: "days", str: "text"}[type(default)]


def groups_of(page: str) -> list[tuple[str, list[RuleField]]]:
    """The rules of a page in their groups."""
    mine = [one.name for one in RULES if one.metadata["page"] == page]
    named = [(title, [name for name in names if name in mine]) for title, names in GROUPS]
    known = {name for _, names in named for name in names}
    named.append((OTHER, [name for name in mine if name not in known]))
    return [(title, [rule_field(name) for name in names]) for title, names in named if names]


def rule_field(name: str) -> RuleField:
    """How that rule stands on a page."""
    rule = BY_NAME[name]
    kind = kind_of(rule)
    return RuleField(name, kind, rule.metadata["words"], _hint(rule, kind), tuple(_ENTRIES[kind](rule)))


def _hint(rule: Rule, kind: str) -> str:
    least, most = rule.metadata["least"], rule.metadata["most"]
    if rule.name in BALANCES:
        usual = getattr(ShopRules(), rule.name)
        return f"{least * 100:g} to {most * 100:g} %; {usual * 100:g} as shipped: {balance_in_words(usual)}."
    if rule.name in ("winter_from", "winter_until"):
        return "Month and day, like 09-17; both left empty, they follow from where the shop is."
    if kind == "share":
        return f"{least * 100:g} to {most * 100:g} %; {getattr(ShopRules(), rule.name) * 100:g} as shipped."
    if kind == "whole":
        return f"{least:g} to {most:g}; {getattr(ShopRules(), rule.name)} as shipped."
    return {
        "hours": "A day that is left empty is closed.",
        "days": "One day a line, like 2026-12-24.",
        "limits": "Left empty, the usual value counts.",
        "bounds": "Left empty, the usual value counts. The car's handbook comes first.",
        "services": "Ticked ones are offered; say how much, or leave it empty for up to full.",
    }.get(kind, "")


def _hours(rule: Rule) -> Iterable[Entry]:
    for day in WEEKDAYS:
        yield Entry(f"{rule.name}.{day}.from", f"{DAY_NAMES[day]}, from")
        yield Entry(f"{rule.name}.{day}.to", f"{DAY_NAMES[day]}, to")


def _one(unit: str) -> Callable[[Rule], Iterable[Entry]]:
    return lambda rule: [Entry(rule.name, rule.metadata["words"], unit)]


def _labor(rule: Rule) -> Iterable[Entry]:
    return [Entry(f"{rule.name}.{skill}", SKILLS.get(skill, skill), "hours") for skill in ShopRules().labor_hours]


def _limits(rule: Rule) -> Iterable[Entry]:
    for item, limit in ((one, _limit(one, rule.name)) for one in ALL):
        if limit is not None:
            unit = "%" if limit.unit == "percent" else limit.unit
            yield Entry(f"{rule.name}.{item.code}", item.words, unit, f"{limit.value:g} as usual")


def _bounds(rule: Rule) -> Iterable[Entry]:
    for one in BOUNDS:
        yield Entry(f"{rule.name}.{one.code}", one.words, one.unit, f"{one.value:g} as usual")


def _limit(item: Item, name: str) -> Any:
    return item.legal_limit if name == "legal_limits" else item.action_limit


def _services(rule: Rule) -> Iterable[Entry]:
    for item in (one for one in ALL if one.is_top_off_free):
        yield Entry(f"{rule.name}.{item.code}", item.words)
        yield Entry(f"{rule.name}.{item.code}.amount", f"{item.words}: how much")


_ENTRIES: dict[str, Callable[[Rule], Iterable[Entry]]] = {
    "hours": _hours, "days": _one(""), "tick": _one(""), "share": _one("%"), "whole": _one(""), "labor": _labor,
    "limits": _limits, "bounds": _bounds, "services": _services, "text": _one(""),
}  # fmt: skip
_KINDS: dict[str, Any] = {
    "hours": (forms.MaybeTime, None), "days": (forms.Words, ""), "tick": (forms.Tick, False),
    "share": (forms.Number, ...), "whole": (forms.Whole, ...), "labor": (forms.Number, ...),
    "limits": (forms.MaybeNumber, None), "bounds": (forms.MaybeNumber, None), "text": (forms.Words, ""),
}  # fmt: skip


def read(names: Iterable[str], sent: MultiDict[str, str]) -> tuple[dict[str, Any], dict[str, str], dict[str, Any]]:
    """What was typed for these rules: by rule; what is wrong, by rule; and the other fields (because, based_on)."""
    rules = [rule_field(name) for name in names]
    typed: dict[str, Any] = {"because": (forms.Words, ""), "based_on": (forms.Whole, ...)}
    for rule in rules:
        for entry in rule.entries:
            is_tick = rule.kind == "services" and not entry.name.endswith(".amount")
            kind = "text" if rule.kind == "services" else rule.kind
            typed[_key(entry.name)] = _KINDS["tick" if is_tick else kind]
    form, wrong = forms.read(create_model("RulesForm", __base__=forms.Form, **typed), _keyed(sent))
    if form is None:
        return {}, {_rule_of(rules, field): why for field, why in wrong.items()}, {}
    values = form.model_dump()
    news: dict[str, Any] = {}
    for rule in rules:
        try:
            news[rule.name] = _value(rule, values)
        except ValueError as error:
            wrong[rule.name] = str(error)
    return news, wrong, {"because": values["because"], "based_on": values["based_on"]}


def _key(name: str) -> str:
    """Names of a form's fields have dots; those of its model cannot."""
    return name.replace(".", "__")


def _keyed(sent: MultiDict[str, str]) -> MultiDict[str, str]:
    return MultiDict([(_key(name), value) for name, values in sent.lists() for value in values])


def _rule_of(rules: Iterable[RuleField], field: str) -> str:
    return next((rule.name for rule in rules if any(_key(one.name) == field for one in rule.entries)), field)


def _value(rule: RuleField, values: Mapping[str, Any]) -> Any:
    """The rule's value as `ShopRules` holds it."""
    got = {one.name: values[_key(one.name)] for one in rule.entries}
    if rule.kind == "hours":
        return _hours_value(rule.name, got)
    if rule.kind == "days":
        return sorted({line for line in re.split(r"[\s,;]+", got[rule.name]) if line})
    if rule.kind == "share":
        return round(got[rule.name] / 100, 4)
    if rule.kind in ("labor", "limits", "bounds"):
        return {name.rpartition(".")[2]: value for name, value in got.items() if value is not None}
    if rule.kind == "services":
        codes = [one.name for one in rule.entries if not one.name.endswith(".amount")]
        return {name.rpartition(".")[2]: got[f"{name}.amount"] for name in codes if got[name]}
    return got[rule.name]


def _hours_value(name: str, got: Mapping[str, Any]) -> dict[str, tuple[str, str]]:
    found = {}
    for day in WEEKDAYS:
        opens, closes = got[f"{name}.{day}.from"], got[f"{name}.{day}.to"]
        if (opens is None) != (closes is None):
            raise ValueError(f"{DAY_NAMES[day]}: give both times, or none.")
        if opens is not None:
            found[day] = (f"{opens:%H:%M}", f"{closes:%H:%M}")
    return found


def shown(rules: ShopRules, names: Iterable[str]) -> dict[str, Any]:
    """What stands in the fields: by field, as it would be typed."""
    found: dict[str, Any] = {}
    for rule in map(rule_field, names):
        value = getattr(rules, rule.name)
        if rule.kind == "hours":
            for day, (opens, closes) in value.items():
                found[f"{rule.name}.{day}.from"], found[f"{rule.name}.{day}.to"] = opens, closes
        elif rule.kind in ("labor", "limits", "bounds"):
            found |= {f"{rule.name}.{key}": f"{one:g}" for key, one in value.items()}
        elif rule.kind == "services":
            found |= {f"{rule.name}.{key}": True for key in value}
            found |= {f"{rule.name}.{key}.amount": one for key, one in value.items()}
        else:
            found[rule.name] = _typed(rule.kind, value)
    return found


def _typed(kind: str, value: Any) -> Any:
    if kind == "share":
        return f"{value * 100:g}"
    return "\n".join(value) if kind == "days" else value


def in_words(name: str, value: Any) -> str:
    """A rule's value in words, for the list of versions."""
    kind = kind_of(BY_NAME[name])
    if kind == "hours":
        return ", ".join(f"{DAY_NAMES[day][:3]} {value[day][0]}-{value[day][1]}" for day in WEEKDAYS if day in value)
    if kind == "tick":
        return "yes" if value else "no"
    if kind == "share":
        balance = f" ({balance_in_words(value)})" if name in BALANCES else ""
        return f"{value * 100:g} %{balance}"
    if kind == "days":
        return ", ".join(value) or "none"
    if isinstance(value, Mapping):
        pairs = (f"{key.replace('_', ' ')} {one}".strip() for key, one in value.items())
        return ", ".join(pairs) or "as usual"
    return str(value) or "none"
