"""An inspection as it was kept: what was measured, and when each item may be due, in words."""

from __future__ import annotations

from datetime import date

from flask import abort, render_template
from flask.typing import ResponseReturnValue

from followup.core.forecast.window import DueWindow
from followup.web.advisory_lines import advisory_lines
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.sheet import PLACES, said, sheet
from followup.web.technician.blueprint import blueprint
from followup.web.technician.typed import shows_all
from followup.web.why import why_shown
from followup.web.words import MONTHS
from followup.workflows.look_at_inspection_form import ItemSeen, look_at_result

# Wider than a year says nothing that helps.
WIDEST_DAYS = 365
NO_DATE = "no date yet: look again at the next visit"


@blueprint.get("/inspections/<int:inspection_id>")
@for_roles("technician", "advisor", "manager", "owner")
def result(inspection_id: int) -> ResponseReturnValue:
    """What was kept and what follows from it."""
    kept = look_at_result(house().store, me().shop_id, inspection_id, house().now())
    if kept is None:
        abort(404)
    rows = [_row(one) for one in kept.items]
    whys = [
        why_shown(one.window, _name(one), one.condition, one.legal, kept.today)
        for one in (*kept.items, *kept.stored)
        if one.window is not None
    ]
    may_correct = shows_all(kept.line, sheet(kept.car.vehicle, kept.line.part, catalogue=kept.catalogue))
    may_ask = me().role != "technician"
    return render_template(
        "technician/result.html",
        kept=kept,
        rows=rows,
        advisories=advisory_lines(kept.advisories, kept.car.vehicle, kept.today),
        whys=whys,
        inspection_id=inspection_id,
        may_correct=may_correct,
        may_ask_consent=may_ask,
    )


def _name(seen: ItemSeen) -> str:
    return f"{seen.item.words}, {PLACES[seen.position].lower()}" if seen.position else seen.item.words


def _row(seen: ItemSeen) -> dict[str, str]:
    return {
        "item": seen.item.words,
        "place": PLACES[seen.position] if seen.position else "",
        "measured": said(seen.reading) if seen.reading else "not this time",
        "condition": seen.condition,
        "due": due_words(seen.window, seen.condition == "due now"),
    }


def due_words(window: DueWindow | None, is_due_now: bool) -> str:
    """When an item may be due: a month or two months, never a chance."""
    if window is None:
        return ""
    if window.is_past:
        return "now"
    if is_due_now:
        return "may be due already"
    early, late = window.early, window.late
    if early is None:
        return NO_DATE
    if late is None or (late - early).days > WIDEST_DAYS:
        return f"{_month(early)} or later"
    if _month(early) == _month(late):
        return f"around {_month(early)}"
    return f"between {_month(early)} and {_month(late)}"


def _month(day: date) -> str:
    return f"{MONTHS[day.month - 1]} {day.year}"
