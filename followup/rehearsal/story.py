"""The story: once through the whole program, from an inspection to a confirmed booking, over its real doors.

The inspection comes in over HTTP with a token, the clock is moved, the work process forecasts, plans and sends, the
customer answers on the test phone (which posts to the same signed hook as a provider), an advisor signs in and confirms
on the page, and the confirmation arrives. Nothing is called behind the doors; only what is printed is read from the
store.
"""

from __future__ import annotations

import json
import re
import threading
from collections.abc import Callable
from datetime import datetime, timedelta
from html import unescape
from typing import Any

import requests

from followup import clock
from followup.core.forecast.window import DueCurve
from followup.core.planning.worth import WornAhead, days_until_worn_worth, days_until_worth
from followup.core.wall import day_of, to_utc, to_wall
from followup.rehearsal.demo_shop import PASSWORD, DemoShop
from followup.storage import inbox, outbox, people, shops, test_phone, windows
from followup.storage import requests as booking_requests
from followup.storage.rows import Row
from followup.wiring import House, open_house
from followup.workflows.keep_tokens import new_token

NUMBER = "+13125550188"
REPLY = "tues morning works, i can wait there"
WAITS_SECONDS = 60
TIMEOUT_SECONDS = 20
Say = Callable[[str], object]


class StoryBroken(Exception):
    """A step of the story did not come."""


def tell_story(demo: DemoShop, say: Say) -> None:
    """Walk the story and print one line a step. Raises `StoryBroken`."""
    house = open_house()
    try:
        with house.store.read() as connection:
            shop_id = shops.shop_codes(connection)[0][0]
        _Story(house, shop_id, demo.address, say).walk()
    finally:
        house.close()


