"""What pages of every folder do: read a button's form, say what came of it, and go on to a page."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import TypeVar

from flask import abort, flash, redirect, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.workflows.sign_in import Role

ADVISORS: tuple[Role, ...] = ("advisor", "manager", "owner")
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


def in_words(wrong: Mapping[str, str]) -> str:
    """Everything that is wrong with a short form, for a line at the top of a page."""
    return " ".join(dict.fromkeys(wrong.values()))


def instant_of(text: str) -> datetime:
    """The instant that a button of ours holds, aware; anything else is no page of ours."""
    try:
        at = datetime.fromisoformat(text)
    except ValueError:
        abort(400)
    if at.tzinfo is None:
        abort(400)
    return at
