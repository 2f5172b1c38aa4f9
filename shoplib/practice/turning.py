"""The ways in which a finished side can be stood in the case: at its own place or the other one, turned or not."""

from dataclasses import dataclass, replace

from shoplib.model.board import Board
from shoplib.model.placement import standing_in


@dataclass(frozen=True, slots=True)
class Stand:
    """A side at one place: "left side" or "right side", which end is up, and whether its inner face looks in."""

    place: str
    upside_down: bool = False
    inside_out: bool = False

    @property
    def axes(self) -> tuple[str, str, str]:
        """Where u, v and w run. Each turn reverses two of them, so that the board is never mirrored.

        >>> Stand("left side").axes, Stand("left side", upside_down=True).axes
        (('+z', '+y', '-x'), ('-z', '-y', '-x'))
        >>> Stand("right side").axes, Stand("right side", inside_out=True).axes
        (('+z', '-y', '+x'), ('+z', '+y', '-x'))
        """
        outward = self.place == "right side"
        signs = [1, -1 if outward else 1, 1 if outward else -1]
        for turn, other in ((self.upside_down, 0), (self.inside_out, 2)):
            if turn:
                signs[other], signs[1] = -signs[other], -signs[1]
        return tuple(f"{'+' if sign > 0 else '-'}{axis}" for sign, axis in zip(signs, "zyx", strict=True))

    def said(self, own: str) -> str:
        """In words, for a board that was meant for the place `own`.

        >>> Stand("left side", upside_down=True).said("right side")
        'as a left side, turned end for end'
        """
        where = f"as a {self.place}" if self.place != own else "at its own place"
        turns = [("turned end for end", self.upside_down), ("turned inside out", self.inside_out)]
        turned = " and ".join(text for text, done in turns if done)
        return f"{where}, {turned}" if turned else where


def stands(own: str) -> tuple[Stand, ...]:
    """Every way to stand a side that was meant for the place `own`: the least turned first, its own place before.

    >>> len(stands("left side")), stands("left side")[0]
    (8, Stand(place='left side', upside_down=False, inside_out=False))
    """
    other = "left side" if own == "right side" else "right side"
    turns = [(False, False), (True, False), (False, True), (True, True)]
    return tuple(Stand(place, *turn) for turn in turns for place in (own, other))


def stood(board: Board, stand: Stand) -> Board:
    """The same piece of wood, stood so; its name becomes that of the place."""
    box = board.box
    return replace(board, name=stand.place, placement=standing_in(box, stand.axes))
