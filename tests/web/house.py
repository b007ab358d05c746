"""A small house for tests of the pages: a real database in a file, one shop or two, a clock that the test moves."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from functools import cache

from sqlalchemy import insert

from followup import passwords
from followup.settings import Settings
from followup.storage import staff, tables
from followup.storage.staff import Role
from followup.storage.store import Store, make_engine

BEGIN = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)
PASSWORD = "green lamp on the bench"
ROLES: tuple[Role, ...] = ("technician", "advisor", "manager", "owner")


def settings(public_base_url: str = "http://127.0.0.1:8000", **others: object) -> Settings:
    """The settings of a test: a fixed key, no provider."""
    return Settings.model_validate(
        {"public_base_url": public_base_url, "secret_key": "only-for-tests-0123456789abcdef", **others}
    )


@dataclass
class TestHouse:
    """What `create_app` needs, and a clock to move."""

    __test__ = False  # a house, not a test
    store: Store
    settings: Settings = field(default_factory=settings)
    instant: datetime = BEGIN
    ledger_secret: str = "only-for-tests-0123456789abcdef"
    needs_registration: bool = False

    def now(self) -> datetime:
        """The test's instant."""
        return self.instant

    def what_is_wrong(self) -> list[str]:
        """Nothing: no clock ticks beside this house."""
        return []

    def is_genuine(self, url: str, sent: Mapping[str, str], headers: Mapping[str, str]) -> bool:
        """No provider stands behind this house: nothing is signed."""
        return False


@cache
def _hash_of_password() -> str:
    return passwords.hash_password(PASSWORD)


def build(database_url: str, shops: tuple[str, ...] = ("elm",)) -> TestHouse:
    """A house with every table; each shop has one member a role, whose login is the role's name."""
    engine = make_engine(database_url)
    tables.metadata.create_all(engine)
    house = TestHouse(Store(engine))
    hashed = _hash_of_password()
    with house.store.write() as connection:
        for number, code in enumerate(shops):
            values = {"code": code, "name": f"{code.title()} Street Auto", "zone": "America/Chicago"}
            numbers = {"phone": "+13125550100", "texts_from": f"+1312555010{number}"}
            done = connection.execute(insert(tables.shops).values(**values, **numbers, created_at=BEGIN))
            assert done.inserted_primary_key is not None
            for role in ROLES:
                name = f"{role.title()} of {code.title()}"
                staff.add(connection, done.inserted_primary_key[0], role, name, role, hashed, BEGIN)
    return house
