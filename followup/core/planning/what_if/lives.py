"""The days of half a year under one set of rules, in all worlds at once: texts, answers, stops, visits.

A day costs only what happens on it: each car has the next day on which it is worth a look. What the planner decides
(`decide`, `send_rule`, `spacing`) is done here on arrays; a replay by the planner itself is what it is held against.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from followup.core.planning.what_if.cars import CarAhead
from followup.core.planning.what_if.draws import DAYS, MOST_TEXTS, WEEKS, Draws
from followup.core.planning.what_if.items import ItemsAhead
from followup.core.planning.what_if.odds import Odds
from followup.core.planning.what_if.plan import NEVER_DAY, REMIND_AFTER_DAYS, Plan

Rows = NDArray[np.intp]
Days = NDArray[np.int16]
_LONG_AGO = -NEVER_DAY
# Nothing leaves to this phone any more.
_SILENT = NEVER_DAY + 1


@dataclass
class Tally:
    """Counts by world, and by week where it says so: arrays (worlds, weeks), hours (worlds, weeks, skills)."""

    skills: tuple[str, ...]
    texts: NDArray[np.float64]
    prompted: NDArray[np.float64]
    own: NDArray[np.float64]
    hours: NDArray[np.float64]
    stops: NDArray[np.float64]
    wasted: NDArray[np.float64]
    past_action: NDArray[np.float64]
    past_legal: NDArray[np.float64]

    @staticmethod
    def nothing(worlds: int, skills: Sequence[str]) -> Tally:
        """Nothing has happened."""

        def each(*shape: int) -> NDArray[np.float64]:
            return np.zeros((worlds, *shape))

        return Tally(
            skills=tuple(skills), texts=each(WEEKS), prompted=each(WEEKS), own=each(WEEKS),
            hours=each(WEEKS, len(skills)), stops=each(), wasted=each(), past_action=each(), past_legal=each(),
        )  # fmt: skip

    def joined(self, other: Tally) -> Tally:
        """These worlds and those of `other`."""
        parts = {
            name: np.concatenate([getattr(self, name), getattr(other, name)])
            for name in vars(self) if name != "skills"
        }  # fmt: skip
        return Tally(self.skills, **parts)


@dataclass
class Lives:
    """Where every car stands in every world; phones likewise. `first_text` is the day of each car's first text (worlds,
    cars), NEVER_DAY where it got none.

    What is kept of each car in each world lies in one row, worlds first: car c of world w at w * cars + c, so that what
    happens on a day is found and changed by one number each. Days are small numbers: a world stays near at hand.
    """

    plan: Plan
    draws: Draws
    cars: Sequence[CarAhead]
    odds: Odds
    skills: tuple[str, ...]
    items: ItemsAhead
    tally: Tally = field(init=False)

    def __post_init__(self) -> None:
        worlds, count = self.draws.worlds, len(self.cars)
        self.worlds, self.count = worlds, count
        self.tally = Tally.nothing(worlds, self.skills)
        self._first_text = np.full(worlds * count, NEVER_DAY, dtype=np.int16)
        phones = {one: at for at, one in enumerate(dict.fromkeys(car.phone for car in self.cars))}
        self.phones = len(phones)
        self.phone_of = np.array([phones[car.phone] for car in self.cars], dtype=np.intp)
        self._of_phone: list[list[int]] = [[] for _ in phones]
        for at, phone in enumerate(self.phone_of.tolist()):
            self._of_phone[phone].append(at)
        self.told = _same(self.plan.told.min(axis=1, initial=NEVER_DAY), worlds)
        self.legal = _same(self.plan.legal.min(axis=1, initial=NEVER_DAY), worlds)
        self._begin_items()
        # By kind: due work, and due work at its legal limit.
        self.tries = _same(np.array([car.tries for car in self.cars]).reshape(count, 2), worlds)
        last = [[_LONG_AGO if day is None else day for day in car.last_try] for car in self.cars]
        self.last_try = _same(np.array(last).reshape(count, 2), worlds)
        # A shop's own closed day is day -1 and so on; a visit that was booked stands beside what is drawn.
        self.last_visit = _same(np.array([_or(car.last_visit, _LONG_AGO) for car in self.cars]), worlds)
        self.visit = _same(np.array([_or(car.booked, NEVER_DAY) for car in self.cars]), worlds)
        self.is_prompted = np.zeros(worlds * count, dtype=bool)
        self.own_turn = np.zeros(worlds * count, dtype=np.int8)
        self._own_days = self.draws.own.reshape(worlds * count, self.draws.own.shape[2])
        self.own = self._next_own(np.arange(worlds * count), -1)
        self.sent = np.zeros(worlds * count, dtype=np.int8)
        self._answers = self.draws.answer.reshape(-1)
        self._delays = self.draws.delay.reshape(-1)
        # The days of the latest texts to a phone, oldest first from `oldest` on, in a ring.
        self.texts = self._earlier_texts(phones)
        self.oldest = np.zeros(worlds * len(phones), dtype=np.int8)
        self.last_car = np.full(worlds * len(phones), -1, dtype=np.int32)
        self.last_kind = np.zeros(worlds * len(phones), dtype=np.int8)
        self._note_last_car(phones)
        silent = np.tile(np.array([not car.may_text for car in self.cars], dtype=bool), worlds)
        self.look = np.where(silent, _SILENT, np.minimum(self.told, self.legal)).astype(np.int16)

    @property
    def first_text(self) -> Days:
        """The day of each car's first text (worlds, cars)."""
        return self._first_text.reshape(self.worlds, self.count)

    def live(self) -> Iterator[int]:
        """Let all the days pass, one after the other; yields each that is over."""
        for day in range(DAYS):
            came = np.flatnonzero((self.visit == day) | (self.own == day))
            if len(came):
                self._visits(day, came)
            if self.plan.may_leave[day]:
                found = np.flatnonzero(self.look <= day)
                if len(found):
                    self._texts(day, found)
            yield day

    def _world(self, at: Rows) -> Rows:
        return at // self.count

    def _count(self, counts: NDArray[np.float64], at: Rows) -> None:
        """One more in the world of each of these."""
        counts += np.bincount(self._world(at), minlength=self.worlds)

    # How it begins ---------------------------------------------------------------------------------------------
    def _earlier_texts(self, phones: dict[int, int]) -> Days:
        most = self.plan.rules.invites_a_year
        texts = np.full((len(phones), most), _LONG_AGO, dtype=np.int16)
        for car in self.cars:
            recent = car.invited[-most:]
            texts[phones[car.phone], most - len(recent) :] = recent
        return np.tile(texts, (self.worlds, 1))

    def _note_last_car(self, phones: dict[int, int]) -> None:
        """Whose reason the last invite of each phone was about: its own second try may come sooner."""
        last_car, last_kind = (one.reshape(self.worlds, self.phones) for one in (self.last_car, self.last_kind))
        for at, car in enumerate(self.cars):
            for kind in (0, 1):
                day = car.last_try[kind]
                if day is not None and car.invited and day == car.invited[-1]:
                    last_car[:, phones[car.phone]] = at
                    last_kind[:, phones[car.phone]] = kind

    def _begin_items(self) -> None:
        """Places that a car has no item for are done."""
        most, shape = self.draws.due.shape[2], (self.worlds * self.count, self.draws.due.shape[2])
        self._due, self._legal_due = (one.reshape(shape) for one in (self.draws.due, self.draws.legal))
        skill = {name: at for at, name in enumerate(self.skills)}
        codes = np.array([skill.get(name, 0) for name in self.items.skills] or [0], dtype=np.intp)
        self.skill_of = codes[self.items.skill]
        none = np.arange(most)[None, :] >= self.items.count[:, None]
        self.done = np.tile(none, (self.worlds, 1))
        self.left = np.tile(self.items.count.astype(np.int8), self.worlds)

    # Visits -----------------------------------------------------------------------------------------------------
    def _on_open_day(self, days: NDArray[np.int64]) -> Days:
        inside = (days >= 0) & (days < len(self.plan.open_on))
        return np.where(inside, self.plan.open_on[np.where(inside, days, 0)], NEVER_DAY).astype(np.int16)

    def _visits(self, day: int, at: Rows) -> None:
        is_booked = self.visit[at] == day
        prompted = is_booked & self.is_prompted[at]
        self._count(self.tally.prompted[:, day // 7], at[prompted])
        self._count(self.tally.own[:, day // 7], at[~prompted])
        reminded = day + REMIND_AFTER_DAYS if self.plan.kind == "reminder" else NEVER_DAY
        told, at_legal = (np.full(len(at), one, dtype=np.int16) for one in (reminded, NEVER_DAY))
        is_idle = np.ones(len(at), dtype=bool)
        # Of many cars nothing is left that may matter within the half year.
        has_items = np.flatnonzero(self.left[at])
        if len(has_items):
            found = self._do_work(day, at[has_items])
            is_idle[has_items] = found[0]
            if self.plan.kind == "ours":
                told[has_items], at_legal[has_items] = found[1:]
        self._count(self.tally.wasted, at[prompted & is_idle])
        self._after_visit(day, at, is_booked, told, at_legal)

    def _do_work(self, day: int, at: Rows) -> tuple[NDArray[np.bool_], Days, Days]:
        """What is near its limit is done, all else is measured: a new window around its true day, as wide as before in
        proportion. Whether nothing was near, and the days from which what is left is a reason for a text."""
        cars = at % self.count
        due, legal = (one.take(at, axis=0) for one in (self._due, self._legal_due))
        done = self.done.take(at, axis=0)
        near = ~done & (due - day <= self.items.near.take(cars, axis=0))
        is_work = np.asarray(near.any(axis=1))
        self._count(self.tally.past_action, at[(near & (due < day)).any(axis=1)])
        self._count(self.tally.past_legal, at[(~done & (legal < day)).any(axis=1)])
        self._count_hours(day // 7, at[is_work], cars[is_work], near[is_work])
        gone = done | near
        left, lead = ~gone, self.plan.rules.lead_days
        self.done[at], self.left[at] = gone, left.sum(axis=1)
        if self.plan.kind == "reminder":
            never = np.full(len(at), NEVER_DAY, dtype=np.int16)
            return ~is_work, never, never
        told = _soonest(day, due, self.plan.ratio.take(cars, axis=0), left, lead)
        return ~is_work, told, _soonest(day, legal, self.plan.legal_ratio.take(cars, axis=0), left, lead)

    def _count_hours(self, week: int, at: Rows, cars: Rows, near: NDArray[np.bool_]) -> None:
        """Labor hours of what is done: the same work on the same car once, counted where it comes first."""
        places, rows = np.nonzero(near.T)
        work = rows * near.shape[1] + self.items.work[cars[rows], places]
        first = np.sort(np.unique(work, return_index=True)[1])
        rows, places = rows[first], places[first]
        of = cars[rows]
        # The tally in one row too, by the place of world, week and skill.
        shape, hours = self.tally.hours.shape, self.tally.hours.reshape(-1)
        where = (self._world(at[rows]) * shape[1] + week) * shape[2] + self.skill_of[of, places]
        np.add.at(hours, where, self.items.hours[of, places])

    def _after_visit(self, day: int, at: Rows, is_booked: NDArray[np.bool_], told: Days, at_legal: Days) -> None:
        """Tries begin anew, invites rest."""
        self.told[at], self.legal[at] = told, at_legal
        self.tries[at], self.last_try[at] = 0, _LONG_AGO
        self.last_visit[at] = day
        booked, own = at[is_booked], at[self.own[at] == day]
        self.visit[booked] = NEVER_DAY
        self.is_prompted[booked] = False
        self.own_turn[own] += 1
        self.own[own] = self._next_own(own, day)
        rested = day + self.plan.rules.rest_after_visit_days
        self._look_again(at, np.maximum(np.minimum(told, at_legal), rested))

    def _next_own(self, at: Rows, day: int) -> Days:
        turn, most = self.own_turn[at], self._own_days.shape[1]
        drawn = self._own_days[at, np.minimum(turn, most - 1)]
        days = np.where(turn < most, np.maximum(np.ceil(drawn), day + 1), np.inf)
        return self._on_open_day(np.where(days < DAYS, days, NEVER_DAY).astype(np.int64))

    def _look_again(self, at: Rows, on: np.ndarray) -> None:
        """Look at these again on that day, unless nothing is sent to their phone any more."""
        silent = self.look[at] == _SILENT
        self.look[at] = np.where(silent, _SILENT, np.minimum(on, NEVER_DAY))

    # Texts ------------------------------------------------------------------------------------------------------
    def _texts(self, day: int, at: Rows) -> None:
        worlds = self._world(at)
        cars = at - worlds * self.count
        phones = worlds * self.phones + self.phone_of[cars]
        told, legal = self.told[at], self.legal[at]
        kind = (legal <= day).astype(np.intp)
        wait = self._waits_until(day, at, cars, phones, kind, legal)
        wait = np.where((told > day) & (kind == 0), np.minimum(told, legal), wait)
        free = wait <= day
        self._look_again(at[~free], wait[~free])
        at, cars, phones, kind = at[free], cars[free], phones[free], kind[free]
        first = self._most_pressing(told[free], cars, phones, kind)
        others = at[~first]
        self._look_again(others, np.full(len(others), day + self.plan.rules.invite_every_days))
        self._send(day, at[first], cars[first], phones[first], kind[first])

    def _waits_until(self, day: int, at: Rows, cars: Rows, phones: Rows, kind: Rows, legal: Days) -> Days:
        """The day on which the latest of what stops it has passed; `day` or less where nothing does."""
        rules = self.plan.rules
        wait = self.last_visit[at] + rules.rest_after_visit_days
        booked = self.visit[at]
        wait = np.maximum(wait, np.where(booked < NEVER_DAY, booked + 1, wait))
        of_kind = 2 * at + kind
        tries, last = self.tries.reshape(-1)[of_kind], self.last_try.reshape(-1)[of_kind]
        again = np.where(kind == 1, rules.try_again_days_legal, rules.try_again_days).astype(np.int16)
        wait = np.maximum(wait, np.where(tries > 0, last + again, wait))
        # Told often enough: nothing until the legal limit comes due, or until the next visit.
        over = np.where((kind == 0) & (legal > day), legal, NEVER_DAY)
        wait = np.where(tries >= rules.tries, np.maximum(over, day + 1), wait)
        most = self.texts.shape[1]
        is_mine = (self.last_car[phones] == cars) & (self.last_kind[phones] == kind) & (tries > 0)
        others = np.where(is_mine, self._text(phones, 2) if most > 1 else _LONG_AGO, self._text(phones, 1))
        wait = np.maximum(wait, others + rules.invite_every_days)
        wait = np.maximum(wait, self._text(phones, min(rules.invites_in_30_days, most)) + 30)
        wait = np.maximum(wait, self._text(phones, most) + 365)
        return np.asarray(np.where(self.sent[at] >= MOST_TEXTS, NEVER_DAY, wait), dtype=np.int16)

    def _text(self, phones: Rows, back: int) -> Days:
        """The day of each phone's latest text but so many, 1 the latest."""
        most = self.texts.shape[1]
        return np.asarray(self.texts.reshape(-1)[phones * most + (self.oldest[phones] - back) % most])

    def _most_pressing(self, told: Days, cars: Rows, phones: Rows, kind: Rows) -> NDArray[np.bool_]:
        """One car of each phone: legal limits first, then whichever came due first."""
        order = np.lexsort((cars, told, -kind, phones))
        is_first = np.ones(len(order), dtype=bool)
        is_first[1:] = phones[order][1:] != phones[order][:-1]
        found = np.zeros(len(order), dtype=bool)
        found[order[is_first]] = True
        return found

    def _send(self, day: int, at: Rows, cars: Rows, phones: Rows, kind: Rows) -> None:
        rules, drawn = self.plan.rules, at * MOST_TEXTS + self.sent[at]
        self._count(self.tally.texts[:, day // 7], at)
        self._first_text[at] = np.minimum(self._first_text[at], day)
        of_kind, most = 2 * at + kind, self.texts.shape[1]
        tries, answer = self.tries.reshape(-1), self._answers[drawn]
        books = answer < np.where(tries[of_kind] == 0, self.odds.booked[0], self.odds.booked[1])
        stops = answer >= 1 - self.odds.stopped
        self.sent[at] += 1
        tries[of_kind] += 1
        self.last_try.reshape(-1)[of_kind] = day
        oldest = self.oldest[phones]
        self.texts.reshape(-1)[phones * most + oldest] = day
        self.oldest[phones] = (oldest + 1) % most
        self.last_car[phones], self.last_kind[phones] = cars, kind
        visit = self._on_open_day(day + self._delays[drawn].astype(np.int64))
        self.visit[at[books]] = visit[books]
        self.is_prompted[at[books]] = True
        again = np.where(kind == 1, rules.try_again_days_legal, rules.try_again_days)
        self._look_again(at, np.where(books, visit + 1, day + again))
        self._count(self.tally.stops, at[stops])
        for one in phones[stops].tolist():
            world, phone = divmod(one, self.phones)
            for car in self._of_phone[phone]:
                self.look[world * self.count + car] = _SILENT


def _same(values: np.ndarray, worlds: int) -> Days:
    """The same in every world, one world after the other, as an array of its own."""
    return np.concatenate([values.astype(np.int16)] * worlds)


def _or(day: int | None, otherwise: int) -> int:
    return otherwise if day is None else day


def _soonest(day: int, due: np.ndarray, ratio: np.ndarray, left: np.ndarray, lead: int) -> Days:
    with np.errstate(invalid="ignore"):
        days = day + np.maximum(due - day, 0.0) * ratio - lead
    days = np.where(left & np.isfinite(ratio) & np.isfinite(days), days, NEVER_DAY)
    return np.asarray(np.clip(np.ceil(days - 1e-3), 0, NEVER_DAY).min(axis=1, initial=NEVER_DAY), dtype=np.int16)
