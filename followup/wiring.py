"""The only place that joins parts: settings, database, transport, clock, workflows that need several of them."""

from __future__ import annotations

import logging
import threading
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import partial
from typing import Any

from followup import clock
from followup.core.shop import Shop
from followup.settings import Settings, read_settings
from followup.storage import inbox, machine, queue, shops, test_phone
from followup.storage.store import DatabaseMoved, Store, make_engine
from followup.transports.choose import choose
from followup.transports.local_phone import inbound_fields, signed_post, token_from
from followup.transports.transport import (
    Fields,
    ForeignHook,
    Found,
    Headers,
    InboundText,
    LookUpFailed,
    OutgoingText,
    Transport,
    UnusableHook,
)
from followup.workflows.forecast_windows import forecast_news, forecast_windows
from followup.workflows.keep_inbound import keep_foreign, keep_inbound, keep_missed
from followup.workflows.keep_inspections import KeptLine, keep_inspections
from followup.workflows.keep_status import keep_status
from followup.workflows.learn_priors import LearnedRun, learn_at_night, learn_priors
from followup.workflows.look_at_health import look_at_health
from followup.workflows.look_up_unknown import look_up_unknown
from followup.workflows.pace_invites import pace_invites
from followup.workflows.plan_fleet_lists import plan_fleet_lists
from followup.workflows.plan_texts import plan_texts
from followup.workflows.score_forecasts import score_forecasts
from followup.workflows.send_texts import Sender, SentCount, send_texts
from followup.workflows.settle_over_time import settle_over_time
from followup.workflows.take_over import move_in, where_it_is
from followup.workflows.tell_staff import tell_staff
from followup.workflows.watch_stops import watch_stops

# When nothing else is due sooner, planning looks again.
PLAN_AGAIN_AFTER = timedelta(hours=6)
# How often the provider is asked what customers wrote.
HEAR_EVERY = timedelta(minutes=1)
# How often what came in is answered, and what is due sent: the ticks by which health is judged.
EVERY = {"answer": timedelta(seconds=1), "send": timedelta(seconds=1)}
# Cars of which one tick scores the forecasts: about a second.
SCORED_A_TICK = 40

__all__ = ["DatabaseMoved", "House", "open_house"]


