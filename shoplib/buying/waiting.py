"""What must be measured on the case as built before a thing is bought."""

from collections.abc import Iterable

from shoplib.lists.alike import told_of_each
from shoplib.model.board import BOXES, CASE, FRONTS
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list


def depths_of(groups: Iterable[str], cabinet: Cabinet) -> str:
    """The depths, still unmeasured, of the bays of these drawers and pull-outs; empty where all are measured.

    >>> case = Cabinet("case", (), {}, waiting=((2, "the depth of bay 1, from its front edge"),))
    >>> depths_of(["bay 1 drawer 2"], case), depths_of(["bay 2 pull-out"], case)
    ('the depth of bay 1, from its front edge', '')
    """
    bays = {" ".join(group.split()[:2]) for group in groups}
    texts = [text for _, text in cabinet.waiting if any(text.startswith(f"the depth of {bay},") for bay in bays)]
    return told(texts)


def stage_waits(stages: Iterable[int], cabinet: Cabinet) -> str:
    """All that the boards of these stages wait for; empty where nothing is left to measure."""
    stages = set(stages)
    return told([text for stage, text in cabinet.waiting if stage in stages])


def not_before(stages: Iterable[int], cabinet: Cabinet) -> str:
    """What must have been done before anything of these stages is cut; nothing where the case itself is among them.

    >>> case = Cabinet("case", (), {}, waiting=((2, "the depth of bay 1, from its front edge"),))
    >>> not_before([2, 3], case), not_before([3], case), not_before([1, 2], case)
    ('the case stands and is measured', '', '')
    >>> read = Cabinet("case", (), {}, again=("the opening of bay 1 drawer 1, front and back",))
    >>> not_before([3], read), not_before([2], read)
    ('the boxes hang and the openings are measured again', '')
    """
    stages = set(stages)
    if CASE in stages:
        return ""
    if stages & {stage for stage, _ in cabinet.waiting}:
        return "the case stands and is measured"
    if cabinet.again and FRONTS in stages and BOXES not in stages:
        return "the boxes hang and the openings are measured again"
    return ""


def told(texts: Iterable[str]) -> str:
    """Alike sentences as one, and these in one line."""
    told = told_of_each(texts)
    return "; ".join(told) if any("," in text for text in told) else and_list(told)
