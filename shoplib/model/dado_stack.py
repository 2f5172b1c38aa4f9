"""Which cutters and shims to put on the arbor: the stack whose width comes nearest to the one that is wanted."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Self

from shoplib.measure import INCH, INCH_STYLE, Style, largest_fitting, thickest, write_brief
from shoplib.measure.traced import named
from shoplib.tables.dado_sets import DadoSet

NEAR = INCH // 500
"""0.002 in: a stack may miss the target by this at either end of its range (common practice: no saw is set finer)."""


class CannotStack(ValueError):
    """No stack may or can cut this width; the message is one sentence with the amounts, and what else would do."""


@dataclass(frozen=True, slots=True)
class SawLimits:
    """What the maker of the saw allows, in ticks: the widest stack and the largest diameter.

    `widest` 0 says that this saw takes no dado set at all, which some makers and the rules of some countries say.
    It stands in the manual of the saw; manuals that were read allow 13/16 in and 8 in across, and yours decides.
    """

    widest: int
    diameter: int


@dataclass(frozen=True, slots=True)
class Stack:
    """Two outer cutters with chippers and shims between them, thickest first; `width` is what it cuts, in ticks.

    >>> Stack.of(10, chippers=(10, 5), shims=(1,))
    Stack(width=36, outer=10, chippers=(10, 5), shims=(1,))
    """

    width: int
    outer: int
    chippers: tuple[int, ...]
    shims: tuple[int, ...]

    @classmethod
    def of(cls, outer: int, chippers: Sequence[int] = (), shims: Sequence[int] = ()) -> Self:
        """The stack of these pieces."""
        width = 2 * outer + sum(chippers) + sum(shims)
        return cls(width, outer, tuple(sorted(chippers, reverse=True)), tuple(sorted(shims, reverse=True)))


@dataclass(frozen=True, slots=True)
class StackChoice:
    """The stack nearest to `target`, and the nearest of another width (None where the set makes one width only).

    `error` and `next_error` are width minus target: above 0 the cut is wider than wanted.
    """

    target: int
    best: Stack
    next_best: Stack | None

    @property
    def error(self) -> int:
        """By how much the best stack cuts wider than the target."""
        return self.best.width - self.target

    @property
    def next_error(self) -> int | None:
        """By how much the next best cuts wider than the target."""
        return None if self.next_best is None else self.next_best.width - self.target


def target_width(readings: Sequence[int], fit: int) -> int:
    """How wide to cut: the thickest caliper reading and the chosen fit, or that corner stays out.

    Raises ValueError where there is no reading.

    >>> target_width([702, 706], 2)
    708
    """
    return named(thickest(readings) + fit, "width of the cut")


@cache
def stacks(owned: DadoSet) -> dict[int, Stack]:
    """Every width that the set makes, with the stack of the fewest shims, and then of the fewest chippers, for it.

    Both outer cutters stand in each; at most two shims go together (read: manuals of saws).

    >>> thirds = DadoSet("two chippers", "in", 100, outer=4, chippers=(4, 3), shims=(1,))
    >>> sorted(stacks(thirds))
    [8, 9, 11, 12, 13, 15, 16]
    >>> stacks(thirds)[12]
    Stack(width=12, outer=4, chippers=(4,), shims=())
    """
    between = {0: ()}
    for chipper in owned.chippers:
        longer = {width + chipper: (*pieces, chipper) for width, pieces in between.items()}
        for width, pieces in longer.items():
            if width not in between or len(pieces) < len(between[width]):
                between[width] = pieces

    shims = owned.shims
    slips = [(), *((one,) for one in shims)]
    slips += [(one, two) for place, one in enumerate(shims) for two in shims[place + 1 :]]

    made: dict[int, Stack] = {}
    for slip in slips:  # none, then one, then two: what is there already has no more of them
        for chippers in between.values():
            stack = Stack.of(owned.outer, chippers, slip)
            known = made.get(stack.width)
            if known is None or _pieces(stack) < _pieces(known):
                made[stack.width] = stack
    return made


def nearest_stack(target: int, owned: DadoSet, saw: SawLimits, style: Style = INCH_STYLE) -> StackChoice:
    """The stack nearest to the target that this saw may carry; of two as near the wider, for a board must enter.

    `style` is for the sentence of a refusal. Raises CannotStack where the saw takes no dado set or none of this
    diameter, where the width is more than it allows, and where the set makes nothing so wide or so narrow.

    >>> from shoplib.measure import read_length
    >>> from shoplib.tables.dado_sets import dado_sets
    >>> inch, saw = dado_sets()["8 in set, inch sizes"], SawLimits(read_length("13/16 in"), read_length("8 in"))
    >>> choice = nearest_stack(read_length("0.709 in"), inch, saw)
    >>> [write_brief(piece, INCH_STYLE, decimal=True) for piece in (*choice.best.chippers, *choice.best.shims)]
    ['0.125 in', '0.125 in', '0.125 in', '0.0625 in', '0.02 in']
    >>> choice.error == -read_length("0.0015 in"), choice.next_error == -read_length("0.00175 in")
    (True, True)
    >>> nearest_stack(read_length("7/8 in"), inch, saw)
    Traceback (most recent call last):
    shoplib.model.dado_stack.CannotStack: the maker of this saw allows a stack of 13/16 in, and this cut is 7/8 in \
wide: cut it in two passes with a narrower stack, or with a router.
    """
    _refuse(target, owned, saw, style)
    ranked = sorted(
        (stack for stack in stacks(owned).values() if stack.width <= saw.widest),
        key=lambda stack: (abs(stack.width - target), -stack.width),
    )
    return StackChoice(target, ranked[0], ranked[1] if len(ranked) > 1 else None)


def _pieces(stack: Stack) -> tuple[int, int]:
    return len(stack.shims), len(stack.chippers)


def _refuse(target: int, owned: DadoSet, saw: SawLimits, style: Style) -> None:
    def text(length: int) -> str:
        return write_brief(length, style)

    wanted = f"this cut is {text(target)} wide"
    if not saw.widest:
        raise CannotStack(
            f"the maker of this saw allows no dado set, and {wanted}: cut it in passes, or with a router."
        )
    if owned.diameter > saw.diameter:
        raise CannotStack(
            f"the maker of this saw allows a dado set of {text(saw.diameter)} across, and this one is "
            f"{text(owned.diameter)}: it may not go on."
        )
    if target > saw.widest + NEAR:
        raise CannotStack(
            f"the maker of this saw allows a stack of {text(saw.widest)}, and {wanted}: "
            "cut it in two passes with a narrower stack, or with a router."
        )
    narrowest = 2 * owned.outer
    if target < narrowest - NEAR or narrowest > saw.widest:
        raise CannotStack(
            f"the narrowest stack of this set is {text(narrowest)}, its two outer cutters, and {wanted}: "
            "cut it with a single blade, or with a router."
        )
    widest = largest_fitting(stacks(owned), saw.widest)
    if target > widest + NEAR:
        raise CannotStack(
            f"the widest stack that this set makes is {text(widest)}, and {wanted}: cut it in two passes, "
            "the second with the fence moved."
        )
