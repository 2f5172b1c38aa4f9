"""What goes on the arbor at the practice bench: a width as it is typed, or what a set of cutters comes nearest to."""

from dataclasses import dataclass

from shoplib.measure import INCH, Style, write_brief
from shoplib.model.dado_stack import SawLimits, Stack, StackChoice, nearest_stack
from shoplib.practice.session import WIDEST
from shoplib.tables.dado_sets import DadoSet, dado_sets
from shoplib.words.naming import and_list

ANY = "any, as wide as is typed"
"""What stands in the list where no set is chosen."""

SAW = SawLimits(WIDEST, 8 * INCH)
"""What the bench's own saw takes. Manuals of saws give that much (read); the manual of a real one decides."""


def sets_for(unit: str, own: DadoSet | None = None) -> dict[str, DadoSet | None]:
    """The sets that can be chosen, by name: none, the learner's own, then those of the workbook, in this unit first.

    >>> list(sets_for("mm"))
    ['any, as wide as is typed', '200 mm set, millimetre sizes', '8 in set, inch sizes']
    """
    known = sorted(dado_sets().values(), key=lambda each: each.unit != unit)
    return {ANY: None, **({own.name: own} if own else {}), **{each.name: each for each in known}}


@dataclass(frozen=True, slots=True)
class Arranged:
    """A stack of a set: what lies on the arbor, in a sentence, and what else the set comes nearest to."""

    on: Stack
    said: str
    other: Stack | None
    other_said: str


def arranged(target: int, owned: DadoSet, style: Style, second: bool = False) -> Arranged:
    """The arrangement nearest to `target` (ticks), or with `second` the next best.

    Raises CannotStack where this saw may not or the set cannot.

    >>> from shoplib.measure import INCH_STYLE, read_length
    >>> inch = dado_sets()["8 in set, inch sizes"]
    >>> print(arranged(read_length("0.709 in"), inch, INCH_STYLE).said)
    Outer cutters 2 x 0.125 in; chippers 0.125 in, 0.125 in, 0.125 in and 0.0625 in; shim 0.02 in: 0.7075 in, \
0.0015 in narrower than wanted.
    """
    choice: StackChoice = nearest_stack(target, owned, SAW, style)
    on, other = (choice.next_best, choice.best) if second and choice.next_best else (choice.best, choice.next_best)
    return Arranged(on, _said(on, target, style), other, _short(other, target, style) if other else "")


def _said(stack: Stack, target: int, style: Style) -> str:
    parts = [f"Outer cutters 2 x {_text(stack.outer, style)}"]
    for name, pieces in (("chipper", stack.chippers), ("shim", stack.shims)):
        if pieces:
            parts.append(f"{name}{'s' * (len(pieces) > 1)} {and_list([_text(piece, style) for piece in pieces])}")
    return f"{'; '.join(parts)}: {_short(stack, target, style)}."


def _short(stack: Stack, target: int, style: Style) -> str:
    off, width = stack.width - target, _text(stack.width, style)
    if not off:
        return f"{width}, just what is wanted"
    return f"{width}, {_text(abs(off), style)} {'wider' if off > 0 else 'narrower'} than wanted"


def _text(ticks: int, style: Style) -> str:
    return write_brief(ticks, style, decimal=True)
