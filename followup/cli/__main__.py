"""`python -m followup.cli`: the same as the command `followup`."""

from followup.cli import main

main()
