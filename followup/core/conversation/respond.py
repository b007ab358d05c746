"""What is done with a reply: the questions that come before the table, then the table, then the state that follows.

The order of the questions is the order of what matters: a reaction (our own words, which never count), a death, a
stop, a symptom, legal words, a person in the thread, certainty, what is missing, and only then what the table says.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from followup.core.conversation.after import state_after
from followup.core.conversation.effects import (
    AddOdometer,
    AddPhoneTask,
    AlertKind,
    Answer,
    DropUnsentQuestions,
    Effect,
    EndTie,
    FreezeThread,
    GiveConsentAgain,
    HoldForStop,
    ListForEndOfDay,
    NameCar,
    NarrowConsent,
    OpenComplaint,
    OpenSymptom,
    PassToPerson,
    RaiseAlert,
    TakeBackConsent,
    TurnAllOff,
)
from followup.core.conversation.state import (
    MOST_QUESTIONS_BACK,
    SEVERITY_RANK,
    YES_IS_OLD_AFTER,
    Around,
    Conversation,
    Heard,
    Severity,
)
from followup.core.conversation.table import Row, ask_for_time, row_for
from followup.core.replies.contract import ReplyOut
from followup.core.text import CONFIRMED_WITHIN, LEAVES_IN_SPITE_OF_A_STOP, reason

# Questions of the customer that are answered first, before what we ask or note.
ANSWERED_FIRST = ("help", "price", "duration", "explain", "where")
# What is never asked back about, however unsure the reading: doubt itself means the careful way.
NEVER_ASKED_BACK = frozenset(
    {"stop", "symptom", "stranger", "gone", "complaint", "call", "resume", "help", "thanks", "unclear"}
)
ABOUT_TIMES = frozenset({"move", "choose", "accept", "propose"})
STOP_CONFIRMED_WITHIN_MINUTES = int(CONFIRMED_WITHIN.total_seconds() // 60)


@dataclass(frozen=True)
class Step:
    """The outcome of one reply: the state that follows and what to do, in order; `why` names the rule that decided."""

    state: Conversation
    effects: tuple[Effect, ...]
    why: str


def respond(state: Conversation, heard: Heard, around: Around, now: datetime) -> Step:
    """Decide on one reply. `state.asked` must be what was asked when it was written (`asked_when_written`).

    Every state answers every meaning; nothing is ever left without an answer, an alert or a reason for silence.
    """
    for rule in (_reaction, _death, _stop, _stop_question, _symptom, _legal_words, _person_has_it, _unsure, _missing):
        effects = rule(state, heard, around, now)
        if effects is not None:
            return _step(state, _and_pictures(heard, effects), now, rule.__name__.strip("_"))
    return _step(state, _and_pictures(heard, _by_table(state, heard, around, now)), now, "table")


def _and_pictures(heard: Heard, effects: list[Effect]) -> list[Effect]:
    """A picture is seen by a person, also beside words that were answered: it may show what the words do not say."""
    if not heard.pictures or any(isinstance(effect, RaiseAlert) for effect in effects):
        return effects
    return [*effects, ListForEndOfDay("a picture came with the text")]


def _step(state: Conversation, effects: list[Effect], now: datetime, why: str) -> Step:
    kept = _told_once(_within_the_stop(state, effects))
    if any(isinstance(effect, Answer) for effect in kept):
        kept.insert(0, DropUnsentQuestions())
    return Step(state_after(state, kept, now), tuple(kept), why)


def _within_the_stop(state: Conversation, effects: Iterable[Effect]) -> Iterable[Effect]:
    """The effects without the texts that a standing stop forbids; what they would have said is said by phone."""
    is_stopped = state.is_stopped
    for effect in effects:
        if isinstance(effect, TakeBackConsent | HoldForStop):
            is_stopped = True
        elif isinstance(effect, GiveConsentAgain):
            is_stopped = False
        if isinstance(effect, Answer) and is_stopped and effect.reason not in LEAVES_IN_SPITE_OF_A_STOP:
            yield AddPhoneTask(f"a stop stands, so no text may say it: {reason(effect.reason).words}")
        else:
            yield effect


def _told_once(effects: Iterable[Effect]) -> list[Effect]:
    """The effects with one phone task and one alert a kind, their words joined: nobody is told twice of one text."""
    kept: dict[object, Effect] = {}  # each stays where its first stood
    for number, effect in enumerate(effects):
        match effect:
            case RaiseAlert(kind, words):
                before = kept.get(kind)
                kept[kind] = RaiseAlert(kind, f"{before.words}; {words}") if isinstance(before, RaiseAlert) else effect
            case AddPhoneTask(because):
                task = kept.get(AddPhoneTask)
                both = f"{task.because}; {because}" if isinstance(task, AddPhoneTask) else because
                kept[AddPhoneTask] = AddPhoneTask(both)
            case _:
                kept[number] = effect
    return list(kept.values())


def _reaction(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """A thumbs up to `confirm` keeps the booking, which stands anyway; all other reactions are only listed."""
    if not heard.is_reaction:
        return None
    says_yes = heard.reply.meanings[0] == "accept" and state.asked in ("confirm", "visit") and state.has_booking
    is_silent = state.is_stopped or state.is_with_a_person(now)
    return [Answer("booking_stands")] if says_yes and not is_silent else [ListForEndOfDay("a reaction to a text")]


def _death(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    if not heard.tells_of_death:
        return None
    return [TurnAllOff(), FreezeThread(), RaiseAlert("death", "the customer may have died: no text leaves")]


def _stop(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """A stop, or a yes to `confirm_stop`: taken back at once, confirmed once, and what stands goes to the phone."""
    reply = heard.reply
    is_asked = state.asked == "confirm_stop"
    is_stop = "stop" in reply.meanings or (is_asked and reply.meanings[0] == "accept")
    if not is_stop or reply.question == "confirm_stop":
        return None
    effects: list[Effect] = [TakeBackConsent("asked and confirmed" if is_asked else "stop")]
    if (not state.is_stopped or is_asked) and not around.is_stop_confirmed:
        effects.append(Answer("stopped", valid_minutes=STOP_CONFIRMED_WITHIN_MINUTES))
    if not is_asked:  # else it was listed when everything was held
        effects += _to_be_called(state)
    if "symptom" in reply.meanings:
        effects += _caution(heard, around)
    elif state.open_symptom:
        effects.append(AddPhoneTask("texts are stopped while a symptom is open: call"))
    if heard.has_legal_words:
        effects += _frozen()
    if "complaint" in reply.meanings:
        effects += [OpenComplaint(), RaiseAlert("complaint", "unhappy, and stopped the texts")]
    effects += [EndTie(one) for one in ("stranger", "gone") if one in reply.meanings]
    return effects


def _to_be_called(state: Conversation) -> list[Effect]:
    if state.has_booking or state.has_open_request:
        return [AddPhoneTask("texts are stopped, but a booking stands or was asked for: is it kept?")]
    return []


def _stop_question(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """A stop that may be meant for a part only: all is held and it is asked once; limited again, only visits stay."""
    if heard.reply.question != "confirm_stop" or "symptom" in heard.reply.meanings:
        return None
    if state.asked != "confirm_stop":
        ask = Answer("ask_confirm_stop", "confirm_stop", valid_minutes=STOP_CONFIRMED_WITHIN_MINUTES)
        effects: list[Effect] = [] if state.is_stopped else [HoldForStop(), ask, *_to_be_called(state)]
    else:
        effects = [GiveConsentAgain(), NarrowConsent(("upkeep", "offers")), Answer("a_person_reads")]
        effects.append(RaiseAlert("unclear", "wants fewer texts: only those about visits are left on"))
    if "complaint" in heard.reply.meanings:
        effects += [OpenComplaint(), RaiseAlert("complaint", "unhappy about the texts")]
    return effects or [RaiseAlert("unclear", "a stop stands already")]


def _symptom(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    if "symptom" not in heard.reply.meanings:
        return None
    severity = _severity(heard, around)
    if state.open_symptom and SEVERITY_RANK[severity] <= SEVERITY_RANK[state.open_symptom]:
        return [RaiseAlert(_alert_of(severity), "wrote again while a symptom is open")]
    effects = _caution(heard, around)
    return effects + (_frozen() if heard.has_legal_words else [])


def _severity(heard: Heard, around: Around) -> Severity:
    """A flat has its own caution only on a car known to run on flats; what no list knows counts as the stricter."""
    found = heard.symptom or "now"
    return "now" if found == "flat" and not around.is_run_flat else found


def _alert_of(severity: Severity) -> AlertKind:
    return "symptom_today" if severity == "today" else "symptom_now"


def _caution(heard: Heard, around: Around) -> list[Effect]:
    severity = _severity(heard, around)
    hours = "open" if around.is_open else "closed"
    text = "caution_run_flat" if severity == "flat" else f"caution_{severity}_{hours}"
    return [
        OpenSymptom(severity),
        RaiseAlert(_alert_of(severity), "a symptom, in the customer's own words"),
        Answer(text, valid_minutes=None, waits_for_alert=True),
    ]


def _frozen() -> list[Effect]:
    return [FreezeThread(), RaiseAlert("legal_words", "injury, lawyer, crash or fire: no automatic answer")]


def _legal_words(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    return _frozen() if heard.has_legal_words else None


def _person_has_it(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """Silent while a person has the thread (HELP aside): facts are kept, the person is told."""
    if not state.is_with_a_person(now):
        return None
    meanings = heard.reply.meanings
    effects: list[Effect] = [Answer("help", asks=state.asked)] if "help" in meanings else []
    if "resume" in meanings:
        effects.append(GiveConsentAgain())
    effects += _told_facts(heard.reply)
    effects += [EndTie(one) for one in ("stranger", "gone") if one in meanings]
    if "complaint" in meanings:
        return [*effects, OpenComplaint(), RaiseAlert("complaint", "unhappy, in a thread that a person has")]
    if "call" in meanings:
        return [*effects, RaiseAlert("call_me", "wants to be called")]
    if set(meanings) <= {"help", "thanks"}:
        return effects or [ListForEndOfDay("thanks, in a thread that a person has")]
    return [*effects, RaiseAlert("person_thread", "wrote back in a thread that a person has")]


def _unsure(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """Too unsure a reading is asked about; far too unsure, or asked twice already, it goes to a person."""
    reply = heard.reply
    if reply.meanings[0] in NEVER_ASKED_BACK or reply.certainty >= around.ask_below_certainty or heard.is_judgment:
        return None
    if row_for(reply.meanings[0], state.asked, state.has_booking).answer == "booking_stands":
        return None  # it reads the date back and changes nothing
    if reply.certainty < around.hand_over_below_certainty or state.questions_back >= MOST_QUESTIONS_BACK:
        return _hand_over("unclear", "the reply could not be read with certainty")
    if reply.question:
        return [Answer(f"ask_{reply.question}", asks=reason(f"ask_{reply.question}").asks)]
    return _ask_again(state)


def _ask_again(state: Conversation) -> list[Effect]:
    """What was asked is asked once more; what has no second question of its own is read by a person."""
    if state.asked in ("odometer", "car"):
        return [Answer(f"ask_{state.asked}", asks=state.asked)]
    if state.asked in ("confirm", "after_visit", "confirm_stop"):
        return [
            RaiseAlert("unclear", "the reply could not be read with certainty"),
            Answer("a_person_reads", state.asked),
        ]
    return [Answer("ask_again", asks="day")]


def _hand_over(kind: AlertKind, words: str) -> list[Effect]:
    return [RaiseAlert(kind, words), Answer("a_person_reads"), PassToPerson()]


def _missing(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect] | None:
    """One more word would settle it: it is asked, at most twice; then a person gets what is known."""
    reply = heard.reply
    question = reply.question or _unasked(reply, state)
    if question is None or question == "confirm_stop" or _is_for_person(reply):
        return None
    effects = _told_facts(reply) + _answered_first(state, heard, around)
    if state.questions_back < MOST_QUESTIONS_BACK:
        asks = reason(f"ask_{question}").asks
        return [*effects, Answer(_question_back(reply, question, state), asks, _offered(reply, question))]
    if reply.meanings[0] in ABOUT_TIMES:
        effects.append(ask_for_time(reply, state))
    return effects + _hand_over("request", "two questions did not settle it")


def _unasked(reply: ReplyOut, state: Conversation) -> str | None:
    """A question that the reading leaves to the conversation: a move without a time, a pick that fits no offer."""
    lead = reply.meanings[0]
    if lead == "move" and not reply.times:
        return "day"
    return "slot" if lead == "choose" and not reply.times and not reply.chosen else None


def _question_back(reply: ReplyOut, question: str, state: Conversation) -> str:
    """The text that asks; who only says that the booking should move first reads that it stands until then."""
    is_bare_move = question == "day" and reply.meanings[0] == "move" and not reply.times
    return "change_noted" if is_bare_move and state.has_booking else f"ask_{question}"


def _offered(reply: ReplyOut, question: str) -> tuple[str, ...]:
    return tuple(one.start for one in reply.times) if question == "slot" else ()


def _is_for_person(reply: ReplyOut) -> bool:
    return any(one in reply.meanings for one in ("stranger", "complaint", "call")) or reply.meanings[0] == "unclear"


def _told_facts(reply: ReplyOut) -> list[Effect]:
    """What was told and is kept whatever else happens: an odometer reading, which car it is about."""
    told: list[Effect] = []
    if reply.odometer and reply.question != "odometer":
        told.append(AddOdometer(reply.odometer.value, reply.odometer.unit))
    if reply.car:
        told.append(NameCar(reply.car))
    return told


def _answered_first(state: Conversation, heard: Heard, around: Around) -> list[Effect]:
    """Answers to the questions beside the lead, in their rank; a judgment is never given by text."""
    asides = [one for one in ANSWERED_FIRST if one in heard.reply.meanings[1:]]
    is_judged = _is_judgment(heard, around)
    effects: list[Effect] = []
    if is_judged:
        effects += _judgment(state)
    for aside in asides:
        if aside == "explain" and is_judged:
            continue
        row = row_for(aside, state.asked, state.has_booking)
        effects += _answer_of(row, state, heard)
    return effects


def _is_judgment(heard: Heard, around: Around) -> bool:
    return heard.is_judgment or (around.is_past_limit and "explain" in heard.reply.meanings)


def _judgment(state: Conversation) -> list[Effect]:
    return [RaiseAlert("judgment", "asks for a judgment: call within the hour"), Answer("judgment", asks=state.asked)]


def _answer_of(row: Row, state: Conversation, heard: Heard) -> list[Effect]:
    effects: list[Effect] = [made for deed in row.do if (made := deed(heard.reply, state)) is not None]
    if row.alert:
        effects.append(RaiseAlert(row.alert, row.phone_task or f"says: {', '.join(heard.reply.meanings)}"))
    if row.phone_task:
        effects.append(AddPhoneTask(row.phone_task))
    if row.answer:
        asks = state.asked if row.keeps_question else reason(row.answer).asks
        effects.append(Answer(row.answer, asks))
    if row.is_for_person:
        effects.append(PassToPerson())
    return effects


def _by_table(state: Conversation, heard: Heard, around: Around, now: datetime) -> list[Effect]:
    reply = heard.reply
    lead = _lead(reply, state)
    first = _told_facts(reply) + _answered_first(state, heard, around)
    if lead == "choose" and state.asked_at and now - state.asked_at >= YES_IS_OLD_AFTER:
        offers = (reply.chosen,) if reply.chosen else _offered(reply, "slot")
        return [*first, Answer("ask_slot", "slot", offers)]
    if lead in ("explain", "unclear") and _is_judgment(heard, around):
        return first
    main = _answer_of(row_for(lead, state.asked, state.has_booking), state, heard)
    if lead == "unclear" and state.questions_back:
        main = [effect for effect in main if not isinstance(effect, Answer)]  # never twice: it may be a machine
    others = _for_a_person_besides(state, heard, lead)
    if any(isinstance(effect, PassToPerson) for effect in others):
        main = [effect for effect in main if not (isinstance(effect, Answer) and effect.asks)]
    return first + main + others


def _lead(reply: ReplyOut, state: Conversation) -> str:
    """The first meaning; a yes with a time beside it is read as the time, except where a yes is all that counts, and
    calling off where nothing stands is for a person."""
    lead = reply.meanings[0]
    if lead == "cancel" and not (state.has_booking or state.has_open_request):
        return "unclear"
    if lead == "accept" and (reply.times or "propose" in reply.meanings) and state.asked != "confirm_stop":
        return "propose"
    return lead


def _for_a_person_besides(state: Conversation, heard: Heard, lead: str) -> list[Effect]:
    """What stands behind the lead and must reach a person all the same."""
    effects: list[Effect] = []
    for meaning in heard.reply.meanings[1:]:
        if meaning in ("stranger", "complaint", "call", "gone") and meaning != lead:
            effects += _answer_of(row_for(meaning, state.asked, state.has_booking), state, heard)
        elif meaning == "unclear" and not heard.is_judgment:
            effects.append(RaiseAlert("unclear", "a part of the reply could not be read"))
    return effects
