"""Carry out what a conversation decided, in the transaction of the reply: one function an effect."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.consent import HELD, ConsentEntry, Event
from followup.core.conversation import effects as do
from followup.core.conversation.listen import asks_whether_machine
from followup.core.item import MILES_PER_KM
from followup.core.items import catalogue_of
from followup.core.planning.hours import Where, next_moment
from followup.core.planning.slots import hours_of
from followup.core.planning.state_hours import state_of
from followup.core.replies.contract import ReplyOut
from followup.core.text import ANSWERS_WITHIN
from followup.core.wall import day_of, to_utc
from followup.storage import alerts, consents, inspections, outbox, people, requests, slots, stops
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.workflows.answer_inbound.doing import Doing as _Doing
from followup.workflows.answer_inbound.doing import ItemAt
from followup.workflows.answer_inbound.thread import Thread

CLOCKS_DIFFER = timedelta(seconds=5)
WHO = "customer"


def carry_out(
    connection: Connection, thread: Thread, reply: ReplyOut, effects: Iterable[do.Effect], secret: str
) -> None:
    """Carry out the effects in order; what the thread is about changes with them."""
    doing = _Doing(connection, thread, reply, secret)
    _note_thread(doing)
    waiting = sorted(effects, key=lambda effect: isinstance(effect, do.Answer))
    for effect in waiting:
        _DEEDS[type(effect)](doing, effect)


def _note_thread(doing: _Doing) -> None:
    """Language and day under discussion follow the customer."""
    thread, reply = doing.thread, doing.reply
    if reply.language:
        thread.about["language"] = reply.language
        if thread.phone["language"] is None:
            people.change_phone(doing.connection, thread.phone["id"], language=reply.language)
    days = {one.start[:10] for one in reply.times if not one.start.startswith("T")}
    if len(days) == 1:
        thread.about["day"] = days.pop()
    elif days:
        thread.about.pop("day", None)


def _answer(doing: _Doing, effect: do.Answer) -> None:
    thread, connection = doing.thread, doing.connection
    vehicle = thread.vehicle
    until = _valid_until(doing, effect)
    request = doing.request_id or (thread.request["id"] if thread.request else None)
    standing = request or (thread.booking["id"] if thread.booking else None)
    if effect.asks is not None:
        thread.about["offered"] = list(effect.offered)
    outbox.plan_text(
        connection, doing.shop_id, effect.reason, doing.cause, doing.now, phone_id=thread.phone["id"],
        number=thread.phone["number"], person_id=thread.person["id"] if thread.person else None,
        vehicle_id=vehicle["id"] if vehicle else None, language=thread.language, facts=_facts(doing),
        valid_until=until, is_endless=effect.valid_minutes is None, asks=effect.asks,
        offered=list(effect.offered) or None, alert_id=doing.raised if effect.waits_for_alert else None,
        request_id=standing,
    )  # fmt: skip


def _valid_until(doing: _Doing, effect: do.Answer) -> datetime | None:
    """Late handling (an outage) must not turn answers into silence, but a stop is never confirmed late, and what is
    answered late waits for the hours of texts about visits."""
    if effect.valid_minutes is None:
        return None
    lasts = timedelta(minutes=effect.valid_minutes)
    received_at: datetime = doing.thread.inbound["received_at"]
    if effect.reason == "stopped":
        return received_at + lasts
    if doing.now - received_at <= ANSWERS_WITHIN:
        return max(received_at, doing.now) + lasts
    number = doing.thread.phone["number"]
    where = Where(tuple(doing.thread.phone["zones"]), state_of(number))
    return (next_moment("visit", doing.now, doing.thread.shop, where) or doing.now) + lasts


def _facts(doing: _Doing) -> dict[str, Any]:
    """What the words may need, as it was said; phrased when the text leaves."""
    thread, reply = doing.thread, doing.reply
    booked = thread.booking["slot_at"].isoformat() if thread.booking else None
    return {
        "items": doing.done_items() if reply.meanings[0] == "done" else doing.told_items(),
        "advised": thread.about.get("advised", []),
        "wanted": [one.model_dump(mode="json") for one in reply.times],
        "time": booked,
        "old_time": booked,
        "until": reply.until,
        "odometer": reply.odometer.model_dump(mode="json") if reply.odometer else None,
        "cars": thread.car_names(),
        "needs": list(reply.needs),
        "is_machine_question": asks_whether_machine(thread.inbound["body"]),
    }


def _drop_unsent(doing: _Doing, _effect: do.DropUnsentQuestions) -> None:
    asking = [row for row in outbox.planned_for(doing.connection, doing.thread.phone["id"]) if row["asks"]]
    for row in asking:
        if row["kind"] == "answer":
            outbox.drop_one(doing.connection, row["id"], "the customer was faster")


def _wanted(reply: ReplyOut) -> list[dict[str, Any]]:
    return [one.model_dump(mode="json") for one in reply.times]


def _request_values(doing: _Doing, chosen: str | None) -> dict[str, Any] | None:
    """A request's values; None where nobody knows whose or which car it would be: then a person looks."""
    thread, reply = doing.thread, doing.reply
    vehicle, person = thread.vehicle, thread.person
    if vehicle is None or person is None:
        return None
    items, catalogue = thread.about.get("items", []), catalogue_of(thread.shop)
    return {
        "shop_id": doing.shop_id, "phone_id": thread.phone["id"], "person_id": person["id"],
        "vehicle_id": vehicle["id"], "came_from": "text", "inbound_id": thread.inbound["id"],
        "reason_id": thread.about.get("reason_id"), "verbatim": thread.inbound["body"],
        "understood": reply.model_dump(mode="json"), "wanted": _wanted(reply),
        "avoid": [one.model_dump(mode="json") for one in reply.avoid], "needs": list(reply.needs), "items": items,
        "hours": hours_of(catalogue[item] for item, _ in items if item in catalogue),
        "slot_at": _chosen_at(doing, chosen),
    }  # fmt: skip


