"""`POST /api/v1/inspections`: inspections and visits from another program, with the checks of file and form.

One JSON object a request is answered when it is kept and its car's due windows are made. JSON lines are kept line by
line, good ones in spite of bad ones; their windows are made by the clock's next tick. The same content again is 200.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from flask import Response, abort, jsonify, request
from flask.typing import ResponseReturnValue

from followup.core.inspection_check import Fault
from followup.web.api.blueprint import blueprint
from followup.web.api.proof import token_of_request
from followup.web.house import house
from followup.web.security import proven_by
from followup.workflows.keep_inspections import KeptLine

OBJECT_KINDS = ("application/json",)
LINES_KINDS = ("application/x-ndjson", "application/ndjson", "application/jsonl")
STATUS = {"new": 201, "corrected": 201, "unchanged": 200, "doubtful": 409, "rejected": 422}
YES_NO = {"": False, "false": False, "true": True}


@blueprint.post("/inspections")
@proven_by("token")
def keep() -> ResponseReturnValue:
    """Keep what was brought; 201 kept, 200 nothing new, 409 doubtful, 422 faults."""
    token = token_of_request()
    if request.mimetype not in OBJECT_KINDS + LINES_KINDS:
        abort(415)
    accepts = YES_NO.get(request.args.get("accept_doubtful", ""))
    if accepts is None:
        return _refused("accept_doubtful", "say true or false, or leave it out")
    try:
        body = request.get_data().decode("utf-8-sig")
    except UnicodeDecodeError:
        return _refused("", "is not UTF-8: send it in UTF-8")
    kept_by = f"token {token.name}"
    if request.mimetype in OBJECT_KINDS:
        kept = house().keep_inspection(token.shop_id, body, kept_by, accepts_doubtful=accepts)
        return _answer(_told(kept), STATUS[kept.outcome])
    return _keep_lines(token.shop_id, body, kept_by, accepts)


def _keep_lines(shop_id: int, body: str, kept_by: str, accepts_doubtful: bool) -> ResponseReturnValue:
    # Not splitlines(): it would also part a line at signs that JSON allows inside its texts.
    numbered = [(number, text) for number, text in enumerate(body.split("\n"), start=1) if text.strip()]
    if not numbered:
        return _refused("", "holds no line: send one JSON object a line")
    texts = [text for _, text in numbered]
    kept = list(house().keep_inspections(shop_id, texts, kept_by, accepts_doubtful=accepts_doubtful))
    lines = [{"line": number, **_told(one)} for (number, _), one in zip(numbered, kept, strict=True)]
    return _answer({"lines": lines, **_counted(kept)}, max((STATUS[one.outcome] for one in kept), key=_WORST.index))


# A request of several lines is answered by the status of which a program has to do something first.
_WORST = (200, 201, 409, 422)


def _counted(kept: Sequence[KeptLine]) -> dict[str, int]:
    """The same numbers as the last line of `followup import`."""
    outcomes = [one.outcome for one in kept]
    return {
        "read": len(outcomes),
        "kept": sum(one in ("new", "corrected") for one in outcomes),
        "unchanged": outcomes.count("unchanged"),
        "rejected": sum(one in ("rejected", "doubtful") for one in outcomes),
    }


def _told(kept: KeptLine) -> dict[str, Any]:
    return {
        "outcome": kept.outcome,
        "faults": [vars(fault) for fault in kept.faults],
        "doubts": [vars(doubt) for doubt in kept.doubts],
    }


def _refused(field: str, says: str) -> ResponseReturnValue:
    return _answer(_told(KeptLine("rejected", faults=(Fault(field, says),))), 422)


def _answer(told: dict[str, Any], status: int) -> Response:
    answer = jsonify(told)
    answer.status_code = status
    return answer
