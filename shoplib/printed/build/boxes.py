"""The step that makes drawer boxes: those that are made alike, told once."""

from collections.abc import Sequence

from shoplib.building.boxes import AlikeBoxes
from shoplib.building.clamps import clamps_for
from shoplib.building.glue_time import USUAL
from shoplib.buying.screws import planned
from shoplib.lists.butted import under_back
from shoplib.lists.dado_stops import channels
from shoplib.model.board import BOXES
from shoplib.model.solved import Cabinet
from shoplib.printed.build.cutting import pocket_lines
from shoplib.printed.build.fingers import FINGER, fingers
from shoplib.printed.build.words import (
    SAW_AGAIN,
    clamp_table,
    cut_to_size,
    diagonals_expected,
    entry_table,
    screws_told,
)
from shoplib.printed.told.drills import pilot_told
from shoplib.printed.told.on_end import on_end_caution, on_end_ways
from shoplib.printed.told.stopped_cuts import SQUARED, stopped_cautions
from shoplib.printed.typeset.blocks import Beside, Block, Framed, ToFillIn, Together, ToTick, Words
from shoplib.words.naming import and_list, in_short


def box(alike: AlikeBoxes, cabinet: Cabinet, laid: bool = True) -> list[Block]:
    """Drawer boxes that are made alike, from their cuts to their diagonals; no cuts of those that are cut already.

    `laid`: whether the plan set has the table of joint cuts, which stands behind the sheet layouts.

    >>> made = box(AlikeBoxes(("drawer",), (), ()), Cabinet("no boards", (), {}))
    >>> [type(block).__name__ for block in made]
    ['Framed', 'ToTick']
    """
    boards = [cabinet.by_name[name] for name in alike.boards]
    then = (*_dry(cabinet), *_corners(alike), *_bottoms(alike, cabinet), *_to_the_end(len(alike.groups)))
    made = [*_together(alike, cabinet), *_diagonals(alike, cabinet)]
    if cabinet.first_stage > BOXES:
        return [ToTick((cut_to_size(alike.boards, cabinet), *then)), *made]
    cut = [*on_end_ways(boards, cabinet, but=FINGER), *fingers(boards, cabinet)]
    where = " The joint cuts of their stage stand behind the sheet layouts." if laid else ""
    stopped = stopped_cautions(channels(boards))
    first = (f"{cut_to_size(alike.boards, cabinet)} All cuts of one setting on all boxes before the next.{where}",
             *((SQUARED,) if stopped else ()), *pocket_lines(boards, cabinet))
    return [
        Framed((Words(SAW_AGAIN, grave=True), *stopped)), *on_end_caution(boards, cabinet, but=FINGER),
        *([ToTick(first), *cut, ToTick(then)] if cut else [ToTick((*first, *then))]), *made,
    ]


def _dry(cabinet: Cabinet) -> tuple[str, ...]:
    return (
        f"Put one box together dry and try it {_between(cabinet)} before you finish or glue any.",
        "Finish the inside faces, the glue faces masked, as for the case. Keep finish out of the grooves.",
    )


def _between(cabinet: Cabinet) -> str:
    """What a box is tried in: its slides take their room, where it has any."""
    if any(fitting.what == "slide" for fitting in cabinet.hardware):
        return "between its slides"
    runners = any(board.role == "runner" for board in cabinet.boards)
    return "on its runners" if runners else "in its opening"


_CORNERS = {
    "finger": "Fingers: brush glue between all of them, and press with cauls that bear beside the fingers.",
    "pocket screws": "Pocket screws: clamp the corner only while you drive them.",
    "butt": "Butted corners: glue alone does not hold them. Screw or nail them in the clamps, hands away from where a "
            "point may come out.",
}


def _corners(alike: AlikeBoxes) -> list[str]:
    kinds = {joint.kind for go in alike.goes for joint in go.joints}
    return [words for kind, words in _CORNERS.items() if kind in kinds]


