"""`odometer`: the customer tells the car's reading; the number itself is read in `readings.py`."""

from __future__ import annotations

from followup.core.replies.said import Said

CODE = "odometer"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "its at 48,200 miles", "48.2k miles", "odometer says 48215", "mileage is about 48 thousand",
        "got 48k miles on it now", "48,100 on it", "its got 48500 on it", "just rolled over 48k", "reads 48210",
        "48k mi", "around 48,000 miles", "my miles are 48230", "48 thousand miles or so", "odometer 48020",
        "at 48,150 miles", "shows 48300 miles", "sitting at 48.5k miles", "mileage 48077", "48200mi",
        "its like 48 and a half thousand miles", "current mileage 48111", "has 48,090 miles now",
        "about 48250 miles last i looked", "we're at 48 thousand miles", "it says 48190 miles", "about 48k miles",
        "48200 miles", "odometer reads 48,215",
    ),
    "es": (
        "tiene 48 mil millas", "48,200 millas", "el odometro marca 48215", "va en 48200 millas",
        "como 48 mil millas ya", "trae 48 mil 300 millas", "ya casi 48500 millas", "48mil millas",
        "el millaje es 48210", "anda en 48 mil millas", "marca 48,150", "son 48200 millas", "lleva 48300 millas",
        "tiene unas 48 mil millas", "millaje 48077", "dice 48200 millas", "mas o menos 48 mil millas",
        "trae como 48500 millas", "en 48,100 millas anda", "48 mil y pico millas", "ahorita tiene 48250 millas",
        "cuarenta y ocho mil millas", "ya llego a 48 mil millas", "el millaje va en 48111", "48230 millas exactas",
        "marca 48250 millas",
    ),
}  # fmt: skip


def holds(said: Said) -> bool:
    """Whether a reading is told."""
    return said.has_reading
