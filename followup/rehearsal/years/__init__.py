"""Years of a simulated shop: the real program, customers with cars whose truth is known, and a judge every day.

`fleet.py` lives the cars and writes what a technician would, `opening.py` sets up the shop with what it knew before,
`life.py` lives the years, `ways.py` puts other ways of inviting beside them and draws the table.
"""
