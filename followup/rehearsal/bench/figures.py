"""The lines of a benchmark's table: what was asked for, what was found."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass
from typing import Any


@dataclass(frozen=True)
class Figure:
    """One figure; `holds` None where nothing is asked of it and it only stands beside the others."""

    check: str
    found: str
    asked: str = ""
    holds: bool | None = None

    def to_json(self) -> dict[str, Any]:
        """As plain JSON."""
        return asdict(self)


def at_most(check: str, found: float, bound: float, digits: int = 3, unit: str = "") -> Figure:
    """A figure that must not pass the bound."""
    return Figure(check, f"{found:,.{digits}f}{unit}", f"<= {bound:,g}{unit}", bool(found <= bound))


def at_least(check: str, found: float, bound: float, digits: int = 3, unit: str = "") -> Figure:
    """A figure that must reach the bound."""
    return Figure(check, f"{found:,.{digits}f}{unit}", f">= {bound:,g}{unit}", bool(found >= bound))


def within(check: str, found: float, middle: float, apart: float, digits: int = 1, unit: str = "") -> Figure:
    """A figure that must lie near the middle."""
    asked = f"{middle:g} +- {apart:g}{unit}"
    return Figure(check, f"{found:,.{digits}f}{unit}", asked, bool(abs(found - middle) <= apart))


def beside(check: str, found: float, digits: int = 1, unit: str = "") -> Figure:
    """A figure that only stands beside the others."""
    return Figure(check, f"{found:,.{digits}f}{unit}")


def as_table(figures: Sequence[Figure]) -> str:
    """The figures in columns; what does not hold says so."""
    widths = [max(len(getattr(one, name)) for one in figures) for name in ("check", "found", "asked")]
    lines = []
    for one in figures:
        verdict = "" if one.holds is None else "holds" if one.holds else "MISSED"
        columns = (one.check.ljust(widths[0]), one.found.rjust(widths[1]), one.asked.ljust(widths[2]), verdict)
        lines.append("  ".join(columns).rstrip())
    return "\n".join(lines)
