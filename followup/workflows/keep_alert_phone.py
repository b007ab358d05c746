"""A member of staff agrees, for themselves alone, to be texted about alerts at a number; or takes it back.

Nobody agrees for somebody else: the one who asks is the one whose number it is. One transaction with its line in the
audit trail; the number itself stands in no line.
"""

from __future__ import annotations

from datetime import datetime

from followup.phone_numbers import NotANumber, read_number
from followup.storage import shops, staff
from followup.storage.store import Store

NOT_A_NUMBER = "This is no phone number that exists."


def alert_phone(store: Store, shop_id: int, staff_id: int) -> str | None:
    """The number at which this member takes alerts (E.164)."""
    with store.read() as connection:
        return staff.alert_phone(connection, shop_id, staff_id)


def keep_alert_phone(store: Store, shop_id: int, staff_id: int, who: str, written: str, now: datetime) -> str | None:
    """Keep the number, or with "" take the agreement back; else why not, in words."""
    with store.write() as connection:
        number = None
        if written.strip():
            try:
                number = read_number(written.strip(), shops.load_shop(connection, shop_id).country).e164
            except NotANumber:
                return NOT_A_NUMBER
        staff.set_alert_phone(connection, staff_id, number)
        said = "agreed to texts about alerts" if number else "takes no texts about alerts any more"
        shops.note(connection, shop_id, now, who, said, who)
    return None