class _Story:
    def __init__(self, house: House, shop_id: int, address: str, say: Say) -> None:
        self.house, self.shop_id, self.address, self.say = house, shop_id, address, say
        with house.store.read() as connection:
            self.shop = shops.load_shop(connection, shop_id)

    def walk(self) -> None:
        """The steps in order."""
        self.inspect()
        first = self.forecast()
        self.wait_for_its_day(first)
        self.plan_and_send()
        self.reply()
        request = self.request()
        self.confirm(request)

    def inspect(self) -> None:
        """An inspection arrives over HTTP, with the consent that was given at the counter."""
        token = new_token(self.house.store, self.shop_id, "story", self.house.now(), "the story")
        line = _inspection(to_wall(self.house.now(), self.shop.zone))
        answer = requests.post(
            f"{self.address}/api/v1/inspections",
            data=json.dumps(line),
            headers={"Authorization": f"Bearer {token}", "Content-Type": "application/json"},
            timeout=TIMEOUT_SECONDS,
        )
        if answer.status_code != 201:
            raise StoryBroken(f"the inspection was answered with {answer.status_code}: {answer.text[:300]}")
        measured = "front tires 5/32, front pads 4.5 mm, 46,210 mi"
        self.say(f"inspection: {line['inspection']}, {line['vehicle']['label']}, {measured}")
        opted_in = self._until(lambda: self._shown("to_phone", 1), "the one confirmation of the consent")
        self.say(f"sent text: {_line(opted_in['body'])}")

    def forecast(self) -> datetime:
        """Its due windows; returns the instant from which the first item is worth a text."""
        rows = self._until(self._windows, "due windows")
        rules, days = self.shop.rules, []
        told, worn = [], []
        for row in rows:
            curve = DueCurve.from_json(row["body"]["curve"])
            near = row["body"].get("near")
            if near:
                worn.append(WornAhead(curve, DueCurve.from_json(near)))
            else:
                days.append(days_until_worth(curve, rules))
            if row["item"] in ("tire_tread", "brake_pad") and row["position"].endswith("left"):
                likely = row["body"]["likely"] or "no date yet"
                told.append(f"{row['item']} {row['position']} around {likely}")
        self.say(f"due windows: {'; '.join(told)}")
        days.append(days_until_worn_worth(worn, rules))
        wait = max(min(days), float(rules.rest_after_visit_days))
        return self.house.now() + timedelta(days=wait + 1)

    def _windows(self) -> list[Row]:
        with self.house.store.read() as connection:
            vehicle = people.find_vehicle(connection, self.shop_id, VEHICLE)
            return windows.windows_of(connection, vehicle["id"]) if vehicle else []

    def wait_for_its_day(self, at: datetime) -> None:
        """Move the clock to a working day's late morning on or after that instant."""
        day = day_of(at, self.shop.zone)
        while day.weekday() > 3:
            day += timedelta(days=1)
        clock.move_to(
            to_utc(datetime.combine(day, datetime.min.time()) + timedelta(hours=10, minutes=30), self.shop.zone)
        )
        clock.let_run()

    def plan_and_send(self) -> None:
        """The work process plans and sends; a week later again, should a holiday or another text have been before."""
        for _ in range(8):
            planned = self._soon(self._invite, seconds=12)
            if planned:
                break
            clock.move_by(timedelta(days=7))
        else:
            raise StoryBroken("no text was planned within eight weeks")
        due = to_wall(planned["due_at"], self.shop.zone)
        self.say(f"planned text: {planned['reason']} for {due:%Y-%m-%d %H:%M}, because {planned['facts']['because']}")
        if planned["state"] == "planned" and planned["due_at"] > self.house.now():
            clock.move_to(planned["due_at"] + timedelta(minutes=1))
            clock.let_run()
        sent = self._until(lambda: self._shown("to_phone", 2), "the sent text")
        self.say(f"sent text: {_line(sent['body'])}")

    def _invite(self) -> Row | None:
        with self.house.store.read() as connection:
            phone = people.find_phone(connection, self.shop_id, NUMBER)
            rows = outbox.texts_of_phone(connection, phone["id"]) if phone else []
        return next((row for row in rows if row["kind"] == "invite" and row["state"] in ("planned", "sent")), None)

    def _shown(self, direction: str, count: int) -> Row | None:
        """The text of that number on the test phone, where there are so many: the opt-in confirmation was the first."""
        with self.house.store.read() as connection:
            rows = test_phone.texts_of(connection, self.shop_id, NUMBER)
        found = [row for row in rows if row["direction"] == direction]
        return found[count - 1] if len(found) >= count else None

    def reply(self) -> None:
        """The customer answers on the test phone."""
        url, form, headers = self.house.write_as_customer(self.shop_id, NUMBER, REPLY)
        answer = requests.post(url, data=form, headers=headers, timeout=TIMEOUT_SECONDS)
        if answer.status_code != 204:
            raise StoryBroken(f"the hook answered with {answer.status_code}")
        self.say(f"reply: {REPLY}")

    def request(self) -> Row:
        """A booking request, and the answer that reads the day back."""
        found: Row = self._until(self._request, "the booking request")
        with self.house.store.read() as connection:
            inbound = inbox.load_inbound(connection, found["inbound_id"])
        times = ", ".join(f"{one['start']} to {one['end']}" for one in found["wanted"])
        verbatim = inbound["body"] if inbound else ""
        self.say(f'booking request: "{verbatim}" understood as {times or "no time"}, needs {", ".join(found["needs"])}')
        answer = self._until(lambda: self._shown("to_phone", 3), "the answer")
        self.say(f"answer: {_line(answer['body'])}")
        return found

    def _request(self) -> Row | None:
        with self.house.store.read() as connection:
            open_now = booking_requests.open_requests(connection, self.shop_id)
            phone = people.find_phone(connection, self.shop_id, NUMBER)
        return next((row for row in open_now if phone and row["phone_id"] == phone["id"]), None)

    def confirm(self, request: Row) -> None:
        """An advisor signs in, notes that no parts are needed, and presses the first free time."""
        session = requests.Session()
        page = _page(session, f"{self.address}/sign-in")
        _submit(session, self.address, page, "sign-in", {"login": "noor", "password": PASSWORD})
        at = f"{self.address}/advisor/requests/{request['id']}"
        _submit(session, self.address, _page(session, at), "parts", {"parts": "not_needed"})
        page = _page(session, at)
        first = re.search(r'<button form="confirm" name="start" value="([^"]+)"', page)
        if first is None:
            raise StoryBroken("no time is free")
        _submit(session, self.address, page, "/confirm", {"start": unescape(first[1])})
        confirmed = self._until(lambda: self._shown("to_phone", 4), "the confirmation")
        self.say(f"confirmation: {_line(confirmed['body'])}")

    def _until(self, look: Callable[[], Any], what: str) -> Any:
        found = self._soon(look, WAITS_SECONDS)
        if not found:
            raise StoryBroken(f"{what} did not come within {WAITS_SECONDS} s")
        return found

    def _soon(self, look: Callable[[], Any], seconds: float) -> Any:
        for _ in range(int(seconds * 5)):
            found = look()
            if found:
                return found
            threading.Event().wait(0.2)
        return None


