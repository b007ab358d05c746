"""Tests of pacing: which week an invite leaves in, so that the shop can take whom it invites."""
