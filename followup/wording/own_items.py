"""How the words of an item read in every text that may name it, with the checks of each: for items that a shop adds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from followup.core.item import Item
from followup.core.segments import segments
from followup.core.wording_checks import Fault, check_wording
from followup.core.wording_facts import Facts, FactValue, WrongFacts, sample_facts
from followup.wording.phrases import item_fact, measured_phrase, service_fact
from followup.wording.render import CannotRender, render
from followup.wording.shipped import LANGUAGES, NoSuchTemplate

_READ_ON, _LIKELY_ON = date(2026, 3, 2), date(2026, 7, 1)


@dataclass(frozen=True)
class ItemText:
    """One text that names the item: what it is about, the text, how many parts it is sent in, and all its faults."""

    language: str
    about: str
    text: str
    count: int
    encoding: str
    faults: tuple[Fault, ...]


def review_item(
    item: Item, value: float | None = None, facts: Mapping[str, FactValue] | None = None, *, own_domain: str = ""
) -> list[ItemText]:
    """Every text that may name the item, in each language in which it has words. `value` is an example of what is
    measured; `facts` are the shop's own (its name, its phone) in place of the samples."""
    if item.unit is not None and value is None:
        value = _example(item)
    return [
        _text(language, about, reason, {**sample_facts(reason, language), **(facts or {}), **named}, own_domain)
        for language in LANGUAGES
        if language in (item.phrases or {})
        for about, reason, named in _texts(item, language, value)
    ]


def _example(item: Item) -> float:
    """A number that can be measured, near the limit where there is one."""
    field = item.field("value")
    if item.action_limit is not None:
        return item.action_limit.value
    return field.most if field and field.most is not None else 1.0


def _texts(item: Item, language: str, value: float | None) -> Iterator[tuple[str, str, Facts]]:
    measured = measured_phrase(language, item, value, item.unit) if value is not None else ""
    limit = item.action_limit
    at_limit = measured_phrase(language, item, limit.value, limit.unit) if limit is not None else measured
    one, all_of_them = item.positions[:1], item.positions
    coming = item_fact(
        language, item, positions=one, measured=measured, measured_on=_READ_ON, due_on=_LIKELY_ON, today=_READ_ON
    )
    due = item_fact(
        language, item, positions=all_of_them, measured=at_limit, measured_on=_READ_ON, is_at_limit=True, today=_READ_ON
    )
    changed = item_fact(language, item, positions=all_of_them, done_on=_READ_ON, due_on=_LIKELY_ON, today=_READ_ON)
    if item.is_forecast:
        yield "It is coming due", "due_work", {"items": [coming]}
        yield "It was changed once, and is coming due", "due_work", {"items": [changed]}
    yield "It is due", "due_work", {"items": [due]}
    yield "Somebody asks what it is", "explain", {"items": [coming]}
    yield "Somebody asks whether it can wait", "judgment", {"items": [coming]}
    yield "A visit is confirmed", "confirmation", {"work": due["work"]}
    if item.is_top_off_free:
        yield "It can be topped off free", "free_service", {"services": [service_fact(language, item)]}


def _text(language: str, about: str, reason: str, facts: Facts, own_domain: str) -> ItemText:
    try:
        text = render(reason, language, facts)
    except (CannotRender, WrongFacts, NoSuchTemplate) as cannot:
        return ItemText(language, about, "", 0, "", (Fault("facts", str(cannot)),))
    cut = segments(text)
    faults = check_wording(text, reason, language, facts, own_domain=own_domain)
    return ItemText(language, about, text, cut.count, cut.encoding, tuple(faults))
