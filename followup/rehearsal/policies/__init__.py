"""A plain world in which ways of inviting are compared: the same cars, drivers and answers for each of them.

`world.py` builds it, `policies.py` names the ways, `forecast.py` asks the real forecast, `rule.py` is the send rule of
`core/planning` on arrays, `cars.py` lives the cars, `run.py` lives the weeks and counts.
"""
