"""The provider's hooks: replies and delivery reports, proven by signature."""
