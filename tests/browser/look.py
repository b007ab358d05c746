"""Looks at a page as people do: on a phone and on a desk, in light and in dark, with a screen reader's rules.

Rules: axe-core's for WCAG 2.2 A and AA. Where `SCREENSHOTS_FOLDER` names a folder, every look leaves a picture.
"""

from __future__ import annotations

import os
import re
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any, Literal

from playwright.sync_api import Page

PHONE, DESK = (360, 740), (1280, 900)
TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]
Scheme = Literal["light", "dark"]
# Each size and each scheme once: colors do not hang on the size, nor the layout on the scheme.
LOOKS: tuple[tuple[tuple[int, int], Scheme], ...] = ((PHONE, "light"), (DESK, "dark"))
ALL_LOOKS = (*LOOKS, (PHONE, "dark"), (DESK, "light"))


def sign_in(page: Page, base: str, login: str, password: str) -> None:
    """Sign in as people do."""
    page.goto(f"{base}/sign-in")
    page.get_by_label("Sign-in name").fill(login)
    page.get_by_label("Password").fill(password)
    page.get_by_role("button", name="Sign in").click()
    page.wait_for_url(lambda url: "/sign-in" not in url)


def check_page(page: Page, url: str, status: int = 200, folder: Path | None = None, name: str = "") -> list[str]:
    """Everything that is wrong with a page on a phone in light and on a desk in dark; empty when all is well.

    `folder` (or SCREENSHOTS_FOLDER): where pictures go, named by `name` or the page's path. What went wrong in the
    page itself (a script that broke, something that the content policy blocked, a dialog) counts too, and an answer
    other than `status`.
    """
    folder = folder or _folder()
    faults: list[str] = []

    def heard(words: str) -> None:
        faults.append(f"the browser says: {words}")

    def on_console(message: Any) -> None:
        # A page that answers 404 is looked at on purpose.
        if message.type == "error" and "Failed to load resource" not in message.text:
            heard(message.text)

    def on_dialog(dialog: Any) -> None:
        heard(f"dialog: {dialog.message}")
        dialog.dismiss()

    def on_error(error: Any) -> None:
        heard(str(error))

    page.on("console", on_console)
    page.on("dialog", on_dialog)
    page.on("pageerror", on_error)
    answer = page.goto(url)
    if answer is None or answer.status != status:
        faults.append(f"{url} answers {answer.status if answer else 'nothing'}")
    page.evaluate(engine())
    for (width, height), scheme in ALL_LOOKS if folder else LOOKS:
        page.set_viewport_size({"width": width, "height": height})
        page.emulate_media(color_scheme=scheme)
        where = f"{url} at {width} px, {scheme}"
        faults += [f"{where}: {fault}" for fault in [*sideways(page), *axe(page)]]
        if folder:
            named = name or re.sub(r"\W+", "-", url.partition("//")[2].partition("/")[2]).strip("-") or "start"
            page.screenshot(path=folder / f"{named}-{width}-{scheme}.png", full_page=True)
    faults += [f"{url} with all opened: {fault}" for fault in _opened(page)]
    page.remove_listener("console", on_console)
    page.remove_listener("dialog", on_dialog)
    page.remove_listener("pageerror", on_error)
    return faults


def picture(page: Page, name: str, *, whole: bool = True) -> None:
    """Leave a picture of the page as it stands, or of what is in sight, where SCREENSHOTS_FOLDER names a folder."""
    folder = _folder()
    if folder:
        page.screenshot(path=folder / f"{name}.png", full_page=whole)


def _opened(page: Page) -> list[str]:
    """What sticks out on a phone once everything that folds is unfolded."""
    page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
    page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true })")
    return sideways(page)


def _folder() -> Path | None:
    named = os.environ.get("SCREENSHOTS_FOLDER")
    if not named:
        return None
    folder = Path(named)
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def sideways(page: Page) -> list[str]:
    """Whether one must scroll sideways, and what sticks out."""
    wide = page.evaluate(
        """() => {
            const room = document.documentElement.clientWidth
            if (document.documentElement.scrollWidth <= room) return []
            const sticksOut = one => one.getBoundingClientRect().right > room + 1 ||
                (one.scrollWidth > room && getComputedStyle(one).overflowX === 'visible')
            return ['page', ...[...document.querySelectorAll('body *')].filter(sticksOut)
                .slice(0, 5).map(one => one.tagName.toLowerCase() + '.' + (one.getAttribute('class') || ''))]
        }"""
    )
    return [f"sideways scroll because of {', '.join(wide)}"] if wide else []


@cache
def engine() -> str:
    """axe as a script; the policy of the pages bars script tags, so it comes in by evaluation."""
    return (files("axe_playwright_python") / "axe.min.js").read_text("utf-8") + "\n;null"


def axe(page: Page) -> list[str]:
    """What axe finds; its engine must be in the page."""
    found = page.evaluate("tags => axe.run(document, {runOnly: {type: 'tag', values: tags}})", TAGS)
    return [
        f"axe {one['id']}: {one['help']}: {'; '.join(str(node['target']) for node in one['nodes'][:3])}"
        for one in found["violations"]
    ]
