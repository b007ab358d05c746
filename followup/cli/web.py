"""`followup web`: the pages and the hooks, served by one process with several threads."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.command()
@click.option("--port", type=int, default=None, help="Another port than that of the settings.")
def web(port: int | None) -> None:
    """Serve the pages and the provider's hooks until it is stopped."""
    from followup.logs import log_to_standard_error

    log_to_standard_error()
    with the_house() as house:
        house.upgrade_database()
        house.move_in()
        house.answers_at_once = False
        from waitress import serve

        from followup.web.app import MAX_BODY_BYTES, create_app

        settings = house.settings
        click.echo(f"followup web: {settings.public_base_url}", err=True)
        serve(
            create_app(house),
            host=settings.web_host,
            port=port or settings.web_port,
            threads=settings.web_threads,
            ident=None,
            # Its own limit is a gigabyte, which it would write to the disk before the pages can refuse it.
            max_request_body_size=MAX_BODY_BYTES,
            # What a proxy of our own says of the client is read by the pages; without one nobody is believed.
            clear_untrusted_proxy_headers=settings.trusted_proxies == 0,
        )
