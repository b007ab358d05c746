"""A strict reader of iCalendar for tests, written from RFC 5545 alone: lines, folding, escapes, components."""

from __future__ import annotations

from dataclasses import dataclass, field

LONGEST_LINE_OCTETS = 75  # RFC 5545, 3.1
_ESCAPED = {"\\": "\\", ";": ";", ",": ",", "n": "\n", "N": "\n"}  # RFC 5545, 3.3.11


@dataclass
class Component:
    """One component: its properties in order, and those inside it."""

    name: str
    properties: list[tuple[str, dict[str, str], str]] = field(default_factory=list)
    inside: list[Component] = field(default_factory=list)

    def value(self, name: str) -> str:
        """The raw value of a property that stands once."""
        (found,) = [value for one, _, value in self.properties if one == name]
        return found

    def text(self, name: str) -> str:
        """The words of a property that stands once."""
        return unescape(self.value(name))

    @property
    def names(self) -> list[str]:
        """Which properties there are."""
        return sorted(name for name, _, _ in self.properties)


def read(file: bytes) -> Component:
    """The one calendar of a file; `AssertionError` where RFC 5545 is broken."""
    assert file.endswith(b"\r\n")
    lines = file.decode("utf-8").removesuffix("\r\n").split("\r\n")
    for line in lines:
        assert len(line.encode()) <= LONGEST_LINE_OCTETS, line
        assert not any(ord(sign) < 32 and sign != "\t" for sign in line), line
    unfolded: list[str] = []
    for line in lines:
        if line[:1] in (" ", "\t"):
            unfolded[-1] += line[1:]
        else:
            unfolded.append(line)
    top = Component("")
    stack = [top]
    for line in unfolded:
        head, colon, value = line.partition(":")
        assert colon, line
        name, *parameters = head.split(";")
        assert name.replace("-", "").isalnum() and name == name.upper(), line
        if name == "BEGIN":
            stack.append(Component(value))
        elif name == "END":
            ended = stack.pop()
            assert ended.name == value
            stack[-1].inside.append(ended)
        else:
            pairs = dict(one.split("=", 1) for one in parameters)
            stack[-1].properties.append((name, pairs, value))
    assert stack == [top] and [one.name for one in top.inside] == ["VCALENDAR"]
    return top.inside[0]


def unescape(value: str) -> str:
    """A text as it was before it was escaped; `AssertionError` for what a text may not hold."""
    found, signs = "", iter(value)
    for sign in signs:
        assert sign not in ";,", f"not escaped: {value!r}"
        found += _ESCAPED[next(signs)] if sign == "\\" else sign
    return found
