"""`choose`: the customer picks one of the offered times; which one is read in `offers.py`."""

from __future__ import annotations

from followup.core.replies.said import Said

CODE = "choose"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "the second one", "first one works", "the earlier one pls", "last one", "either is fine", "thursday works",
        "friday at 2", "9am", "the friday one", "thurs works", "2", "option 1", "whichever", "let's do the 2pm",
        "9 is good", "1st", "doesnt matter to me", "thurs at 9 plz", "the later time", "go with friday",
        "the first pls", "friday is better", "both r fine", "put me down for thursday", "2 oclock",
        "i pick the second", "thursday it is", "thursday please", "9 am", "second", "the 9am one",
        "friday works best", "i can do thursday at 9", "number 2", "first", "let me take the thursday",
        "friday afternoon one",
    ),
    "es": (
        "la segunda", "la primera opcion por favor", "la ultima", "cualquiera de las dos", "la mas temprano",
        "el jueves", "la de las 9", "el viernes a las 2", "la 1", "opcion 2", "el que sea", "la primera",
        "a las 2 esta bien", "jueves porfa", "me quedo con la del viernes", "la de en la tarde", "la del jueves",
        "las 9 me queda bien", "cualquiera", "me da igual", "el viernes por favor", "la segunda opcion",
        "el mas tarde", "prefiero el viernes", "apunteme para el jueves", "si el jueves a las 9", "la 2", "a las 9",
        "la numero 2", "el segundo", "viernes", "me sirve el jueves", "tomo la del viernes",
    ),
}  # fmt: skip


def holds(said: Said) -> bool:
    """Whether the text fits one or several of the offered times."""
    return said.picked > 0
