"""The blueprint that the pages of this folder hang on."""

from __future__ import annotations

from flask import Blueprint

blueprint = Blueprint("technician", __name__, url_prefix="/shop-floor", template_folder="templates")
