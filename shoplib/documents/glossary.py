"""Words of the trade that findings and lists use, each with its meaning in one line."""

import re
from collections.abc import Iterable

WORDS = {
    "band": "a thin strip glued over a raw edge; the board is cut smaller by it",
    "cleat": "a strip behind a front, that the front is screwed to",
    "dado": "a slot across a board that another board's end stands in",
    "dry-fit": "putting all together without glue; here it is done in numbers",
    "inside face": "the side of a board that looks into the case, or into its box",
    "kicker": "a strip above a drawer's side that keeps it from tipping, pulled out",
    "near wall": "the side of a cut that is nearer to where the size is taken from",
    "PS 1": "the United States standard for plywood: how thick each size may be",
    "rabbet": "a step cut along an edge or end, open to one side",
    "shim": "a thin slip of wood or card put behind something to fill a gap",
    "toe notch": "the lower front corner cut out of a side, as room for the feet",
    "undermount": "a slide that is screwed under the drawer and is not seen",
    "upright": "a side of the case, or a divider between two bays",
}
"""Meanings as the trade uses the words: common practice, no source."""


def words_of(text: str) -> list[tuple[str, str]]:
    """The words of `WORDS` that stand in a text, also where there are more of them, with their meanings.

    >>> [word for word, _ in words_of("Two shims under the dadoes; shimmer and abandon are no such words.")]
    ['dado', 'shim']
    """
    return [
        (word, meaning)
        for word, meaning in WORDS.items()
        if re.search(rf"\b{re.escape(word)}(?:s|es|ed|med)?\b", text, 0 if word.isupper() else re.IGNORECASE)
    ]


def words_text(texts: Iterable[str]) -> str:
    """A short list of the words in the texts that may be new; empty where there are none.

    >>> print(words_text(["Shim the low end."]))
    Words
      shim: a thin slip of wood or card put behind something to fill a gap
    <BLANKLINE>
    """
    found = words_of("\n".join(texts))
    return "\n".join(["Words", *(f"  {word}: {meaning}" for word, meaning in found), ""]) if found else ""
