"""Tests of the invented shop: its file is made the same every time and holds no fault."""
