"""The settings of the machine: addresses, keys, folders. What a shop decides is `core/shop.py` instead.

Each setting is one field with its words. It comes from the environment as `FOLLOWUP_<NAME>`, or from the file that
`FOLLOWUP_SETTINGS` names (TOML, or lines `NAME=value` in a `.env`); the environment wins. A secret may also stand in a
file of its own, `FOLLOWUP_<NAME>_FILE`; files with secrets in them must be readable by their owner alone (mode 0600).
"""

from __future__ import annotations

import os
import re
import secrets
import stat
import tomllib
from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path
from typing import Annotated, Any, Literal
from urllib.parse import urlsplit

from pydantic import BaseModel, ConfigDict, Field, SecretStr, ValidationError, field_validator, model_validator

PREFIX = "FOLLOWUP_"
# Read elsewhere, so no fields; named here so that a misspelled setting is still found.
OTHER_VARIABLES = {
    "FOLLOWUP_SETTINGS": "A TOML or .env file that holds these settings.",
    "FOLLOWUP_CLOCK": "A file that moves the clock, for demonstrations: an offset (+21d) or an instant.",
}
_SHORTEST_SECRET = 16
# RFC 6761, RFC 6762 and RFC 8375: names that lead nowhere from a customer's phone.
_NAMES_OF_NO_NETWORK = (".local", ".localhost", ".internal", ".invalid", ".test", ".home.arpa")


class SettingsUnusable(Exception):
    """The settings cannot be used."""


class SettingMissing(Exception):
    """A setting is needed that was not given."""


def _setting(default: Any, words: str, **limits: Any) -> Any:
    return Field(default=default, description=words, validate_default=True, **limits)


SenderNumber = Annotated[str, Field(pattern=r"^(\+[1-9][0-9]{6,14}|[0-9]{3,8})$")]


