"""Write a whole copy of the database into a file while processes write; the copy says itself that it is one.

If this process dies, no file of that name is left. See `storage/backups.py`.
"""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from followup.storage import backups
from followup.storage.backups import BackupFailed
from followup.storage.store import Store

__all__ = ["BackupFailed", "back_up"]


def back_up(store: Store, file: Path, now: datetime) -> str:
    """Write it; how it is taken back, in a sentence. Raises BackupFailed with the reason."""
    return backups.backup(store, file, now)
