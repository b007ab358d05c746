"""One contract, and every transport of `choose.ALL` keeps it."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import timedelta

import pytest
from twilio.request_validator import RequestValidator
from werkzeug.datastructures import Headers, MultiDict

from followup import clock
from followup.settings import read_settings
from followup.transports import choose, local_phone
from followup.transports.transport import (
    Found,
    InboundText,
    OutgoingText,
    Transport,
    UnusableHook,
)
from tests.transports.loopback import Account, Loopback

SHOP, CUSTOMER = "+13125550100", "+13125550147"
HOOK = "http://127.0.0.1:8000/hooks/inbound"
ACCOUNT = "AC" + "0" * 32
KEY = "a key for tests only"
TOKEN = "a token for tests only"


@dataclass
class Case:
    """A transport with the other side of it."""

    transport: Transport
    taken: Callable[[], list[str]]
    sign: Callable[[str, MultiDict[str, str]], Headers]
    inbound: Callable[[str], dict[str, str]]
    status: Callable[[str, str], dict[str, str]]
    id_field: str
    write: Callable[[str], object]


def text(body: str = "Hello from the shop", attempt: int = 1) -> OutgoingText:
    return OutgoingText(CUSTOMER, SHOP, body, f"{HOOK}/status/abc/{attempt}", 600, "abc", attempt)


def _local_phone() -> Iterator[Case]:
    kept: dict[str, Found] = {}
    written: list[InboundText] = []

    def deliver(one: OutgoingText, provider_id: str) -> None:
        kept[provider_id] = Found(provider_id, one.to, one.sender, one.body, clock.now(), "sent")

    transport = choose.choose(
        read_settings({"FOLLOWUP_SECRET_KEY": KEY}),
        deliver=deliver,
        look_up=lambda to, since: [one for one in kept.values() if one.to == to],
        written=lambda since: [one for one in written if one.received_at and one.received_at >= since],
    )
    token = local_phone.token_from(KEY)
    yield Case(
        transport=transport,
        taken=lambda: [one.body for one in kept.values()],
        sign=lambda url, fields: Headers(local_phone.signed_post(url, fields, token)),
        inbound=lambda body: local_phone.inbound_fields(CUSTOMER, SHOP, body),
        status=local_phone.status_fields,
        id_field="id",
        write=lambda body: written.append(
            InboundText(f"TP{len(written):032x}", CUSTOMER, SHOP, body, received_at=clock.now())
        ),
    )


def _twilio() -> Iterator[Case]:
    account = Account()
    with Loopback(account.answer) as provider:
        settings = {
            "FOLLOWUP_TRANSPORT": "twilio",
            "FOLLOWUP_TWILIO_ACCOUNT_SID": ACCOUNT,
            "FOLLOWUP_TWILIO_AUTH_TOKENS": TOKEN,
            "FOLLOWUP_TWILIO_API_BASE": provider.address,
        }
        common = {"AccountSid": ACCOUNT, "MessageSid": "SM" + "a" * 32}
        signer = RequestValidator(TOKEN)
        yield Case(
            transport=choose.choose(read_settings(settings), deliver=lambda one, provider_id: None),
            taken=lambda: [one["body"] for one in account.texts],
            sign=lambda url, fields: Headers({"X-Twilio-Signature": signer.compute_signature(url, fields)}),
            inbound=lambda body: {**common, "From": CUSTOMER, "To": SHOP, "Body": body, "NumMedia": "0"},
            status=lambda sid, status: {**common, "MessageSid": sid, "MessageStatus": status},
            id_field="MessageSid",
            write=lambda body: account.add(SHOP, CUSTOMER, body, "inbound", "received"),
        )


CASES = {"test_phone": _local_phone, "twilio": _twilio}


@pytest.fixture(params=choose.ALL)
def case(request: pytest.FixtureRequest) -> Iterator[Case]:
    yield from CASES[request.param]()


def test_every_transport_has_its_case() -> None:
    assert set(CASES) == set(choose.ALL)


def test_it_is_the_one_that_the_settings_name(case: Case, request: pytest.FixtureRequest) -> None:
    assert case.transport.name == request.node.callspec.params["case"]


def test_a_text_is_handed_over_once_and_has_a_receipt(case: Case) -> None:
    receipt = case.transport.send(text("One, dos: ¿mañana?"))
    assert case.taken() == ["One, dos: ¿mañana?"]
    assert receipt.provider_id and receipt.status


def test_attempts_have_ids_of_their_own(case: Case) -> None:
    assert case.transport.send(text()).provider_id != case.transport.send(text(attempt=2)).provider_id


def test_a_text_is_found_by_number_and_wording(case: Case) -> None:
    started_at = clock.now()
    receipt = case.transport.send(text("Alike"))
    case.transport.send(text("Another", attempt=2))
    found = case.transport.find_sent(CUSTOMER, SHOP, "Alike", started_at)
    assert [one.provider_id for one in found] == [receipt.provider_id]
    assert case.transport.find_sent(CUSTOMER, "+13125550101", "Alike", started_at) == []
    assert case.transport.find_sent(CUSTOMER, SHOP, "Alike", started_at + timedelta(hours=1)) == []


def test_missed_answers_are_listed(case: Case) -> None:
    case.transport.send(text())
    case.write("yes please")
    since = clock.now() - timedelta(minutes=1)
    listed = case.transport.list_inbound(SHOP, since)
    assert [(one.sender, one.to, one.body) for one in listed] == [(CUSTOMER, SHOP, "yes please")]
    assert listed[0].received_at is not None and listed[0].received_at.tzinfo is not None
    assert case.transport.list_inbound(SHOP, since + timedelta(hours=1)) == []
    assert case.transport.list_inbound(CUSTOMER, since) == [], "nobody wrote to that number"


def test_a_signed_answer_is_genuine_and_read(case: Case) -> None:
    fields = MultiDict(case.inbound("sí, el martes"))
    assert case.transport.is_genuine(HOOK, fields, case.sign(HOOK, fields))
    read = case.transport.read_inbound(fields)
    assert (read.sender, read.to, read.body) == (CUSTOMER, SHOP, "sí, el martes")
    assert read.provider_id == fields[case.id_field]


@pytest.mark.parametrize("unknown", ["GeoHash", "zz"])
def test_fields_not_known_yet_are_accepted(case: Case, unknown: str) -> None:
    fields = MultiDict([*case.inbound("hi").items(), (unknown, "2"), (unknown, "1")])
    assert case.transport.is_genuine(HOOK, fields, case.sign(HOOK, fields))
    assert case.transport.read_inbound(fields).body == "hi"


def test_a_request_that_is_not_as_signed_is_not_genuine(case: Case) -> None:
    fields = MultiDict(case.inbound("hi"))
    headers = case.sign(HOOK, fields)
    name = next(iter(headers.keys()))
    changed = MultiDict([*case.inbound("stop").items()])
    assert not case.transport.is_genuine(HOOK, changed, headers)
    assert not case.transport.is_genuine(HOOK + "/", fields, headers)
    assert not case.transport.is_genuine(HOOK.replace("http:", "https:"), fields, headers)
    assert not case.transport.is_genuine(HOOK, MultiDict([*fields.items(), ("more", "1")]), headers)
    for wrong in ({}, {name: ""}, {name: "x"}, {name: "ñ"}, {"X-Other": headers[name]}):
        assert not case.transport.is_genuine(HOOK, fields, Headers(wrong))


def test_half_a_character_and_a_body_that_is_no_form_are_refused_not_crashed(case: Case) -> None:
    headers = case.sign(HOOK, MultiDict(case.inbound("hi")))
    assert not case.transport.is_genuine(HOOK, MultiDict(case.inbound("\ud83d")), headers)
    assert not case.transport.is_genuine(HOOK, '{"Body": "hi"}', headers)


def test_a_request_cut_differently_is_not_usable(case: Case) -> None:
    # The signed string has no marks between names and values, so the same signature fits other cuts of it.
    fields = case.inbound("hi")
    names = sorted(fields)
    cut_late = names[names.index(case.id_field) + 1]
    moved = {name: value for name, value in fields.items() if name != cut_late}
    moved[case.id_field] += cut_late + fields[cut_late]
    headers = case.sign(HOOK, MultiDict(fields))
    assert case.transport.is_genuine(HOOK, MultiDict(moved), headers)
    with pytest.raises(UnusableHook):
        case.transport.read_inbound(MultiDict(moved))


def test_a_request_needs_each_of_its_fields_once(case: Case) -> None:
    fields = case.inbound("hi")
    optional = {"NumMedia"}
    for name in set(fields) - optional:
        without = MultiDict({other: value for other, value in fields.items() if other != name})
        with pytest.raises(UnusableHook):
            case.transport.read_inbound(without)
        with pytest.raises(UnusableHook):
            case.transport.read_inbound(MultiDict([*fields.items(), (name, fields[name])]))


def test_a_picture_alone_and_nul_are_read(case: Case) -> None:
    assert case.transport.read_inbound(MultiDict(case.inbound(""))).body == ""
    assert case.transport.read_inbound(MultiDict(case.inbound("a\x00b"))).body == "a\ufffdb"


def test_reports_are_read_and_new_words_are_kept(case: Case) -> None:
    receipt = case.transport.send(text())
    for status in ("delivered", "undelivered", "a_word_of_next_year"):
        report = case.transport.read_status(MultiDict(case.status(receipt.provider_id, status)))
        assert (report.provider_id, report.status) == (receipt.provider_id, status)
    for broken in ("", "Delivered now", "x" * 40, "sent\n"):
        with pytest.raises(UnusableHook):
            case.transport.read_status(MultiDict(case.status(receipt.provider_id, broken)))


@pytest.mark.parametrize(
    "changed",
    [
        {"to": "3125550147"},
        {"to": "+1312555O147"},
        {"sender": "Shop"},
        {"body": ""},
        {"body": "x" * 1601},
        {"valid_seconds": 0},
        {"valid_seconds": 36_001},
    ],
)
def test_a_text_that_no_provider_takes_is_not_made(changed: dict[str, object]) -> None:
    # Longest body and validity: the provider's public documents (21617; ValidityPeriod 1-36,000 s).
    given = {**text().__dict__, **changed}
    with pytest.raises(ValueError):
        OutgoingText(**given)
