"""A text under check, with and without the facts that were filled in, and the faults that are found in it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property

from followup.core.text import REASON_BY_CODE, Reason
from followup.core.wording_facts import FactValue

# Names and numbers that are not the wording's own: a shop may be called what it likes.
_NOT_THE_WORDING = ("shop", "who", "car", "address", "price_text", "shop_phone", "roadside_phone", "done_by")


@dataclass(frozen=True)
class Fault:
    """What is wrong with a wording: the rule, and what to do in plain words. A hint (`is_stopping` false) may stand."""

    rule: str
    says: str
    is_stopping: bool = True


@dataclass(frozen=True)
class CheckedText:
    """A rendered text, `said`, with its reason, language and the facts it was rendered with."""

    said: str
    reason_code: str
    language: str
    facts: Mapping[str, FactValue]

    @property
    def reason(self) -> Reason:
        """Why it leaves."""
        return REASON_BY_CODE[self.reason_code]

    @property
    def is_caution(self) -> bool:
        """True for the texts about symptoms."""
        return self.reason_code.startswith("caution")

    @property
    def is_a_persons(self) -> bool:
        """True for what a person wrote for this one customer: its style and length are that person's own."""
        return self.reason_code == "from_a_person"

    def fact(self, name: str) -> str:
        """The words of that fact; "" where there are none."""
        value = self.facts.get(name, "")
        return value if isinstance(value, str) else ""

    @cached_property
    def bare(self) -> str:
        """The text with a plain word in place of each name and number that is not the wording's own."""
        text = self.said
        for value in (self.fact(name) for name in _NOT_THE_WORDING):
            if len(value) > 1:
                text = re.sub(rf"(?<!\w){re.escape(value)}(?!\w)", "it", text)
        return text

    @cached_property
    def graded(self) -> str:
        """The wording alone, as its grade is measured: without the shop's name at its head and without its facts."""
        plain = self.said.removeprefix(self.fact("shop")).lstrip(": ")
        for value in sorted(set(_words_of_facts(self.facts.values())), key=len, reverse=True):
            plain = re.sub(rf"(?<!\w){re.escape(value)}(?!\w)", "", plain)
        return plain


def _words_of_facts(values: Iterable[FactValue]) -> Iterable[str]:
    for value in values:
        if isinstance(value, str):
            yield from [value] if value else []
        elif isinstance(value, list):
            for entry in value:
                if isinstance(entry, str):
                    yield entry
                else:
                    # What is said about an item is wording too; its name and its dates are facts.
                    yield from (entry[key] for key in ("name", "measured", "when", "month") if entry.get(key))
