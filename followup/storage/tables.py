"""Every table. Migrations must produce the same database (a test compares them)."""

from __future__ import annotations

from sqlalchemy import Boolean, Column, Date, Float, Index, Integer, String, Table, UniqueConstraint, event
from sqlalchemy import text as sql_text

from followup.core import booking, text
from followup.core.consent import WRITTEN
from followup.core.customer import ROLES_OF_TIES
from followup.core.forecast import forecast_score
from followup.core.forecast.learned import SOURCES
from followup.storage import append_only, mark_triggers
from followup.storage.columns import at, data, kept_data, key, one_of, ref, shop, word, words
from followup.storage.columns import metadata as metadata

STAFF_ROLES = ("technician", "advisor", "manager", "owner")
TEXT_KINDS = ("invite", "visit", "answer", "alert")


def _on(name: str, *, needed: bool = True) -> Column[object]:
    return Column(name, Date, nullable=not needed)


def _flag(name: str, *, default: bool = False) -> Column[bool]:
    return Column(name, Boolean, nullable=False, default=default)


# The shop, its staff and its rules ------------------------------------------------------------------------------
shops = Table(
    "shops", metadata, key(), word("code"), word("name"), word("zone"), word("phone"), word("texts_from"),
    word("address", default=""), word("country", default="US"), word("state", needed=False),
    word("roadside_phone", needed=False), word("order", default="month-first"), word("registration", needed=False),
    at("created_at"), UniqueConstraint("code"), UniqueConstraint("texts_from"),
)  # fmt: skip
# Rules and the duty roster are kept as versions, newest counts; a way back is a new version with old content.
shop_versions = Table(
    "shop_versions", metadata, key(), shop(), word("kind"), Column("version", Integer, nullable=False),
    word("author"), at("at"), data("body"), words("because", needed=False),
    UniqueConstraint("shop_id", "kind", "version"), one_of("kind", ("rules", "duty")),
)  # fmt: skip
# Every night's learning, used or not; forecasts go by the newest that is used. No body: the published values.
learned_priors = Table(
    "learned_priors", metadata, key(), shop(), Column("version", Integer, nullable=False), at("at"), word("author"),
    word("source"), _flag("is_used"), Column("cars", Integer, nullable=False), data("body", needed=False),
    UniqueConstraint("shop_id", "version"), one_of("source", SOURCES),
)  # fmt: skip
staff = Table(
    "staff", metadata, key(), shop(), word("login"), word("name"), word("role"), word("password_hash", needed=False),
    word("phone", needed=False), _flag("takes_alert_texts"), _flag("is_active", default=True), at("created_at"),
    UniqueConstraint("shop_id", "login"), one_of("role", STAFF_ROLES),
)  # fmt: skip
staff_sessions = Table(
    "staff_sessions", metadata, key(), shop(), ref("staff_id", "staff"), word("token_hash", indexed=True),
    at("created_at"), at("seen_at"), at("ended_at", needed=False),
)  # fmt: skip
sign_in_failures = Table(
    "sign_in_failures", metadata, key(), shop(), word("login", indexed=True), word("address", indexed=True), at("at"),
)  # fmt: skip
api_tokens = Table(
    "api_tokens", metadata, key(), shop(), word("name"), word("token_hash", indexed=True), at("created_at"),
    at("revoked_at", needed=False), UniqueConstraint("shop_id", "name"),
)  # fmt: skip
audit = Table(
    "audit", metadata, key(), shop(), at("at"), word("who"), word("did"), word("subject"), data("before", needed=False),
    data("after", needed=False),
)  # fmt: skip

