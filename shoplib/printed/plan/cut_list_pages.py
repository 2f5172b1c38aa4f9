"""The cut list for the bench: a table a stage, what must be measured before it, sums that close, diagonals."""

from collections.abc import Iterable, Iterator

from shoplib.buying.board_words import rough_sizes
from shoplib.documents.before_cutting import ALREADY_CUT, found_on
from shoplib.documents.cut_list_file import sum_text
from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.row_words import edging_words
from shoplib.lists.writing import Writing
from shoplib.measure import LEAST_REST, Style, write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.told.readings import to_measure_first
from shoplib.printed.told.solid_wood import solid_sheets
from shoplib.printed.typeset.blocks import (
    SQUARE,
    Block,
    Bullets,
    Framed,
    Heading,
    Table,
    Together,
    Words,
    wide_by,
)
from shoplib.words.naming import and_list, boards_in_short
from shoplib.words.quoted import in_quotes
from shoplib.words.stages import STAGES

TITLE = "Cut list"

HEAD = ("cut", "no.", "count", "part", "length", "width", "thickness", "sheet", "edging and pairs")
"""The columns, the last one where it has anything; length, width and thickness are the size at the saw."""

_SIZES = "Sizes are at the saw, before edging: length is along the grain. Drawings of the boards show their cuts."
_SUMS = "Each chain of sizes must come out at its total, whatever single sizes were rounded to."
_DIAGONALS = "Measure both diagonals before the glue sets."


def rests_left_out(style: Style) -> str:
    """What is left out of the sizes of a sum, which are written as everywhere.

    >>> from shoplib.measure import INCH_STYLE, MM_STYLE
    >>> rests_left_out(INCH_STYLE)
    'Sizes are written without rests under 0.002 in: by so much for each, the written sum may seem to be off.'
    >>> rests_left_out(MM_STYLE)[:45]
    'Sizes are written without rests under 0.05 mm'
    """
    least = write_brief(LEAST_REST[style.unit], style, decimal=True)
    return f"Sizes are written without rests under {least}: by so much for each, the written sum may seem to be off."


def cut_list_pages(cabinet: Cabinet, findings: Iterable[Finding]) -> list[Block]:
    """The rows of `kinds` as they are cut, numbered from 1, written as in cut_list.txt.

    A board's own name stands under "Which boards are meant" wherever several share a row.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> cut_list_pages(cabinet, ())[2].blocks[0].text
    'Stage 1: case'
    """
    findings, rows = tuple(findings), tuple(enumerate(kinds(cabinet), start=1))
    blocks: list[Block] = [Heading(TITLE), Words(_SIZES)]
    if solid := solid_sheets(cabinet):
        blocks.append(Words(f"Solid wood ({and_list(solid)}): these are finished sizes. "
                            f"{rough_sizes(cabinet.project.cutting, cabinet.style)} They are trimmed to these sizes "
                            "before any joint is cut in them."))
    for stage in sorted({kind.stage for _, kind in rows}):
        of_stage = [(number, kind) for number, kind in rows if kind.stage == stage]
        lines = tuple(_row(number, kind, cabinet) for number, kind in of_stage)
        edged = any(line[-1] for line in lines)
        table = (Table(HEAD, lines, wide_by(lines, (3, 7, 8))) if edged
                 else Table(HEAD[:-1], tuple(line[:-1] for line in lines), wide_by(lines, (3, 7))))
        cut = (Words(ALREADY_CUT, grave=True),) if stage < cabinet.first_stage else ()
        begins = (Heading(f"Stage {stage}: {STAGES[stage]}", 2), *cut, *to_measure_first(stage, cabinet))
        blocks.append(Together((*begins, *_alarms(of_stage, cabinet, findings), table)))
    blocks += _which(rows)
    if cabinet.sums:
        blocks += [Heading("Closing sums", 2), Words(f"{_SUMS} {rests_left_out(cabinet.style)}"),
                   Bullets(tuple(sum_text(c, cabinet, exact=False) for c in cabinet.sums))]
    if diagonals := tuple(told_once([f.text for f in findings if f.check == "diagonals"])):
        blocks.append(Together((Heading("Diagonals to expect", 2), Words(_DIAGONALS), Bullets(diagonals))))
    return blocks


def _row(number: int, kind: Kind, cabinet: Cabinet) -> tuple[str, ...]:
    writing = Writing(cabinet.style)
    length, width, thickness = kind.cut
    return (
        SQUARE, str(number), str(kind.count), boards_in_short(kind.boards),
        writing.length(length), writing.length(width), writing.measured(thickness), kind.sheet,
        "; ".join(_beside(kind, writing)),
    )


def _beside(kind: Kind, writing: Writing) -> Iterator[str]:
    """Edging with the size that it gives, and the twin of a mirrored pair."""
    if edging := edging_words(kind, writing):
        finished = " x ".join(writing.length(ticks) for ticks in kind.finished[:2])
        yield f"{edging}: finished {finished}"
    if kind.mirror_of:
        yield f"mirror image of {kind.mirror_of}"


def _which(rows: Iterable[tuple[int, Kind]]) -> list[Block]:
    """The names of the boards of each row that has several."""
    several = tuple((str(number), "; ".join(kind.names)) for number, kind in rows if kind.count > 1)
    if not several:
        return []
    return [Heading("Which boards are meant", 2), Table(("no.", "boards"), several, (1,))]


def _alarms(rows: Iterable[tuple[int, Kind]], cabinet: Cabinet, findings: tuple[Finding, ...]) -> list[Block]:
    """What a check stopped, or asks to look at, by the number of the row."""
    told = tuple(
        in_quotes(f"No. {number}, {boards_in_short(kind.boards)}. {line}")
        for number, kind in rows for line in found_on(kind.names, cabinet, findings)
    )
    return [Framed((Bullets(told),))] if told else []
