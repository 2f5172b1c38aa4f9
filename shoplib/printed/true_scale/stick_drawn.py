"""Story sticks as they are drawn: marks with their words, side by side on as little paper as will hold them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shoplib.draw.lettering import spread, text_width, wrapped
from shoplib.draw.true_scale import LETTERS, Item, Stroke, TextLine, TrueDrawing, frame
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM
from shoplib.printed.true_scale.clear_place import clearest
from shoplib.printed.true_scale.sticks import Stick, told
from shoplib.words.naming import capital

NAMED = 3.4
"""The letters of a stick's name, in mm."""
_LINE = 1.32 * LETTERS
"""From line to line."""
_TICK, _TEXT = 7 * MM, 11 * MM
_MOST = (41.0, 38.5, 28.0, 26.5)
"""How long a line of words may be, in mm: so that three sticks stand on a page of either paper, or four."""
_END, _APART = 5 * MM, 3 * MM
_TAPE_TICK = 4 * MM


@dataclass(frozen=True)
class DrawnStick:
    """A stick as it is drawn: its marks with their words in lines, where these stand, and its ends (ticks from 0)."""

    stick: Stick
    headed: tuple[str, ...]
    texts: tuple[tuple[str, ...], ...]
    middles: tuple[int, ...]
    wide: int
    foot: int
    head: int

    @property
    def tall(self) -> int:
        """From end to end."""
        return self.head - self.foot


Sheet = list[list[DrawnStick]]
"""Columns of sticks."""


def sheets_of(sticks: Sequence[Stick], page: Writing, room: int) -> list[Sheet]:
    """The sticks in columns on sheets as wide as `room` (ticks), with words so long that the least paper is used.

    >>> from shoplib.measure import MM_STYLE
    >>> from shoplib.printed.true_scale.sticks import Mark
    >>> stick = Stick("bay 1", "upper face of the bottom", "below", (Mark(0, "bottom"), Mark(200 * MM, "shelf")))
    >>> [len(column) for sheet in sheets_of([stick, stick], Writing(MM_STYLE), 180 * MM) for column in sheet]
    [1, 1]
    """
    return min((_packed([_laid(stick, page, most) for stick in sticks], room) for most in _MOST), key=_long)


def sticks_on(sheet: Sheet) -> list[Stick]:
    """The sticks of a sheet.

    >>> sticks_on([])
    []
    """
    return [laid.stick for column in sheet for laid in column]


