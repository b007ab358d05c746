"""`followup demo`: an invented shop on this machine, with pages, a clock to move and a test phone; or its story."""

from __future__ import annotations

import tempfile
from pathlib import Path

import click


@click.command()
@click.option("--story", is_flag=True, help="Walk once from an inspection to a confirmed booking, and end.")
@click.option("--port", type=int, default=None, help="The port of the pages; a free one unless said.")
@click.option(
    "--keep",
    type=click.Path(file_okay=False, path_type=Path),
    default=None,
    help="An empty folder in which the demo is kept; else it is forgotten when it ends.",
)
def demo(story: bool, port: int | None, keep: Path | None) -> None:
    """Run an invented shop on this machine. Stop it with Ctrl-C."""
    from followup.rehearsal.run_demo import run_demo, run_story

    if keep is not None:
        keep.mkdir(parents=True, exist_ok=True)
        if any(keep.iterdir()):
            raise click.UsageError(f"{keep} is not empty: name a folder that is.")
        raise SystemExit(run_story(keep, port) if story else run_demo(keep, port))
    with tempfile.TemporaryDirectory(prefix="followup-demo-") as folder:
        raise SystemExit(run_story(Path(folder), port) if story else run_demo(Path(folder), port))
