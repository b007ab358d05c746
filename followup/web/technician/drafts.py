"""A form that is half filled: kept as it is typed, offered again, taken over, thrown away.

With the page's script it is kept as one types; without it by the buttons between the sections. Either way the answer
says since when it is kept, and says it only once it is. What may not be kept (somebody else has it by now, another page
went on with it, the inspection is there already) stays on the page with the reason.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import datetime
from typing import Any

from flask import abort, flash, jsonify, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from flask_wtf.csrf import CSRFError  # type: ignore[import-untyped]  # it has no types
from werkzeug.datastructures import MultiDict

from followup.core.wall import to_wall
from followup.web import errors, forms, words
from followup.web.carried import carried_over
from followup.web.house import house
from followup.web.login import me
from followup.web.security import CSRF_FIELD, for_roles, wants_json
from followup.web.technician.blueprint import blueprint
from followup.web.technician.entered import DOES_NOT_FIT, names_of
from followup.web.technician.form_page import (
    EVERYBODY,
    NOT_YET,
    InspectionForm,
    beginning,
    known,
    new_page,
    open_form,
    part_asked,
    show_form,
    when,
)
from followup.workflows import keep_draft as keeping
from followup.workflows.keep_draft import DraftAnswer, TypedSoFar
from followup.workflows.look_at_drafts import DraftSeen, look_at_draft, look_at_drafts
from followup.workflows.look_at_inspection_form import look_at_form

SENT_ANEW = "You signed in anew while this form was open. It is as you filled it in: look at it, then send it again."
# Of the page, not of what was measured.
_OF_THE_PAGE = (CSRF_FIELD, "accept", "looked_at", "draft", "page", "corrects")
_NUMBER = "customer.phone"
_MOST_SIGNS = 2_000
_MOST_SIGNS_OF_A_CODE = 100
_PLACE = re.compile(r"[\w.-]{1,80}", re.ASCII)
Fields = Mapping[str, str]


class AsSeen(forms.Form):
    """A press about a draft as it was when the page was made."""

    revision: forms.Whole


def go_on(variables: Mapping[str, Any], query: Fields, fields: Fields) -> ResponseReturnValue | None:
    """Go on with a form whose sender's session had run out: it is kept, and shown with everything in it."""
    if look_at_form(house().store, me().shop_id, variables.get("vehicle_id"), house().now()) is None:
        return None
    form, sent = open_form(variables.get("vehicle_id"), part_asked(query)), MultiDict(fields)
    return _go_on(form, _keep(form, sent), sent)


@blueprint.post("/draft")
@for_roles(*EVERYBODY)
@carried_over(go_on)
def keep_draft_new() -> ResponseReturnValue:
    """Keep the form of a car that was never here as far as it is filled."""
    return _answer(open_form(None, part_asked(request.args)))


@blueprint.post("/cars/<int:vehicle_id>/draft")
@for_roles(*EVERYBODY)
@carried_over(go_on)
def keep_draft(vehicle_id: int) -> ResponseReturnValue:
    """Keep a car's form as far as it is filled."""
    return _answer(open_form(vehicle_id, part_asked(request.args)))


def _answer(form: InspectionForm) -> ResponseReturnValue:
    answer = _keep(form, request.form)
    if wants_json():
        says = DOES_NOT_FIT if answer is None else _words(form, answer)
        why_not = "unfit" if answer is None else answer.why_not
        draft = f"{answer.draft_id}.{answer.revision}" if answer and not answer.why_not else None
        return jsonify(says=says, why=why_not, draft=draft), 422 if answer is None else 409 if why_not else 200
    return _go_on(form, answer, request.form, request.args.get("to", ""))


def _go_on(form: InspectionForm, answer: DraftAnswer | None, sent: Any, to: str = "") -> ResponseReturnValue:
    """Back to the form, at its next section; where nothing was kept, the page itself with the reason."""
    if answer is None or answer.why_not:
        says = DOES_NOT_FIT if answer is None else _words(form, answer)
        return show_form(form, known(form, sent), {"": says}, status=422 if answer is None else 409)
    place = to if _PLACE.fullmatch(to) else None
    return redirect(form.address(draft=answer.draft_id, _anchor=place), 303)


