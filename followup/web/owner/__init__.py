"""The owner's pages: staff, tokens, connecting the number, stop-all, deletion."""
