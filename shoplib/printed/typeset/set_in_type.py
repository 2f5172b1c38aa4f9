"""Blocks become a PDF with the stamp on each page, by the one template of the printed papers."""

import re
from collections.abc import Sequence
from typing import Any
from unicodedata import combining

from shoplib.documents.paper import ABOVE, ACROSS, BELOW, Paper
from shoplib.documents.typeset import typeset
from shoplib.printed.typeset.blocks import Block, NewPage, as_data
from shoplib.printed.typeset.stamp import Stamp

_SIZE = re.compile(r"(?:\b\d+ )?\d+/\d+(?: (?:in|mm)\b)?|\b[\d.]+ (?:in|mm)\b")
"""A size as it is written: whole inches, a fraction, a decimal, and its unit."""

_LONG = re.compile(r"[^\s-]{17,}")
"""Longer than the words of the papers: a name that somebody gave, which may be wider than its column."""

_TYPED = re.compile(r"(?=.{17,39}$)[^\W_]{0,16}(?:[._/\[\]]+[^\W_]{0,16})+")
"""A key, a file or a folder that is to be typed or copied as it stands: `[measured.openings_again]`."""

MAY_BREAK = "\u200b"
"""Where a line may end without a sign for it."""


def set_in_type(title: str, blocks: Sequence[Block], stamp: Stamp, paper: Paper, caution: str) -> bytes:
    """The PDF of the blocks. `title` names the papers (*Plan set*), `caution` stands at the foot of each page.

    The first page stands, unless the blocks begin with a `NewPage` that lies.

    >>> from shoplib.printed.typeset.blocks import Words
    >>> from shoplib.documents.paper import PAPERS
    >>> set_in_type("Notes", [Words("Dry-fit first.")], Stamp("Shelf", "2222-3333"), PAPERS["a4"], "Measure.")[:5]
    b'%PDF-'
    """
    return typeset("papers.typ", {
        "title": title, "name": _broken(stamp.name), "date": stamp.date, "fingerprint": stamp.fingerprint,
        "stopped": stamp.stopped, "caution": caution, "paper": paper.typeset,
        "margins": {"x": ACROSS, "top": ABOVE, "bottom": BELOW}, "parts": _parts(blocks),
    }, "shoplib.printed.typeset")


def _parts(blocks: Sequence[Block]) -> list[dict]:
    """The blocks from new page to new page."""
    parts: list[tuple[bool, list[Block]]] = [(False, [])]
    for block in blocks:
        if isinstance(block, NewPage):
            parts.append((block.lying, []))
        else:
            parts[-1][1].append(block)
    return [{"lying": lying, "blocks": unbroken(as_data(several))} for lying, several in parts if several]


def unbroken(value: Any, key: str = "") -> Any:
    r"""The data with no-break spaces within sizes, so that no line ends there, and with places within very long words
    where one may; pictures keep their words as they are.

    >>> unbroken([{"text": "go down to the next 1/32 in", "svg": "1 in"}])
    [{'text': 'go down to the next 1/32\xa0in', 'svg': '1 in'}]
    >>> len("Bremsklotzschublade"), len(unbroken("Bremsklotzschublade"))
    (19, 38)

    A key that is copied from the paper into a file has no such places.

    >>> unbroken("[measured.openings_again]")
    '[measured.openings_again]'
    """
    if isinstance(value, str):
        if key in ("svg", "alt"):
            return value
        return _broken(_SIZE.sub(lambda size: size[0].replace(" ", "\u00a0"), value))
    if isinstance(value, dict):
        return {name: unbroken(each, name) for name, each in value.items()}
    return [unbroken(each, key) for each in value] if isinstance(value, list) else value


def _broken(text: str) -> str:
    """The text with places within its long words where a line may end, rather than run over what stands beside it."""
    return _LONG.sub(lambda word: word[0] if _TYPED.fullmatch(word[0]) else _in_letters(word[0]), text)


def _in_letters(word: str) -> str:
    return "".join(sign if combining(sign) else f"{MAY_BREAK}{sign}" for sign in word)
