"""What an exercise is made of: numbers that are given, one right answer, and the slips people make.

An exercise is data and small functions of the numbers it gives. It judges nothing and shows nothing.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

from shoplib.lessons.counted import Counted
from shoplib.lessons.say import Say
from shoplib.measure.traced import leaf

if TYPE_CHECKING:
    from shoplib.lessons.numbers import Draw


@dataclass(frozen=True, slots=True)
class Given:
    """One number of an exercise: ticks or a count, with the text that the learner reads.

    `what` names it in the list of facts; an empty `what` keeps it off that list, and `called` then names it where
    a working begins with it.
    """

    name: str
    what: str
    value: int
    text: str
    called: str = ""


class Givens(Mapping[str, int]):
    """The numbers of one exercise: by name a plain integer (ticks or a count), with texts beside.

    >>> givens = Givens([Given("n", "bays", 3, "3")])
    >>> givens["n"], givens.texts, givens.facts
    (3, {'n': '3'}, (('bays', '3'),))
    """

    def __init__(self, rows: list[Given]):
        self.rows = tuple(rows)
        self._values = {row.name: row.value for row in rows}
        self.texts = {row.name: row.text for row in rows}
        self.facts = tuple((row.what, row.text) for row in rows if row.what)

    def __getitem__(self, name: str) -> int:
        return self._values[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._values)

    def __len__(self) -> int:
        return len(self._values)

    def traced(self) -> "Givens":
        """The same, with lengths that carry their names into whatever is worked out from them."""
        def named(row: Given) -> Given:
            return replace(row, value=leaf(row.value, row.what or row.called or row.name))

        return Givens([row if row.text == str(row.value) else named(row) for row in self.rows])

    def __repr__(self) -> str:
        return f"Givens({', '.join(f'{row.name} = {row.text}' for row in self.rows)})"


class Twin(NamedTuple):
    """The same thing for a learner who works in inches and for one who works in millimetres."""

    inch: int
    mm: int

    def of(self, unit: str) -> int:
        """The one for `unit`, "in" or "mm"."""
        return self.inch if unit == "in" else self.mm


Rule = Callable[[Givens], int]
"""A sum over the givens, in ticks."""

Effect = Callable[[Givens, int, Say], str]
"""What an answer would do in the shop: the givens, how much it is over (minus: under), the writer."""


@dataclass(frozen=True, slots=True)
class Misconception:
    """A slip that learners really make, as a rule of the givens.

    `says` names the slip ("That is ...") and `look` says where to look next; both may hold names of
    givens in braces. `effect` replaces the exercise's own account of what it would do in the shop.
    """

    id: str
    rule: Rule
    says: str
    look: str
    effect: Effect | None = None


@dataclass(frozen=True)
class Exercise:
    """One question with its givens, its right answer, its slips and its help.

    `question`, `hints` and `fits` may hold names of givens in braces. `givens` draws the numbers;
    `right` is the answer in ticks, computed from the givens as they are shown. `effect` says what a
    wrong answer would do in the shop, `fits` what the right one does. `working` gives the lines of
    the solution. An answer within `tolerance` (ticks) is right. `caliper` says that the answer is a
    caliper reading, not a mark on a rule; `zero` that one of the slips comes to nothing, so that 0 is an answer.
    A new `version` gives every learner new numbers. `coarse` is from where on a number that is no slip is told in whole
    steps by how much it is off; None is what is usual for a rule or calipers, and more than a small answer itself.
    `counted` says what is counted where the answer is a whole number of things: then `right` and the slips are such
    numbers, and `tolerance` is nothing.
    """

    id: str
    title: str
    rung: str
    question: str
    givens: Callable[["Draw"], list[Given]]
    right: Rule
    misconceptions: tuple[Misconception, ...]
    effect: Effect
    fits: str
    hints: tuple[str, ...]
    working: Callable[[Givens, Say], tuple[str, ...]]
    tolerance: Twin
    caliper: bool = False
    zero: bool = False
    version: int = 1
    coarse: Twin | None = None
    counted: Counted | None = None

    def apart(self, givens: Givens, unit: str) -> bool:
        """Whether the answer and all slips are more than three tolerances from each other.

        Where two rules come out alike, nobody can say from the number which of them was used.
        """
        values = sorted([self.right(givens), *(slip.rule(givens) for slip in self.misconceptions)])
        least = 3 * self.tolerance.of(unit)
        some = values[0] > 0 or (self.zero and values[0] == 0)
        return some and all(above - below > least for below, above in pairwise(values))
