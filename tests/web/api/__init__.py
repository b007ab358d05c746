"""Tests of the HTTP interface for other programs."""