@blueprint.errorhandler(CSRFError)
def _signed_in_anew(error: Exception) -> ResponseReturnValue:
    """A form of the session before: what was typed is shown again, with this session's token; nothing is kept."""
    if wants_json():
        return jsonify(why="old_token"), 400
    vehicle_id = (request.view_args or {}).get("vehicle_id")
    is_there = look_at_form(house().store, me().shop_id, vehicle_id, house().now()) is not None
    if request.endpoint not in SHOWN_AGAIN or not is_there:
        return errors.form_too_old(error)
    form = open_form(vehicle_id, part_asked(request.args))
    return show_form(form, known(form, request.form), {"": SENT_ANEW}, status=400, arrived="no")


SHOWN_AGAIN = tuple(f"technician.{name}" for name in ("inspect", "inspect_new", "keep_draft", "keep_draft_new"))


def offer(form: InspectionForm, corrects: int | None = None) -> ResponseReturnValue | None:
    """In place of an empty form: the draft that the address names, or what is half filled about the car.

    None where there is nothing to choose, or where somebody begins one of their own.
    """
    if wanted := request.args.get("draft", type=int):
        return _show_draft(form, wanted)
    found = [one for one in _drafts() if one.vehicle_id == form.vehicle_id and one.corrects == corrects]
    if form.vehicle_id is None:
        # Another new car is another car; everybody's are on the list.
        found = [one for one in found if one.staff_id == me().staff_id]
    own = [one for one in found if one.staff_id == me().staff_id and one.part == form.part]
    may_begin = not own or form.vehicle_id is None
    if not found or ("anew" in request.args and may_begin):
        return None
    anew = request.path if corrects else form.address()
    return render_template(
        "technician/drafts.html", form=form, drafts=found, may_begin=may_begin, anew=anew, **for_lists()
    )


def _show_draft(form: InspectionForm, draft_id: int) -> ResponseReturnValue:
    draft = _load(draft_id)
    if (draft.vehicle_id, draft.part) != (form.vehicle_id, form.part):
        abort(404)
    if draft.staff_id != me().staff_id:
        return redirect(form.address(), 303)
    hidden = _hidden()
    typed = {name: value for name, value in draft.fields.items() if name not in hidden}
    ours = {"draft": f"{draft.draft_id}.{draft.revision}", "page": new_page(), "corrects": str(draft.corrects or "")}
    return show_form(form, {**beginning(form), **typed, **ours}, {}, sign=f"Kept {when(draft.kept_at, _now())}.")


def keep_typed(form: InspectionForm, sent: Any) -> tuple[dict[str, str], str]:
    """Keep what was sent and could not be made an inspection: the page's fields about it, and its sign."""
    answer = _keep(form, sent)
    if answer is None or answer.why_not:
        return {}, _words(form, answer) if answer else NOT_YET
    return {"draft": f"{answer.draft_id}.{answer.revision}"}, _words(form, answer)


def taken_by_another(sent: Fields) -> str | None:
    """Who took this form over since the page was made, in words; None where nobody did."""
    draft_id, _ = _draft_of(sent)
    draft = look_at_draft(house().store, me().shop_id, draft_id, house().now()) if draft_id else None
    if draft is None or draft.staff_id == me().staff_id:
        return None
    return _TAKEN.format(draft.who, when(draft.kept_at, _now()))


def number_typed_before(sent: Fields) -> str | None:
    """The number that stands in the draft and not on this member's page, if there is one."""
    draft_id, _ = _draft_of(sent)
    draft = look_at_draft(house().store, me().shop_id, draft_id, house().now()) if draft_id and _hidden() else None
    return draft.fields.get(_NUMBER) or None if draft else None


@blueprint.get("/drafts/<int:draft_id>/drop")
@for_roles(*EVERYBODY)
def ask_to_drop(draft_id: int) -> ResponseReturnValue:
    """Ask before what was filled in is thrown away."""
    draft = _load(draft_id)
    filled = sum(1 for name, value in draft.fields.items() if value and name.startswith(("r.", "n.", "odometer")))
    return render_template("technician/drop_draft.html", draft=draft, filled=filled, **for_lists())


@blueprint.post("/drafts/<int:draft_id>/drop")
@for_roles(*EVERYBODY)
def drop_draft(draft_id: int) -> ResponseReturnValue:
    """Throw it away, and begin anew."""
    draft, form = _load(draft_id), _as_seen()
    why_not = keeping.drop_draft(house().store, me().shop_id, me().staff_id, draft_id, form.revision)
    if why_not:
        flash(why_not)
        return redirect(url_for("technician.home"), 303)
    return redirect(_form_of(draft).address(), 303)


