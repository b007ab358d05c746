"""The blueprint that the addresses of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("calendars", __name__)
