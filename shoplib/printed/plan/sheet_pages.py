"""Each sheet with its numbered cuts, and the cuts in their order, job by job."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import islice

from shoplib.buying.held_back import stages_of
from shoplib.buying.laid import LaidOut
from shoplib.buying.numbering import Turn, turns
from shoplib.documents.cut_order_file import COLUMNS, TWO, order_rows
from shoplib.documents.fitted import Room, words_height
from shoplib.documents.paper import Paper
from shoplib.draw.scene import Scene
from shoplib.draw.sheet_layout import sheet_scenes
from shoplib.model.solved import Cabinet
from shoplib.printed.told.on_end import on_end_caution
from shoplib.printed.told.solid_wood import rough_boards, solid_sheets
from shoplib.printed.told.stopped_cuts import stopped_cautions
from shoplib.printed.typeset.blocks import (
    SQUARE,
    Beside,
    Block,
    Framed,
    Heading,
    Table,
    Together,
    Words,
    wide_by,
)
from shoplib.printed.typeset.height_taken import how_high
from shoplib.printed.typeset.pictures import picture
from shoplib.words.naming import and_list, in_short, stock_in_short
from shoplib.words.stages import STAGES

TITLE = "Sheets and saw cuts"

HEAD = ("done", "step", "setting", "piece", "cut", "set by", "at", "cuts", "comes off", "is left", "mind")
"""Of the saw cuts, by the columns of cut_order.csv; the piece stands with its length and width, and all that asks
for care together."""

JOINT_HEAD = ("done", "step", "setting", "boards", "cut", "set from", "cuts", "how wide and deep", "mind")
"""Of the joint cuts of a stage."""

_JOB, _SIZES, _GUTTER = 16.0, 12.0, 6.0
"""What the heading of a job takes, a row of sizes beside a drawing, and the space between two columns, in mm."""
_SHARES = (5, 3)
"""How a drawing and its legend share the width of a page."""
_COLUMNS = 3
"""Of what a legend has more than its page has room for."""

_NUMBERS = "Numbers in boxes on the drawings are the steps of the table behind them."
_SETTINGS = (
    "What is set stays for all rows with the same setting. \u201cAt\u201d is the size between fence, stop block or "
    "line and the blade. Letters are those of the drawing; parts have the sizes of the cut list. After the saw cuts "
    "of a stage come its joint cuts: first those that must match, one setting for each row, the same side against it; "
    "then notches, holes for screws, pockets and finger sockets."
)
_ROUGH = (
    "Solid wood: parts are rough here, larger than in the cut list, whose sizes are the finished ones; "
    "\u201cmind\u201d has both."
)
_ROAD = (
    "Before the first of these cuts flatten, plane and joint the boards, as the build order says. After the last, and "
    "before any joint is cut, glue up what comes in staves and trim every part to its finished size."
)
_GOES_ON = "The legend of this sheet goes on:"
_NOT_LAID_OUT = "The boards are not laid out on sheets here; the cut list is complete without it."


def sheet_pages(found: LaidOut | None, paper: Paper, refused: str = "") -> list[Block]:
    """Job by job its sheets as they are cut and its cuts in their order, on lying pages.

    Where it is not laid out, `refused` says why. A job whose stage waits for what is measured says so first. The rows
    of the tables are those of cut_order.csv. A job begins below the one before where its first drawing finds room
    there.

    >>> from shoplib.buying.laid_out import laid_out
    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> blocks = sheet_pages(laid_out(cabinet_from("finger_jointed_drawers"), 0), PAPERS["a4"])
    >>> [block.text for block in blocks if isinstance(block, Heading)][1:3]
    ['case sheet, stage 1: case', 'The cuts of case sheet 1 in their order']
    >>> sheet_pages(None, PAPERS["a4"], "No stock is given.")[1].text
    'The boards are not laid out on sheets here; the cut list is complete without it. No stock is given.'
    """
    if found is None:
        return [Heading(TITLE), Words(f"{_NOT_LAID_OUT} {refused}".strip())]
    blocks: list[Block] = [Heading(TITLE), Words(f"{_NUMBERS} {_SETTINGS}")]
    if solid_sheets(found.cabinet):
        blocks.append(Words(_ROUGH, grave=True))
    room = paper.room(lying=True)
    first = room[0], room[1] - how_high(blocks, room[0])  # the first drawing shares its page with these words
    drawn = {sheet.name: _drawn(scene, found, room if number else first)
             for number, (sheet, scene) in enumerate(sheet_scenes(found))}
    rows = order_rows(found)
    for turn in turns(found):
        blocks.append(Heading(_turn_title(turn, found.cabinet), 2))
        if turn.first and rough_boards((board for boards in turn.job.ask.boards for board in boards), found.cabinet):
            blocks.append(Words(_ROAD, grave=True))
        blocks += [block for sheet in turn.job.sheets if turn.first for block in drawn[sheet.name]]
        blocks += _order(turn, found, rows)
    return blocks


def _drawn(scene: Scene, found: LaidOut, room: Room) -> tuple[Block, ...]:
    """A sheet with its legend under it or, where it can then be drawn larger, beside it."""
    unit, (width, height) = found.cabinet.style.unit, room
    narrow = width * _SHARES[0] / sum(_SHARES) - _GUTTER
    bare = replace(scene, legend=())
    under, beside = ((width, height - _JOB - words_height(scene, width)),
                     (narrow, height - _JOB - words_height(bare, narrow)))
    if _scale(scene, beside) > _scale(scene, under):
        return _legend_beside(picture(bare, beside, unit, level=3), scene.legend, (width, height - _JOB))
    return (picture(scene, under, unit, level=3),)


def _legend_beside(shown: Block, legend: tuple[str, ...], room: Room) -> tuple[Block, ...]:
    """As many lines as the page has room for stand beside the drawing; the others follow in columns."""
    narrow = (room[0] - _GUTTER) * _SHARES[1] / sum(_SHARES)
    lines = [Words(line) for line in legend]
    fit = len(lines)
    while fit and how_high(lines[:fit], narrow) > room[1]:
        fit -= 1
    drawn = Together((Beside(((shown,), tuple(lines[:fit])), _SHARES),))
    rest = lines[fit:]
    if not rest:
        return (drawn,)
    each = -(-len(rest) // _COLUMNS)
    columns = tuple(tuple(rest[at * each:(at + 1) * each]) for at in range(_COLUMNS))
    return drawn, Together((Words(_GOES_ON), Beside(columns)))


def _scale(scene: Scene, room: Room) -> float:
    """How large the thing itself can be drawn in a room, with a row of sizes on two sides."""
    return min((room[0] - _SIZES) / scene.size[0], (room[1] - _SIZES) / scene.size[1])


def _turn_title(turn: Turn, cabinet: Cabinet) -> str:
    """The sheet with its stages; of cuts that waited for others of the same sheet their own stage alone."""
    ask = turn.job.ask
    stages = ask.stages if turn.first else stages_of(turn.number, ask, cabinet)
    called = and_list(in_short(f"stage {stage}" for stage in stages))
    drawn = "" if turn.first else ", as drawn with what was cut before"
    return f"{ask.sheet.name}, {called}: {and_list([STAGES[stage] for stage in stages])}{drawn}"


def _order(turn: Turn, found: LaidOut, rows: Iterator[list[str]]) -> Iterator[Block]:
    """The tables of one turn; its rows are the next ones."""
    cells = [_named(cells) for cells in islice(rows, len(turn.cuts))]
    shared = len({step.turn for step in turn.job.steps}) > 1
    saw = tuple(_saw_row(row, shared) for row in cells)
    joints = tuple(_joint_row(_named(cells)) for cells in islice(rows, turn.joints))
    if saw:
        first = cells[0]["not_before"]
        of = and_list(stock_in_short(turn.job.sheets[step.sheet].name for step in turn.cuts))
        yield Heading(f"The cuts of {of} in their order{f', not before {first}' if first else ''}", 3)
        yield _table(HEAD, saw, (3, 8, 9))
    if joints:
        trimmed = ", all boards trimmed to their finished sizes" if solid_sheets(found.cabinet) else ""
        yield Heading(f"{_joints_title(turn)}{trimmed}", 2)
        sets = (*(stop.cuts for stop in turn.stops), *(cuts for two in turn.mates for cuts in two.cuts))
        stopped = stopped_cautions(pair for cuts in sets for pair in cuts)
        if stopped:
            yield Framed(stopped, "Cuts that stop within the board")
        cut = [*(board for cuts in sets for board, _ in cuts), *(board for one in turn.alike for board in one.boards)]
        yield from on_end_caution({board.name: board for board in cut}.values(), found.cabinet)
        yield _table(JOINT_HEAD, joints, (3, 5))


def _table(head: tuple[str, ...], rows: tuple[tuple[str, ...], ...], wide: tuple[int, ...]) -> Table:
    """With a last column for what is to be minded, where there is anything: a share more, for one word can be long."""
    last = len(head) - 1
    if any(row[-1] for row in rows):
        return Table(head, rows, (*wide_by(rows, (*wide, last)), last))
    return Table(head[:-1], tuple(row[:-1] for row in rows), wide_by(rows, wide))


def _joints_title(turn: Turn) -> str:
    """Boards of all sheets of a stage are in its joint cuts, so they are told by the stage and not by a sheet."""
    stages = sorted({cut.stage for cut in (*turn.stops, *turn.alike)}
                    | {board.stage for two in turn.mates for board in two.boards})
    called = and_list(in_short(f"stage {stage}" for stage in stages))
    return f"Joint cuts of {called}, {and_list([STAGES[stage] for stage in stages])}: boards of all sheets"


def _named(cells: list[str]) -> dict[str, str]:
    return dict(zip(COLUMNS, cells, strict=True))


def _saw_row(row: dict[str, str], shared: bool) -> tuple[str, ...]:
    """Where the sheet is `shared` by stages that are cut at unlike times, each row says what it waits for."""
    first = f"not before {row['not_before']}" if shared and row["not_before"] else ""
    mind = "; ".join(filter(None, [first, row["mind"], row["then"], TWO if row["lift"] == TWO else ""]))
    return (
        SQUARE, row["step"], row["setting"], f"{row['piece']}, {row['piece_length']} x {row['piece_width']}",
        row["cut"], row["set_by"], row["fence"], row["cuts"], row["comes_off"], row["is_left"], mind,
    )


def _joint_row(row: dict[str, str]) -> tuple[str, ...]:
    return (
        SQUARE, row["step"], row["setting"], row["piece"], row["cut"], row["fence"], row["cuts"], row["comes_off"],
        row["mind"],
    )
