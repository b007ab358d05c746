"""The command line: one file a command, imported only when it is called, so that `followup --help` starts at once."""

from __future__ import annotations

from importlib import import_module

import click

# name: (where it is, what `followup --help` says of it)
COMMANDS: dict[str, tuple[str, str]] = {
    "web": ("followup.cli.web:web", "Serve the pages and the provider's hooks."),
    "work": ("followup.cli.work:work", "Tick the clock: forecast, plan, send, answer, tell who is on duty."),
    "import": ("followup.cli.import_file:import_file", "Take in inspections and visits from a file."),
    "forecast": ("followup.cli.forecast:forecast", "Forecast due windows from a file, without a database."),
    "understand": ("followup.cli.understand:understand", "Read replies from standard input, without a database."),
    "plan": ("followup.cli.plan:plan", "Show what would be texted, to whom, why and why not."),
    "may-text": ("followup.cli.may_text:may_text", "Say whether a number may be texted, and what decides it."),
    "learn": ("followup.cli.learn:learn", "Learn from the shop's own cars how fast things wear there."),
    "score": ("followup.cli.score:score", "Show how right the forecasts were: said against held."),
    "db": ("followup.cli.db:db", "Upgrade the database, check it, say that it is the shop now."),
    "backup": ("followup.cli.backup:backup", "Write a backup of the database while it is in use."),
    "doctor": ("followup.cli.doctor:doctor", "Look for what keeps the shop from working."),
    "staff": ("followup.cli.staff:staff", "Add members of staff; the first owner is made here."),
    "token": ("followup.cli.token:token", "Make a token for inspections over HTTP."),
    "bench": ("followup.cli.bench:bench", "Measure how right and how fast it is, side by side with others."),
    "simulate": ("followup.cli.simulate:simulate", "Let a simulated shop live for years and judge what is promised."),
    "demo": ("followup.cli.demo:demo", "Run an invented shop on this machine, or its story from end to end."),
}


class LazyCommands(click.Group):
    """A group whose commands are imported when they are called."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """In the order of the list above, which is that of the work."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """Import one command; None where there is none of that name."""
        if cmd_name not in COMMANDS:
            return None
        module, _, name = COMMANDS[cmd_name][0].partition(":")
        command: click.Command = getattr(import_module(module), name)
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """List the commands without importing them."""
        with formatter.section("Commands"):
            formatter.write_dl([(name, words) for name, (_, words) in COMMANDS.items()])


@click.command(cls=LazyCommands)
@click.version_option(package_name="followup")
def main() -> None:
    """Turn a workshop's inspections into the right text at the right time, and answers into booking requests.

    Exit status: 0 done, 1 said no or found something, 2 wrong use.
    """
