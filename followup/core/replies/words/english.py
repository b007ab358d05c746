"""English words for days, times and glue, grouped by what they mean to the grammar of dates and times."""

from __future__ import annotations

from followup.core.replies.words import holidays
from followup.core.replies.words.entry import Entry, entries, word_set

_WEEKDAYS = (
    "monday|mondays|mon",
    "tuesday|tuesdays|tue|tues|tus|tu",
    "wednesday|wednesdays|wed|weds|wedn|wensday|wendsday",
    "thursday|thursdays|thu|thur|thurs|thrs|thursd",
    "friday|fridays|fri|frid",
    "saturday|saturdays|sat|satur",
    "sunday|sundays|sun",
)
_MONTHS = (
    "january|jan",
    "february|feb|febr",
    "march|mar",
    "april|apr",
    "may",
    "june|jun",
    "july|jul",
    "august|aug",
    "september|sep|sept",
    "october|oct",
    "november|nov",
    "december|dec",
)
_NUMBERS = {
    "zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
    "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
    "seventeen": 17, "eighteen": 18, "nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50,
}  # fmt: skip
_ORDINALS = (
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
    "seventeenth",
    "eighteenth",
    "nineteenth",
    "twentieth",
)

ENTRIES: tuple[Entry, ...] = (
    *(entry for value, words in enumerate(_WEEKDAYS) for entry in entries("weekday", value, words)),
    *(entry for value, words in enumerate(_MONTHS, 1) for entry in entries("month", value, words)),
    *(entry for word, value in _NUMBERS.items() for entry in entries("num", value, word)),
    *(entry for value, word in enumerate(_ORDINALS, 1) for entry in entries("ordinal", value, word)),
    *entries("ordinal", 30, "thirtieth"),
    *entries("relday", 0, "today|todays|tday"),
    *entries("relday", 1, "tomorrow|tmrw|tmw|tmr|tmrow|tomorow|tommorow|tommorrow|tomorrows|tom|tomoro"),
    *entries("relday", 1, "the next day|the following day|following day"),
    *entries("relday", 2, "day after tomorrow|the day after tomorrow|overmorrow|day after tmrw|the day after tmrw"),
    *entries("relday", -1, "yesterday|day before|last night"),
    *entries("relday", -2, "day before yesterday|the day before yesterday"),
    *entries(
        "part",
        "first_thing",
        "first thing|first thing in the morning|first thing in the am|right when you open|"
        "when you open|right at opening|at opening|opening time|when you guys open|when yall open|"
        "as soon as you open|bright and early|1st thing",
    ),
    *entries(
        "part",
        "first_thing",
        "1st thing in the morning|when u open|first thing morning|start of the day|start of day|beginning of the day",
    ),
    *entries("part", "early", "early morning|early in the morning|early am|early in the day"),
    *entries(
        "part",
        "morning",
        "morning|mornings|mornin|in the morning|forenoon|am hours|before noon|before lunch|"
        "before midday|early part of the day|any time before lunch|anytime before lunch|sometime before lunch|"
        "any time before noon|anytime before noon|sometime before noon",
    ),
    *entries("part", "late_morning", "late morning|late in the morning|mid morning|midmorning|later in the morning"),
    *entries(
        "part",
        "noon",
        "noon|midday|mid day|noontime|noonish|high noon|middle of the day|the middle of the day|12 noon|12 midday|"
        "noon time",
    ),
    *entries(
        "part",
        "lunch",
        "lunch|lunchtime|lunch time|my lunch break|lunch hour|lunch break|over lunch|my lunch hour|lunchtimes",
    ),
    *entries(
        "part",
        "afternoon",
        "afternoon|afternoons|aft|arvo|the afternoon|early afternoon|early in the afternoon|"
        "mid afternoon|midafternoon|after noon",
    ),
    *entries("part", "after_lunch", "after lunch|after my lunch|after lunchtime|after lunch time"),
    *entries(
        "part",
        "late_afternoon",
        "late afternoon|late in the afternoon|later in the afternoon|late in the day|"
        "later in the day|end of the afternoon",
    ),
    *entries(
        "part",
        "end_of_day",
        "end of day|end of the day|eod|before closing|before close|before you close|"
        "before you guys close|before you lock up|right before closing|close of business|cob|by closing|by close|"
        "last thing|day end|last hour|the last hour|last hour of the day|last hour before you close|"
        "last hour before you lock up|before you guys lock up",
    ),
    *entries(
        "part",
        "evening",
        "evening|evenings|eve|night|nite|after work|after hours|after i get off work|"
        "after im off work|when i get off work|after i get off|when i get off|once i get off work|"
        "after im done with work|when im off work|after my shift|late evening|early evening",
    ),
    *entries("part", "tonight", "tonight|tonite|tonights|this evening tonight"),
    *entries("part", "midnight", "midnight"),
    *entries("ampm", "am", "am|a.m|a m|in the am|ams"),
    *entries("ampm", "pm", "pm|p.m|p m|in the pm|pms"),
    *entries("unit", "day", "day|days"),
    *entries("unit", "workday", "business day|business days|work days|working day|working days|workday|workdays"),
    *entries("unit", "week", "week|weeks|wk|wks"),
    *entries("unit", "fortnight", "fortnight|fortnights"),
    *entries("unit", "month", "month|months|mo|mos"),
    *entries("unit", "year", "year|years|yr|yrs"),
    *entries("unit", "hour", "hour|hours|hr|hrs|h"),
    *entries("unit", "minute", "minute|minutes|min|mins"),
    *entries("now", 0, "now|right now|right away now|at the moment"),
    *entries("weekend", 0, "weekend|weekends|wknd|wkend|the weekend"),
    *entries("midweek", 0, "midweek|mid week|middle of the week|middle of week"),
    *entries("weekdays", 0, "weekday|weekdays|week day|during the week"),
    *entries("next", 1, "next|nxt|following|the following|the next"),
    *entries("this", 0, "this|current|this very"),
    *entries("coming", 0, "this coming|coming|upcoming|this upcoming|the coming|the upcoming"),
    *entries("last", 0, "last|previous|past few"),
    *entries("ahead", 0, "from now|from today|out|hence|time|from tdy"),
    *entries(
        "after",
        0,
        "starting from|on or after|commencing|"
        "anytime past|any time past|sometime past|after|any time after|anytime after|later than|"
        "past like|starting at|starting|from about|"
        "no earlier than|not before|not earlier than|not until|no sooner than|not till|"
        "sometime after|beginning|after about|after around|aftr|beginning at|any earlier than|as of|"
        "from after",
    ),
    *entries(
        "before",
        0,
        "before|earlier than|prior to|b4|any time before|anytime before|sometime before|bfore|ahead of|sooner than",
    ),
    *entries("by", 0, "by|on or before|no later than|not later than|at the latest by|not after|by about|by around"),
    *entries(
        "around",
        0,
        "around|about|approximately|approx|roughly|near|close to|closer to|abt|arnd|like around|"
        "sometime around|at around|at about|around about|say around|circa|somewhere around|"
        "right around",
    ),
    *entries("ish", 0, "ish|or so|or thereabouts|or around then|give or take"),
    *entries(
        "onward",
        0,
        "onwards|onward|or later|or after|and later|and after|at the earliest|and on|earliest|"
        "or any time after|or anytime after|and up|forward",
    ),
    *entries("orearlier", 0, "or earlier|or before|at the latest|latest|or sooner"),
    *entries("between", 0, "between|btwn|btw|anywhere between|any time between|anytime between|sometime between"),
    *entries("from", 0, "from|anytime from|any time from"),
    *entries("to", 0, "to|through|thru|and like"),
    *entries(
        "until",
        0,
        "until|til|till|untill|back on|back in town on|home on|return on|returning on|get back on|"
        "be back on|back home on|wait until|wait till|back by|home by|back in town",
    ),
    *entries("at", 0, "at|@|for|say|maybe|perhaps|how about|what about|how bout|what bout|lets say|let us say|a las"),
    *entries("on", 0, "on"),
    *entries("in", 0, "in|within|over|during"),
    *entries("of", 0, "of|o"),
    *entries("the", 0, "the|da"),
    *entries("a", 0, "a|an"),
    *entries("and", 0, "and|&|n|plus|as well as"),
    *entries(
        "or",
        0,
        "or|either|or else|otherwise|alternatively|or maybe|or possibly|or even|if not|failing that|"
        "then maybe|or perhaps",
    ),
    *entries(
        "any",
        0,
        "any|anytime|any time|all|whole|all day|whenever|sometime|some time|anyday|any day|some|"
        "anytime on|any time on|each|every",
    ),
    *entries(
        "early",
        0,
        "early|beginning of|start of|the beginning of|the start of|early in|early part of|"
        "first part of|front half of|first half of|early on",
    ),
    *entries("mid", 0, "mid|middle of|the middle of"),
    *entries(
        "late",
        0,
        "late|end of|the end of|late in|later|end|tail end of|later in|later part of|latter part of|"
        "back half of|second half of|towards the end of|toward the end of",
    ),
    *entries("half", 0, "half past|half after|half"),
    *entries("quarter", 15, "quarter|a quarter"),
    *entries("quarter", 45, "three quarters"),
    *entries("past", 0, "past"),
    *entries("oclock", 0, "oclock|o clock|clock|hundred hours|hrs sharp|sharp|on the dot|on the nose|hundred"),
    *entries("couple", 2, "couple|couple of|a couple of|a couple|cple"),
    *entries("few", 0, "few|a few|several"),
    *entries("half_hour", 30, "half an hour|a half hour|half hour"),
    *entries("season", 3, "spring|springtime|the spring"),
    *entries("season", 6, "summer|summertime|the summer"),
    *entries("season", 9, "fall|autumn|the fall"),
    *entries("season", 12, "winter|wintertime|the winter"),
    *entries(
        "holidays",
        0,
        "holidays|the holidays|holiday season|the holiday season|xmas holidays|christmas holidays|festive season|"
        "christmas time|christmastime|xmas time",
    ),
    *holidays.ENGLISH,
    *entries(
        "except", 0, "but|except|but not|except for|excluding|other than|besides|apart from|aside from|anything but"
    ),
    *entries(
        "correction",
        0,
        "no wait|wait no|i mean|i meant|scratch that|oops|correction|sorry i meant|sorry i mean|"
        "make that|make it|actually no|oh wait|no sorry|nvm|nevermind|never mind|wait|sorry|"
        "no actually|er|i mean to say|whoops|my bad",
    ),
    *entries(
        "word",
        0,
        "good morning|good afternoon|good evening|good night|great evening|great afternoon|"
        "great weekend|great night|good weekend|nice weekend|nice evening|nice night|nice afternoon|"
        "number of nights|good nite",
    ),
    *entries(
        "word",
        0,
        "stop by|come by|swing by|drop by|coming by|stopping by|pop by|run by|roll by|swinging by|"
        "dropping by|bring it by|drop it by|came by|passed by|go by|be by",
    ),
    *entries(
        "word",
        0,
        "good morning|good mornin|good evening|good afternoon|good night|good day|happy friday|"
        "happy monday|happy thanksgiving|happy holidays|merry christmas|happy new year|happy easter|"
        "5 star|one star",
    ),
    *entries("weekday", 2, "hump day"),
    *entries("part", "first_thing", "crack of dawn|the crack of dawn"),
    *entries("part", "first_thing", "when the doors open|as soon as the doors open|when the doors unlock"),
    *entries("instead_of", 0, "instead of|rather than|in place of|in lieu of"),
)

MARKERS = word_set(
    "the an is are was i im ill my me you your it its to for can cant do dont not no yes on at"
    " in of and or but this that"
    " what when where how who why with have has had will would please thanks thank just need"
    " want car tire tires brakes oil"
    " works work ok good morning afternoon today tomorrow monday tuesday wednesday thursday"
    " friday saturday sunday next week"
    " already sold stop help price cost miles sure sounds great fine later call time any so if"
    " there be we they he she been"
    " heck hell sooner later someone anyone thing back take u ur r lol"
    " get got go going come coming after before around about still now yeah yep nope new wrong number much long"
)
"""Words that show that a text is English."""
