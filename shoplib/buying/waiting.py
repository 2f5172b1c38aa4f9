"""What must be measured on the case as built before a thing is bought, and before it is cut."""

from collections.abc import Iterable

from shoplib.lists.alike import told_of_each
from shoplib.model.board import BOXES, CASE, FRONTS, Board
from shoplib.model.solved import Awaited, Cabinet
from shoplib.words.naming import and_list

STANDS, HANG = "the case stands and is measured", "the boxes hang and the openings are measured again"
"""What the boards of stages 2 and 3 wait for, and what those of stage 3 wait for once the openings were read."""


def depths_of(bays: Iterable[str], cabinet: Cabinet) -> str:
    """The depths, still unmeasured, of these bays; empty where all are measured.

    >>> case = Cabinet("case", (), {}, waiting=(Awaited(2, "depth", "bay 1", "from its front edge"),))
    >>> depths_of(["bay 1"], case), depths_of(["bay 2"], case)
    ('the depth of bay 1, from its front edge', '')
    """
    bays = set(bays)
    return told(one for one in cabinet.waiting if one.what == "depth" and one.of in bays)


def stage_waits(stages: Iterable[int], cabinet: Cabinet) -> str:
    """All that the boards of these stages wait for; empty where nothing is left to measure, and for the case itself.

    >>> front = Awaited(3, "opening", "bay 1 drawer 1", "front and back")
    >>> stage_waits([3], Cabinet("case", (), {}, waiting=(front,)))
    'the opening of bay 1 drawer 1, front and back'
    >>> stage_waits([3], Cabinet("read once", (), {}, again=(front,)))
    'again the opening of bay 1 drawer 1, front and back'
    """
    stages = set(stages)
    if CASE in stages:
        return ""
    first = told(one for one in cabinet.waiting if one.stage in stages)
    again = told(cabinet.again) if _only_fronts(stages) else ""
    return "; ".join([*([first] if first else []), *([f"again {again}"] if again else [])])


def not_before(stages: Iterable[int], cabinet: Cabinet) -> str:
    """What must have been done before anything of these stages is cut; nothing where the case itself is among them.

    >>> case = Cabinet("case", (), {}, waiting=(Awaited(2, "depth", "bay 1", "from its front edge"),))
    >>> not_before([2, 3], case), not_before([3], case), not_before([1, 2], case)
    ('the case stands and is measured', '', '')
    >>> read = Cabinet("case", (), {}, again=(Awaited(3, "opening", "bay 1 drawer 1", "front and back"),))
    >>> not_before([3], read), not_before([2], read)
    ('the boxes hang and the openings are measured again', '')
    """
    stages = set(stages)
    if CASE in stages:
        return ""
    if stages & {one.stage for one in cabinet.waiting}:
        return STANDS
    return HANG if cabinet.again and _only_fronts(stages) else ""


def cut_waits(stage: int, cabinet: Cabinet) -> str:
    """What must have been done before the saw cuts the boards of one stage; nothing for the case itself.

    Fronts wait until the boxes hang, whether the openings were read once or not at all: slides draw uprights in.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> box = Board("box back", "bay 1 drawer 1", 2, "ply", 9, 9, 9, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> readings = Awaited(2, "opening", "bay 1 drawer 1", "front"), Awaited(3, "opening", "bay 1 drawer 1", "front")
    >>> [cut_waits(stage, Cabinet("case", (box,), {}, waiting=readings)) for stage in (1, 2)]
    ['', 'the case stands and is measured']
    >>> cut_waits(3, Cabinet("case", (box,), {}, waiting=readings))
    'the boxes hang and the openings are measured again'
    >>> cut_waits(3, Cabinet("doors alone", (), {}, waiting=readings))
    'the case stands and is measured'
    """
    first = not_before([stage], cabinet)
    hung = stage == FRONTS and any(board.stage == BOXES for board in cabinet.boards)
    return HANG if first and hung else first


def is_about(reading: Awaited, boards: Iterable[Board], cabinet: Cabinet) -> bool:
    """Whether it is of one of these boards, of its drawer or of its bay; an overlay front has one width with all others
    of its bay, so it waits for the openings of all of these.

    >>> from shoplib.model.part_of import PartOf
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> panel = Board("pull-out panel", "bay 2 pull-out", 2, "ply", 9, 9, 9, place, part_of=PartOf(2, "pull-out"))
    >>> case = Cabinet("case", (panel,), {})
    >>> [is_about(Awaited(2, "opening", of, "front"), [panel], case) for of in ("bay 2 pull-out", "bay 1 drawer 1")]
    [True, False]
    """
    boards = tuple(boards)
    parts = [board.part_of for board in boards if board.part_of]
    overlay = cabinet.project is not None and cabinet.project.fronts.kind == "overlay"
    bays = {board.part_of.bay for board in boards if board.role == "front"} if overlay else set()
    column = {board.part_of.opening for board in cabinet.boards if board.role == "front" and board.part_of.bay in bays}
    return reading.of in column or any(reading.of in (part.opening, part.bay_name) for part in parts)


def cut_together_waits(stage: int, boards: Iterable[Board], cabinet: Cabinet) -> str:
    """What must have been done before the saw cuts these boards of one stage, which are laid out together.

    Nothing where all that they are made by was read, though other boards of their stage still wait: their sizes, and so
    where they lie on their sheets, change no more.
    """
    boards = [board for board in boards if board.stage == stage]
    readings = [one for one in (*cabinet.waiting, *cabinet.again) if one.stage == stage]
    read = all(board.part_of and board.part_of.opening for board in boards) and not any(
        is_about(one, boards, cabinet) for one in readings
    )
    return "" if read else cut_waits(stage, cabinet)


def turn_at_the_saw(stage: int, stages: Iterable[int], cabinet: Cabinet) -> int:
    """The stage with which boards of one are cut, where these `stages` are laid out together.

    What waits is cut in its own turn; what waits for nothing goes with the first.

    >>> read = Cabinet("case", (), {}, again=(Awaited(3, "opening", "bay 1 drawer 1", "front and back"),))
    >>> [turn_at_the_saw(stage, (1, 2, 3), read) for stage in (1, 2, 3)]
    [1, 1, 3]
    """
    return stage if cut_waits(stage, cabinet) else min(stages)


def _only_fronts(stages: set[int]) -> bool:
    """What serves the boxes too is not kept for the fronts."""
    return FRONTS in stages and BOXES not in stages


def told(readings: Iterable[Awaited]) -> str:
    """Alike readings as one, and these in one line."""
    told = told_of_each(one.text for one in readings)
    return "; ".join(told) if any("," in text for text in told) else and_list(told)
