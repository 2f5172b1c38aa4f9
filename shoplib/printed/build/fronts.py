"""The last steps at the cabinet: strips, fronts with gap spacers, pulls, loose shelves."""

from collections.abc import Callable

from shoplib.building.gaps import open_gaps
from shoplib.building.spacers import gap_spacers
from shoplib.buying.laid import LaidJob
from shoplib.documents.hardware_page import waste_behind
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.hardware_places import pull_holes
from shoplib.model.solved import Cabinet, Hardware
from shoplib.printed.build.called_for import template_numbers, templates_called
from shoplib.printed.build.words import SAW_AGAIN, names_in_short
from shoplib.printed.told.drills import clearance_told
from shoplib.printed.told.front_spacers import spacers_set
from shoplib.printed.told.solid_wood import to_size
from shoplib.printed.told.spacer_table import spacer_table
from shoplib.printed.true_scale.template import PULLS
from shoplib.printed.typeset.blocks import Block, Framed, Table, Together, ToTick, Words
from shoplib.words.naming import and_list, boards_in_short, capital, in_short


def strips(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """Strips between the drawers, cut to the opening as measured.

    >>> [type(block).__name__ for block in strips((), Cabinet("no boards", (), {}))]
    ['Framed', 'ToTick']
    """
    return [Framed((Words(SAW_AGAIN, grave=True),)), ToTick((
        f"Cut each to its own opening as measured: {names_in_short(names, cabinet)}. Try it in; it must not push the "
        "uprights apart.",
        "Fix it with the drawers above and below it shut, the same gap over and under it.",
    ))]


def fronts(names: tuple[str, ...], cabinet: Cabinet, *jobs: LaidJob) -> list[Block]:
    """Fronts set by spacers of the gap, from the bottom up; `jobs` say which are glued up from staves.

    >>> [type(block).__name__ for block in fronts((), Cabinet("no boards", (), {}))]
    ['Framed', 'ToTick']
    """
    boards = [cabinet.by_name[name] for name in names]
    edged = [board for board in boards if board.edging]
    held = [h for h in cabinet.hardware if h.what == "front screws" and h.screws]
    bored = any(h.what == "pull" for h in cabinet.hardware)
    lines = (
        f"Cut from the new sizes: {boards_in_short(boards)}. Label each at once, and mark its upper edge.",
        *to_size(boards, cabinet, *jobs),
        *((f"Glue the edging on {boards_in_short(edged)}, trim it flush, ease the edges.",) if edged else ()),
        f"{_set_out(cabinet)} Press each front to its box with double-sided tape or clamps.",
        *_stand_on(boards, cabinet),
        *(_holes(held, cabinet) if held else ()),
        "Open it with the front on it, clamp the two with cauls, drill pilot holes from inside, and drive one screw. "
        f"Shut it, look at the gaps, correct, then drive {_rest(held)}.",
        f"When all gaps are even, number the fronts.{'' if bored else f' {_FINISH}'}",
    )
    head, rows = spacer_table(gap_spacers(cabinet), Writing(cabinet.style))
    spacers = [Together((Words("Gap spacers to cut:"), Table(head, rows, (2,))))] if rows else []
    return [_careful(held, cabinet), ToTick(lines), *spacers]


def _careful(held: list[Hardware], cabinet: Cabinet) -> Framed:
    long = [Words(
        f"Screws from inside into the fronts, no longer than these: {_screws(held, cabinet)}. A longer one comes out "
        "of the face that shows, into the hand that holds it. Keep the hand away from where the point comes.",
        grave=True,
    )] if held else []
    return Framed((Words(SAW_AGAIN, grave=True), *long))


def _holes(held: list[Hardware], cabinet: Cabinet) -> tuple[str, ...]:
    """Where the screws of each front go: how many, and how they are spread (common practice, no source)."""
    ways: dict[str, list[str]] = {}
    for fitting in held:
        ways.setdefault(_spread(fitting, cabinet), []).append(fitting.group)
    told = "; ".join(f"{and_list(in_short(groups))}: {way}" for way, groups in ways.items())
    return (
        f"Screws of each front (common practice, no source): {told}. In the box front bore clearance holes "
        f"{clearance_told([screw.gauge for fitting in held for screw in fitting.screws], cabinet)} across, so that the "
        "screw draws the front up; keep clear of the pull.",
    )


def _spread(fitting: Hardware, cabinet: Cabinet) -> str:
    count = sum(screw.count for screw in fitting.screws)
    if cabinet.by_name[fitting.on].role == "cleat":
        return f"{count} through the holes of its cleat"
    if cabinet.sheets[cabinet.by_name[fitting.screws[0].into].sheet].kind == "solid":
        return f"{count} on one line at half the height of the front, for solid wood grows up and down from there"
    return "4, one near each corner of the box front" if count == 4 else f"{count}, one near each end"


def _rest(held: list[Hardware]) -> str:
    """What is left of the screws of one front when the first is in."""
    left = {sum(screw.count for screw in fitting.screws) - 1 for fitting in held}
    return "the other" if left == {1} else "the others"


def _screws(held: list[Hardware], cabinet: Cabinet) -> str:
    """Each size of screw, and of which drawers."""
    write = Writing(cabinet.style).length
    sizes: dict[str, list[str]] = {}
    for fitting in held:
        for screw in fitting.screws:
            sizes.setdefault(f"{screw.gauge} x {write(screw.length)}", []).append(fitting.group)
    return "; ".join(f"{size} for {and_list(in_short(groups))}" for size, groups in sizes.items())


_FINISH = "Take them off, finish both faces alike, and put them back."
"""Common practice, no source. Fronts that are bored for pulls are finished after that."""


def _set_out(cabinet: Cabinet) -> str:
    """How the fronts are set: with the spacers that this project has gaps for."""
    spacers = spacers_set(cabinet)
    if not spacers:
        return "Set the fronts from the bottom up by the marks of the story stick."
    return f"Cut the gap spacers of the table and set the fronts from the bottom up, with spacers {spacers}."


def _stand_on(boards: list[Board], cabinet: Cabinet) -> list[str]:
    """How high the fronts begin that no gap lies under: from the underside of the bottom of the case."""
    over = {gap.between[1] for gap in open_gaps(cabinet) if gap.along == "z"}
    floor = next((board.box.low[2] for board in cabinet.boards if board.role == "bottom"), None)
    heights: dict[int, list[Board]] = {}
    for board in boards:
        if board.name not in over and floor is not None:
            heights.setdefault(board.box.low[2] - floor, []).append(board)
    write = Writing(cabinet.style).length
    told = [f"{boards_in_short(some)} {_above(height, write)}" for height, some in sorted(heights.items())]
    return [
        f"No gap lies under these, so clamp a straight batten for them to stand on: {'; '.join(told)}."
    ] if told else []


def _above(height: int, write: Callable[[int], str]) -> str:
    if not height:
        return "flush with the underside of the bottom of the case"
    return f"{write(abs(height))} {'above' if height > 0 else 'below'} the underside of the bottom of the case"


def pulls(cabinet: Cabinet) -> list[Block]:
    """Holes from the template, drilled into waste: through the box front too, with the front on its box.

    A drawer without a front of its own has its pull in the box front, which is bored alone.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> pulls(cabinet)[-1].lines[-1]
    'Screw the pulls on.'
    """
    bored = [board for board in cabinet.boards if pull_holes(board)]
    on_box = any(board.role == "front" for board in bored)
    both = on_box and any(board.role != "front" for board in bored)
    through = "through the front, and the box front where one is behind it" if both else "right through"
    numbers = template_numbers(PULLS, cabinet)
    each = f"{'each of ' if len(numbers) > 1 else ''}{templates_called(numbers)}"
    lines = [
        f"Lay {each} on the boards that it names, its heavy lines on the edges or lines that it names, and prick the "
        "holes. Measure one against the hardware page before you drill any.",
        f"Drill from the face that shows, {'with the front screwed to its box, ' if on_box else ''}{through}, into the "
        "waste board.",
        *([f"When all are bored: {_FINISH[0].lower()}{_FINISH[1:]}"] if on_box else []),
        "Screw the pulls on.",
    ]
    behind = waste_behind("the box front" if both else "the board")
    return [Framed((Words(
        f"{capital(behind)}. Clamp the drawer or the board to the bench, for drilling; never hold it in "
        "the hand. Wear eye protection.", grave=True,
    ),)), ToTick(tuple(lines))]


def loose_shelves(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """What is only laid in.

    >>> len(loose_shelves((), Cabinet("no boards", (), {}))[0].lines)
    1
    """
    return [ToTick((
        f"Lay in {names_in_short(names, cabinet)} on their pins or battens, and see that each bears at all "
        "four corners.",
    ))]
