"""The provider's published signature vectors, against both verifications.

Source: Twilio's public documents on the security of its hooks and the tests of its own client; all recomputed. The
phone numbers in them belong to the vectors.
"""

import base64
import hashlib
import hmac

import pytest
from twilio.request_validator import RequestValidator
from werkzeug.datastructures import Headers, MultiDict

from followup.transports.local_phone import sign
from followup.transports.twilio import Twilio

ACCOUNT = "AC" + "0" * 32
URL = "https://mycompany.com/myapp.php?foo=1&bar=2"
WITH_PORT = "mycompany.com:{}/myapp.php?foo=1&bar=2"
CALL = MultiDict(
    {
        "CallSid": "CA1234567890ABCDE",
        "Caller": "+14158675309",
        "Digits": "1234",
        "From": "+14158675309",
        "To": "+18005551212",
    }
)
REPEATED = MultiDict(
    [("Sid", "CA123"), ("SidAccount", "AC123"), ("Digits", "5678"), ("Digits", "1234"), ("Digits", "1234")]
)
JSON = '{"property": "value", "boolean": true}'
JSON_URL = URL + "&bodySHA256=0a1ff7634d9ab3b95db5c9a2dfe9416e41502b283a80c7cf19632632f96e6620"
VECTORS: dict[str, tuple[str, MultiDict[str, str] | str, str]] = {
    "form": (URL, CALL, "RSOYDt4T1cUTdK1PDd93/VVr8B8="),
    "http, port 1234": ("http://" + WITH_PORT.format(1234), CALL, "Zmvh+3yNM1Phv2jhDCwEM3q5ebU="),
    "https, port 443": ("https://" + WITH_PORT.format(443), CALL, "kvajT1Ptam85bY51eRf/AJRuM3w="),
    "http, port 80": ("http://" + WITH_PORT.format(80), CALL, "0ZXoZLH/DfblKGATFgpif+LLRf4="),
    "https, port 1234, signed without": ("https://" + WITH_PORT.format(1234), CALL, "RSOYDt4T1cUTdK1PDd93/VVr8B8="),
    "a name several times": (URL, REPEATED, "IK+Dwps556ElfBT0I3Rgjkr1wJU="),
    "a body that is JSON": (JSON_URL, JSON, "a9nBmqA0ju/hNViExpshrM61xv4="),
}


def twilio(*tokens: str) -> Twilio:
    return Twilio(ACCOUNT, tokens, "http://127.0.0.1:9")


def signed(signature: str | None) -> Headers:
    return Headers({} if signature is None else {"X-Twilio-Signature": signature})


@pytest.mark.parametrize("name", VECTORS)
def test_a_published_vector_is_genuine(name: str) -> None:
    url, fields, signature = VECTORS[name]
    assert twilio("12345").is_genuine(url, fields, signed(signature))


@pytest.mark.parametrize("name", VECTORS)
def test_the_same_with_one_sign_changed_is_not(name: str) -> None:
    url, fields, signature = VECTORS[name]
    other = ("B" if signature[0] == "A" else "A") + signature[1:]
    for wrong in (other, "", None, signature + "=", signature.lower()):
        assert not twilio("12345").is_genuine(url, fields, signed(wrong))
    assert not twilio("12346").is_genuine(url, fields, signed(signature))


@pytest.mark.parametrize(
    "name", ["form", "http, port 1234", "https, port 443", "http, port 80", "a name several times"]
)
def test_the_test_phone_signs_as_the_provider_does(name: str) -> None:
    # The two vectors left out are verified by trying other addresses, and by a hash; the test phone needs neither.
    url, fields, signature = VECTORS[name]
    assert isinstance(fields, MultiDict)
    assert sign(url, fields, "12345") == signature


def test_the_test_phone_signs_as_the_providers_client_does() -> None:
    # Oracle: RequestValidator of the provider's client.
    fields = MultiDict([("body", "¿mañana? 🙂"), ("Body", ""), ("body", "a"), ("to", "+13125550147")])
    url = "http://127.0.0.1:8000/hooks/inbound"
    assert sign(url, fields, "tökén") == RequestValidator("tökén").compute_signature(url, fields)


def test_flattened_fields_are_not_genuine() -> None:
    # Why the form must be handed over as it came: facts, "Duplicate form keys".
    url, fields, signature = VECTORS["a name several times"]
    assert isinstance(fields, MultiDict)
    assert not twilio("12345").is_genuine(url, MultiDict(fields.to_dict()), signed(signature))


def test_while_a_token_is_changed_both_are_good() -> None:
    url, fields, signature = VECTORS["form"]
    assert twilio("a new token", "12345").is_genuine(url, fields, signed(signature))
    assert twilio("12345", "an old token").is_genuine(url, fields, signed(signature))
    assert not twilio("a new token", "an old token").is_genuine(url, fields, signed(signature))


def by_shared_key(key: str, algorithm: str = "HMAC_SHA256", named: str | None = None) -> Headers:
    url, fields, _ = VECTORS["form"]
    headers = signed(RequestValidator(key).compute_signature(url, fields, algorithm))
    told = f"key=webhooks_sharedkey_1,algorithm={algorithm}" if named is None else named
    headers["X-Twilio-Webhooks-Signature-Settings"] = told
    return headers


def test_without_a_shared_key_the_newer_scheme_is_refused_in_words(caplog: pytest.LogCaptureFixture) -> None:
    url, fields, _ = VECTORS["form"]
    assert not twilio("12345").is_genuine(url, fields, by_shared_key("12345"))
    assert "that the settings do not name: refused" in caplog.text


def test_the_newer_scheme_goes_by_the_shared_keys_alone() -> None:
    url, fields, signature = VECTORS["form"]
    both = Twilio(ACCOUNT, ["12345"], "http://127.0.0.1:9", shared_keys=["a new key", "an old key"])
    assert both.is_genuine(url, fields, by_shared_key("a new key"))
    assert both.is_genuine(url, fields, by_shared_key("an old key")), "while it is being changed both are good"
    assert both.is_genuine(url, fields, signed(signature)), "the account's token goes on signing what it signs"
    for wrong in (
        by_shared_key("12345"), by_shared_key("another"), by_shared_key("a new key", "HMAC_SHA1"),
        by_shared_key("a new key", named="key=webhooks_sharedkey_1"),
        by_shared_key("a new key", named="algorithm=HMAC_SHA1"), by_shared_key("a new key", named="algorithm=none"),
    ):  # fmt: skip
        assert not both.is_genuine(url, fields, wrong), wrong
    bare = by_shared_key("a new key")
    del bare["X-Twilio-Webhooks-Signature-Settings"]
    assert not both.is_genuine(url, fields, bare)


def test_the_newer_scheme_is_hmac_sha256_over_address_and_sorted_fields() -> None:
    # Oracle: the standard library, over the string that the provider's documents describe.
    url, fields, _ = VECTORS["form"]
    assert isinstance(fields, MultiDict)
    text = url + "".join(name + fields[name] for name in sorted(fields))
    digest = base64.b64encode(hmac.new(b"a new key", text.encode(), hashlib.sha256).digest()).decode()
    headers = signed(digest)
    headers["X-Twilio-Webhooks-Signature-Settings"] = "key=k, algorithm=HMAC_SHA256"
    transport = Twilio(ACCOUNT, ["12345"], "http://127.0.0.1:9", shared_keys=["a new key"])
    assert transport.is_genuine(url, fields, headers)
