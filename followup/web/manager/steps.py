"""What every page of this folder does: who may, reading a button's form, saying what came of it and going on."""

from __future__ import annotations

from typing import TypeVar

from flask import abort, flash, redirect, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.workflows.sign_in import Role

MANAGERS: tuple[Role, ...] = ("manager", "owner")
F = TypeVar("F", bound=forms.Form)
T = TypeVar("T")


class Nothing(forms.Form):
    """A button alone."""


def read_or_400(form: type[F]) -> F:
    """The form of a button, whose fields no person typed; what does not fit is no page of ours."""
    found, _ = forms.read(form, request.form)
    if found is None:
        abort(400)
    return found


def or_404(found: T | None) -> T:
    """What was found, or the page that says that there is nothing."""
    if found is None:
        abort(404)
    return found


def go(said: str, endpoint: str, **values: object) -> ResponseReturnValue:
    """Say it at the top of the next page."""
    flash(said)
    return redirect(url_for(endpoint, **values), 303)  # type: ignore[arg-type]  # flask calls the values of a route Any