# Rows of deleted customers and their phones stay as nobody's (`forgotten_at`): nothing finds them any more.
# People, phones, cars -------------------------------------------------------------------------------------------
phones = Table(
    "phones", metadata, key(), shop(), word("number"), data("zones"), word("line", default="unknown"),
    word("language", needed=False), word("bad_because", needed=False), word("held_because", needed=False),
    word("reassigned", needed=False), _on("reassigned_asked_on", needed=False), at("created_at"),
    at("forgotten_at", needed=False), UniqueConstraint("shop_id", "number"),
)  # fmt: skip
persons = Table(
    "persons", metadata, key(), shop(), word("code"), word("name", needed=False), word("language", needed=False),
    _on("paused_until", needed=False), _flag("is_deceased"), _flag("is_fleet"),
    ref("advisor_id", "staff", needed=False), _on("told_on", needed=False), at("created_at"),
    at("forgotten_at", needed=False), UniqueConstraint("shop_id", "code"),
)  # fmt: skip
person_phones = Table(
    "person_phones", metadata, key(), shop(), ref("person_id", "persons"), ref("phone_id", "phones"),
    _on("from_on", needed=False), _on("to_on", needed=False), word("ended_because", needed=False),
    UniqueConstraint("person_id", "phone_id"),
)  # fmt: skip
vehicles = Table(
    "vehicles", metadata, key(), shop(), word("code"), data("facts"), at("created_at"),
    UniqueConstraint("shop_id", "code"),
)  # fmt: skip
ties = Table(
    "ties", metadata, key(), shop(), ref("person_id", "persons"), ref("vehicle_id", "vehicles"), word("role"),
    _on("from_on", needed=False), _on("to_on", needed=False), word("ended_because", needed=False),
    UniqueConstraint("person_id", "vehicle_id", "role"), one_of("role", ROLES_OF_TIES),
)  # fmt: skip
# Append-only, by the database itself: what stands is played from it (core/consent.py). When a person is deleted, the
# number and the words go; the keyed hash, the time and the kind stay without end.
consents = Table(
    "consents", metadata, key(), shop(), word("number", needed=False, indexed=True), word("number_hash", indexed=True),
    word("event"), data("covers"), at("at"), _on("given_on"), word("how"), words("words"), word("words_version"),
    word("language"), _flag("is_own_and_adult"), word("because"), word("kept_by"),
    one_of("event", ("given", "narrowed", "taken_back", "given_again")),
)  # fmt: skip
for _dialect, _statements in append_only.ledger().items():
    for _statement in _statements:
        event.listen(consents, "after_create", _statement.execute_if(dialect=_dialect))

