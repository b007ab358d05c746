"""The browser itself works here, so that a page's test that fails does not fail for want of a browser."""

from playwright.sync_api import Page


def test_browser_shows_a_page(page: Page) -> None:
    page.set_content("<title>Workshop</title><p id=word></p><script>word.textContent = 6 * 7</script>")
    assert page.title() == "Workshop"
    assert page.text_content("#word") == "42"
