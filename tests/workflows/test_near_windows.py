"""Planning reads only the windows that may come up: it comes to the same texts and calls as by all of them."""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.core.planning.decide import decide_for_phone
from followup.core.planning.pacing.weeks import WEEKS
from followup.core.planning.picture import PhoneTask, PlannedText
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import pictures, rows, shops, tables, windows
from tests.workflows.demo import Demo

Said = tuple[str, PlannedText | None, tuple[PhoneTask, ...]]


def _said(demo: Demo, now: datetime, *, near: bool) -> list[Said]:
    """The text and the calls of every car; whether the odometer is asked along is asked again before it is kept."""
    with demo.house.store.read() as connection:
        shop = shops.load_shop(connection, demo.shop_id)
        gathered = pictures.gather(connection, demo.shop_id, now, near=shop if near else None)
    found: list[Said] = []
    for phone in gathered.phones:
        of_phone = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=False)
        for vehicle, decision in decide_for_phone(of_phone, now):
            text = decision.text
            key = None if text is None else PlannedText(**{**vars(text), "asks_odometer": False})
            found.append((vehicle, key, decision.phone_tasks))
    return found


def test_the_same_texts_and_calls(demo: Demo) -> None:
    texts = 0
    for days in (1, 20, 45, 90, 200, 400):
        now = demo.house.now() + timedelta(days=days)
        by_all, by_near = _said(demo, now, near=False), _said(demo, now, near=True)
        assert by_all == by_near
        texts += sum(text is not None for _, text, _ in by_all)
    assert texts > 40


def _shop(demo: Demo) -> Shop:
    with demo.house.store.read() as connection:
        return shops.load_shop(connection, demo.shop_id)


def test_what_lies_ahead_is_not_read(demo: Demo) -> None:
    shop, now = _shop(demo), demo.house.now()
    with demo.house.store.read() as connection:
        everything = sum(map(len, windows.all_windows(connection, demo.shop_id).values()))
        near = sum(map(len, pictures.gather(connection, demo.shop_id, now, near=shop).windows.values()))
        ahead = timedelta(weeks=WEEKS + 1)
        in_weeks = sum(
            map(len, pictures.gather(connection, demo.shop_id, now, near=shop, ahead=ahead).windows.values())
        )
    assert 0 < near < in_weeks < everything


def test_what_was_put_off_is_read_however_far_it_lies(demo: Demo) -> None:
    """A customer may have named the day on which to hear of it again."""
    shop, now = _shop(demo), demo.house.now()
    with demo.house.store.read() as connection:
        every = windows.all_windows(connection, demo.shop_id)
        near = pictures.gather(connection, demo.shop_id, now, near=shop).windows
    car = next(one for one, found in every.items() if len(near.get(one, ())) < len(found))
    with demo.house.store.write() as connection:
        rows.add(
            connection, tables.rests, shop_id=demo.shop_id, vehicle_id=car, item=every[car][0]["item"], position="",
            because="later", from_on=day_of(now, shop.zone), until=day_of(now, shop.zone),
        )  # fmt: skip
    with demo.house.store.read() as connection:
        again = pictures.gather(connection, demo.shop_id, now, near=shop).windows
    assert again[car] == every[car]
