"""Tests of the advisor's pages."""