def _bottoms(alike: AlikeBoxes, cabinet: Cabinet) -> list[str]:
    """A bottom floats in its grooves; one that runs under the back is screwed to it when the corners are dry."""
    lines = []
    if any(cabinet.by_name[entry.board].role == "box bottom" for entry in alike.entries):
        lines.append("The bottom goes into its grooves without glue and may move in them.")
    if any(bottom.name in alike.boards for bottom, _ in under_back(cabinet)):
        lines.append(f"Where the bottom runs under the back, fix it up into the back's lower edge when the corners are "
                     f"dry, {_up_into_back(alike, cabinet)}.")
    return lines


def _up_into_back(alike: AlikeBoxes, cabinet: Cabinet) -> str:
    """With which screws of each box, through which holes; a solid bottom moves, and wants slots (common practice, no
    source).
    """
    needs = [need for need in planned(cabinet) if need.use == "box bottoms" and need.passed.name in alike.boards]
    if not needs:
        return "with nails of your choice"
    counts: dict[int, list[str]] = {}
    for need in needs:
        counts.setdefault(need.count, []).append(need.passed.group)
    one = {need.into.group: need for need in needs}
    told = "; ".join(
        f"{screws_told([one[groups[0]]], cabinet)} in {'each box' if len(counts) == 1 else and_list(in_short(groups))}"
        for groups in counts.values()
    )
    solid = any(cabinet.sheets[need.passed.sheet].kind == "solid" for need in needs)
    slots = " First file each hole of the bottom to a slot three times as long from front to back: the bottom is " \
        "solid and grows that way." if solid else ""
    return (
        f"with {told}, through the holes that the drawing of the bottom gives, the pilot holes "
        f"{pilot_told(needs, cabinet)}. They go in straight, your other hand well away from the face.{slots}"
    ).removesuffix(".")


def _to_the_end(count: int) -> tuple[str, ...]:
    return (
        f"{'One box at a time' if count > 1 else 'Glue it'} on a flat surface; make the diagonals equal before the "
        "glue sets, and see that it lies without rocking.",
        "Outside, a thin coat or wax is enough: thick finish eats the room beside the box.",
    )


def _together(alike: AlikeBoxes, cabinet: Cabinet) -> list[Block]:
    """How the boards go together, and with which clamps; nothing where no order brings them together."""
    if not alike.goes:
        return []
    joints = sum(len(go.joints) for go in alike.goes)
    minutes = joints * USUAL.a_joint + USUAL.clamping
    group = cabinet.by_name[alike.entries[0].board].group
    title = "one box" if len(alike.groups) > 1 else "the box"
    clamps = clamp_table([(title, clamps_for(go, cabinet)) for go in alike.goes], cabinet, group)
    return [Together((
        Words(f"{joints} joints a box: about {minutes} of the {USUAL.open_time} minutes that the glue stays open "
              "(common practice, no source; its label decides). Each box goes together in the order of this table:"),
        entry_table(alike.entries, cabinet, group), *([clamps] if clamps.rows else []),
    ))]


def _diagonals(alike: AlikeBoxes, cabinet: Cabinet) -> list[Block]:
    expected = diagonals_expected(cabinet, "box", alike.boards)
    if not expected:
        return []
    return [Together((Words(f"{expected} Write both of each box down before its glue sets:"), *_room(alike.groups)))]


def _room(groups: Sequence[str]) -> list[Block]:
    """Room to write the diagonals of each box, in two columns where there are several."""
    lines = [f"{group}, one and the other:" for group in groups]
    half = -(-len(lines) // 2) if len(lines) > 3 else len(lines)
    boxes = [ToFillIn("Diagonals.", tuple(lines[at:at + half])) for at in range(0, len(lines), half)]
    return [Beside(tuple((one,) for one in boxes))] if len(boxes) > 1 else list(boxes)
