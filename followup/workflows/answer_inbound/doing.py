"""One reply that is being carried out, and what it is about."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from followup.core.conversation.named_items import ItemAt, items_named
from followup.core.items import catalogue_of
from followup.core.replies.contract import ReplyOut
from followup.core.wall import day_of
from followup.storage import windows
from followup.storage.store import Connection
from followup.storage.told_lines import worth_a_line
from followup.workflows.answer_inbound.thread import Thread

__all__ = ["Doing", "ItemAt"]


@dataclass
class Doing:
    """One reply that is being carried out; `made_request` and `raised` are filled in by the effects before."""

    connection: Connection
    thread: Thread
    reply: ReplyOut
    secret: str
    request_id: int | None = None
    raised: int | None = None

    @property
    def now(self) -> datetime:
        return self.thread.now

    @property
    def shop_id(self) -> int:
        return self.thread.shop.id

    @property
    def today(self) -> date:
        return day_of(self.now, self.thread.shop.zone)

    @property
    def cause(self) -> str:
        return f"inbound:{self.thread.inbound['id']}"

    def told_items(self) -> list[ItemAt]:
        """The items of the last text about the car."""
        return [(item, position) for item, position in self.thread.about.get("items", [])]

    def done_items(self) -> list[ItemAt]:
        """Those that a customer says were done: what they name; where they name none, what our text spoke of."""
        items = self.told_items()
        own_words = {code: item.words for code, item in catalogue_of(self.thread.shop).items()}
        return list(items_named(self.thread.inbound["body"], items, own_words)) or self._spoken_of(items)

    def _spoken_of(self, items: list[ItemAt]) -> list[ItemAt]:
        """Without what an invite joins to the visit but has no line for: nobody says of it that it was done."""
        if self.thread.vehicle is None:
            return items
        rows = {
            (row["item"], row["position"]): row
            for row in windows.windows_of(self.connection, self.thread.vehicle["id"])
        }
        known = worth_a_line("invite", [rows[at] for at in items if at in rows], self.today)
        silent = set(rows) - {(row["item"], row["position"]) for row in known}
        return [at for at in items if at not in silent]
