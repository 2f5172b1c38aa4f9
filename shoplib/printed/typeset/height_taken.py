"""How much of a page words take, in mm and rather too much than too little, so that a drawing gets what they leave."""

from collections.abc import Iterable

from shoplib.draw.lettering import wrapped
from shoplib.printed.typeset.blocks import Framed, Heading, Picture, Words

_POINT = 25.4 / 72
_BODY, _SMALL = 8.5, 7.5
"""Letter sizes in points of words, and of notes and legends, as `papers.typ` sets them."""
_HEADING = {1: 13.0, 2: 10.5, 3: 9.0}
_CAPITAL, _LEADING, _APART = 0.73, 0.55, 0.9
"""The height of a capital, what lies between two lines and between two paragraphs, in letter sizes."""
_HEAVY = 1.12
"""How much wider heavy letters run."""


def how_high(blocks: Iterable[Heading | Words | Framed | Picture], width: float) -> float:
    """The height of the blocks one below another at a width in mm; of a picture its words alone.

    >>> how_high([Words("Two people lift.")], 180.0), how_high([Heading("Cautions", 3), Words("Lift.")], 180.0)
    (4.9, 13.2)
    """
    return round(sum(_one(block, width) for block in blocks), 1)


def _one(block: Heading | Words | Framed | Picture, width: float) -> float:
    if isinstance(block, Heading):
        return _lines((block.text,), width, _HEADING.get(block.level, _BODY), True) + 6.0
    if isinstance(block, Words):
        size = _SMALL if block.small else _BODY
        return _lines((block.text,), width, size, block.grave) + _APART * size * _POINT
    if isinstance(block, Framed):
        return how_high(block.blocks, width - 4.0) + 9.5
    high = 5.0 + _lines((block.note,), width, _SMALL) + 2 * _APART * _BODY * _POINT
    if block.legend:
        high += _lines(block.legend, width, _SMALL)
    if block.title:
        high += _one(Heading(block.title, block.level), width)
    if block.alarms:
        high += _lines(block.alarms, width - 4.0, _BODY, True) + 9.5
    return high


def _lines(texts: Iterable[str], width: float, points: float, heavy: bool = False) -> float:
    """Line below line, from the top of the first capital to the last baseline."""
    size = points * _POINT
    room = width / _HEAVY if heavy else width
    count = sum(len(wrapped(text, size, room)) for text in texts)
    return (count * (_CAPITAL + _LEADING) - _LEADING) * size
