"""Why a size on a panel is what it is: its working, found only when it is asked."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from shoplib.draw.asking import dimension
from shoplib.draw.scene import Scene
from shoplib.lists.cut_list import Kind, kinds
from shoplib.model.cabinet import solve
from shoplib.model.project import Project
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced
from shoplib.words.working import working

SIDES = {2: "length", 3: "width", 4: "thickness"}
"""The columns of the table of boards that can be asked, and what they hold."""


@dataclass(frozen=True, slots=True)
class Why:
    """Answers for one solved project: `views` are the functions that its drawings were made with, in order,
    and `rows` the one that its table of boards was made with.

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

    def ask(self, name: str) -> tuple[str, ...]:
        """The working of the size of that name: "table/ROW/COLUMN" or "drawing/NUMBER/DIMENSION".

        Raises LookupError where the panel shows no such size.
        """
        cabinet = solve(traced(self.project))
        try:
            kind, number, place = name.split("/")
            if kind == "table":
                board, side = self.rows(cabinet)[int(number)].boards[0], SIDES[int(place)]
                return working(getattr(board, side), f"{board.name}, {side}", cabinet.style)
            scene = self.views[int(number)](cabinet)
        except (ValueError, IndexError, KeyError):
            raise LookupError(f"the panel shows no size {name!r}") from None
        return working(dimension(scene, place), "this size", cabinet.style)
