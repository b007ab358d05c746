"""The HTTP interface for other programs, proven by token."""
