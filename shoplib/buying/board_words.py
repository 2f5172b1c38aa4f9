"""What is said of rough boards before they are cut: sizes, staves, runs of fronts, and what the eye must decide."""

from collections.abc import Container, Iterable

from shoplib.buying.board_measure import Wood, write_volume
from shoplib.buying.front_order import fronts_in_order
from shoplib.buying.jobs import Ask
from shoplib.buying.laid import LaidOut
from shoplib.buying.rough import STRIPS, second_rip, shortest_rip
from shoplib.buying.wood_used import wood_used
from shoplib.measure import Style, write_brief
from shoplib.model.board import Board
from shoplib.model.cutting import Cutting
from shoplib.words.amounts import setting
from shoplib.words.naming import boards_in_short

BEFORE_CUTTING = (
    "A rough board with a bow, cup or twist is jointed flat on one face before it is planed or ripped; a board that "
    "rocks on the saw table can bind the blade.",
    "Look each board over for knots and checks (cracks that begin at its ends) and cut them out by eye: the layout "
    "takes every board as sound but for its trimmed ends.",
    "The shortest and thinnest pieces that a planer or a jointer takes stand in the manual of the machine; plane "
    "shorter parts while they are still one piece, and cut them to length afterwards.",
)
"""Common practice, no source; the manual of the machine goes before all of it."""


def rough_sizes(cutting: Cutting, style: Style) -> str:
    """What a rough part has over.

    >>> from shoplib.measure import INCH_STYLE
    >>> rough_sizes(Cutting(), INCH_STYLE)
    'Parts are cut rough, 1/2 in longer and 1/4 in wider than finished, from boards 1/4 in thicker. What is then under \
12 in long is ripped to its finished width while it is part of a longer piece, and is only longer.'
    """
    more = [write_brief(size, style) for size in (cutting.rough_length, cutting.rough_width, cutting.rough_thickness)]
    short = write_brief(shortest_rip(style), style)
    return (
        f"Parts are cut rough, {more[0]} longer and {more[1]} wider than finished, from boards {more[2]} thicker. What "
        f"is then under {short} long is ripped to its finished width while it is part of a longer piece, and is only "
        "longer."
    )


def glue_ups(ask: Ask, jointing: int, style: Style) -> list[str]:
    """One sentence for each part that is wider than its boards.

    >>> from shoplib.layout.pieces import Part
    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.sheet import Sheet
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> top = Board("top", "case", 1, "oak", 600, 300, 20, place)
    >>> part = Part("staves of top", 612 * MM, 156 * MM, 2)
    >>> glue_ups(Ask(Sheet("oak", "solid", 20 * MM), (1,), (part,), ((top, top),), ("A",), 0), 3 * MM, MM_STYLE)
    ['top: no board is wide enough; glue it up from 2 staves, each 156 mm wide (3 mm of it for jointing its edges).']
    """
    told = []
    for part, boards in zip(ask.parts, ask.boards, strict=True):
        wholes = {board.name: board for board in boards}
        staves = len(boards) // len(wholes)
        if staves > 1:
            what = "each" if len(wholes) > 1 else "it"
            width, over = write_brief(part.width, style), write_brief(jointing, style)
            told.append(
                f"{boards_in_short(wholes.values())}: no board is wide enough; glue {what} up from {staves} staves, "
                f"each {width} wide ({over} of it for jointing its edges)."
            )
    return told


