"""The manager's pages."""