class Settings(BaseModel):
    """All settings of one machine; immutable, and secrets show as stars."""

    model_config = ConfigDict(strict=True, frozen=True, extra="forbid", hide_input_in_errors=True)

    database_url: str = _setting(
        "sqlite+pysqlite:///followup.db", "The database: SQLite or PostgreSQL (postgresql+psycopg)."
    )
    public_base_url: str = _setting(
        "http://127.0.0.1:8000", "The address by which the provider and people reach the pages, without a path."
    )
    secret_key: SecretStr | None = _setting(None, "Signs sessions and forms. A secret.")
    ledger_hash_key: SecretStr | None = _setting(
        None, "Hashes the numbers in the do-not-text ledger; never change it. A secret."
    )
    transport: Literal["test_phone", "twilio"] = _setting(
        "test_phone", "How texts leave: test_phone (they stay on this machine) or twilio."
    )
    sender_number: SenderNumber = _setting(
        "+13125550100", "The shop's number that texts come from, as +13125550100, or its short code."
    )
    sender_segments_per_second: float = _setting(
        1.0, "What the number may send: 1 for a long number, 100 for a short code.", gt=0, le=1000
    )
    sender_texts_at_once: int = _setting(
        1, "How many texts are handed over at once: 1 for a long number, up to 16 for a short code.", ge=1, le=16
    )
    twilio_account_sid: str | None = _setting(None, "The account at the provider.", pattern=r"^AC[0-9a-fA-F]{32}$")
    twilio_auth_tokens: tuple[SecretStr, ...] = _setting(
        (),
        "The account's token; while it is being changed two, the new one first, with a comma. A secret.",
        max_length=2,
    )
    twilio_webhook_keys: tuple[SecretStr, ...] = _setting(
        (),
        "The shared key where the provider signs hooks by HMAC-SHA256; while it is being changed two, with a comma. "
        "A secret.",
        max_length=2,
    )
    twilio_api_base: str = _setting("https://api.twilio.com", "The provider's address; another one only for trials.")
    us_registration_brand: str | None = _setting(None, "The brand as registered with the carriers (US numbers).")
    us_registration_campaign: str | None = _setting(None, "The registered campaign.")
    us_registration_use_case: str | None = _setting(None, "The registered use case.")
    us_registration_on: date | None = _setting(None, "The day of the registration, as 2026-11-01.")
    web_host: str = _setting("127.0.0.1", "The address on which the pages listen.")
    web_port: int = _setting(8000, "The port on which they listen.", ge=1, le=65535)
    web_threads: int = _setting(16, "How many requests are answered at once.", ge=4, le=256)
    trusted_proxies: int = _setting(0, "How many proxies of your own stand before the pages.", ge=0, le=5)
    backups_folder: Path = _setting(Path("backups"), "Where backups are written.")

    @field_validator("public_base_url", "twilio_api_base")
    @classmethod
    def _is_bare_address(cls, value: str) -> str:
        parts = urlsplit(value)
        if parts.scheme not in ("http", "https") or not parts.hostname or parts.path.strip("/"):
            raise ValueError("must look like https://shop.example, without a path")
        if parts.query or parts.fragment or parts.username or parts.password:
            raise ValueError("must hold no question mark, no # and no password")
        return value.rstrip("/")

    @field_validator("secret_key", "ledger_hash_key")
    @classmethod
    def _is_long_enough(cls, value: SecretStr | None) -> SecretStr | None:
        if value is not None and len(value.get_secret_value()) < _SHORTEST_SECRET:
            raise ValueError(f"must have at least {_SHORTEST_SECRET} characters")
        return value

    @model_validator(mode="after")
    def _has_what_its_transport_needs(self) -> Settings:
        if self.transport == "twilio" and not (self.twilio_account_sid and self.twilio_auth_tokens):
            raise ValueError("the transport twilio needs twilio_account_sid and twilio_auth_tokens")
        return self

    def __repr_args__(self) -> Iterator[tuple[str | None, Any]]:
        for name, value in super().__repr_args__():
            # A PostgreSQL address may hold a password.
            yield name, re.sub(r"(?<=:)[^:/@]+(?=@)", "**********", value) if name == "database_url" else value

    @property
    def link_base(self) -> str:
        """What links in texts begin with; "" where a customer's phone could not open them, or not by TLS."""
        address = urlsplit(self.public_base_url)
        host = address.hostname or ""
        is_name = "." in host and not host.endswith(_NAMES_OF_NO_NETWORK) and not host.rpartition(".")[2].isdigit()
        return self.public_base_url if address.scheme == "https" and is_name else ""

    @property
    def is_registered_in_us(self) -> bool:
        """Whether all four parts of the carriers' registration were given; without it nothing leaves to US numbers."""
        parts = (self.us_registration_brand, self.us_registration_campaign, self.us_registration_use_case)
        return all(parts) and self.us_registration_on is not None

    def secret(self, name: Literal["secret_key", "ledger_hash_key"]) -> str:
        """The secret in the clear; raises SettingMissing with what to do."""
        held: SecretStr | None = getattr(self, name)
        if held is None:
            variable = variable_of(name)
            raise SettingMissing(f"{variable} or {variable}_FILE is needed: {Settings.model_fields[name].description}")
        return held.get_secret_value()


def variable_of(name: str) -> str:
    """The environment variable of a field."""
    return PREFIX + name.upper()


def explained() -> list[tuple[str, str, str]]:
    """Every variable, its default as text and its words, in the order of the fields; for the README and its test."""
    rows = [
        (variable_of(name), _shown(field.default), field.description or "")
        for name, field in Settings.model_fields.items()
    ]
    return rows + [(name, "", words) for name, words in OTHER_VARIABLES.items()]


def read_settings(environment: Mapping[str, str] | None = None) -> Settings:
    """The settings of this machine.

    Raises SettingsUnusable with one line for each fault; no line holds a secret's value.
    """
    environment = os.environ if environment is None else environment
    given = _from_file(environment.get("FOLLOWUP_SETTINGS"))
    given.update(_from_environment(environment))
    try:
        return Settings.model_validate({name: _converted(name, value) for name, value in given.items()})
    except ValidationError as error:
        lines = [
            f"{'.'.join(str(part) for part in fault['loc']) or 'settings'}: {fault['msg']}" for fault in error.errors()
        ]
        raise SettingsUnusable("\n".join([SettingsUnusable.__doc__ or "", *lines])) from None


