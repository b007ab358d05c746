"""Every route of the pages, with an address for each; tests walk it, so that a new page is tested by being there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from flask import Flask
from sqlalchemy import select
from werkzeug.routing import Rule

from followup.storage import tables
from tests.web.house import TestHouse

WRITING = ("POST", "PUT", "PATCH", "DELETE")
# What stands in for a variable part of an address where a test needs no row of its own behind it.
SAMPLES: Mapping[str, Any] = {"int": 1, "float": 1.0, "default": "one", "string": "one", "path": "one"}
SAMPLES_BY_NAME: Mapping[str, Any] = {"filename": "followup.css"}


@dataclass(frozen=True)
class Route:
    """A rule of the URL map with one method and an address that fits it."""

    endpoint: str
    method: str
    address: str

    def __str__(self) -> str:
        return f"{self.method} {self.address}"


def routes(app: Flask) -> Iterator[Route]:
    """Every rule with each of its methods."""
    for rule in app.url_map.iter_rules():
        for method in sorted(rule.methods or ()):
            if method not in ("HEAD", "OPTIONS"):
                yield Route(rule.endpoint, method, _address(app, rule))


def _address(app: Flask, rule: Rule) -> str:
    values = {
        name: SAMPLES_BY_NAME.get(name, SAMPLES[_kind(rule, name)]) for name in rule.arguments if name in rule.arguments
    }
    return app.url_map.bind("localhost").build(rule.endpoint, values, method=None)


def _kind(rule: Rule, name: str) -> str:
    converter = type(rule._converters[name]).__name__
    return {"IntegerConverter": "int", "FloatConverter": "float", "PathConverter": "path"}.get(converter, "string")


def contents(house: TestHouse) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table, to see whether a request changed anything."""
    with house.store.read() as connection:
        return {
            table.name: sorted((tuple(row) for row in connection.execute(select(table))), key=repr)
            for table in tables.metadata.sorted_tables
        }
