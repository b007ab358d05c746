"""Renders a message template with plain facts, in an immutable sandbox, to the very text that will leave."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache, lru_cache

from jinja2 import StrictUndefined, Template, TemplateError
from jinja2.sandbox import ImmutableSandboxedEnvironment

from followup.core.segments import plain_characters
from followup.core.wording_facts import FactValue, complete
from followup.wording.shipped import phrase_file, shipped
from followup.wording.syntax import FILTERS, check_template

# The provider refuses longer bodies (error 21617).
MOST_CHARACTERS_OUT = 1600
# Before white space is put in order a text may be longer, but not without end.
MOST_CHARACTERS_RAW = 8000

_BLOCK_LINE = re.compile(r"^[ \t]*((?:\{%[^\n]*?%\}[ \t]*)+)\n", re.MULTILINE)
_EMPTY_LINES = re.compile(r"\s*\n\s*\n\s*")
_SPACE_BEFORE_STOP = re.compile(r"[ ]+(?=[,.;:!?](?:\s|$))")


class CannotRender(Exception):
    """The wording cannot be rendered with these facts; the message says why."""


@cache
def _sandbox() -> ImmutableSandboxedEnvironment:
    # Not optimized: folding constants at compile time has cost hundreds of megabytes with hostile templates.
    sandbox = ImmutableSandboxedEnvironment(undefined=StrictUndefined, autoescape=False, optimized=False)
    sandbox.globals.clear()
    sandbox.tests.clear()
    kept = {name: sandbox.filters[name] for name in FILTERS}
    sandbox.filters.clear()
    sandbox.filters.update(kept)
    return sandbox


@lru_cache(maxsize=1024)
def _compiled(source: str, reason_code: str) -> Template:
    if faults := check_template(source, reason_code):
        raise CannotRender(" ".join(fault.says for fault in faults))
    # A line that holds nothing but blocks adds no line break.
    return _sandbox().from_string(_BLOCK_LINE.sub(r"\1 ", source))


def render(reason_code: str, language: str, facts: Mapping[str, FactValue], own_wording: str | None = None) -> str:
    """The text of that reason: the shop's `own_wording`, or the shipped template where it has none.

    A line break in a template is a space, an empty line a line break; typographic characters become plain ones.
    Raises `CannotRender`; `WrongFacts` where the facts are not those of the reason (`core/wording_facts.py`).
    """
    whole = complete(reason_code, facts)
    whole["car"] = whole["car"] or str(phrase_file(language, "phrases")["car"])
    template = _compiled(own_wording if own_wording is not None else shipped(language, reason_code), reason_code)
    text = plain_characters(_tidy(_generate(template, whole)))
    if not text:
        raise CannotRender("The text is empty.")
    if len(text) > MOST_CHARACTERS_OUT:
        raise CannotRender(f"The text is longer than {MOST_CHARACTERS_OUT:,} characters.")
    return text


def _generate(template: Template, facts: Mapping[str, FactValue]) -> str:
    parts: list[str] = []
    length = 0
    try:
        for part in template.generate(facts):
            length += len(part)
            if length > MOST_CHARACTERS_RAW:
                raise CannotRender(f"The text is longer than {MOST_CHARACTERS_OUT:,} characters.")
            parts.append(part)
    except (TemplateError, TypeError, ValueError) as error:
        raise CannotRender(f"The wording cannot be filled in: {error}.") from error
    return "".join(parts)


def _tidy(text: str) -> str:
    lines = (" ".join(line.split()) for line in _EMPTY_LINES.split(text.strip()))
    return "\n".join(_SPACE_BEFORE_STOP.sub("", line) for line in lines if line)