def _chosen_at(doing: _Doing, chosen: str | None) -> datetime | None:
    return to_utc(datetime.fromisoformat(chosen), doing.thread.shop.zone) if chosen else None


def _make_request(doing: _Doing, effect: do.MakeRequest) -> None:
    values = _request_values(doing, effect.chosen)
    if values is None:
        _phone_task(doing, do.AddPhoneTask("asked for a time, but we do not know for which car"))
        return
    doing.request_id = requests.add_request(doing.connection, doing.now, WHO, state="asked", **values)


def _change_request(doing: _Doing, effect: do.ChangeRequest) -> None:
    """An open request takes the newer wish; what was asked for before in other words stays (needs)."""
    request = doing.thread.request
    if request is None:
        _make_request(doing, do.MakeRequest(effect.chosen))
        return
    reply = doing.reply
    needs = list(dict.fromkeys([*request["needs"], *reply.needs]))
    kept_until = slots.kept_until(doing.connection, doing.thread.shop, request, effect.chosen, doing.now)
    requests.change_request(
        doing.connection, request, doing.now, WHO, "asked", wanted=_wanted(reply) or request["wanted"], needs=needs,
        verbatim=f"{request['verbatim']}\n{doing.thread.inbound['body']}".strip(),
        understood=reply.model_dump(mode="json"), slot_at=_chosen_at(doing, effect.chosen), offered=[],
        offered_until=kept_until, inbound_id=doing.thread.inbound["id"],
    )  # fmt: skip
    doing.request_id = request["id"]


def _move_booking(doing: _Doing, effect: do.MoveBooking) -> None:
    """The old time stands until the new one is confirmed: the wish is a request of its own that names the old one."""
    booking = doing.thread.booking
    if doing.thread.request is not None:
        _change_request(doing, do.ChangeRequest(effect.chosen))
        return
    values = _request_values(doing, effect.chosen)
    if values is None or booking is None:
        _make_request(doing, do.MakeRequest(effect.chosen))
        return
    kept = {"items": booking["items"], "hours": booking["hours"], "parts": booking["parts"], "payer": booking["payer"]}
    values |= {**kept, "vehicle_id": booking["vehicle_id"], "replaces_id": booking["id"]}
    doing.request_id = requests.add_request(doing.connection, doing.now, WHO, state="asked", **values)


