"""A shop whose every name, note and text is hostile: no page lets them act. Source: OWASP ASVS 5.0, 1.2.1."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import DDL, String, Table, update

from followup.rehearsal.demo_shop import PASSWORD
from followup.storage import tables
from followup.web.app import create_app
from followup.web.security import who_may_use
from tests.web import hostile
from tests.web.conftest import token_on
from tests.web.full_shop import LOGINS, variables
from tests.web.url_map import routes
from tests.workflows.demo import Demo

# Everything that somebody types, or that a phone or another program sends, and that a page may show.
TYPED: dict[Table, tuple[str, ...]] = {
    tables.shops: ("name", "address", "registration"),
    tables.shop_versions: ("author", "because"),
    tables.staff: ("name",),
    tables.api_tokens: ("name",),
    tables.calendar_feeds: ("name",),
    tables.fleet_units: ("unit",),
    tables.persons: ("name",),
    tables.inspections: ("technician", "received_by"),
    tables.recommendations: ("told_by",),
    tables.recalls: ("code", "done_by", "entered_by"),
    tables.consents: ("words", "kept_by"),
    tables.odometer_tellings: ("told_by",),
    tables.texts: ("body", "state_because"),
    tables.test_phone_texts: ("body",),
    tables.inbound: ("body",),
    tables.dead_letters: ("because",),
    tables.booking_requests: ("verbatim", "note", "closed_because"),
    tables.booking_moves: ("who", "says"),
    tables.alerts: ("says", "outcome"),
    tables.own_items: ("because",),
    tables.learned_priors: ("author",),
    tables.wording_trials: ("ended_because",),
    tables.paced_invites: ("says",),
    tables.audit: ("who", "did", "subject"),
}
FACTS = ("label", "plate", "vin")
# Codes, keys, hashes, states, numbers, languages: the program makes them or checks them on their way in.
WRITTEN_BY_PROGRAM = {
    "about", "asks", "bad_because", "because", "came_from", "claimed_by", "code", "content_hash", "country",
    "decision", "delivery", "did", "direction", "draw_key", "ended_because", "error_code", "event", "from_state",
    "held_because", "holder", "how", "item", "kind", "known", "language", "line", "login", "number", "number_hash",
    "order", "outcome", "page", "part", "parts", "password_hash", "payer", "phone", "position", "provider_id",
    "public_id", "raised_by", "reason", "reassigned", "roadside_phone", "role", "rules", "source", "state", "status",
    "status_url", "stored_set", "texts_from", "to_state", "to_set", "token_hash", "word", "words_version", "zone",
}  # fmt: skip
OF_THE_MACHINE = {"leases", "heartbeats", "sign_in_failures", "installation"}


def _fill(demo: Demo, text: str) -> None:
    with demo.house.store.write() as connection:
        # Behind the guard's back: hostile words come in with a new line of the ledger.
        connection.execute(DDL("DROP TRIGGER consents_unchanged"))
        for table, columns in TYPED.items():
            lengths = {name: getattr(table.c[name].type, "length", None) for name in columns}
            connection.execute(update(table).values({name: text[:length] for name, length in lengths.items()}))
        own = tables.own_items.c
        for row in connection.execute(tables.own_items.select()).all():
            said = {one: {**row.body[one], **dict.fromkeys(row.body[one], text)} for one in ("en", "es")}
            body = {**row.body, **said, "name": text, "work": text, "unit": text[:12]}
            connection.execute(update(tables.own_items).where(own.id == row.id).values({own.body: body}))
        half_filled = dict.fromkeys(("vehicle.label", "odometer", "customer.name"), text)
        connection.execute(update(tables.drafts).values(fields=half_filled))
        facts = tables.vehicles.c.facts
        for row in connection.execute(tables.vehicles.select()).all():
            told: dict[str, Any] = {**row.facts, **dict.fromkeys(FACTS, text[:120])}
            connection.execute(update(tables.vehicles).where(tables.vehicles.c.id == row.id).values({facts: told}))


@pytest.mark.parametrize("text", hostile.HOSTILE, ids=range(len(hostile.HOSTILE)))
def test_no_page_lets_it_act(full: Demo, text: str) -> None:
    app = create_app(full.house)
    client = app.test_client()
    form = {"login": LOGINS["owner"], "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    client.post("/sign-in", data=form)
    _fill(full, text)
    walked = 0
    for route in routes(app, variables(full.house, full.shop_id)):
        if route.method == "GET" and isinstance(who_may_use(app, route.endpoint), frozenset):
            answer = client.get(route.address, query_string={"name": text[:200], "q": text, "number": text})
            assert answer.status_code in (200, 303, 422), f"{route}: {answer.status_code}"
            # A file to keep is no page: nothing in it can act.
            if answer.status_code != 303 and answer.mimetype == "text/html":
                # The shop's own name stands at the top of every page.
                hostile.check_shown(answer.text, text)
                walked += 1
    assert walked > 30


def test_every_column_of_words_is_typed_or_the_programs_own() -> None:
    """A new column must be put among what is typed, or among what the program itself writes."""
    strange = {
        f"{table.name}.{column.name}"
        for table in tables.metadata.tables.values()
        for column in table.c
        if isinstance(column.type, String) and column.name not in (*TYPED.get(table, ()), *WRITTEN_BY_PROGRAM)
    }
    assert {one for one in strange if one.partition(".")[0] not in OF_THE_MACHINE} == set()
