"""What drawers and pull-outs run on: bought slides, and runners and kickers of wood, with their heights."""

from dataclasses import dataclass

from shoplib.documents.page_section import Section
from shoplib.lists.writing import Writing
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short

_NOT_BOUGHT = ("runner", "kicker")
"""Boards that a drawer runs on."""
_SET = (
    "Make a spacer as high as the column says and rest the slide or runner on it, left and right alike. "
    "Fix one screw of a slide in a slot first, try the drawer, then set the others. Follow the sheet that comes "
    "with the slide where it says otherwise."
)
_STOP = (
    "A stop block is not drawn: a drawer that runs on wood or on its shelf comes right out when it is pulled. Add what "
    "holds it, such as a block or a turn button."
)


@dataclass(frozen=True, slots=True)
class Riding:
    """One slide or runner: what it is, on which board of the case, of which drawer, and where it lies (world)."""

    what: str
    on: str
    group: str
    box: Box


def riding(cabinet: Cabinet) -> list[Riding]:
    """Everything that drawers and pull-outs run on: bought slides, and runners and kickers of wood."""
    found = [Riding(h.row or h.what, h.on, h.group, h.box) for h in cabinet.hardware if h.what == "slide"]
    return found + _of_wood(cabinet)


def _of_wood(cabinet: Cabinet) -> list[Riding]:
    receives = {joint.enters: joint.receives for joint in cabinet.joints}
    return [
        Riding(f"wood {board.role}", receives.get(board.name, ""), _drawer_of(board.name, cabinet), board.box)
        for board in cabinet.boards if board.role in _NOT_BOUGHT
    ]


def _drawer_of(name: str, cabinet: Cabinet) -> str:
    """The drawer that a runner, which is part of the case, is named after."""
    return max((group for group in cabinet.groups if name.startswith(f"{group} ")), key=len, default="case")


def heights(cabinet: Cabinet) -> tuple[tuple[str, int], ...]:
    """What each spacer is for, and its height: of the slides as the plan has them, then of what is made of wood.

    A drawer's left and right runner lie at one height and are told once.
    """
    wood = {
        f"{item.group}: under the {item.what}, above the bottom": item.box.low[2] - _floor(cabinet, item.box)
        for item in _of_wood(cabinet)
    }
    return (*cabinet.spacers, *wood.items())


def slides_section(cabinet: Cabinet, page: Writing) -> Section:
    """Heights from the bottom of the case (the spacer) and setbacks, on the case and on the box."""
    alike: dict[tuple[str, ...], list[str]] = {}
    for item in riding(cabinet):
        upright = cabinet.by_name.get(item.on)
        low, length = item.box.low, item.box.size[1]
        floor = _floor(cabinet, item.box)
        moving = _moving(cabinet, item.group)
        row = (
            item.what,
            page.length(length),
            page.length(low[2] - floor),
            page.length(low[1] - upright.box.low[1]) if upright else "",
            _above(low[2] - moving.low[2], page) if moving else "",
            page.length(low[1] - moving.low[1]) if moving else "",
        )
        alike.setdefault(row, []).append(item.group)
    rows = [(and_list(in_short(dict.fromkeys(groups))), *row) for row, groups in alike.items()]
    return Section(
        "Slides and runners",
        (*((_SET,) if rows else ()), *stop_words(cabinet)),
        ("for", "slide or runner", "length", "spacer: lower edge above the bottom of the case", "set back on the case",
         "lower edge on the box, from its lower edge", "set back on the box"),
        tuple(rows),
    )


def stop_words(cabinet: Cabinet) -> tuple[str, ...]:
    """That a stop is not drawn, where a drawer has no bought slide that holds it."""
    held = {fitting.group for fitting in cabinet.hardware if fitting.what == "slide"}
    free = [board for board in cabinet.boards if board.role == "box side" and board.group not in held]
    return (_STOP,) if free else ()


def _above(ticks: int, page: Writing) -> str:
    """A height from the foot of the box, which a runner may lie below."""
    return page.length(ticks) if ticks >= 0 else f"{page.length(-ticks)} below it"


def _floor(cabinet: Cabinet, box: Box) -> int:
    """The upper face of the bottom of the case under a fitting."""
    under = [b.box.high[2] for b in cabinet.boards if b.role == "bottom" and b.box.high[2] <= box.low[2]]
    return max(under, default=0)


def _moving(cabinet: Cabinet, group: str) -> Box | None:
    """The box of a drawer, or the panel of a pull-out, without its front."""
    boards = [b.box for b in cabinet.groups.get(group, ()) if b.role.startswith("box ") or b.role == "panel"]
    return around(boards) if boards else None