# What was measured ----------------------------------------------------------------------------------------------
visits = Table(
    "visits", metadata, key(), shop(), word("code"), ref("vehicle_id", "vehicles"), at("opened_at"),
    at("closed_at", needed=False), Column("odometer_miles", Float), word("content_hash", needed=False),
    UniqueConstraint("shop_id", "code"),
)  # fmt: skip
inspections = Table(
    "inspections", metadata, key(), shop(), word("code"), word("part"), Column("version", Integer, nullable=False),
    _flag("is_current", default=True), ref("vehicle_id", "vehicles"), ref("person_id", "persons"),
    ref("visit_id", "visits", needed=False), at("inspected_at"), _on("inspected_on"),
    Column("odometer_miles", Float), word("technician", needed=False), data("body"), word("content_hash"),
    at("received_at"), word("received_by"), UniqueConstraint("shop_id", "code", "part", "version"),
)  # fmt: skip
# A form that is being filled, one a member and what it is about. `page` and `revision` say who wrote it last,
# `corrects` which version the kept inspection will replace.
drafts = Table(
    "drafts", metadata, key(), shop(), ref("staff_id", "staff"), ref("vehicle_id", "vehicles", needed=False),
    word("about"), word("part"), word("code", indexed=True), Column("corrects", Integer), data("fields"), word("page"),
    Column("revision", Integer, nullable=False), at("begun_at"), at("kept_at"),
    UniqueConstraint("shop_id", "staff_id", "about"),
)  # fmt: skip
work_done = Table(
    "work_done", metadata, key(), shop(), ref("vehicle_id", "vehicles"),
    ref("inspection_id", "inspections", needed=False), ref("visit_id", "visits", needed=False), word("item"),
    word("position", default=""), word("did"), _on("on"),
    Column("odometer_miles", Float), data("moved", needed=False), at("kept_at"),
)  # fmt: skip
recommendations = Table(
    "recommendations", metadata, key(), shop(), ref("vehicle_id", "vehicles"),
    ref("inspection_id", "inspections", needed=False), ref("visit_id", "visits", needed=False), word("item"),
    word("position", default=""), word("decision"), word("because", needed=False), _on("until", needed=False),
    word("told_by", needed=False), _on("on"),
)  # fmt: skip
recalls = Table(
    "recalls", metadata, key(), shop(), ref("vehicle_id", "vehicles"), word("code"), _on("entered_on"), word("done_by"),
    word("entered_by"), at("ended_at", needed=False), UniqueConstraint("vehicle_id", "code"),
)  # fmt: skip
# `near_on`: from which day on planning reads it (`storage/windows.py`); none where an earlier version kept it.
due_windows = Table(
    "due_windows", metadata, key(), shop(), ref("vehicle_id", "vehicles"), word("item"), word("position", default=""),
    _on("as_of"), kept_data("body"), _flag("is_current", default=True), at("made_at"), _on("near_on", needed=False),
    Index("ix_due_windows_current", "vehicle_id", "is_current"),
    Index(
        "ix_due_windows_near", "shop_id", "near_on", "vehicle_id",
        sqlite_where=sql_text("is_current IS 1"), postgresql_where=sql_text("is_current IS true"),
    ),
)  # fmt: skip
# Which windows a planned text rests on.
window_uses = Table(
    "window_uses", metadata, key(), shop(), ref("window_id", "due_windows", indexed=False), ref("text_id", "texts"),
    UniqueConstraint("window_id", "text_id"),
)  # fmt: skip
# How a forecast came out when its item was next looked at, once each. Without a window: what the forecast would have
# said on that day from what was known then, for readings that came in before there were windows.
forecast_scores = Table(
    "forecast_scores", metadata, key(), shop(), ref("vehicle_id", "vehicles", indexed=False),
    ref("window_id", "due_windows", needed=False, indexed=False), word("item"), word("position", default=""),
    _on("forecast_on"), _on("scored_on"), word("how"), Column("readings_used", Integer, nullable=False),
    Column("chance", Float), Column("was_due", Boolean), Column("place", Float), Column("place_at_odometer", Float),
    Column("expected", Float), Column("found", Float), Column("crps", Float), at("scored_at"),
    UniqueConstraint("window_id"),
    UniqueConstraint("vehicle_id", "item", "position", "forecast_on"), one_of("how", forecast_score.ENDINGS),
    Index("ix_forecast_scores_by_day", "shop_id", "scored_on"),
)  # fmt: skip
# What was known of a car when it was forecast last, and the rules that it went by; where either is otherwise now, it is
# forecast again.
forecast_vehicles = Table(
    "forecast_vehicles", metadata, key(), shop(), ref("vehicle_id", "vehicles", indexed=False), word("known"),
    word("rules", default=""), at("forecast_at"), UniqueConstraint("vehicle_id"),
    Index("ix_forecast_vehicles_rules", "shop_id", "rules"),
)  # fmt: skip
# What was known of a car when its forecasts were scored last; where it is otherwise now, they are scored again.
scored_vehicles = Table(
    "scored_vehicles", metadata, key(), shop(), ref("vehicle_id", "vehicles", indexed=False), word("known"),
    at("scored_at"), UniqueConstraint("vehicle_id"),
)  # fmt: skip
# What the present windows of a car rest on, for pages that show why; with it, windows of tires that are stored.
due_evidence = Table(
    "due_evidence", metadata, key(), shop(), ref("vehicle_id", "vehicles"), word("item"), word("position", default=""),
    word("stored_set", default=""), data("evidence"), data("stored_window", needed=False),
)  # fmt: skip
# What a customer said about work: no for now, ask later, done elsewhere. `until` None: until it is measured again.
rests = Table(
    "rests", metadata, key(), shop(), ref("vehicle_id", "vehicles"), word("item"), word("position", default=""),
    word("because"), _on("from_on"), _on("until", needed=False), ref("inbound_id", "inbound", needed=False),
    one_of("because", ("no", "later", "done")),
)  # fmt: skip
odometer_tellings = Table(
    "odometer_tellings", metadata, key(), shop(), ref("vehicle_id", "vehicles"), _on("on"),
    Column("miles", Float, nullable=False), word("told_by"), at("told_at"),
)  # fmt: skip

