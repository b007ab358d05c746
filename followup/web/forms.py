"""Reads forms: strings become values by the kind of their field, then everything is checked strictly.

A form is a `Form` with the kinds below. A field that comes twice, or that the form does not know, is an error and not
a surprise. Errors are words for the person, by field.
"""

from __future__ import annotations

import re
from datetime import date, time
from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, BeforeValidator, ConfigDict, StringConstraints, ValidationError
from werkzeug.datastructures import MultiDict

from followup.web.security import CSRF_FIELD

F = TypeVar("F", bound="Form")

_DAY = re.compile(r"\d{4}-\d{2}-\d{2}", re.ASCII)
_TIME = re.compile(r"([01]\d|2[0-3]):[0-5]\d", re.ASCII)
_WHOLE = re.compile(r"-?\d{1,9}", re.ASCII)
_NUMBER = re.compile(r"-?\d{1,9}([.,]\d{1,6})?", re.ASCII)
_SECRETS = ("password", "old", "new")


class Form(BaseModel):
    """What a page sends: no unknown fields, no field twice, unchangeable once read."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


def _text(given: Any) -> Any:
    """Lines end in \\n, no other control characters: nobody types them, and logs and exports would carry them on."""
    if not isinstance(given, str):
        return given
    plain = given.replace("\r\n", "\n").strip()
    if any(ord(sign) < 32 and sign not in "\n\t" for sign in plain):
        raise ValueError("Take out the characters that cannot be seen.")
    return plain


def _needed(given: Any) -> Any:
    plain = _text(given)
    if plain == "":
        raise ValueError("Fill this in.")
    return plain


def _whole(given: Any) -> Any:
    plain = str(given).strip().replace(",", "")
    if not _WHOLE.fullmatch(plain):
        raise ValueError("Give a whole number.")
    return int(plain)


def _number(given: Any) -> Any:
    plain = str(given).strip()
    if not _NUMBER.fullmatch(plain):
        raise ValueError("Give a number, like 4 or 4.5.")
    return float(plain.replace(",", "."))


def _day(given: Any) -> Any:
    plain = str(given).strip()
    try:
        return date.fromisoformat(plain) if _DAY.fullmatch(plain) else _refuse("Give a day, like 2026-11-24.")
    except ValueError:
        return _refuse("There is no such day.") if _DAY.fullmatch(plain) else _refuse("Give a day, like 2026-11-24.")


def _time(given: Any) -> Any:
    plain = str(given).strip()
    return time.fromisoformat(plain) if _TIME.fullmatch(plain) else _refuse("Give a time, like 14:30.")


def _refuse(words: str) -> Any:
    raise ValueError(words)


def _or_none(given: Any) -> Any:
    return None if isinstance(given, str) and not given.strip() else given


# The kinds of fields. The `Maybe` ones are None where the field was left empty.
Words = Annotated[str, StringConstraints(max_length=2_000), BeforeValidator(_text)]
NeededWords = Annotated[str, StringConstraints(max_length=2_000), BeforeValidator(_needed)]
Secret = Annotated[str, StringConstraints(min_length=1, max_length=1_000)]
# A form that is carried over a sign-in; what a body may hold bounds it before.
Sealed = Annotated[str, StringConstraints(max_length=2_000_000)]
Whole = Annotated[int, BeforeValidator(_whole)]
Number = Annotated[float, BeforeValidator(_number)]
Day = Annotated[date, BeforeValidator(_day)]
Time = Annotated[time, BeforeValidator(_time)]
Tick = Annotated[bool, BeforeValidator(lambda given: given == "yes")]
Several = tuple[str, ...]
MaybeWhole = Annotated[Whole | None, BeforeValidator(_or_none)]
MaybeNumber = Annotated[Number | None, BeforeValidator(_or_none)]
MaybeDay = Annotated[Day | None, BeforeValidator(_or_none)]
MaybeTime = Annotated[Time | None, BeforeValidator(_or_none)]


def read(form: type[F], sent: MultiDict[str, str]) -> tuple[F | None, dict[str, str]]:
    """The form, or None and what is wrong by field ("" for the form as a whole)."""
    values: dict[str, Any] = {}
    for name in sent:
        if name == CSRF_FIELD:
            continue
        given = sent.getlist(name)
        is_list = name in form.model_fields and form.model_fields[name].annotation == Several
        if len(given) > 1 and not is_list:
            return None, {"": "A field came twice. Load the page again."}
        values[name] = tuple(given) if is_list else given[0]
    try:
        return form.model_validate(values), {}
    except ValidationError as error:
        return None, _in_words(error)


def shown_again(sent: MultiDict[str, str]) -> dict[str, Any]:
    """What the person had typed, to fill the form again; never a password."""
    return {name: sent.get(name, "") for name in sent if name != CSRF_FIELD and name not in _SECRETS}


def _in_words(error: ValidationError) -> dict[str, str]:
    said: dict[str, str] = {}
    for one in error.errors(include_url=False, include_context=True, include_input=False):
        field = str(one["loc"][0]) if one["loc"] else ""
        if one["type"] == "extra_forbidden":
            field = ""
        said.setdefault(field, _one_in_words(one["type"], one.get("ctx", {})))
    return said


def _one_in_words(kind: str, context: dict[str, Any]) -> str:
    if kind == "value_error":
        return str(context["error"])
    if kind == "extra_forbidden":
        return "The page and the program do not fit together. Load the page again."
    if kind == "missing":
        return "Fill this in."
    if kind == "string_too_short":
        return "Fill this in." if context["min_length"] <= 1 else f"Give at least {context['min_length']} characters."
    if kind == "string_too_long":
        return f"Give at most {context['max_length']} characters."
    if kind in ("greater_than_equal", "greater_than"):
        return f"Give {context.get('ge', context.get('gt'))} or more."
    if kind in ("less_than_equal", "less_than"):
        return f"Give {context.get('le', context.get('lt'))} or less."
    if kind == "literal_error":
        return "Choose one of these."
    return "This cannot be read."
