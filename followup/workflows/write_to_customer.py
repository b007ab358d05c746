"""Write a person's own words to a customer, and give the thread back to the machine.

1. Nothing is planned against a stop, to a number that cannot be texted, or without the consent for visits or a text
   of the customer's own.
2. The words become a row like any other text and leave in the hours of visit texts; it is asked once more as they do.
3. From now on a person has the thread: the machine is silent there until it is given back, or for 24 hours.

All of it is one transaction.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from followup.core.planning.number_rules import BY_A_PERSON, by_a_person, may_text
from followup.storage import inbox, numbers, outbox, people, shops
from followup.storage.store import Store

LONGEST = 600
_WAITS = timedelta(days=1)


@dataclass(frozen=True)
class Written:
    """`leaves_at` where it was planned; else `why_not`, in words for the page."""

    leaves_at: datetime | None = None
    why_not: str | None = None


def write_to_customer(
    store: Store,
    shop_id: int,
    phone_id: int,
    words: str,
    staff_id: int,
    now: datetime,
    *,
    needs_registration: bool = False,
    secret: str | None = None,
) -> Written:
    """Plan a person's own words to a phone; see the module's words."""
    if len(words) > LONGEST:
        return Written(why_not=f"This is {len(words)} characters: at most {LONGEST}. Shorten it, or call.")
    with store.write() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None:
            return Written(why_not="There is no such phone.")
        shop = shops.load_shop(connection, shop_id)
        number = numbers.number_picture(
            connection, shop, phone["number"], now, needs_registration=needs_registration, secret=secret
        )
        found = may_text(by_a_person(number), number, now)
        leaves_at = found.next_at
        if leaves_at is None:
            return Written(why_not=f"{found.says} Call instead.")
        state, thread = inbox.conversation_of(connection, phone_id)
        persons = people.persons_of_phone(connection, phone_id)
        outbox.plan_text(
            connection, shop_id, BY_A_PERSON, f"person:{staff_id}:{now.isoformat()}", now, phone_id=phone_id,
            number=phone["number"], person_id=persons[0]["id"] if persons else None,
            vehicle_id=thread.get("vehicle_id"), language=thread.get("language") or phone["language"] or "en",
            facts={"message": words}, due_at=leaves_at, valid_until=leaves_at + _WAITS, author_id=staff_id,
        )  # fmt: skip
        state["person_at"] = now.isoformat()
        inbox.keep_conversation(connection, shop_id, phone_id, now, state, thread)
    return Written(leaves_at)


def give_back(store: Store, shop_id: int, phone_id: int, who: str, now: datetime) -> bool:
    """The machine answers in the thread again; False where the shop has no such phone. A symptom stays open."""
    with store.write() as connection:
        if people.load_phone(connection, shop_id, phone_id) is None:
            return False
        state, thread = inbox.conversation_of(connection, phone_id)
        state.update(person_at=None, is_frozen=False, questions_back=0)
        inbox.keep_conversation(connection, shop_id, phone_id, now, state, thread)
        shops.note(connection, shop_id, now, who, "gave a thread back", f"phone {phone_id}")
    return True
