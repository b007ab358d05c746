"""An invented fleet whose true wear is known, to judge forecasts by: it breaks rules that the forecast does not know.

`habits.py` says how its drivers, parts and technicians behave, `driving.py` and `wearing.py` live their weeks,
`reading.py` is what a shop gets to see of it, `build.py` puts it together.
"""
