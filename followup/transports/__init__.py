"""Ways for a text to leave and come back: one file a way, one interface (`transport.py`), one choice (`choose.py`)."""
