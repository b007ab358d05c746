"""Two wordings side by side: begin a trial, see what came of it, end it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from flask.typing import ResponseReturnValue

from followup.core.planning.wording_trial import Arm, customers_needed
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, go, or_404, read_or_400
from followup.workflows import keep_trial as keeping
from followup.workflows import look_at_trials as trying
from followup.workflows import look_at_wording as looking

# Usual answers to an invite, and a difference that would be worth a new wording: how many customers that takes.
USUAL_RATE, WORTH = 0.35, 0.10
NAMES = ("by the first wording", "by the second")


@dataclass(frozen=True)
class Shown:
    """A trial with its sentences: what may be concluded, and one row (wording, customers, answered, booked, stopped)
    for each wording."""

    trial: trying.TrialSeen
    says: str
    rows: tuple[tuple[str, int, str, str, str], ...]


class Beginning(forms.Form):
    """The two versions by number (0: the shipped text), and how many customers should read each."""

    first: forms.Whole
    second: forms.Whole
    planned_each: forms.Whole


class Ending(forms.Form):
    """Which wording is used from now on."""

    use: Literal["first", "second"]


@blueprint.post("/wording/<code>/<language>/trials")
@for_roles(*MANAGERS)
def begin_trial(code: str, language: str) -> ResponseReturnValue:
    """Let two wordings run side by side."""
    or_404(looking.look_at_wording(house().store, me().shop_id, code, language))
    form = read_or_400(Beginning)
    why_not = keeping.begin_trial(
        house().store, me().shop_id, code, language, form.first, form.second, form.planned_each, me().staff_id,
        me().name, house().now(),
    )  # fmt: skip
    said = why_not or "The trial runs: each customer reads one of the two, by lot, and always the same."
    return go(said, "manager.wording", code=code, language=language)


@blueprint.post("/wording/<code>/<language>/trials/<int:trial_id>/end")
@for_roles(*MANAGERS)
def end_trial(code: str, language: str, trial_id: int) -> ResponseReturnValue:
    """End a trial and choose the wording that is used from now on."""
    form = read_or_400(Ending)
    or_404(keeping.end_trial(house().store, me().shop_id, trial_id, form.use, me().name, house().now()) or None)
    return go(f"The trial has ended: the {form.use} wording is used.", "manager.wording", code=code, language=language)


def seen_of(code: str | None, language: str | None) -> list[Shown]:
    """The trials of one text, or of the whole shop."""
    return [_shown(one) for one in trying.look_at_trials(house().store, me().shop_id, code, language or "en")]


def options_of(seen: looking.WordingSeen) -> list[tuple[int, str]]:
    """Wordings that may be tried: the shipped one, and own versions that stand and were looked at."""
    own = [(one.number, f"Version {one.number}") for one in seen.versions if one.looked_at and not one.ended_at]
    return [*own, (keeping.SHIPPED, "The text that comes with the program")]


def may_begin(seen: looking.WordingSeen) -> bool:
    """Whether there are two wordings of an invite to be tried."""
    return seen.reason.kind == "invite" and len(options_of(seen)) > 1


def proposal(seen: looking.WordingSeen) -> dict[str, Any]:
    """What the form begins with: the wording in use against the one before it."""
    numbers = [number for number, _ in options_of(seen)]
    second, first = (numbers[0], numbers[1]) if len(numbers) > 1 else (None, None)
    return {"first": first, "second": second, "planned_each": customers_needed(USUAL_RATE, WORTH)}


def _shown(trial: trying.TrialSeen) -> Shown:
    arms = zip(("First", "Second"), trial.numbers, trial.arms, strict=True)
    rows = tuple(
        _row(f"{name}: version {number}" if number else f"{name}: as shipped", arm) for name, number, arm in arms
    )
    customers = [arm.customers for arm in trial.arms]
    return Shown(trial, trying.in_words(trial.verdict, customers, trial.planned_each, "booked", NAMES), rows)


def _row(wording: str, arm: Arm) -> tuple[str, int, str, str, str]:
    answered, booked, stopped = (
        trying.rate_in_words(count, arm.customers) for count in (arm.answered, arm.booked, arm.stopped)
    )
    return wording, arm.customers, answered, booked, stopped
