"""The story stick on paper: every height of a bay as a mark in true scale, the places across, and the spacer blocks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shoplib.building.spacers import Spacer, gap_spacers, slide_spacers
from shoplib.documents.paper import Paper
from shoplib.draw.lettering import spread, text_width, wrapped
from shoplib.draw.true_scale import Item, Stroke, TrueDrawing, Words, frame
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.solved import Cabinet
from shoplib.printed.told.spacer_table import spacer_table
from shoplib.printed.true_scale.sticks import Mark, Stick, across_stick, bay_sticks, told
from shoplib.printed.true_scale.tiles import GUTTER, Head, tiled
from shoplib.printed.typeset import blocks as printed
from shoplib.printed.typeset.stamp import Stamp, plan_mark

HOW = (
    "Print at 100 % (actual size), not fitted to the page. On every page measure both bars, across and up: each is "
    "100 mm long. Where one is not, print anew.",
    "Cut each page along its dashed line and glue it over the page above, register mark on register mark; then cut the "
    "sticks apart and glue each to a straight strip of wood, or prick its marks over.",
    "Hold a stick to the case with its line 0 on the face that it names, and mark each height from it, left and right "
    "alike: what is carried over is not measured twice.",
    "The stick shows the case as planned. Hold it against the case as built before you mark from it: where the two "
    "differ, measure, write it into the project, and print anew.",
    "Paper grows and shrinks with the damp: hold a long stick against the tape. The written distances hold.",
)
"""Common practice, no source."""

_LETTER, _LINE, _BOLD = 2.3, 3.1, 2.8
_TICK, _TEXT = 7 * MM, 11 * MM
_MOST = (41.0, 27.0)
"""How long a line of words may be, in mm: so that three sticks stand on a page, or four."""
_END, _APART, _NAME = 8 * MM, 3 * MM, 9 * MM


def story_stick_pages(cabinet: Cabinet, paper: Paper, stamp: Stamp | None = None) -> list[printed.Block]:
    """How to use it and the blocks to cut, then the sticks in true scale, side by side and tiled lengthwise.

    With a `stamp` each stick tells of which plan it is.
    """
    page = Writing(cabinet.style)
    needed = [*gap_spacers(cabinet), *slide_spacers(cabinet)]
    sticks = [*bay_sticks(cabinet), across_stick(cabinet)]
    if needed:
        sticks.append(_nested(needed))
    found: list[printed.Block] = [printed.Heading("Story stick"), printed.Bullets(HOW, numbered=True)]
    if needed:
        head, rows = spacer_table(needed, page)
        rows = tuple((_named(n), *row) for n, row in enumerate(rows, 1))
        found += [printed.Heading("Spacer blocks to cut", 2),
                  printed.Words("Each is drawn in true scale with the sticks, from one foot: cut the highest from a "
                                "strip, then the others, and check each against its line."),
                  printed.Table(("block", *head), rows, wide=(3,))]
    room = round((paper.room()[0] - GUTTER) * MM) - 2 * MM
    sheets = min((_packed([_laid(stick, page, most) for stick in sticks], room) for most in _MOST), key=_long)
    for number, sheet in enumerate(sheets, 1):
        together = [laid.stick for column in sheet for laid in column]
        alt = " ".join(f"{stick.name}, from the {stick.zero}: {', '.join(told(m, stick, page) for m in stick.marks)}."
                       for stick in together)
        names = ", ".join(stick.name for stick in together)
        lines = (f"Sticks: {names}. Hold the line 0 of each to the face that it names, and mark from there.",)
        which = f" {number}" if len(sheets) > 1 else ""
        head = Head(f"Story stick{which}", lines, alt)
        found += tiled(_drawn(sheet, plan_mark(stamp)), head, paper, cabinet.style, (False,))
    return found


def _named(number: int) -> str:
    return f"block {number}"


def _nested(needed: Sequence[Spacer]) -> Stick:
    """The blocks one in another, all from one foot, as a stick of their sizes."""
    marks = {}
    for number, one in enumerate(needed, 1):
        pieces = "1 piece" if one.count == 1 else f"{one.count} pieces"
        marks.setdefault(one.size, []).append(f"{_named(number)}, {pieces}")
    return Stick("spacer blocks", "foot of every block", "below",
                 (Mark(0, "foot"), *(Mark(size, "; ".join(names)) for size, names in sorted(marks.items()))))


@dataclass(frozen=True)
class _Laid:
    """A stick as it is drawn: its marks with their words in lines, where these stand, and its ends (ticks from 0)."""

    stick: Stick
    texts: tuple[tuple[str, ...], ...]
    middles: tuple[int, ...]
    wide: int
    foot: int
    head: int

    @property
    def tall(self) -> int:
        return self.head - self.foot


def _laid(stick: Stick, page: Writing, most: float) -> _Laid:
    texts = tuple(tuple(wrapped(told(mark, stick, page), _LETTER, most)) for mark in stick.marks)
    middles = [round(at * MM) for at in spread([mark.at / MM for mark in stick.marks], [
        _LINE * len(lines) for lines in texts])]
    longest = max(text_width(line, _LETTER) * (1.1 if mark.at == 0 else 1.0)
                  for mark, lines in zip(stick.marks, texts, strict=True) for line in lines)
    longest = max(longest, text_width(stick.name, _BOLD) * 1.1 + 4 - _TEXT / MM)
    half = [round(_LINE * len(lines) * MM) // 2 for lines in texts]
    foot = min(stick.marks[0].at, middles[0] - half[0]) - _END
    head = max(stick.marks[-1].at, middles[-1] + half[-1]) + _END + _NAME
    return _Laid(stick, texts, tuple(middles), _TEXT + round((longest + 2) * MM), foot, head)


def _packed(sticks: Sequence[_Laid], room: int) -> list[list[list[_Laid]]]:
    """Sheets of columns of sticks: the longest first, short ones above one another where a column has room."""
    sheets: list[list[list[_Laid]]] = []
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


def _long(sheets: Sequence[Sequence[Sequence[_Laid]]]) -> int:
    """How much paper is used, lengthwise."""
    return sum(_tall(sheet[0]) for sheet in sheets)


def _tall(column: Sequence[_Laid]) -> int:
    return sum(laid.tall + _APART for laid in column)


def _across(sheet: Sequence[Sequence[_Laid]]) -> int:
    return sum(column[0].wide + _APART for column in sheet)


def _drawn(sheet: Sequence[Sequence[_Laid]], mark: str) -> TrueDrawing:
    """The sticks beside one another and, where they are short, one above another."""
    items: list[Item] = []
    left = 0
    for column in sheet:
        up = 0
        for laid in column:
            items += _stick(laid, left, up - laid.foot, mark)
            up += laid.tall + _APART
        left += column[0].wide + _APART
    return TrueDrawing((-MM, -MM, left - _APART + MM, max(map(_tall, sheet)) - _APART + MM), tuple(items))


def _stick(laid: _Laid, left: int, zero: int, mark: str) -> Iterator[Item]:
    """One stick with its left edge at `left` and its line 0 at `zero`."""
    name = laid.stick.name
    yield frame((left, zero + laid.foot, left + laid.wide, zero + laid.head))
    yield Words((left + 2 * MM, zero + laid.head - _NAME // 2), f"{name[0].upper()}{name[1:]}", _BOLD, bold=True)
    if mark:
        yield Words((left + 2 * MM, zero + laid.head - _NAME // 2 - round(3.6 * MM)), mark, _LETTER)
    for one, lines, middle in zip(laid.stick.marks, laid.texts, laid.middles, strict=True):
        at = zero + one.at
        yield Stroke(((left, at), (left + _TICK, at)), "edge" if one.at == 0 else "mark")
        yield Stroke(((left + _TICK, at), (left + _TEXT - MM, zero + middle)), "thin")
        first = zero + middle + round(_LINE * (len(lines) - 1) * MM) // 2
        for k, line in enumerate(lines):
            yield Words((left + _TEXT, first - round(_LINE * k * MM)), line, _LETTER, bold=one.at == 0)
