"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.webhook import texts
from followup.web.webhook.blueprint import blueprint

__all__ = ["blueprint", "texts"]
