"""Alembic migrations: what turns an older database into the present one."""
