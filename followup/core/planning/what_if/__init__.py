"""What would come of other rules: the coming half year of this shop's own cars, lived through in many drawn worlds.

`cars` holds what is known of each car today, `odds` how customers answer, `draws` what chance brings in each world (the
same for all rules that are compared), `lives` lets the days pass under one set of rules, `outcome` tells what came of
it. A replay asks the planner itself day by day in the same worlds (`rehearsal/bench/what_if.py`).
"""
