"""The pages: what staff see, the test phone, the provider's hooks and the token interface."""
