"""Trials that break things: a provider that misbehaves, processes that are killed, time that is stepped, a judge."""
