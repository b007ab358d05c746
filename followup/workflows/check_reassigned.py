"""The check of reassigned numbers, by file: which numbers to ask about, and what was answered.

1. Asked is about each US number with a consent that stands, as of the day of its newest consent: was it given to
   somebody else since? The file names numbers and days, nobody's name.
2. Of each answer the day must still be that of the newest consent; an older one is told and changes nothing.
3. "yes" holds the number: what is queued is dropped, nothing that we start leaves, and it stands on the phone list
   until a person looked (`settle_number`). "no" and "no data" are kept with their day.

All faults of a file are told at once, each with its line; the good lines are kept in one transaction.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.consent import last_given_on
from followup.phone_numbers import NotANumber, read_number
from followup.storage import alerts, consents, outbox, people, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

COLUMNS = ("number", "consent_on")
ANSWERS = {"yes": "yes", "no": "no", "no data": "no_data", "no_data": "no_data", "nodata": "no_data"}
MOST_LINES = 50_000
HELD = "the check of reassigned numbers says that it may be somebody else's"


@dataclass(frozen=True)
class KeptAnswers:
    """How many answers of each kind were kept, how many numbers are held for it, and the faults as (line, words)."""

    yes: int = 0
    no: int = 0
    no_data: int = 0
    faults: tuple[tuple[int, str], ...] = ()


def numbers_to_check(store: Store, shop_id: int) -> list[tuple[str, date]]:
    """The numbers to ask about with the day of their newest consent."""
    with store.read() as connection:
        return sorted(_standing(connection, shop_id).items())


def as_csv(found: list[tuple[str, date]]) -> str:
    """The file that is asked with: ten digits and a day a line."""
    lines = [",".join(COLUMNS), *(f"{number[2:]},{on.isoformat()}" for number, on in found)]
    return "\r\n".join(lines) + "\r\n"


def keep_answers(store: Store, shop_id: int, text: str, who: str, now: datetime) -> KeptAnswers:
    """Keep the answers of a file with the columns number, consent_on and answer."""
    kept = {"yes": 0, "no": 0, "no_data": 0}
    faults: list[tuple[int, str]] = []
    with store.write() as connection:
        country = shops.load_shop(connection, shop_id).country
        asked = _standing(connection, shop_id)
        for line, found in _lines(text):
            answer = found if isinstance(found, str) else _read(found, country, asked)
            if isinstance(answer, str):
                faults.append((line, answer))
                continue
            number, on, said = answer
            _keep(connection, shop_id, number, on, said, now)
            kept[said] += 1
        if any(kept.values()):
            shops.note(connection, shop_id, now, who, "took in answers of reassigned numbers", "numbers", after=kept)
    return KeptAnswers(**kept, faults=tuple(faults))


def _standing(connection: Connection, shop_id: int) -> dict[str, date]:
    found: dict[str, date] = {}
    for row in people.all_phones(connection, shop_id):
        if row["number"].startswith("+1"):
            on = last_given_on(consents.ledger(connection, shop_id, row["number"]))
            if on is not None:
                found[row["number"]] = on
    return found


def _lines(text: str) -> Iterator[tuple[int, dict[str, str] | str]]:
    """Each line with its number, by the names of its columns; words where it cannot be read."""
    rows = csv.reader(io.StringIO(text.lstrip("\ufeff"), newline=""))
    head = [name.strip().lower() for name in next(rows, [])]
    missing = [name for name in (*COLUMNS, "answer") if name not in head]
    if missing:
        yield 1, f"the first line must name the columns; missing: {', '.join(missing)}"
        return
    for count, cells in enumerate(rows):
        if count >= MOST_LINES:
            yield rows.line_num, f"at most {MOST_LINES:,} lines a file; the rest was not read"
            return
        if any(cell.strip() for cell in cells):
            is_whole = len(cells) == len(head)
            yield (
                rows.line_num,
                dict(zip(head, cells, strict=True)) if is_whole else "it has too few or too many columns",
            )


def _read(cells: dict[str, str], country: str, asked: dict[str, date]) -> tuple[str, date, str] | str:
    """Number, day and answer of a line, or what is wrong with it."""
    said = ANSWERS.get(cells["answer"].strip().lower().replace("-", " "))
    if said is None:
        return "the answer must be yes, no or no data"
    try:
        number = read_number(cells["number"].strip(), country).e164
        on = date.fromisoformat(cells["consent_on"].strip())
    except NotANumber:
        return "this is no phone number"
    except ValueError:
        return "consent_on must be a day like 2026-11-24"
    if number not in asked:
        return "no consent stands for this number, so nothing leaves to it anyway"
    if on < asked[number]:
        return f"a newer consent was given on {asked[number]}: ask again as of that day"
    return number, on, said


def _keep(connection: Connection, shop_id: int, number: str, on: date, said: str, now: datetime) -> None:
    consents.lock(connection, shop_id, number)
    phone = people.find_phone(connection, shop_id, number)
    assert phone is not None, "only numbers of the shop are asked about"
    people.change_phone(connection, phone["id"], reassigned=said, reassigned_asked_on=on)
    if said == "yes":
        _hold(connection, shop_id, phone, on, now)


def _hold(connection: Connection, shop_id: int, phone: Row, on: date, now: datetime) -> None:
    because = f"{HELD} since {on}"
    people.change_phone(connection, phone["id"], held_because=because)
    outbox.drop_planned(connection, shop_id, because, number=phone["number"], kinds=("invite", "visit"))
    persons = people.persons_of_phone(connection, phone["id"])
    alerts.raise_alert(
        connection, shop_id=shop_id, kind="tie", phone_id=phone["id"],
        person_id=persons[0]["id"] if persons else None, says=f"{because}: call, then say whose it is",
        raised_by=f"reassigned:{phone['id']}:{on}", raised_at=now,
    )  # fmt: skip
