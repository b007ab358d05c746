"""Tests of followup: one folder for each room of the program."""
