"""Duty: who is told first, second, third in each open hour; gaps are shown at once; versions with a way back."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flask import render_template, request
from flask.typing import ResponseReturnValue
from pydantic import create_model
from werkzeug.datastructures import MultiDict

from followup.core.duty import Roster, Watch
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager import rules_form
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, go, or_404, read_or_400
from followup.workflows.change_duty import bring_duty_back, change_duty
from followup.workflows.change_rules import change_rules
from followup.workflows.look_at_duty import Duty, look_at_duty
from followup.workflows.look_at_timing import look_at_timing

STRETCHES = (1, 2)
PLACES = {1: "first", 2: "second", 3: "third"}
HEADS = {"manager": "The manager", "owner": "The owner", "on_call": "On call after hours"}


class Back(forms.Form):
    """The newest version when the button was shown."""

    based_on: forms.Whole


@blueprint.get("/duty")
@for_roles(*MANAGERS)
def duty() -> ResponseReturnValue:
    """The roster as it stands."""
    return _page(None, {})


@blueprint.post("/duty")
@for_roles(*MANAGERS)
def keep_duty() -> ResponseReturnValue:
    """Keep the roster as a new version."""
    roster, based_on, wrong = _read(request.form)
    if roster is not None and not wrong:
        done = change_duty(house().store, me().shop_id, roster, based_on, me().name, house().now())
        if done.version is not None:
            return go(f"Kept as version {done.version}. The next alert goes by it.", "manager.duty")
        wrong = dict(done.wrong)
    return _page(forms.shown_again(request.form), wrong, 422)


@blueprint.post("/duty/versions/<int:version>/back")
@for_roles(*MANAGERS)
def duty_back_to(version: int) -> ResponseReturnValue:
    """Make the roster as it was then, as a new version."""
    form = read_or_400(Back)
    try:
        done = bring_duty_back(house().store, me().shop_id, version, form.based_on, me().name, house().now())
    except LookupError:
        return or_404(None)
    said = f"The roster is as in version {version} again." if done.version else " ".join(done.wrong.values())
    return go(said, "manager.duty")


@blueprint.post("/duty/rules")
@for_roles(*MANAGERS)
def keep_duty_rules() -> ResponseReturnValue:
    """Keep the rules that go with duty."""
    names = [rule.name for _, rules in rules_form.groups_of("duty") for rule in rules]
    news, wrong, rest = rules_form.read(names, request.form)
    if not wrong:
        done = change_rules(
            house().store, me().shop_id, ["duty"], news, rest["based_on"], me().name, rest["because"], house().now()
        )
        wrong = dict(done.wrong)
    return _page(None, wrong, 422) if wrong else go("Kept.", "manager.duty")


def _read(sent: MultiDict[str, str]) -> tuple[Roster | None, int, dict[str, str]]:
    """The roster that was typed, the version that it is based on, and what is wrong by weekday."""
    fields: dict[str, Any] = {"based_on": (forms.Whole, ...), **dict.fromkeys(HEADS, (forms.MaybeWhole, None))}
    for day in rules_form.DAY_NAMES:
        for number in STRETCHES:
            fields |= {f"{day}_{number}_{end}": (forms.MaybeTime, None) for end in ("from", "to")}
            fields |= {f"{day}_{number}_told_{place}": (forms.MaybeWhole, None) for place in PLACES}
    form, wrong = forms.read(create_model("DutyForm", __base__=forms.Form, **fields), sent)
    if form is None:
        return None, 0, {_day_of(field): why for field, why in wrong.items()}
    values = form.model_dump()
    watches: dict[str, tuple[Watch, ...]] = {}
    for day in rules_form.DAY_NAMES:
        try:
            found = tuple(one for number in STRETCHES if (one := _watch(values, f"{day}_{number}_")))
        except ValueError as error:
            wrong[day] = str(error)
            continue
        if found:
            watches[day] = found
    return Roster(watches, **{name: values[name] for name in HEADS}), values["based_on"], wrong


def _day_of(field: str) -> str:
    return field.partition("_")[0] if field.partition("_")[0] in rules_form.DAY_NAMES else field


def _watch(values: Mapping[str, Any], prefix: str) -> Watch | None:
    opens, closes = values[f"{prefix}from"], values[f"{prefix}to"]
    told = tuple(who for place in PLACES if (who := values[f"{prefix}told_{place}"]) is not None)
    if opens is None and closes is None and not told:
        return None
    if opens is None or closes is None:
        raise ValueError("Give both times of a stretch, or leave it empty.")
    return Watch(f"{opens:%H:%M}", f"{closes:%H:%M}", told)


def _shown(roster: Roster) -> dict[str, Any]:
    """What stands in the fields."""
    found: dict[str, Any] = {name: getattr(roster, name) or "" for name in HEADS}
    for day, watches in roster.watches.items():
        for number, watch in zip(STRETCHES, watches, strict=False):
            found |= {f"{day}_{number}_from": watch.opens, f"{day}_{number}_to": watch.closes}
            found |= {f"{day}_{number}_told_{place}": who for place, who in zip(PLACES, watch.told, strict=False)}
    return found


def _page(given: dict[str, Any] | None, wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = look_at_duty(house().store, me().shop_id, house().now())
    rules = [rule for _, fields in rules_form.groups_of("duty") for rule in fields]
    timing = look_at_timing(house().store, me().shop_id)
    page = render_template(
        "manager/duty.html", seen=seen, given=given or _shown(seen.roster), wrong=wrong, people=_people(seen),
        days=rules_form.DAY_NAMES, stretches=STRETCHES, places=PLACES, heads=HEADS, rules=rules,
        rules_given=rules_form.shown(timing.shop.rules, [rule.name for rule in rules]),
        rules_version=timing.shop.rules_version,
    )  # fmt: skip
    return page, status


def _people(seen: Duty) -> list[tuple[int | str, str]]:
    named: list[tuple[int | str, str]] = [("", "nobody")]
    for one in seen.members:
        named.append((one.id, f"{one.name} ({one.role}{', no alert phone' if one.id in seen.silent else ''})"))
    return named
