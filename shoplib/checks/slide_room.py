"""Bought slides need their room: what the box leaves beside it, against what the slide takes and forgives."""

from shoplib.checks.as_built import AsBuilt
from shoplib.measure import write_brief
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Finding, Hardware
from shoplib.tables.slides import Slide, slides
from shoplib.words.amounts import how_much


def find_wrong_slide_room(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Each pair of side-mount slides whose room differs from its row by more than the row forgives.

    The room is the opening between the uprights, where it was measured as measured, less the outside width
    of the box; the row asks for twice its `side`, forgives `narrow` more (a box that narrow is shimmed) and
    `wide` less. The amount is by how much the room is off. Undermount slides hold the inside and are not
    judged here.
    """
    found, built = [], AsBuilt(cabinet)
    for group in cabinet.groups:
        pair = [piece for piece in cabinet.hardware if piece.what == "slide" and piece.group == group]
        row = slides().get(pair[0].row) if pair else None
        if row is None or row.holds != "outside":
            continue
        sides = [board.box for board in cabinet.groups[group] if board.role == "box side"]
        if len(pair) == 2 and len(sides) == 2:
            found += _judge(cabinet, group, row, _between(cabinet, built, pair), around(sides))
    return tuple(found)


def _between(cabinet: Cabinet, built: AsBuilt, pair: list[Hardware]) -> int:
    """The clear width between the two uprights that carry the slides."""
    uprights = (built.met(cabinet.by_name[piece.on], piece.group).box for piece in pair)
    left, right = sorted(uprights, key=lambda box: box.low[0])
    return right.low[0] - left.high[0]


def _judge(cabinet: Cabinet, group: str, row: Slide, opening: int, box: Box) -> list[Finding]:
    wanted = 2 * row.side
    over = opening - box.size[0] - wanted
    if -row.wide <= over <= row.narrow:
        return []
    size, takes = how_much(abs(over), cabinet.style), write_brief(wanted, cabinet.style)
    if over > 0:
        level = "warn" if over <= 2 * row.narrow else "stop"
        text = f"{group}: the box is {size} too narrow for its slides, which take {takes} for the pair. "
        mend = "Shim the slides out from the case." if level == "warn" else "Make the box again, that much wider."
    else:
        level = "stop"
        text = f"{group}: the box is {size} too wide for its slides, which take {takes} for the pair. "
        mend = "Make the box that much narrower; slides forgive no box that is too wide."
    names = tuple(board.name for board in cabinet.groups[group] if board.role == "box side")
    return [Finding("slide room", level, names, text + mend, abs(over))]