def _close(doing: _Doing, row: Row | None, because: str) -> None:
    if row is None:
        return
    requests.change_request(doing.connection, row, doing.now, WHO, "closed", because, closed_because=because)
    outbox.drop_planned(
        doing.connection, doing.shop_id, because, number=doing.thread.phone["number"], request_id=row["id"],
        kinds=("visit",),
    )  # fmt: skip
    for alert in alerts.open_of_kind(doing.connection, doing.shop_id, "request"):
        if alert["request_id"] == row["id"]:
            alerts.close(doing.connection, doing.shop_id, alert["id"], because, doing.now)


def _cancel_booking(doing: _Doing, _effect: do.CancelBooking) -> None:
    """The booking, and a wish to move it: who calls it off wants no other time for it."""
    booking, request = doing.thread.booking, doing.thread.request
    _close(doing, booking, "called off by the customer")
    if booking and request and request["replaces_id"] == booking["id"]:
        _close(doing, request, "called off by the customer")


def _close_request(doing: _Doing, _effect: do.CloseRequest) -> None:
    _close(doing, doing.thread.request, "called off by the customer")


def _keep_booking(doing: _Doing, _effect: do.KeepBooking) -> None:
    if doing.thread.booking:
        requests.note(doing.connection, doing.thread.booking, doing.now, WHO, "the customer says that it stands")


def _running_late(doing: _Doing, _effect: do.NoteRunningLate) -> None:
    if doing.thread.booking:
        said = doing.thread.inbound["body"]
        requests.note(doing.connection, doing.thread.booking, doing.now, WHO, f"running late: {said}")


def _entry(doing: _Doing, event: Event, covers: tuple[str, ...], because: str) -> ConsentEntry:
    thread = doing.thread
    # It counts from when it was written: what was fetched late undoes nothing that was said after it. Where that is
    # in doubt, because two clocks differ, the stop counts.
    at = min(thread.inbound["received_at"] + (timedelta(0) if event == "given_again" else CLOCKS_DIFFER), doing.now)
    on = day_of(at, thread.shop.zone)
    return ConsentEntry(
        thread.phone["number"], event, covers, at, on, "text_in", thread.inbound["body"][:500],
        because=because, language=thread.language,
    )  # fmt: skip


def _append(doing: _Doing, entry: ConsentEntry) -> None:
    consents.append(doing.connection, doing.shop_id, entry, doing.secret, WHO)


def _take_back(doing: _Doing, effect: do.TakeBackConsent) -> None:
    entry = _entry(doing, "taken_back", (), effect.because)
    stops.take_back(doing.connection, doing.shop_id, entry, doing.secret, WHO)


def _hold_for_stop(doing: _Doing, _effect: do.HoldForStop) -> None:
    """What is queued waits for the answer: the sender finds the stop and asks again later."""
    _append(doing, _entry(doing, "taken_back", (), HELD))


def _give_again(doing: _Doing, _effect: do.GiveConsentAgain) -> None:
    _append(doing, _entry(doing, "given_again", (), "by text"))


def _narrow(doing: _Doing, effect: do.NarrowConsent) -> None:
    entry = _entry(doing, "narrowed", effect.covers, "by text")
    stops.narrow(doing.connection, doing.shop_id, entry, doing.secret, WHO)


def _rest(doing: _Doing, items: Iterable[ItemAt], because: str, until: date | None) -> None:
    thread = doing.thread
    if thread.vehicle is None:
        return
    for item, position in items:
        inspections.add_rest(
            doing.connection, shop_id=doing.shop_id, vehicle_id=thread.vehicle["id"], item=item, position=position,
            because=because, from_on=doing.today, until=until, inbound_id=thread.inbound["id"],
        )  # fmt: skip
    outbox.drop_planned(
        doing.connection, doing.shop_id, f"the customer answered: {because}", number=thread.phone["number"],
        vehicle_id=thread.vehicle["id"], kinds=("invite",),
    )  # fmt: skip


def _rest_items(doing: _Doing, effect: do.RestItems) -> None:
    _rest(doing, doing.told_items(), effect.because, effect.until)


def _note_done(doing: _Doing, _effect: do.NoteDone) -> None:
    _rest(doing, doing.done_items(), "done", None)