# Texts out and in -----------------------------------------------------------------------------------------------
reasons = Table(
    "reasons", metadata, key(), shop(), word("kind"), ref("phone_id", "phones", needed=False),
    ref("person_id", "persons", needed=False), ref("vehicle_id", "vehicles", needed=False), word("raised_by"),
    at("raised_at"), data("items"), at("ended_at", needed=False), word("ended_because", needed=False),
    UniqueConstraint("shop_id", "kind", "phone_id", "raised_by"),
)  # fmt: skip
texts = Table(
    "texts", metadata, key(), shop(), word("public_id"), ref("phone_id", "phones", needed=False), word("number"),
    word("kind"), ref("reason_id", "reasons"), word("reason"), Column("try_no", Integer, nullable=False),
    ref("vehicle_id", "vehicles", needed=False), ref("request_id", "booking_requests", needed=False),
    ref("alert_id", "alerts", needed=False), word("language"), data("facts"), words("body", needed=False),
    Column("wording_version", Integer), Column("segments", Integer), word("state", default="planned"),
    word("state_because", needed=False), at("planned_at"), at("due_at"), at("valid_until", needed=False),
    Column("attempt", Integer, nullable=False, default=0),
    Column("refused_count", Integer, nullable=False, default=0, server_default="0"), word("claimed_by", needed=False),
    at("claimed_until", needed=False), at("in_flight_at", needed=False), at("sent_at", needed=False),
    word("provider_id", needed=False), word("delivery", needed=False), word("error_code", needed=False),
    Column("looks", Integer, nullable=False, default=0), at("look_at", needed=False), word("asks", needed=False),
    data("offered", needed=False), ref("author_id", "staff", needed=False),
    UniqueConstraint("shop_id", "number", "reason_id", "try_no"), UniqueConstraint("public_id"),
    UniqueConstraint("provider_id"), one_of("state", text.TEXT_STATES), one_of("kind", TEXT_KINDS),
    Index("ix_texts_queue", "shop_id", "state", "due_at"),
)  # fmt: skip
status_reports = Table(
    "status_reports", metadata, key(), shop(), word("public_id", indexed=True), word("provider_id"), word("status"),
    word("error_code", needed=False), at("at"), UniqueConstraint("provider_id", "status"),
)  # fmt: skip
inbound = Table(
    "inbound", metadata, key(), shop(), word("provider_id"), word("number"), ref("phone_id", "phones", needed=False),
    words("body"), data("raw"), at("received_at"), at("handled_at", needed=False), data("context", needed=False),
    data("meaning", needed=False), word("outcome", needed=False),
    Column("pictures", Integer, nullable=False, default=0), UniqueConstraint("provider_id"),
    Index("ix_inbound_unhandled", "shop_id", "handled_at"),
)  # fmt: skip
# What an advisor said was meant by a text, beside its context and what was read then (both as the contract's JSON).
reading_corrections = Table(
    "reading_corrections", metadata, key(), shop(), ref("inbound_id", "inbound", indexed=False), data("reply"),
    data("reading"), data("meant"), ref("corrected_by", "staff"), at("corrected_at"), UniqueConstraint("inbound_id"),
)  # fmt: skip
dead_letters = Table(
    "dead_letters", metadata, key(), ref("shop_id", "shops", needed=False), at("at"), word("because"),
    data("body"), at("settled_at", needed=False), word("provider_id", needed=False), UniqueConstraint("provider_id"),
)  # fmt: skip
# `state` is what core/conversation keeps of a thread; `thread` what it is about (car, items, offered times).
conversations = Table(
    "conversations", metadata, key(), shop(), ref("phone_id", "phones"), data("state"), data("thread"),
    at("changed_at"), UniqueConstraint("phone_id"),
)  # fmt: skip
test_phone_texts = Table(
    "test_phone_texts", metadata, key(), shop(), word("number", indexed=True), word("direction"), words("body"),
    at("at"), word("provider_id"), word("status_url", needed=False),
)  # fmt: skip

