"""How many joints one glue-up may have, by the open time of the glue."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class GlueTime:
    """Minutes of a glue-up. `open_time`: from the first glue spread until it must be closed and clamped; `a_joint`: to
    spread one joint and bring it together; `clamping`: to set the clamps and measure the diagonals.

    >>> GlueTime(open_time=20).joints
    18
    """

    open_time: int = 10
    a_joint: int = 1
    clamping: int = 2

    @property
    def joints(self) -> int:
        """The most joints of one glue-up; one may always be glued."""
        return max(1, (self.open_time - self.clamping) // self.a_joint)


USUAL = GlueTime()
"""Common practice, no source: the labels of common wood glues name about 5 to 15 minutes. The label of the glue that is
used decides, and heat and dry air shorten it."""
