"""What a solver says that has no answer."""


class NotSolved(Exception):
    """The solver gave no answer in its time."""
