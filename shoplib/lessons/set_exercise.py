"""An exercise that asks for a whole set of sizes: the parts asked for, and the case that they are parts of.

The right sizes are read off the boards of the case as the model solves it. An exercise is data; it judges
nothing and shows nothing.
"""

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Literal

from shoplib.draw.dry_fit import View
from shoplib.lessons.exercise import Given, Givens, Misconception, Twin
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

if TYPE_CHECKING:
    from shoplib.lessons.numbers import Draw

NEAR = Twin(INCH // 64, MM // 5)
"""How near a number must come to a slip, or to the planned size, to be taken for it: a step of a fine rule."""

_TOO = {
    "length": ("long", "short"), "width": ("wide", "narrow"),
    "height": ("high", "low"), "depth": ("deep", "shallow"),
}


@dataclass(frozen=True)
class Asked:
    """One size that is asked for: `size` of the board or boards (alike) called `boards`, along world `axis`.

    `part` is what the learner calls them ("Top and bottom"). `slips` are rules of the givens that people
    make for this size; what each would do is told by the dry-fit, so their `effect` is not asked. `working`
    gives the lines of the solution.
    """

    name: str
    part: str
    size: Literal["length", "width", "height", "depth"]
    boards: tuple[str, ...]
    axis: Literal["x", "y", "z"]
    slips: tuple[Misconception, ...]
    working: Callable[[Givens, Say], tuple[str, ...]]

    @property
    def label(self) -> str:
        """What stands beside its field.

        >>> Asked("side", "Sides", "length", ("left side",), "z", (), lambda givens, say: ()).label
        'Sides, length'
        """
        return f"{self.part}, {self.size}"

    @property
    def world(self) -> int:
        """The world axis as a number."""
        return "xyz".index(self.axis)

    def right(self, case: Cabinet) -> int:
        """The size as solved, in ticks. KeyError where the case has no such board."""
        return case.by_name[self.boards[0]].box.size[self.world]

    def resized(self, board: Board, size: tuple[int, int, int], ticks: int) -> tuple[int, int, int]:
        """Length, width and thickness of the board with this one set to `ticks`."""
        own = board.placement.own_axis(self.world)
        return tuple(ticks if at == own else one for at, one in enumerate(size))

    def too(self, off: int) -> str:
        """The word for a size that is over (or, minus, under): long, short, wide ..."""
        return _TOO[self.size][off < 0]


@dataclass(frozen=True)
class SetExercise:
    """One question for a whole set of sizes, judged by putting the boards together.

    `question`, `hints` and `fits` may hold names of givens in braces. `givens` draws the numbers; `case` solves
    the cabinet that they make. `view` is how the dry-fit is drawn. A new `version` gives new numbers. `whole` is what
    the boards together are called, where they are no case.
    """

    id: str
    title: str
    question: str
    givens: Callable[["Draw"], list[Given]]
    case: Callable[[Givens], Cabinet]
    asked: tuple[Asked, ...]
    view: View
    fits: str
    hints: tuple[str, ...]
    version: int = 1
    rung: str = "a whole set"
    whole: str = "case"

    def apart(self, givens: Givens, unit: str) -> bool:
        """Whether for each size the right one and all its slips are more than three tolerances from each other."""
        case, least = self.case(givens), 3 * NEAR.of(unit)
        for one in self.asked:
            values = sorted([one.right(case), *(slip.rule(givens) for slip in one.slips)])
            if values[0] <= 0 or any(above - below <= least for below, above in pairwise(values)):
                return False
        return True
