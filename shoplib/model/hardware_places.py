"""Where slides, pulls and front screws came to lie in a solved cabinet, from the edges that they are set out from."""

from collections import Counter
from collections.abc import Collection
from dataclasses import dataclass

from shoplib.model.board import Board, Hole
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet, Hardware, Screw


@dataclass(frozen=True, slots=True)
class SlidePlace:
    """One slide on an upright; lengths in ticks.

    `spacer` is what stands between the bottom and its lower edge, `setback` how far its front end lies behind the
    front edge of the upright, `height` its own.
    """

    fitting: Hardware
    spacer: int
    setback: int
    height: int


def slides_on(cabinet: Cabinet, upright: str, face: int = 1) -> tuple[SlidePlace, ...]:
    """The slides on one face of an upright (1 the right one, -1 the left one), from the bottom up.

    KeyError where the cabinet has no board of that name, or no bottom.
    """
    board, floor = cabinet.by_name[upright].box, cabinet.by_name["bottom"].box.high[2]
    found = []
    for fitting in cabinet.hardware:
        low, high = fitting.box.low, fitting.box.high
        beside = low[0] >= board.high[0] if face > 0 else high[0] <= board.low[0]
        if fitting.what == "slide" and fitting.on == upright and beside:
            found.append(SlidePlace(fitting, low[2] - floor, low[1] - board.low[1], high[2] - low[2]))
    return tuple(sorted(found, key=lambda place: place.spacer))


@dataclass(frozen=True, slots=True)
class PullPlace:
    """The middle of one hole for a pull, from the left end and from the lower edge of its front, and its diameter."""

    left: int
    up: int
    diameter: int


def pull_places(cabinet: Cabinet, front: str) -> tuple[PullPlace, ...]:
    """The holes for the pull of one front, from left to right; KeyError where there is no such board."""
    board = cabinet.by_name[front]
    found = []
    for hole in board.cuts:
        if isinstance(hole, Hole) and hole.kind == "pull":
            x, _, z = board.placement.to_world(Box(hole.centre, hole.centre)).low
            found.append(PullPlace(x - board.box.low[0], z - board.box.low[2], hole.diameter))
    return tuple(sorted(found, key=lambda place: place.left))


def pull_holes(board: Board) -> dict[tuple[int, int], int]:
    """Where in the cabinet (across, up) a board is bored for a pull, and the diameter."""
    found = {}
    for hole in board.cuts:
        if isinstance(hole, Hole) and hole.kind == "pull":
            x, _, z = board.placement.to_world(Box(hole.centre, hole.centre)).low
            found[x, z] = hole.diameter
    return found


@dataclass(frozen=True, slots=True)
class Peg:
    """A peg that goes `deep` into its bored hole and stands `out` of the panel; ticks."""

    diameter: int
    deep: int
    out: int

    @property
    def length(self) -> int:
        """How long it is cut."""
        return self.deep + self.out


def pegs_by_size(cabinet: Cabinet, panels: Collection[str] = ()) -> Counter[Peg]:
    """How many pegs of each size go into these panels, into all where none is named.

    >>> pegs_by_size(Cabinet("no boards", (), {}))
    Counter()
    """
    found: Counter[Peg] = Counter()
    for fitting in cabinet.hardware:
        if fitting.what == "peg" and (not panels or fitting.on in panels):
            holes = cabinet.by_name[fitting.on].cuts
            hole = next(cut for cut in holes if isinstance(cut, Hole) and cut.kind == "peg")
            found[Peg(hole.diameter, hole.depth, fitting.box.size[0])] += 1
    return found


def wood_passed(front: Board, place: tuple[int, int], cabinet: Cabinet) -> int:
    """What the screw of a pull passes at one place: the front and what is bored behind it (ticks)."""
    return sum(board.thickness for board in cabinet.groups[front.group] if place in pull_holes(board))


@dataclass(frozen=True, slots=True)
class FrontScrew:
    """The screw from inside a box into its front: what it passes `through`, what it goes `into`, both at their
    thinnest readings, and the screw, None where no length of the table is short enough. Ticks.
    """

    through: int
    into: int
    screw: Screw | None

    @property
    def left(self) -> int:
        """The wood before its point; LookupError where there is no screw."""
        if self.screw is None:
            raise LookupError("there is no screw")
        return self.through + self.into - self.screw.length


def front_screw(cabinet: Cabinet, group: str) -> FrontScrew:
    """What holds the front of a drawer; LookupError where the group has no front that is screwed on."""
    for fitting in cabinet.hardware:
        if fitting.what == "front screws" and fitting.group == group:
            sheets, boards = cabinet.sheets, cabinet.by_name
            through, into = (sheets[boards[name].sheet].thinnest for name in (fitting.on, f"{group} front"))
            return FrontScrew(through, into, fitting.screws[0] if fitting.screws else None)
    raise LookupError(f"{group}: no front is screwed on")
