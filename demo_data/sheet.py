"""What a technician writes down about a car of the demo: readings with the errors of hand and gauge."""

from __future__ import annotations

from typing import Any

from town import Dice
from wear import Car

from followup.core.date_code import week_begins_on
from followup.core.items import BY_CODE
from followup.core.vehicle import AXLES, CORNERS

Told = dict[str, Any]
# A difference of sides over this is measured again, and then it is less.
SIDES_APART = 2.0
DISCARD_MM = {"front": 23.0, "rear": 9.0}


class Sheet:
    """One inspection of one car; `last` are the last readings, which the technician sees beside the field."""

    def __init__(self, dice: Dice, car: Car, last: dict[tuple[str, str], float], technician: str) -> None:
        self.dice, self.car, self.last = dice, car, last
        # One of them reads tread in tenths of a millimeter.
        self.is_metric = technician == "Greta Lind"
        self.number: dict[tuple[str, str], float] = {}

    def readings(self, is_first: bool) -> list[Told]:
        """All that was looked at, in walking order, item by item."""
        found = [*self._treads(is_first), *self._pads(), *self._shoes(), *self._rotors()]
        found += [*self._brake_fluid(), *self._levels(), *self._by_looks(), *self._battery(), *self._rest(is_first)]
        return [one for one in found if BY_CODE[one["item"]].exists_on(self.car.line.vehicle())]

    def _read(self, item: str, position: str, error: float, step: float) -> float:
        """A reading of what is left: rounded to the gauge, and looked at twice where it seems to have grown."""
        true = self.car.left[item, position]
        read = round((true + self.dice.near(0, error)) / step) * step
        before = self.last.get((item, position))
        if before is not None:
            read = min(read, before)
        for left, right in AXLES.values():
            if position in (left, right) and (other := self.number.get((item, left if position == right else right))):
                read = min(max(read, other - SIDES_APART), other + SIDES_APART)
        self.number[item, position] = read = round(max(read, 0.0), 2)
        return read

    def _treads(self, is_first: bool) -> list[Told]:
        found: list[Told] = []
        says_all = self.dice.chance(0.35)
        for place in CORNERS:
            depth = self._read("tire_tread", place, 0.4, 1.0)
            told: Told = {"item": "tire_tread", "position": place, "unit": "32nds"}
            if self.is_metric:
                told |= {"unit": "mm", "value": round(depth * 25.4 / 32, 1)}
            elif says_all:
                told["across"] = [int(depth) + self.dice.whole(0, 1), int(depth), int(depth)]
            else:
                told["value"] = int(depth)
            found.append(told)
            if is_first:
                found.append({"item": "tire_age", "position": place, "date_code": self._date_code()})
        return found

    def _date_code(self) -> str:
        day = self.car.tires_made_on
        week = max((day - week_begins_on(day.year, 1)).days // 7, 1)
        return f"{week:02d}{day.year % 100:02d}"

    def _pads(self) -> list[Told]:
        found: list[Told] = []
        wheel = self.dice.one_of(("wheel_off", "wheel_off", "wheel_on"))
        for axle in self.car.axles("brake_pad"):
            if self.dice.chance(0.06):
                reason = self.dice.one_of(("no_time", "locked_lug", "wheel_cover", "too_hot"))
                found += [{"item": "brake_pad", "position": side, "not_checked": reason} for side in AXLES[axle]]
                continue
            for side in AXLES[axle]:
                lowest = self._read("brake_pad", side, 0.3 if wheel == "wheel_off" else 0.5, 0.5)
                told: Told = {"item": "brake_pad", "position": side, "unit": "mm", "how": wheel}
                if wheel == "wheel_off":
                    told |= {"inner": lowest, "outer": lowest + self.dice.one_of((0, 0, 0.5))}
                else:
                    told["value"] = lowest
                found.append(told)
        return found

    def _shoes(self) -> list[Told]:
        if not self.car.axles("brake_shoe"):
            return []
        if self.dice.chance(0.7):
            return [{"item": "brake_shoe", "position": "rear", "not_checked": "drum"}]
        return [
            {"item": "brake_shoe", "position": side, "unit": "mm", "value": self._read("brake_shoe", side, 0.2, 0.5)}
            for side in AXLES["rear"]
        ]

    def _rotors(self) -> list[Told]:
        if not self.dice.chance(0.3):
            return []
        found = []
        for axle in self.car.axles("brake_rotor"):
            for side in AXLES[axle]:
                over = self._read("brake_rotor", side, 0.05, 0.1)
                looks = self.dice.one_of(("even", "even", "even", "rust_lip", "scored"))
                told = {"item": "brake_rotor", "position": side, "unit": "mm", "looks": looks}
                found.append(told | {"value": round(DISCARD_MM[axle] + over, 1), "minimum": DISCARD_MM[axle]})
        return found

    def _brake_fluid(self) -> list[Told]:
        if not self.dice.chance(0.5):
            return []
        changed_on = self.car.since["brake_fluid"]
        years = (self.car.day - changed_on).days / 365.25
        water = round(max(years * self.dice.between(0.85, 1.15), 0.1), 1)
        self.number["brake_fluid", ""] = water
        return [{"item": "brake_fluid", "water_percent": water, "changed_on": changed_on.isoformat()}]

    def _levels(self) -> list[Told]:
        found: list[Told] = []
        for fluid in ("engine_oil", "coolant", "washer_fluid", "diesel_exhaust_fluid"):
            level = self.car.mark(fluid)
            if fluid == "engine_oil" and self.car.line.oil_check == "none":
                level = "not_readable"
            found.append({"item": fluid, "level": level})
        if self.dice.chance(0.5) and self.car.line.powertrain != "electric":
            left = 100 * (1 - (self.car.miles - self.car.oil_done[1]) / 7_500)
            told: Told = {"item": "oil_service", "done_on": self.car.oil_done[0].isoformat(), "unit": "mi"}
            found.append(told | {"done_odometer": int(self.car.oil_done[1]), "life_percent": max(int(left), 0)})
        return found

    def _by_looks(self) -> list[Told]:
        found: list[Told] = []
        for item, life in (("wiper_blade", 330), ("cabin_filter", 560), ("engine_air_filter", 1_100)):
            age = (self.car.day - self.car.since[item]).days / life
            worn = "streaks" if item == "wiper_blade" else "dirty"
            looks = worn if age * self.dice.between(0.7, 1.3) > 1 else "even"
            told: Told = {"item": item, "looks": looks, "changed_on": self.car.since[item].isoformat()}
            if item == "wiper_blade":
                found.append(told | {"position": "front"})
            elif self.dice.chance(0.35):
                found.append(told)
        return found

    def _battery(self) -> list[Told]:
        if self.dice.chance(0.4):
            return []
        age = (self.car.day - self.car.since["battery"]).days / 365.25
        share = 1.0 - 0.045 * age - self.dice.between(0, 0.06)
        cca = round(640 * share / 5) * 5
        verdict = "replace" if share < 0.74 else "good"
        self.number["battery", ""] = share
        volts = round(12.7 - 0.04 * age, 1)
        return [{"item": "battery", "verdict": verdict, "volts": volts, "cca": cca, "cca_rated": 640}]

    def _rest(self, is_first: bool) -> list[Told]:
        found: list[Told] = []
        if self.dice.chance(0.4):
            for place in CORNERS:
                told = {"item": "tire_pressure", "position": place, "unit": "psi", "placard": 35}
                found.append(told | {"found": self.dice.whole(30, 35), "set_to": 35})
        if is_first:
            kind = "kit" if self.car.line.run_flat or self.car.line.powertrain == "electric" else "temporary"
            state = {"good_until": f"{self.car.day.year + 2}-01"} if kind == "kit" else {"found_as": "works"}
            found.append({"item": "spare", "kind": kind} | state)
        month = self.car.plate_month
        year = self.car.day.year + (month < self.car.day.month)
        found.append({"item": "registration_sticker", "good_until": f"{year}-{month:02d}"})
        if self.dice.chance(0.5):
            found.append({"item": "lights", "found_as": "works" if self.dice.chance(0.93) else "does_not_work"})
        if self.dice.chance(0.3):
            found.append({"item": "windshield", "found_as": self.dice.one_of(("clear", "clear", "clear", "chip"))})
        if self.dice.chance(0.25):
            found.append({"item": "leaks", "found_as": self.dice.one_of(("dry", "dry", "dry", "damp"))})
            found.append({"item": "exhaust", "found_as": self.dice.one_of(("tight", "tight", "tight", "rusty"))})
        return found
