"""English replies for rules of the grammar, the third part: (context, text, meanings, what else). Written by us."""

from __future__ import annotations

from tests.replies.contract_cases import Case

ENGLISH: list[Case] = [
    # the last text that is wanted, and the last one that came
    ("visit", "let this be your last message to me", "stop", {}),
    ("visit", "this better be the last text I get", "stop", {}),
    ("visit", "make this the final text you send me", "stop", {}),
    ("visit", "this will be the last time you text me", "stop", {}),
    ("visit", "I want that to be the last one from you", "stop", {}),
    ("visit", "this will be the last oil change for me", "decline", {}),
    # fire and smoke that are no car's, a driver who pulls out of somewhere
    ("nothing", "is the fire station next door still there", "unclear", {}),
    ("visit", "had a fire drill at work, friday works", "propose", {"t": ["3-6"]}),
    ("visit", "something caught fire under the hood", "symptom", {}),
    ("visit", "my truck is on fire", "symptom", {}),
    ("visit", "holy smokes yes sign me up", "accept", {"q": "day"}),
    ("visit", "quit blowing smoke up my backside and give me a price", "price", {}),
    ("visit", "it smokes if you rev it", "symptom", {}),
    ("today", "yes, pulling into your lot now", "accept", {}),
    ("visit", "just pulling up to the house, friday is good", "propose", {"t": ["3-6"]}),
    ("visit", "it keeps pulling out of my lane", "symptom", {}),
    ("visit", "grinding noise when pulling out of the driveway", "symptom", {}),
    ("visit", "pulling to the left when i leave the garage", "symptom", {}),
    # how a car dips, and sounds spelled out
    ("visit", "nose dives when i brake", "symptom", {}),
    ("visit", "the rear end squats when i take off", "symptom", {}),
    ("visit", "it goes grrrr when i turn left", "symptom", {}),
    ("visit", "truck dips bad on one side", "symptom", {}),
    # one subject only
    ("visit", "please leave the wiper stuff out of the texts", "decline", {"q": "confirm_stop"}),
    ("visit", "skip the tire stuff from now on", "decline", {"q": "confirm_stop"}),
    # gone to scrap, taken by water
    ("visit", "it went to scrap last month", "gone", {}),
    ("visit", "the river swallowed the truck", "gone", {}),
    ("visit", "insurance hauled it away", "gone", {}),
    # the name of a month is no junk; who writes; sarcasm; no shows; machines; other people's errands
    ("nothing", "which place is messaging me", "help", {}),
    ("visit", "always with your hand out", "complaint", {}),
    ("confirm", "gonna be a no show thursday", "cancel", {}),
    ("confirm", "i am no no-show, see you tomorrow", "accept", {}),
    ("visit", "away message: back on the 12th", "unclear", {}),
    ("visit", "swing by the store and grab milk", "unclear", {}),
    ("visit", "call me when you get to the airport", "unclear", {}),
    ("visit", "call me when you get to my car", "call", {}),
    # offers that are open to the customer, a street that is asked, a price that is guessed
    ("three", "all of them are open for me", "choose", {"t": ["3-5 09:00", "3-6 14:00", "3-9 10:30"]}),
    ("visit", "sounds reasonable, lets do it", "accept", {"q": "day"}),
    ("visit", "more than 300 or less", "price", {}),
    # what is needed and what is asked
    ("visit", "friday. i would like someone to drive me home", "propose", {"t": ["3-6"], "needs": ["ride"]}),
    ("visit", "friday and i will borrow one of your cars", "propose", {"t": ["3-6"], "needs": ["loaner"]}),
    # one offer ruled out, a place in the list, what was and what is now
    ("slot", "friday's out for us", "decline", {"a": ["3-6 14:00"], "q": "slot"}),
    ("slot", "the thursday one is no use to me", "decline", {"a": ["3-5 09:00"], "q": "slot"}),
    ("slot", "thursday, im out of work at 8", "choose", {"t": ["3-5 09:00"], "ch": "2026-03-05T09:00"}),
    ("three", "#2 and i can wait there", "choose", {"t": ["3-6 14:00"], "ch": "2026-03-06T14:00", "needs": ["wait"]}),
    ("odometer", "was 47900 last week, 48150 now", "odometer", {"od": 48150}),
    ("odometer", "it is 48150 now, was 47900", "odometer", {"od": 48150}),
    ("car", "truck's the one", "accept", {"car": "white truck"}),
    ("after_visit", "spotless, thanks", "accept", {}),
    ("visit", "shout at me in may", "later", {"un": "2026-05-01"}),
]
