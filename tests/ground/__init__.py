"""Tests of the ground: layout, import contracts, databases, the two commands."""
