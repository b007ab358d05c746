"""Tests of the ways of sending."""
