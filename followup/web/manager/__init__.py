"""The manager's pages: when we text, what we say, how it went, duty."""