# Bookings and people who must be told -----------------------------------------------------------------------------
booking_requests = Table(
    "booking_requests", metadata, key(), shop(), ref("phone_id", "phones", needed=False), ref("person_id", "persons"),
    ref("vehicle_id", "vehicles"), word("state"), word("came_from"), ref("inbound_id", "inbound", needed=False),
    ref("reason_id", "reasons", needed=False), words("verbatim"), data("understood", needed=False), data("wanted"),
    data("avoid"), data("needs"), data("items"), data("hours"), word("parts", default="unknown"),
    _on("parts_on", needed=False), word("payer", default="customer"), at("slot_at", needed=False), data("offered"),
    at("offered_until", needed=False), ref("replaces_id", "booking_requests", needed=False),
    words("note", needed=False), at("asked_at"), at("changed_at"), word("closed_because", needed=False),
    Column("version", Integer, nullable=False, default=1), one_of("state", booking.STATES),
    one_of("parts", booking.PARTS), one_of("payer", booking.PAYERS),
)  # fmt: skip
# Addresses at which a calendar reads the bookings of the shop, or of one advisor's customers; only hashes are kept.
calendar_feeds = Table(
    "calendar_feeds", metadata, key(), shop(), word("name"), ref("advisor_id", "staff", needed=False),
    word("token_hash"), ref("made_by", "staff"), at("made_at"), at("withdrawn_at", needed=False),
    UniqueConstraint("token_hash"),
)  # fmt: skip
# A fleet's contact who agreed in writing to one list a week; `weekday` as of Monday 0. A list that was ended is kept.
fleet_lists = Table(
    "fleet_lists", metadata, key(), shop(), ref("person_id", "persons"), ref("phone_id", "phones"),
    Column("weekday", Integer, nullable=False), _on("agreed_on"), word("how"), ref("made_by", "staff", indexed=False),
    at("made_at"), at("ended_at", needed=False), one_of("how", WRITTEN),
)  # fmt: skip
fleet_units = Table(
    "fleet_units", metadata, key(), shop(), ref("list_id", "fleet_lists"), ref("vehicle_id", "vehicles", indexed=False),
    word("unit"), UniqueConstraint("list_id", "vehicle_id"),
)  # fmt: skip
# The short address of a visit, as its confirmation tells it; a visit that is moved keeps it.
visit_links = Table(
    "visit_links", metadata, key(), shop(), ref("request_id", "booking_requests", indexed=False), word("code"),
    at("made_at"), UniqueConstraint("request_id"), UniqueConstraint("code"),
)  # fmt: skip
booking_moves = Table(
    "booking_moves", metadata, key(), shop(), ref("request_id", "booking_requests"), at("at"), word("who"),
    word("from_state"), word("to_state"), words("says", needed=False),
)  # fmt: skip
alerts = Table(
    "alerts", metadata, key(), shop(), word("kind"), ref("phone_id", "phones", needed=False),
    ref("person_id", "persons", needed=False), ref("vehicle_id", "vehicles", needed=False),
    ref("inbound_id", "inbound", needed=False), ref("request_id", "booking_requests", needed=False), words("says"),
    word("raised_by"), at("raised_at"), at("next_at", needed=False), Column("step", Integer, nullable=False, default=0),
    at("acknowledged_at", needed=False), ref("acknowledged_by", "staff", needed=False), at("closed_at", needed=False),
    words("outcome", needed=False), UniqueConstraint("shop_id", "kind", "raised_by"),
)  # fmt: skip
alert_tellings = Table(
    "alert_tellings", metadata, key(), shop(), ref("alert_id", "alerts"), ref("staff_id", "staff"), at("at"),
    word("how"),
    UniqueConstraint("alert_id", "staff_id", "how"),
)  # fmt: skip
wordings = Table(
    "wordings", metadata, key(), shop(), word("reason"), word("language"), Column("version", Integer, nullable=False),
    words("source"), ref("author_id", "staff"), at("written_at"), ref("looked_at_by", "staff", needed=False),
    at("looked_at", needed=False), at("ended_at", needed=False),
    UniqueConstraint("shop_id", "reason", "language", "version"),
)  # fmt: skip
# Two wordings of a reason side by side; no row of a wording: the shipped text. Who reads which is drawn, not kept.
wording_trials = Table(
    "wording_trials", metadata, key(), shop(), word("reason"), word("language"),
    ref("first_id", "wordings", needed=False), ref("second_id", "wordings", needed=False), word("draw_key"),
    Column("planned_each", Integer, nullable=False), at("begun_at"), ref("begun_by", "staff"),
    at("ended_at", needed=False), words("ended_because", needed=False),
    Index(
        "uq_wording_trials_open", "shop_id", "reason", "language", unique=True,
        sqlite_where=sql_text("ended_at IS NULL"), postgresql_where=sql_text("ended_at IS NULL"),
    ),
)  # fmt: skip
# Items that a shop added: versions of their rows, the newest counts; its words once a second person looked at them.
own_items = Table(
    "own_items", metadata, key(), shop(), word("code"), Column("version", Integer, nullable=False), data("body"),
    ref("author_id", "staff"), at("written_at"), words("because", needed=False),
    ref("looked_at_by", "staff", needed=False), at("looked_at", needed=False),
    UniqueConstraint("shop_id", "code", "version"),
)  # fmt: skip

