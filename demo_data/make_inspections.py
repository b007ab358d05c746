"""Write `inspections.jsonl`: three years of an invented shop's inspections, the same bytes every time.

Run `python demo_data/make_inspections.py`; `--to FILE` writes elsewhere.
"""

from __future__ import annotations

import argparse
import json
from datetime import date, datetime, time, timedelta
from pathlib import Path
from typing import Any

from sheet import Sheet
from town import Dice, Owner, cars_of, owners_of
from wear import Car

from followup.core.vehicle import AXLES

SEED = 20_261_123
TECHNICIANS = ("Rui Tamayo", "Rui Tamayo", "Greta Lind", "Pavel Dorn")
ADVISORS = ("Noor Haddad", "Jonah Pike")
FIRST_DAY = date(2023, 12, 1)
LAST_DAY = date(2026, 11, 20)
# The cars that have a second set of tires for the winter, and the one whose odometer counts kilometers.
WINTER_CARS, KM_CAR = ("V-207", "V-248"), "V-219"
# Cars with an approaching limit: nothing was done at their last inspection, so that the demo has something to say.
LEFT_AS_FOUND = tuple(f"V-{number}" for number in range(201, 281, 4))
OPEN_CAR = "V-226"
DO_BELOW = {"tire_tread": 4.0, "brake_pad": 3.0, "brake_shoe": 2.0}
Told = dict[str, Any]
Line = tuple[datetime, Told]


def is_open_on(day: date) -> bool:
    """Closed on Sundays and the fixed holidays."""
    is_thanksgiving = day.month == 11 and day.weekday() == 3 and 22 <= day.day <= 28
    return day.weekday() != 6 and (day.month, day.day) not in ((1, 1), (7, 4), (12, 25)) and not is_thanksgiving


