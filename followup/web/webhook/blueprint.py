"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("webhook", __name__, url_prefix="/hooks", template_folder="templates")
