"""Tests of the catalogue: units, limits, date codes, and a walk over every item."""
