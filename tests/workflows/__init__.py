"""Workflows on a real database."""