@dataclass
class House:
    """A running installation: pages, commands and ticks call its methods, or hand its `store` to a workflow."""

    settings: Settings
    store: Store
    transport: Transport
    # Set when the process is to end: what waits goes on at once, what sends ends after the text it is at.
    stopping: threading.Event = field(default_factory=threading.Event)
    # Not in the process that serves the pages: whoever posts waits, and reading a text takes many times as long as
    # keeping it.
    answers_at_once: bool = True
    # Until when a shop's number rests after a refusal that every text would meet; another process asks for itself.
    _rests: dict[int, datetime | None] = field(default_factory=dict)
    # When this process last asked the provider what customers of a shop wrote.
    _asked_at: dict[int, datetime] = field(default_factory=dict)

    def now(self) -> datetime:
        """This instant, aware, UTC."""
        return clock.now()

    @property
    def ledger_secret(self) -> str:
        """Keys the hash of numbers in the ledger."""
        return self.settings.secret("ledger_hash_key")

    @property
    def needs_registration(self) -> bool:
        """True where texts would reach real US phones and the carriers' registration is not in the settings."""
        return self.transport.address is not None and not self.settings.is_registered_in_us

    # The hooks ---------------------------------------------------------------------------------------------------
    def is_genuine(self, url: str, fields: Fields, headers: Headers) -> bool:
        """Whether a posted form was signed by the provider."""
        return self.transport.is_genuine(url, fields, headers)

    def receive_text(self, fields: Fields) -> bool:
        """Keep a text that came in; False where the form lacks what it must hold.

        True as soon as it is kept: what is not answered here, or fails, is done by the clock's tick.
        """
        try:
            text = self.transport.read_inbound(fields)
        except ForeignHook as foreign:
            keep_foreign(self.store, foreign.about, self.now())
            return True
        except UnusableHook:
            return False
        kept = keep_inbound(self.store, text, self.now())
        if kept.inbound_id is not None and self.answers_at_once:
            self._answer(kept.inbound_id)
        return True

    def _answer(self, inbound_id: int) -> None:
        from followup.workflows.answer_inbound import answer_inbound  # read by others than the pages

        try:
            answer_inbound(self.store, inbound_id, self.now(), self.ledger_secret)
        except Exception:
            logging.getLogger(__name__).exception("inbound %s was kept but not answered yet", inbound_id)

    def receive_status(self, public_id: str, attempt: int, fields: Fields) -> bool:
        """Keep what became of a text of ours; False where the form lacks what it must hold."""
        try:
            report = self.transport.read_status(fields)
        except ForeignHook as foreign:
            keep_foreign(self.store, foreign.about, self.now())
            return True
        except UnusableHook:
            return False
        keep_status(self.store, public_id, attempt, report, self.now(), self.ledger_secret)
        return True

    # Coming in ---------------------------------------------------------------------------------------------------
    def keep_inspections(
        self, shop_id: int, lines: Iterable[str], kept_by: str, *, accepts_doubtful: bool = False,
        is_check: bool = False, is_by_hand: bool = False,
    ) -> Iterator[KeptLine]:  # fmt: skip
        """Keep lines of the inspection contract; call `forecast` afterwards."""
        return keep_inspections(
            self.store, shop_id, lines, self.now(), kept_by, self.ledger_secret, accepts_doubtful=accepts_doubtful,
            is_check=is_check, is_by_hand=is_by_hand,
        )  # fmt: skip

    def keep_inspection(
        self, shop_id: int, line: str, kept_by: str, *, accepts_doubtful: bool = False, is_by_hand: bool = False
    ) -> KeptLine:
        """Keep one line and forecast its car at once."""
        lines = self.keep_inspections(
            shop_id, [line], kept_by, accepts_doubtful=accepts_doubtful, is_by_hand=is_by_hand
        )
        kept = next(iter(lines))
        if kept.outcome in ("new", "corrected") and kept.vehicle_id is not None:
            forecast_windows(self.store, shop_id, self.now(), [kept.vehicle_id])
        return kept

    # The clock's ticks ---------------------------------------------------------------------------------------------
    def forecast(self, shop_id: int, progress: Any = None) -> int:
        """Forecast every car that has news."""
        return forecast_windows(self.store, shop_id, self.now(), progress=progress)

    def forecast_and_plan(self, shop_id: int, most: int | None = None) -> int:
        """Forecast every car that has news, or so many, and plan at once for whoever has one; how many cars."""
        return forecast_news(self.store, shop_id, self.now, most, partial(self.plan, shop_id))

    def score(self, shop_id: int, most_cars: int | None = None, progress: Any = None) -> int:
        """Score the forecasts of cars that have news, or of so many of them."""
        return score_forecasts(self.store, shop_id, self.now(), most_cars, progress)

    def score_some(self, shop_id: int) -> int:
        """The same for a handful of cars, so that a tick stays short; the next one goes on."""
        return self.score(shop_id, SCORED_A_TICK)

    def pace(self, shop_id: int) -> int | None:
        """Pace invites into the coming weeks, once a day of the shop and after each change of its rules."""
        return pace_invites(self.store, shop_id, self.now(), needs_registration=self.needs_registration)

    def plan(self, shop_id: int, cars: list[int] | None = None) -> int:
        """Plan what is due, for all customers or those of some cars, by the weeks paced into; and fleets' lists."""
        try:
            self.pace(shop_id)
        except Exception:
            # Without it texts go by the night before, or unpaced: better than none.
            logging.getLogger(__name__).exception("invites of shop %s could not be paced", shop_id)
        planned = plan_texts(self.store, shop_id, self.now(), cars, needs_registration=self.needs_registration)
        return planned + plan_fleet_lists(self.store, shop_id, self.now())

    def answer(self, shop_id: int) -> int:
        """Answer texts that were kept but not answered."""
        from followup.workflows.answer_inbound import answer_waiting

        return answer_waiting(self.store, shop_id, self.now(), self.ledger_secret)

    def hear(self, shop_id: int) -> int:
        """Keep what customers wrote while no hook of ours was there, and answer it, stops first; how many texts."""
        self._asked_at[shop_id] = self.now()
        try:
            kept = keep_missed(self.store, self.transport, shop_id, self.now())
        except LookUpFailed as failed:
            logging.getLogger(__name__).warning("what customers wrote could not be fetched: %s", failed)
            return 0
        if kept:
            logging.getLogger(__name__).info("%s texts were fetched that no hook had kept", kept)
            self.answer(shop_id)
        return kept

    def _has_heard(self, shop_id: int) -> bool:
        """Whether all is kept that customers wrote until lately: somebody may have stopped the texts."""
        asked_at, now = self._asked_at.get(shop_id), self.now()
        if not self._was_heard(shop_id) and not (asked_at is not None and asked_at <= now < asked_at + HEAR_EVERY):
            self.hear(shop_id)
        return self._was_heard(shop_id)

    def _was_heard(self, shop_id: int) -> bool:
        with self.store.read() as connection:
            heard_at = inbox.heard_at(connection, shop_id)
        return heard_at is not None and heard_at <= self.now() <= heard_at + inbox.HEARD_WITHIN

    def tell(self, shop_id: int) -> int:
        """Tell who is on duty."""
        return tell_staff(self.store, shop_id, self.now())

    def send(self, shop_id: int, worker: str = "work") -> SentCount:
        """Send what is due; who is on duty is told before, so that a caution may say so.

        After a silence nothing but alerts and answers leaves until it is known what customers wrote meanwhile.
        """
        self.tell(shop_id)
        sender = Sender(
            transport=self.transport,
            public_base_url=self.settings.public_base_url,
            link_base=self.settings.link_base,
            is_registered=self.settings.is_registered_in_us,
            # Texts that stay on this machine need no carrier's pace.
            segments_per_second=self.settings.sender_segments_per_second if self.transport.address else None,
            secret=self.ledger_secret,
            wait=self.stopping.wait,
            at_once=self.settings.sender_texts_at_once,
            is_over=self.stopping.is_set,
            rests_until=self._rests.get(shop_id),
            holds_back=() if self._has_heard(shop_id) else ("visit", "invite"),
        )
        done = send_texts(self.store, shop_id, sender, self.now, worker)
        self._rests[shop_id] = done.rests_until
        return done

    def watch_stops(self, shop_id: int) -> int:
        """See whether more customers stop than the shop bears."""
        return watch_stops(self.store, shop_id, self.now())

    def learn(self, shop_id: int, author: str, progress: Any = None) -> LearnedRun:
        """Learn the shop's own priors now."""
        return learn_priors(self.store, shop_id, self.now(), author, progress)

    def learn_at_night(self, shop_id: int) -> LearnedRun | None:
        """Learn the shop's own priors where it is night there and there is news."""
        return learn_at_night(self.store, shop_id, self.now())

    def look_up(self, shop_id: int) -> int:
        """Look up texts of which nobody knows whether they went out."""
        return look_up_unknown(self.store, self.transport, shop_id, self.now())

    def settle(self, shop_id: int) -> int:
        """Let offers that were not taken go back, and settle what time settled."""
        return settle_over_time(self.store, shop_id, self.now())

    def next_due(self, now: datetime) -> datetime:
        """The next instant after `now` at which something may be due."""
        with self.store.read() as connection:
            found = queue.next_instants(connection, now)
        # Texts may wait until it is known who wrote.
        is_unheard = not all(self._was_heard(shop_id) for shop_id, _ in self.shops())
        return min([*found, now + (HEAR_EVERY if is_unheard else PLAN_AGAIN_AFTER)])

    def shops(self) -> list[tuple[int, str]]:
        """Every shop's id and code."""
        with self.store.read() as connection:
            return shops.shop_codes(connection)

    def take_lease(self, name: str, holder: str, lasts: timedelta) -> int | None:
        """Take or renew a lease of the processes among themselves: its term, or None where another holds it."""
        with self.store.write() as connection:
            return machine.take_lease(connection, name, holder, lasts)

    def keep_lease(self, name: str, holder: str, term: int, lasts: timedelta, *, is_long: bool = False) -> bool:
        """Whether the lease is still held in that term; renewed where half of it is over, or at once for long work."""
        with self.store.read() as connection:
            left = machine.lease_left(connection, name, holder, term)
        if left > lasts / 2 and not is_long:
            return True
        if not left:
            return False
        with self.store.write() as connection:
            return machine.keep_lease(connection, name, holder, term, lasts)

    def give_back_lease(self, name: str, holder: str) -> None:
        """Let another process take over at once."""
        with self.store.write() as connection:
            machine.give_back_lease(connection, name, holder)

    def last_beats(self) -> dict[str, datetime]:
        """When each tick last ran."""
        with self.store.read() as connection:
            return machine.last_beats(connection)

    def beat(self, names: Iterable[str]) -> None:
        """Say that these ticks ran."""
        with self.store.write() as connection:
            machine.beat(connection, names, self.now())

    def upgrade_database(self) -> None:
        """Bring the database to what this version needs."""
        from followup.storage import schema

        schema.upgrade(self.store.engine)

    def shop(self, shop_id: int) -> Shop:
        """One shop with its present rules."""
        with self.store.read() as connection:
            return shops.load_shop(connection, shop_id)

    def database_differences(self) -> list[str]:
        """What the database has otherwise than this version needs; [] where all is well."""
        from followup.storage import schema

        with self.store.engine.connect() as connection:
            return schema.differences(connection)

    def what_is_wrong(self) -> list[str]:
        """What keeps the program from working, for a watcher from outside; [] where all is well."""
        return look_at_health(self.store, self.now(), EVERY)

    def has_moved(self) -> bool:
        """True where the database was moved away and keeps nothing any more."""
        return where_it_is(self.store).state == "moved"

    def move_in(self) -> bool:
        """Take a new database for the shop; False where it is a copy or was moved away, so that nothing leaves."""
        return move_in(self.store, self.now())

    # The test phone ------------------------------------------------------------------------------------------------
    def write_as_customer(self, shop_id: int, number: str, body: str) -> tuple[str, dict[str, str], dict[str, str]]:
        """What the test phone posts when a customer writes: the hook's address, the form and its signed headers."""
        with self.store.read() as connection:
            to = shops.load_shop(connection, shop_id).texts_from
        fields = inbound_fields(number, to, body)
        url = f"{self.settings.public_base_url}/hooks/texts"
        with self.store.write() as connection:
            test_phone.keep(connection, shop_id, number, "from_phone", body, fields["id"], self.now())
        return url, fields, signed_post(url, fields, token_from(self.settings.secret("secret_key")))

    def close(self) -> None:
        """Give back every connection."""
        self.store.close()


