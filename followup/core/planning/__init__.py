"""Planning: which text about which items, when, and why not; which times are free. Pure: `now` is an argument."""
