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
from followup.core.planning.what_if.odds import Odds
from followup.core.planning.what_if.plan import NEVER_DAY, REMIND_AFTER_DAYS, Plan

Rows = NDArray[np.intp]
Days = NDArray[np.int32]
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
    """Where every car stands in every world, (worlds, cars); phones likewise. `first_text` is the day of each car's
    first text, NEVER_DAY where it got none."""

    plan: Plan
    draws: Draws
    cars: Sequence[CarAhead]
    odds: Odds
    skills: tuple[str, ...]
    tally: Tally = field(init=False)
    first_text: Days = field(init=False)

    def __post_init__(self) -> None:
        worlds, count = self.draws.worlds, len(self.cars)
        shape = (worlds, count)
        self.tally = Tally.nothing(worlds, self.skills)
        self.first_text = np.full(shape, NEVER_DAY, dtype=np.int32)
        phones = {one: at for at, one in enumerate(dict.fromkeys(car.phone for car in self.cars))}
        self.phone_of = np.array([phones[car.phone] for car in self.cars], dtype=np.intp)
        self.told = _same(self.plan.told.min(axis=1, initial=NEVER_DAY), worlds)
        self.legal = _same(self.plan.legal.min(axis=1, initial=NEVER_DAY), worlds)
        # Places that a car has no item for are done.
        none = [[number >= len(car.items) for number in range(self.draws.due.shape[2])] for car in self.cars]
        self.done = np.repeat(np.array(none, dtype=bool).reshape(self.draws.due.shape[1:])[None], worlds, axis=0)
        self.left = (~self.done).sum(axis=2).astype(np.int16)
        self.tries = _same(np.array([car.tries for car in self.cars]).reshape(count, 2), worlds)
        last = [[_LONG_AGO if day is None else day for day in car.last_try] for car in self.cars]
        self.last_try = _same(np.array(last).reshape(count, 2), worlds)
        # A shop's own closed day is day -1 and so on; a visit that was booked stands beside what is drawn.
        self.last_visit = _same(np.array([_or(car.last_visit, _LONG_AGO) for car in self.cars]), worlds)
        self.visit = _same(np.array([_or(car.booked, NEVER_DAY) for car in self.cars]), worlds)
        self.is_prompted = np.zeros(shape, dtype=bool)
        self.own_turn = np.zeros(shape, dtype=np.intp)
        everybody = np.nonzero(np.ones(shape, dtype=bool))
        self.own = self._next_own(everybody[0], everybody[1], -1).reshape(shape)
        self.sent = np.zeros(shape, dtype=np.intp)
        self.texts = self._earlier_texts(phones, worlds)
        self.last_car = np.full(self.texts.shape[:2], -1, dtype=np.intp)
        self.last_kind = np.zeros(self.texts.shape[:2], dtype=np.intp)
        self._note_last_car(phones)
        silent = np.array([not car.may_text for car in self.cars], dtype=bool)
        self.look = np.where(silent[None, :], _SILENT, np.minimum(self.told, self.legal)).astype(np.int32)
        self._prepare_items()

    def live(self) -> Iterator[int]:
        """Let all the days pass, one after the other; yields each that is over."""
        for day in range(DAYS):
            came = _where((self.visit == day) | (self.own == day))
            if len(came[0]):
                self._visits(day, *came)
            if self.plan.may_leave[day]:
                found = _where(self.look <= day)
                if len(found[0]):
                    self._texts(day, *found)
            yield day

    # How it begins ---------------------------------------------------------------------------------------------
    def _earlier_texts(self, phones: dict[int, int], worlds: int) -> Days:
        most = self.plan.rules.invites_a_year
        texts = np.full((len(phones), most), _LONG_AGO, dtype=np.int32)
        for car in self.cars:
            recent = car.invited[-most:]
            texts[phones[car.phone], most - len(recent) :] = recent
        return _same(texts, worlds)

    def _note_last_car(self, phones: dict[int, int]) -> None:
        """Whose reason the last invite of each phone was about: its own second try may come sooner."""
        for at, car in enumerate(self.cars):
            for kind in (0, 1):
                day = car.last_try[kind]
                if day is not None and car.invited and day == car.invited[-1]:
                    self.last_car[:, phones[car.phone]] = at
                    self.last_kind[:, phones[car.phone]] = kind

    def _prepare_items(self) -> None:
        most, skill = self.draws.due.shape[2], {name: at for at, name in enumerate(self.skills)}
        self.near = np.zeros((len(self.cars), most), dtype=np.float32)
        self.hours_of = np.zeros((len(self.cars), most), dtype=np.float32)
        self.skill_of = np.zeros((len(self.cars), most), dtype=np.intp)
        self.work_of = np.full((len(self.cars), most), -1, dtype=np.intp)
        for at, car in enumerate(self.cars):
            works: dict[str, int] = {}
            for number, item in enumerate(car.items):
                self.near[at, number], self.hours_of[at, number] = item.near_days, item.hours
                self.skill_of[at, number] = skill.get(item.skill, 0)
                self.work_of[at, number] = works.setdefault(item.work, number)

    # Visits -----------------------------------------------------------------------------------------------------
    def _on_open_day(self, days: Days) -> Days:
        inside = (days >= 0) & (days < len(self.plan.open_on))
        return np.where(inside, self.plan.open_on[np.where(inside, days, 0)], NEVER_DAY).astype(np.int32)

    def _visits(self, day: int, worlds: Rows, cars: Rows) -> None:
        prompted = (self.visit[worlds, cars] == day) & self.is_prompted[worlds, cars]
        np.add.at(self.tally.prompted[:, day // 7], worlds[prompted], 1)
        np.add.at(self.tally.own[:, day // 7], worlds[~prompted], 1)
        reminded = day + REMIND_AFTER_DAYS if self.plan.kind == "reminder" else NEVER_DAY
        told, at_legal = (np.full(len(cars), one, dtype=np.int32) for one in (reminded, NEVER_DAY))
        is_idle = np.ones(len(cars), dtype=bool)
        # Of most cars nothing is left that may matter within the half year.
        has_items = np.flatnonzero(self.left[worlds, cars])
        if len(has_items):
            found = self._do_work(day, worlds[has_items], cars[has_items])
            is_idle[has_items] = found[0]
            if self.plan.kind == "ours":
                told[has_items], at_legal[has_items] = found[1:]
        np.add.at(self.tally.wasted, worlds[prompted & is_idle], 1)
        self._after_visit(day, worlds, cars, told, at_legal)

    def _do_work(self, day: int, worlds: Rows, cars: Rows) -> tuple[NDArray[np.bool_], Days, Days]:
        """What is near its limit is done, all else is measured: a new window around its true day, as wide as before in
        proportion. Whether nothing was near, and the days from which what is left is a reason for a text."""
        due, legal, done = self.draws.due[worlds, cars], self.draws.legal[worlds, cars], self.done[worlds, cars]
        near = ~done & (due - day <= self.near[cars])
        np.add.at(self.tally.past_action, worlds[(near & (due < day)).any(axis=1)], 1)
        np.add.at(self.tally.past_legal, worlds[(~done & (legal < day)).any(axis=1)], 1)
        self._count_hours(day // 7, worlds, cars, near)
        left, lead = ~(done | near), self.plan.rules.lead_days
        self.done[worlds, cars], self.left[worlds, cars] = ~left, left.sum(axis=1)
        told = _soonest(day, due, self.plan.ratio[cars], left, lead)
        is_idle = np.asarray(~near.any(axis=1))
        return is_idle, told, _soonest(day, legal, self.plan.legal_ratio[cars], left, lead)

    def _count_hours(self, week: int, worlds: Rows, cars: Rows, near: NDArray[np.bool_]) -> None:
        """Labor hours of what is done: the same work on the same car once."""
        counted = np.zeros_like(near)
        rows = np.arange(len(cars))
        for number in range(near.shape[1]):
            of = np.maximum(self.work_of[cars, number], 0)
            fresh = near[:, number] & ~counted[rows, of]
            counted[rows, of] |= near[:, number]
            np.add.at(
                self.tally.hours, (worlds[fresh], week, self.skill_of[cars[fresh], number]),
                self.hours_of[cars[fresh], number],
            )  # fmt: skip

    def _after_visit(self, day: int, worlds: Rows, cars: Rows, told: Days, at_legal: Days) -> None:
        """Tries begin anew, invites rest."""
        self.told[worlds, cars], self.legal[worlds, cars] = told, at_legal
        self.tries[worlds, cars], self.last_try[worlds, cars] = 0, _LONG_AGO
        self.last_visit[worlds, cars] = day
        booked = self.visit[worlds, cars] == day
        self.visit[worlds[booked], cars[booked]] = NEVER_DAY
        self.is_prompted[worlds[booked], cars[booked]] = False
        own = self.own[worlds, cars] == day
        self.own_turn[worlds[own], cars[own]] += 1
        self.own[worlds[own], cars[own]] = self._next_own(worlds[own], cars[own], day)
        rested = day + self.plan.rules.rest_after_visit_days
        looks = np.maximum(np.minimum(told, at_legal), rested)
        self._look_again(worlds, cars, looks)

    def _next_own(self, worlds: Rows, cars: Rows, day: int) -> Days:
        turn = self.own_turn[worlds, cars]
        drawn = self.draws.own[worlds, cars, np.minimum(turn, self.draws.own.shape[2] - 1)]
        days = np.where(turn < self.draws.own.shape[2], np.maximum(np.ceil(drawn), day + 1), np.inf)
        return self._on_open_day(np.where(days < DAYS, days, NEVER_DAY).astype(np.int32))

    def _look_again(self, worlds: Rows, cars: Rows, on: np.ndarray) -> None:
        """Look at these again on that day, unless nothing is sent to their phone any more."""
        silent = self.look[worlds, cars] == _SILENT
        self.look[worlds, cars] = np.where(silent, _SILENT, np.minimum(on, NEVER_DAY)).astype(np.int32)

    # Texts ------------------------------------------------------------------------------------------------------
    def _texts(self, day: int, worlds: Rows, cars: Rows) -> None:
        rules, phones = self.plan.rules, self.phone_of[cars]
        kind = (self.legal[worlds, cars] <= day).astype(np.intp)
        wait = self._waits_until(day, worlds, cars, phones, kind)
        wait = np.where(
            (self.told[worlds, cars] > day) & (kind == 0), np.minimum(self.told, self.legal)[worlds, cars], wait
        )
        free = wait <= day
        self._look_again(worlds[~free], cars[~free], wait[~free])
        worlds, cars, phones, kind = worlds[free], cars[free], phones[free], kind[free]
        first = self._most_pressing(worlds, cars, phones, kind)
        others = ~first
        self._look_again(worlds[others], cars[others], np.full(int(others.sum()), day + rules.invite_every_days))
        self._send(day, worlds[first], cars[first], phones[first], kind[first])

    def _waits_until(self, day: int, worlds: Rows, cars: Rows, phones: Rows, kind: Rows) -> Days:
        """The day on which the latest of what stops it has passed; `day` or less where nothing does."""
        rules = self.plan.rules
        wait = self.last_visit[worlds, cars] + rules.rest_after_visit_days
        booked = self.visit[worlds, cars]
        wait = np.maximum(wait, np.where(booked < NEVER_DAY, booked + 1, wait))
        tries, last = self.tries[worlds, cars, kind], self.last_try[worlds, cars, kind]
        again = np.where(kind == 1, rules.try_again_days_legal, rules.try_again_days)
        wait = np.maximum(wait, np.where(tries > 0, last + again, wait))
        # Told often enough: nothing until the legal limit comes due, or until the next visit.
        legal = self.legal[worlds, cars]
        over = np.where((kind == 0) & (legal > day), legal, NEVER_DAY)
        wait = np.where(tries >= rules.tries, np.maximum(over, day + 1), wait)
        texts = self.texts[worlds, phones]
        is_mine = (self.last_car[worlds, phones] == cars) & (self.last_kind[worlds, phones] == kind) & (tries > 0)
        others = np.where(is_mine, texts[:, -2] if texts.shape[1] > 1 else _LONG_AGO, texts[:, -1])
        wait = np.maximum(wait, others + rules.invite_every_days)
        wait = np.maximum(wait, texts[:, -min(rules.invites_in_30_days, texts.shape[1])] + 30)
        wait = np.maximum(wait, texts[:, 0] + 365)
        return np.asarray(np.where(self.sent[worlds, cars] >= MOST_TEXTS, NEVER_DAY, wait), dtype=np.int32)

    def _most_pressing(self, worlds: Rows, cars: Rows, phones: Rows, kind: Rows) -> NDArray[np.bool_]:
        """One car of each phone: legal limits first, then whichever came due first."""
        order = np.lexsort((cars, self.told[worlds, cars], -kind, phones, worlds))
        is_first = np.ones(len(order), dtype=bool)
        same = (worlds[order][1:] == worlds[order][:-1]) & (phones[order][1:] == phones[order][:-1])
        is_first[1:] = ~same
        found = np.zeros(len(order), dtype=bool)
        found[order[is_first]] = True
        return found

    def _send(self, day: int, worlds: Rows, cars: Rows, phones: Rows, kind: Rows) -> None:
        rules, turn = self.plan.rules, self.sent[worlds, cars]
        np.add.at(self.tally.texts[:, day // 7], worlds, 1)
        self.first_text[worlds, cars] = np.minimum(self.first_text[worlds, cars], day)
        tries = self.tries[worlds, cars, kind]
        answer = self.draws.answer[worlds, cars, turn]
        books = answer < np.where(tries == 0, self.odds.booked[0], self.odds.booked[1])
        stops = answer >= 1 - self.odds.stopped
        self.sent[worlds, cars] += 1
        self.tries[worlds, cars, kind] += 1
        self.last_try[worlds, cars, kind] = day
        self.texts[worlds, phones] = np.concatenate(
            [self.texts[worlds, phones, 1:], np.full((len(cars), 1), day, dtype=np.int32)], axis=1
        )
        self.last_car[worlds, phones], self.last_kind[worlds, phones] = cars, kind
        visit = self._on_open_day((day + self.draws.delay[worlds, cars, turn]).astype(np.int32))
        self.visit[worlds[books], cars[books]] = visit[books]
        self.is_prompted[worlds[books], cars[books]] = True
        again = np.where(kind == 1, rules.try_again_days_legal, rules.try_again_days)
        looks = np.where(books, visit + 1, day + again)
        self._look_again(worlds, cars, looks)
        np.add.at(self.tally.stops, worlds[stops], 1)
        for world, phone in zip(worlds[stops], phones[stops], strict=True):
            self.look[world, self.phone_of == phone] = _SILENT


def _same(values: np.ndarray, worlds: int) -> Days:
    """The same in every world, as an array of its own."""
    return np.repeat(values[None].astype(np.int32), worlds, axis=0)


def _where(mask: NDArray[np.bool_]) -> tuple[Rows, Rows]:
    """Worlds and cars at which it is true; several times as fast as `nonzero` of two dimensions."""
    worlds, cars = np.divmod(np.flatnonzero(mask), max(mask.shape[1], 1))
    return worlds, cars


def _or(day: int | None, otherwise: int) -> int:
    return otherwise if day is None else day


def _soonest(day: int, due: np.ndarray, ratio: np.ndarray, left: np.ndarray, lead: int) -> Days:
    with np.errstate(invalid="ignore"):
        days = day + np.maximum(due - day, 0.0) * ratio - lead
    days = np.where(left & np.isfinite(ratio) & np.isfinite(days), days, NEVER_DAY)
    return np.asarray(np.clip(np.ceil(days - 1e-3), 0, NEVER_DAY).min(axis=1, initial=NEVER_DAY), dtype=np.int32)