def open_house(settings: Settings | None = None) -> House:
    """Open the installation that the settings describe."""
    settings = settings or read_settings()
    store = Store(make_engine(settings.database_url))
    transport = choose(
        settings, deliver=partial(_deliver, store), look_up=partial(_look_up, store), written=partial(_written, store)
    )
    return House(settings, store, transport)


def _deliver(store: Store, text: OutgoingText, provider_id: str) -> None:
    """Show a text on the test phone."""
    with store.write() as connection:
        shop_id = shops.shop_of_number(connection, text.sender)
        if shop_id is None:
            raise LookupError("No shop texts from that number.")
        test_phone.keep(connection, shop_id, text.to, "to_phone", text.body, provider_id, clock.now())


def _look_up(store: Store, to: str, since: datetime) -> list[Found]:
    """What the test phone was shown since then."""
    found = []
    with store.read() as connection:
        for shop_id, _ in shops.shop_codes(connection):
            sender = shops.load_shop(connection, shop_id).texts_from
            for row in test_phone.texts_since(connection, shop_id, "to_phone", since):
                if row["number"] == to:
                    found.append(Found(row["provider_id"], to, sender, row["body"], row["at"], "delivered"))
    return found


def _written(store: Store, since: datetime) -> list[InboundText]:
    """What was written on the test phone since then."""
    found = []
    with store.read() as connection:
        for shop_id, _ in shops.shop_codes(connection):
            to = shops.load_shop(connection, shop_id).texts_from
            for row in test_phone.texts_since(connection, shop_id, "from_phone", since):
                found.append(InboundText(row["provider_id"], row["number"], to, row["body"], received_at=row["at"]))
    return found
