"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("manager", __name__, url_prefix="/manager", template_folder="templates")
