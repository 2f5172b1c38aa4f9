"""What the dry-fit says of some boards, framed, so that it is read before they are cut."""

from collections.abc import Iterable

from shoplib.documents.before_cutting import LOOK, STOP
from shoplib.lists.alike import told_once
from shoplib.model.solved import Finding
from shoplib.printed.typeset.blocks import Block, Framed, Words


def found_on(names: Iterable[str], findings: Iterable[Finding]) -> list[Block]:
    """The stops and then the things to look at that name one of these boards; nothing where there are none.

    >>> found_on(["shelf"], [Finding("overlap", "stop", ("shelf",), "It is in the way.")])[0].blocks[0].text
    'STOP, do not cut: It is in the way.'
    """
    names, findings = set(names), tuple(findings)
    lines = [
        f"{begins}: {text}" for level, begins in (("stop", STOP), ("warn", LOOK))
        for text in told_once([f.text for f in findings if f.level == level and names.intersection(f.boards)])
    ]
    return [Framed(tuple(Words(line, True) for line in lines))] if lines else []
