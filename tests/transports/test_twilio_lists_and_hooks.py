"""What is read back from the provider: its lists of texts, and what it posts to our hooks."""

from typing import Any

import pytest
import responses
from responses import matchers
from werkzeug.datastructures import MultiDict

from followup.transports.transport import (
    BadNumber,
    Filtered,
    ForeignHook,
    LookUpFailed,
    NotRegistered,
    ProvenRefused,
    Unreachable,
    UnusableHook,
)
from followup.transports.twilio import Twilio
from tests.transports.account import ACCOUNT, CUSTOMER, MESSAGES, SHOP, SID, SINCE, TEXT

LISTED: list[dict[str, Any]] = [
    {"sid": "SM4", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 15:00:40 +0000", "status": "queued"},
    {"sid": "SM3", "body": "another", "date_created": "Mon, 02 Nov 2026 15:00:30 +0000", "status": "sent"},
    {"sid": "SM2", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 15:00:00 +0000", "status": "delivered"},
    {"sid": "SM1", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 14:59:00 +0000", "status": "delivered"},
    {"sid": "SM0", "body": "", "date_created": None, "status": "queued"},
]


@responses.activate
def test_a_text_is_looked_up_by_number_wording_and_time(provider: Twilio) -> None:
    # Form of the list: the provider's public documents. No filter by day of sending: a queued text has none.
    asked = {"To": CUSTOMER, "From": SHOP, "PageSize": "1000"}
    rows = [{"to": CUSTOMER, "from": SHOP, "direction": "outbound-api", **row} for row in LISTED]
    first = {"messages": rows[:2], "next_page_uri": f"/2010-04-01/Accounts/{ACCOUNT}/Messages.json?Page=1"}
    responses.get(MESSAGES, json=first, match=[matchers.query_param_matcher(asked)])
    second = {"messages": rows[2:], "next_page_uri": None}
    responses.get(MESSAGES, json=second, match=[matchers.query_param_matcher({"Page": "1"})])
    found = provider.find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    assert [(one.provider_id, one.status) for one in found] == [("SM2", "delivered"), ("SM4", "queued")]


@pytest.mark.parametrize("status", [401, 429, 500, 200])
@responses.activate
def test_a_list_that_cannot_be_read_says_so(provider: Twilio, status: int) -> None:
    responses.get(MESSAGES, body="<html>", status=status)
    with pytest.raises(LookUpFailed):
        provider.find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    with pytest.raises(LookUpFailed):
        provider.list_inbound(SHOP, SINCE)


@responses.activate
def test_missed_answers_are_listed_by_day_and_told_apart(provider: Twilio) -> None:
    base = {"to": SHOP, "from": CUSTOMER, "direction": "inbound", "status": "received", "num_media": "1"}
    rows = [
        {**base, "sid": "SM3", "body": "later", "date_created": "Mon, 02 Nov 2026 16:00:00 +0000"},
        {**base, "sid": "SM2", "body": "first", "date_created": "Mon, 02 Nov 2026 15:00:00 +0000"},
        {**base, "sid": "SM1", "body": "before", "date_created": "Mon, 02 Nov 2026 14:00:00 +0000"},
        {**base, "sid": "SM0", "direction": "outbound-api", "date_created": "Mon, 02 Nov 2026 16:00:00 +0000"},
    ]
    asked = {"To": SHOP, "DateSent>": "2026-11-02T00:00:00Z", "PageSize": "1000"}
    page = {"messages": rows, "next_page_uri": None}
    responses.get(MESSAGES, json=page, match=[matchers.query_param_matcher(asked)])
    listed = provider.list_inbound(SHOP, SINCE)
    assert [(one.provider_id, one.body, one.media_count) for one in listed] == [
        ("SM2", "first", 1),
        ("SM3", "later", 1),
    ]


def hook(**changed: str) -> MultiDict[str, str]:
    given = {"AccountSid": ACCOUNT, "MessageSid": SID, "From": CUSTOMER, "To": SHOP, "Body": "hi", **changed}
    return MultiDict(given)


def test_a_hook_of_another_account_is_refused(provider: Twilio) -> None:
    with pytest.raises(ForeignHook):
        provider.read_inbound(hook(AccountSid="AC" + "1" * 32))
    with pytest.raises(ForeignHook):
        provider.read_status(hook(AccountSid="AC" + "1" * 32, MessageStatus="sent"))


def test_the_providers_own_keywords_are_told(provider: Twilio) -> None:
    assert provider.read_inbound(hook(OptOutType="STOP")).provider_caught == "stop"
    assert provider.read_inbound(hook(OptOutType="NEW")).provider_caught is None
    assert provider.read_inbound(hook()).provider_caught is None


@pytest.mark.parametrize(
    "changed",
    [{"MessageSid": "SM1"}, {"MessageSid": "SM" + "G" * 32}, {"From": "ann"}, {"NumMedia": "many"}, {"To": ""}],
)
def test_a_hook_with_something_else_in_a_field_is_not_usable(provider: Twilio, changed: dict[str, str]) -> None:
    with pytest.raises(UnusableHook):
        provider.read_inbound(hook(**changed))


@pytest.mark.parametrize(
    ("code", "problem"),
    [
        ("30003", Unreachable),
        ("30007", Filtered),
        ("30006", BadNumber),
        ("30034", NotRegistered),
        ("12", ProvenRefused),
    ],
)
def test_a_report_says_why_a_text_did_not_arrive(provider: Twilio, code: str, problem: type[ProvenRefused]) -> None:
    report = provider.read_status(hook(MessageStatus="undelivered", ErrorCode=code))
    assert (report.code, report.problem) == (int(code), problem)
    assert provider.read_status(hook(MessageStatus="delivered", ErrorCode="")).problem is None
