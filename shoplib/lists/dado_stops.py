"""Cuts that must match, together: at one distance from the same edge they are all made before the fence is moved.

A shelf lies level when the dadoes at its two ends are made at one stop, each board with the same edge against it: what
is a little off is then off alike. Measured board by board they would differ.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from shoplib.lists.cut_words import channel_ways
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.writing import Writing
from shoplib.model.board import Board, BoxCut
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, boards_in_short, in_short, plural

KINDS = ("dado", "groove", "rabbet")
"""What is cut along a fence or against a stop; notches and what comes from a jig are in `alike_cuts`."""


@dataclass(frozen=True, slots=True)
class DadoStop:
    """Dadoes, grooves or rabbets of one set-up, in ticks.

    `wall` is how far the near wall is from the one of `references` (such as "bottom end") of the finished board; 0 for
    rabbets, which run along theirs ("bottom end" and "top end"). Where one cut lies as far from one end as its like
    from the other, one stop serves both, and the references are both ("front end" and "back end"). `cuts` are the
    boards with what is cut in each; a board with a dado in either face stands there twice. `fitted`: a board enters,
    so that the width is one that was measured.
    """

    stage: int
    kind: str
    references: tuple[str, ...]
    wall: int
    width: int
    depth: int
    fitted: bool
    cuts: tuple[tuple[Board, BoxCut], ...]

    @property
    def reference(self) -> str:
        """What it is set by, in words."""
        return and_list(self.references)

    @property
    def boards(self) -> tuple[Board, ...]:
        """Each board once."""
        return tuple({board.name: board for board, _ in self.cuts}.values())


_SIDES = ("end", "edge", "face")
"""What a rabbet runs along, by the own axis that it is wide along."""

_SetUp = tuple[int, str, str, int, int, int, bool]
"""Stage, kind, which side it is set by, near wall, width, depth, and whether a board enters."""


def dado_stops(cabinet: Cabinet) -> tuple[DadoStop, ...]:
    """The set-ups that serve more than one cut, by stage, then from the reference outward.

    Boards of different stages have none in common: the later ones are cut when the case has been measured.
    """
    found: dict[_SetUp, list[tuple[Board, BoxCut]]] = {}
    named: dict[_SetUp, dict[str, None]] = {}
    for board, cut in channels(cabinet.boards):
        reference, wall = _set_by(board, cut, cabinet)
        # A rabbet is set by whichever end or edge it runs along: all of them lie against the fence in turn.
        side = reference if wall else _SIDES[channel_ways(cut, board)[1]]
        setup = (board.stage, cut.kind, side, wall, *_sizes(board, cut), bool(cut.for_board))
        mine = found.setdefault(setup, [])
        # One rabbet may take two boards, such as both stretchers.
        if not any(board is other and _same_place(board, cut, made) for other, made in mine):
            mine.append((board, cut))
        named.setdefault(setup, {})[reference] = None
    _turned_end_for_end(found, named, cabinet)
    stops = [
        DadoStop(stage, kind, tuple(sorted(named[setup])), wall, width, depth, fitted, tuple(found[setup]))
        for setup in found
        for stage, kind, _, wall, width, depth, fitted in [setup]
        if len(found[setup]) > 1
    ]
    return tuple(sorted(stops, key=lambda stop: (stop.stage, KINDS.index(stop.kind), stop.reference, stop.wall)))


def _turned_end_for_end(
    found: dict[_SetUp, list[tuple[Board, BoxCut]]], named: dict[_SetUp, dict[str, None]], cabinet: Cabinet
) -> None:
    """Take set-ups together where one is the other with the board turned end for end, or edge for edge.

    Not where what enters has a mate in yet another set-up: all its mates are set from one side, or it is not level.
    """
    mates: dict[str, set[_SetUp]] = {}
    for setup, cuts in found.items():
        for _, cut in cuts:
            mates.setdefault(cut.for_board, set()).add(setup)
    for setup in sorted(found, key=lambda setup: -setup[3]):  # what is far from its own side may be near to the other
        stage, kind, side, wall, *sizes = setup
        others = {_from_the_other_side(board, cut, cabinet) for board, cut in found[setup]}
        boards = {board.name for board, _ in found[setup]}
        if not wall or len(others) > 1:
            continue
        [(name, near)] = others
        like = (stage, kind, side, near, *sizes)
        entering = {cut.for_board for _, cut in found[setup]} - {""}
        if near >= wall or like not in found or any(mates[name] - {setup, like} for name in entering):
            continue
        if boards <= {board.name for board, _ in found[like]}:
            found[like] += found.pop(setup)
            named[like][name] = None


def _from_the_other_side(board: Board, cut: BoxCut, cabinet: Cabinet) -> tuple[str, int]:
    """The side opposite to the one that a cut is set by, and how far the wall nearer to it is from there."""
    wide = channel_ways(cut, board)[1]
    side = -datum_side(board, wide)
    name = side_name(board, wide, side, outline_of(board, cabinet))
    return name, cut.low[wide] if side < 0 else board.size[wide] - cut.high[wide]


@dataclass(frozen=True, slots=True)
class TwoStops:
    """Boards whose ends enter at unlike places, so that no one stop serves both: near walls from one reference.

    A divider stands on the bottom and a side beside it, so a shelf between them is not equally far from their ends.
    `cuts` are the dadoes, each with its board: those of the first wall, then those of the next.
    """

    boards: tuple[Board, ...]
    reference: str
    walls: tuple[int, ...]
    cuts: tuple[tuple[tuple[Board, BoxCut], ...], ...]


def two_stops(cabinet: Cabinet) -> tuple[TwoStops, ...]:
    """Where mating dadoes cannot be made at one stop: there the two settings must differ by just so much."""
    walls: dict[tuple[str, str, str], dict[int, list[tuple[Board, BoxCut]]]] = {}
    for board, cut in channels(cabinet.boards):
        reference, wall = _set_by(board, cut, cabinet)
        if cut.kind == "dado" and cut.for_board in cabinet.by_name and wall:
            walls.setdefault((cut.for_board, cut.kind, reference), {}).setdefault(wall, []).append((board, cut))
    alike: dict[tuple[str, tuple[int, ...]], list[str]] = {}
    for (entering, _, reference), found in walls.items():
        if len(found) > 1:
            alike.setdefault((reference, tuple(sorted(found))), []).append(entering)
    return tuple(
        TwoStops(
            tuple(cabinet.by_name[name] for name in names), reference, at,
            tuple(tuple(cut for name in names for cut in walls[name, "dado", reference][wall]) for wall in at),
        )
        for (reference, at), names in alike.items()
    )


def channels(boards: Iterable[Board]) -> Iterator[tuple[Board, BoxCut]]:
    """What is cut in these boards along a fence or against a stop: dadoes, grooves and rabbets, each with its board.

    >>> list(channels([]))
    []
    """
    for board in boards:
        for cut in board.cuts:
            if isinstance(cut, BoxCut) and cut.kind in KINDS and channel_ways(cut, board) is not None:
                yield board, cut


def _sizes(board: Board, cut: BoxCut) -> tuple[int, int]:
    """Width and depth."""
    deep, wide, _ = channel_ways(cut, board)
    return cut.high[wide] - cut.low[wide], cut.high[deep] - cut.low[deep]


def _set_by(board: Board, cut: BoxCut, cabinet: Cabinet) -> tuple[str, int]:
    """The end or edge that a cut is set by, and how far its near wall is from there; 0 for a rabbet.

    A slot in an end is set by a face, which has the name that the drawing of the board gives it.
    """
    wide = channel_ways(cut, board)[1]
    side = datum_side(board, wide)
    low, high = cut.low[wide], board.size[wide] - cut.high[wide]
    if low <= 0 or high <= 0:
        return side_name(board, wide, -1 if low <= 0 else 1), 0
    return side_name(board, wide, side, outline_of(board, cabinet)), low if side < 0 else high


def _same_place(board: Board, cut: BoxCut, made: BoxCut) -> bool:
    """Whether two cuts of a board are made in one pass: in the same side, at the same place across."""
    ways = channel_ways(cut, board)
    if channel_ways(made, board) != ways:
        return False
    return all((cut.low[own], cut.high[own]) == (made.low[own], made.high[own]) for own in ways[:2])


def stop_words(stop: DadoStop, writing: Writing) -> str:
    """One set-up in words, and which boards are cut at it.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.model.placement import Placement
    >>> cut = BoxCut("dado", (12 * INCH, 0, 0), (12 * INCH + INCH // 2, 9 * INCH, INCH // 4), "shelf")
    >>> sides = [Board(f"{way} side", "case", 1, "s", 30 * INCH, 9 * INCH, INCH // 2,
    ...                Placement((0, 0, 0), ("+z", "+y", "-x")), (cut,)) for way in ("left", "right")]
    >>> stop = DadoStop(1, "dado", ("bottom end",), 12 * INCH, INCH // 2, INCH // 4, True,
    ...                 tuple((side, cut) for side in sides))
    >>> stop_words(stop, Writing(INCH_STYLE))
    '2 dadoes, 0.5 in wide, 1/4 in deep, the near wall 12 in from the bottom end: left side and right side'
    """
    cuts = f"{len(stop.cuts)} {plural(stop.kind)}"
    return f"{cuts}, {size_words(stop, writing)}, {place_words(stop, writing)}: {boards_in_short(stop.boards)}"


def size_words(stop: DadoStop, writing: Writing) -> str:
    """Width and depth, as in the cut list."""
    width = (writing.measured if stop.fitted else writing.setting)(stop.width)
    return f"{width} wide, {writing.setting(stop.depth)} deep"


def place_words(stop: DadoStop, writing: Writing) -> str:
    """Where the stop stands, and that the board is turned where it serves both of its ends or edges."""
    if not stop.wall:
        return f"along the {stop.reference}"
    one, *others = stop.references
    from_both = "".join(f" and, turned end for end at the same stop, from the {other}" for other in others)
    return f"the near wall {writing.length(stop.wall)} from the {one}{from_both}"


def two_stops_words(found: TwoStops, writing: Writing) -> str:
    """Mating dadoes at unlike distances, in words, with the difference that must come out.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> shelf, side, divider = (
    ...     Board(name, "case", 1, "s", 9, 9, 9, Placement((0, 0, 0), ("+x", "+y", "+z")))
    ...     for name in ("fixed shelf", "left side", "divider 1"))
    >>> cuts = tuple(((board, BoxCut("dado", (0, 0, 0), (1, 1, 1))),) for board in (divider, side))
    >>> two_stops_words(TwoStops((shelf,), "bottom end", (291 * MM, 300 * MM), cuts), Writing(MM_STYLE))
    'fixed shelf: near wall 291 mm in divider 1 and 300 mm in left side, from the bottom end; the stops differ by 9 mm'
    """
    return f"{boards_in_short(found.boards)}: {two_walls(found, writing)}; {two_apart(found, writing)}"


def two_walls(found: TwoStops, writing: Writing) -> str:
    """Where the stops stand, each with the boards that are cut at it."""
    walls = [
        f"{writing.length(wall)} in {boards_in_short({board.name: board for board, _ in cuts}.values())}"
        for wall, cuts in zip(found.walls, found.cuts, strict=True)
    ]
    return f"near wall {and_list(walls)}, from the {found.reference}"


def two_sizes(found: TwoStops, writing: Writing) -> str:
    """Width and depth of the dadoes, as in the cut list."""
    sizes = dict.fromkeys(_sizes(board, cut) for cuts in found.cuts for board, cut in cuts)
    return and_list([f"{writing.measured(wide)} wide, {writing.setting(deep)} deep" for wide, deep in sizes])


def two_apart(found: TwoStops, writing: Writing) -> str:
    """How far the stops are apart."""
    apart = [writing.length(high - low) for low, high in pairwise(found.walls)]
    return f"the stops differ by {and_list(apart)}"


def ends_short(board: Board, cut: BoxCut) -> tuple[tuple[int, int], ...]:
    """The sides (-1 low, +1 high) that a dado, groove or rabbet ends short of, each with how far (ticks).

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 900, 500, 20, Placement((0, 0, 0), ("+z", "+y", "-x")))
    >>> ends_short(side, BoxCut("dado", (300, 20, 0), (320, 500, 9), "shelf"))
    ((-1, 20),)
    """
    run = channel_ways(cut, board)[2]
    rests = (-1, cut.low[run]), (1, board.size[run] - cut.high[run])
    return tuple((side, rest) for side, rest in rests if rest > 0)


def stopped_at(board: Board, cut: BoxCut, writing: Writing) -> str:
    """Where a dado, groove or rabbet ends short of the sides that it runs towards; empty for one that runs through.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 900, 500, 20, Placement((0, 0, 0), ("+z", "+y", "-x")))
    >>> stopped_at(side, BoxCut("dado", (300, 20, 0), (320, 500, 9), "shelf"), Writing(MM_STYLE))[:7]
    'stopped'
    >>> stopped_at(side, BoxCut("dado", (300, 0, 0), (320, 500, 9), "shelf"), Writing(MM_STYLE))
    ''
    """
    run = channel_ways(cut, board)[2]
    sides: dict[str, list[str]] = {}
    for side, rest in ends_short(board, cut):
        sides.setdefault(writing.length(rest), []).append(side_name(board, run, side))
    return and_list([f"stopped {rest} from the {and_list(names)}" for rest, names in sides.items()])


def stopped_words(cuts: Iterable[tuple[Board, BoxCut]], writing: Writing) -> str:
    """Which of these cuts are stopped and where, by their boards and what enters; empty where all run through."""
    told: dict[str, list[tuple[Board, BoxCut]]] = {}
    for board, cut in cuts:
        told.setdefault(stopped_at(board, cut, writing), []).append((board, cut))
    if not any(told):
        return ""
    names = [name for some in told.values() for name in {board.name for board, _ in some}]
    return "; ".join(
        f"{stop or 'right through'}: {_in_boards(some, any(names.count(board.name) > 1 for board, _ in some))}"
        for stop, some in told.items()
    )


def _in_boards(cuts: Iterable[tuple[Board, BoxCut]], tell_what_for: bool) -> str:
    """The boards that are cut, and what the cuts are for where a board has others beside them."""
    cuts = list(cuts)
    boards = boards_in_short({board.name: board for board, _ in cuts}.values())
    entering = in_short(dict.fromkeys(cut.for_board for _, cut in cuts if cut.for_board))
    return f"{boards}, for {and_list(entering)}" if tell_what_for and entering else boards
