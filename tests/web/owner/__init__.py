"""The owner's pages."""
