"""Keep an inspection form as far as it is filled, hand it from one member to another, throw it away.

To keep what was typed so far:
1. Was the inspection kept meanwhile, or corrected by somebody else? Then there is nothing to keep any more: a late post
   of a page brings no draft back.
2. The draft that the page knows is somebody else's by now, or another page wrote it since: nothing is overwritten, and
   the page is told who has it and since when.
3. Else it is kept under the next revision. The same page may send the same again, as often as it likes: it may not
   have heard the answer.
What the answer says is on the disk. A process that dies before has kept nothing of this post, and all of the last one.
Two posts at once: the revision lets one of them in, the other is looked at again.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from followup.storage import drafts, inspections
from followup.storage.store import Connection, Store

_LOOKS = 3
GONE = "It is not there any more: it was kept, thrown away, or became too old."
WhyNot = Literal["kept", "taken", "elsewhere"]


@dataclass(frozen=True)
class TypedSoFar:
    """A form as a page sends it. `corrects` is the id of the version that it replaces; `page` names the page,
    `draft_id` and `seen` the draft that it began with. Fields named in `hidden` are not on this member's page and stay
    as they were."""

    vehicle_id: int | None
    part: str
    code: str
    corrects: int | None
    fields: Mapping[str, str]
    page: str
    draft_id: int | None = None
    seen: int | None = None
    hidden: tuple[str, ...] = ()

    @property
    def about(self) -> str:
        """What the draft is about: a member has one of it."""
        if self.corrects is not None:
            return f"correction {self.code} {self.part}".strip()
        return f"car {self.vehicle_id} {self.part}".strip() if self.vehicle_id else f"new {self.code}"


@dataclass(frozen=True)
class DraftAnswer:
    """What became of it: kept (`why_not` None) as that draft and revision; else why not, and who has it since when."""

    draft_id: int | None
    revision: int
    at: datetime
    why_not: WhyNot | None = None
    who: str = ""


def keep_draft(store: Store, shop_id: int, staff_id: int, typed: TypedSoFar, now: datetime) -> DraftAnswer:
    """Keep what was typed so far; see the module's words."""
    for _ in range(_LOOKS):
        with store.write() as connection:
            answer = _keep(connection, shop_id, staff_id, typed, now)
        if answer is not None:
            return answer
    return DraftAnswer(None, 0, now, "elsewhere")


def _keep(connection: Connection, shop_id: int, staff_id: int, typed: TypedSoFar, now: datetime) -> DraftAnswer | None:
    """None where another post was first in between."""
    current = inspections.current_part(connection, shop_id, typed.code, typed.part)
    if (current["id"] if current else None) != typed.corrects:
        who = (current["technician"] or current["received_by"]) if current else ""
        return DraftAnswer(None, 0, current["received_at"] if current else now, "kept", who)
    seen = drafts.load_draft(connection, shop_id, typed.draft_id) if typed.draft_id else None
    if seen and seen["staff_id"] != staff_id:
        return DraftAnswer(seen["id"], seen["revision"], seen["kept_at"], "taken", seen["who"])
    seen = seen or drafts.draft_about(connection, shop_id, staff_id, typed.about)
    if seen is None:
        return _keep_new(connection, shop_id, staff_id, typed, now)
    if seen["page"] != typed.page and seen["revision"] != typed.seen:
        return DraftAnswer(seen["id"], seen["revision"], seen["kept_at"], "elsewhere", seen["who"])
    unseen = {name: seen["fields"][name] for name in typed.hidden if name in seen["fields"]}
    fields = {**typed.fields, **unseen}
    if not drafts.change_draft(connection, seen, fields=fields, page=typed.page, code=typed.code, kept_at=now):
        return None
    return DraftAnswer(seen["id"], seen["revision"] + 1, now)


def _keep_new(
    connection: Connection, shop_id: int, staff_id: int, typed: TypedSoFar, now: datetime
) -> DraftAnswer | None:
    made = drafts.add_draft(
        connection, shop_id=shop_id, staff_id=staff_id, vehicle_id=typed.vehicle_id, about=typed.about,
        part=typed.part, code=typed.code, corrects=typed.corrects, fields=dict(typed.fields), page=typed.page,
        revision=1, begun_at=now, kept_at=now,
    )  # fmt: skip
    return DraftAnswer(made, 1, now) if made is not None else None


def take_draft(store: Store, shop_id: int, staff_id: int, draft_id: int, revision: int, now: datetime) -> str | None:
    """Take another member's draft over as it was seen; why not, in words, or None.

    Their page is told with its next post; what it sends then is not kept.
    """
    with store.write() as connection:
        seen = drafts.load_draft(connection, shop_id, draft_id)
        if seen is None or seen["staff_id"] == staff_id:
            return None if seen else GONE
        if seen["revision"] != revision:
            return f"{seen['who']} went on with it just now. Look at it again."
        if drafts.draft_about(connection, shop_id, staff_id, seen["about"]):
            return "You have a half-filled form of your own for this car: keep it, or throw it away first."
        if not drafts.change_draft(connection, seen, staff_id=staff_id, page="", kept_at=now):
            return f"{seen['who']} went on with it just now. Look at it again."
    return None


def drop_draft(store: Store, shop_id: int, staff_id: int, draft_id: int, revision: int) -> str | None:
    """Throw a draft of one's own away as it was seen; why not, in words, or None."""
    with store.write() as connection:
        seen = drafts.load_draft(connection, shop_id, draft_id)
        if seen is None:
            return None
        if seen["staff_id"] != staff_id or seen["revision"] != revision or not drafts.drop_draft(connection, seen):
            return "More was filled in since you looked. Look at it again."
    return None
