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
    # who does the work, where the car is, what was promised
    ("visit", "my uncle is a heavy truck mechanic", "decline", {}),
    ("visit", "i already have a guy for that", "decline", {}),
    ("visit", "thanks, but we can make do without", "decline", {}),
    ("visit", "its in someone elses driveway now, sold it online", "gone", {}),
    ("visit", "still waiting for the refund you promised me in november", "complaint", {}),
    ("visit", "You overbilled me in april", "complaint", {}),
    # questions in other words
    ("visit", "when do you guys lock up", "where", {}),
    ("time", "how late are you open on fridays", "where", {}),
    ("visit", "whats that run", "price", {}),
    ("nothing", "is it a lunch hour kind of job", "duration", {}),
    ("three", "on a scale of 1 to 10 how bad is it", "explain", {}),
    ("confirm_stop", "which shop is this", "help", {}),
    # what is no visit time, and what is no answer
    ("visit", "fall break is on the 16th, so the 18th at 10", "propose", {"t": ["3-18 10:00"]}),
    ("confirm", "dentist at 9 tomorrow i forgot, can we do 2", "move", {"t": ["3-5 14:00"]}),
    ("walk_in", "should i pack a lunch or is it in and out in an hour", "duration", {}),
    ("nothing", "voice memo 0:09", "unclear", {}),
    ("nothing", "earn 3k a week, ask how", "unclear", {}),
    ("confirm", "call that off please", "cancel", {}),
    ("same day", "this is too hard to type, phone me", "call", {}),
    ("visit", "st. patrick's day works", "propose", {"t": ["3-17"]}),
    ("visit", "as soon as you guys can please", "propose", {}),
    ("booked", "the messages come twice, once is enough", "complaint", {"q": "confirm_stop"}),
    # a no or a later beside a question, and two questions
    ("visit", "not now. how serious is that?", "later explain", {}),
    ("visit", "no. how bad is it?", "decline explain", {}),
    ("one slot", "what would it run and how long would you keep it", "price duration", {}),
    ("visit", "yes, but not sure when", "accept", {"q": "day"}),
    ("visit", "friday at 9, what should i bring", "propose unclear", {"t": ["3-6 09:00"]}),
    # the odometer beside something else
    ("known", "48,260. yes, friday at 9", "accept propose odometer", {"t": ["3-6 09:00"], "od": 48260}),
    ("known", "Not yet, we're only at 47,800", "later odometer", {"od": 47800}),
    ("known", "she pulls to the left, miles are 48,310", "symptom odometer", {"od": 48310}),
    ("odometer", "4 8 3 1 0", "odometer", {"od": 48310}),
    ("odometer", "48 thousand 2 hundred", "odometer", {"od": 48200}),
    # the booking
    ("booked", "take me off the schedule for monday", "cancel", {}),
    ("booked", "cancel my wednesday", "cancel", {}),
    ("confirm", "we are not showing up tomorrow", "cancel", {}),
    ("confirm", "thursday got crazy, switch me to monday same time", "move", {"t": ["3-9 09:00"]}),
    ("confirm", "10-4", "accept", {}),
    ("confirm", "told my manager ill be late so yes", "accept", {}),
    ("today", "been waiting here an hour and nobody looked at it", "complaint", {}),
    # offers and their hour
    ("one slot", "monday, same time?", "propose", {"t": ["3-9 09:00"]}),
    ("one slot", "yes, that's right after my shift", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    # an hour that cannot be told is the whole day; a reason beside an hour
    ("time", "once the kids are off to school", "propose", {"t": ["3-5"]}),
    ("time", "any hour that day, i work from home", "propose", {"t": ["3-5"]}),
    ("time", "after 3, I have a class", "propose", {"t": ["3-5 15:00-18:00"]}),
    ("cars", "drop the truck by friday at 9?", "propose", {"car": "white truck", "t": ["3-6 09:00"]}),
    # a consent given again is no yes to a visit
    ("nothing", "changed my mind, sign me back up for the texts", "resume", {}),
    ("nothing", "sure, you can text me again", "resume", {}),
    # yes, no and the booking in other words
    ("one slot", "bingo", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("one slot", "that suits us", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("one slot", "snag it for me", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("confirm", "plans fell through, clear my booking", "cancel", {}),
    ("booked", "cross me off thursdays list", "cancel", {}),
    ("visit", "I was billed twice, have the owner phone me", "complaint call", {}),
    ("visit", "poke me after easter", "later", {"un": "2026-04-06"}),
    ("time", "crack of dawn", "propose", {"t": ["3-5 07:30-08:30"]}),
    ("day", "hump day", "propose", {"t": ["3-11"]}),
    # offers: what is left, and another hour on the day of one
    ("slot", "second one but can we do 3", "propose", {"t": ["3-6 15:00"]}),
    ("slot", "not the second, the other one", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("slot", "no to friday, yes to thursday", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("slot", "thursday, scratch friday", "choose", {"ch": "2026-03-05T09:00", "t": ["3-5 09:00"]}),
    ("slot", "friday but 3 instead of 2", "propose", {"t": ["3-6 15:00"]}),
    # the hour told before is meant for another day too; an hour put right
    ("visit", "monday at 10 or if not tuesday same time", "propose", {"t": ["3-9 10:00", "3-10 10:00"]}),
    ("visit", "monday 9am... oops meant 10", "propose", {"t": ["3-9 10:00"]}),
    ("time", "anytime before noon", "propose", {"t": ["3-5 07:30-12:00"]}),
    # two things of which neither goes
    ("confirm", "we have to reschedule, phone me", "move call", {"q": "day"}),
    ("confirm", "I could get there at 8 if that is easier", "move", {"t": ["3-5 08:00"]}),
    ("booked", "forget thursday, I will call you when I am back home", "cancel later", {}),
    ("known", "it shows 48,250. what do I need", "odometer explain", {"od": 48250}),
    ("odometer", "somewhere between 47 and 48 thousand", "odometer", {"od": 47500}),
    ("slot", "we are away till the 16th", "later", {"un": "2026-03-16"}),
    # words beside an hour, and numbers in a range
    ("time", "9. i can wait", "propose", {"t": ["3-5 09:00"], "needs": ["wait"]}),
    ("visit", "tuesday 9am, i would like to borrow a car", "propose", {"t": ["3-10 09:00"], "needs": ["loaner"]}),
    ("odometer", "between 48,100 and 48,300", "odometer", {"od": 48200}),
    ("booked", "where do i turn after the church", "where", {}),
]
