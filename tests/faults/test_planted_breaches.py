"""The judge of a simulated shop sees each promise broken: what was recorded is changed, and it must say so."""

from __future__ import annotations

from collections.abc import Callable
from copy import deepcopy
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from followup.rehearsal.faults.provider import Post, Written
from followup.rehearsal.week.promises import broken_promises
from followup.rehearsal.week.record import Recorded
from followup.rehearsal.week.staff import Stay
from followup.storage.rows import Row

_MINUTE, _HOUR, _DAY = timedelta(minutes=1), timedelta(hours=1), timedelta(days=1)
Breach = Callable[[Recorded], None]


def _one(it: Recorded, kind: str, *reasons: str) -> tuple[Post, Row]:
    return next(one for one in it.taken(kind) if not reasons or one[1]["reason"] in reasons)


def _move(it: Recorded, post: Post, at: datetime) -> None:
    it.posts[it.posts.index(post)] = replace(post, at=at)


def _again(it: Recorded, post: Post, row: Row, at: datetime, **changes: object) -> None:
    """One more text like that one, of its own row, taken then."""
    which = len(it.posts)
    public_id, provider_id = f"{row['public_id']}-{which}", f"SMx{which}"
    it.texts.append({**row, "id": 90_000 + which, "public_id": public_id, "provider_id": provider_id, **changes})
    it.posts.append(replace(post, public_id=public_id, sid=provider_id, at=at, body=f"{post.body} {public_id}"))


def _stop(it: Recorded, number: str, at: datetime, known_at: datetime | None) -> None:
    it.written.append(Written("SMy", number, it.shop.texts_from, "STOP", at, "stop", acknowledged_at=known_at))


