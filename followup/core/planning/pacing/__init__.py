"""Which week each invite leaves in, so that the visits that are expected of all fit the hours that are free.

`weeks` says when the visits of a text come, `room` what is free, `message` what waiting costs; `board` keeps what is
placed, `greedy` and `linear` place, `pace` joins them.
"""
