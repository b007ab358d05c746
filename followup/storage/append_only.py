"""The database's own guard of the consent ledger: its lines are never changed nor taken out.

Number and words alone may go (a person was deleted) or come back (the number is known again by its hash).
"""

from __future__ import annotations

from sqlalchemy import DDL

_KEPT = (
    "id, shop_id, number_hash, event, covers, at, given_on, how, words_version, language, is_own_and_adult, because, "
    "kept_by"
)
_SAYS = "the consent ledger only grows"

_LEDGER: dict[str, tuple[str, ...]] = {
    "sqlite": (
        f"CREATE TRIGGER consents_unchanged BEFORE UPDATE OF {_KEPT} ON consents "
        f"BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
        f"CREATE TRIGGER consents_kept BEFORE DELETE ON consents BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
    ),
    "postgresql": (
        "CREATE OR REPLACE FUNCTION consents_only_grow() RETURNS trigger LANGUAGE plpgsql AS "
        f"'BEGIN RAISE EXCEPTION ''{_SAYS}''; END'",
        f"CREATE TRIGGER consents_unchanged BEFORE UPDATE OF {_KEPT} ON consents "
        "FOR EACH ROW EXECUTE FUNCTION consents_only_grow()",
        "CREATE TRIGGER consents_kept BEFORE DELETE ON consents FOR EACH ROW EXECUTE FUNCTION consents_only_grow()",
    ),
}


def ledger() -> dict[str, list[DDL]]:
    """What guards the ledger, by the kind of database."""
    return {
        dialect: [DDL(one) for one in statements]  # type: ignore[no-untyped-call]  # the library has no types there
        for dialect, statements in _LEDGER.items()
    }
