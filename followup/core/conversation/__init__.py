"""The conversation: (state, meaning) -> (next state, what to do). One table, and the few rules that come before it."""

from followup.core.conversation.respond import Step, respond
from followup.core.conversation.state import Around, Conversation, Heard

__all__ = ["Around", "Conversation", "Heard", "Step", "respond"]
