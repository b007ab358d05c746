"""Drafts on both databases: of posts at once one is kept at a time, and a deleted customer's go too.

Source: the bar "nothing lost" of this project; uniqueness is the database's.
"""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

from followup.storage import drafts, staff
from followup.workflows.keep_draft import DraftAnswer, TypedSoFar, drop_draft, keep_draft, take_draft
from followup.workflows.look_at_drafts import look_at_drafts
from tests.shop_of_tests import BEGIN
from tests.workflows import counter as counters


def _typed(counter: counters.Counter, page: str, told: str, **others: object) -> TypedSoFar:
    values = {"vehicle_id": counter.vehicle_id, "code": "F-1", **others}
    return TypedSoFar(part="", corrects=None, fields={"odometer": told}, page=page, **values)  # type: ignore[arg-type]  # by name


def _keep(counter: counters.Counter, typed: TypedSoFar) -> DraftAnswer:
    return keep_draft(counter.store, counter.shop_id, counter.staff_id, typed, BEGIN)


def test_of_pages_that_write_at_once_one_is_kept_and_the_others_are_told(database_url: str) -> None:
    counter = counters.open_counter(database_url)
    with ThreadPoolExecutor(8) as pool:
        made = list(pool.map(lambda number: _keep(counter, _typed(counter, f"page {number}", str(number))), range(8)))
    (kept,) = [number for number, answer in enumerate(made) if answer.why_not is None]
    assert {answer.why_not for answer in made} == {None, "elsewhere"}
    (seen,) = look_at_drafts(counter.store, counter.shop_id, BEGIN)
    assert seen.fields == {"odometer": str(kept)}


def test_of_two_who_take_it_over_at_once_one_has_it(database_url: str) -> None:
    counter = counters.open_counter(database_url)
    with counter.store.write() as connection:
        names = ("kim", "lou")
        others = [staff.add(connection, counter.shop_id, one, one, "technician", "none", BEGIN) for one in names]
    made = _keep(counter, _typed(counter, "page", "1"))
    assert made.draft_id
    draft = made.draft_id
    with ThreadPoolExecutor(2) as pool:
        done = list(pool.map(lambda who: take_draft(counter.store, counter.shop_id, who, draft, 1, BEGIN), others))
    assert sum(one is None for one in done) == 1
    (seen,) = look_at_drafts(counter.store, counter.shop_id, BEGIN)
    assert seen.staff_id == others[done.index(None)]
    assert drop_draft(counter.store, counter.shop_id, counter.staff_id, draft, 2) is not None
    assert drop_draft(counter.store, counter.shop_id, seen.staff_id, draft, 2) is None


def test_what_is_typed_of_a_deleted_customer_goes_and_others_stay(database_url: str) -> None:
    counter = counters.open_counter(database_url)
    told = ({"customer.name": "ana  marlow"}, {"customer.phone": "(312) 555-0147"}, {"customer.name": "Bo Reyes"})
    for code, fields in zip(("F-2", "F-3", "F-4"), told, strict=True):
        typed = TypedSoFar(None, "", code, None, fields, "page")
        keep_draft(counter.store, counter.shop_id, counter.staff_id, typed, BEGIN + timedelta(minutes=1))
    keep_draft(counter.store, counter.shop_id, counter.staff_id, _typed(counter, "page", "1"), BEGIN)
    with counter.store.write() as connection:
        drafts.forget_car(connection, counter.vehicle_id)
        drafts.forget_typed(connection, counter.shop_id, "Ana Marlow", {counters.NUMBER})
    left = look_at_drafts(counter.store, counter.shop_id, BEGIN)
    assert [one.fields for one in left] == [{"customer.name": "Bo Reyes"}]
