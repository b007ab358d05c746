"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("phone", __name__, url_prefix="/phone", template_folder="templates")
