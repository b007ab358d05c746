"""The two hooks: a text that came in, and what became of one that left.

Nothing but the signature opens them. It is checked over the configured public address and the path as it was asked
for, never over what the request claims of its host. A hook says "received" only when it is on the disk.
"""

from __future__ import annotations

from urllib.parse import quote

from flask import abort, request
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.security import proven_by
from followup.web.webhook.blueprint import blueprint

# A text of 1,600 signs, each of them written as twelve, and all that a provider says beside it fit in a third of it.
MOST_BYTES = 64 * 1024


def _check_signature() -> None:
    at_house = house()
    # More is no text: 413, before anything of it is read.
    request.max_content_length = MOST_BYTES
    # Our hooks have no query; one that was added would not be in what was signed.
    url = at_house.settings.public_base_url + quote(request.path)
    if request.query_string or not at_house.is_genuine(url, request.form, request.headers):
        abort(403)


@blueprint.post("/texts")
@proven_by("signature")
def receive_text() -> ResponseReturnValue:
    """A customer wrote."""
    _check_signature()
    if not house().receive_text(request.form):
        abort(400)
    return "", 204


@blueprint.post("/status/<public_id>/<int:attempt>")
@proven_by("signature")
def receive_status(public_id: str, attempt: int) -> ResponseReturnValue:
    """What became of a text of ours, in that attempt."""
    _check_signature()
    if not house().receive_status(public_id, attempt, request.form):
        abort(400)
    return "", 204
