"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("owner", __name__, url_prefix="/owner", template_folder="templates")
