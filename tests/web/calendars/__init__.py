"""Tests of what calendars fetch."""
