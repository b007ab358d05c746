"""What is not the provider's, or is no text, is refused with 400, 403 or 413: no row, and never a fault of ours.

Sources: faults I5 and I6 of this project's list; that the provider's own check of a missing signature raises, and that
parameters grow without notice, stand in its client's source and documents.
"""

from __future__ import annotations

from http.client import HTTPConnection
from pathlib import Path
from random import Random
from typing import Any

import pytest
from flask import request

from followup.storage import tables
from tests.transports.account import ACCOUNT
from tests.web.webhook.conftest import BASE, TOKEN, Hooks, encode, sign, text_form
from tests.web.webhook.served_hooks import served_hooks

STATUS = "/hooks/status/abc/1"
REFUSED = (400, 403, 413)


def _good() -> str:
    return sign("/hooks/texts", text_form())


FORGED: dict[str, dict[str, Any]] = {
    "no signature": {"signature": ""},
    "an invented one": {"signature": "AAAAAAAAAAAAAAAAAAAAAAAAAAA="},
    "one with a space": {"signature": _good() + " "},
    "one in other case": {"signature": _good().lower()},
    "signs that are no letters": {"signature": "\xe9\xff" * 14},
    "a very long one": {"signature": "A" * 8000},
    "by an old token": {"token": "a token of last year"},
    "by an empty token": {"token": ""},
    "for http": {"signature": sign("/hooks/texts", text_form()).replace("a", "b", 1) + "x"},
    "an unknown scheme": {"headers": {"X-Twilio-Webhooks-Signature-Settings": "key=k,algorithm=HMAC_SHA256"}},
    "a scheme without a name": {"headers": {"X-Twilio-Webhooks-Signature-Settings": "="}},
    "JSON": {"content_type": "application/json", "data": b'{"Body": "hi"}'},
    "no kind of body": {"content_type": None},
    "another kind of body": {"content_type": "text/plain"},
    "parts that never end": {"content_type": "multipart/form-data; boundary=x", "data": b"--x\r\n" * 100},
    "parts without a mark": {"content_type": "multipart/form-data", "data": b"--x\r\n"},
    "a mebibyte": {"data": b"Body=" + b"a" * 2**20},
    "a mebibyte of fields": {"data": b"a=b&" * 2**18},
    "bad UTF-8": {"data": b"Body=%ff%fe\xc3\x28&From=%80"},
    "NULs": {"data": b"Body=%00\x00&From=%00&MessageSid=%00"},
    "half a sign": {"data": b"Body=%ed%a0%80"},
    "broken escapes": {"data": b"%=%&%zz=%1"},
    "nothing": {"data": b""},
}


@pytest.mark.parametrize("what", FORGED)
def test_a_forged_hook_is_refused_and_leaves_no_row(one_hooks: Hooks, what: str) -> None:
    before = one_hooks.counts()
    for path in ("/hooks/texts", STATUS):
        assert one_hooks.post(text_form(), path, **FORGED[what]) in REFUSED, path
    bare = one_hooks.app.test_client().post("/hooks/texts", data=encode(text_form().items()))
    assert bare.status_code == 403
    assert one_hooks.counts() == before


def test_a_hook_that_was_signed_for_http_is_refused(one_hooks: Hooks) -> None:
    from twilio.request_validator import RequestValidator

    signer = RequestValidator(TOKEN)
    for address in (BASE.replace("https", "http"), "https://texts.example.evil.example", "https://other.example"):
        signature = signer.compute_signature(address + "/hooks/texts", text_form())
        assert one_hooks.post(text_form(), signature=signature) == 403, address
    with_port = signer.compute_signature(BASE + ":443/hooks/texts", text_form())
    assert one_hooks.post(text_form(), signature=with_port) == 204, "the provider may name the port"


def test_a_signed_hook_that_is_too_large_or_lacks_a_field_is_refused(one_hooks: Hooks) -> None:
    assert one_hooks.post(text_form("a" * 2**20)) == 413
    for name in ("AccountSid", "MessageSid", "From", "To", "Body"):
        assert one_hooks.post({key: value for key, value in text_form().items() if key != name}) == 400, name
    for name in ("AccountSid", "MessageSid", "MessageStatus"):
        form = {"AccountSid": ACCOUNT, "MessageSid": "SM" + "1" * 32, "MessageStatus": "sent"}
        del form[name]
        assert one_hooks.post(form, STATUS) == 400, name
    assert one_hooks.counts()["inbound"] == one_hooks.counts()["dead_letters"] == 0


def test_signed_texts_with_signs_of_any_kind_are_kept(hooks: Hooks) -> None:
    """A database refuses NUL and half a sign; the text is kept all the same."""
    bodies = ["a\x00b", "\U0001f697 \u00bfma\u00f1ana? \u202e", "\r\n\t\x1b[31m", "", "a" * 1600, "\U0001f697" * 1600]
    for n, body in enumerate(bodies):
        assert hooks.post(text_form(body, f"SM{n:032x}")) == 204, ascii(body)[:40]
    kept = [row["body"] for row in hooks.rows(tables.inbound)]
    assert kept == ["a\ufffdb", *bodies[1:]]
    assert all(row["handled_at"] for row in hooks.rows(tables.inbound))


