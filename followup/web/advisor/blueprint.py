"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("advisor", __name__, url_prefix="/advisor", template_folder="templates")
