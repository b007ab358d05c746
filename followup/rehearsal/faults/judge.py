"""Holds what a shop's database says against what its provider took: nothing lost, nothing twice, all at an end."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from followup.rehearsal.faults import fate
from followup.rehearsal.faults.provider import Post, Provider
from followup.rehearsal.faults.shop import CLOSES_AT, OPENS_AT
from followup.storage.rows import Row

# Why a planned text may rightly not leave in a trial: the customer came first, or the provider refused the number.
_RIGHTLY_DROPPED = (
    "a person has this thread", "its time is over", "somebody is calling already", "the customer stopped the texts",
    "the customer was faster", "the number cannot be texted",
)  # fmt: skip


@dataclass
class Verdict:
    """What one run showed. `faults` says in words what must not be."""

    seed: int
    texts: int = 0
    sent: int = 0
    held: int = 0
    kills: int = 0
    lost: int = 0
    duplicated: int = 0
    open: int = 0
    faults: list[str] = field(default_factory=list)

    @property
    def is_clean(self) -> bool:
        """True where nothing was lost, duplicated, left open or otherwise wrong."""
        return not (self.lost or self.duplicated or self.open or self.faults)


def is_open(text: Row, until: datetime) -> bool:
    """Whether something is still to be done with a text that was due by that instant."""
    return text["state"] in ("planned", "claimed", "in_flight", "unknown") and bool(text["due_at"] <= until)


@dataclass(frozen=True)
class Struck:
    """How many processes were killed, how many texts each may have had in flight, how long one may have stood still."""

    kills: int
    in_flight_each: int = 1
    stood_still: timedelta = timedelta(0)


def judge(
    seed: int, texts: list[Row], orphans: list[str], provider: Provider, struck: Struck, until: datetime
) -> Verdict:
    """The verdict on a run whose texts had until then to come to an end. `orphans` names decisions that have no text
    and should have one."""
    verdict = Verdict(seed, texts=len(texts), kills=struck.kills)
    verdict.sent = sum(row["state"] == "sent" for row in texts)
    verdict.held = sum(row["state"] == "held" for row in texts)
    for row in texts:
        if is_open(row, until):
            verdict.open += 1
            verdict.faults.append(f"text {row['id']} is still {row['state']}")
    _look_for_lost(verdict, texts, orphans, provider)
    _look_for_doubles(verdict, provider, {row["public_id"] for row in texts if row["kind"] == "alert"})
    _look_at_ids(verdict, texts, provider)
    _look_at_held(verdict, texts, provider, struck.kills * struck.in_flight_each)
    invites = {row["public_id"] for row in texts if row["kind"] == "invite"}
    _look_at_posts(verdict, provider, invites, CLOSES_AT + struck.stood_still)
    if provider.refused_reports:
        verdict.faults.append(f"delivery reports were answered with {provider.refused_reports}")
    return verdict


def _look_for_lost(verdict: Verdict, texts: list[Row], orphans: list[str], provider: Provider) -> None:
    taken = {post.public_id for post in provider.taken}
    refused = {post.public_id for post in provider.posts if post.fate.is_proven_refusal}
    for row in texts:
        because = str(row["state_because"])
        is_lost = {
            "sent": row["public_id"] not in taken,
            "failed": row["public_id"] not in refused,
            "dropped": not because.startswith(_RIGHTLY_DROPPED),
        }.get(row["state"], False)
        if is_lost:
            verdict.lost += 1
            verdict.faults.append(f"text {row['id']} is {row['state']} ({because}) and was not taken")
    verdict.lost += len(orphans)
    verdict.faults += orphans


def _look_for_doubles(verdict: Verdict, provider: Provider, alerts: set[str]) -> None:
    for what, count in Counter(post.public_id for post in provider.taken).items():
        if count > 1:
            verdict.duplicated += count - 1
            verdict.faults.append(f"{what} was taken {count} times")
    # Staff are told again until somebody takes over; a customer never gets the same words twice.
    rows = {post.public_id: (post.to, post.body) for post in provider.taken if post.public_id not in alerts}
    for (to, _), count in Counter(rows.values()).items():
        if count > 1:
            verdict.duplicated += count - 1
            verdict.faults.append(f"{count} texts put the same words to {to[-4:]}")


def _look_at_ids(verdict: Verdict, texts: list[Row], provider: Provider) -> None:
    """Every id that a row is bound to exists at the provider, for this very row."""
    whose = {post.sid: post.public_id for post in provider.taken}
    for row in texts:
        if row["state"] == "sent" and whose.get(row["provider_id"]) != row["public_id"]:
            verdict.faults.append(
                f"text {row['id']} is bound to {row['provider_id']}, which is another one's or nobody's"
            )


def _look_at_held(verdict: Verdict, texts: list[Row], provider: Provider, most_by_kills: int) -> None:
    """A text may end in doubt where a process was killed under it, or where the provider kept back every proof."""
    last = {post.public_id: post for post in provider.posts}
    reported = {public_id for _, public_id, _ in provider.reported}
    by_kills = 0
    for row in texts:
        if row["state"] != "held":
            continue
        post = last.get(row["public_id"])
        if post is None or post.fate.is_proven_refusal or post.fate.how == fate.ANSWERED:
            by_kills += 1
        if row["public_id"] in reported or (post is not None and _was_to_be_found(post)):
            verdict.faults.append(f"text {row['id']} is held although there was proof of it")
    if by_kills > most_by_kills:
        verdict.faults.append(f"{by_kills} texts are held by {most_by_kills} at most that were in flight at a kill")


def _was_to_be_found(post: Post) -> bool:
    return post.sid is not None and not post.fate.is_redacted


def _look_at_posts(verdict: Verdict, provider: Provider, invites: set[str], closes_at: datetime) -> None:
    """One request an attempt; none after doubt or a permanent refusal; no invite that may land out of hours."""
    seen: dict[str, Post] = {}
    for post in provider.posts:
        before = seen.get(post.public_id)
        if before is not None:
            if before.attempt == post.attempt:
                verdict.faults.append(f"{post.public_id} was asked for twice in attempt {post.attempt}")
            if not before.fate.is_proven_refusal or before.fate.how in fate.PERMANENT:
                verdict.faults.append(f"{post.public_id} was asked for again after {before.fate.how}")
        seen[post.public_id] = post
        lands_by = post.at + timedelta(seconds=post.valid_seconds)
        if post.public_id in invites and not OPENS_AT <= post.at < lands_by <= closes_at:
            verdict.faults.append(f"{post.public_id} may land out of hours")
