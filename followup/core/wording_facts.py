"""What a text may say: the named facts of every reason, with sample values. The contract of workflows and templates.

A workflow hands in facts that are phrased already (dates, phone, items in the customer's language); a template names
them. Facts that a reason `needs` must be handed in; those it `may` use are empty where they are left out, so a
template can ask `{% if times %}`. Every reason knows the facts of `EVERYWHERE` besides.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

FactValue = str | bool | int | list[str] | list[dict[str, str]]
Facts = dict[str, FactValue]


@dataclass(frozen=True)
class Fact:
    """One fact: what it holds, for the manager's page, and a sample in each language."""

    words: str
    en: FactValue
    es: FactValue

    def sample(self, language: str) -> FactValue:
        """The sample in that language."""
        return self.en if language == "en" else self.es

    @property
    def empty(self) -> FactValue:
        """What stands in its place where it is not handed in."""
        return type(self.en)()


def _same(words: str, value: FactValue) -> Fact:
    return Fact(words, value, value)


_ITEM_EN = [
    {
        "name": "front brake pads",
        "measured": "4 mm",
        "when": "March 2",
        "month": "July",
        "line": "Front brake pads: 4 mm on March 2, may be due around July",
        "what": "Brake pads press on the rotors to slow the car.",
        "why": "They get thinner with use, and worn pads can harm the rotors.",
        "work": "new brake pads",
    }
]
_ITEM_ES = [
    {
        "name": "pastillas de freno delanteras",
        "measured": "4 mm",
        "when": "2 de marzo",
        "month": "julio",
        "line": "Pastillas de freno delanteras: 4 mm el 2 de marzo, posible cambio hacia julio",
        "what": "Las pastillas aprietan los discos para frenar.",
        "why": "Se gastan con el uso y pueden rayar los discos.",
        "work": "pastillas nuevas",
    }
]
_SERVICE_EN = [{"name": "washer fluid", "amount": "up to full"}]
_SERVICE_ES = [{"name": "agua del limpiaparabrisas", "amount": "hasta llenar"}]
_TIMES_EN: list[str] = ["Tuesday, March 3 at 9:00 AM", "Wednesday, March 4 at 2:30 PM"]
_TIMES_ES: list[str] = ["martes 3 de marzo a las 9:00 AM", "miércoles 4 de marzo a las 2:30 PM"]

