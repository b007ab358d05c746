"""Copies of a database, moves to another one, and migrations that are broken off."""
