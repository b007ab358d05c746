"""Whether the program works, for a watcher from outside: 200 or 503. It says nothing about the shop."""

from __future__ import annotations

from flask import Blueprint, jsonify
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.security import public

blueprint = Blueprint("health", __name__)


@blueprint.get("/health")
@public
def health() -> ResponseReturnValue:
    """Ready, or not and why."""
    wrong = house().what_is_wrong()
    return jsonify(is_ready=not wrong, because=wrong), 503 if wrong else 200
