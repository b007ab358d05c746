"""An account at the provider that these tests made up, a text of it, and the provider's client for it."""

from datetime import UTC, datetime

from followup.transports.transport import OutgoingText
from followup.transports.twilio import Twilio

ACCOUNT = "AC" + "0" * 32
MESSAGES = f"https://api.twilio.com/2010-04-01/Accounts/{ACCOUNT}/Messages.json"
SHOP, CUSTOMER = "+13125550100", "+13125550147"
SID = "SM" + "1" * 32
TEXT = OutgoingText(CUSTOMER, SHOP, "a body nobody may log", "https://shop.example/hooks/status/abc/2", 600, "abc", 2)
SINCE = datetime(2026, 11, 2, 15, 0, tzinfo=UTC)


def near(address: str, read_seconds: float = 5.0) -> Twilio:
    return Twilio(ACCOUNT, ["the token"], address, connect_seconds=2.0, read_seconds=read_seconds)
