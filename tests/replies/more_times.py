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
]  # fmt: skip
