"""Slides to buy: pairs, by their row and length."""

from collections.abc import Iterator
from decimal import Decimal

from shoplib.buying.line import Line
from shoplib.buying.waiting import STANDS, depths_of
from shoplib.lists.writing import Writing
from shoplib.model.board import BOXES
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


def slide_lines(cabinet: Cabinet) -> Iterator[Line]:
    """One line for each row and length. A slide is as long as its box is deep, so it waits for the depth as built."""
    found: dict[tuple[str, int], list[str]] = {}
    for fitting in cabinet.hardware:
        if fitting.what == "slide":
            found.setdefault((fitting.row, fitting.box.size[1]), []).append(fitting.group)
    for (row, length), groups in found.items():
        waits = depths_of([cabinet.part_of(group).bay_name for group in groups], cabinet)
        locks = cabinet.slides[row].holds == "inside"
        uses = and_list(in_short(groups)) + (", with the catches that hold the box on them" if locks else "")
        yield Line(
            "slide",
            f"{row} {Writing(cabinet.style).length(length)}",
            Decimal(len(groups)) / 2,  # a pair is one left and one right, or the two of a pull-out
            "pair",
            size=(length, 0, 0),
            stage=BOXES,
            waits=waits,
            after=STANDS if waits else "",
            uses=uses,
        )
