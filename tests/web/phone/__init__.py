"""The test phone."""
