"""Looks at a wording as a whole: its syntax, then the texts it gives with all and with only the needed sample facts."""

from __future__ import annotations

from followup.core.wording_checks import Fault, check_wording
from followup.core.wording_facts import sample_facts
from followup.wording.render import CannotRender, render
from followup.wording.syntax import check_template


def review(source: str, reason_code: str, language: str, *, own_domain: str = "") -> list[Fault]:
    """All faults of a shop's own wording for that reason; empty where a second person may look at it."""
    if faults := check_template(source, reason_code):
        return faults
    found: list[Fault] = []
    for is_full in (True, False):
        facts = sample_facts(reason_code, language, is_full=is_full)
        try:
            text = render(reason_code, language, facts, source)
        except CannotRender as error:
            return [Fault("syntax", str(error))]
        found += check_wording(text, reason_code, language, facts, own_domain=own_domain)
    return list(dict.fromkeys(found))
