"""Signing in and out, and a member's own account."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, flash, redirect, render_template, request, session, url_for
from flask.typing import ResponseReturnValue
from flask_login import LoginManager, UserMixin, current_user, login_user, logout_user  # type: ignore[import-untyped]  # it has no types

from followup.web import carried, forms
from followup.web.house import house
from followup.web.security import for_everyone_signed_in, public
from followup.workflows import sign_in as signing
from followup.workflows.sign_in import StaffMember

SIGNED_OUT_MEANWHILE = "You were signed out meanwhile. Sign in: what you filled in is still there."
blueprint = Blueprint("login", __name__)
manager = LoginManager()
# The token ends on the server; a second identity made of address and browser would sign phones out as they roam.
manager.session_protection = None


class SignedIn(UserMixin):  # type: ignore[misc]  # flask-login has no types
    """The member of staff behind this request; the id that the cookie holds is the session's token."""

    def __init__(self, member: StaffMember, token: str) -> None:
        self.member = member
        self.token = token
        self.shop_id = member.shop_id
        self.staff_id = member.id
        self.name = member.name
        self.role = member.role

    def get_id(self) -> str:
        """What stands in the cookie: a token that the server can end, not the account's number."""
        return self.token


class SignInForm(forms.Form):
    """What the sign-in page sends."""

    shop: forms.Words = ""
    login: forms.NeededWords
    password: forms.Secret
    next: forms.Words = ""
    carried: forms.Sealed = ""


class PasswordForm(forms.Form):
    """A new password; told once, shown by the browser where the person asks for it."""

    old: forms.Secret
    new: forms.Secret


def me() -> SignedIn:
    """Who asks; only in views that declare roles."""
    who: SignedIn = current_user
    return who


@manager.user_loader  # type: ignore[untyped-decorator]  # flask-login has no types
def _who_is(token: str) -> SignedIn | None:
    member = signing.who_is(house().store, house().now(), token)
    return None if member is None else SignedIn(member, token)


@blueprint.get("/")
@for_everyone_signed_in
def home() -> ResponseReturnValue:
    """Everybody begins where their work is."""
    return redirect(url_for(_home_of(me().role)), 303)


@blueprint.route("/sign-in", methods=["GET", "POST"])
@public
def sign_in() -> ResponseReturnValue:
    """The sign-in page."""
    if request.method == "GET":
        return _sign_in_page({"next": request.args.get("next", "")}, {})
    form, wrong = forms.read(SignInForm, request.form)
    if form is None:
        return _sign_in_page(forms.shown_again(request.form), wrong, 422)
    address = request.remote_addr or ""
    answer = signing.sign_in(house().store, house().now(), form.shop, form.login, form.password, address)
    if answer.token is None or answer.member is None:
        return _sign_in_page(
            forms.shown_again(request.form), {"": answer.why_not or ""}, 429 if answer.has_to_wait else 422
        )
    # Nothing of the time before goes on: an anonymous cookie that somebody planted is worth nothing afterwards.
    session.clear()
    login_user(SignedIn(answer.member, answer.token))
    return (carried.go_on(form.carried) if form.carried else None) or redirect(_way_on(form.next), 303)


def ask_again() -> ResponseReturnValue | None:
    """The sign-in page in answer to a form that outlives its sender's session; None where it does not."""
    sealed = carried.seal()
    return _sign_in_page({"carried": sealed}, {"": SIGNED_OUT_MEANWHILE}, 403) if sealed else None


@blueprint.post("/sign-out")
@for_everyone_signed_in
def sign_out() -> ResponseReturnValue:
    """End this session."""
    signing.sign_out(house().store, house().now(), me().token)
    return _leave("You are signed out.")


@blueprint.get("/account")
@for_everyone_signed_in
def account() -> ResponseReturnValue:
    """A member's own account."""
    return _account_page({})


@blueprint.post("/account/password")
@for_everyone_signed_in
def change_password() -> ResponseReturnValue:
    """Set a new password; everybody who is signed in to this account signs in again."""
    form, wrong = forms.read(PasswordForm, request.form)
    if form is not None:
        address = request.remote_addr or ""
        wrong = signing.change_password(house().store, house().now(), me().member, form.old, form.new, address)
    if wrong:
        return _account_page(wrong, 422)
    return _leave("The new password is kept. Sign in with it.")


@blueprint.post("/account/sessions/end")
@for_everyone_signed_in
def end_sessions() -> ResponseReturnValue:
    """Sign out everywhere."""
    signing.end_all_sessions(house().store, house().now(), me().member)
    return _leave("You are signed out everywhere.")


def _home_of(role: str) -> str:
    return "technician.home" if role == "technician" else "manager.home" if role == "manager" else "advisor.home"


def _way_on(wanted: str) -> str:
    """The page that was asked for before; only a path of our own, never another site."""
    if wanted.startswith("/") and not wanted.startswith(("//", "/\\")) and wanted.isprintable():
        return wanted
    return url_for("login.home")


def _leave(said: str) -> ResponseReturnValue:
    logout_user()
    session.clear()
    flash(said)
    return redirect(url_for("login.sign_in"), 303)


def _sign_in_page(given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    several = signing.has_several_shops(house().store)
    return render_template("sign_in.html", given=given, wrong=wrong, asks_shop=several), status


def _account_page(wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    sessions = signing.sessions_of(house().store, house().now(), me().member)
    return render_template("account.html", wrong=wrong, sessions=sessions), status
