"""The only SQL: tables, migrations, transactions, and one file an aggregate."""
