"""Where a simulated shop is: a folder with its database, secrets and clock, as the demo's."""

from __future__ import annotations

import shutil
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from followup.rehearsal import demo_shop
from followup.rehearsal.faults.shop import provider_environment, stop_clock

# Of the address that hooks are posted to; nobody listens there unless real processes run.
PORT = 8000


@dataclass(frozen=True)
class Premises:
    """A folder, and the port of its pages."""

    folder: Path
    port: int = PORT

    @property
    def clock_file(self) -> Path:
        """What its processes read the time from."""
        return self.folder / "clock"

    def environment(self, provider: str) -> dict[str, str]:
        """The settings of its processes, with the provider at that address."""
        return {**demo_shop.environment_of(self.folder, self.port), **provider_environment(provider)}

    def hook(self) -> str:
        """The address to which texts of customers are posted."""
        return f"http://127.0.0.1:{self.port}/hooks/texts"

    def set_clock(self, instant: datetime) -> None:
        """Stop the clock of its processes at that instant."""
        stop_clock(self.clock_file, instant)


def copy_of_demo(template: Path, folder: Path, port: int = PORT) -> Premises:
    """The demo shop of a folder in another folder; it must not have run there, else it knows that it is a copy."""
    for file in template.iterdir():
        if file.is_file():
            shutil.copy(file, folder / file.name)
    return Premises(folder, port)
