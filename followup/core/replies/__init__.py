"""Understanding of replies: one customer text with its context goes in, one meaning comes out. Pure."""
