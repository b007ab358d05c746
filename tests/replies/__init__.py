"""Understanding of replies, held against the reply contract."""
