"""What the tests of transports share."""

import pytest

from followup.transports.twilio import Twilio
from tests.transports.account import ACCOUNT


@pytest.fixture
def provider() -> Twilio:
    """The provider's client, which must reach nobody but `responses`."""
    return Twilio(ACCOUNT, ["the token"])
