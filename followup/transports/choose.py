"""Picks the way of sending that the settings name; the one list of all transports."""

from __future__ import annotations

from urllib.parse import urlsplit

from followup.clock import check_clock_allowed, is_loopback
from followup.settings import Settings, SettingsUnusable
from followup.transports.local_phone import Deliver, LocalPhone, LookUp, Written, token_from
from followup.transports.transport import Transport

ALL = ("test_phone", "twilio")
"""The values of the setting `transport`."""


def choose(
    settings: Settings, *, deliver: Deliver, look_up: LookUp | None = None, written: Written | None = None
) -> Transport:
    """The transport of these settings; `deliver`, `look_up`, `written` are the test phone's store.

    Raises SettingsUnusable, SettingMissing (the test phone signs by the secret key), or ClockRefused.
    """
    if settings.transport == "test_phone":
        return LocalPhone(token_from(settings.secret("secret_key")), deliver, look_up, written)
    transport = _twilio(settings)
    check_clock_allowed(transport.address)
    if not is_loopback(settings.twilio_api_base):
        _check_addresses(settings)
    return transport


def _check_addresses(settings: Settings) -> None:
    """The account's token goes to the provider alone, and customers' answers come in encrypted."""
    provider = urlsplit(settings.twilio_api_base)
    if provider.scheme != "https" or not f".{provider.hostname}".endswith(".twilio.com"):
        raise SettingsUnusable("twilio_api_base must be the provider's own, with https, or one on this machine.")
    if urlsplit(settings.public_base_url).scheme != "https":
        raise SettingsUnusable("public_base_url must begin with https where texts reach real phones.")


def _twilio(settings: Settings) -> Transport:
    # Imported here: the test phone needs nothing of the provider's client.
    from followup.transports.twilio import Twilio

    return Twilio(
        account_sid=settings.twilio_account_sid or "",
        auth_tokens=[token.get_secret_value() for token in settings.twilio_auth_tokens],
        address=settings.twilio_api_base,
        shared_keys=[key.get_secret_value() for key in settings.twilio_webhook_keys],
    )
