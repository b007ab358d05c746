"""When each item of a car will be due: distance driven, wear, first passage through the limit, due windows.

`history.py` says what is known of a car, `due.py` turns many histories into due windows at once, `window.py` is the
result. The rest is arithmetic on arrays: one row an item, quantities in the units that each docstring names.
"""
