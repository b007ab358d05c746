"""What texts say: finds the shipped message templates and phrase files, and renders them in a sandbox.

The shop's own wording is handed in by the workflow. The checks of a rendered text are pure: `core/wording_checks.py`.
"""

from followup.wording.advisory_phrases import advisory_fact
from followup.wording.own_items import ItemText, review_item
from followup.wording.phrases import ItemPhrases, item_fact, item_phrases, measured_phrase, service_fact
from followup.wording.render import CannotRender, render
from followup.wording.review import review
from followup.wording.shipped import LANGUAGES, ConsentWords, NoSuchTemplate, consent_words, shipped
from followup.wording.syntax import check_template

__all__ = [
    "LANGUAGES",
    "CannotRender",
    "ConsentWords",
    "ItemPhrases",
    "ItemText",
    "NoSuchTemplate",
    "advisory_fact",
    "check_template",
    "consent_words",
    "item_fact",
    "item_phrases",
    "measured_phrase",
    "render",
    "review",
    "review_item",
    "service_fact",
    "shipped",
]