def write_secret(file: Path) -> None:
    """Writes a new random secret into a file of mode 0600; a file that is there is left as it is."""
    file.parent.mkdir(parents=True, exist_ok=True)
    try:
        handle = os.open(file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except FileExistsError:
        return
    with os.fdopen(handle, "w", encoding="ascii") as written:
        written.write(secrets.token_urlsafe(32) + "\n")


def _from_environment(environment: Mapping[str, str]) -> dict[str, Any]:
    given: dict[str, Any] = {}
    for variable, value in environment.items():
        if not variable.startswith(PREFIX) or variable in OTHER_VARIABLES:
            continue
        name = variable.removeprefix(PREFIX).lower()
        secret_name = name.removesuffix("_file")
        if name in Settings.model_fields:
            given[name] = value
        elif name.endswith("_file") and _is_secret(secret_name):
            if variable_of(secret_name) in environment:
                raise SettingsUnusable(f"{variable_of(secret_name)} and {variable} are both given; give one.")
            given[secret_name] = _read_private(Path(value)).strip()
        else:
            raise SettingsUnusable(f"{variable} is no setting. {SettingsUnusable.__doc__}")
    return given


def _from_file(named: str | None) -> dict[str, Any]:
    """What the settings file holds: names as in `Settings`, or as their variables in a `.env`."""
    if not named:
        return {}
    file = Path(named)
    text = _read(file)
    if file.suffix == ".toml":
        given = _toml(file, text)
        names = set(given)
    else:
        lines = _env_lines(file, text)
        given = _from_environment(lines)
        names = {variable.removeprefix(PREFIX).lower() for variable in lines}
    unknown = [name for name in given if name not in Settings.model_fields]
    if unknown:
        raise SettingsUnusable(f"{file}: {unknown[0]} is no setting. {SettingsUnusable.__doc__}")
    if any(_is_secret(name) for name in names):
        _check_private(file)
    return given


def _toml(file: Path, text: str) -> dict[str, Any]:
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        # The parser's words may quote the line, and the line may hold a secret.
        raise SettingsUnusable(f"{file}: is not TOML. {SettingsUnusable.__doc__}") from None


def _env_lines(file: Path, text: str) -> dict[str, str]:
    """`NAME=value` a line; blank lines and lines with # before them count for nothing; quotes around are taken off."""
    found: dict[str, str] = {}
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        parts = re.fullmatch(r"\s*(?:export\s+)?([A-Z][A-Z0-9_]*)\s*=\s*(.*?)\s*", line)
        if not parts:
            raise SettingsUnusable(f"{file}, line {number}: must look like NAME=value. {SettingsUnusable.__doc__}")
        value = parts[2]
        if len(value) >= 2 and value[0] == value[-1] and value[0] in "\"'":
            value = value[1:-1]
        found[parts[1]] = value
    return found


def _converted(name: str, value: Any) -> Any:
    """The value in the field's type; what does not convert stays as it is, and the strict check says so."""
    if not isinstance(value, str):
        several = _are_secrets(name) and isinstance(value, list)
        return tuple(SecretStr(part) for part in value) if several else value
    if _are_secrets(name):
        return tuple(SecretStr(part.strip()) for part in value.split(",") if part.strip())
    if _is_secret(name):
        return SecretStr(value)
    default = Settings.model_fields[name].default
    if isinstance(default, Path):
        return Path(value)
    convert = date.fromisoformat if name.endswith("_on") else type(default)
    if convert not in (int, float, date.fromisoformat):
        return value or None
    try:
        return convert(value)
    except ValueError:
        return value


def _is_secret(name: str) -> bool:
    return name in Settings.model_fields and "SecretStr" in repr(Settings.model_fields[name].annotation)


def _are_secrets(name: str) -> bool:
    return _is_secret(name) and isinstance(Settings.model_fields[name].default, tuple)


def _shown(default: object) -> str:
    return "" if default is None or default == () else str(default)


def _read(file: Path) -> str:
    try:
        return file.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise SettingsUnusable(f"{file}: cannot be read. {SettingsUnusable.__doc__}") from error


def _read_private(file: Path) -> str:
    text = _read(file)
    _check_private(file)
    return text


def _check_private(file: Path) -> None:
    if stat.S_IMODE(file.stat().st_mode) & 0o077:
        raise SettingsUnusable(f"{file}: holds a secret, so its mode must be 0600. {SettingsUnusable.__doc__}")
