"""What the dry-fit says of some boards, framed, so that it is read before they are cut."""

from collections.abc import Iterable

from shoplib.documents.before_cutting import found_on
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.typeset.blocks import Block, Framed, Words


def framed_on(names: Iterable[str], cabinet: Cabinet, findings: Iterable[Finding]) -> list[Block]:
    """The stops and then the things to look at that name one of these boards; nothing where there are none.

    >>> found = [Finding("overlap", "stop", ("shelf",), "It is in the way.")]
    >>> framed_on(["shelf"], Cabinet("case", (), {}), found)[0].blocks[0].text
    'STOP, do not cut: It is in the way.'
    """
    lines = found_on(names, cabinet, findings)
    return [Framed(tuple(Words(line, True) for line in lines))] if lines else []
