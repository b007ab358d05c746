"""A simulated shop lives: the world is stepped, the program works whenever something is due, customers read and write.

    with SimulatedShop(premises, seed, begins_at, troubles=...) as shop:
        shop.live(ends_at)
        verdict = judge(shop.recorded())

One step goes to the next instant at which the program or the world has something to do.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from contextlib import ExitStack
from datetime import datetime, time, timedelta
from functools import partial
from random import Random

from followup.core.shop import instant
from followup.core.wall import day_of
from followup.rehearsal.faults.fate import Fates
from followup.rehearsal.faults.provider import Post, Provider
from followup.rehearsal.week.customers import Customer, Habits
from followup.rehearsal.week.inside import Inside
from followup.rehearsal.week.premises import Premises
from followup.rehearsal.week.record import Recorded, record
from followup.rehearsal.week.staff import Manners, Staff
from followup.rehearsal.week.troubles import Troubles
from followup.rehearsal.week.world import World
from followup.storage import outbox, people, shops
from followup.storage.rows import Row

# Then the leases of a worker that was killed have run out.
AFTER_A_KILL = timedelta(seconds=16)
WHILE_IT_IS_AWAY = timedelta(minutes=10)
LONGEST_LIST_LAG = timedelta(minutes=12)
_DAY = timedelta(days=1)


class SimulatedShop:
    """Use as a context. `faulty` is the share of the usual faults of single calls to the provider.

    `without` names ticks of the clock that are left out: learning and scoring change no promise and take time. `every`
    gives ticks another pace, where years have to pass in minutes. One in `one_in` calls goes over the wire where that
    would show nothing more (`direct.py`); 0: there are no pages and no network.
    """

    def __init__(
        self,
        premises: Premises,
        seed: int,
        begins_at: datetime,
        *,
        troubles: Troubles = Troubles(),  # noqa: B008  # it is frozen
        habits: Habits = Habits(),  # noqa: B008  # it is frozen
        manners: Manners = Manners(),  # noqa: B008  # it is frozen
        faulty: float = 0.25,
        without: Collection[str] = ("learn", "score"),
        every: Mapping[str, timedelta] = {},
        one_in: int = 1,
    ) -> None:
        self.premises, self.seed, self.troubles, self.habits, self.manners = premises, seed, troubles, habits, manners
        self.begins_at = begins_at
        self._random = Random(f"life {seed}")
        self.world = World(begins_at, self.set_clock)
        fates = Fates(seed, share=faulty, latest=timedelta(minutes=40))
        self.provider = Provider(fates, self.world.now, self.give_time, self._post_hook)
        self.program = self.make_program(without, every, one_in)
        self.is_down = False
        # Told of every text that reaches a phone.
        self.when_read: Callable[[Row], object] = lambda _row: None
        self._provider_is_away = False
        self._stack = ExitStack()

    def make_program(self, without: Collection[str], every: Mapping[str, timedelta], one_in: int) -> Inside:
        """The program that the shop runs."""
        return Inside(self.premises, self.provider, self.world.program_now, without, every, one_in)

    def set_clock(self, _instant: datetime) -> None:
        """The program's clock goes on; within this process it asks the world."""

    def give_time(self, instant: datetime) -> None:
        """A process asks that time go on to that instant of the program's clock."""
        self.world.pass_time(instant)

    def __enter__(self) -> SimulatedShop:
        self._stack.enter_context(self.provider)
        self._stack.enter_context(self.program.running())
        self.provider.when_taken = self._take
        self._look_around()
        for troubles in self.troubles.each:
            self._expect_troubles(troubles)
        self.world.call_at(self.begins_at, self._begin_day)
        return self

    def __exit__(self, *_: object) -> None:
        self._stack.close()

    def live(self, until: datetime) -> None:
        """Let it live until that instant of true time."""
        while self.world.at < until:
            ends_at = until + self.world.wrong_by
            if self.is_down:
                self.world.pass_time(ends_at)
                continue
            due_at = self.program.work_now() or self.world.program_now() + AFTER_A_KILL
            if self._provider_is_away:
                # Each minute it is asked again what customers wrote; a trial need not see every one of these.
                due_at = max(due_at, self.world.program_now() + WHILE_IT_IS_AWAY)
            self.world.pass_time(min(ends_at, due_at))

    def recorded(self, since: datetime | None = None) -> Recorded:
        """All that a judge needs of what happened so far, or since then."""
        return record(self.store, self.shop_id, self.provider, self.staff.stays, self.troubles, self.world.at, since)

    def _look_around(self) -> None:
        self.store = self.program.house.store
        with self.store.read() as connection:
            self.shop_id = shops.shop_codes(connection)[0][0]
            self.shop = shops.load_shop(connection, self.shop_id)
            phones = people.all_phones(connection, self.shop_id)
        self.staff = Staff(
            self.store, self.shop_id, self.world, Random(f"staff {self.seed}"), lambda: self.program.hooks_open,
            self.manners,
        )  # fmt: skip
        self.customers = {row["number"]: self._customer(row["number"], row["language"]) for row in phones}

    def _customer(self, number: str, language: str | None) -> Customer:
        random = Random(f"{self.seed} {number}")
        return Customer(number, language or "en", random.uniform(20_000, 120_000), random, self.habits)

    def _begin_day(self) -> bool:
        """Midnight at the shop: what customers write unasked today, and the looks of staff."""
        for customer in self.customers.values():
            found = customer.unasked(self.world.at)
            if found:
                self.world.call_at(found[0], partial(self._write, customer.number, *found[1:]))
        self.staff.begin_day()
        tomorrow = day_of(self.world.at, self.shop.zone) + _DAY
        self.world.call_at(instant(tomorrow, time(0), self.shop.zone), self._begin_day)
        return False

    # Texts -------------------------------------------------------------------------------------------------------
    def _post_hook(self, url: str, form: dict[str, str], headers: dict[str, str]) -> int | None:
        return self.program.post(url, form, headers)

    def _take(self, count: int) -> None:
        """The provider was asked to take a text: its reports and its reader follow."""
        post = self.provider.posts[count - 1]
        if post.sid is None:
            return
        for delay, _ in post.fate.reports:
            self.world.call_at(post.taken_at + delay, self._report)
        self.world.call_at(post.taken_at + timedelta(seconds=20), partial(self._read, post))

    def _report(self) -> bool:
        self.provider.report_due()
        return False

    def _read(self, post: Post) -> bool:
        with self.store.read() as connection:
            row = outbox.text_of_public_id(connection, post.public_id)
        assert row is not None
        self.when_read(row)
        if row["kind"] == "alert":
            return self.staff.read(post.to, row["alert_id"])
        customer = self.customers.get(post.to)
        answer = customer.answer_to(row["asks"], len(row["offered"] or ()) or 3, self.world.at) if customer else None
        if answer:
            self.world.call_at(answer[0], partial(self._write, post.to, *answer[1:]))
        return False

    def _write(self, number: str, meant: str, body: str) -> bool:
        lags = self._random.random() < self.troubles.list_lags
        lag = LONGEST_LIST_LAG * self._random.random() if lags else timedelta(0)
        written = self.provider.write(number, self.shop.texts_from, body, self.premises.hook(), meant, lag)
        if self._random.random() < self.troubles.posted_twice:
            for _ in range(self._random.randint(1, 3)):
                again_at = self.world.at + timedelta(seconds=self._random.choice((1, 5, 600, 7200)))
                self.world.call_at(again_at, partial(self.provider.post_again, written, self.premises.hook()))
        return written.acknowledged_at is not None

    # Troubles ----------------------------------------------------------------------------------------------------
    def _expect_troubles(self, troubles: Troubles) -> None:
        call_at = self.world.call_at
        if troubles.provider_away:
            call_at(troubles.provider_away.from_at, partial(self._provider_goes, troubles.provider_refuses))
            call_at(troubles.provider_away.to_at, self._provider_comes)
        if troubles.server_down:
            call_at(troubles.server_down.from_at, partial(self._server_goes, troubles.hooks_alone))
            call_at(troubles.server_down.to_at, self._server_comes)
        if troubles.clock_wrong:
            call_at(troubles.clock_wrong.from_at, partial(self._set_wrong_by, troubles.clock_wrong_by))
            call_at(troubles.clock_wrong.to_at, partial(self._set_wrong_by, timedelta(0)))
        for kill in troubles.kills:
            call_at(kill.at, partial(self.program.kill_at, kill.point, kill.nth))

    def _provider_goes(self, is_refusing: bool) -> bool:
        self._provider_is_away = True
        if is_refusing:
            self.provider.go_away()
        else:
            self.provider.is_out_of_order = True
        return False

    def _provider_comes(self) -> bool:
        self.provider.come_back()
        self._provider_is_away = self.provider.is_out_of_order = False
        return True

    def _server_goes(self, hooks_alone: bool) -> bool:
        self.program.hooks_open = False
        self.is_down = not hooks_alone
        return True

    def _server_comes(self) -> bool:
        self.program.hooks_open = True
        if self.is_down:
            self.is_down = False
            self.program.end_worker()
        return True

    def _set_wrong_by(self, wrong_by: timedelta) -> bool:
        self.world.set_wrong_by(wrong_by)
        return True
