"""What we say: every text's wording, the shop's own in versions, a preview on a real car, a second person's look."""

from __future__ import annotations

from typing import Any
from urllib.parse import urlsplit

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager import rules_form, trials
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, Nothing, go, or_404, read_or_400
from followup.workflows import keep_wording as keeping
from followup.workflows import look_at_wording as looking
from followup.workflows.change_rules import change_rules
from followup.workflows.look_at_timing import look_at_timing
from followup.workflows.send_texts.body import facts_of
from followup.workflows.sign_in import Role

LANGUAGE_NAMES = {"en": "English", "es": "Spanish"}
KINDS = {
    "invite": "Invites: we start it",
    "visit": "About a visit that stands or was asked for",
    "answer": "Answers to what was written",
}
# A second look may be an advisor's: they read these texts every day.
MAY_LOOK: tuple[Role, ...] = ("advisor", "manager", "owner")
PRICE = "price_text"


class Editor(forms.Form):
    """The wording, and what to do with it: look at it, or keep it."""

    source: forms.Words
    about: forms.MaybeWhole = None
    does: forms.NeededWords


@blueprint.get("/wording")
@for_roles(*MAY_LOOK)
def wordings() -> ResponseReturnValue:
    """Every text by kind, and whether the shop's own words stand in it."""
    return _list(None, {})


@blueprint.post("/wording/price")
@for_roles(*MANAGERS)
def keep_price_text() -> ResponseReturnValue:
    """Keep the shop's price text."""
    news, wrong, rest = rules_form.read([PRICE], request.form)
    if not wrong:
        done = change_rules(
            house().store, me().shop_id, ["wording"], news, rest["based_on"], me().name, rest["because"], house().now()
        )
        if done.version is not None:
            return go("The price text is kept. It answers the next question for a price.", "manager.wordings")
        wrong = dict(done.wrong)
    return _list(forms.shown_again(request.form), wrong, 422)


@blueprint.get("/wording/<code>/<language>")
@for_roles(*MAY_LOOK)
def wording(code: str, language: str) -> ResponseReturnValue:
    """One text in one language."""
    seen = or_404(looking.look_at_wording(house().store, me().shop_id, code, language))
    source = seen.in_use.source if seen.in_use else seen.shipped
    return _editor(code, language, {"source": source, "about": ""})


@blueprint.post("/wording/<code>/<language>")
@for_roles(*MANAGERS)
def edit_wording(code: str, language: str) -> ResponseReturnValue:
    """Look at how it reads, or keep it."""
    or_404(looking.look_at_wording(house().store, me().shop_id, code, language))
    form, wrong = forms.read(Editor, request.form)
    given = forms.shown_again(request.form)
    if form is None:
        return _editor(code, language, given, wrong, 422)
    if form.does != "keep":
        return _editor(code, language, given)
    kept = keeping.keep_wording(
        house().store, me().shop_id, code, language, form.source, me().staff_id, me().name, house().now(), own_domain()
    )
    if kept.version is None:
        return _editor(code, language, given, {"source": " ".join(one.says for one in kept.faults)}, 422)
    flash(f"Kept as version {kept.version}. It is used as soon as somebody else has looked at it.")
    return redirect(url_for("manager.wording", code=code, language=language), 303)


@blueprint.post("/wording/<code>/<language>/<int:wording_id>/look")
@for_roles(*MAY_LOOK)
def approve(code: str, language: str, wording_id: int) -> ResponseReturnValue:
    """A second person lets it be used."""
    read_or_400(Nothing)
    try:
        why_not = keeping.approve_wording(
            house().store, me().shop_id, wording_id, me().staff_id, me().name, house().now(), own_domain()
        )
    except LookupError:
        return or_404(None)
    return go(why_not or "It is used from now on.", "manager.wording", code=code, language=language)


@blueprint.post("/wording/<code>/<language>/<int:wording_id>/end")
@for_roles(*MANAGERS)
def end(code: str, language: str, wording_id: int) -> ResponseReturnValue:
    """Take a version out of use."""
    read_or_400(Nothing)
    or_404(keeping.end_wording(house().store, me().shop_id, wording_id, me().name, house().now()) or None)
    said = "That version is out of use. The one before it counts again, or the text that comes with the program."
    return go(said, "manager.wording", code=code, language=language)


def own_domain() -> str:
    """The host of the pages: the only one to which a text may lead."""
    return urlsplit(house().settings.public_base_url).hostname or ""


def _list(given: dict[str, Any] | None, wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = looking.look_at_wordings(house().store, me().shop_id)
    timing = look_at_timing(house().store, me().shop_id)
    if given is None:
        given = rules_form.shown(timing.shop.rules, [PRICE])
    page = render_template(
        "manager/wordings.html", seen=seen, kinds=KINDS, languages=LANGUAGE_NAMES, given=given, wrong=wrong,
        price=rules_form.rule_field(PRICE), based_on=timing.shop.rules_version, trials=trials.seen_of(None, None),
    )  # fmt: skip
    return page, status


def _editor(
    code: str, language: str, given: dict[str, Any], wrong: dict[str, str] | None = None, status: int = 200
) -> ResponseReturnValue:
    seen = or_404(looking.look_at_wording(house().store, me().shop_id, code, language))
    about = str(given.get("about") or "")
    shown = looking.preview(
        house().store, me().shop_id, code, language, given.get("source", ""), house().now(), facts_of,
        int(about) if about.isdigit() and len(about) < 10 else None, own_domain(),
    )  # fmt: skip
    options = [("", "A sample customer"), *((one.text_id, one.words) for one in seen.examples)]
    page = render_template(
        "manager/wording.html", seen=seen, preview=shown, given=given, wrong=wrong or {}, options=options,
        languages=LANGUAGE_NAMES, trials=trials.seen_of(code, language), may_begin=trials.may_begin(seen),
        tried=trials.options_of(seen), begins_with=trials.proposal(seen),
    )  # fmt: skip
    return page, status
