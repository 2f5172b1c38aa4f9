"""Tools of several widths side by side on a panel, with even spaces between and beside them."""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.measure import share
from shoplib.measure.traced import named
from shoplib.model.project import ImpossibleProject


@dataclass(frozen=True, slots=True)
class ToolRow:
    """Where tools hang: `width` of the panel, `tools` their widths in turn, `space` between and before them.

    `lefts` are their left edges from the edge of the panel, `middles` the places of their pegs, each down to a
    step; `rest` what the last space has more than the others. All in ticks.
    """

    width: int
    tools: tuple[int, ...]
    space: int
    rest: int
    lefts: tuple[int, ...]
    middles: tuple[int, ...]


def tool_row(width: int, tools: Sequence[int], step: int) -> ToolRow:
    """Hang `n` tools with n + 1 even spaces: (W - sum of the widths) / (n + 1), down to a whole step.

    The same rule as for pegs on the pull-out's panel: what does not divide goes to the last space (common practice,
    no source). Raises ImpossibleProject where there is no tool, or no space is left between them.

    >>> from shoplib.measure import MM
    >>> row = tool_row(400 * MM, [110 * MM, 50 * MM], MM)
    >>> row.space // MM, [place // MM for place in row.middles]
    (80, [135, 295])
    """
    if not tools:
        raise ImpossibleProject("tools", "no tool is named; write the width of one at least")
    space, rest = share(width - sum(tools), len(tools) + 1, step)
    if space <= 0:
        raise ImpossibleProject("tools", "the tools are together as wide as the panel, and no space is left between")
    space = named(space, "space between tools")
    lefts, middles, at = [], [], 0
    for tool in tools:
        at += space
        lefts.append(at)
        middles.append(at + share(tool, 2, step)[0])
        at += tool
    return ToolRow(width, tuple(tools), space, rest, tuple(lefts), tuple(middles))
