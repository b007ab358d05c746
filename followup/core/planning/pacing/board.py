"""What is placed in the weeks so far, and whether one more fits: expected hours beside free hours, kept as they go."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.room import Room
from followup.core.planning.pacing.weeks import POSTPONED, WEEKS, landings

_ROUNDING = 1e-9


class Board:
    """The free hours that are left while messages are placed; `used` is what is expected already of texts out."""

    def __init__(self, room: Room, used: Mapping[str, Sequence[float]] | None = None) -> None:
        self.room = room
        self.left = {name: list(hours) for name, hours in room.free.items()}
        for name, hours in (used or {}).items():
            for week, each in enumerate(hours):
                self.left[name][week] -= each
        weeks = len(next(iter(self.left.values())))
        self.landings = [
            [(week, share) for week, share in self._landings(number).items() if week < weeks] for number in range(WEEKS)
        ]

    def _landings(self, number: int) -> dict[int, float]:
        return landings(self.room.leaves(number), shares=self.room.brought.landing)

    def copy(self) -> Board:
        """The same to go on from in another way."""
        other = Board(self.room)
        other.left = {name: list(hours) for name, hours in self.left.items()}
        return other

    def fits(self, message: Message, week: int) -> bool:
        """Whether its expected hours fit what is left of every week in which its visit may fall."""
        return week == POSTPONED or not self._full(message, week, is_first_enough=True)

    def full(self, message: Message, week: int) -> list[str]:
        """What there is too little of for it to leave in that week."""
        return [] if week == POSTPONED else self._full(message, week, is_first_enough=False)

    def _full(self, message: Message, week: int, *, is_first_enough: bool) -> list[str]:
        found = []
        for name, each in message.uses.items():
            left = self.left.get(name)
            if left is None:
                continue
            expected = message.chance * each
            if any(share * expected > left[at] + _ROUNDING for at, share in self.landings[week]):
                found.append(name)
                if is_first_enough:
                    break
        return found

    def put(self, message: Message, week: int) -> None:
        """Place it there, whether or not it fits."""
        self._change(message, week, -1.0)

    def take(self, message: Message, week: int) -> None:
        """Take it away from there."""
        self._change(message, week, 1.0)

    def _change(self, message: Message, week: int, times: float) -> None:
        if week == POSTPONED:
            return
        for name, each in message.uses.items():
            left = self.left.get(name)
            if left is not None:
                for at, share in self.landings[week]:
                    left[at] += times * message.chance * each * share

    def cheapest(self, message: Message, since: int | None = None) -> int:
        """The cheapest week that it fits, from its first one (or from `since`) on: costs never fall."""
        begin = message.first_week if since is None else since
        return next(week for week in range(begin, POSTPONED + 1) if self.fits(message, week))

    def has_any(self, message: Message, week: int) -> bool:
        """Whether anything at all is free for its visit in the weeks after: a whole job, expectations left aside."""
        if week == POSTPONED:
            return True
        return all(
            name not in self.room.free or any(self.room.free[name][at] >= each for at, _ in self.landings[week])
            for name, each in message.uses.items()
        )


def move_up(board: Board, messages: Sequence[Message], placed: list[int]) -> None:
    """Move what waits to an earlier week where one has become free, until nothing moves: after that whoever waits can
    be told what is full."""
    moved = True
    while moved:
        moved = False
        waiting = [at for at, one in enumerate(messages) if placed[at] > one.first_week]
        for at in sorted(waiting, key=lambda at: -(messages[at].costs[placed[at]])):
            one, now = messages[at], placed[at]
            board.take(one, now)
            earlier = board.cheapest(one)
            board.put(one, min(earlier, now))
            if earlier < now:
                placed[at], moved = earlier, True
