"""The forecast, held against published numbers, brute force and closed forms."""