def test_signed_fields_that_are_not_known_yet_are_accepted(hooks: Hooks) -> None:
    more = {"ChannelMetadata": '{"a": "b"}', "\u00e9t\u00e9": "\u00df", "MessagingServiceSid": "MG" + "0" * 32}
    assert hooks.post(text_form("thanks", **more)) == 204
    repeated = [*text_form("thanks", "SM" + "2" * 32).items(), ("Tag", "a"), ("Tag", "b"), ("Tag", "a")]
    assert hooks.post(repeated) == 204
    assert hooks.counts()["inbound"] == 2


def test_ten_thousand_hostile_forms_are_never_a_fault_of_ours(one_hooks: Hooks) -> None:
    """Bytes drawn from a seed, signed by nobody, and forms signed by the provider with anything in their fields."""
    random, before = Random(5), one_hooks.counts()["inbound"]
    client, seen = one_hooks.app.test_client(), set()
    alphabet = [b"%00", b"%ff", b"=", b"&", b";", b"%", b"+", b"\x00", b"\xff", b"Body", b"From", b"SM", b"[]", b"{}"]
    for _ in range(8000):
        data = b"".join(random.choices(alphabet, k=random.randint(0, 12)))
        headers = {"X-Twilio-Signature": random.choice(["", "x", _good()])}
        kind = random.choice(["application/x-www-form-urlencoded", "multipart/form-data; boundary=b", "a/b", ""])
        seen.add(client.post("/hooks/texts", data=data, headers=headers, content_type=kind).status_code)
    signs = ["\x00", "\u202e", "\U0001f697", "SM", "+1", "\ud800", "\uffff", "0", " ", "\n"]
    for _ in range(2000):
        name = random.choice(["From", "To", "MessageSid", "AccountSid", "NumMedia", "MessageStatus", "ErrorCode"])
        value = "".join(random.choices(signs, k=random.randint(0, 6))).encode("utf-8", "replace").decode()
        seen.add(one_hooks.post(text_form(**{name: value}), random.choice(["/hooks/texts", STATUS])))
    # 204: what was drawn had stayed a text, or was about no text of ours.
    assert seen <= {204, 400, 403, 413}, seen
    assert {403, 400} <= seen and one_hooks.counts()["inbound"] - before <= 1


SPOOFED = {
    "X-Forwarded-Host": "evil.example", "X-Forwarded-Proto": "http", "X-Forwarded-For": "203.0.113.9",
    "X-Forwarded-Prefix": "/other", "X-Forwarded-Port": "81", "X-Original-URL": "/other", "X-Rewrite-URL": "/other",
    "Forwarded": "for=203.0.113.9;host=evil.example;proto=http", "Host": "evil.example",
}  # fmt: skip


@pytest.mark.parametrize("proxies", [0, 1, 2])
def test_what_a_client_says_of_its_way_changes_nothing(one_hooks: Hooks, proxies: int) -> None:
    one_hooks.restart(trusted_proxies=proxies)
    assert one_hooks.post(text_form(), headers=SPOOFED) == 204, "signed for the configured address"
    assert one_hooks.post(text_form("again", "SM" + "2" * 32), base_url="http://10.0.0.7:8000") == 204
    from twilio.request_validator import RequestValidator

    for address in ("https://evil.example", "http://evil.example", "http://texts.example", "http://10.0.0.7:8000"):
        signature = RequestValidator(TOKEN).compute_signature(address + "/hooks/texts", text_form())
        assert one_hooks.post(text_form(), signature=signature, headers=SPOOFED) == 403, address


@pytest.mark.parametrize("proxies", [0, 1])
def test_the_served_hooks_go_by_the_configured_address(tmp_path: Path, proxies: int) -> None:
    """Over the wire, behind a proxy that ends TLS and says so, and with a client that says otherwise."""
    with served_hooks(tmp_path, proxies) as port:
        said = {"X-Forwarded-Proto": "https", "X-Forwarded-Host": "texts.example", "X-Forwarded-For": "203.0.113.9"}
        for headers in ({}, said, SPOOFED):
            form = text_form()
            data = encode(form.items())
            sent = {"Host": "texts.example", **headers, "Content-Type": "application/x-www-form-urlencoded"}
            for signature, expected in ((sign("/hooks/texts", form), 204), ("AAAA", 403)):
                link = HTTPConnection("127.0.0.1", port, timeout=20)
                link.request("POST", "/hooks/texts", data, {**sent, "X-Twilio-Signature": signature})
                assert link.getresponse().status == expected, headers
                link.close()
        link = HTTPConnection("127.0.0.1", port, timeout=20)
        link.putrequest("POST", "/hooks/texts")
        link.putheader("Content-Length", str(3 * 2**20))
        link.endheaders()
        assert link.getresponse().status == 413, "refused before it was read"
        link.close()


def test_a_proxy_of_our_own_tells_who_asks_and_nobody_else_does(one_hooks: Hooks) -> None:
    for proxies, expected in ((0, "127.0.0.1"), (1, "203.0.113.9")):
        one_hooks.restart(trusted_proxies=proxies)
        seen: list[str | None] = []
        one_hooks.app.before_request(lambda seen=seen: seen.append(request.remote_addr))
        one_hooks.post(text_form(), headers={"X-Forwarded-For": "198.51.100.1, 203.0.113.9"})
        assert seen == [expected]