FACTS: dict[str, Fact] = {
    "shop": _same("the shop's name", "Quill Lane Garage"),
    "shop_phone": _same("the shop's phone number, as printed", "(312) 555-0147"),
    "who": _same("the customer's first name; may be empty", "Dana"),
    "car": Fact("the car in the customer's words, after 'your'", "blue pickup", "camioneta azul"),
    "items": Fact("the items: name, measured, when, month, line, what, why, work", _ITEM_EN, _ITEM_ES),
    "season_tires": Fact("the tires of the season that comes", "winter tires", "llantas de invierno"),
    "services": Fact("free services: name, amount", _SERVICE_EN, _SERVICE_ES),
    "times": Fact("times that are free, with their full dates", _TIMES_EN, _TIMES_ES),
    "time": Fact("the visit's full date and time", "Tuesday, March 3 at 9:00 AM", "martes 3 de marzo a las 9:00 AM"),
    "old_time": Fact("the time that stood so far", "Monday, March 2 at 8:00 AM", "lunes 2 de marzo a las 8:00 AM"),
    "arrival": Fact("when the customer says to arrive", "9:20 AM", "9:20 AM"),
    "day": Fact("a full date", "Tuesday, March 3", "martes 3 de marzo"),
    "days": Fact(
        "the days between which to choose",
        ["Tuesday, March 3", "Wednesday, March 4"],
        ["martes 3 de marzo", "miércoles 4 de marzo"],
    ),
    "closed_day": Fact("a day asked for on which the shop is closed", "Sunday, March 8", "domingo 8 de marzo"),
    "until": Fact("from when we may ask again: a month or a date", "July", "julio"),
    "try_no": _same("1 for the first text about a reason, 2 for the second", 1),
    "ask_odometer": _same("true where we also ask what the odometer shows", True),
    "odometer": Fact("an odometer reading with its unit", "48,200 miles", "48,200 millas"),
    "odometer_on": Fact("the day of that reading", "March 2", "2 de marzo"),
    "cars": Fact("the customer's cars", ["blue pickup", "gray van"], ["camioneta azul", "van gris"]),
    "work": Fact("what the visit is for", "oil service and tire rotation", "aceite y rotar llantas"),
    "needs": Fact(
        "what was asked for with the visit",
        ["a place to wait", "a ride"],
        ["esperar en el taller", "transporte"],
    ),
    "open_hours": Fact(
        "when the shop is open",
        "Monday-Friday 7:30 AM-6:00 PM, Saturday 8:00 AM-2:00 PM",
        "lunes a viernes 7:30 AM a 6:00 PM",
    ),
    "opens_at": Fact(
        "when the shop opens next", "Tuesday, March 3 at 7:30 AM", "martes 3 de marzo a las 7:30 AM"
    ),
    "is_open": _same("true while the shop is open", True),
    "on_call": _same("true where a person is on call after hours", True),
    "alerted": _same("true once an alert to that person or team was accepted", True),
    "emergency_number": _same("the country's emergency number", "911"),
    "roadside_phone": _same("the roadside help number, if the shop has one", "(312) 555-0190"),
    "address": _same("the shop's address", "12 Quill Lane, Fernwick"),
    "link": _same("a link on the shop's own domain", ""),
    "message": Fact("a person's own words", "We can take it at noon too.", "Puede venir a las 12 si gusta."),
    "price_text": Fact(
        "the shop's own price text", "A brake check is $40.", "Revisar los frenos cuesta $40."
    ),
    "duration": Fact("how long the work takes", "about 2 hours", "unas 2 horas"),
    "done_by": Fact("who does the recall work", "your dealer", "su concesionario"),
    "units": Fact(
        "units of a fleet with what each may need", ["12: front brake pads", "7: oil service"],
        ["12: pastillas delanteras", "7: aceite"],
    ),
    "more_units": _same("units that the text has no room for", 3),
    "is_machine_question": _same("true where the customer asked whether this is a machine", True),
    "is_upkeep": _same("true where texts about upkeep with offers were agreed to", True),
    "invites_a_year": _same("texts about upkeep in a year, at most", 8),
    "is_moved": _same("true where a visit was moved to this time", True),
    "is_early_drop": _same("true where the key is dropped before opening", True),
    "asked_for": Fact("a time asked for that is taken", "Monday, March 2 at 8:00 AM", "lunes 2 de marzo a las 8:00 AM"),
}  # fmt: skip

# Attributes of the entries of `items` and `services`.
ATTRIBUTES = frozenset({"name", "measured", "when", "month", "line", "what", "why", "work", "amount"})


@dataclass(frozen=True)
class ReasonFacts:
    """The facts that one reason needs and may use besides those of `EVERYWHERE`."""

    needs: tuple[str, ...] = ()
    may: tuple[str, ...] = ()


def _facts(needs: str = "", may: str = "") -> ReasonFacts:
    return ReasonFacts(tuple(needs.split()), tuple(may.split()))


EVERYWHERE = _facts("shop shop_phone", "who car")

