"""Commands, as they are typed."""
