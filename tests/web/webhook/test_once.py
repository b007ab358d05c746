"""A hook has one effect, however often and in whatever disguise it comes.

Sources: faults I1, I7, I8 and I10 of this project's list; that a signature holds no time, and that the signed text has
no marks between names and values, was measured with the provider's own client.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

import pytest

from followup.storage import tables
from tests.transports.account import ACCOUNT
from tests.web.webhook.conftest import Hooks, encode, sign, text_form
from tests.workflows.counter import NOW

Fields = list[tuple[str, str]]


@pytest.mark.parametrize("times", [1, 2, 20])
def test_the_same_text_however_often_is_one_row_and_one_effect(hooks: Hooks, times: int) -> None:
    form = text_form("please stop texting me")
    hooks.at_once(*[lambda: hooks.post(form)] * times)
    once = hooks.counts()
    assert (once["inbound"], hooks.answers) == (1, [204] * times)
    assert [row["event"] for row in hooks.rows(tables.consents)] == ["given", "taken_back"]
    assert [row["reason"] for row in hooks.rows(tables.texts)] == ["stopped"]
    for _ in range(3):
        hooks.post(form)
    hooks.restart()
    hooks.at_once(*[lambda: hooks.post(form)] * 5)
    assert hooks.counts() == once and set(hooks.answers) == {204}, "later and after a restart too"


def test_different_texts_at_once_are_all_kept(hooks: Hooks) -> None:
    forms = [text_form("thanks", f"SM{n:032x}", From=f"+1312555{100 + n:04d}") for n in range(16)]
    hooks.at_once(*[lambda form=form: hooks.post(form) for form in [*forms, *forms]])
    assert hooks.counts()["inbound"] == 16 and set(hooks.answers) == {204}


def recut(form: dict[str, str]) -> Iterator[Fields]:
    """Forms with the same signed text: every name or value but the first gives its beginning or end to its neighbor."""
    parts = [part for name in sorted(form) for part in (name, form[name])]
    ends = [0]
    for part in parts:
        ends.append(ends[-1] + len(part))
    text = "".join(parts)
    for place in range(1, len(ends) - 1):
        for cut in range(ends[place - 1], ends[place + 1] + 1):
            moved = [*ends[:place], cut, *ends[place + 1 :]]
            pieces = [text[start:end] for start, end in pairwise(moved)]
            yield list(zip(pieces[::2], pieces[1::2], strict=True))
    for place in range(0, len(parts) - 2, 2):
        # A field that disappears in the value before it.
        yield list(
            zip(
                [*parts[: place + 2 : 2], *parts[place + 4 :: 2]],
                [*parts[1 : place + 1 : 2], "".join(parts[place + 1 : place + 4]), *parts[place + 5 :: 2]],
                strict=True,
            )
        )


def test_a_captured_request_that_is_cut_otherwise_has_no_second_effect(one_hooks: Hooks) -> None:
    hooks, form = one_hooks, text_form(f"call From+1312555 MessageSid{'SM' + '2' * 32}NumMedia0To")
    signature = sign("/hooks/texts", form)
    assert hooks.post(form, signature=signature) == 204
    once, tried, genuine = hooks.counts(), 0, 0
    for fields in recut(form):
        names = [name for name, _ in fields]
        if names == sorted(names) and dict(fields) != form:
            is_same = "".join(map("".join, fields)) == "".join(name + form[name] for name in sorted(form))
            assert is_same, "the test's own work"
            answer = hooks.post(fields, signature=signature, data=encode(fields))
            assert answer in (204, 400, 403), (answer, fields)
            genuine += answer != 403
            tried += 1
    assert hooks.counts() == once
    assert tried > 300 and genuine > 250, "they do carry a good signature"
    for other in ("2", "3"):
        assert hooks.post({**form, "MessageSid": "SM" + other * 32}, signature=signature) == 403
    assert hooks.counts() == once


def test_repeated_values_share_a_signature_and_have_no_effect(one_hooks: Hooks) -> None:
    form = text_form()
    signature = sign("/hooks/texts", form)
    for name in ("Body", "From", "To", "MessageSid", "AccountSid"):
        fields = [*form.items(), (name, form[name])]
        assert one_hooks.post(fields, signature=signature) == 400, name
    assert one_hooks.counts()["inbound"] == 0


def test_a_signature_is_good_for_its_own_hook_alone(one_hooks: Hooks) -> None:
    form = text_form()
    assert one_hooks.post(form, "/hooks/status/abc/1", signature=sign("/hooks/texts", form)) == 403
    assert one_hooks.post(form, signature=sign("/hooks/status/abc/1", form)) == 403
    assert one_hooks.post(form, signature=sign("/hooks/texts/", form)) == 403
    assert one_hooks.post(form, "/hooks/texts?a=b", signature=sign("/hooks/texts?a=b", form)) == 403


def test_another_account_and_another_number_are_dead_letters_once(hooks: Hooks) -> None:
    foreign = text_form("hello from elsewhere", AccountSid="AC" + "9" * 32)
    nobodys = text_form("hello to nobody", "SM" + "2" * 32, To="+13125550199")
    report = {"AccountSid": "AC" + "9" * 32, "MessageSid": "SM" + "3" * 32, "MessageStatus": "delivered"}
    unknown = {**report, "AccountSid": ACCOUNT, "MessageSid": "SM" + "4" * 32}
    for _ in range(3):
        assert [hooks.post(foreign), hooks.post(nobodys)] == [204, 204]
        assert [hooks.post(one, "/hooks/status/nothing/1") for one in (report, unknown)] == [204, 204]
        hooks.restart()
    letters = hooks.rows(tables.dead_letters)
    assert [row["because"] for row in letters] == [
        "it was for another account at the provider", "no shop texts from the number it was sent to",
        "it was for another account at the provider", "a delivery report about no text of ours",
    ]  # fmt: skip
    assert all(row["shop_id"] is None for row in letters), "0 rows under a shop that it is not for"
    assert letters[1]["body"]["to"] == "+13125550199"
    counted = hooks.counts()
    assert (counted["inbound"], counted["status_reports"], counted["texts"]) == (0, 0, 0)


def test_a_text_to_another_shop_of_the_machine_is_that_shops(hooks: Hooks) -> None:
    values = {"code": "oak", "name": "Oak Road Auto", "zone": "America/Chicago", "phone": "+13125550110"}
    with hooks.counter.store.write() as connection:
        done = connection.execute(tables.shops.insert().values(**values, texts_from="+13125550102", created_at=NOW))
        other = done.inserted_primary_key[0]
    hooks.post(text_form("to elm"))
    hooks.post(text_form("to oak", "SM" + "2" * 32, To="+13125550102"))
    assert [(row["shop_id"], row["body"]) for row in hooks.rows(tables.inbound)] == [
        (hooks.counter.shop_id, "to elm"),
        (other, "to oak"),
    ]


def test_no_valid_hook_is_refused_while_the_token_is_changed(one_hooks: Hooks) -> None:
    """Old alone, then old and new, then new alone; the provider may sign by either while both are set."""
    hooks, sent = one_hooks, 0
    steps: list[tuple[tuple[str, ...], tuple[str, ...]]] = [
        (("old",), ("old",)), (("new", "old"), ("old", "new")), (("old", "new"), ("new", "old")), (("new",), ("new",)),
    ]  # fmt: skip
    for tokens, signers in steps:
        hooks.restart(tokens)
        for n in range(50):
            sent += 1
            form = text_form("thanks", f"SM{sent:032x}")
            assert hooks.post(form, token=signers[n % len(signers)]) == 204
        assert hooks.post(text_form("x", "SM" + "f" * 32), token="another") == 403
    assert hooks.post(text_form("x", "SM" + "e" * 32), token="old") == 403, "the old one is over"
    assert hooks.counts()["inbound"] == sent == 200
