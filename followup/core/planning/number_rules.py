"""May a text leave to this number now? One answer for planning, sending, the page and `followup may-text`.

Every rule is one function with the row that decided in its words: a line of the consent ledger, a switch, a state's
hours, an earlier text. What only time heals (hours, spacing, caps, a text that is still unread) has a next moment;
everything else waits for a person. What stops a single car or item is `stops.py` and `item_stops.py`.

Sources: 47 CFR 64.1200(a)(10) and (a)(12) (stops), (c)(1) (hours), (f)(9) (written consent); the trade rules.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from followup.core.consent import in_words
from followup.core.planning.hours import lands_by, may_leave, next_moment
from followup.core.planning.picture import Because, NumberPicture
from followup.core.planning.spacing import too_often
from followup.core.planning.state_hours import most_in_24_hours
from followup.core.text import ANSWERS_WITHIN, AT_ANY_HOUR, LEAVES_IN_SPITE_OF_A_STOP, WEEKLY, Cover, Kind, reason

CANNOT_RECEIVE = ("landline", "fixed_voip")
# Rules that time alone ends.
PASSES = frozenset({"hours", "unread", "spacing", "try_spacing", "cap_30", "cap_365", "subject_24_hours"})
BY_A_PERSON = "from_a_person"
READ_WITHIN = timedelta(seconds=15)
# What is queued waits so long for the answer to "shall we stop?"; then silence was a stop.
HELD_FOR = timedelta(hours=24)
_LOOK_AHEAD_DAYS = 366
_DAY = timedelta(days=1)


@dataclass(frozen=True)
class About:
    """What a text is about. `reason` is a code of `core/text.py`, "" where none in particular is meant.

    `was_asked_for`: the customer asked for it in that very thread; `is_from_a_person`: somebody's own words.
    `raised_by` and `is_legal` are those of an invite, for its tries.
    """

    kind: Kind
    cover: Cover | None
    reason: str = ""
    was_asked_for: bool = False
    is_from_a_person: bool = False
    raised_by: str = ""
    is_legal: bool = False


@dataclass(frozen=True)
class MayText:
    """Whether a text may leave then; `because` names every rule against it, or those that allow it.

    `next_at` (aware UTC) is the next moment at which all rules allow it; None where a person has to act first, or no
    hour fits. `lands_by`: until when it may still reach the phone.
    """

    may: bool
    because: tuple[Because, ...]
    next_at: datetime | None
    lands_by: datetime | None = None

    @property
    def says(self) -> str:
        """What decides, as one sentence: of several against it the first that does not pass by itself."""
        first = next((one for one in self.because if one.rule not in PASSES), self.because[0])
        return f"{first.says[:1].upper()}{first.says[1:]}."


Rule = Callable[[About, NumberPicture, datetime], Because | None]


def about_reason(code: str) -> About:
    """A text of that reason."""
    about = reason(code)
    return About(about.kind, about.cover, code)


def by_a_person(number: NumberPicture) -> About:
    """A person's own words; a number that ever wrote to us asked for them."""
    was_asked_for = number.written_at is not None
    return About("visit", "visits", BY_A_PERSON, was_asked_for=was_asked_for, is_from_a_person=True)


def may_text(about: About, number: NumberPicture, now: datetime) -> MayText:
    """Decide; see the module's words. `now` is aware UTC."""
    against = (*stops_of_number(about, number, now), *_for_now(about, number, now))
    hours_of = _kind_of_hours(about, number, now)
    if not against:
        hours = may_leave(hours_of, now, number.shop, number.where)
        allowed = (_allowed_by(about, number), Because(hours.rule, hours.says))
        return MayText(True, allowed, now, lands_by(hours_of, now, number.shop, number.where))
    lasts = any(one.rule not in PASSES for one in against)
    return MayText(False, against, None if lasts else _next(about, number, now))


def stops_of_number(about: About, number: NumberPicture, now: datetime) -> Iterator[Because]:
    """All that stops such a text whatever the hour, in the order of what weighs most."""
    for rule in _LASTING:
        found = rule(about, number, now)
        if found:
            yield found


