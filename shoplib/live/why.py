"""Why a size on a panel is what it is: its working, found only when it is asked."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from shoplib.draw.asking import sizes, written
from shoplib.draw.scene import Scene
from shoplib.lists.cut_list import Kind, kinds
from shoplib.measure import Style, write_brief
from shoplib.model.cabinet import solve
from shoplib.model.project import Project
from shoplib.model.solved import Cabinet, ClosingSum
from shoplib.model.tracing import traced
from shoplib.words.working import working

SIDES = {2: "length", 3: "width", 4: "thickness"}
"""The columns of the table of boards that can be asked, and what they hold."""


def lengths(chain: ClosingSum) -> tuple[tuple[str, int], ...]:
    """The lengths of a closing sum as it is written out: its terms, the total, and what is left over if it is open."""
    return (*chain.terms, chain.total, ("what is left over", abs(chain.rest)))


def workings(told: Iterable[tuple[str, int]], style: Style) -> tuple[str, ...]:
    """The working of each size, one after another; what stands behind several of them is told once."""
    return tuple(dict.fromkeys(line for called, size in told for line in working(size, called, style)))


def drawn(scene: Scene, place: str, style: Style) -> tuple[str, ...]:
    """The working of what is picked in a drawing: a dimension begins as it is written there."""
    told, text = sizes(scene, place), written(scene, place, style.unit)
    if text and len(told) == 1:
        ((called, size),) = told
        return working(size, called, style, text)
    return workings(told, style)


@dataclass(frozen=True, slots=True)
class Why:
    """Answers for one solved project: `views` are the functions that its drawings were made with, in order,
    `rows` the one that its table of boards was made with, and `sums` gives the lengths of each closing sum in their
    order, each after what it is called.

    The project is solved once more with numbers that carry their working, so the answer comes out of the
    very functions that gave the size.

    >>> from shoplib.documents.examples import example
    >>> from shoplib.documents.project_file import read_project
    >>> why = Why(read_project(example("under_bench_case")), ())
    >>> why.ask("table/0/2")[0]
    'left side, length 33 1/2 in = case height 33 1/2 in'
    """

    project: Project
    views: Sequence[Callable[[Cabinet], Scene]]
    rows: Callable[[Cabinet], Sequence[Kind]] = kinds
    sums: Callable[[Cabinet], Sequence[Sequence[tuple[str, int]]]] = lambda cabinet: ()

    def ask(self, name: str) -> tuple[str, ...]:
        """Why a size that is shown is so: "table/ROW/COLUMN", "drawing/NUMBER/DIMENSION" or "sum/NUMBER/LENGTH"."""
        cabinet = solve(traced(self.project))
        kind, number, place = name.split("/")
        if kind == "sum":
            return workings([self.sums(cabinet)[int(number)][int(place)]], cabinet.style)
        if kind == "table":
            board, side = self.rows(cabinet)[int(number)].boards[0], SIDES[int(place)]
            size = getattr(board, side)
            text = write_brief(size, cabinet.style, decimal=side == "thickness")
            return working(size, f"{board.name}, {side}", cabinet.style, text)
        return drawn(self.views[int(number)](cabinet), place, cabinet.style)
