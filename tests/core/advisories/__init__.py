"""Tests of advisories: what the present readings of a car show side by side."""
