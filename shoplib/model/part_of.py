"""What a board is part of: the bay it stands in, and which drawer, pull-out, strip or shelf of that bay."""

from dataclasses import dataclass
from typing import Literal


def bay_name(number: int) -> str:
    """How a bay is called, counted from the left.

    >>> bay_name(2)
    'bay 2'
    """
    return f"bay {number}"


@dataclass(frozen=True, slots=True)
class PartOf:
    """Bay (from 1, from the left), and what stands there: its `number` counts from the bottom up, from 1; 0 for the one
    pull-out of its bay. `place` counts boxes side by side in one opening, from the left; 0 where it has one.

    >>> PartOf(1, "drawer", 2, 1).name, PartOf(1, "drawer", 2, 1).opening, PartOf(2, "pull-out").in_bay
    ('bay 1 drawer 2.1', 'bay 1 drawer 2', 'pull-out')
    """

    bay: int
    what: Literal["drawer", "pull-out", "strip", "shelf", "loose shelf"]
    number: int = 0
    place: int = 0

    @property
    def bay_name(self) -> str:
        """The bay, as its depth is measured by."""
        return bay_name(self.bay)

    @property
    def in_bay(self) -> str:
        """What it is called within its bay."""
        return f"{self._row}.{self.place}" if self.place else self._row

    @property
    def name(self) -> str:
        """What it is called in the case: the group of its boards, or the name of its only one."""
        return f"{self.bay_name} {self.in_bay}"

    @property
    def opening(self) -> str:
        """What its opening is measured by, which boxes side by side share; empty for a shelf, which waits for none."""
        return "" if self.what in ("shelf", "loose shelf") else f"{self.bay_name} {self._row}"

    @property
    def _row(self) -> str:
        return f"{self.what} {self.number}" if self.number else self.what
