"""Word lists of the reply reader, one module a language: the grammar is shared, the words differ."""
