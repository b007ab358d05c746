"""Which transport the settings name, and when it is refused."""

import subprocess
import sys
from pathlib import Path
from typing import get_args

import pytest

from followup.clock import ClockRefused
from followup.settings import SettingMissing, Settings, SettingsUnusable, read_settings
from followup.transports.choose import ALL, choose
from followup.transports.local_phone import LocalPhone, token_from
from followup.transports.transport import OutcomeUnknown, OutgoingText, Transport

KEY = "a key for tests only"
REAL = {
    "FOLLOWUP_TRANSPORT": "twilio",
    "FOLLOWUP_TWILIO_ACCOUNT_SID": "AC" + "0" * 32,
    "FOLLOWUP_TWILIO_AUTH_TOKENS": "token",
    "FOLLOWUP_PUBLIC_BASE_URL": "https://shop.example",
}


def nowhere(text: OutgoingText, provider_id: str) -> None:
    raise OSError("the disk is full")


def chosen(**changed: str) -> Transport:
    return choose(read_settings({**REAL, **changed}), deliver=nowhere)


def test_every_value_of_the_setting_is_listed() -> None:
    assert get_args(Settings.model_fields["transport"].annotation) == ALL


def test_a_real_provider_is_reached_by_its_own_address() -> None:
    assert chosen().address == "https://api.twilio.com"


def test_a_real_provider_needs_https_for_its_hooks() -> None:
    with pytest.raises(SettingsUnusable, match="https"):
        chosen(FOLLOWUP_PUBLIC_BASE_URL="http://shop.example")
    assert chosen(FOLLOWUP_PUBLIC_BASE_URL="http://127.0.0.1:1", FOLLOWUP_TWILIO_API_BASE="http://127.0.0.1:2")


@pytest.mark.parametrize(
    "address", ["http://api.twilio.com", "https://twilio.com.example", "https://nottwilio.com", "https://10.0.0.1"]
)
def test_the_accounts_token_goes_to_the_provider_alone(address: str) -> None:
    with pytest.raises(SettingsUnusable, match="twilio_api_base"):
        chosen(FOLLOWUP_TWILIO_API_BASE=address)
    assert chosen(FOLLOWUP_TWILIO_API_BASE="https://api.dublin.ie1.twilio.com")


def test_a_real_provider_and_a_movable_clock_do_not_go_together(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("FOLLOWUP_CLOCK", str(tmp_path / "clock"))
    with pytest.raises(ClockRefused):
        chosen()
    assert chosen(FOLLOWUP_TWILIO_API_BASE="http://127.0.0.1:2")
    assert choose(read_settings({"FOLLOWUP_SECRET_KEY": KEY}), deliver=nowhere)


def test_the_test_phone_needs_a_key_to_sign_with() -> None:
    with pytest.raises(SettingMissing):
        choose(read_settings({}), deliver=nowhere)
    assert token_from(KEY) == token_from(KEY) != token_from(KEY + "!")
    assert KEY not in token_from(KEY)


def test_a_test_phone_that_cannot_keep_a_text_leaves_it_unknown() -> None:
    text = OutgoingText("+13125550147", "+13125550100", "hi", "http://127.0.0.1/hooks", 600, "abc", 1)
    with pytest.raises(OutcomeUnknown):
        LocalPhone("token", nowhere).send(text)


def test_the_same_attempt_has_the_same_id_so_that_it_is_kept_once() -> None:
    kept: list[str] = []
    phone = LocalPhone("token", lambda text, provider_id: kept.append(provider_id))
    for attempt in (1, 1, 2):
        phone.send(OutgoingText("+13125550147", "+13125550100", "hi", "http://127.0.0.1/hooks", 600, "abc", attempt))
    assert kept[0] == kept[1] != kept[2]


def test_the_providers_client_is_loaded_only_where_it_is_used() -> None:
    # It takes more than 100 ms, and `followup --help` has 300.
    lines = (
        "import sys, followup.transports.choose, followup.transports.twilio",
        "assert 'twilio.rest' not in sys.modules and 'requests' not in sys.modules",
        "from followup.transports.twilio import Twilio",
        "provider = Twilio('AC' + '0' * 32, ['token'])",
        # The pages have one to check signatures with, and send nothing.
        "provider.is_genuine('https://shop.example/hooks/texts', {}, {})",
        "assert 'twilio.rest' not in sys.modules and 'requests' not in sys.modules",
        "provider._messages",
        "assert 'twilio.rest' in sys.modules",
    )
    subprocess.run([sys.executable, "-c", "\n".join(lines)], check=True)