# Which week invites about due work are paced into. A run is a night's placing of all under one version of the rules,
# and counts once it has ended; what is news after it is placed into the same run. `first_on`: the week in which it
# would leave by itself; no `begins_on`: past the weeks that are paced; `says` only where it waits.
pacing_runs = Table(
    "pacing_runs", metadata, key(), shop(), _on("on"), Column("rules_version", Integer, nullable=False), at("at"),
    at("ended_at", needed=False), word("how", needed=False), data("body", needed=False),
    UniqueConstraint("shop_id", "on", "rules_version"),
)  # fmt: skip
paced_invites = Table(
    "paced_invites", metadata, key(), shop(), ref("run_id", "pacing_runs", indexed=False), ref("phone_id", "phones"),
    ref("vehicle_id", "vehicles"), word("reason"), _on("first_on"), _on("begins_on", needed=False),
    words("says", needed=False), _flag("is_legal"), Column("chance", Float, nullable=False), data("hours"),
    at("made_at"), UniqueConstraint("run_id", "phone_id", "vehicle_id", "reason"),
)  # fmt: skip

# A season in which the shop changes sets of tires: it invites in weekly tranches until the season's end, and never
# while it is paused; `drawn_on` is the Monday of the last week that was drawn. `set_invites`: who was drawn, and when.
set_seasons = Table(
    "set_seasons", metadata, key(), shop(), word("to_set"), _on("until_on"), at("begun_at"),
    ref("begun_by", "staff", indexed=False), at("paused_at", needed=False), _on("drawn_on", needed=False),
    at("ended_at", needed=False), words("ended_because", needed=False), one_of("to_set", ("winter", "summer")),
    Index(
        "uq_set_seasons_open", "shop_id", unique=True,
        sqlite_where=sql_text("ended_at IS NULL"), postgresql_where=sql_text("ended_at IS NULL"),
    ),
)  # fmt: skip
set_invites = Table(
    "set_invites", metadata, key(), shop(), ref("season_id", "set_seasons", indexed=False), ref("phone_id", "phones"),
    ref("vehicle_id", "vehicles"), _on("week_on"), UniqueConstraint("season_id", "vehicle_id"),
)  # fmt: skip

# What changed of whom since it was last looked at (`storage/marks.py`), for planning and for the forecast; set by
# triggers. No id comes twice: whoever looked takes out the marks that it read.
plan_marks = Table(
    "plan_marks", metadata, key(), shop(), Column("phone_id", Integer), Column("person_id", Integer),
    Column("vehicle_id", Integer, index=True), sqlite_autoincrement=True,
)  # fmt: skip
forecast_marks = Table(
    "forecast_marks", metadata, key(), shop(), Column("vehicle_id", Integer, nullable=False, index=True),
    sqlite_autoincrement=True,
)  # fmt: skip
# By when planning looks at a phone again though nothing changes (none: never), if `word` still says what all decisions
# go by; `version` counts its looks.
plan_looks = Table(
    "plan_looks", metadata, key(), ref("shop_id", "shops", indexed=False), ref("phone_id", "phones", indexed=False),
    word("word"), at("look_at", needed=False), Column("version", Integer, nullable=False), UniqueConstraint("phone_id"),
    Index("ix_plan_looks_due", "shop_id", "word", "look_at"),
)  # fmt: skip
event.listen(metadata, "after_create", mark_triggers.make)

# The machine ----------------------------------------------------------------------------------------------------
leases = Table(
    "leases", metadata, Column("name", String(100), primary_key=True), word("holder"),
    Column("term", Integer, nullable=False), at("until"),
)  # fmt: skip
heartbeats = Table("heartbeats", metadata, Column("name", String(100), primary_key=True), at("at"))
# Where this database is the shop, in one row; none: nobody has said so yet. A copy finds itself elsewhere and sends
# nothing. `other`: the installation that it moves to or comes from; `gap_from_at`: since when the copy knows nothing.
installation = Table(
    "installation", metadata, Column("id", Integer, primary_key=True, autoincrement=False), word("code"), word("state"),
    word("place", needed=False), word("other", needed=False), at("at"), word("who"), at("gap_from_at", needed=False),
    one_of("state", ("here", "copy", "moving", "moved", "arriving")),
)  # fmt: skip
# When a number may send its next text, for all processes that send from it.
paces = Table("paces", metadata, key(), shop(), word("number"), at("free_at"), UniqueConstraint("shop_id", "number"))
