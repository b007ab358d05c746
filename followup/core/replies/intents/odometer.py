"""`odometer`: the customer tells the car's reading; the number itself is read in `readings.py`."""

from __future__ import annotations

from followup.core.replies.said import Said

CODE = "odometer"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "its at 48,200 miles",
        "48.2k miles",
        "odometer says 48215",
        "mileage is about 48 thousand",
        "got 48k miles on it now",
    ),
    "es": (
        "tiene 48 mil millas",
        "48,200 millas",
        "el odometro marca 48215",
        "va en 48200 millas",
        "como 48 mil millas ya",
    ),
}


def holds(said: Said) -> bool:
    """Whether a reading is told."""
    return said.has_reading
