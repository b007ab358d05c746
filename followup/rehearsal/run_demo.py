"""Runs the demo: sets the shop up, starts the web server and the work process, and ends them again."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import click
import requests

from followup.rehearsal.demo_shop import PASSWORD, DemoShop, set_up
from followup.rehearsal.story import StoryBroken, tell_story

STARTS_WITHIN_SECONDS = 60
ENDS_WITHIN_SECONDS = 30


def run_demo(folder: Path, port: int | None) -> int:
    """Run the demo until Ctrl-C; the exit status."""
    # Whoever ends this process ends the two that it started.
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    demo = _set_up(folder, port)
    with running(demo) as processes:
        click.echo(WELCOME.format(address=demo.address, password=PASSWORD))
        try:
            while all(process.poll() is None for process in processes):
                _pause(0.5)
        except KeyboardInterrupt:
            click.echo("\nThe demo ends.")
            return 0
    click.echo("A process of the demo ended by itself: see the lines above.", err=True)
    return 1


def run_story(folder: Path, port: int | None) -> int:
    """Walk the story once; the exit status."""
    demo = _set_up(folder, port)
    with running(demo):
        try:
            tell_story(demo, click.echo)
        except StoryBroken as broken:
            click.echo(f"story: broken: {broken}", err=True)
            return 1
    click.echo("story: done")
    return 0


def _set_up(folder: Path, port: int | None) -> DemoShop:
    if port is not None and not _is_free(port):
        raise click.UsageError(f"Port {port} is taken: choose another one, or leave it out.")
    click.echo("Setting up the invented shop (about 15 seconds) ...", err=True)
    return set_up(folder, port or _free_port(), lambda words: click.echo(f"  {words}", err=True))


def _is_free(port: int) -> bool:
    with socket.socket() as probe:
        return probe.connect_ex(("127.0.0.1", port)) != 0


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        found: int = probe.getsockname()[1]
        return found


@contextmanager
def running(demo: DemoShop) -> Iterator[list[subprocess.Popen[bytes]]]:
    """The web server and the work process of a demo, ended when the block ends."""
    log = (demo.folder / "log").open("wb")
    command = [sys.executable, "-m", "followup.cli"]
    environment = {**os.environ, **demo.environment}
    processes = [
        subprocess.Popen([*command, name], env=environment, stdout=log, stderr=log, stdin=subprocess.DEVNULL)
        for name in ("web", "work")
    ]
    try:
        _wait_until_it_answers(demo, processes)
        yield processes
    finally:
        for process in processes:
            process.terminate()
        for process in processes:
            try:
                process.wait(ENDS_WITHIN_SECONDS)
            except subprocess.TimeoutExpired:
                process.kill()
                process.wait()
        log.close()


def _wait_until_it_answers(demo: DemoShop, processes: list[subprocess.Popen[bytes]]) -> None:
    for _ in range(STARTS_WITHIN_SECONDS * 10):
        if any(process.poll() is not None for process in processes):
            break
        try:
            requests.get(f"{demo.address}/sign-in", timeout=2)
            return
        except (requests.ConnectionError, requests.Timeout):
            _pause(0.1)
    told = (demo.folder / "log").read_text(encoding="utf-8", errors="replace")[-2000:]
    raise click.ClickException(f"The demo does not answer at {demo.address}. Its last words:\n{told}")


def _pause(seconds: float) -> None:
    threading.Event().wait(seconds)


WELCOME = """
followup demo: {address}

  Sign in as    for
  rui           technician: inspections, top-offs, cars
  noor          advisor: booking requests, threads, phone list
  theo          manager: when we text, what we say, how it went
  ines          owner: staff, tokens, stop all

  Password of each: {password}

The shop is invented, its texts go to the test phone on the pages, and its clock can be moved there.
Press Ctrl-C to end it; what you did is forgotten then.
"""
