"""Keep inspections and visits as they come in: from a file, over HTTP, from the technician's form.

For each line:
1. It is read by the contract; what is impossible is told back, and nothing is kept.
2. The same content again changes nothing, also where it was corrected since, unless a person enters it; other content
   under the same name is a correction, kept as a version.
3. What is doubtful is told back, unless whoever enters it has said that it is right.
4. Customer, phone, car and ties are brought up to date; older news never overwrites newer. Consent goes into the
   ledger, once.
5. The inspection, its work and its recommendations are kept; a visit is opened or closed. The half-filled form that it
   was goes in the same transaction.

One transaction takes a few lines. If the process dies, the lines of the open transaction are not kept and can be fed
again; lines kept before count as unchanged. If two processes bring the same line, the unique key lets one of them in.
Due windows are made by `forecast_windows` afterwards, which finds every car that has news.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from itertools import islice
from typing import Literal

from followup.core.consent import ConsentEntry
from followup.core.inspection import BadLine, ConsentLine, InspectionLine, VisitLine, content_hash, read_line
from followup.core.inspection_check import Fault
from followup.core.inspection_doubts import doubts_of
from followup.core.item import Catalogue
from followup.core.items import catalogue_of
from followup.core.planning.hours import Where, may_leave
from followup.core.planning.state_hours import state_of
from followup.core.shop import Shop
from followup.core.text import CONFIRMED_WITHIN
from followup.core.visit import Work
from followup.core.wall import day_of, start_of, to_utc, to_wall
from followup.phone_numbers import NotANumber, PhoneNumber, read_number
from followup.storage import consents, drafts, inspections, outbox, people, shops
from followup.storage.store import Connection, Store

_LINES_A_TRANSACTION = 25
Outcome = Literal["new", "unchanged", "corrected", "doubtful", "rejected"]


@dataclass(frozen=True)
class KeptLine:
    """What became of one line. `faults` say what to do; `doubts` ask whether it is right."""

    outcome: Outcome
    vehicle_id: int | None = None
    inspection_id: int | None = None
    faults: tuple[Fault, ...] = ()
    doubts: tuple[Fault, ...] = field(default=())


@dataclass(frozen=True)
class _Task:
    shop: Shop
    now: datetime
    kept_by: str
    secret: str
    accepts_doubtful: bool
    is_check: bool
    is_by_hand: bool
    catalogue: Catalogue


class _NothingKept(Exception):
    """Undoes a transaction that was only to be checked."""


def keep_inspections(
    store: Store,
    shop_id: int,
    lines: Iterable[str],
    now: datetime,
    kept_by: str,
    secret: str,
    *,
    accepts_doubtful: bool = False,
    is_check: bool = False,
    is_by_hand: bool = False,
) -> Iterator[KeptLine]:
    """Keep the lines in order and tell what became of each; with `is_check` nothing is kept.

    `secret` keys the hash of numbers in the ledger; `kept_by` is who brought them; `is_by_hand` that a person entered
    them just now.
    """
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
    task = _Task(shop, now, kept_by, secret, accepts_doubtful, is_check, is_by_hand, catalogue_of(shop))
    waiting = iter(lines)
    if is_check:
        yield from _checked(store, task, waiting)
        return
    while batch := list(islice(waiting, _LINES_A_TRANSACTION)):
        with store.write() as connection:
            done = [_keep(connection, task, line) for line in batch]
        yield from done


def _checked(store: Store, task: _Task, lines: Iterator[str]) -> Iterator[KeptLine]:
    """A dry run sees its own earlier lines, as the real one will; then all is undone."""
    done: list[KeptLine] = []
    try:
        with store.write() as connection:
            done.extend(_keep(connection, task, line) for line in lines)
            raise _NothingKept
    except _NothingKept:
        yield from done


def _keep(connection: Connection, task: _Task, text: str) -> KeptLine:
    try:
        line = read_line(text, to_wall(task.now, task.shop.zone), task.catalogue)
    except BadLine as bad:
        return KeptLine("rejected", faults=bad.faults)
    if isinstance(line, VisitLine):
        return _keep_visit(connection, task, line)
    kept = _keep_inspection(connection, task, line)
    if task.is_by_hand and kept.inspection_id is not None:
        drafts.forget_kept(connection, task.shop.id, line.inspection, line.part or "")
    return kept


def _keep_inspection(connection: Connection, task: _Task, line: InspectionLine) -> KeptLine:
    shop_id, part, content = task.shop.id, line.part or "", content_hash(line)
    before = inspections.current_part(connection, shop_id, line.inspection, part)
    if before and (before["content_hash"] == content or _is_old(connection, task, line, content)):
        return KeptLine("unchanged", before["vehicle_id"], before["id"])
    if fault := _fault_of_number(line, task.shop.country):
        return KeptLine("rejected", faults=(fault,))
    on = line.inspected_at.date()
    known = people.find_vehicle(connection, shop_id, line.vehicle.id)
    doubts = _doubts(connection, task, known["id"], line, part) if known else tuple(doubts_of(line, ()))
    if doubts and not task.accepts_doubtful:
        return KeptLine("doubtful", known["id"] if known else None, doubts=doubts)
    vehicle_id = people.keep_vehicle(connection, shop_id, line.vehicle.vehicle(), on, task.now)
    person_id = _keep_customer(connection, task, line, vehicle_id)
    visit_id = _visit_of_inspection(connection, task, line, vehicle_id)
    inspection_id = inspections.keep_inspection(
        connection, shop_id=shop_id, code=line.inspection, part=part, vehicle_id=vehicle_id, person_id=person_id,
        visit_id=visit_id, inspected_at=to_utc(line.inspected_at, task.shop.zone), inspected_on=on,
        odometer_miles=line.odometer_miles, technician=line.technician, body=line.told(), content_hash=content,
        received_at=task.now, received_by=task.kept_by,
    )  # fmt: skip
    _keep_work(connection, task, line, on, vehicle_id, inspection_id, visit_id)
    return KeptLine("corrected" if before else "new", vehicle_id, inspection_id, doubts=doubts)


def _is_old(connection: Connection, task: _Task, line: InspectionLine, content: str) -> bool:
    """True where a file brings what was corrected since: fed again, it changes nothing. A person may go back to it."""
    if task.is_by_hand:
        return False
    return inspections.was_kept(connection, task.shop.id, line.inspection, line.part or "", content)


def _fault_of_number(line: InspectionLine, country: str) -> Fault | None:
    if line.customer.phone is None:
        return None
    try:
        read_number(line.customer.phone, country)
    except NotANumber:
        return Fault("customer.phone", "no such number exists: look at it again, or leave it out")
    return None


def _doubts(connection: Connection, task: _Task, vehicle_id: int, line: InspectionLine, part: str) -> tuple[Fault, ...]:
    earlier = [
        InspectionLine.model_validate_json(json.dumps(row["body"]))
        for row in inspections.bodies_of_vehicle(connection, vehicle_id)
        if (row["code"], row["part"]) != (line.inspection, part)
    ]
    # Work of inspections stands in their lines; what a visit told stands in the store alone.
    work = [
        Work(row["item"], row["position"], row["did"], row["on"], row["odometer_miles"])
        for row in inspections.work_of_vehicle(connection, vehicle_id)
        if row["inspection_id"] is None
    ]
    rising = {code for code, item in task.catalogue.items() if not item.falls}
    return tuple(doubts_of(line, earlier, work, rising))


def _keep_customer(connection: Connection, task: _Task, line: InspectionLine, vehicle_id: int) -> int:
    customer, on, shop_id = line.customer, line.inspected_at.date(), task.shop.id
    person_id = people.keep_person(
        connection, shop_id, customer.id, customer.name, customer.language, on, task.now, is_fleet=customer.fleet
    )
    people.tie_vehicle(connection, shop_id, person_id, vehicle_id, "owner", on)
    if customer.phone:
        read = read_number(customer.phone, task.shop.country)
        phone_id = people.keep_phone(connection, shop_id, read.e164, read.zones, read.line, task.now)
        consents.know_again(connection, shop_id, read.e164, task.secret)
        people.tie_phone(connection, shop_id, person_id, phone_id, on)
        if customer.consent:
            _keep_consent(connection, task, line, customer.consent, read, phone_id, person_id)
    return person_id


def _keep_consent(
    connection: Connection, task: _Task, line: InspectionLine, told: ConsentLine, read: PhoneNumber, phone_id: int,
    person_id: int,
) -> None:  # fmt: skip
    """What was agreed to goes into the ledger. Only a consent of today is confirmed by text, and only at an hour at
    which people are written to: a file may be read in at night."""
    entry = ConsentEntry(
        read.e164, "given", told.covers, task.now, told.given_on, told.how, told.words, told.words_version,
        told.language, told.number_is_own_and_adult, f"inspection {line.inspection}",
    )  # fmt: skip
    made = consents.append(connection, task.shop.id, entry, task.secret, task.kept_by)
    is_fresh = told.given_on == day_of(task.now, task.shop.zone)
    covers = consents.standing_of(connection, task.shop.id, read.e164).covers
    where = Where(read.zones, state_of(read.e164))
    if made is not None and is_fresh and covers and may_leave("visit", task.now, task.shop, where).may:
        outbox.plan_text(
            connection, task.shop.id, "opted_in", f"consent:{made}", task.now, phone_id=phone_id, number=read.e164,
            person_id=person_id, language=told.language, facts={"is_upkeep": "upkeep" in covers},
            valid_until=task.now + CONFIRMED_WITHIN,
        )  # fmt: skip


def _visit_of_inspection(connection: Connection, task: _Task, line: InspectionLine, vehicle_id: int) -> int:
    """An inspection without a visit counts as one that was opened and closed on its day."""
    opened_at = to_utc(line.inspected_at, task.shop.zone)
    if line.visit:
        consents.lock_car(connection, task.shop.id, vehicle_id)
        return inspections.keep_visit(
            connection,
            task.shop.id,
            line.visit,
            vehicle_id,
            opened_at,
            None,
            line.odometer_miles,
            is_from_inspection=True,
        )
    closed_at = max(opened_at, start_of(line.inspected_at.date() + timedelta(days=1), task.shop.zone))
    closed_at = min(closed_at, max(opened_at, task.now))
    return inspections.keep_visit(
        connection, task.shop.id, f"inspection {line.inspection}", vehicle_id, opened_at, closed_at, line.odometer_miles
    )


def _keep_work(
    connection: Connection,
    task: _Task,
    line: InspectionLine | VisitLine,
    on: date,
    vehicle_id: int,
    inspection_id: int | None,
    visit_id: int,
) -> None:
    where = {"shop_id": task.shop.id, "vehicle_id": vehicle_id, "inspection_id": inspection_id, "visit_id": visit_id}
    for told in line.work_done:
        work = told.work(on, line.odometer_miles, line.unit)
        inspections.add_work(
            connection, item=work.item, position=work.position, did=work.did, on=work.on,
            odometer_miles=work.odometer_miles, moved=dict(work.moved) or None, kept_at=task.now, **where,
        )  # fmt: skip
    for advice in line.recommended:
        inspections.add_recommendation(
            connection, item=advice.item, position=advice.position, decision=advice.decision, because=advice.why,
            until=advice.until, told_by=advice.told_by, on=on, **where,
        )  # fmt: skip


def _keep_visit(connection: Connection, task: _Task, line: VisitLine) -> KeptLine:
    shop_id = task.shop.id
    vehicle = people.find_vehicle(connection, shop_id, line.vehicle)
    if vehicle is None:
        says = f"the car {line.vehicle} is not known yet: bring its inspection first"
        return KeptLine("rejected", faults=(Fault("vehicle", says),))
    before = inspections.find_visit(connection, shop_id, line.visit)
    opened = line.opened_at or line.closed_at
    if before is None and opened is None:
        return KeptLine("rejected", faults=(Fault("opened_at", "a new visit needs the time at which it was opened"),))
    content = content_hash(line)
    if before and before["content_hash"] == content:
        return KeptLine("unchanged", vehicle["id"])
    zone = task.shop.zone
    # A line that only closes a visit says nothing of when it was opened.
    opened_at = before["opened_at"] if before and not line.opened_at else to_utc(opened, zone) if opened else task.now
    closed_at = to_utc(line.closed_at, zone) if line.closed_at else None
    consents.lock_car(connection, shop_id, vehicle["id"])
    visit_id = inspections.keep_visit(
        connection, shop_id, line.visit, vehicle["id"], opened_at, closed_at, line.odometer_miles, content_hash=content
    )
    inspections.clear_visit_lines(connection, visit_id)
    on = (line.closed_at or opened or datetime.combine(day_of(task.now, zone), time())).date()
    _keep_work(connection, task, line, on, vehicle["id"], None, visit_id)
    return KeptLine("corrected" if before else "new", vehicle["id"])
