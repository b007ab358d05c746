"""What each of the cautions must hold, by the shop being open or closed and an alert being accepted or not."""

from __future__ import annotations

import re
from collections.abc import Iterable

from followup.core.wording_checks.checked import CheckedText, Fault
from followup.core.wording_checks.never import CAUTION_PHRASE

# What may be asked of a caution: what it is, as a pattern in each language.
_SAYS: dict[str, tuple[str, str, str]] = {
    "automatic": (
        "that it is an automatic reply",
        r"\bautomatic\b",
        r"\b(?:autom[aá]tic[ao]|un sistema, no una persona)\b",
    ),
    "do not drive": ("not to drive", r"\b(?:do not|don't) drive\b", r"\bno (?:maneje|conduzca)\b"),
    "stop": ("its fixed phrase about stopping", CAUTION_PHRASE["en"].pattern, CAUTION_PHRASE["es"].pattern),
    "no wait": (
        "not to wait for the visit",
        r"\b(?:do not|don't) wait for your visit\b",
        r"\bno espere (?:a|hasta) su cita\b",
    ),
    "nobody reads": ("that nobody reads this until opening", r"\b(?:nobody|no one) reads\b", r"\bnadie lee\b"),
    "we call": ("that we call when we open", r"\bwe(?: will|'ll) call\b", r"\b(?:le llamamos|le vamos a llamar)\b"),
    "alerted": ("that a person was alerted", r"\balerted\b", r"\b(?:avisamos|avisado)\b"),
    "roadside": ("roadside help", r"\b(?:roadside|tow)\b", r"\b(?:en el camino|en carretera|gr[uú]a)\b"),
    "run flat": (
        "about 50 miles at up to 50 mph, and that the handbook decides",
        r"\b50 miles\b.*\b50 mph\b.*\bhandbook\b",
        r"\b50 millas\b.*\b50 mph\b.*\bmanual\b",
    ),
}
_NEEDS = {
    "caution_now_open": ("automatic", "do not drive", "stop"),
    "caution_now_closed": ("automatic", "do not drive", "stop", "roadside"),
    "caution_today_open": ("automatic", "no wait", "stop"),
    "caution_today_closed": ("automatic", "no wait", "stop"),
    "caution_run_flat": ("automatic", "stop", "run flat"),
}
_NEVER = {
    "thanks": (r"\bthank(?:s| you)?\b", r"\bgracias\b"),
    "driving technique": (
        r"\b(?:pump|downshift|low gear|(?:hand|parking|emergency) brake|drive slowly|slow down|coast|pull over)\b",
        r"\b(?:bombee|baje la velocidad|maneje despacio|freno de mano|cambie de marcha|frene con el motor|reduzca)\b",
    ),
    "slot": (
        r"\b(?:booked|does one suit|which (?:day|time))\b",
        r"\b(?:reservad[oa]|le queda bien|qu[eé] (?:d[ií]a|hora|fecha))\b",
    ),
}


def _finds(pattern: str, text: str) -> bool:
    return bool(re.search(pattern, text, re.IGNORECASE | re.DOTALL))


def caution_faults(one: CheckedText) -> Iterable[Fault]:
    """What a caution lacks, or says too much; nothing for other texts."""
    if not one.is_caution:
        return
    column = 1 if one.language == "en" else 2
    may_say_alerted = _may_say_alerted(one)
    needs = [*_NEEDS[one.reason_code]]
    if may_say_alerted:
        needs.append("alerted")
    elif _is_closed(one):
        needs += ["nobody reads", "we call"]
    for need in needs:
        if not _finds(_SAYS[need][column], one.said):
            yield Fault("caution", f"It must say {_SAYS[need][0]}.")
    if not may_say_alerted and _finds(_SAYS["alerted"][column], one.said):
        yield Fault("caution", "It may say that somebody was alerted only after that: {% if alerted %}.")
    told = ["emergency_number", "roadside_phone"] + ([] if may_say_alerted or not _is_closed(one) else ["opens_at"])
    for name in told:
        if (value := one.fact(name)) and value not in one.said:
            yield Fault("caution", f"It must give this: write {{{{ {name} }}}}.")
    for rule, patterns in _NEVER.items():
        if hit := re.search(patterns[column - 1], one.said, re.IGNORECASE):
            yield Fault("caution", f"“{hit.group()}”: a caution holds no {rule}.")


def _is_closed(one: CheckedText) -> bool:
    return one.reason_code.endswith("_closed") or (
        one.reason_code == "caution_run_flat" and not one.facts.get("is_open")
    )


def _may_say_alerted(one: CheckedText) -> bool:
    """After an alert was accepted; while closed, only where a person is on call."""
    return bool(one.facts.get("alerted")) and (bool(one.facts.get("on_call")) or not _is_closed(one))
