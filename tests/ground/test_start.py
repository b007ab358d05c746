"""`followup --help` loads nothing heavy: what takes 0.1 s and more to import is imported where it is used."""

import subprocess
import sys

# Measured: each of these costs 0.1 s and more, or tens of megabytes.
HEAVY = ("scipy", "holidays", "phonenumbers", "twilio.rest", "numpy", "flask", "sqlalchemy", "alembic", "hypothesis")

PROGRAM = """
import sys
from followup.cli import main
sys.argv = ["followup", "--help"]
try:
    main()
except SystemExit as end:
    print("ended", end.code)
print("heavy", [name for name in {heavy!r} if name in sys.modules])
"""


def test_help_loads_nothing_heavy() -> None:
    program = PROGRAM.format(heavy=HEAVY)
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=60)
    assert "ended 0" in done.stdout, done.stderr
    assert done.stdout.splitlines()[-1] == "heavy []"
