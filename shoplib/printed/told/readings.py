"""What must be read from the case as built before a stage is cut, with room to write it, and what is printed anew."""

import re
from collections.abc import Sequence

from shoplib.documents.to_measure import planned_depths, planned_openings
from shoplib.lists.writing import Writing
from shoplib.model.board import FRONTS
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Beside, Block, Framed, ToFillIn, Words

_ROOMS = ("front", "back")

_LINES = 4
"""So many lines to fill in stand in one box at most: the end of a page parts no box."""

_PLANNED = (
    "Do not cut this stage before you have measured the case as built, written what you read into the project "
    "(to_measure.toml has a line for each), planned anew and printed this again: the sizes below are the planned ones."
)
NEW_PAGES = (
    "Once measured, print anew only what the readings change: of the plan set cut list, what to buy, sheets and boards "
    "of stages 2 and 3, drawers, fronts, hardware and build order; the labels of stages 2 and 3, the story stick and "
    "the templates. Sizes and cuts of the boards of stage 1 stay as they were: keep their pages and labels, with the "
    "older fingerprint. Only where slides and runners go on them, the new hardware pages tell."
)
"""What the readings change, and so what is printed again; tests hold it against what does change."""


def to_measure_boxes(stage: int, cabinet: Cabinet) -> list[Block]:
    """What must be measured before a stage is cut, under a warning; nothing where nothing is."""
    boxes = boxes_to_fill_in(stage, cabinet)
    waits = any(waiting == stage for waiting, _ in cabinet.waiting)
    return [Framed((Words(_PLANNED if waits else _again(cabinet), grave=True),)), *boxes] if boxes else []


def _again(cabinet: Cabinet) -> str:
    """The sizes are those of a reading, but of one from before the boxes hung."""
    return (
        "Do not cut this stage before the boxes hang and each opening is measured again: the sizes below follow what "
        f"you read before. {differs(cabinet)}"
    )


def differs(cabinet: Cabinet) -> str:
    """What is done with a second reading: a project holds one, and paper is where they are compared."""
    step = Writing(cabinet.style).length(cabinet.style.step)
    return (
        f"Where a reading differs by more than {step} from the first one, write it over that one in the project, plan, "
        "and print stage 3 again; boxes that are cut stay as they are."
    )


def readings(stage: int, cabinet: Cabinet) -> list[str]:
    """What is read before a stage is cut: for the first time, or again.

    >>> readings(1, Cabinet("nothing", (), {}))
    []
    """
    return [*(text for waiting, text in cabinet.waiting if waiting == stage),
            *(cabinet.again if stage == FRONTS else ())]


def boxes_to_fill_in(stage: int, cabinet: Cabinet) -> list[Block]:
    """Each reading that a stage waits for, with room to write it.

    Behind each stands what was planned, so that a reading far from it is read again; or what was read before. An
    opening has room for its two readings.
    """
    planned = _planned(cabinet)
    boxes: dict[str, list[str]] = {}
    for text in readings(stage, cabinet):
        what, of, place, how = _READING.fullmatch(text).groups()
        size = planned.get(f"{what}{of}{place}", "")
        boxes.setdefault(f"{what.capitalize()}{how}", []).append(f"{place}{size}")
    parted = [ToFillIn(title, tuple(lines[at:at + _LINES]), rooms=_ROOMS if title.startswith("Opening") else ())
              for title, lines in boxes.items() for at in range(0, len(lines), _LINES)]
    split = min(range(len(parted) + 1), key=lambda at: max(_high(parted[:at]), _high(parted[at:])))
    columns = (tuple(parted[:split]), tuple(parted[split:]))
    return [Beside(tuple(column for column in columns if column))] if parted else []


def _high(boxes: Sequence[ToFillIn]) -> int:
    """How high a column of them is, in lines."""
    return sum(len(box.lines) + 1 for box in boxes)


_READING = re.compile(r"the (opening|depth)( of )([^,]+)(, .*)")
"""A sentence of what waits: what is read, of what, and where."""


def _planned(cabinet: Cabinet) -> dict[str, str]:
    write = Writing(cabinet.style).length
    if not cabinet.waiting and not cabinet.again:
        return {}
    sizes = {f"opening of {name}": ticks for name, ticks in planned_openings(cabinet).items()}
    sizes |= {f"depth of {bay}": ticks for bay, ticks in planned_depths(cabinet).items()}
    told = {what: f" (planned {write(ticks)})" for what, ticks in sizes.items()}
    read = cabinet.project.measured.openings if cabinet.project else {}
    return told | {f"opening of {name}": f" (before: {write(of.front)}, {write(of.back)})" for name, of in read.items()}
