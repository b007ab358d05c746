"""May a text leave to this number now: every rule by itself, for each of the three kinds, and what they have in common.

Sources: 47 CFR 64.1200(a)(10), (a)(12) (stops), (c)(1) (hours), (f)(9) (consent); CTIA Messaging Principles 5.1.3 and
5.3 (HELP); Fla. Stat. 501.059 (three in 24 hours); else this project's own trade rules.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.consent import HELD, ConsentEntry, ConsentStanding, standing
from followup.core.planning import number_rules
from followup.core.planning.number_rules import PASSES, About, about_reason, by_a_person, may_text
from followup.core.planning.picture import EarlierInvite, NumberPicture
from followup.core.text import AT_ANY_HOUR, LEAVES_IN_SPITE_OF_A_STOP, REASONS
from followup.web.advisor.may_text import RULES
from tests.core.planning.cars import ALL_COVERS, NOW, PHONE, SHOP, days_ago, shop

INVITE, VISIT = about_reason("due_work"), about_reason("reminder")
ANSWER, HELP = about_reason("ask_day"), about_reason("help")
WELL = NumberPicture(SHOP, PHONE, ALL_COVERS, written_at=NOW - timedelta(minutes=2))
# 3:00 at night in Chicago.
NIGHT = datetime(2026, 3, 10, 8, 0, tzinfo=UTC)


def line(event: Any = "given", days: float = -100, **more: Any) -> ConsentEntry:
    """A line of the ledger."""
    at = NOW + timedelta(days=days)
    usual: dict[str, Any] = {"how": "tablet", "is_own_and_adult": True, "words_version": "3"}
    covers = more.pop("covers", ("visits", "upkeep", "offers"))
    return ConsentEntry(PHONE.number, event, covers, at, at.date(), **{**usual, **more})


STOPPED = standing((line(), line("taken_back", -1, how="text_in")))
HELD_NOW = standing((line(), line("taken_back", -0.01, how="text_in", because=HELD)))


def rules(about: About, picture: NumberPicture, now: datetime = NOW) -> list[str]:
    """The rules against it; [] where it may leave."""
    found = may_text(about, picture, now)
    assert all(one.says and one.rule in RULES for one in found.because), "every rule has words for the page"
    return [] if found.may else [one.rule for one in found.because]


def sent(days: float, reason: str = "due_work", raised_by: str = "other") -> EarlierInvite:
    return EarlierInvite(reason, raised_by, 1, days_ago(days), "")


def test_nothing_is_against_it_where_all_is_well() -> None:
    for about in (INVITE, VISIT, ANSWER, HELP):
        found = may_text(about, WELL, NOW)
        assert found.may and found.next_at == NOW and len(found.because) == 2, about
    assert may_text(INVITE, WELL, NOW).lands_by == datetime(2026, 3, 10, 23, 0, tzinfo=UTC), "18:00 in Chicago"


# Each rule: what is wrong, and which of the three kinds it stops (i = invite, v = visit, a = answer, h = HELP).
ONE_WRONG: list[tuple[str, dict[str, Any], str]] = [
    ("stopped_by_owner", {"shop": shop(is_sending_stopped=True)}, "iv"),
    ("stopped_by_owner", {"shop": shop(is_everything_off=True)}, "ivah"),
    ("registration", {"needs_registration": True}, "ivah"),
    ("bad_number", {"phone": replace(PHONE, bad_because="21614 not a mobile number")}, "iv"),
    ("bad_number", {"phone": replace(PHONE, bad_because="21614"), "written_at": None}, "ivah"),
    ("landline", {"phone": replace(PHONE, line="landline")}, "iv"),
    ("landline", {"phone": replace(PHONE, line="fixed_voip")}, "iv"),
    ("reassigned", {"phone": replace(PHONE, held_because="the check of reassigned numbers says yes")}, "iv"),
    ("nobody", {"nobody_because": "a stranger's number, by their word"}, "iv"),
    ("stop", {"consent": STOPPED}, "iva"),
    ("confirm_stop", {"consent": HELD_NOW}, "iva"),
    ("deceased", {"is_deceased": True}, "ivah"),
    ("fleet", {"is_fleet": True}, "i"),
    ("paused", {"paused_until": date(2026, 3, 11)}, "i"),
    ("symptom", {"has_open_symptom": True}, "iv"),
    ("with_a_person", {"is_frozen": True}, "iv"),
    ("complaint", {"has_open_complaint": True}, "i"),
    ("with_a_person", {"is_with_a_person": True}, "i"),
    ("no_consent", {"consent": standing(())}, "iv"),
    ("no_consent", {"consent": standing((line(how="spoken"),))}, "i"),
    ("unread", {"unread_since": NOW - timedelta(seconds=3)}, "ivah"),
    ("spacing", {"invites": (sent(13),)}, "i"),
    ("cap_30", {"invites": (sent(16), sent(29))}, "i"),
    ("cap_365", {"invites": tuple(sent(31 * n) for n in range(1, 9))}, "i"),
]


@pytest.mark.parametrize(
    ("rule", "wrong", "kinds"), ONE_WRONG, ids=[f"{r}-{n}" for n, (r, _, _) in enumerate(ONE_WRONG)]
)
def test_each_rule_stops_the_kinds_that_it_is_for(rule: str, wrong: dict[str, Any], kinds: str) -> None:
    picture = replace(WELL, **wrong)
    for kind, about in (("i", INVITE), ("v", VISIT), ("a", ANSWER), ("h", HELP)):
        assert (rule in rules(about, picture)) is (kind in kinds), about.kind
    assert may_text(INVITE if "i" in kinds else VISIT, picture, NOW).next_at is None or rule in PASSES


def test_help_is_answered_whatever_stands() -> None:
    # CTIA 5.1.3: whatever the subscription; only "everything off", a missing registration or a death are in its way.
    wrong: dict[str, Any] = {}
    for rule, one, kinds in ONE_WRONG:
        if "h" not in kinds and rule != "confirm_stop":
            wrong |= one
    assert rules(HELP, replace(WELL, **wrong)) == []
    assert rules(HELP, replace(WELL, written_at=NIGHT, consent=STOPPED), NIGHT) == [], "at night too"


def test_of_a_stop_its_line_decides_and_its_own_confirmation_leaves() -> None:
    found = may_text(INVITE, replace(WELL, consent=STOPPED), NOW)
    assert "taken back on 2026-03-09 (text in" in found.because[0].says
    for one in REASONS:
        against = rules(about_reason(one.code), replace(WELL, consent=STOPPED))
        assert ("stop" in against) is (one.code not in LEAVES_IN_SPITE_OF_A_STOP), one.code


def test_while_it_is_asked_whether_all_was_meant_everything_waits_for_a_day_then_silence_was_a_stop() -> None:
    # 64.1200(a)(12): until answered all kinds are off, silence means all.
    picture = replace(WELL, consent=HELD_NOW)
    assert rules(VISIT, picture) == ["confirm_stop"]
    assert rules(VISIT, picture, NOW + timedelta(days=1)) == ["stop"]
    assert may_text(VISIT, picture, NOW).next_at is None, "no time alone ends it"


def test_consent_names_the_line_that_allows_or_refuses() -> None:
    ledger = (line(), line("narrowed", -9, covers=("upkeep", "offers"), how="text_in"))
    picture = replace(WELL, consent=standing(ledger))
    assert (
        "no consent for upkeep; a part was taken back on 2026-03-01" in may_text(INVITE, picture, NOW).because[0].says
    )
    allowed = may_text(INVITE, replace(WELL, consent=standing((line(),))), NOW).because[0]
    assert allowed.says.endswith("given on 2025-11-30 (tablet, words of version 3)")


def test_what_a_customer_asked_for_about_a_visit_needs_no_other_consent() -> None:
    nothing = replace(WELL, consent=standing(()))
    assert rules(replace(VISIT, was_asked_for=True), nothing) == []
    assert rules(replace(INVITE, was_asked_for=True), nothing) == ["no_consent"]
    assert rules(by_a_person(nothing), nothing) == []
    assert rules(by_a_person(replace(nothing, written_at=None)), replace(nothing, written_at=None)) == ["no_consent"]


def test_a_symptom_and_a_complaint_are_named_with_their_day() -> None:
    for wrong in ({"has_open_symptom": True}, {"has_open_complaint": True}):
        found = may_text(INVITE, replace(WELL, open_since=days_ago(1), **wrong), NOW)
        assert "is open since 2026-03-09 11:00" in found.because[0].says


def test_a_persons_own_words_leave_beside_a_symptom() -> None:
    for wrong in ({"has_open_symptom": True}, {"is_frozen": True}, {"nobody_because": "sold"}):
        assert rules(by_a_person(WELL), replace(WELL, **wrong)) == []


def test_an_answer_leaves_at_any_hour_to_what_was_just_written() -> None:
    assert rules(ANSWER, replace(WELL, written_at=NIGHT - timedelta(minutes=30)), NIGHT) == []
    late = replace(WELL, written_at=NIGHT - timedelta(minutes=31))
    assert rules(ANSWER, late, NIGHT) == ["hours"]
    # 8:00 in Chicago: the hours of texts about a visit.
    assert may_text(ANSWER, late, NIGHT).next_at == datetime(2026, 3, 10, 13, 0, tzinfo=UTC)
    for code in AT_ANY_HOUR:
        assert rules(about_reason(code), late, NIGHT) == [], code


def test_an_unread_text_is_read_first_but_no_caution_waits_for_it() -> None:
    unread = replace(WELL, unread_since=NOW - timedelta(seconds=3))
    found = may_text(VISIT, unread, NOW)
    assert not found.may and found.next_at is not None and found.next_at - NOW <= timedelta(minutes=1)
    assert rules(about_reason("caution_now_open"), unread) == []


def test_a_number_obeys_the_state_of_its_area_code() -> None:
    # Dialing guides: Kentucky from 10; an area code of Kentucky's at a shop in Illinois.
    kentucky = replace(WELL, phone=replace(PHONE, number="+18595550147", zones=("America/New_York",)))
    nine_thirty = datetime(2026, 3, 10, 13, 30, tzinfo=UTC)
    assert rules(VISIT, replace(WELL, phone=replace(PHONE, zones=("America/New_York",))), nine_thirty) == []
    assert rules(VISIT, kentucky, nine_thirty) == ["hours"]


def test_florida_oklahoma_and_oregon_allow_three_about_one_subject_in_a_day() -> None:
    # Fla. Stat. 501.059, OR HB 3865: at most 3 in 24 hours on the same subject.
    three = tuple(NOW - timedelta(hours=n) for n in (1, 2, 23))
    for number in ("+13055550147", "+14055550147", "+15035550147"):
        picture = replace(WELL, phone=replace(PHONE, number=number), told_at=three)
        assert "subject_24_hours" in rules(VISIT, picture), number
        assert "subject_24_hours" not in rules(VISIT, replace(picture, told_at=three[:2]))
        assert "subject_24_hours" not in rules(ANSWER, picture)
        found = may_text(VISIT, picture, NOW)
        assert found.next_at is not None and found.next_at >= NOW + timedelta(hours=1)
    assert rules(VISIT, replace(WELL, told_at=three)) == [], "Illinois has no such row"
    assert "subject_24_hours" in rules(VISIT, replace(WELL, shop=replace(SHOP, state="FL"), told_at=three))


def test_a_second_try_of_the_same_reason_has_its_own_spacing() -> None:
    about = replace(INVITE, raised_by="inspection I-1")
    first = sent(11, raised_by="inspection I-1")
    assert rules(about, replace(WELL, invites=(first,))) == ["try_spacing"]
    assert rules(about, replace(WELL, invites=(replace(first, at=days_ago(12.1)),))) == []
    assert rules(replace(about, is_legal=True), replace(WELL, invites=(replace(first, at=days_ago(7.1)),))) == []
    both = (replace(first, at=days_ago(40)), replace(first, at=days_ago(28), try_number=2))
    assert rules(about, replace(WELL, invites=both)) == ["tries"]
    assert may_text(about, replace(WELL, invites=both), NOW).next_at is None


def test_every_rule_of_the_module_is_tried_here() -> None:
    tried = {rule for rule, _, _ in ONE_WRONG} | {"hours", "subject_24_hours", "try_spacing", "tries"}
    assert set(RULES) == tried | {"consent", "asked_for", "answer"}
    assert {"hours", "unread", "spacing", "subject_24_hours"} <= PASSES <= tried
    named = [rule.__name__ for rule in number_rules._LASTING]
    assert len(named) == len(set(named)) == 13


wrongs = st.lists(st.sampled_from([wrong for _, wrong, _ in ONE_WRONG]), max_size=4)
minutes = st.integers(0, 60 * 24 * 400)


@given(wrongs, minutes, st.sampled_from([one.code for one in REASONS]))
def test_the_next_moment_is_truly_allowed(found: list[dict[str, Any]], after: int, code: str) -> None:
    picture = WELL
    for one in found:
        picture = replace(picture, **one)
    now, about = NOW + timedelta(minutes=after), about_reason(code)
    answer = may_text(about, picture, now)
    assert answer.may == (answer.next_at == now)
    if answer.next_at is not None and not answer.may:
        assert answer.next_at > now
        again = may_text(about, replace(picture, unread_since=None), answer.next_at)
        assert again.may, again.because


@given(wrongs, minutes, st.sampled_from([one.code for one in REASONS]))
def test_after_a_stop_nothing_but_what_belongs_to_it_may_leave(
    found: list[dict[str, Any]], after: int, code: str
) -> None:
    picture = WELL
    for one in found:
        picture = replace(picture, **one)
    answer = may_text(about_reason(code), replace(picture, consent=STOPPED), NOW + timedelta(minutes=after))
    assert not answer.may or code in LEAVES_IN_SPITE_OF_A_STOP


def test_a_standing_without_a_line_is_told_plainly() -> None:
    assert rules(VISIT, replace(WELL, consent=ConsentStanding(frozenset(), True, None))) == ["stop"]
