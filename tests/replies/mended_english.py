"""English replies for rules of the grammar: (context, text, meanings, what else). Written by us, read exactly so."""

from __future__ import annotations

from tests.replies.contract_cases import Case

ENGLISH: list[Case] = [
    # a question that no code names stands behind another meaning, with or without its mark
    ("visit", "friday suits me, do you take personal checks", "propose unclear", {"t": ["3-6"]}),
    ("day", "Mon or Tues. Do you guys sell floor mats", "propose unclear", {"t": ["3-9", "3-10"]}),
    (
        "slot",
        "thursday at 9 please. do you have wifi",
        "choose unclear",
        {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]},
    ),
    ("confirm", "yes. is there a coffee machine", "accept unclear", {}),
    ("visit", "we sold it, but do you work on boats?", "gone unclear", {}),
    # calling off beside what else is said
    ("confirm", "need to cancel, ask me in may", "cancel later", {"un": "2026-05-01"}),
    ("confirm", "Cancel tomorrow and stop texting me", "stop cancel", {}),
    ("confirm", "we sold it on sunday, so scrap the booking", "gone cancel", {}),
    ("booked", "gave it to my niece. take me off thursday", "gone cancel", {}),
    ("confirm", "call the whole visit off please", "cancel", {}),
    # an hour as the answer, with more beside it
    (
        "same day",
        "8 and I would need a loaner",
        "choose",
        {"ch": "2026-03-05T08:00", "t": ["3-5 08:00"], "needs": ["loaner"]},
    ),
    ("time", "9, as long as I can get a ride to work", "propose", {"t": ["3-5 09:00"], "needs": ["ride"]}),
    ("time", "10 and i need it back by 5", "propose", {"t": ["3-5 10:00"]}),
    ("time", "eleven. sorry, ten", "propose", {"t": ["3-5 10:00"]}),
    ("same day", "the one before school starts, 8", "choose", {"ch": "2026-03-05T08:00", "t": ["3-5 08:00"]}),
    ("same day", "8 but on monday", "propose", {"t": ["3-9 08:00"]}),
    ("booked", "put me down for 3 instead of 9", "move", {"t": ["3-5 15:00"]}),
    ("confirm", "could it be later that day? like 3", "move", {"t": ["3-5 15:00"]}),
    ("time", "from 3 on im free", "propose", {"t": ["3-5 15:00-18:00"]}),
    ("three", "any of these 3 works", "choose", {"t": ["3-5 09:00", "3-6 14:00", "3-9 10:30"]}),
    ("visit", "8:30 or 9 tomorrow, or 2 on friday", "propose", {"t": ["3-5 08:30", "3-5 09:00", "3-6 14:00"]}),
    # parts of the day
    ("time", "I can get it over there by noon", "propose", {"t": ["3-5 07:30-12:00"]}),
    ("visit", "noonish monday", "propose", {"t": ["3-9 11:30-12:30"]}),
    ("time", "the last hour of the day", "propose", {"t": ["3-5 17:00-18:00"]}),
    ("visit", "late afternoon monday otherwise friday at 9", "propose", {"t": ["3-9 15:00-18:00", "3-6 09:00"]}),
    ("visit", "No earlier than 10 on Friday, I work late", "propose", {"t": ["3-6 10:00-18:00"]}),
    # what the text itself corrects
    ("time", "I meant monday not thursday, 10am", "propose", {"t": ["3-9 10:00"]}),
    ("visit", "monday. no, thursday", "propose", {"t": ["3-5"]}),
    ("visit", "friday no, saturday yes", "propose", {"t": ["3-7"], "a": ["3-6"]}),
]
