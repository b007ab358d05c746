"""The provider's hooks."""
