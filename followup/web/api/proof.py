"""Who asks: `Authorization: Bearer TOKEN` (RFC 6750). The answers to a request without a token that stands."""

from __future__ import annotations

from flask import Response, abort, jsonify, request

from followup.web.house import house
from followup.workflows.keep_tokens import Token, standing_token


def token_of_request() -> Token:
    """The token that proves this request; else the request ends here with 401 and what to do."""
    kind, _, given = request.headers.get("Authorization", "").partition(" ")
    if kind.lower() != "bearer" or not given.strip():
        abort(_refusal("No token was given", "Send the header Authorization: Bearer TOKEN.", "Bearer"))
    token = standing_token(house().store, given.strip())
    if token is None:
        say = ("This token does not stand", "Ask the shop for a new one: followup token new NAME.")
        abort(_refusal(*say, 'Bearer error="invalid_token"'))
    return token


def _refusal(happened: str, do: str, challenge: str) -> Response:
    answer = jsonify(error=happened, do=do)
    answer.status_code = 401
    answer.headers["WWW-Authenticate"] = challenge
    return answer
