"""Forms: what is typed becomes a value by its field's kind, or words that say what to change."""

from __future__ import annotations

from datetime import date, time
from typing import Annotated, Literal

import pytest
from pydantic import Field
from werkzeug.datastructures import MultiDict

from followup.web import forms


class Sheet(forms.Form):
    """One field of each kind."""

    note: forms.Words = ""
    name: forms.NeededWords = "x"
    miles: Annotated[forms.Whole, Field(ge=0, le=999_999)] = 0
    pad_mm: forms.Number = 0.0
    seen_on: forms.Day = date(2026, 1, 1)
    at: forms.Time = time(9)
    is_own: forms.Tick = False
    axle: Literal["front", "rear"] = "front"
    items: forms.Several = ()
    later_on: forms.MaybeDay = None
    depth: forms.MaybeNumber = None


def _read(*pairs: tuple[str, str]) -> tuple[Sheet | None, dict[str, str]]:
    return forms.read(Sheet, MultiDict(pairs))


@pytest.mark.parametrize(
    ("field", "typed", "value"),
    [
        ("note", " two\r\nlines ", "two\nlines"),
        ("miles", "48,210", 48_210),
        ("miles", "0", 0),
        ("pad_mm", "4.5", 4.5),
        ("pad_mm", "4,5", 4.5),
        ("seen_on", "2026-02-28", date(2026, 2, 28)),
        ("at", "14:30", time(14, 30)),
        ("is_own", "yes", True),
        ("axle", "rear", "rear"),
        ("later_on", "", None),
        ("depth", " ", None),
        ("depth", "3", 3.0),
    ],
)
def test_what_is_typed_becomes_a_value(field: str, typed: str, value: object) -> None:
    form, wrong = _read((field, typed))
    assert wrong == {}
    assert getattr(form, field) == value


# The values that a lax reading turns into something else: 0 into 1970, true into 1, nan into a number.
@pytest.mark.parametrize(
    ("field", "typed"),
    [
        ("seen_on", "0"),
        ("seen_on", "2026-02-30"),
        ("seen_on", "20260228"),
        ("seen_on", "1767225600"),
        ("later_on", "2026-13-01"),
        ("miles", "true"),
        ("miles", "4.5"),
        ("miles", "1e3"),
        ("miles", "-1"),
        ("miles", "1000000"),
        ("miles", "٤٢"),
        ("miles", ""),
        ("pad_mm", "nan"),
        ("pad_mm", "inf"),
        ("pad_mm", "1e9"),
        ("pad_mm", "30%"),
        ("at", "24:00"),
        ("at", "9:00"),
        ("axle", "left"),
        ("name", " "),
        ("name", "a\x00b"),
        ("note", "a\x1b[31mb"),
        ("note", "x" * 2_001),
    ],
)
def test_what_cannot_be_read_is_told_at_its_field(field: str, typed: str) -> None:
    form, wrong = _read((field, typed))
    assert form is None
    assert list(wrong) == [field]
    assert wrong[field][0].isupper()
    assert wrong[field].endswith(".")


def test_a_field_that_comes_twice_is_refused() -> None:
    form, wrong = _read(("miles", "1"), ("miles", "2"))
    assert form is None
    assert list(wrong) == [""]


def test_a_list_may_come_as_often_as_it_likes() -> None:
    form, _ = _read(("items", "a"), ("items", "b"))
    assert form
    assert form.items == ("a", "b")


def test_a_field_that_the_form_does_not_know_is_refused() -> None:
    form, wrong = _read(("is_admin", "yes"))
    assert form is None
    assert list(wrong) == [""]


def test_a_password_is_never_filled_in_again() -> None:
    sent = MultiDict([("login", "rosa"), ("password", "secret one"), ("old", "a"), ("new", "b"), ("csrf_token", "t")])
    assert forms.shown_again(sent) == {"login": "rosa"}
