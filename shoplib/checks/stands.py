"""A case must stand on more of its depth than its toe room leaves out."""

from shoplib.measure import INCH, share, write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least

USUAL = 4 * INCH
"""Toe room deeper than 4 in, 100 mm, is more than feet take: common practice, no source."""


def find_deep_toe_room(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" where more than a third of the depth hangs over the toe room, a "warn" where it is over 4 in.

    Drawers run out in front, and then the case tips over the edge it stands on. The amount of a stop is what is
    too much, of a warning the toe room. Where the limits lie is common practice, no source.
    """
    base = cabinet.project.base if cabinet.project else None
    sides = [board for board in cabinet.boards if board.role == "side"]
    if base is None or base.kind not in ("toe space", "plinth") or not sides:
        return ()
    style, depth = cabinet.style, sides[0].box.size[1]
    names = tuple(side.name for side in sides)
    room, whole = write_brief(base.setback, style), write_brief(depth, style)
    most = share(depth, 3, style.step)[0]
    if 3 * base.setback > depth:
        over = base.setback - most
        text = (
            f"The toe room is {room} deep and the case {whole}: it stands on its last "
            f"{write_brief(depth - base.setback, style)} and tips forward as its drawers run out. Make base.setback at "
            f"least {at_least(over, style)} less; about 3 in (75 mm) is usual."
        )
        return (Finding("base", "stop", names, text, over),)
    if base.setback > USUAL:
        text = (
            f"The toe room is {room} deep, and feet take about 3 in (75 mm). With its drawers out the case tips "
            "sooner: make base.setback less, or fasten the case to the wall."
        )
        return (Finding("base", "warn", names, text, base.setback),)
    return ()
