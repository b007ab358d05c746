"""Checks a rendered text: length, characters, grade, what no text says, what every text says, what each caution holds.

Pure: the template's syntax is looked at in `followup/wording`. A text is checked with the facts it was rendered with.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from followup.core.wording_checks.always import always_faults, number_faults
from followup.core.wording_checks.caution import caution_faults
from followup.core.wording_checks.checked import CheckedText, Fault
from followup.core.wording_checks.length import MOST_SEGMENTS, length_faults, reading_faults
from followup.core.wording_checks.never import free_faults, link_faults, name_faults, never_faults
from followup.core.wording_facts import FactValue

__all__ = ["MOST_SEGMENTS", "Fault", "check_wording", "stopping"]


def check_wording(
    text: str,
    reason_code: str,
    language: str,
    facts: Mapping[str, FactValue],
    *,
    own_domain: str = "",
    other_names: Sequence[str] = (),
) -> list[Fault]:
    """All faults of a rendered `text`; empty where it may be sent.

    `own_domain` is the only domain to which a link may lead; `other_names` are names of other persons (of the car's
    other owners, of staff) that may not stand in it.
    """
    one = CheckedText(text, reason_code, language, facts)
    found = [
        *length_faults(one),
        *reading_faults(one),
        *never_faults(one),
        *free_faults(one),
        *link_faults(one, own_domain),
        *name_faults(one, other_names),
        *always_faults(one),
        *number_faults(one),
        *caution_faults(one),
    ]
    return list(dict.fromkeys(found))


def stopping(faults: Iterable[Fault]) -> list[Fault]:
    """Those of `faults` that hold a wording back; the others are hints."""
    return [fault for fault in faults if fault.is_stopping]
