"""Who the shop is, the switches that stop texts, and what a real number needs."""

from __future__ import annotations

from typing import Any

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.settings import Settings, variable_of
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.workflows import change_shop as changing
from followup.workflows.stop_sending import Switch, stop_sending, switches

SWITCHES: dict[str, Switch] = {"invites-and-visits": "is_sending_stopped", "everything": "is_everything_off"}
# Settings of a real number, in the order in which one gets them.
NUMBER_SETTINGS = (
    "transport", "public_base_url", "sender_number", "twilio_account_sid", "twilio_auth_tokens",
    "twilio_webhook_keys",
)  # fmt: skip
REGISTRATION_SETTINGS = (
    "us_registration_brand", "us_registration_campaign", "us_registration_use_case", "us_registration_on",
)  # fmt: skip


class ShopForm(forms.Form):
    """Everything that a customer may see of the shop."""

    name: forms.NeededWords
    address: forms.Words = ""
    phone: forms.NeededWords
    texts_from: forms.NeededWords
    roadside_phone: forms.Words = ""
    zone: forms.NeededWords
    country: forms.NeededWords
    state: forms.Words = ""
    order: forms.NeededWords
    registration: forms.Words = ""


class SwitchForm(forms.Form):
    """Which way a switch is turned."""

    turn: forms.NeededWords


@blueprint.get("/shop")
@for_roles("owner")
def shop_facts() -> ResponseReturnValue:
    """The shop as it stands."""
    kept = changing.look_at_shop(house().store, me().shop_id)
    return _shop_page({name: getattr(kept, name) or "" for name in changing.FACTS}, {})


@blueprint.post("/shop")
@for_roles("owner")
def keep_shop() -> ResponseReturnValue:
    """Change who the shop is."""
    form, wrong = forms.read(ShopForm, request.form)
    if form is not None:
        wrong = changing.change_shop(house().store, me().shop_id, form.model_dump(), me().name, house().now())
    if form is None or wrong:
        return _shop_page(forms.shown_again(request.form), wrong, 422)
    flash("Kept. The next text says it so.")
    return redirect(url_for("owner.shop_facts"), 303)


@blueprint.get("/stop")
@for_roles("owner")
def stop() -> ResponseReturnValue:
    """The two switches as they stand."""
    return render_template("owner/stop.html", rules=switches(house().store, me().shop_id))


@blueprint.get("/stop/<which>/<turn>")
@for_roles("owner")
def ask_to_turn(which: str, turn: str) -> ResponseReturnValue:
    """Ask once more before a switch is turned."""
    if which not in SWITCHES or turn not in ("stop", "start"):
        abort(404)
    return render_template("owner/turn_switch.html", which=which, turn=turn)


@blueprint.post("/stop/<which>")
@for_roles("owner")
def turn_switch(which: str) -> ResponseReturnValue:
    """Turn a switch."""
    form, _ = forms.read(SwitchForm, request.form)
    if which not in SWITCHES:
        abort(404)
    if form is None or form.turn not in ("stop", "start"):
        abort(400)
    is_on = form.turn == "stop"
    done = stop_sending(house().store, me().shop_id, SWITCHES[which], is_on, me().name, house().now())
    words = "Stopped." if is_on else "Texts leave again."
    flash(words if done else "It stood so already.")
    return redirect(url_for("owner.stop"), 303)


@blueprint.get("/number")
@for_roles("owner")
def connect_number() -> ResponseReturnValue:
    """What the machine's settings still need before texts reach real phones."""
    settings: Settings = house().settings
    kept = changing.look_at_shop(house().store, me().shop_id)
    return render_template(
        "owner/number.html",
        settings=settings,
        shop_kept=kept,
        needed=[_setting(settings, name) for name in NUMBER_SETTINGS],
        registration=[_setting(settings, name) for name in REGISTRATION_SETTINGS],
        hook=f"{settings.public_base_url}/hooks/texts",
    )


def _setting(settings: Settings, name: str) -> dict[str, Any]:
    """A setting's name, words and whether it is given; never what a secret holds."""
    about = type(settings).model_fields[name]
    value = getattr(settings, name)
    is_secret = name in ("twilio_auth_tokens", "twilio_webhook_keys")
    return {
        "variable": variable_of(name),
        "words": about.description,
        "is_given": bool(value),
        "value": "kept secret" if is_secret and value else "" if is_secret else str(value or ""),
    }


def _shop_page(given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    return render_template("owner/shop.html", given=given, wrong=wrong, orders=changing.ORDERS), status
