"""Pulls and their screws, pegs, shelf pins, casters and feet to buy."""

from collections import Counter
from collections.abc import Iterator
from decimal import Decimal

from shoplib.buying.edging import length_unit, running
from shoplib.buying.line import Line
from shoplib.lists.writing import Writing
from shoplib.model.board import BOXES, CASE, FRONTS, Board, Hole
from shoplib.model.cutting import Cutting
from shoplib.model.hardware_places import pegs_by_size, pull_holes, wood_passed
from shoplib.model.marks import usually
from shoplib.model.solved import Cabinet


def fitting_lines(cabinet: Cabinet) -> Iterator[Line]:
    """All fittings but slides, of which the plan knows the number."""
    yield from _pulls(cabinet)
    yield from _pegs(cabinet)
    yield from _pins(cabinet)
    yield from _under(cabinet)


def _pulls(cabinet: Cabinet) -> Iterator[Line]:
    """Pulls by the distance of their holes, and their screws by the wood that these pass."""
    writing = Writing(cabinet.style)
    pulls: Counter[int] = Counter()
    passed: Counter[int] = Counter()
    for fitting in cabinet.hardware:
        if fitting.what != "pull":
            continue
        front = cabinet.by_name[fitting.on]
        holes = pull_holes(front)
        across = [x for x, _ in holes]
        pitch = max(across) - min(across)
        pulls[pitch] += 1
        passed.update(wood_passed(front, place, cabinet) for place in holes)
    for pitch, count in pulls.items():
        what = f"pull, {writing.length(pitch)} between its holes" if pitch else "pull with one hole"
        yield Line("pull", what, Decimal(count), "each", stage=FRONTS, uses="one on each front")
    for wood, count in passed.items():
        yield Line(
            "screw",
            f"pull screw that passes {writing.measured(wood)} of wood",
            Decimal(count),
            "each",
            size=(wood, 0, 0),
            stage=FRONTS,
            uses="longer than that by what the pull takes in, as its maker says; those sold with a pull are often too "
                 "short for two thicknesses",
        )


def _pegs(cabinet: Cabinet) -> Iterator[Line]:
    """Rod for pegs: each as long as it stands out and goes in, and a saw cut."""
    unit, writing = cabinet.style.unit, Writing(cabinet.style)
    found: Counter[tuple[int, int]] = Counter()
    for peg, count in pegs_by_size(cabinet).items():
        found[peg.diameter, peg.length] += count
    kerf = cabinet.project.cutting.kerf if cabinet.project else usually(Cutting, unit).kerf
    for (diameter, length), count in found.items():
        needed, spare = running(length * count, kerf * count, unit)
        yield Line(
            "peg rod",
            f"dowel rod {writing.length(diameter)} across",
            needed,
            length_unit(unit),
            spare,
            (length, diameter, diameter),
            BOXES,
            uses=f"{count} pegs, each {writing.length(length)} long; straight and true to size, for it goes into a "
                 "bored hole",
        )


def _pins(cabinet: Cabinet) -> Iterator[Line]:
    """Four pins under each loose shelf: as many as there are holes."""
    found = Counter(hole.diameter for board in cabinet.boards for hole in _holes(board, "shelf pin"))
    for diameter, count in found.items():
        yield Line(
            "shelf pin",
            f"shelf pin {Writing(cabinet.style).setting(diameter)}",
            Decimal(count),
            "each",
            size=(0, diameter, diameter),
            stage=CASE,
            uses="four under each loose shelf",
        )


def _holes(board: Board, kind: str) -> list[Hole]:
    return [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind == kind]


def _under(cabinet: Cabinet) -> Iterator[Line]:
    found = Counter(
        (fitting.what, fitting.box.size[2]) for fitting in cabinet.hardware if fitting.what in ("caster", "foot")
    )
    for (what, high), count in found.items():
        yield Line(
            what,
            f"{what} {Writing(cabinet.style).length(high)} high",
            Decimal(count),
            "each",
            size=(0, 0, high),
            stage=CASE,
            uses="under the corners, high as mounted; its screws stand under what is not in this list",
        )
