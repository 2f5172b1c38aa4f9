"""The slides and runners of a cabinet as a section of a paper: their heights and setbacks."""

from shoplib.building.datum import datum
from shoplib.building.riding import riding
from shoplib.documents.page_section import Section
from shoplib.lists.writing import Writing
from shoplib.model.board import BOX_PARTS
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short

_SET = (
    "Make a spacer as high as the column says and rest the slide or runner on it, left and right alike. "
    "Fix one screw of a slide in a slot first, try the drawer, then set the others. Follow the sheet that comes "
    "with the slide where it says otherwise."
)
_STOP = (
    "A drawer stop is not drawn: a drawer that runs on wood or on its shelf comes right out when it is pulled. Add "
    "what holds it, such as a block or a turn button."
)


def slides_section(cabinet: Cabinet, page: Writing) -> Section:
    """Heights from the bottom of the case (the spacer) and setbacks, on the case and on the box."""
    alike: dict[tuple[str, ...], list[str]] = {}
    floor = datum(cabinet).height
    for item in riding(cabinet):
        upright = cabinet.by_name.get(item.on)
        low, length = item.box.low, item.box.size[1]
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


def _moving(cabinet: Cabinet, group: str) -> Box | None:
    """The box of a drawer, or the panel of a pull-out, without its front."""
    boards = [b.box for b in cabinet.groups.get(group, ()) if b.role in (*BOX_PARTS, "panel")]
    return around(boards) if boards else None