def _end_tie(doing: _Doing, effect: do.EndTie) -> None:
    thread = doing.thread
    if effect.because == "stranger":
        people.end_phone_ties(doing.connection, thread.phone["id"], doing.today, "a stranger's number, by their word")
    elif thread.vehicle is not None:
        ids = [one["id"] for one in thread.persons]
        people.end_vehicle_ties(doing.connection, thread.vehicle["id"], ids, doing.today, "gone, by their word")
    outbox.drop_planned(
        doing.connection, doing.shop_id, f"said to be {effect.because}", number=thread.phone["number"],
        kinds=("invite", "visit"), vehicle_id=None if effect.because == "stranger" or not thread.vehicle
        else thread.vehicle["id"],
    )  # fmt: skip


def _turn_all_off(doing: _Doing, _effect: do.TurnAllOff) -> None:
    for person in doing.thread.persons:
        people.change_person(doing.connection, person["id"], is_deceased=True)
    _take_back(doing, do.TakeBackConsent("the customer may have died"))


def _add_odometer(doing: _Doing, effect: do.AddOdometer) -> None:
    if doing.thread.vehicle is None:
        return
    miles = effect.value * (MILES_PER_KM if effect.unit == "km" else 1.0)
    inspections.add_odometer_telling(
        doing.connection, shop_id=doing.shop_id, vehicle_id=doing.thread.vehicle["id"], on=doing.today, miles=miles,
        told_by=WHO, told_at=doing.now,
    )  # fmt: skip


def _name_car(doing: _Doing, effect: do.NameCar) -> None:
    for row in doing.thread.vehicles:
        if people.vehicle_of(row).label == effect.car:
            doing.thread.about["vehicle_id"] = row["id"]


def _raise(doing: _Doing, effect: do.RaiseAlert) -> None:
    made = _alert(doing, effect.kind, effect.words)
    if made is not None and effect.kind.startswith("symptom"):
        doing.raised = made


def _phone_task(doing: _Doing, effect: do.AddPhoneTask) -> None:
    _alert(doing, "phone_task", effect.because)


def _list(doing: _Doing, effect: do.ListForEndOfDay) -> None:
    _alert(doing, "listed", effect.because)


def _alert(doing: _Doing, kind: str, says: str) -> int | None:
    thread = doing.thread
    vehicle, person = thread.vehicle, thread.person
    return alerts.raise_alert(
        doing.connection, shop_id=doing.shop_id, kind=kind, phone_id=thread.phone["id"],
        person_id=person["id"] if person else None, vehicle_id=vehicle["id"] if vehicle else None,
        inbound_id=thread.inbound["id"], request_id=doing.request_id, says=says, raised_by=doing.cause,
        raised_at=doing.now, next_at=doing.now,
    )  # fmt: skip


def _kept_by_state(_doing: _Doing, _effect: do.Effect) -> None:
    """What the conversation's state or an alert of the same step already holds."""


_DEEDS: dict[type, Callable[[_Doing, Any], None]] = {
    do.Answer: _answer,
    do.DropUnsentQuestions: _drop_unsent,
    do.MakeRequest: _make_request,
    do.ChangeRequest: _change_request,
    do.MoveBooking: _move_booking,
    do.KeepBooking: _keep_booking,
    do.CancelBooking: _cancel_booking,
    do.CloseRequest: _close_request,
    do.NoteRunningLate: _running_late,
    do.TakeBackConsent: _take_back,
    do.HoldForStop: _hold_for_stop,
    do.GiveConsentAgain: _give_again,
    do.NarrowConsent: _narrow,
    do.RestItems: _rest_items,
    do.NoteDone: _note_done,
    do.EndTie: _end_tie,
    do.TurnAllOff: _turn_all_off,
    do.AddOdometer: _add_odometer,
    do.NameCar: _name_car,
    do.OpenComplaint: _kept_by_state,
    do.OpenSymptom: _kept_by_state,
    do.FreezeThread: _kept_by_state,
    do.PassToPerson: _kept_by_state,
    do.RaiseAlert: _raise,
    do.AddPhoneTask: _phone_task,
    do.ListForEndOfDay: _list,
}
