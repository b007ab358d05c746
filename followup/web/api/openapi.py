"""`GET /api/v1/openapi.json`: the interface for programs, described by OpenAPI 3.1.

Put together from the very models that read the lines, so that the description cannot lag behind them.
"""

from __future__ import annotations

from typing import Any

from flask import jsonify
from flask.typing import ResponseReturnValue
from pydantic.json_schema import models_json_schema

from followup.core.inspection import InspectionLine, VisitLine
from followup.core.item import Catalogue, in_use
from followup.web.api.blueprint import blueprint
from followup.web.api.inspections import LINES_KINDS, OBJECT_KINDS
from followup.web.api.proof import token_of_request
from followup.web.house import house
from followup.web.security import proven_by
from followup.workflows.look_at_catalogue import look_at_catalogue

Schema = dict[str, Any]
WALL_TIMES = ("inspected_at", "opened_at", "closed_at")
STATUSES = {
    "200": "Nothing new: the same content was kept before.",
    "201": "Kept: new, or a correction of what was kept under the same name.",
    "409": "Doubtful, and not kept: look again, then send the same once more with accept_doubtful=true.",
    "422": "Faults, all of them at once, each with its field and what to do. Of several lines the good ones were kept.",
}
REFUSALS = {
    "401": "No token was given, or it does not stand (unknown or revoked).",
    "413": "The body is larger than 2 MB.",
    "415": f"The body is neither {OBJECT_KINDS[0]} nor JSON lines ({LINES_KINDS[0]}).",
}
EXAMPLE = {
    "inspection": "I-2041",
    "inspected_at": "2026-03-02T09:10",
    "odometer": 41230,
    "unit": "mi",
    "customer": {"id": "C-17"},
    "vehicle": {"id": "V-31"},
    "readings": [{"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": 6}],
}


@blueprint.get("/openapi.json")
@proven_by("token")
def openapi() -> ResponseReturnValue:
    """The description of this interface."""
    token = token_of_request()
    made = description(look_at_catalogue(house().store, token.shop_id))
    return jsonify({**made, "servers": [{"url": f"{house().settings.public_base_url}/api/v1"}]})


def description(catalogue: Catalogue) -> Schema:
    """The whole description but for the server's address, for a shop with these items."""
    return {
        "openapi": "3.1.0",
        "info": {"title": "followup: inspections in", "version": "1"},
        "security": [{"token": []}],
        "paths": {
            "/inspections": {"post": _post()},
            "/openapi.json": {"get": _get()},
        },
        "components": {
            "securitySchemes": {"token": {"type": "http", "scheme": "bearer"}},
            "schemas": {**_lines(catalogue), **_answers()},
        },
    }


def _post() -> Schema:
    line: Schema = {"oneOf": [_ref("InspectionLine"), _ref("VisitLine")]}
    content: Schema = {OBJECT_KINDS[0]: {"schema": line, "example": EXAMPLE}}
    content |= {kind: {"schema": {"type": "string", "description": "One such object a line."}} for kind in LINES_KINDS}
    answer = {"oneOf": [_ref("Answer"), _ref("AnswerToLines")]}
    return {
        "operationId": "keepInspections",
        "summary": "Keep an inspection or a visit, or several as JSON lines.",
        "parameters": [
            {
                "name": "accept_doubtful",
                "in": "query",
                "description": "true: what is doubtful was looked at again and is right.",
                "schema": {"type": "boolean", "default": False},
            }
        ],
        "requestBody": {"required": True, "content": content},
        "responses": {status: _answered(words, answer) for status, words in STATUSES.items()} | _refusals(REFUSALS),
    }


def _get() -> Schema:
    return {
        "operationId": "describe",
        "summary": "This description.",
        "responses": {"200": _answered("OpenAPI 3.1.", {"type": "object"})} | _refusals({"401": REFUSALS["401"]}),
    }


def _refusals(refusals: dict[str, str]) -> Schema:
    return {status: _answered(words, _ref("Refusal")) for status, words in refusals.items()}


def _answered(words: str, schema: Schema) -> Schema:
    return {"description": words, "content": {"application/json": {"schema": schema}}}


def _ref(name: str) -> Schema:
    return {"$ref": f"#/components/schemas/{name}"}


def _lines(catalogue: Catalogue) -> Schema:
    """The schemas of what comes in, from the models."""
    _, made = models_json_schema(
        [(InspectionLine, "validation"), (VisitLine, "validation")], ref_template="#/components/schemas/{model}"
    )
    schemas: Schema = made["$defs"]
    for name in ("InspectionLine", "VisitLine"):
        for field in WALL_TIMES:
            if field in schemas[name]["properties"]:
                _say_wall_time(schemas[name]["properties"][field])
    item = schemas["Reading"]["properties"]["item"]
    item["description"] = f"An item of the catalogue: {', '.join(one.code for one in in_use(catalogue))}."
    return schemas


def _say_wall_time(schema: Schema) -> None:
    """`date-time` of JSON Schema wants an offset; ours are wall times at the shop and must have none."""
    for part in (schema, *schema.get("anyOf", ())):
        if part.pop("format", None):
            part["examples"] = ["2026-03-02T09:10"]
            part["description"] = "Wall time at the shop, without an offset."


def _answers() -> Schema:
    """The schemas of what is answered."""
    says = {"type": "array", "items": _ref("Fault")}
    outcome: Schema = {"enum": ["new", "corrected", "unchanged", "doubtful", "rejected"]}
    line: Schema = {"outcome": outcome, "faults": says, "doubts": says}
    counted = {name: {"type": "integer"} for name in ("read", "kept", "unchanged", "rejected")}
    lines = {"type": "array", "items": _object({"line": {"type": "integer"}, **line})}
    return {
        "Fault": _object({"field": {"type": "string"}, "says": {"type": "string"}}),
        "Answer": _object(line),
        "AnswerToLines": _object({"lines": lines, **counted}),
        "Refusal": _object({"error": {"type": "string"}, "do": {"type": "string"}}),
    }


def _object(properties: Schema) -> Schema:
    return {"type": "object", "properties": properties, "required": list(properties)}
