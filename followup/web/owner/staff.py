"""Who has an account: adding one, closing and opening one."""

from __future__ import annotations

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.workflows import keep_staff
from followup.workflows.sign_in import ROLES, Role


class NewMember(forms.Form):
    """A new account; the password is told in person and changed by its owner."""

    login: forms.NeededWords
    name: forms.NeededWords
    role: Role
    password: forms.Secret


@blueprint.get("/staff")
@for_roles("owner")
def staff() -> ResponseReturnValue:
    """Everybody with an account, and the form for one more."""
    return _page({}, {})


@blueprint.post("/staff")
@for_roles("owner")
def add() -> ResponseReturnValue:
    """Make an account."""
    form, wrong = forms.read(NewMember, request.form)
    if form is not None:
        wrong = keep_staff.add_staff(
            house().store,
            house().now(),
            me().shop_id,
            form.login,
            form.name,
            form.role,
            form.password,
            me().member.login,
        )
    if form is None or wrong:
        return _page(forms.shown_again(request.form), wrong, 422)
    flash(f"{form.name} can sign in now as {form.login.lower()}.")
    return redirect(url_for("owner.staff"), 303)


@blueprint.get("/staff/<int:staff_id>/close")
@for_roles("owner")
def ask_to_close(staff_id: int) -> ResponseReturnValue:
    """Ask once more before an account is closed."""
    members = keep_staff.staff_of(house().store, me().shop_id)
    member = next((one for one in members if one.id == staff_id and one.is_active), None)
    if member is None:
        abort(404)
    return render_template("owner/close_account.html", member=member)


@blueprint.post("/staff/<int:staff_id>/close")
@for_roles("owner")
def close(staff_id: int) -> ResponseReturnValue:
    """Close an account; whoever uses it is signed out."""
    return _set_active(staff_id, False, "The account is closed.")


@blueprint.post("/staff/<int:staff_id>/open")
@for_roles("owner")
def open_again(staff_id: int) -> ResponseReturnValue:
    """Open a closed account."""
    return _set_active(staff_id, True, "The account is open again.")


def _set_active(staff_id: int, is_active: bool, said: str) -> ResponseReturnValue:
    why_not = keep_staff.set_active(house().store, house().now(), me().shop_id, staff_id, is_active, me().member.login)
    if why_not == keep_staff.NO_ACCOUNT:
        abort(404)
    flash(why_not or said)
    return redirect(url_for("owner.staff"), 303)


def _page(given: dict[str, str], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    members = keep_staff.staff_of(house().store, me().shop_id)
    return render_template("owner/staff.html", members=members, roles=ROLES, given=given, wrong=wrong), status
