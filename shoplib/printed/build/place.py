"""The steps where the case meets the building: outside finish, stand, hang or roll, level, and the load at the end."""

from collections.abc import Iterable

from shoplib.documents.cautions import (
    ANCHOR,
    CASTERS,
    DRAWERS,
    LIFTING,
    PULL_OUT,
    RULES,
    WALL,
    hangs,
    has_drawers,
    on_casters,
)
from shoplib.documents.fixings import anchoring, hanging
from shoplib.documents.standing import standing_words
from shoplib.lists.alike import told_once
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, ToTick, Words


def finish_outside() -> list[Block]:
    """Before it stands where no brush reaches it.

    >>> len(finish_outside()[0].lines)
    2
    """
    return [ToTick((
        "Sand off glue and pencil marks, ease the sharp edges, and finish the outside now: once the case stands in its "
        "place, its sides and its back may not be reached any more.",
        "Let it cure as its label says. Rags soaked with oil finish can catch fire by themselves: spread them out to "
        "dry, outdoors, or keep them under water in a closed tin.",
    ))]


def place(cabinet: Cabinet, findings: Iterable[Finding]) -> list[Block]:
    """Into its place, level and true, before anything is measured for boxes and fronts.

    >>> [type(block).__name__ for block in place(Cabinet("no boards", (), {}), ())]
    ['Framed', 'ToTick']
    """
    space = tuple(told_once([f.text for f in findings if f.check == "space" and f.level == "note"]))
    if hangs(cabinet):
        cautions, lines = (WALL, LIFTING), _hung()
    elif on_casters(cabinet):
        cautions, lines = (CASTERS, LIFTING), _rolled(cabinet)
    else:
        cautions, lines = (ANCHOR, LIFTING), _stood(cabinet)
    checked = (
        "Measure the diagonals at the front once more, here where it stays: a wall or a floor that is not flat pulls a "
        "case out of square, and the drawers are made for what you measure next."
    )
    return [
        Framed(tuple(Words(text, grave=number == 0) for number, text in enumerate(cautions))),
        *([Bullets(hanging(cabinet).lines)] if hangs(cabinet) else []),
        ToTick((*space, *lines, checked)),
    ]


def _hung() -> tuple[str, ...]:
    return (
        "Find the studs, or solid masonry, and mark them. Look for cables and pipes before you drill.",
        "Screw a straight level batten to the wall where the underside of the case will be: it carries the weight "
        "while two people set the case on it and drive the screws through the rail.",
        "Shim between wall and rail, at the screws, until the case is not bent: sight along its front edges.",
    )


def _rolled(cabinet: Cabinet) -> tuple[str, ...]:
    return (
        "Lay the empty case on its back with two people, and screw the casters under it, those with locks in front. "
        "Stand it up again and lock them.",
        "Set it where the floor is level, and shim under a caster that hangs free: the case is measured standing true.",
        *anchoring(cabinet),
    )


def _stood(cabinet: Cabinet) -> tuple[str, ...]:
    feet = any(fitting.what == "foot" for fitting in cabinet.hardware)
    level = (
        "Level it with its feet" if feet else
        "Level it: push shims, thin wedges of wood in pairs, under its low corners"
    )
    return (
        *(("Screw the feet under the case.",) if feet else ()),
        *standing_words(cabinet),
        f"{level}, first from side to side, then from front to back, with a level on the bottom and one on a side.",
        "All corners must bear. Cut the shims off flush.",
        *anchoring(cabinet),
    )


def load(cabinet: Cabinet, in_use: Iterable[Finding]) -> list[Block]:
    """Loaded step by step, from below, with a hand on the case.

    >>> load(Cabinet("no boards", (), {}), ())[-1].lines[0]
    'Keep children and other people away, and do not stand where it would fall.'
    """
    tips = told_once([finding.text for finding in in_use if finding.check == "tipping"])
    always = [WALL] if hangs(cabinet) else [CASTERS] if on_casters(cabinet) else [ANCHOR]
    if has_drawers(cabinet):
        always.append(DRAWERS)
    if any(board.role == "panel" for board in cabinet.boards):
        always.append(PULL_OUT)
    drawers = (
        "Put in half of what it will carry, the heavy things lowest. Open the drawers one by one, all the way, and "
        "hold the case with the other hand: does it stay, does each drawer run free?",
    ) if has_drawers(cabinet) else ("Put in half of what it will carry, the heavy things lowest.",)
    return [
        Framed(tuple(Words(text, grave=number == 0) for number, text in enumerate((*tips, *always, RULES)))),
        ToTick((
            "Keep children and other people away, and do not stand where it would fall.",
            *drawers,
            "Then the rest. Look at shelves, bottoms and fastenings again after a day, and after a week.",
        )),
    ]
