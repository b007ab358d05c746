"""`--json FILE`, where a script would read what a command says."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

import click

json_option = click.option(
    "--json",
    "json_file",
    type=click.Path(dir_okay=False, path_type=Path),
    default=None,
    help="Also write all of it here.",
)


def write_json(json_file: Path | None, found: Any) -> None:
    """Write it where a file was named, readable by its owner alone: it may tell of customers."""
    if json_file is None:
        return
    with os.fdopen(os.open(json_file, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "w", encoding="utf-8") as to:
        json_file.chmod(0o600)
        to.write(json.dumps(found, indent=1) + "\n")
