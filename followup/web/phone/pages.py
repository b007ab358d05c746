"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.phone.blueprint import blueprint

__all__ = ["blueprint"]
