"""What is promised to who writes: each text is kept once and ends, a stop counts, a symptom reaches a person.

By what the customers of the simulated shop meant and when the program could know it, not by what it understood.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import datetime, timedelta

from followup.rehearsal.faults.provider import Written
from followup.rehearsal.week.broken import Broken
from followup.rehearsal.week.record import Recorded
from followup.storage.rows import Row

# What leaves in spite of a stop: its one confirmation, HELP, what asks about it or takes it back.
_ABOUT_STOPS = frozenset({"stopped", "help", "ask_confirm_stop", "resumed"})
# Five minutes after a stop or a consent nothing about it is said any more.
_SAID_AT_ONCE = frozenset({"stopped", "resumed", "opted_in", "ask_confirm_stop"})
_ENDS_A_STOP = frozenset({"start", "no_stop"})
# The program may have been silent for so long without asking the provider what was written.
_HEARD_WITHIN = timedelta(minutes=10)
_READ_WITHIN = timedelta(minutes=5)
# 5 s by the trade's rule, and what the lease of a killed worker takes.
_ALERTED_WITHIN, _AFTER_A_KILL = timedelta(seconds=5), timedelta(seconds=16)


def each_kept_once(it: Recorded) -> Iterator[Broken]:
    """Whatever a customer wrote is kept once, and was read and ended in a state."""
    kept = Counter(row["provider_id"] for row in it.inbound)
    for one in it.written:
        count, about = kept[one.sid], f"what {one.sender[-4:]} wrote at {one.at} ({one.meant})"
        if count > 1:
            yield Broken("kept", f"{about} is kept {count} times", one.sender, one.at)
        elif not count and one.known_at is not None:
            yield Broken("kept", f"{about} was acknowledged or listed, and is not kept", one.sender, one.at)
        elif not count and _could_be_known(it, one) < it.ends_at - _HEARD_WITHIN:
            yield Broken("kept", f"{about} was never fetched", one.sender, one.at)
    for row in it.inbound:
        if row["received_at"] < it.ends_at - _READ_WITHIN and (row["handled_at"] is None or not row["outcome"]):
            yield Broken(
                "kept",
                f"inbound {row['id']} of {row['received_at']} never came to an end",
                row["number"],
                row["received_at"],
            )
    if it.refused_hooks:
        yield Broken("kept", f"hooks were answered with {sorted(set(it.refused_hooks))}")


def _could_be_known(it: Recorded, one: Written) -> datetime:
    """When the program could have fetched it at the latest."""
    at = one.at + one.lag
    spans = [
        span for troubles in it.troubles.each
        for span in (troubles.provider_away, None if troubles.hooks_alone else troubles.server_down)
    ]  # fmt: skip
    for span in sorted((span for span in spans if span is not None), key=lambda span: span.from_at):
        at = max(at, span.to_at) if span.from_at <= at + _HEARD_WITHIN and at < span.to_at else at
    return at


def none_after_a_stop(it: Recorded) -> Iterator[Broken]:
    """After a stop nothing leaves but what is about it, once; one that no hook brought is heard of in time."""
    for stop in (one for one in it.written if one.meant == "stop"):
        ends_at = _ended_at(it, stop)
        confirmed = 0
        for post, row in it.taken("invite", "visit", "answer"):
            if post.to != stop.sender or not stop.at < post.at < ends_at:
                continue
            if row["reason"] in _ABOUT_STOPS:
                confirmed += row["reason"] == "stopped"
                continue
            is_known = stop.known_at is not None and stop.known_at < post.at
            is_late = row["kind"] != "answer" and stop.at + stop.lag + _HEARD_WITHIN < post.at
            if is_known or is_late:
                yield Broken(
                    "stop", f"{row['kind']} {row['id']} ({row['reason']}) left, stopped {stop.at}", post.to, post.at
                )
        if confirmed > 1:
            yield Broken("stop", f"the stop was confirmed {confirmed} times", stop.sender, stop.at)
    yield from _none_after_an_opt_out(it)


def _ended_at(it: Recorded, stop: Written) -> datetime:
    """Until when a stop is looked at: the number wrote that texts may come again, or stopped once more."""
    later = (one.at for one in it.written if one.sender == stop.sender and one.at > stop.at
             and one.meant in (*_ENDS_A_STOP, "stop"))  # fmt: skip
    return min(later, default=it.ends_at)


def _none_after_an_opt_out(it: Recorded) -> Iterator[Broken]:
    """The provider said that the number has opted out: only who starts again is texted again."""
    for refused in (post for post in it.posts if post.fate.how == "21610"):
        for post, row in it.taken("invite", "visit", "answer"):
            started = any(one.sender == post.to and one.meant == "start" and one.at < post.at for one in it.written)
            if post.to == refused.to and post.at > refused.at and not started and row["reason"] not in _ABOUT_STOPS:
                says = f"{row['kind']} {row['id']} left after the provider told of an opt-out"
                yield Broken("stop", says, post.to, post.at)


def symptoms_reach_a_person(it: Recorded) -> Iterator[Broken]:
    """Of every symptom a person is told at once; nothing of ours but answers leaves to them until it is settled."""
    inbound = {row["provider_id"]: row for row in it.inbound}
    for one in (one for one in it.written if one.meant.startswith("symptom")):
        row = inbound.get(one.sid)
        if row is None or one.known_at is None or one.known_at > it.ends_at - _READ_WITHIN:
            continue
        about = f'"{one.body}" of {one.sender[-4:]} at {one.at}'
        mine = _alert_about(it, row)
        if mine is None:
            yield Broken("symptom", f"{about} raised no alert", one.sender, one.at)
            continue
        if mine["inbound_id"] == row["id"]:
            by = it.read_as(one.known_at) + _ALERTED_WITHIN + _AFTER_A_KILL
            told = [telling["at"] for telling in it.tellings[mine["id"]]]
            if not told or min(told) > by:
                says = f"of {about} nobody was told by {by}: {min(told, default=None)}"
                yield Broken("symptom", says, one.sender, one.at)
    yield from _silent_while_open(it)


def _alert_about(it: Recorded, row: Row) -> Row | None:
    """Its own alert, or one of that phone that stood open."""
    of_phone = [one for one in it.alerts if one["phone_id"] == row["phone_id"] and _is_serious(one)]
    own = next((one for one in of_phone if one["inbound_id"] == row["id"]), None)
    at = row["handled_at"] or row["received_at"]
    return own or next((one for one in of_phone if _stood_open(one, at)), None)


def _is_serious(alert: Row) -> bool:
    return bool(alert["kind"].startswith("symptom"))


def _stood_open(alert: Row, at: datetime) -> bool:
    return bool(alert["raised_at"] <= at and (alert["closed_at"] is None or at < alert["closed_at"]))


def _silent_while_open(it: Recorded) -> Iterator[Broken]:
    serious = [one for one in it.alerts if _is_serious(one)]
    for post, row in it.taken("invite", "visit"):
        at = it.read_as(post.at)
        for alert in serious:
            if alert["phone_id"] == row["phone_id"] and alert["raised_at"] < at and _stood_open(alert, at):
                says = f"{row['kind']} {row['id']} ({row['reason']}) left while a symptom was open"
                yield Broken("symptom", says, post.to, post.at)


def somebody_knows(it: Recorded) -> Iterator[Broken]:
    """Who wrote and got no answer, because it could not leave in time, is known to a person."""
    for row in it.texts:
        is_unsaid = row["kind"] == "answer" and row["state"] == "dropped" and row["reason"] not in _SAID_AT_ONCE
        if not is_unsaid or not str(row["state_because"]).startswith("its time is over"):
            continue
        since = row["planned_at"] - timedelta(minutes=1)
        has_alert = any(one["phone_id"] == row["phone_id"] and _is_since(one, since) for one in it.alerts)
        if not has_alert:
            says = f"answer {row['id']} ({row['reason']}) never left and nobody knows"
            yield Broken("unanswered", says, row["number"], row["planned_at"])


def _is_since(alert: Row, since: datetime) -> bool:
    """Whether it was raised since then, or stood open then."""
    return bool(alert["raised_at"] >= since) or _stood_open(alert, since)
