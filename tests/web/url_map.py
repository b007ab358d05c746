"""Every route of the pages, with an address for each; tests walk it, so that a new page is tested by being there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from flask import Flask
from sqlalchemy import select
from werkzeug.routing import Rule

from followup.storage import tables
from followup.wiring import House
from tests.web.house import TestHouse

WRITING = ("POST", "PUT", "PATCH", "DELETE")
# What stands in for a variable part of an address where a test needs no row of its own behind it; `full_shop.variables`
# has rows for each.
SAMPLES: Mapping[str, Any] = {"IntegerConverter": 1, "UnicodeConverter": "one", "filename": "followup.css"}


@dataclass(frozen=True)
class Route:
    """A rule of the URL map with one method and an address that fits it."""

    endpoint: str
    method: str
    address: str

    def __str__(self) -> str:
        return f"{self.method} {self.address}"


def routes(app: Flask, variables: Mapping[str, Any] = SAMPLES) -> Iterator[Route]:
    """Every rule with each of its methods. `KeyError` names a variable part for which there is nothing."""
    for rule in app.url_map.iter_rules():
        for method in sorted(rule.methods or ()):
            if method not in ("HEAD", "OPTIONS"):
                yield Route(rule.endpoint, method, _address(app, rule, variables))


def _address(app: Flask, rule: Rule, variables: Mapping[str, Any]) -> str:
    values = {name: variables[_key(rule, name, variables)] for name in rule.arguments}
    return app.url_map.bind("localhost").build(rule.endpoint, values, method=None)


def _key(rule: Rule, name: str, variables: Mapping[str, Any]) -> str:
    keys = (f"{rule.endpoint}.{name}", name, type(rule._converters[name]).__name__)
    found = next((key for key in keys if key in variables), None)
    if found is None:
        raise KeyError(f"nothing to put in <{name}> of {rule.endpoint}")
    return found


def keys_used(app: Flask, variables: Mapping[str, Any]) -> set[str]:
    """Which of the variables the URL map has a place for."""
    return {_key(rule, name, variables) for rule in app.url_map.iter_rules() for name in rule.arguments}


def contents(house: TestHouse | House) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table, to see whether a request changed anything."""
    with house.store.read() as connection:
        return {
            table.name: sorted((tuple(row) for row in connection.execute(select(table))), key=repr)
            for table in tables.metadata.sorted_tables
        }