# What lasts until somebody acts ----------------------------------------------------------------------------------
def sending_is_stopped(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """The owner's switches: one for what we start and texts about visits, one for everything."""
    rules, version = number.shop.rules, number.shop.rules_version
    if rules.is_everything_off:
        return Because("stopped_by_owner", f"the owner has switched everything off (rules, version {version})")
    if rules.is_sending_stopped and about.kind != "answer":
        return Because("stopped_by_owner", f"the owner has stopped all texts of the shop (rules, version {version})")
    return None


def registration_missing(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """US numbers get nothing through a provider before the carriers' registration stands in the machine's settings;
    what the shop's page notes of it opens nothing."""
    if number.needs_registration and number.phone.number.startswith("+1"):
        return Because("registration", "the shop's registration with the carriers is not in the settings")
    return None


def number_cannot_receive(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """Landlines, fixed VoIP and numbers that a provider called bad go to the phone list. Whoever wrote to us by text
    can read an answer."""
    if about.kind == "answer" and number.written_at is not None:
        return None
    if number.phone.bad_because:
        return Because("bad_number", f"the number cannot be texted: {number.phone.bad_because}")
    if number.phone.line in CANNOT_RECEIVE:
        line = "landline" if number.phone.line == "landline" else "fixed line over the internet"
        return Because("landline", f"the number is a {line}: call instead")
    return None


def number_is_held(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """It may be somebody else's by now: nothing that we start leaves until a person looked."""
    if number.phone.held_because and about.kind != "answer":
        return Because("reassigned", f"{number.phone.held_because}: a person looks first")
    return None


def nobody_has_it(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """The last person's tie to the number ended, by the word of who has it now: nothing leaves on it until a person
    looked."""
    if number.nobody_because and about.kind != "answer" and not about.is_from_a_person:
        return Because("nobody", f"nobody of the shop has this number now: {number.nobody_because}")
    return None


def stop_stands(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """A stop binds the number: all cars, persons and covers. HELP and what belongs to the stop leave all the same."""
    if not number.consent.is_stopped or about.reason in LEAVES_IN_SPITE_OF_A_STOP:
        return None
    entry = number.consent.decided_by
    if number.consent.is_held and entry and now - entry.at < HELD_FOR:
        return Because("confirm_stop", f"we asked whether to stop everything, and wait for it: {in_words(entry)}")
    return Because("stop", f"the number asked us to stop texting: {in_words(entry) if entry else 'it stands'}")


def is_deceased(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """A death turns every text off."""
    return Because("deceased", "every text is off for this person") if number.is_deceased else None


def is_fleet(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """A fleet's contact gets one list a week instead of invites."""
    if about.kind == "invite" and number.is_fleet and about.reason not in WEEKLY:
        return Because("fleet", "a fleet contact gets the weekly list instead")
    return None


def is_paused(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """An advisor paused the customer up to a day."""
    until = number.paused_until
    if about.kind == "invite" and until and number.day(now) < until:
        return Because("paused", f"an advisor paused invites until {until}")
    return None


def symptom_is_open(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """While a symptom or a serious matter is open, only a person's words and answers leave."""
    if about.kind == "answer" or about.is_from_a_person:
        return None
    if number.has_open_symptom:
        return Because("symptom", f"a symptom is open{_since(number)}: a person calls first")
    if number.is_frozen:
        return Because("with_a_person", "a serious matter is open: a person has this thread")
    return None


def complaint_is_open(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """Nobody with an open complaint is invited."""
    if about.kind == "invite" and number.has_open_complaint:
        return Because("complaint", f"a complaint is open{_since(number)}: a person calls first")
    return None


def person_has_thread(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """The machine invites nobody with whom a person writes."""
    if about.kind == "invite" and number.is_with_a_person:
        return Because("with_a_person", "a person is writing with them now")
    return None


def no_consent(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """No consent for what it is about (a stop has words of its own). What a customer asked for about a visit, in that
    very thread, needs no other; answers need none."""
    if about.cover is None or number.consent.is_stopped or number.consent.allows(about.cover):
        return None
    if about.kind == "visit" and about.was_asked_for:
        return None
    entry = number.consent.decided_by
    return Because("no_consent", f"no consent for {about.cover}{f'; {in_words(entry)}' if entry else ''}")


_LASTING: tuple[Rule, ...] = (
    sending_is_stopped, registration_missing, number_cannot_receive, number_is_held, nobody_has_it,
    stop_stands, is_deceased, is_fleet,
    is_paused, symptom_is_open, complaint_is_open, person_has_thread, no_consent,
)  # fmt: skip


# What time alone ends --------------------------------------------------------------------------------------------
def is_unread(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """What they wrote is read before anything else leaves: it may be a stop."""
    if number.unread_since is None or about.reason in AT_ANY_HOUR:
        return None
    return Because("unread", f"a text of theirs of {_at(number, number.unread_since)} has not been read yet")


def is_out_of_hours(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """The hours of its kind, in every zone where the phone may be; an answer that comes late keeps to those of texts
    about visits."""
    kind = _kind_of_hours(about, number, now)
    verdict = may_leave(kind, now, number.shop, number.where)
    if verdict.may:
        return None
    is_late = about.kind == "answer" and number.written_at
    late = f"it answers what was written at {_at(number, number.written_at)}; " if is_late and number.written_at else ""
    return Because(verdict.rule, late + verdict.says)


def too_many_on_a_subject(about: About, number: NumberPicture, now: datetime) -> Because | None:
    """Some states allow so many texts about one subject in 24 hours."""
    found = most_in_24_hours((number.shop.state, number.where.state))
    if found is None or about.kind == "answer" or about.is_from_a_person:
        return None
    most, row = found
    count = sum(now - _DAY < at <= now for at in number.told_at)
    if count < most:
        return None
    return Because("subject_24_hours", f"{count} texts about it in 24 hours; {row.state} allows {most} ({row.source})")


def _for_now(about: About, number: NumberPicture, now: datetime) -> Iterator[Because]:
    for rule in (is_unread, is_out_of_hours, too_many_on_a_subject):
        found = rule(about, number, now)
        if found:
            yield found
    if about.kind == "invite" and about.reason not in WEEKLY:
        yield from too_often(number, about.reason or "due_work", about.raised_by, now, is_legal=about.is_legal)


def _kind_of_hours(about: About, number: NumberPicture, now: datetime) -> Kind:
    """Whose hours it keeps to: an answer leaves at any hour while somebody may be waiting for it."""
    if about.kind != "answer" or about.reason in AT_ANY_HOUR or number.written_at is None:
        return about.kind
    return "answer" if now - number.written_at <= ANSWERS_WITHIN else "visit"


def _next(about: About, number: NumberPicture, now: datetime) -> datetime | None:
    """The next moment at which nothing is against it; looked for day by day, a year at most."""
    kind = _kind_of_hours(about, number, now)
    after = now + READ_WITHIN if is_unread(about, number, now) else now
    moment = next_moment(kind, after, number.shop, number.where)
    for _ in range(_LOOK_AHEAD_DAYS):
        if moment is None or all(one.rule == "unread" for one in _for_now(about, number, moment)):
            return moment
        moment = next_moment(kind, moment + _DAY, number.shop, number.where)
    return None


def _allowed_by(about: About, number: NumberPicture) -> Because:
    """What allows it: the line of the ledger, their own request, or that it answers them."""
    entry = number.consent.decided_by
    if about.cover is None:
        return Because("answer", "it answers what they wrote; no stop is in its way")
    if number.consent.allows(about.cover):
        return Because("consent", f"consent for {about.cover} stands: {in_words(entry) if entry else ''}")
    return Because("asked_for", "they asked for it themselves, in this thread")


def _since(number: NumberPicture) -> str:
    return f" since {_at(number, number.open_since)}" if number.open_since else ""


def _at(number: NumberPicture, at: datetime) -> str:
    return f"{at.astimezone(ZoneInfo(number.shop.zone)):%Y-%m-%d %H:%M}"
