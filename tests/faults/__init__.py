"""Trials that break things: no text is lost, and nobody is texted twice."""
