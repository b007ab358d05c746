"""What our cars taught: the shop's own wear and miles beside the published values, every version, and the way back."""

from __future__ import annotations

from flask import flash, redirect, render_template, url_for
from flask.typing import ResponseReturnValue

from followup.core.forecast.learned import (
    LEAST_CARS,
    LearnedPart,
    found_words,
    part_words,
    sentences,
)
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, or_404, read_or_400
from followup.web.words import catalogue, count, local
from followup.workflows.learn_priors import NIGHTLY, ShopChangedMeanwhile, bring_back, go_by_published
from followup.workflows.look_at_learned import LearnedVersion, LearnedView, look_at_learned

OUTCOMES = {
    "learned": "the shop's own",
    "kept_old": "learned before",
    "published": "the published",
    "too_few": "as before: too few cars",
}
MEANWHILE = "Somebody else changed it meanwhile: look again."


class Back(forms.Form):
    """The newest version when the button was shown."""

    based_on: forms.Whole


@blueprint.get("/learned")
@for_roles(*MANAGERS)
def learned() -> ResponseReturnValue:
    """What is in use, what the last run found, and all versions."""
    seen = look_at_learned(house().store, me().shop_id)
    return render_template(
        "manager/learned.html", seen=seen, state=state_words(seen), who=who, what=what, least=LEAST_CARS,
        outcomes=OUTCOMES, found_words=found_words, part_name=lambda part: part_words(part, catalogue()), off_by=off_by,
        told=sentences(seen.last_run.learned, catalogue()) if seen.last_run and seen.last_run.learned else [],
    )  # fmt: skip


@blueprint.post("/learned/published")
@for_roles(*MANAGERS)
def go_back_to_published() -> ResponseReturnValue:
    """Forecast by the published values until a version is brought back."""
    form = read_or_400(Back)
    try:
        go_by_published(house().store, me().shop_id, me().name, house().now(), form.based_on)
    except ShopChangedMeanwhile:
        flash(MEANWHILE)
    else:
        flash("Forecasts go by the published values, and learning rests. All cars are forecast anew.")
    return redirect(url_for("manager.learned"), 303)


@blueprint.post("/learned/versions/<int:version>/use")
@for_roles(*MANAGERS)
def use_learned(version: int) -> ResponseReturnValue:
    """Forecast by an earlier version again."""
    form = read_or_400(Back)
    try:
        bring_back(house().store, me().shop_id, version, me().name, house().now(), form.based_on)
    except LookupError:
        return or_404(None)
    except ShopChangedMeanwhile:
        flash(MEANWHILE)
    else:
        flash(f"Forecasts go by version {version} again, and learning goes on. All cars are forecast anew.")
    return redirect(url_for("manager.learned"), 303)


def state_words(seen: LearnedView) -> str:
    """What forecasts go by, in a sentence."""
    used = seen.in_use
    if used is None:
        return (
            "Forecasts go by the published values. What the shop's own cars teach is looked at each night on which "
            f"there is news, and needs {LEAST_CARS} cars that were seen twice."
        )
    on = f"{local(used.at):%b} {local(used.at).day}"
    if used.learned is None:
        by = f"{used.author} set them so on {on}"
        return f"Forecasts go by the published values: {by}. Learning rests until a version is used again."
    cars = count(used.learned.cars, "car")
    taught = f"what {cars} taught, version {used.number} of {on}"
    return f"Forecasts go by {taught}. On nights on which there is news they learn on."


def who(one: LearnedVersion) -> str:
    """Who made a version."""
    return "at night" if one.author == NIGHTLY else one.author


def what(one: LearnedVersion) -> str:
    """What a version is, in a few words."""
    if one.learned is None:
        return "back to the published values"
    if one.source == "brought_back":
        return "an earlier version brought back"
    kept = [part for part in one.learned.parts if part.outcome == "learned"]
    cars = count(one.learned.cars, "car")
    if one.is_used:
        return f"learned from {cars}, used"
    return f"learned from {cars}, {'hardly different' if kept else 'not better than the published'}: not used"


def off_by(score: float | None, part: LearnedPart) -> str:
    """A score with its unit."""
    item = catalogue().get(part.part)
    unit = f" {item.unit}" if item and item.unit else ""
    return "not compared" if score is None else f"{score:.3f}{unit}"
