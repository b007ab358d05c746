"""Tests of planning: which text, when, and why not."""
