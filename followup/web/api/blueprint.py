"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("api", __name__, url_prefix="/api/v1", template_folder="templates")
