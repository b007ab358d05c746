"""Log lines: one JSON object a line on standard error; ids, never numbers, names or texts."""

from __future__ import annotations

import json
import logging
import sys


class JsonLines(logging.Formatter):
    """One event, one line: control characters of any value are escaped by JSON."""

    def format(self, record: logging.LogRecord) -> str:
        """The event as JSON; a traceback names places, not values."""
        told = {"level": record.levelname.lower(), "from": record.name, "says": record.getMessage()}
        if record.exc_info and record.exc_info[0] is not None:
            told["error"] = record.exc_info[0].__name__
            told["at"] = _places(record)
        return json.dumps(told)


def _places(record: logging.LogRecord) -> str:
    """Where the error came from, innermost last; no message, since it may quote what a customer wrote."""
    found, trace = [], record.exc_info[2] if record.exc_info else None
    while trace is not None:
        found.append(f"{trace.tb_frame.f_code.co_name}:{trace.tb_lineno}")
        trace = trace.tb_next
    return " > ".join(found[-6:])


def log_to_standard_error() -> None:
    """Send all logs to standard error as JSON lines."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(JsonLines())
    logging.basicConfig(level=logging.INFO, handlers=[handler], force=True)
    logging.getLogger("apscheduler").setLevel(logging.WARNING)
    logging.getLogger("waitress").setLevel(logging.WARNING)
