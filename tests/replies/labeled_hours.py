"""Hours and days as people type them in other ways: (context, text, what the result holds). Written by us.

What they mean is the reply contract's. Keys and contexts as in `labeled_times.py`.
"""

from __future__ import annotations

from followup.rehearsal.bench.labeled_times import Told, t

ENGLISH: list[Told] = [
    # minutes before an hour, and what is a range
    ("day", "thurs before 10 to 3", t("3-5 07:30-14:50")),
    ("day", "thurs after 5 to 2", t("3-5 13:55-18:00")),
    ("day", "friday 10 to 4 in the afternoon", t("3-6 15:50")),
    ("time", "5 to 3 then", t("3-5 14:55")),
    ("time", "the time 10 to 2 please", t("3-5 13:50")),
    ("time", "10 to 4", t("3-5 10:00-16:00")),
    ("time", "9 to 11", t("3-5 09:00-11:00")),
    ("day", "mon quarter to 12 pm", t("3-9 11:45")),
    ("day", "mon ten to twelve am", t("3-9", q="time")),
    # hours and minutes as two numbers
    ("day", "13 45 then", t("3-4 13:45")),
    ("day", "ok so i said, 15 20", t("3-4 15:20")),
    ("day", "at 14 30 march 9th", t("3-9 14:30")),
    ("day", "thursday, the time 8 35 please", t("3-5 08:35")),
    ("day", "can you do 4 15 in the afternoon tomorrow", t("3-5 16:15")),
    ("day", "the day monday and the time 2", t("3-9 14:00")),
    ("time", "is 8 ok", t("3-5 08:00")),
    ("visit", "is 8 ok", t("08:00", q="day")),
    ("visit", "would 9 be possible", t("09:00", q="day")),
    ("day", "ok 11 20 will do", t("3-4 11:20")),
    ("day", "would 9 45 be okay", t("09:45", q="day")),
    ("day", "make it 14 50 on monday", t("3-9 14:50")),
    ("day", "16 00 sounds good", t("3-4 16:00")),
    ("day", "at 14 15 the 18 march", t("3-18 14:15")),
    ("day", "10 15 dollars", {}),
    ("day", "time: 2 40 pm", t("3-4 14:40")),
    ("time", "make it 5 to 3 pm", t("3-5 14:55")),
    ("time", "no, 15 00", t("3-5 15:00")),
    ("day", "my preferred time is 2", t("3-4 14:00")),
    ("time", "i said 3", t("3-5 15:00")),
    ("day", "i can only do 4", t("3-4 16:00")),
    ("day", "does 2 suit you", t("3-4 14:00")),
    ("day", "book it for 3 on the 11th", t("3-11 15:00")),
    ("day", "book it for 3 on 3/11", t("3-11 15:00")),
    ("day", "monday, 2", t("3-9 14:00")),
    ("day", "the 9th, 4 tires", t("3-9")),
    ("time", "the earliest i can do is 11", t("3-5 11:00-18:00")),
    ("time", "my latest would be 3", t("3-5 07:30-15:00")),
    # a short Saturday beside an hour
    ("visit", "sat around 9", t("3-7 08:30-09:30")),
    ("visit", "sat in the morning", t("3-7 08:00-12:00")),
    ("visit", "sat for half past 9", t("3-7 09:30")),
    ("visit", "it sat there for 3 hours", {}),
    # weeks and days from which on
    ("day", "a week starting on monday", t("3-9..3-14")),
    ("day", "the week starting the 16th", t("3-16..3-21")),
    ("day", "from the 16th on", t("3-16..3-21")),
    ("day", "the 16th or later", t("3-16..3-21")),
    ("day", "the weekend of the 14th", t("3-14")),
    ("day", "the weekend of the 18th", t("3-21", q="day")),
    ("day", "weekend in the week of the 16th", t("3-21")),
    ("day", "a weekend for my wife and me, the 28 march", t("3-28")),
    ("visit", "maybe a weekend in may", {"un": "2026-05-01"}),
    ("day", "you can close it any time starting friday", t("3-6..3-12")),
    ("day", "it can stay with you from today", t("3-4")),
    ("day", "book me for a fortnight today at 3 pm", t("3-18 15:00")),
    ("day", "i can come the 3rd of next month", t("4-3")),
    ("day", "next month", {"un": "2026-04-01"}),
    # what a day is told for
    ("day", "why am i not able to book for friday", t("3-6")),
    ("day", "i am not able to come friday", {"a": ["3-6"], "q": "day"}),
    ("day", "it must be friday", t("3-6")),
    ("confirm", "it must be changed to the 16th", t("3-16")),
    ("confirm", "please delay it to 3", t("3-5 15:00")),
    ("confirm", "can we do 11 that day", t("3-5 11:00")),
    ("confirm", "can we do 11 instead", t("3-5 11:00")),
    # a yes and a no to days
    ("day", "friday no, saturday yes", {"t": ["3-7"], "a": ["3-6"]}),
    ("day", "friday yes, saturday no", {"t": ["3-6"], "a": ["3-7"]}),
    ("day", "not today, the 8th april", {"t": ["4-8"], "a": ["3-4"]}),
    ("day", "not friday, the 9th", {"t": ["3-9"], "a": ["3-6"]}),
    ("day", "friday no problem", t("3-6")),
]

SPANISH: list[Told] = [
    ("day", "el viernes no, el sabado si", {"t": ["3-7"], "a": ["3-6"]}),
    ("day", "el lunes si, el martes no", {"t": ["3-9"], "a": ["3-10"]}),
    ("day", "el viernes no pero el sabado si", {"t": ["3-7"], "a": ["3-6"]}),
    ("day", "el lunes no hay problema", t("3-9")),
]
