"""More ways to say a time, in the form of `labeled_times.py`: weeks on, spelled-out times, ranges, entries."""

from __future__ import annotations

from followup.rehearsal.bench.labeled_times import Told, t

ENGLISH: list[Told] = [
    # weeks on
    ("visit", "wednesday the eleventh", t("3-11")),
    ("visit", "tuesday the twenty fourth at ten", t("3-24 10:00")),
    ("visit", "monday two weeks from now", t("3-16")),
    ("visit", "thursday in three weeks", t("3-26")),
    ("visit", "week from tuesday works", t("3-17")),
    ("visit", "early on march 19th", t("3-19")),
    ("visit", "a month after easter", t("5-5")),
    # spelled out
    ("visit", "the twelfth of march twenty twenty six", t("3-12")),
    ("visit", "march twelfth two thousand and twenty six at three", t("3-12 15:00")),
    ("visit", "friday at fourteen thirty", t("3-6 14:30")),
    ("visit", "friday from nine thirty to ten thirty", t("3-6 09:30-10:30")),
    ("day", "at one oclock tomorrow", t("3-5 13:00")),
    # ranges after a word
    ("visit", "book me for 9:30-11 on friday", t("3-6 09:30-11:00")),
    ("visit", "at 2 p.m. to 4 p.m. tomorrow", t("3-5 14:00-16:00")),
    ("visit", "how about noon to 2 on monday", t("3-9 12:00-14:00")),
    ("visit", "at ten to 4 tomorrow", t("3-5 15:50")),
    # an entry is for the time that follows, whatever it is called
    ("visit", "Please add the school bus check for friday at 9", t("3-6 09:00")),
    ("visit", "can you schedule the trip inspection for the 12th at 3", t("3-12 15:00")),
    ("confirm", "change the day for the kids car to friday at 3pm", t("3-6 15:00")),
    ("visit", "schedule an oil change and have it ready by 5", {}),
    ("visit", "schedule a pick up for 5", {}),
    # a day gone by takes its hour with it
    ("visit", "i was there yesterday at 4", {}),
    ("visit", "at 4 pm yesterday i saw your message", {}),
    ("visit", "i called yesterday, friday at 9 works", t("3-6 09:00")),
    ("visit", "i have a fitting monday at 9, please add that to my calendar", t("3-9 09:00")),
    ("visit", "i have a fitting monday at 9", {}),
    ("visit", "i need it for a deadline on friday", {}),
    # a bare twelve is noon; the hour that replaces one stays in its half-day
    ("visit", "friday at 12", t("3-6 12:00")),
    ("visit", "a few hours later than 1 pm, maybe 4 on friday", t("3-6 16:00")),
    ("visit", "11, lunchtime tomorrow", t("3-5 11:00")),
    # dates in other orders
    ("visit", "03 12 2026", t("3-12")),
    ("visit", "3-14 at 9am", t("3-14 09:00")),
    ("visit", "april 22 (wed) at 9am", t("4-22 09:00")),
    ("visit", "march 12 (fri) at 9am", t("3-12 09:00", "3-13 09:00", q="day")),
    # holidays
    ("visit", "the day before thanksgiving", t("11-25")),
    ("visit", "a week before easter saturday", t("3-28")),
    ("visit", "earth day", t("4-22")),
    ("visit", "the weekend after easter", t("4-11")),
    ("visit", "easter weekend", t("4-4")),
    ("visit", "eve of christmas", t("12-24")),
    ("visit", "mardi gras next year", t("2-9")),
    ("visit", "the monday after passover", t("4-6")),
    # counted
    ("visit", "on the third tuesday", t("3-17")),
    ("visit", "first week of april on friday", t("4-3")),
    ("visit", "three days before the 20th", t("3-17")),
    ("visit", "any time the rest of this week", t("3-4..3-7")),
    ("visit", "the following day", t("3-5")),
    ("visit", "in less than an hour", t("3-4 11:00")),
    ("confirm", "my visit with your crew was moved to 3pm on friday", t("3-6 15:00")),
    ("confirm", "cancel my thursday appointment and book one on saturday at 9am", t("3-7 09:00")),
    ("visit", "make it last from 3 to 5 pm friday", t("3-6 15:00-17:00")),
    ("visit", "time: 3pm, date: friday", t("3-6 15:00")),
    ("visit", "in an hour and a half", t("3-4 11:30")),
    ("visit", "the 13th of march, friday, at noon", t("3-13 12:00")),
    ("visit", "on the second of the month", t("4-2")),
    ("visit", "12-13 march", t("3-12", "3-13")),
    ("visit", "the 12th or 13th of march at 9", t("3-12 09:00", "3-13 09:00")),
    ("confirm", "move it from the 12th to the 13th of march", t("3-13")),
    # an old time and a new one of another kind
    ("confirm", "move my tuesday 9am to friday", t("3-6 09:00")),
    ("confirm", "move my 1 pm visit tomorrow to 1:30", t("3-5 13:30")),
    ("confirm", "please move my visit on the 10th at 10 to friday at 2", t("3-6 14:00")),
    ("confirm", "move it to friday at 3 from monday", t("3-6 15:00")),
    ("visit", "i came in last monday at 3", {}),
    ("visit", "on veterans' day", t("11-11")),
    ("visit", "please invite ann to the school visit on friday at 2", t("3-6 14:00")),
    ("visit", "the 2nd visit is good on friday", t("3-6")),
    # marks between the parts of a date; a day that is asked about
    ("visit", "mon., 9 mar 2026 at 2 pm", t("3-9 14:00")),
    ("visit", "march 06,2026", t("3-6")),
    ("visit", "sept, 08, 2026", t("9-8")),
    ("visit", "is the 14th available?", t("3-14")),
    ("time", "11 preferably", t("3-5 11:00")),
    ("visit", "how busy are you at 3 tomorrow", t("3-5 15:00")),
    ("visit", "i was wondering if there was a slot on friday", t("3-6")),
    # asked for, and not told of the customer's own day
    ("visit", "can we have the class inspection at 3pm on friday", t("3-6 15:00")),
    ("visit", "set the school van check for 3pm on friday", t("3-6 15:00")),
    ("visit", "we have a class friday at 3", {}),
    ("visit", "have the tires done by friday", {}),
    ("visit", "my wife said friday works", t("3-6")),
    ("visit", "he said he can do friday at 3", t("3-6 15:00")),
    ("visit", "they said the part arrives friday", {}),
    ("visit", "i want to hang out with ann there on friday at 3pm", t("3-6 15:00")),
]