FACTS_OF: dict[str, ReasonFacts] = {
    "due_work": _facts("items try_no", "times ask_odometer"),
    "free_service": _facts("services", "open_hours"),
    "winter_battery": _facts("items", "times"),
    "set_change": _facts("season_tires", "items times"),
    "winter_top_off": _facts("services", "open_hours"),
    "long_unseen": _facts("services", "open_hours"),
    "odometer_question": _facts("", "odometer odometer_on"),
    "missed_visit": _facts("time", "times"),
    "after_visit": _facts("day", "work"),
    "recall": _facts("done_by"),
    "fleet_list": _facts("units", "more_units"),
    "offer_times": _facts("times", "asked_for work"),
    "confirmation": _facts("time", "work address needs is_moved is_early_drop link"),
    "reminder": _facts("time", "work address"),
    "parts_in": _facts("", "work times"),
    "car_ready": _facts("", "open_hours"),
    "booking_closed": _facts("time"),
    "from_a_person": _facts("message"),
    "opted_in": _facts("", "is_upkeep invites_a_year"),
    "stopped": _facts(),
    "resumed": _facts(),
    "help": _facts(),
    "ask_day": _facts("", "days closed_day open_hours"),
    "ask_time": _facts("", "day open_hours"),
    "ask_am_or_pm": _facts("", "day times"),
    "ask_slot": _facts("times"),
    "ask_car": _facts("cars"),
    "ask_odometer": _facts("", "odometer"),
    "ask_confirm_stop": _facts(),
    "ask_again": _facts(),
    "request_noted": _facts("", "time times needs"),
    "change_noted": _facts("old_time", "time"),
    "cancel_noted": _facts("", "time"),
    "booking_stands": _facts("time"),
    "running_late_noted": _facts("", "time arrival"),
    "later_noted": _facts("", "until"),
    "decline_noted": _facts(),
    "done_noted": _facts("", "items"),
    "odometer_noted": _facts("odometer"),
    "walk_in_noted": _facts("", "services open_hours day"),
    "gone_noted": _facts(),
    "stranger_noted": _facts(),
    "complaint_noted": _facts("", "is_open opens_at"),
    "call_noted": _facts("", "is_open opens_at"),
    "a_person_reads": _facts("", "is_open opens_at is_machine_question"),
    "price": _facts("", "is_open opens_at price_text"),
    "duration": _facts("", "duration work"),
    "explain": _facts("", "items"),
    "where": _facts("address open_hours", "link"),
    "judgment": _facts("", "items"),
    "caution_now_open": _facts("emergency_number", "alerted"),
    "caution_now_closed": _facts("emergency_number opens_at", "roadside_phone on_call alerted"),
    "caution_today_open": _facts("", "alerted"),
    "caution_today_closed": _facts("opens_at", "on_call alerted"),
    "caution_run_flat": _facts("", "is_open opens_at on_call alerted"),
}


class WrongFacts(Exception):
    """A text was handed a fact that its reason does not know, or not one that it needs."""


def names_of(reason_code: str) -> tuple[str, ...]:
    """All facts that a text of that reason may name, in the order in which they are explained."""
    own = FACTS_OF[reason_code]
    return (*EVERYWHERE.needs, *EVERYWHERE.may, *own.needs, *own.may)


def complete(reason_code: str, facts: Mapping[str, FactValue]) -> Facts:
    """`facts` with empty values for those left out. Raises `WrongFacts` for unknown, missing or wrongly typed ones."""
    names, own = names_of(reason_code), FACTS_OF[reason_code]
    if unknown := sorted(set(facts) - set(names)):
        raise WrongFacts(f"{reason_code} does not know {', '.join(unknown)}.")
    if missing := [name for name in (*EVERYWHERE.needs, *own.needs) if name not in facts or facts[name] in ("", [])]:
        raise WrongFacts(f"{reason_code} needs {', '.join(missing)}.")
    whole = {name: facts.get(name, FACTS[name].empty) for name in names}
    if wrong := [name for name, value in whole.items() if not _is_like(value, FACTS[name].en)]:
        raise WrongFacts(f"{reason_code} has {', '.join(wrong)} of another kind than its sample.")
    return whole


def _is_like(value: object, sample: FactValue) -> bool:
    """True where `value` is plain data of the very type of `sample`: nothing with methods of its own gets in."""
    if type(value) is not type(sample):
        return False
    if not isinstance(value, list) or not isinstance(sample, list):
        return True
    if isinstance(sample[0], str):
        return all(type(entry) is str for entry in value)
    return all(
        type(entry) is dict and all(type(word) is str for pair in entry.items() for word in pair) for entry in value
    )


def sample_facts(reason_code: str, language: str, *, is_full: bool = True) -> Facts:
    """Sample facts for that reason: every fact, or with `is_full` false only what it needs."""
    names = names_of(reason_code) if is_full else (*EVERYWHERE.needs, *FACTS_OF[reason_code].needs)
    return {name: FACTS[name].sample(language) for name in names}