def _laid(stick: Stick, page: Writing, most: float) -> DrawnStick:
    texts = tuple(tuple(wrapped(told(mark, stick, page), LETTERS, most)) for mark in stick.marks)
    middles = [round(at * MM) for at in spread([mark.at / MM for mark in stick.marks], [
        _LINE * len(lines) for lines in texts])]
    longest = max(text_width(line, LETTERS) * (1.1 if mark.at == 0 else 1.0)
                  for mark, lines in zip(stick.marks, texts, strict=True) for line in lines)
    longest = max(longest, text_width(stick.name, NAMED) * 1.1 + 4 - _TEXT / MM)
    wide = _TEXT + round((longest + 2) * MM)
    headed = tuple(wrapped(f"from the {stick.zero}", LETTERS, wide / MM - 4))
    half = [round(_LINE * len(lines) * MM) // 2 for lines in texts]
    foot = min(stick.marks[0].at, middles[0] - half[0]) - _END
    name = round((1.5 * NAMED + _LINE * (len(headed) + 1)) * MM)
    return DrawnStick(stick, headed, texts, tuple(middles), wide, foot,
                max(stick.marks[-1].at, middles[-1] + half[-1]) + _END + name)


def _packed(sticks: Sequence[DrawnStick], room: int) -> list[Sheet]:
    """The longest first, short ones above one another where a column has room."""
    sheets: list[Sheet] = []
    for laid in sorted(sticks, key=lambda one: -one.tall):
        columns = (column for sheet in sheets for column in sheet if _tall(column) + laid.tall <= _tall(sheet[0])
                   and laid.wide <= column[0].wide)
        if (column := next(columns, None)) is not None:
            column.append(laid)
        elif (sheet := next((one for one in sheets if _across(one) + laid.wide <= room), None)) is not None:
            sheet.append([laid])
        else:
            sheets.append([[laid]])
    return sheets


def _long(sheets: Sequence[Sheet]) -> int:
    """How much paper is used, lengthwise."""
    return sum(_tall(sheet[0]) for sheet in sheets)


def _tall(column: Sequence[DrawnStick]) -> int:
    return sum(laid.tall + _APART for laid in column)


def _across(sheet: Sheet) -> int:
    return sum(column[0].wide + _APART for column in sheet)


def sheet_drawn(sheet: Sheet, page: Writing, mark: str) -> TrueDrawing:
    """The sticks beside one another and, where they are short, one above another; `mark` tells of which plan.

    >>> from shoplib.measure import MM_STYLE
    >>> from shoplib.printed.true_scale.sticks import Mark
    >>> stick = Stick("bay 1", "upper face of the bottom", "below", (Mark(0, "bottom"), Mark(200 * MM, "shelf")))
    >>> [sheet] = sheets_of([stick], Writing(MM_STYLE), 180 * MM)
    >>> [item.text for item in sheet_drawn(sheet, Writing(MM_STYLE), "").items if isinstance(item, TextLine)]
    ['Bay 1', 'from the upper face', 'of the bottom', '0: bottom', '200 mm: shelf', 'tape: 100 mm']
    """
    items: list[Item] = []
    left = 0
    for column in sheet:
        up = 0
        for laid in column:
            items += _stick(laid, (left, up - laid.foot), page, mark)
            up += laid.tall + _APART
        left += column[0].wide + _APART
    return TrueDrawing((-MM, -MM, left - _APART + MM, max(map(_tall, sheet)) - _APART + MM), tuple(items))


def _stick(laid: DrawnStick, zero: tuple[int, int], page: Writing, mark: str) -> Iterator[Item]:
    """One stick; `zero` is where its left edge meets its line 0."""
    left, up = zero
    yield frame((left, up + laid.foot, left + laid.wide, up + laid.head))
    yield from _name(laid, (left + 2 * MM, up + laid.head), mark)
    marks = list(_marks(laid, zero))
    yield from marks
    yield from _for_the_tape(laid, zero, page, [item for item in marks if isinstance(item, TextLine)])


def _name(laid: DrawnStick, corner: tuple[int, int], mark: str) -> Iterator[TextLine]:
    """What it is called, from where it counts, and of which plan it is."""
    (x, y), name = corner, laid.stick.name
    y -= round(0.9 * NAMED * MM)
    yield TextLine((x, y), capital(name), NAMED, bold=True)
    y -= round(1.3 * NAMED * MM)
    for line in (*laid.headed, *([mark] if mark else [])):
        yield TextLine((x, y), line, LETTERS)
        y -= round(_LINE * MM)


def _marks(laid: DrawnStick, zero: tuple[int, int]) -> Iterator[Item]:
    """Each mark at its place, and its words near it, for those of neighbours need room."""
    left, up = zero
    for one, lines, middle in zip(laid.stick.marks, laid.texts, laid.middles, strict=True):
        at = up + one.at
        yield Stroke(((left, at), (left + _TICK, at)), "zero" if one.at == 0 else "mark")
        yield Stroke(((left + _TICK, at), (left + _TEXT - MM, up + middle)), "thin")
        first = up + middle + round(_LINE * (len(lines) - 1) * MM) // 2
        for k, line in enumerate(lines):
            yield TextLine((left + _TEXT, first - round(_LINE * k * MM)), line, LETTERS, bold=one.at == 0)


def _for_the_tape(laid: DrawnStick, zero: tuple[int, int], page: Writing, words: Sequence[TextLine]) -> Iterator[Item]:
    """Ticks at the right edge, each 5 inches or 100 mm, where no words stand: the tape tells whether pages lie true."""
    step = 5 * INCH if page.style.unit == "in" else 100 * MM
    right = zero[0] + laid.wide
    for at in range(step, laid.stick.marks[-1].at, step):
        y = zero[1] + at
        text = TextLine((right - _TAPE_TICK - MM, y), f"tape: {page.length(at)}", LETTERS, "end")
        tick = Stroke(((right - _TAPE_TICK, y), (right, y)), "thin")
        if not clearest([text], words).plate:
            yield from (tick, text)
