"""Tests of what the program knows and decides."""
