"""A wheel carries what a checkout has beside the package: the message templates and the demo's data."""

import subprocess
import sys
import zipfile
from pathlib import Path

from tests.ground.copies import ROOT


def test_wheel_holds_templates_and_demo_data(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "hatchling", "build", "--target", "wheel", "--directory", str(tmp_path)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    (wheel,) = tmp_path.glob("*.whl")
    with zipfile.ZipFile(wheel) as archive:
        packed = set(archive.namelist())
    for folder in ("message_templates", "demo_data"):
        beside = {path.relative_to(ROOT).as_posix() for path in (ROOT / folder).rglob("*") if path.is_file()}
        kept = {name for name in beside if "__pycache__" not in name}
        assert kept
        assert {f"followup/_shipped/{name}" for name in kept} <= packed
    assert "followup/cli/__init__.py" in packed
