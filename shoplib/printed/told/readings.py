"""What must be read from the case as built before a stage is cut, with room to write it, and what is printed anew.

There is room to write at one place, the step of the build order in which it is read: there the case stands before the
reader. All others name that step.
"""

from collections.abc import Sequence

from shoplib.building.order import build_order
from shoplib.documents.to_measure import planned_depths, planned_openings
from shoplib.lists.writing import Writing
from shoplib.model.solved import Awaited, Cabinet
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
    "the templates. Boards of stage 1 stay as they were, in sizes, cuts and labels, and so do the places of slides and "
    "runners on them."
)
"""What the readings change, and so what is printed again; tests hold it against what does change."""

OLD_PAGES = (
    "Once stage 1 is cut, keep its pages and labels, with their older fingerprint, and the pages that you have written "
    "on; all others of the old set go in the bin."
)
"""What is done with the set before: said alike wherever it is told, in the README and on page 08 too."""

WHAT_IT_LEFT = (
    "Once stage 1 is cut, measure all stock that is left, untouched pieces included, and write it into the project "
    'under on_hand in place of what stood there, with already_cut = "case" under [cutting], then plan and print anew: '
    "later stages use it, and nothing is bought twice."
)
"""How the project comes to know what is cut: said alike wherever it is told."""


def to_measure_first(stage: int, cabinet: Cabinet) -> list[Block]:
    """The warning that a stage is not cut before it is measured for, and where that is; nothing where nothing is read.

    >>> to_measure_first(2, Cabinet("nothing to measure", (), {}))
    []
    """
    if not readings(stage, cabinet):
        return []
    waits = any(one.stage == stage for one in cabinet.waiting)
    said = f"{_PLANNED if waits else _again(cabinet)} What is read stands in {measuring_step(stage, cabinet)}."
    return [Framed((Words(said, grave=True),))]


def measuring_step(stage: int, cabinet: Cabinet) -> str:
    """The step in which the readings for a stage are written down. ValueError where none is.

    >>> measuring_step(2, Cabinet("nothing to measure", (), {}))
    Traceback (most recent call last):
    ValueError: 2 is not in list
    """
    steps = [step.measures for step in build_order(cabinet)]
    return f"step {steps.index(stage) + 1} of the build order"


def _again(cabinet: Cabinet) -> str:
    """The sizes are those of a reading, but of one from before the boxes hung."""
    return (
        "Do not cut this stage before the boxes hang and each opening is measured again: the sizes below follow what "
        f"you read before. {differs(cabinet)}"
    )


def differs(cabinet: Cabinet) -> str:
    """What is done with a second reading: fronts and strips are cut to it, and the boxes are held against it.

    >>> differs(Cabinet("case", (), {}))[:56]
    'Where a reading differs by more than 1/64 in from the fi'
    """
    step = Writing(cabinet.style).length(cabinet.style.step)
    return (
        f"Where a reading differs by more than {step} from the first one, write the new ones into the project under "
        "[measured.openings_again] (to_measure.toml has a line for each), with already_cut = "
        '"case and boxes" and, under on_hand, all stock that is left by now, untouched pieces included; then plan, and '
        "print stage 3 again. The first readings stay in the project, for the boxes are cut to them."
    )


def readings(stage: int, cabinet: Cabinet) -> list[Awaited]:
    """What is read before a stage is cut: for the first time, or again.

    >>> front = Awaited(3, "opening", "bay 1 drawer 1", "front and back, and hanging its box")
    >>> [one.of for one in readings(3, Cabinet("read once", (), {}, again=(front,)))]
    ['bay 1 drawer 1']
    """
    return [one for one in (*cabinet.waiting, *cabinet.again) if one.stage == stage]


def boxes_to_fill_in(stage: int, cabinet: Cabinet) -> list[Block]:
    """Each reading that a stage waits for, with room to write it.

    Behind each stands what was planned, so that a reading far from it is read again; or what was read before. An
    opening has room for its two readings.

    >>> boxes_to_fill_in(2, Cabinet("nothing to measure", (), {}))
    []
    """
    boxes: dict[tuple[str, str], list[str]] = {}
    for one in readings(stage, cabinet):
        boxes.setdefault((one.what, one.how), []).append(f"{one.of} ({_known(one, cabinet)})")
    parted = [ToFillIn(f"{what.capitalize()}, {how}", tuple(lines[at:at + _LINES]),
                       rooms=_ROOMS if what == "opening" else ())
              for (what, how), lines in boxes.items() for at in range(0, len(lines), _LINES)]
    split = min(range(len(parted) + 1), key=lambda at: max(_high(parted[:at]), _high(parted[at:])))
    columns = (tuple(parted[:split]), tuple(parted[split:]))
    return [Beside(tuple(column for column in columns if column))] if parted else []


def _high(boxes: Sequence[ToFillIn]) -> int:
    """How high a column of them is, in lines."""
    return sum(len(box.lines) + 1 for box in boxes)


def _known(one: Awaited, cabinet: Cabinet) -> str:
    """What a reading is held against: those of before, or the plan."""
    write = Writing(cabinet.style).length
    if one in cabinet.again:
        read = cabinet.project.measured.openings[one.of]
        return f"before: {write(read.front)}, {write(read.back)}"
    planned = planned_openings(cabinet) if one.what == "opening" else planned_depths(cabinet)
    return f"planned {write(planned[one.of])}"
