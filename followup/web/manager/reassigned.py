"""Reassigned numbers: the file to ask with, and the answers that come back."""

from __future__ import annotations

from flask import Response, flash, render_template, request
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.workflows import check_reassigned
from followup.workflows.check_reassigned import KeptAnswers

MOST_SHOWN = 50


@blueprint.get("/reassigned")
@for_roles(*MANAGERS)
def reassigned() -> ResponseReturnValue:
    """What the check is, and both files."""
    return _page(None, {})


@blueprint.get("/reassigned/numbers")
@for_roles(*MANAGERS)
def numbers_to_check() -> ResponseReturnValue:
    """Numbers with the day of their newest consent."""
    body = check_reassigned.as_csv(check_reassigned.numbers_to_check(house().store, me().shop_id))
    named = {"Content-Disposition": 'attachment; filename="numbers-to-check.csv"', "Cache-Control": "no-store"}
    return Response(body, mimetype="text/csv", headers=named)


@blueprint.post("/reassigned/answers")
@for_roles(*MANAGERS)
def keep_reassigned() -> ResponseReturnValue:
    """Take the answers in."""
    sent = request.files.get("answers")
    if sent is None or not sent.filename:
        return _page(None, {"answers": "Choose the file with the answers."}, 422)
    try:
        text = sent.read().decode("utf-8-sig")
    except UnicodeDecodeError:
        return _page(None, {"answers": "This is no text file: save it as CSV, UTF-8."}, 422)
    kept = check_reassigned.keep_answers(house().store, me().shop_id, text, me().name, house().now())
    count = kept.yes + kept.no + kept.no_data
    if count:
        flash(f"Kept: {kept.no} no, {kept.no_data} without data, {kept.yes} yes and held until a person looked.")
    return _page(kept, {}, 200 if count else 422)


def _page(kept: KeptAnswers | None, wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    count = len(check_reassigned.numbers_to_check(house().store, me().shop_id))
    page = render_template("manager/reassigned.html", count_to_check=count, kept=kept, wrong=wrong, most=MOST_SHOWN)
    return page, status
