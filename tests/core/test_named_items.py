"""Which item a customer says was done; replies written for this test, as people write them (from memory)."""

from __future__ import annotations

import pytest

from followup.core.conversation.named_items import WORDS, items_named
from followup.core.item import in_use
from followup.core.items import BY_CODE

TOLD = (
    ("cabin_filter", ""), ("brake_rotor", "front_left"), ("brake_pad", "rear_left"), ("brake_fluid", ""),
    ("oil_service", ""), ("tire_tread", "front_left"), ("wiper_blade", "front"), ("registration_sticker", ""),
    ("own_wash", ""),
)  # fmt: skip
OWN = {"own_wash": "Underbody wash"}


@pytest.mark.parametrize(
    ("text", "named"),
    [
        ("already did the filter at another place", {"cabin_filter"}),
        ("got new tires last month", {"tire_tread"}),
        ("had the brakes done elsewhere", {"brake_rotor", "brake_pad"}),
        ("brake fluid was changed in june", {"brake_fluid"}),
        ("did the oil and the oil filter myself", {"oil_service"}),
        ("tires are done, but not the brakes", {"tire_tread"}),
        ("wipers done, tags renewed", {"wiper_blade", "registration_sticker"}),
        ("ya cambie las llantas", {"tire_tread"}),
        ("Ya le cambié el aceite, las balatas también", {"oil_service", "brake_pad"}),
        ("ya renové las placas", {"registration_sticker"}),
        ("underbody wash was done at the dealer", {"own_wash"}),
        ("already took care of it", set()),
        ("ya lo hice en otro taller", set()),
    ],
)
def test_only_what_a_customer_names_was_done(text: str, named: set[str]) -> None:
    assert {code for code, _ in items_named(text, TOLD, OWN)} == named


def test_every_item_that_an_invite_may_name_has_words() -> None:
    """Items that are only looked at, or that no invite sells, may go without."""
    without = {one.code for one in in_use(BY_CODE)} - set(WORDS)
    assert without <= {"spare", "tpms", "leaks"}
