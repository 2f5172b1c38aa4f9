"""Solid parts as they are cut from rough boards: larger than finished, strips ripped, wide ones glued up from staves.

What is planed, jointed and cut to length loses wood each time, so a part is first cut rough (`Cutting.rough_length`,
`rough_width`, `rough_thickness`). A strip is ripped to its size from a board that is planed already.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from shoplib.layout.pieces import LayoutError, Part, Stock
from shoplib.lists.cut_list import Kind
from shoplib.lists.sides import own_side
from shoplib.measure import Style, to_step, write_brief
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.model.cutting import Cutting
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short


@dataclass(frozen=True, slots=True)
class Rough:
    """Equal parts as they leave a rough board, lengths in ticks.

    `boards` names the finished parts, `finished` is the size of one. Each is glued up from `staves` pieces of `length`
    by `width`; where that is 1, it is the piece itself.
    """

    name: str
    boards: tuple[str, ...]
    finished: Point
    length: int
    width: int
    staves: int = 1

    @property
    def part(self) -> Part:
        """What is laid out on boards; its grain never turns.

        >>> Rough("tops", ("left top", "right top"), (600, 400, 19), 612, 210, staves=2).part
        Part(name='staves of tops', length=612, width=210, count=4, may_turn=False)
        """
        name = f"staves of {self.name}" if self.staves > 1 else self.name
        return Part(name, self.length, self.width, len(self.boards) * self.staves)


@dataclass(frozen=True, slots=True)
class Strip:
    """Equal strips of solid wood: finished `length`, and a section `wide` by `thick` (the smaller), in ticks."""

    name: str
    boards: tuple[str, ...]
    stage: int
    length: int
    wide: int
    thick: int


def rough_parts(kinds: Iterable[Kind], cutting: Cutting) -> tuple[Rough, ...]:
    """Rows of the cut list at rough size, none of them glued up yet."""
    found = []
    for kind in kinds:
        length, width, _ = kind.cut
        rough = (length + cutting.rough_length, width + cutting.rough_width)
        found.append(Rough(boards_in_short(kind.boards), kind.names, kind.cut, *rough))
    return tuple(found)


def glued_up(parts: Iterable[Rough], stock: Iterable[Stock], cutting: Cutting, style: Style) -> tuple[Rough, ...]:
    """The parts, those that no board is wide enough for as staves: as few as the boards give, and equally wide.

    Equal parts are made in one way: where the wide boards in the shop have not room for all of them, all are glued
    up. A stave has `jointing` over. Where no board is known, nothing is glued up. Raises LayoutError, one sentence,
    where a part is longer than every board, or the boards are too few or too narrow for it.

    >>> from shoplib.measure import INCH_STYLE, INCH
    >>> top = Rough("top", ("top",), (30 * INCH, 11 * INCH, INCH), 30 * INCH, 11 * INCH)
    >>> boards = [Stock("board", 96 * INCH, 6 * INCH)]
    >>> [made] = glued_up([top], boards, Cutting(), INCH_STYLE)
    >>> made.staves, made.width == INCH * 45 // 8
    (2, True)
    """
    stock = list(stock)
    return tuple(_made(part, stock, cutting.jointing, style) if stock else part for part in parts)


def _made(part: Rough, stock: list[Stock], jointing: int, style: Style) -> Rough:
    """In one piece, or from the widest boards that there are enough of."""
    long_enough = [size for size in stock if size.usable.w >= part.length]
    if not long_enough:
        raise LayoutError(
            f"{part.name}: {write_brief(part.length, style)} long at rough size, and the longest board leaves "
            f"{write_brief(max(size.usable.w for size in stock), style)} when its ends are trimmed; get a longer one, "
            "for boards are not joined end to end"
        )
    for widest in sorted({size.usable.h for size in long_enough}, reverse=True):
        made = _from_boards(part, widest, jointing, style)
        if made is not None and _room_for(made.part, long_enough):
            return made
    raise LayoutError(
        f"{part.name}: the boards that are {write_brief(part.length, style)} long are too few or too narrow for it, "
        "even glued up from staves; get more of them, or give a size that can be bought"
    )


def _from_boards(part: Rough, widest: int, jointing: int, style: Style) -> Rough | None:
    """The part from boards of this width; None where jointing would leave no whole step of a stave."""
    if part.width <= widest:
        return part
    most = to_step(widest - jointing, style.step, "down")
    if most <= 0:
        return None
    staves = -(-part.width // most)
    return replace(part, width=to_step(-(-part.width // staves), style.step, "up") + jointing, staves=staves)


def _room_for(part: Part, stock: list[Stock]) -> bool:
    """Whether the boards hold all of this part, if nothing else were cut from them and the saw took nothing."""
    wide = [size for size in stock if size.usable.h >= part.width]
    if any(size.count is None for size in wide):
        return True
    return sum(s.count * (s.usable.w // part.length) * (s.usable.h // part.width) for s in wide) >= part.count


def ripped(strips: Iterable[Strip], sheet: Sheet, cutting: Cutting, style: Style) -> tuple[Rough, ...]:
    """Strips as they come out of boards planed to the thickness of this sheet.

    A board that is as thick as the strip is wide gives it on edge: each rip is the strip's thickness. From a thinner
    one it is ripped flat, as wide as it is, and planed to its thickness. Raises LayoutError where neither will do.

    >>> from shoplib.measure import MM_STYLE, MM
    >>> lip = Strip("strips", ("shelf front strip",), 1, 800 * MM, 18 * MM, 4 * MM)
    >>> [ripped([lip], Sheet("ash", "solid", thick * MM), Cutting(), MM_STYLE)[0].width // MM for thick in (20, 10)]
    [4, 18]
    """
    found = []
    for strip in strips:
        if sheet.thickness < strip.thick:
            raise LayoutError(
                f"{strip.name}: {write_brief(strip.thick, style, decimal=True)} thick, and {sheet.name} is only "
                f"{write_brief(sheet.thickness, style, decimal=True)}; name a thicker one in cutting.strips_from"
            )
        width = strip.thick if sheet.thickness >= strip.wide else strip.wide
        size = (strip.length, strip.wide, strip.thick)
        found.append(Rough(strip.name, strip.boards, size, strip.length + cutting.rough_length, width))
    return tuple(found)


def strips_of(cabinet: Cabinet) -> tuple[Strip, ...]:
    """All that is ripped from solid boards where `cutting.strips_from` says which: edging strips, runners, kickers.

    A strip of edging is as long as the finished edge that it covers: where two meet at a corner, one is cut back.
    """
    own = cabinet.project.sheets if cabinet.project else {}
    found: dict[tuple[str, int, Point], list[tuple[str, Board]]] = {}
    for board in cabinet.boards:
        if board.sheet not in own:
            length, *section = board.cut_size
            key = (board.role, board.stage, (length, max(section), min(section)))
            found.setdefault(key, []).append((board.name, board))
        for edge, strip in board.edging:
            if strip.kind == "strip":
                section = (board.thickness, strip.thickness)
                size = (_along(board, edge), max(section), min(section))
                found.setdefault((f"{edge} strip", board.stage, size), []).append((f"{board.name} {edge} strip", board))
    return tuple(
        Strip(_named(role, [board for _, board in made]), tuple(name for name, _ in made), stage, *size)
        for (role, stage, size), made in found.items()
    )


def _named(role: str, boards: list[Board]) -> str:
    return f"{role} of {boards_in_short(boards)}" if role.endswith(" strip") else boards_in_short(boards)


def _along(board: Board, edge: str) -> int:
    """The finished length of an edge: the size of the board that is neither its thickness nor looked along."""
    across, _ = own_side(board, edge)
    return board.size[1 - across]
