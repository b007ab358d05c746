"""Figures side by side in one run: ours, a named alternative, and what was promised. Never part of the tests."""