@blueprint.post("/drafts/<int:draft_id>/take")
@for_roles(*EVERYBODY)
def take_draft(draft_id: int) -> ResponseReturnValue:
    """Go on with what another member began."""
    draft, form = _load(draft_id), _as_seen()
    store, who = house().store, me()
    why_not = keeping.take_draft(store, who.shop_id, who.staff_id, draft_id, form.revision, house().now())
    if why_not:
        flash(why_not)
        return redirect(url_for("technician.home"), 303)
    return redirect(_form_of(draft).address(draft=draft_id), 303)


def for_lists() -> dict[str, Any]:
    """What a page that lists drafts needs."""
    now = _now()
    return {
        "mine": me().staff_id,
        "when": lambda at: when(at, now),
        "go_on_at": _address,
    }


def drafts_here() -> list[DraftSeen]:
    """Every draft of the shop, one's own first."""
    return sorted(_drafts(), key=lambda one: one.staff_id != me().staff_id)


_TAKEN = "{} took this form over {}: what is typed here is not kept. Go on with it from the list of inspections."


def _words(form: InspectionForm, answer: DraftAnswer) -> str:
    at = when(to_wall(answer.at, form.picture.shop.zone), _now())
    if answer.why_not is None:
        return f"Kept {at}."
    if answer.why_not == "taken":
        return _TAKEN.format(answer.who, at)
    if answer.why_not == "kept":
        by = f" by {answer.who}" if answer.who else ""
        return f"This inspection was kept {at}{by}: what is typed here is not. Open it and correct it."
    return f"More was filled in {at} on another page: what is typed here is not kept. Load the page again."


def _keep(form: InspectionForm, sent: Any) -> DraftAnswer | None:
    """None where the page sends what it cannot."""
    code, page = str(sent.get("inspection", "")), str(sent.get("page", ""))
    is_whole = set(sent) <= names_of(form.parts) and all(len(sent.getlist(name)) == 1 for name in sent)
    corrects = str(sent.get("corrects", ""))
    if not (is_whole and 0 < len(code) <= _MOST_SIGNS_OF_A_CODE and 0 < len(page) <= _MOST_SIGNS_OF_A_CODE):
        return None
    if not (corrects == "" or corrects.isdecimal()):
        return None
    fields = {name: _clean(value) for name, value in sent.items() if name not in _OF_THE_PAGE}
    draft_id, seen = _draft_of(sent)
    typed = TypedSoFar(
        form.vehicle_id, form.part or "", _clean(code), int(corrects) if corrects else None, fields, _clean(page),
        draft_id, seen, _hidden(),
    )  # fmt: skip
    return keeping.keep_draft(house().store, me().shop_id, me().staff_id, typed, house().now())


def _hidden() -> tuple[str, ...]:
    """Fields that are not on this member's page."""
    return (_NUMBER,) if me().role == "technician" else ()


def _draft_of(sent: Fields) -> tuple[int | None, int | None]:
    """The draft that a page began with, and its revision."""
    number, _, revision = str(sent.get("draft", "")).partition(".")
    is_told = all(one.isascii() and one.isdecimal() and len(one) <= 9 for one in (number, revision))
    return (int(number), int(revision)) if is_told else (None, None)


def _clean(typed: str) -> str:
    """As much as a field takes, without signs that nobody types."""
    return "".join(sign for sign in typed[:_MOST_SIGNS] if ord(sign) >= 32 or sign in "\n\t")


def _drafts() -> list[DraftSeen]:
    return look_at_drafts(house().store, me().shop_id, house().now())


def _load(draft_id: int) -> DraftSeen:
    draft = look_at_draft(house().store, me().shop_id, draft_id, house().now())
    if draft is None:
        abort(404)
    return draft


def _as_seen() -> AsSeen:
    form, _ = forms.read(AsSeen, request.form)
    if form is None:
        abort(400)
    return form


def _form_of(draft: DraftSeen) -> InspectionForm:
    return open_form(draft.vehicle_id, draft.part)


def _address(draft: DraftSeen) -> str:
    told: dict[str, Any] = {"part": draft.part, "draft": draft.draft_id}
    if draft.vehicle_id is None:
        return url_for("technician.inspect_new", **told)
    return url_for("technician.inspect", vehicle_id=draft.vehicle_id, **told)


def _now() -> datetime:
    return words.local(house().now())
