"""Consent at the counter: staff choose the number, the customer reads and ticks on the tablet and hands it back.

The customer's page has no links into the house. Its words are the exact ones of `wording.consent_words`, in the
customer's language; what is kept is what was shown.
"""

from __future__ import annotations

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.technician.blueprint import blueprint
from followup.workflows import take_consent
from followup.workflows.take_consent import PersonPicture, PhoneSeen, Ticked

# The words around the form, by language; those of the form itself are kept elsewhere, with their version.
AROUND = {
    "en": {
        "number": "Your number", "confirm": "Confirm",
        "nothing": "Tick at least one box, or hand the tablet back.",
        "needed": "For texts about upkeep please tick this line too.",
        "changed": "The words have changed. Please read them again.",
        "thanks": "Thank you. One text confirms it. Please hand the tablet back.",
        "known": "This was agreed to before. Please hand the tablet back.",
        "stopped": "Texts to this number are stopped. Text START to the shop to turn them on again.",
        "other": "Español",
    },
    "es": {
        "number": "Su número", "confirm": "Confirmar",
        "nothing": "Marque al menos una casilla, o devuelva la tableta.",
        "needed": "Para mensajes sobre el cuidado del auto marque también esta línea.",
        "changed": "El texto ha cambiado. Léalo otra vez, por favor.",
        "thanks": "Gracias. Un mensaje lo confirma. Devuelva la tableta, por favor.",
        "known": "Ya lo había aceptado. Devuelva la tableta, por favor.",
        "stopped": "Los mensajes a este número están parados. Mande START al taller para recibirlos otra vez.",
        "other": "English",
    },
}  # fmt: skip
SAID = {
    "kept": "Kept: texts about visits. One text confirms it.",
    "known": "That was kept before; nothing changed.",
    "stopped": "A stop stands for this number. Only the customer can lift it: by START, or on the tablet.",
}


class OnTablet(forms.Form):
    """What the customer ticked; `version` is that of the words they read."""

    visits: forms.Tick = False
    upkeep: forms.Tick = False
    own_number: forms.Tick = False
    version: forms.NeededWords


class NewNumber(forms.Form):
    """A number as it was told."""

    number: forms.NeededWords


class Nothing(forms.Form):
    """A press without fields."""


@blueprint.get("/consent/<int:person_id>")
@for_roles("advisor", "manager", "owner")
def consent(person_id: int) -> ResponseReturnValue:
    """Choose the number, and how the customer agrees."""
    return render_template("technician/consent.html", person=_person(person_id), given={}, wrong={})


@blueprint.post("/consent/<int:person_id>/number")
@for_roles("advisor", "manager", "owner")
def add_number(person_id: int) -> ResponseReturnValue:
    """Keep one more number of the person."""
    person = _person(person_id)
    form, wrong = forms.read(NewNumber, request.form)
    if form is not None:
        why_not = take_consent.add_number(
            house().store, me().shop_id, person_id, form.number, house().now(), house().ledger_secret
        )
        wrong = {"number": why_not} if why_not else {}
    if wrong:
        given = forms.shown_again(request.form)
        return render_template("technician/consent.html", person=person, given=given, wrong=wrong), 422
    return redirect(url_for("technician.consent", person_id=person_id), 303)


@blueprint.post("/consent/<int:person_id>/<int:phone_id>/spoken")
@for_roles("advisor", "manager", "owner")
def take_spoken(person_id: int, phone_id: int) -> ResponseReturnValue:
    """The customer said yes to texts about visits."""
    _phone(_person(person_id), phone_id)
    form, _ = forms.read(Nothing, request.form)
    if form is None:
        abort(400)
    secret, now = house().ledger_secret, house().now()
    done = take_consent.take_spoken(house().store, me().shop_id, phone_id, person_id, secret, me().name, now)
    flash(SAID[done])
    return redirect(url_for("technician.consent", person_id=person_id), 303)


@blueprint.get("/consent/<int:person_id>/<int:phone_id>/tablet/<language>")
@for_roles("advisor", "manager", "owner")
def tablet(person_id: int, phone_id: int, language: str) -> ResponseReturnValue:
    """The form that the customer reads."""
    return _tablet(person_id, phone_id, language, {}, {})


@blueprint.post("/consent/<int:person_id>/<int:phone_id>/tablet/<language>")
@for_roles("advisor", "manager", "owner")
def confirm(person_id: int, phone_id: int, language: str) -> ResponseReturnValue:
    """The customer confirmed."""
    around = _around(language)
    form, wrong = forms.read(OnTablet, request.form)
    given = forms.shown_again(request.form)
    if form is None:
        return _tablet(person_id, phone_id, language, given, wrong, 422)
    if form.version != take_consent.words_shown(house().store, me().shop_id, language).version:
        return _tablet(person_id, phone_id, language, {}, {"": around["changed"]}, 422)
    _phone(_person(person_id), phone_id)
    ticked = Ticked(form.visits, form.upkeep, form.own_number)
    done = take_consent.take_on_tablet(
        house().store, me().shop_id, phone_id, person_id, language, ticked, house().ledger_secret, me().name,
        house().now(),
    )  # fmt: skip
    if isinstance(done, dict):
        return _tablet(person_id, phone_id, language, given, {name: around[why] for name, why in done.items()}, 422)
    says = around["thanks" if done == "kept" else done]
    return render_template("technician/thanks.html", language=language, says=says, person_id=person_id)


def _tablet(
    person_id: int, phone_id: int, language: str, given: dict[str, str], wrong: dict[str, str], status: int = 200
) -> ResponseReturnValue:
    around = _around(language)
    person = _person(person_id)
    page = render_template(
        "technician/tablet.html",
        person=person,
        phone=_phone(person, phone_id),
        words=take_consent.words_shown(house().store, me().shop_id, language),
        around=around,
        language=language,
        other="es" if language == "en" else "en",
        given=given,
        wrong=wrong,
    )
    return page, status


def _around(language: str) -> dict[str, str]:
    if language not in AROUND:
        abort(404)
    return AROUND[language]


def _person(person_id: int) -> PersonPicture:
    person = take_consent.look_at_person(house().store, me().shop_id, person_id)
    if person is None:
        abort(404)
    return person


def _phone(person: PersonPicture, phone_id: int) -> PhoneSeen:
    phone = next((one for one in person.phones if one.phone_id == phone_id), None)
    if phone is None:
        abort(404)
    return phone