class History:
    """All lines of one car."""

    def __init__(self, dice: Dice, owner: Owner, told: Told) -> None:
        self.dice, self.owner, self.told = dice, owner, told
        self.car = Car(dice, told)
        self.last: dict[tuple[str, str], float] = {}
        self.lines: list[Line] = []

    def days(self) -> list[date]:
        """The days of its inspections, at most six, the last some weeks to months before the demo."""
        day = LAST_DAY - timedelta(days=self.dice.whole(18, 150))
        found: list[date] = []
        earliest = max(FIRST_DAY, self.car.day + timedelta(days=60))
        wanted = self.dice.one_of((1, 2, 3, 3, 4, 4, 5, 6))
        while day > earliest and len(found) < wanted:
            while not is_open_on(day):
                day -= timedelta(days=1)
            found.append(day)
            day -= timedelta(days=int(min(max(self.dice.about(185, 0.35), 60), 500)))
        return found[::-1] or [LAST_DAY - timedelta(days=31)]

    def write(self) -> list[Line]:
        """Every inspection and visit, oldest first."""
        days = self.days()
        for place, day in enumerate(days):
            self.car.drive_to(day)
            self.inspect(place, is_last=place == len(days) - 1)
        return self.lines

    def inspect(self, place: int, is_last: bool) -> None:
        """One inspection, the visit that it belongs to, and what was done and advised in it."""
        at = datetime.combine(self.car.day, time(8)) + timedelta(minutes=5 * self.dice.whole(0, 60))
        if self.told["id"] in WINTER_CARS:
            self.change_set("winter" if at.month in (11, 12, 1, 2, 3) else "summer")
        technician = self.dice.one_of(TECHNICIANS)
        sheet = Sheet(self.dice, self.car, self.last, technician)
        line = self.head(place, at, technician)
        line["readings"] = sheet.readings(is_first=place == 0)
        self.last |= sheet.number
        work = self.elsewhere()
        advice: list[Told] = []
        rests = is_last and self.told["id"] in LEFT_AS_FOUND
        for item, axle in self.too_low(sheet):
            self.decide(item, axle, is_done=not rests and self.dice.chance(0.6), work=work, advice=advice)
        self.top_off(line["readings"], work)
        self.care(line["readings"], rests, work, advice)
        line |= {"work_done": work} if work else {}
        line |= {"recommended": advice} if advice else {}
        self.lines.append((at, line))
        self.visit(place, at, line)

    def head(self, place: int, at: datetime, technician: str) -> Told:
        """Who, when, which car; consent is told with the owner's first line."""
        customer = dict(self.owner.told)
        if self.owner.consent is not None and place == 0:
            customer["consent"] = self.owner.consent | {"given_on": at.date().isoformat()}
        is_km = self.told["id"] == KM_CAR
        line: Told = {"inspection": f"I-{self.told['id'][2:]}{place + 1:02d}", "inspected_at": f"{at:%Y-%m-%dT%H:%M}"}
        line |= {"odometer": int(self.car.miles * (1.609344 if is_km else 1)), "unit": "km" if is_km else "mi"}
        line |= {"technician": technician, "customer": customer, "vehicle": self.told}
        return line | ({"tire_set": self.car.tire_set} if self.car.tire_set else {})

    def change_set(self, tire_set: str) -> None:
        """The other set of tires: their last readings belong to the set, not to the place."""
        if self.car.tire_set not in (None, tire_set):
            self.last = {key: value for key, value in self.last.items() if key[0] != "tire_tread"}
        self.car.mount(tire_set)

    def elsewhere(self) -> list[Told]:
        """What others did since the last time, as the owner tells it."""
        done, self.car.elsewhere = self.car.elsewhere, []
        return [{**one, "unit": "mi"} for one in done]

    def too_low(self, sheet: Sheet) -> list[tuple[str, str]]:
        """Items and axles whose reading is at or below the shop's limit."""
        found = []
        for item, limit in DO_BELOW.items():
            for axle in self.car.axles(item):
                read = [sheet.number[item, side] for side in AXLES[axle] if (item, side) in sheet.number]
                if read and min(read) <= limit:
                    found.append((item, axle))
        return found

    def decide(self, item: str, axle: str, is_done: bool, work: list[Told], advice: list[Told]) -> None:
        """Recommend; done at once where the customer agrees."""
        told: Told = {"item": item, "position": axle}
        if is_done:
            self.renew(item, axle)
            work.append({**told, "did": "replaced"})
            advice.append({**told, "decision": "approved"})
            return
        decision = self.dice.one_of(("later", "declined", "no_answer", "later"))
        told |= {"decision": decision, "told_by": self.dice.one_of(ADVISORS)}
        if decision == "declined":
            told["why"] = self.dice.one_of(("price", "time", "elsewhere", "think"))
        elif decision == "later":
            told["until"] = (self.car.day + timedelta(days=self.dice.whole(30, 150))).isoformat()
        advice.append(told)

    def renew(self, item: str, axle: str) -> None:
        """New parts on an axle: the next reading starts from them."""
        self.car.replace(item, axle)
        for side in AXLES[axle]:
            self.last.pop((item, side), None)

    def top_off(self, readings: list[Told], work: list[Told]) -> None:
        """What is low is topped off at once; it is free."""
        for one in readings:
            fluid = one["item"]
            if one.get("level") in ("low", "empty") and fluid in self.car.down:
                self.car.down[fluid] = 0.0
                work.append({"item": fluid, "did": "topped_off"} | ({"quarts": 1} if fluid == "engine_oil" else {}))

    def care(self, readings: list[Told], rests: bool, work: list[Told], advice: list[Told]) -> None:
        """Oil, rotation, wipers, filters, battery and brake fluid."""
        car = self.car
        if car.line.powertrain != "electric" and car.miles - car.oil_done[1] > 3_000 and not rests:
            car.oil_done, car.down["engine_oil"] = (car.day, car.miles), 0.0
            work.append({"item": "oil_service", "did": "serviced"})
        may_rotate = car.line.tire_size_front == car.line.tire_size_rear and not car.tire_set
        if may_rotate and car.miles - car.rotated_at > 7_000 and self.dice.chance(0.35):
            work.append({"item": "tire_tread", "did": "rotated", "moved": car.rotate()})
            self.last = {key: value for key, value in self.last.items() if key[0] != "tire_tread"}
        for one in readings:
            item = one["item"]
            is_bad = one.get("looks") in ("streaks", "dirty") or one.get("verdict") == "replace"
            if item not in car.since or not (is_bad or one.get("water_percent", 0) >= 3):
                continue
            place = {"position": one["position"]} if "position" in one else {}
            if not rests and self.dice.chance(0.85):
                car.since[item] = car.day
                work.append({"item": item, **place, "did": "replaced"})
            else:
                why = {"decision": "no_answer", "told_by": self.dice.one_of(ADVISORS)}
                advice.append({"item": item, **place, **why})

    def visit(self, place: int, at: datetime, line: Told) -> None:
        """Most inspections belong to a visit, which is closed the same day."""
        if not self.dice.chance(0.6):
            return
        code = f"RO-{self.told['id'][2:]}{place + 1:02d}"
        line["visit"] = code
        closed_at = at + timedelta(minutes=15 * self.dice.whole(3, 20))
        told = {"visit": code, "vehicle": self.told["id"], "opened_at": f"{at - timedelta(minutes=10):%Y-%m-%dT%H:%M}"}
        told |= {"closed_at": f"{closed_at:%Y-%m-%dT%H:%M}", "odometer": line["odometer"], "unit": line["unit"]}
        self.lines.append((closed_at, told))

    def stand_open(self) -> list[Line]:
        """A visit that is still open on the day of the demo."""
        at = datetime.combine(LAST_DAY, time(15, 30))
        self.car.drive_to(LAST_DAY)
        told = {"visit": f"RO-{self.told['id'][2:]}90", "vehicle": self.told["id"], "opened_at": f"{at:%Y-%m-%dT%H:%M}"}
        return [(at, told | {"closed_at": None, "odometer": int(self.car.miles), "unit": "mi"})]


def all_lines() -> list[Told]:
    """Every line of the town, in the order of time."""
    dice = Dice(SEED)
    lines: list[Line] = []
    has_told: set[str] = set()
    for owner, told in cars_of(dice, owners_of(dice)):
        history = History(dice, owner, told)
        if owner.told["id"] in has_told:
            history.owner = Owner(owner.told, None)
        has_told.add(owner.told["id"])
        lines += history.write()
        if told["id"] == OPEN_CAR:
            lines += history.stand_open()
    return [line for _, line in sorted(lines, key=lambda one: one[0])]


def main() -> None:
    """Write the file."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--to", type=Path, default=Path(__file__).with_name("inspections.jsonl"))
    to: Path = parser.parse_args().to
    text = "".join(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n" for line in all_lines())
    to.write_text(text, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
