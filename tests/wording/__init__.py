"""What texts say: segments, reading grade, templates, the sandbox and the checks of a wording."""