def strips(ask: Ask, style: Style) -> list[str]:
    """One sentence for each kind of strip that is ripped from these boards.

    >>> from shoplib.layout.pieces import Part
    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.sheet import Sheet
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> lip = Board("shelf front strip", "case", 1, "ash", 800, 18 * MM, 4 * MM, place, role="edging strip")
    >>> ask = Ask(Sheet("ash", "solid", 20 * MM), (1,), (Part("lip", 812 * MM, 4 * MM),), ((lip,),), ("A",), 0)
    >>> strips(ask, MM_STYLE)
    ['shelf front strip: ripped 4 mm wide, from ash that is planed already, to 20 mm; joint the edge of the board \
again before each rip; what stands over the edge of its board is planed flush when the glue is dry.']
    """
    told = []
    for part, boards in zip(ask.parts, ask.boards, strict=True):
        if boards[0].role in STRIPS:
            thin = min(boards[0].width, boards[0].thickness)
            then = "" if part.width == thin else f" and then planed to {setting(thin, style)}"
            wide = second_rip(boards[0], ask.sheet, style)
            if wide:
                then += f", and as soon as it is off the board, {then_ripped(wide, style)}"
            over = ask.sheet.thickness > max(boards[0].width, boards[0].thickness)
            flush = boards[0].role == "edging strip" and over and not wide
            proud = "; what stands over the edge of its board is planed flush when the glue is dry" if flush else ""
            short = shortest_rip(style)
            after = f"; no piece under {write_brief(short, style)} is ripped: rip one strip, then cut it to length"
            told.append(
                f"{boards_in_short(boards)}: ripped {setting(part.width, style)} wide{then}, from {ask.sheet.name} "
                f"that is planed already, to {setting(ask.sheet.thickness, style)}; joint the edge of the board again "
                f"before each rip{after if part.length < short else ''}{proud}."
            )
    return told


def then_ripped(wide: int, style: Style) -> str:
    """How a strip that is off the board comes to its width.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> then_ripped(12 * MM, MM_STYLE)
    'ripped once more, lying on its jointed face, to 12 mm, before it is cut to length: along a low fence that the \
guard passes over, with featherboards and a thin push block that may be cut, or it is planed to that'
    """
    much = setting(wide, style)
    return (
        f"ripped once more, lying on its jointed face, to {much}, before it is cut to length: along a low fence that "
        "the guard passes over, with featherboards and a thin push block that may be cut, or it is planed to that"
    )


def in_grain_order(runs: Iterable[tuple[Board, ...]], down: bool, glued: Container[str] = ()) -> list[str]:
    """One sentence for each run of fronts; `down` where they stand one above another, `glued` names those that are
    glued up from staves.
    """
    way = "from the top one down" if down else "from left to right"
    told = []
    for fronts in runs:
        if any(front.name in glued for front in fronts):
            told.append(
                f"{boards_in_short(fronts)}: cut stave by stave, stave 1 of them all from one piece in the order in "
                f"which they stand, {way}, and so with the others; write front and stave on each before they are cut "
                "apart, and glue up all fronts in the same order of their staves."
            )
        else:
            told.append(
                f"{boards_in_short(fronts)}: cut from one piece in the order in which they stand, {way}; number them "
                "before they are cut apart."
            )
    return told


def wood_words(name: str, wood: Wood, unit: str) -> str:
    """What becomes of the boards, each amount as a yard measures it.

    >>> from shoplib.buying.board_measure import BOARD_FOOT
    >>> wood = Wood(*(BOARD_FOOT * tenths // 10 for tenths in (60, 20, 5, 5, 10)))
    >>> wood_words("oak", wood, "in")
    'oak: of 10.0 board feet, 6.0 go into the case, 2.0 are planed and cut off the rough parts, 0.5 become sawdust, \
0.5 are trimmed off and 1.0 are left as offcuts: 30 % waste.'
    """
    amounts = (wood.bought, wood.finished, wood.planed, wood.kerf, wood.trim, wood.offcuts)
    whole, *others = (write_volume(volume, unit) for volume in amounts)
    used, planed, kerf, trim, left = (other.split()[0] for other in others)
    return (
        f"{name}: of {whole}, {used} go into the case, {planed} are planed and cut off the rough parts, {kerf} become "
        f"sawdust, {trim} are trimmed off and {left} are left as offcuts: {round(wood.waste)} % waste."
    )


def boards_told(found: LaidOut) -> list[str]:
    """All that is said of the solid boards of a cabinet, and of fronts that keep the order of their grain.

    Empty where there are neither.
    """
    project, style = found.cabinet.project, found.cabinet.style
    wood = wood_used(found)
    told = [rough_sizes(project.cutting, style)] if wood else []
    for job in found.jobs:
        told += [*glue_ups(job.ask, project.cutting.jointing, style), *strips(job.ask, style)]
    glued = {piece.board.name for sheet in found.sheets for piece in sheet.pieces if piece.stave}
    down = project.cutting.fronts_in_grain_order == "down each bay"
    told += in_grain_order(fronts_in_order(found.cabinet), down, glued)
    told += [wood_words(name, used, style.unit) for name, used in wood.items()]
    return told + list(BEFORE_CUTTING if wood else ())
