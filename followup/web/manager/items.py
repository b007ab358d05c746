"""What we look at: the shop's own items, each as a row that needs no code, with a preview before it is kept."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date
from typing import Any

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.core.inspection_check import Fault
from followup.core.item import Catalogue, in_use
from followup.core.own_item import KINDS, OwnItem
from followup.core.vehicle import Vehicle
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager import own_item_form as own_form
from followup.web.manager.blueprint import blueprint
from followup.web.manager.wording import LANGUAGE_NAMES, MAY_LOOK, own_domain
from followup.web.security import for_roles
from followup.web.sheet import HOW_WORDS, PLACES, REASONS, sheet
from followup.web.steps import MANAGERS, Nothing, go, or_404, read_or_400
from followup.web.words import MONTHS, catalogue
from followup.workflows import keep_own_item as keeping
from followup.workflows import look_at_own_items as looking
from followup.workflows.look_at_own_items import ItemPreview, OwnItemSeen


class Switch(forms.Form):
    """Off, or on again."""

    is_in_use: forms.Tick = False


class Back(forms.Form):
    """The newest version when the button was shown."""

    based_on: forms.Whole


@blueprint.get("/items")
@for_roles(*MAY_LOOK)
def items() -> ResponseReturnValue:
    """The shop's own items, and those that come with the program."""
    seen = looking.look_at_own_items(house().store, me().shop_id)
    own = {one.item.code for one in seen}
    shipped = [one for one in in_use(catalogue()) if one.code not in own]
    return render_template("manager/items.html", seen=seen, shipped=shipped, kinds=KINDS)


@blueprint.route("/items/new", methods=["GET", "POST"])
@for_roles(*MANAGERS)
def new_item() -> ResponseReturnValue:
    """Add an item."""
    if request.method == "GET":
        return _page(None, own_form.shown(None), {})
    return _keep(None)


@blueprint.get("/items/<item_code>")
@for_roles(*MAY_LOOK)
def item(item_code: str) -> ResponseReturnValue:
    """One item as it stands."""
    seen = _seen(item_code)
    return _page(seen, own_form.shown(seen.newest.own), {}, own=seen.newest.own)


@blueprint.post("/items/<item_code>")
@for_roles(*MANAGERS)
def change_item(item_code: str) -> ResponseReturnValue:
    """Look at how a change would read, or keep it."""
    return _keep(_seen(item_code))


@blueprint.post("/items/<item_code>/switch")
@for_roles(*MANAGERS)
def switch_item(item_code: str) -> ResponseReturnValue:
    """Switch an item off, or on again."""
    form = read_or_400(Switch)
    _seen(item_code)
    is_in_use = form.is_in_use
    keeping.switch_own_item(house().store, me().shop_id, item_code, is_in_use, me().staff_id, me().name, house().now())
    said = (
        "It is asked for again."
        if is_in_use
        else "It is switched off: no longer asked for, forecast or texted about. What was read stays."
    )
    return go(said, "manager.item", item_code=item_code)


@blueprint.post("/items/<item_code>/versions/<int:item_version>/look")
@for_roles(*MAY_LOOK)
def approve_item(item_code: str, item_version: int) -> ResponseReturnValue:
    """A second person lets the words be used."""
    read_or_400(Nothing)
    try:
        why_not = keeping.approve_own_item(
            house().store, me().shop_id, item_code, item_version, me().staff_id, me().name, house().now(), own_domain()
        )
    except LookupError:
        return or_404(None)
    return go(why_not or "Texts may name it from now on.", "manager.item", item_code=item_code)


@blueprint.post("/items/<item_code>/versions/<int:item_version>/back")
@for_roles(*MANAGERS)
def item_back_to(item_code: str, item_version: int) -> ResponseReturnValue:
    """Make the item as it was then, as a new version."""
    form = read_or_400(Back)
    try:
        done = keeping.bring_back_own_item(
            house().store, me().shop_id, item_code, item_version, form.based_on, me().staff_id, me().name,
            house().now(), own_domain(),
        )  # fmt: skip
    except LookupError:
        return or_404(None)
    kept = f"The item is as in version {item_version} again, kept as version {done.version}."
    return go(kept if done.version else " ".join(one.says for one in done.faults), "manager.item", item_code=item_code)


def _seen(code: str) -> OwnItemSeen:
    return or_404(looking.look_at_own_item(house().store, me().shop_id, code))


def _keep(seen: OwnItemSeen | None) -> ResponseReturnValue:
    sent = request.form
    given = own_form.typed(sent)
    if not own_form.fits(sent):
        return _page(seen, given, {"": own_form.DOES_NOT_FIT}, 422)
    row, code = own_form.row_of(sent), seen.item.code if seen else None
    row["is_in_use"] = seen.item.is_in_use if seen else True
    example = own_form.number(sent.get("example", ""))
    own, faults = keeping.checked({**row, "code": code or ""}, () if code else catalogue(), own_domain())
    if isinstance(example, str) and example:
        faults = (*faults, Fault("example", "give a number, like 4 or 4.5"))
    if own is None or any(one.field == "example" for one in faults):
        return _page(seen, given, own_form.by_field(faults), 422)
    if sent.get("does") != "keep":
        return _page(seen, given, {}, own=own, example=example or None)
    based_on = sent.get("based_on", "")
    kept = keeping.keep_own_item(
        house().store, me().shop_id, row, code, int(based_on) if based_on.isdigit() else 0, me().staff_id, me().name,
        sent.get("because", "").strip()[:200], house().now(), own_domain(),
    )  # fmt: skip
    if kept.version is None:
        return _page(seen, given, own_form.by_field(kept.faults), 422, own=own, example=example or None)
    flash(f"Kept as version {kept.version}. Technicians are asked for it from now on.")
    return redirect(url_for("manager.item", item_code=kept.code), 303)


def _page(
    seen: OwnItemSeen | None, given: dict[str, Any], wrong: dict[str, str], status: int = 200, *,
    own: OwnItem | None = None, example: float | str | None = None,
) -> ResponseReturnValue:  # fmt: skip
    preview = None
    if own is not None:
        value = example if isinstance(example, float) else None
        preview = looking.preview_own_item(house().store, me().shop_id, own, house().now(), value, own_domain())
    # A version that somebody else kept meanwhile is seen in the list; sending once more goes by it.
    given = {**given, "based_on": seen.newest.number if seen else 0}
    page = render_template(
        "manager/item.html", seen=seen, given=given, wrong=wrong, preview=preview, rows=_rows(preview),
        choices=own_form.choices(), languages=LANGUAGE_NAMES, places=PLACES, how=[("", "not told"), *HOW_WORDS.items()],
        reasons=[("", "-"), *REASONS.items()], kinds=KINDS, spreads=own_form.SPREADS, labels=own_form.LABELS,
        month=month,
        row_text=json.dumps(seen.newest.own.row(), ensure_ascii=False) if seen else "",
    )  # fmt: skip
    return page, status


def month(on: date) -> str:
    """`Mar 2028`."""
    return f"{MONTHS[on.month - 1]} {on.year}"


def _rows(preview: ItemPreview | None) -> list[Any]:
    """The item as the inspection form asks for it: one station a place."""
    if preview is None:
        return []
    # Also where it is switched off: it is shown as it would be asked for.
    only: Catalogue = {preview.item.code: replace(preview.item, is_in_use=True)}
    return [station for part in sheet(Vehicle(""), None, None, only) for station in part.stations]
