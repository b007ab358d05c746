"""Regular expressions that most texts never reach, compiled when the first one does: to compile all costs the start."""

from __future__ import annotations

import re
from functools import cached_property


class OnFirstUse:
    """A regular expression by its source; `pattern` is compiled once, when it is first asked for."""

    def __init__(self, source: str) -> None:
        self.source = source

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        """The compiled expression (`re.error` where the source is none)."""
        return re.compile(self.source)
