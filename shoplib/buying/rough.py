"""Solid parts as they leave a rough board: larger than finished, and strips ripped to size from a planed one.

What is planed, jointed and cut to length loses wood each time, so a part is first cut rough (`Cutting.rough_length`,
`rough_width`). A strip is ripped from a board that is planed already, and is longer only.
"""

from dataclasses import replace

from shoplib.layout.pieces import LayoutError
from shoplib.lists.cut_list import kinds
from shoplib.lists.sides import own_side
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.board import Board
from shoplib.model.cutting import Cutting
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

STRIPS = ("runner", "kicker", "edging strip")
"""Roles of what is ripped to its size, not planed down to it."""


def is_rough(board: Board, cabinet: Cabinet) -> bool:
    """Whether a board leaves the saw larger than finished; strips are ripped to their size at once.

    >>> from shoplib.measure import MM
    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "ash", 300, 200, 20, Placement((0, 0, 0), ("+z", "+y", "-x")), role="side")
    >>> is_rough(side, Cabinet("case", (side,), {"ash": Sheet("ash", "solid", 20 * MM)}))
    True
    """
    return cabinet.sheets[board.sheet].kind == "solid" and board.role not in STRIPS


_PROUD = {"in": INCH // 8, "mm": 3 * MM}
"""So much of a strip of edging is planed flush with its board (common practice, no source)."""


def as_it_comes(sheet: Sheet, cutting: Cutting) -> int:
    """How thick stock is as it comes and is lifted: a board of solid wood is rough.

    >>> as_it_comes(Sheet("ash", "solid", 20 * MM), Cutting(rough_thickness=6 * MM)) // MM
    26
    """
    return sheet.thickness + (cutting.rough_thickness if sheet.kind == "solid" else 0)


def boards_by_sheet(cabinet: Cabinet) -> dict[str, list[Board]]:
    """What is still to be cut from each sheet of the project, in the order of the cut list.

    Where `cutting.strips_from` names a sheet, edging strips, wood runners and kickers are cut from it too; else they
    are in none, for no sheet of the project is theirs.
    """
    strips_from = cabinet.project.cutting.strips_from
    found: dict[str, list[Board]] = {name: [] for name in cabinet.project.sheets}
    for board in (board for row in kinds(cabinet) for board in row.boards if board.stage >= cabinet.first_stage):
        if board.sheet in found:
            found[board.sheet].append(board)
        elif strips_from:
            found[strips_from].append(replace(board, sheet=strips_from))
    if strips_from:
        strips = [strip for strip in edging_strips(cabinet) if strip.stage >= cabinet.first_stage]
        found[strips_from] += [replace(strip, sheet=strips_from) for strip in strips]
    return found


def edging_strips(cabinet: Cabinet) -> tuple[Board, ...]:
    """Each strip of solid edging as a board: as long as the finished edge, as wide as its board is thick.

    Where two meet at a corner, one is cut back; which one is decided at the bench.
    """
    found = []
    for board in cabinet.boards:
        for edge, strip in board.edging:
            if strip.kind == "strip":
                across, _ = own_side(board, edge)
                found.append(
                    replace(
                        board, name=f"{board.name} {edge} strip", length=board.size[1 - across],
                        width=board.thickness, thickness=strip.thickness, cuts=(), edging=(), grain="length",
                        role="edging strip",
                    )
                )  # fmt: skip
    return tuple(found)


def shortest_rip(style: Style) -> int:
    """A piece shorter than this is not guided well along the fence: 12 in or 300 mm.

    Common practice, no source; the manual of the saw goes before it.

    >>> from shoplib.measure import MM_STYLE
    >>> shortest_rip(MM_STYLE) // MM
    300
    """
    return 12 * INCH if style.unit == "in" else 300 * MM


def ripped_whole(board: Board, sheet: Sheet, length: int, style: Style) -> bool:
    """Whether a part this long at rough size is too short for jointer and fence, and so ripped to its finished width
    while it is one piece with others; not where it takes the whole width of a board, or must be glued up.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> end = Board("end", "case", 1, "ash", 200 * MM, 180 * MM, 20 * MM, place, role="side")
    >>> [ripped_whole(end, Sheet("ash", "solid", 20 * MM, (), 2000 * MM, wide * MM), length * MM, MM_STYLE)
    ...  for wide, length in ((220, 212), (220, 312), (180, 212), (120, 212))]
    [True, False, False, False]
    """
    wide = board.cut_size[1]
    widths = {sheet.width or 0, *(size.width for size in sheet.sizes), *(one.width for one in sheet.on_hand)}
    narrow = wide < max(widths) and wide not in widths
    return sheet.kind == "solid" and board.role not in STRIPS and length < shortest_rip(style) and narrow


def rough_size(board: Board, sheet: Sheet, cutting: Cutting, style: Style) -> tuple[int, int]:
    """Length and width that this board is cut to from a board of solid wood; one that is short has its width at once.

    A strip is ripped on edge where the sheet is as thick as the strip is wide: each rip is as wide as the strip is
    thick (`second_rip` brings it to its width). From a thinner board it is ripped flat, as wide as it is, and planed to
    its thickness. Raises LayoutError where the sheet is too thin for either.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> top = Board("top", "case", 1, "ash", 600 * MM, 200 * MM, 20 * MM, place, role="top")
    >>> ash, cutting = Sheet("ash", "solid", 20 * MM), Cutting(rough_length=12 * MM, rough_width=6 * MM)
    >>> [side // MM for side in rough_size(top, ash, cutting, MM_STYLE)]
    [612, 206]
    >>> lip = Board("shelf front strip", "case", 1, "ash", 800 * MM, 18 * MM, 4 * MM, place, role="edging strip")
    >>> [[side // MM for side in rough_size(lip, sheet, cutting, MM_STYLE)]
    ...  for sheet in (ash, Sheet("thin ash", "solid", 10 * MM))]
    [[812, 4], [812, 18]]
    """
    length, width, thickness = board.cut_size
    if board.role not in STRIPS:
        long = length + cutting.rough_length
        return long, width if ripped_whole(board, sheet, long, style) else width + cutting.rough_width
    wide, thin = max(width, thickness), min(width, thickness)
    if sheet.thickness < thin:
        raise LayoutError(
            f"{board.name}: {write_brief(thin, style, decimal=True)} thick, and {sheet.name} is only "
            f"{write_brief(sheet.thickness, style, decimal=True)}; name a thicker one in cutting.strips_from"
        )
    return length + cutting.rough_length, thin if sheet.thickness >= wide else wide


def second_rip(board: Board, sheet: Sheet, style: Style) -> int:
    """The width to which a strip is ripped once it is off the board, which is thicker than the strip is wide; else 0.

    A strip of edging that is only a little wider than its board is planed flush with it instead.

    >>> from shoplib.measure import MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> runner = Board("runner", "case", 2, "strip", 400 * MM, 12 * MM, 10 * MM, place, role="runner")
    >>> [second_rip(runner, Sheet("ash", "solid", thick * MM), MM_STYLE) // MM for thick in (20, 12, 11)]
    [12, 0, 0]
    """
    wide = max(board.cut_size[1:])
    more = sheet.thickness - wide
    proud = _PROUD[style.unit] if board.role == "edging strip" else 0
    return wide if board.role in STRIPS and more > proud else 0