def never_taken(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    it.posts.remove(post)


def left_behind(it: Recorded) -> None:
    post, row = _one(it, "invite")
    it.posts.remove(post)
    row.update(state="planned", due_at=it.ends_at - _HOUR)


def still_claimed(it: Recorded) -> None:
    post, row = _one(it, "visit")
    it.posts.remove(post)
    row.update(state="claimed", due_at=it.ends_at - _HOUR)


def in_doubt_for_ever(it: Recorded) -> None:
    _, row = _one(it, "visit")
    row.update(state="unknown", in_flight_at=it.ends_at - _DAY)


def dropped_without_a_reason(it: Recorded) -> None:
    post, row = _one(it, "visit")
    it.posts.remove(post)
    row.update(state="dropped", state_because=None)


def decided_without_a_text(it: Recorded) -> None:
    it.reasons_without_text.append(7)


def taken_twice(it: Recorded) -> None:
    post, _ = _one(it, "answer")
    it.posts.append(replace(post, sid="SMz", attempt=2))


def same_try_twice(it: Recorded) -> None:
    post, row = _one(it, "visit")
    _again(it, post, row, post.at + _MINUTE)


def bound_to_another(it: Recorded) -> None:
    _, row = _one(it, "invite")
    row["provider_id"] = "SMnobody"


def same_words_twice(it: Recorded) -> None:
    post, row = _one(it, "invite")
    it.written = [one for one in it.written if one.sender != post.to]
    _again(it, post, row, post.at + _HOUR, kind="answer", reason="opted_in", reason_id=70_000)
    it.posts[-1] = replace(it.posts[-1], body=post.body)


def at_night(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    _move(it, post, datetime(2026, 11, 24, 7, 0, tzinfo=UTC))


def lands_after_hours(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    it.posts[it.posts.index(post)] = replace(post, at=datetime(2026, 11, 23, 23, 30, tzinfo=UTC), valid_seconds=7200)


def on_thanksgiving(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    _move(it, post, datetime(2026, 11, 26, 18, 0, tzinfo=UTC))


def a_late_answer_at_night(it: Recorded) -> None:
    post, row = next(one for one in it.taken("answer") if not one[1]["reason"].startswith("caution"))
    row["reason"] = "price"
    _move(it, post, datetime(2026, 11, 24, 5, 0, tzinfo=UTC))
    it.written = [one for one in it.written if one.sender != post.to]


def without_consent(it: Recorded) -> None:
    _, row = _one(it, "invite")
    it.ledger[row["number"]] = []


def spoken_consent_alone(it: Recorded) -> None:
    _, row = _one(it, "invite", "due_work")
    it.ledger[row["number"]] = [replace(one, how="spoken") for one in it.ledger[row["number"]]]


def invited_too_soon(it: Recorded) -> None:
    post, row = _one(it, "invite")
    _again(it, post, row, post.at + 7 * _DAY, reason_id=70_000)


def three_in_thirty_days(it: Recorded) -> None:
    post, row = _one(it, "invite")
    for number in (1, 2):
        _again(it, post, row, post.at + 14 * number * _DAY + _HOUR * number, reason_id=70_000 + number)


def a_text_is_gone(it: Recorded) -> None:
    sid = next(one.sid for one in it.written if one.acknowledged_at)
    it.inbound = [row for row in it.inbound if row["provider_id"] != sid]


def a_text_was_never_fetched(it: Recorded) -> None:
    at = it.ends_at - _HOUR
    it.written.append(Written("SMy", "+12175550148", it.shop.texts_from, "hello", at, "thanks"))


def a_text_counts_twice(it: Recorded) -> None:
    it.inbound.append(dict(it.inbound[0]))


def a_text_without_an_end(it: Recorded) -> None:
    it.inbound[0].update(handled_at=None)


def a_hook_that_refuses(it: Recorded) -> None:
    it.refused_hooks.append(500)


def after_a_stop(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    _stop(it, post.to, post.at - _MINUTE, post.at - _MINUTE)


def after_a_stop_that_nobody_asked_for(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    _stop(it, post.to, post.at - 20 * _MINUTE, None)


def after_an_opt_out(it: Recorded) -> None:
    post, _ = _one(it, "invite")
    fate = replace(post.fate, how="21610", is_taken=False)
    it.posts.insert(0, replace(post, public_id="x", sid=None, at=post.at - _MINUTE, fate=fate))
    it.written = [one for one in it.written if one.sender != post.to]


def confirmed_twice(it: Recorded) -> None:
    post, row = _one(it, "answer")
    _stop(it, post.to, post.at - _MINUTE, post.at - _MINUTE)
    for number in (1, 2):
        _again(it, post, row, post.at + number * _MINUTE, reason="stopped", reason_id=70_000 + number)


def _symptom(it: Recorded) -> tuple[Written, Row]:
    """A symptom that somebody told, with its alert; made of another text where the life has none."""
    one = next(one for one in it.written if one.acknowledged_at and one.acknowledged_at < it.ends_at - 10 * _MINUTE)
    one.meant = "symptom_now"
    row = next(row for row in it.inbound if row["provider_id"] == one.sid)
    it.alerts = [alert for alert in it.alerts if alert["phone_id"] != row["phone_id"]]
    at = it.read_as(one.acknowledged_at or one.at)
    alert = {"id": 9_000, "kind": "symptom_now", "phone_id": row["phone_id"], "inbound_id": row["id"],
             "raised_at": at, "closed_at": None}  # fmt: skip
    it.alerts.append(alert)
    it.tellings[9_000] = [{"at": at}]
    return one, alert


def a_symptom_without_an_alert(it: Recorded) -> None:
    _symptom(it)
    it.alerts.pop()


def a_symptom_told_late(it: Recorded) -> None:
    _, alert = _symptom(it)
    it.tellings[9_000] = [{"at": alert["raised_at"] + _MINUTE}]


def invited_while_a_symptom_is_open(it: Recorded) -> None:
    post, row = _one(it, "invite")
    it.alerts.append({"id": 9_001, "kind": "symptom_now", "phone_id": row["phone_id"], "inbound_id": None,
                      "raised_at": it.read_as(post.at) - _MINUTE, "closed_at": None})  # fmt: skip
    it.tellings[9_001] = []


def nobody_knows_of_an_answer(it: Recorded) -> None:
    post, row = _one(it, "answer")
    it.posts.remove(post)
    row.update(state="dropped", state_because="its time is over: it is planned anew if it is still due")
    it.alerts = [alert for alert in it.alerts if alert["phone_id"] != row["phone_id"]]


def while_in_the_shop(it: Recorded) -> None:
    post, row = _one(it, "invite")
    it.stays.append(Stay(row["vehicle_id"], post.at - _HOUR, post.at + _HOUR))


def _booking(it: Recorded, **changes: object) -> Row:
    slot_at = datetime(2026, 12, 1, 15, 0, tzinfo=UTC)
    return {"state": "confirmed", "slot_at": slot_at, "hours": {"general": 0.4}, "needs": [], **changes}


def two_at_one_check_in(it: Recorded) -> None:
    it.requests += [_booking(it), _booking(it)]


def more_hours_than_there_are(it: Recorded) -> None:
    it.requests.append(_booking(it, hours={"brakes": 7.0}))


def two_loaners(it: Recorded) -> None:
    later = datetime(2026, 12, 1, 16, 0, tzinfo=UTC)
    it.requests += [_booking(it, needs=["loaner"]), _booking(it, needs=["loaner"], slot_at=later)]


BREACHES: dict[str, tuple[Breach, ...]] = {
    "lost": (
        never_taken, left_behind, still_claimed, in_doubt_for_ever, dropped_without_a_reason, decided_without_a_text,
    ),
    "twice": (taken_twice, same_try_twice, bound_to_another, same_words_twice),
    "hours": (at_night, lands_after_hours, on_thanksgiving, a_late_answer_at_night),
    "consent": (without_consent, spoken_consent_alone),
    "spacing": (invited_too_soon,),
    "caps": (three_in_thirty_days,),
    "kept": (
        a_text_is_gone, a_text_was_never_fetched, a_text_counts_twice, a_text_without_an_end, a_hook_that_refuses,
    ),
    "stop": (after_a_stop, after_a_stop_that_nobody_asked_for, after_an_opt_out, confirmed_twice),
    "symptom": (a_symptom_without_an_alert, a_symptom_told_late, invited_while_a_symptom_is_open),
    "unanswered": (nobody_knows_of_an_answer,),
    "visit": (while_in_the_shop,),
    "capacity": (two_at_one_check_in, more_hours_than_there_are, two_loaners),
}  # fmt: skip


def test_a_bad_day_breaks_no_promise(short_week: Recorded) -> None:
    assert broken_promises(short_week) == []
    kinds = {row["kind"] for _, row in short_week.taken()}
    assert {"invite", "visit", "answer", "alert"} <= kinds
    assert any(one.acknowledged_at for one in short_week.written)


@pytest.mark.parametrize(
    ("promise", "breach"), [(promise, breach) for promise, found in BREACHES.items() for breach in found]
)
def test_the_judge_sees_it(short_week: Recorded, promise: str, breach: Breach) -> None:
    changed = deepcopy(short_week)
    before = broken_promises(changed)
    breach(changed)
    # What is looked up of what was changed is looked up anew.
    for looked_up in ("text_of", "wrote_at"):
        changed.__dict__.pop(looked_up, None)
    assert promise in {one.promise for one in broken_promises(changed) if one not in before}