def _line(body: str) -> str:
    return " ".join(body.split())


def _page(session: requests.Session, url: str) -> str:
    answer = session.get(url, timeout=TIMEOUT_SECONDS)
    if answer.status_code != 200:
        raise StoryBroken(f"{url} answered with {answer.status_code}")
    return answer.text


_FORM = re.compile(r"<form\b[^>]*>.*?</form>", re.DOTALL)
_FIELD = re.compile(r"<(?:input|button|select)\b[^>]*>")


def _submit(session: requests.Session, address: str, page: str, ends_with: str, values: dict[str, str]) -> None:
    """Fill in the first form whose address ends with that word, as it stands on the page, and send it."""
    for form in _FORM.findall(page):
        action = _attribute(form[: form.index(">") + 1], "action") or "/sign-in"
        if not action.partition("?")[0].endswith(ends_with):
            continue
        filled: dict[str, str] = {}
        for field in _FIELD.findall(form):
            name, kind = _attribute(field, "name"), _attribute(field, "type")
            is_left_out = kind in ("checkbox", "radio") and " checked" not in field
            if name and name not in filled and not is_left_out:
                filled[name] = _attribute(field, "value") or ""
        answer = session.post(address + action, data={**filled, **values}, timeout=TIMEOUT_SECONDS)
        if answer.status_code != 200:
            raise StoryBroken(f"{action} answered with {answer.status_code}")
        return
    raise StoryBroken(f"there is no form that ends with {ends_with}")


def _attribute(tag: str, name: str) -> str | None:
    found = re.search(rf'\b{name}="([^"]*)"', tag)
    return unescape(found[1]) if found else None


VEHICLE = "V-900"


def _inspection(wall: datetime) -> dict[str, Any]:
    """The story's inspection, as a workshop's own program would send it."""
    sides = ("left", "right")
    tread = [
        {"item": "tire_tread", "position": f"{axle}_{side}", "unit": "32nds", "value": depth}
        for axle, depth in (("front", 5), ("rear", 7))
        for side in sides
    ]
    pads = [
        {"item": "brake_pad", "position": f"{axle}_{side}", "unit": "mm", "value": mm, "how": "wheel_off"}
        for axle, mm in (("front", 4.5), ("rear", 7.0))
        for side in sides
    ]
    consent = {
        "covers": ["visits", "upkeep", "offers"],
        "given_on": wall.date().isoformat(),
        "how": "tablet",
        "words": "Texts about visits, upkeep and offers, at this number, as read out and agreed at the counter.",
        "words_version": "story",
        "language": "en",
        "number_is_own_and_adult": True,
    }
    return {
        "inspection": "I-9000",
        "inspected_at": wall.isoformat(timespec="minutes"),
        "odometer": 46210,
        "unit": "mi",
        "technician": "Rui Tamayo",
        "customer": {"id": "C-900", "name": "Lena Oduya", "phone": NUMBER, "language": "en", "consent": consent},
        "vehicle": {
            "id": VEHICLE,
            "label": "2020 blue hatchback",
            "class": "car",
            "driven": "front",
            "first_used_on": "2020-04-14",
            "powertrain": "gasoline",
        },
        "readings": [*tread, *pads],
    }
