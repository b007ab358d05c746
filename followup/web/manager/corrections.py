"""What advisors put right of the reading of texts, as a file for `followup understand --replay`."""

from __future__ import annotations

import json

from flask import Response
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.workflows.correct_reading import corrections_as_lines


@blueprint.get("/corrected-readings")
@for_roles(*MANAGERS)
def corrected_readings() -> ResponseReturnValue:
    """One JSON object a line, the oldest first; it holds customers' own words, so it is kept like a backup."""
    lines = corrections_as_lines(house().store, me().shop_id)
    body = "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)
    named = {"Content-Disposition": 'attachment; filename="corrected-readings.jsonl"', "Cache-Control": "no-store"}
    return Response(body, mimetype="application/x-ndjson", headers=named)
