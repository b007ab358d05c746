"""Plan invites: turn due windows, history, consent and rules into planned texts, and calls for the phone list.

1. The phones are found of which something changed, and whose day has come (`storage/looks.py`); the cars of their
   persons are looked at as everything stands now. When each is looked at again, though nothing changes, is kept.
2. `core/planning` decides: at most one invite a phone, or every reason why not. An invite that the night before did not
   place (`pace_invites`) is placed in what is left of the weeks' hours; one that is placed in a later week waits.
3. The reason and the text become rows in one transaction, unique by (number, reason, try), with a note of the due
   windows that the text rests on: planning twice, or in two processes, plans nothing twice. Calls become phone tasks,
   once each. Where the shop goes on from a copy, the first day's are held: they may have left from the other place.

One phone is one short transaction: if the process dies, what was planned stands and the rest is planned next time.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Any

from followup.core.planning.best_hour import says as hour_says
from followup.core.planning.decide import decide_for_phone
from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.ahead import message_of
from followup.core.planning.pacing.pace import pace
from followup.core.planning.picture import CarPicture, Decision, PhoneTask, PlannedText
from followup.core.shop import Shop
from followup.core.text import reason
from followup.core.wall import day_of
from followup.storage import (
    alerts,
    installation,
    looks,
    marks,
    outbox,
    paced,
    people,
    pictures,
    pictures_ahead,
    room,
    scores,
    shops,
)
from followup.storage.answer_hours import Habits, habits_where_chosen
from followup.storage.lead_times import with_learned_lead
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

Progress = Callable[[int, int], None]
# Of more the candidates of the whole shop are looked at; and so many phones at once.
_FEW_CARS, _PHONES_AT_ONCE = 100, 500
# So many rows are kept in one transaction, for who waits to write.
_LOOKS_AT_ONCE = 500


@dataclass(frozen=True)
class CarPlan:
    """What is decided for one car of one phone: for `followup plan` and the page "why did she get this"."""

    number: str
    person: str | None
    vehicle: str
    label: str | None
    decision: Decision


def plan_texts(
    store: Store, shop_id: int, now: datetime, cars: list[int] | None = None, *, needs_registration: bool = False
) -> int:
    """Plan what is due at `now`, for all customers or for those of the named cars; how many texts are new."""
    with store.read() as connection:
        shop = with_learned_lead(connection, shops.load_shop(connection, shop_id), now)
        habits = habits_where_chosen(connection, shop, now)
        known = alerts.phone_task_keys(connection, shop_id)
        word = looks.word_of(connection, shop, needs_registration=needs_registration)
        if cars is not None and len(cars) <= _FEW_CARS:
            marked = marks.plan_marks_of_cars(connection, cars)
            wanted = looks.ToLookAt(people.numbers_of_vehicles(connection, cars), marked)
        else:
            wanted = looks.to_look_at(connection, shop, now, word)
    news = []
    for some in _decided(store, shop, wanted.numbers, habits, now, needs_registration):
        mine = [one for one in some.found if any(got.text or _new_tasks(one[0], got, known) for _, got in one[1])]
        news += [(phone, found, some.gathered) for phone, found in mine]
        _keep_looks(store, shop, word, some, {phone["id"] for phone, _ in mine}, now)
    _take_out(store, wanted.marks)
    _place_news(store, shop, news, now)
    planned = 0
    for phone, _, gathered in news:
        with store.read() as connection:
            # Inspections are read for them, so before the lock is held; a text that leaves says what stands then.
            told = pictures.advisories_for(connection, shop_id, gathered, phone, now)
        with store.write() as connection:
            # Decided again on what stands in this very transaction: a booking may have come in between.
            fresh = replace(pictures.gather_for(connection, shop_id, now, phone, told), habits=habits)
            for picture, decision in _decide(fresh, shop, phone, now, needs_registration):
                is_new = _keep(connection, shop, phone, picture, decision, now)
                planned += is_new
                if is_new and habits and decision.text:
                    habits.add(decision.text.leaves_at)
    return planned


@dataclass(frozen=True)
class _Some:
    """Some phones with what is decided for them, what was read of them, and the versions of their looks before that;
    `later` as `pictures_ahead.read_later` tells it."""

    found: list[tuple[Row, list[tuple[CarPicture, Decision]]]]
    gathered: pictures.Gathered
    versions: dict[int, int]
    later: dict[int, date]


def _decided(
    store: Store, shop: Shop, wanted: list[str], habits: Habits | None, now: datetime, needs_registration: bool
) -> Iterator[_Some]:
    """What is decided for these numbers, some at a time: so many rows as a large shop has would not fit at once."""
    for begin in range(0, len(wanted), _PHONES_AT_ONCE):
        with store.read() as connection:
            numbers = wanted[begin : begin + _PHONES_AT_ONCE]
            # Read before what is decided about, so that of two who look the later one's look stands.
            versions = looks.versions(connection, shop.id, numbers)
            gathered = pictures.gather_near(connection, shop, now, numbers)
            ids = [one["id"] for one in gathered.phones]
            gathered = replace(gathered, placed=paced.placed_invites(connection, shop.id, now, ids), habits=habits)
            later = pictures_ahead.read_later(connection, shop, now, gathered)
        found = [(phone, _decide(gathered, shop, phone, now, needs_registration)) for phone in gathered.phones]
        yield _Some(found, gathered, versions, later)


def _keep_looks(store: Store, shop: Shop, word: str, some: _Some, news: set[int], now: datetime) -> None:
    """Keep when each of these phones is looked at again: at once where there is news, until that is kept itself."""
    made = {
        phone["id"]: now
        if phone["id"] in news
        else pictures_ahead.next_look_of(some.gathered, shop, phone, [one for one, _ in found], some.later, now)
        for phone, found in some.found
    }
    kept = sorted(made)
    for begin in range(0, len(kept), _LOOKS_AT_ONCE):
        with store.write() as connection:
            part = kept[begin : begin + _LOOKS_AT_ONCE]
            looks.keep(connection, word, {one: made[one] for one in part}, some.versions)


def _take_out(store: Store, seen: list[int]) -> None:
    """Take out marks of whom was looked at."""
    for begin in range(0, len(seen), _LOOKS_AT_ONCE):
        with store.write() as connection:
            marks.take_out_plan_marks(connection, seen[begin : begin + _LOOKS_AT_ONCE])


def _place_news(
    store: Store,
    shop: Shop,
    decided: list[tuple[Row, list[tuple[CarPicture, Decision]], pictures.Gathered]],
    now: datetime,
) -> None:
    """Invites that no night has placed, or whose car was forecast anew since, go by regret into what is left."""
    if not shop.rules.paces_invites:
        return
    news = [
        (phone, picture, decision.text, gathered)
        for phone, found, gathered in decided
        for picture, decision in found
        if decision.text and decision.text.reason == PACED_REASON
        and gathered.placed_row(phone["id"], _car_id(gathered, phone, picture)) is None
    ]  # fmt: skip
    if not news:
        return
    with store.write() as connection:
        run = paced.current_run(connection, shop.id, now)
        if run is None:
            return
        there, used = room.look_at_room(connection, shop, now)
        old = paced.still_placed(connection, shop.id, now)
        used = room.with_placed(connection, shop, there, used, old, now)
        today = day_of(now, shop.zone)
        messages = [
            message_of(picture, text, pictures.curves_of_phone(gathered, phone["id"], today)[picture.vehicle], there, 0)
            for phone, picture, text, gathered in news
        ]
        cars = {picture.vehicle: _car_id(gathered, phone, picture) for phone, picture, _, gathered in news}
        placing = pace(messages, there, used)
        paced.keep(
            connection,
            (
                paced.row_of(run, one, week, full, there, cars[one.key[1]], now)
                for one, week, full in zip(messages, placing.weeks, placing.full, strict=True)
            ),
        )


def _car_id(gathered: pictures.Gathered, phone: Row, picture: CarPicture) -> int:
    found = (car for person in gathered.persons[phone["id"]] for car in gathered.vehicles.get(person["id"], ()))
    return next(int(car["id"]) for car in found if car["code"] == picture.vehicle)


def _new_tasks(phone: Row, decision: Decision, known: set[str]) -> bool:
    return any(_task_key(phone, task) not in known for task in decision.phone_tasks)


def _task_key(phone: Row, task: PhoneTask) -> str:
    return f"{phone['id']} {task.key}"


def look_at_plan(store: Store, shop_id: int, now: datetime, *, needs_registration: bool = False) -> Iterator[CarPlan]:
    """What would be planned at `now` and why not, for every car with a phone; nothing is changed."""
    with store.read() as connection:
        shop = with_learned_lead(connection, shops.load_shop(connection, shop_id), now)
        habits = habits_where_chosen(connection, shop, now)
        gathered = replace(pictures.gather(connection, shop_id, now), habits=habits)
        for phone in gathered.phones:
            decided = _decide(gathered, shop, phone, now, needs_registration)
            if any(decision.text for _, decision in decided):
                # What is told along is looked at only where a text leaves.
                own = replace(pictures.gather_for(connection, shop_id, now, phone), habits=habits)
                decided = _decide(own, shop, phone, now, needs_registration)
            for picture, decision in decided:
                vehicle = people.find_vehicle(connection, shop_id, picture.vehicle)
                label = people.vehicle_of(vehicle).label if vehicle else None
                yield CarPlan(phone["number"], picture.person.name, picture.vehicle, label, decision)


def _decide(
    gathered: pictures.Gathered, shop: Shop, phone: Row, now: datetime, needs_registration: bool
) -> list[tuple[CarPicture, Decision]]:
    found = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=needs_registration)
    return list(zip(found, (decision for _, decision in decide_for_phone(found, now)), strict=True))


def _keep(
    connection: Connection, shop: Shop, phone: Row, picture: CarPicture, decision: Decision, now: datetime
) -> int:
    vehicle = people.find_vehicle(connection, shop.id, picture.vehicle)
    vehicle_id = vehicle["id"] if vehicle else None
    for task in decision.phone_tasks:
        _keep_task(connection, shop, phone, picture, vehicle_id, task, now)
    if decision.text is None:
        return 0
    return int(_keep_text(connection, shop, phone, picture, vehicle_id, decision.text, now) is not None)


def _keep_task(
    connection: Connection,
    shop: Shop,
    phone: Row,
    picture: CarPicture,
    vehicle_id: int | None,
    task: PhoneTask,
    now: datetime,
) -> None:
    items = ", ".join(f"{item} {position}".strip() for item, position in task.items)
    alerts.raise_alert(
        connection, shop_id=shop.id, kind="phone_task", phone_id=phone["id"], person_id=picture.person.id,
        vehicle_id=vehicle_id, says=f"{items}: {task.says}" if items else task.says,
        raised_by=_task_key(phone, task), raised_at=now,
    )  # fmt: skip


def _keep_text(
    connection: Connection,
    shop: Shop,
    phone: Row,
    picture: CarPicture,
    vehicle_id: int | None,
    text: PlannedText,
    now: datetime,
) -> int | None:
    facts: dict[str, Any] = {
        "items": [list(one) for one in text.items],
        "because": text.because,
        "is_legal": text.is_legal,
        **({"advised": list(text.advised)} if text.advised else {}),
        **({"ask_odometer": True} if text.asks_odometer else {}),
        **({"to_set": picture.set_change.to_set} if text.reason == "set_change" and picture.set_change else {}),
        **(
            {"hour": text.leaving.how, "hour_says": hour_says(text.leaving)}
            if text.leaving and text.leaving.how
            else {}
        ),
    }
    text_id = outbox.plan_text(
        connection, shop.id, text.reason, text.raised_by, now, phone_id=phone["id"], number=phone["number"],
        person_id=text.person_id, vehicle_id=vehicle_id, items=[list(one) for one in text.items],
        try_no=text.try_number, due_at=text.leaves_at, valid_until=text.valid_until, facts=facts,
        language=picture.person.language or phone["language"] or "en", asks=reason(text.reason).asks,
    )  # fmt: skip
    if text_id is not None and installation.plans_anew(connection, now):
        outbox.change_text(connection, text_id, state="held", state_because=installation.HELD_BECAUSE)
    if text_id is not None and vehicle_id is not None:
        scores.note_use(connection, shop.id, text_id, vehicle_id, list(text.items))
    return text_id
