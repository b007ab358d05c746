"""What the conversation hears beside a meaning: a question whether a machine answers (our own trade rules)."""

from __future__ import annotations

import pytest

from followup.core.conversation.listen import asks_whether_machine


@pytest.mark.parametrize(
    "text",
    [
        "Are you a robot?",
        "is this an automated text",
        "am i talking to a real person?",
        "¿eres una máquina?",
        "hablo con un robot?",
    ],
)
def test_a_question_whether_a_machine_answers(text: str) -> None:
    assert asks_whether_machine(text)


@pytest.mark.parametrize(
    "text", ["my washing machine broke, later please", "the robot vacuum is in the trunk", "tuesday at 9"]
)
def test_a_machine_that_is_only_spoken_of_is_none(text: str) -> None:
    assert not asks_whether_machine(text)
