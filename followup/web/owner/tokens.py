"""Tokens by which other programs send inspections: made and told once, listed, revoked."""

from __future__ import annotations

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.workflows import keep_tokens


class TokenForm(forms.Form):
    """What the other program is called."""

    name: forms.NeededWords


@blueprint.get("/tokens")
@for_roles("owner")
def tokens() -> ResponseReturnValue:
    """Every token, and the form for one more."""
    return _page({}, {})


@blueprint.post("/tokens")
@for_roles("owner")
def make_token() -> ResponseReturnValue:
    """Make a token; it is shown on this one page and never again."""
    form, wrong = forms.read(TokenForm, request.form)
    if form is None:
        return _page(forms.shown_again(request.form), wrong, 422)
    try:
        made = keep_tokens.new_token(house().store, me().shop_id, form.name, house().now(), me().name)
    except keep_tokens.TokenNameUnusable as unusable:
        return _page(forms.shown_again(request.form), {"name": str(unusable)}, 422)
    return _page({}, {}, made=made, name=form.name)


@blueprint.get("/tokens/revoke")
@for_roles("owner")
def ask_to_revoke() -> ResponseReturnValue:
    """Ask once more before a token ends."""
    name = request.args.get("name", "")
    standing = [one.name for one in keep_tokens.tokens_of(house().store, me().shop_id) if one.revoked_at is None]
    if name not in standing:
        abort(404)
    return render_template("owner/revoke_token.html", name=name)


@blueprint.post("/tokens/revoke")
@for_roles("owner")
def revoke() -> ResponseReturnValue:
    """End a token at once."""
    form, _ = forms.read(TokenForm, request.form)
    if form is None:
        abort(400)
    done = keep_tokens.revoke_token(house().store, me().shop_id, form.name, house().now(), me().name)
    flash("The token is ended: what it sends is refused from now on." if done else "That token was ended before.")
    return redirect(url_for("owner.tokens"), 303)


def _page(
    given: dict[str, str], wrong: dict[str, str], status: int = 200, made: str = "", name: str = ""
) -> ResponseReturnValue:
    kept = keep_tokens.tokens_of(house().store, me().shop_id)
    page = render_template("owner/tokens.html", tokens=kept, given=given, wrong=wrong, made=made, name=name)
    return page, status
