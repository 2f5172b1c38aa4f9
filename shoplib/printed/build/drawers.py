"""The steps from the case as built to drawers that run: measure, slides and runners, boxes, pull-outs."""

from collections.abc import Iterable

from shoplib.building.boxes import AlikeBoxes
from shoplib.building.clamps import clamps_for
from shoplib.building.glue_time import USUAL
from shoplib.building.riding import lies_on_bottom
from shoplib.building.spacers import slide_spacers
from shoplib.buying.screws import Need, estimated
from shoplib.documents.cautions import DRAWERS, PULL_OUT, hangs
from shoplib.documents.hardware_page import apart_words
from shoplib.documents.riding import stop_words
from shoplib.lists.alike_cuts import SCREW_HOLE, alike_cut_words, alike_cuts
from shoplib.lists.butted import under_back
from shoplib.lists.writing import Writing
from shoplib.model.board import BOXES, FRONTS
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.build.called_for import PEGS, SLIDES, template_called
from shoplib.printed.build.fingers import fingers
from shoplib.printed.build.words import (
    SAW_AGAIN,
    clamp_table,
    diagonals_expected,
    entry_table,
    names_in_short,
    screws_told,
)
from shoplib.printed.told.readings import NEW_PAGES, boxes_to_fill_in, differs
from shoplib.printed.told.spacer_table import spacer_table
from shoplib.printed.typeset.blocks import Beside, Block, Framed, Table, ToFillIn, Together, ToTick, Words
from shoplib.words.naming import boards_in_short
from shoplib.words.stages import STAGES


def measure(stage: int, cabinet: Cabinet) -> list[Block]:
    """What is read off the case before the boards of a stage are cut, and how it comes into the plan."""
    first = stage == BOXES
    boxes = boxes_to_fill_in(stage, cabinet)
    asked: tuple[Block, ...] = (
        Framed((Words(
            f"Measure before you cut: no board of stage {stage}, {STAGES[stage]}, is cut before this is filled in.",
            grave=True,
        ), Words(_TAPE if first else _AGAIN))),
        *boxes,
    )
    return [
        *([Together(asked)] if len(boxes) <= _TOGETHER else asked),
        ToTick((
            "Write each reading into to_measure.toml, between its quotes, and copy the lines with their headings to "
            "the end of your project file.",
            _PRINT,
            f"{NEW_PAGES} Put their old pages away, and cut from the new ones.",
        ) if first else (
            f"{_unread_strips(cabinet)}{differs(cabinet)}",
            "Where none differs, cut stage 3 from the pages that you have.",
        )),
    ]


_PRINT = (
    "Plan again and print again: python3 -m shoplib plan, then python3 -m shoplib print, with the name of your project "
    "file. It says what changed."
)


_TOGETHER = 3
"""So many rows of boxes are not parted from what they ask for by the end of a page."""


def _unread_strips(cabinet: Cabinet) -> str:
    """Strips that were not read with the openings of the boxes."""
    waits = any(stage == FRONTS and " strip " in text for stage, text in cabinet.waiting)
    return "Write in the openings of the strips, plan and print again. " if waits else ""


_TAPE = "Measure with a tape or two sliding sticks, at the front edge and at the back, and write down both."
_AGAIN = (
    "Put in every box and pull-out, and shut it. Then read each opening once more: it should be what you wrote for the "
    "boxes. Where it is not, something moved or was drawn in by a screw: find it before you cut a front."
)


def runs(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """Slides, runners and kickers at their heights, by spacers."""
    head, rows = spacer_table(slide_spacers(cabinet), Writing(cabinet.style))
    wood = [
        f"Cut to the case as measured: {names_in_short(names, cabinet)}.",
        f"Screw them, without glue, with {screws_told(_strips(names, cabinet), cabinet)}, so that they can be moved. "
        "On solid wood, whose grain they cross, the front screw stands tight and the others in slots.",
        *apart_words(cabinet),
    ] if names else []
    cautions: list[Block] = [Framed((Words(SAW_AGAIN, grave=True),))] if names else []
    blocks: list[Block] = [*cautions, ToTick((
        *wood,
        *(_BY_SPACERS if rows else ()),
        *([_ON_BOTTOM] if lies_on_bottom(cabinet) else []),
        *_by_template(cabinet),
        *stop_words(cabinet),
    ))]
    if rows:
        blocks.append(Together((Words("Spacers to cut:"), Table(head, rows, (2,)))))
    return blocks


def _by_template(cabinet: Cabinet) -> list[str]:
    called = template_called(SLIDES, cabinet)
    return [
        f"Before you drive it, lay {called} along the edge that it names: the line of each slide or runner must meet "
        "the one on the spacer. Where it does not, measure."
    ] if called else []


def _strips(names: tuple[str, ...], cabinet: Cabinet) -> list[Need]:
    """The screws of runners and kickers."""
    return [need for need in estimated(cabinet) if need.passed.name in names]


_BY_SPACERS = (
    "Cut a spacer for each height of the table: left and right then come out alike. Cut it off a long straight "
    "piece, for a short one leaves the hand no room at the saw. The story stick shows them in true size.",
    "Stand the spacer on the bottom of the case, rest the slide or runner on it, set it back as the hardware page "
    "says, and drive one screw in a slot at each end, no more. Keep the hand out of the line of the driver's bit.",
    "Work from the top down, so that a spacer never stands on a slide.",
)
_ON_BOTTOM = (
    "What lies on the bottom of the case itself needs no spacer: set it back as the hardware page says. Keep the hand "
    "out of the line of the driver's bit."
)


def box(alike: AlikeBoxes, cabinet: Cabinet, findings: Iterable[Finding]) -> list[Block]:
    """Drawer boxes that are made alike."""
    count = len(alike.groups)
    blocks: list[Block] = [Framed((Words(SAW_AGAIN, grave=True),))]
    boards = [cabinet.by_name[name] for name in alike.boards]
    lines = [
        f"Cut from the new sizes: {boards_in_short(boards)}. All cuts of one setting on all boxes before the next.",
        "Finish the inside faces first, the glue faces masked, as for the case. Keep finish out of the grooves.",
        f"Put one box together dry and try it {_between(cabinet)} before you glue any.",
    ]
    kinds = {joint.kind for go in alike.goes for joint in go.joints}
    if "finger" in kinds:
        lines.append("Fingers: brush glue between all of them, and press with cauls that bear beside the fingers.")
    if "pocket screws" in kinds:
        lines.append("Pocket screws: clamp the corner only while you drive them.")
    if "butt" in kinds:
        lines.append("Butted corners: glue alone does not hold them. Screw or nail them in the clamps, hands away from "
                     "where a point may come out.")
    floats = [entry.board for entry in alike.entries if cabinet.by_name[entry.board].role == "box bottom"]
    if floats:
        lines.append("The bottom goes into its grooves without glue and may move in them.")
    under = [pair for pair in under_back(cabinet) if pair[0].name in alike.boards]
    if under:
        lines.append(
            "Where the bottom runs under the back, fix it up into the back's lower edge when the corners are dry, with "
            f"{screws_told(_under_backs(alike, cabinet), cabinet)} in slots; they go in straight, your other hand "
            "well away from the face."
        )
    lines += [
        f"{'One box at a time' if count > 1 else 'Glue it'} on a flat surface; make the diagonals equal before the "
        "glue sets, and see that it lies without rocking.",
        "Outside, a thin coat or wax is enough: thick finish eats the room beside the box.",
    ]
    joints = sum(len(go.joints) for go in alike.goes)
    cut = fingers(boards, cabinet)
    blocks += [ToTick(tuple(lines[:1])), *cut, ToTick(tuple(lines[1:]))] if cut else [ToTick(tuple(lines))]
    if alike.goes:
        group = cabinet.by_name[alike.entries[0].board].group
        title = "one box" if count > 1 else "the box"
        clamps = clamp_table([(title, clamps_for(go, cabinet)) for go in alike.goes], cabinet, group)
        blocks.append(Together((
            Words(f"{_counted(joints)} Each box goes together in the order of this table:"),
            entry_table(alike.entries, cabinet, group), *([clamps] if clamps.rows else []),
        )))
    expected = diagonals_expected([f for f in findings if {*f.boards} & {*alike.boards}], "the box of")
    if expected:
        lead = Words(f"{expected} Write both of each box down before its glue sets:")
        blocks.append(Together((lead, *_room(alike.groups))))
    return blocks


def _under_backs(alike: AlikeBoxes, cabinet: Cabinet) -> list[Need]:
    """The screws up into the backs of these boxes, of all together."""
    return [n for n in estimated(cabinet) if n.passed.role == "box bottom" and n.passed.name in alike.boards]


def _room(groups: tuple[str, ...]) -> list[Block]:
    """Room to write the diagonals of each box, in two columns where there are several."""
    lines = [f"{group}, one and the other:" for group in groups]
    half = -(-len(lines) // 2) if len(lines) > 3 else len(lines)
    boxes = [ToFillIn("Diagonals.", tuple(lines[at:at + half])) for at in range(0, len(lines), half)]
    return [Beside(tuple((box,) for box in boxes))] if len(boxes) > 1 else list(boxes)


def _counted(joints: int) -> str:
    minutes = joints * USUAL.a_joint + USUAL.clamping
    return (f"{joints} joints a box: about {minutes} of the {USUAL.open_time} minutes that the glue stays open (common "
            "practice, no source; its label decides).")


def _between(cabinet: Cabinet) -> str:
    """What a box is tried in: its slides take their room, where it has any."""
    if any(fitting.what == "slide" for fitting in cabinet.hardware):
        return "between its slides"
    runners = any(board.role == "runner" for board in cabinet.boards)
    return "on its runners" if runners else "in its opening"


def hang_boxes(cabinet: Cabinet) -> list[Block]:
    """Boxes on their slides, one open at a time."""
    slides = any(fitting.what == "slide" for fitting in cabinet.hardware)
    rolls = any(fitting.what == "caster" for fitting in cabinet.hardware)
    fasten = "hung" if hangs(cabinet) else "anchored, or its casters locked" if rolls else "anchored"
    lines = (
        "Screw the slide members to the boxes as the hardware page says, one screw in a slot at each end, and hang the "
        "boxes from the bottom up.",
        "Pull each out and shut it: it runs freely, stands level, and lies even with its neighbours. Shift it in the "
        "slots until it does, then drive the other screws.",
        "A box that binds at one end has a narrower opening there, or slides that are not parallel: shim behind the "
        "slide at the wide end, never force it.",
    ) if slides else (
        "Slide the boxes in, from the bottom up. Wax what they run on.",
        "Pull each out and shut it. Where it binds, look for the shiny spot, and plane or sand only there.",
    )
    return [
        Framed((Words(DRAWERS, grave=True), Words(f"The case is {fasten} before a box is pulled out."))),
        ToTick(lines),
    ]


def pull_outs(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """A panel that stands upright on two slides, its cleat screwed on before it goes in."""
    cleats = [name for name in names if cabinet.by_name[name].role == "cleat"]
    panels = [name for name in names if cabinet.by_name[name].role == "panel"]
    pegs = any(fitting.what == "peg" and fitting.on in panels for fitting in cabinet.hardware)
    lines = [
        f"Cut from the new sizes: {names_in_short(names, cabinet)}.",
        *_screw_holes(names, cabinet),
        *([f"Bore its peg holes from {template_called(PEGS, cabinet)}; the hardware page has their sizes too."]
          if pegs else []),
        f"Finish {names_in_short(panels, cabinet)} all round, both faces alike.",
    ]
    if cleats:
        lines.append(f"Glue and screw on {names_in_short(cleats, cabinet)}, flush with the front edge of the panel and "
                     "square to it: the front is screwed to it.")
    lines += [
        "Set both slides of the panel plumb over one another: it runs hard where they are not parallel. Hang it with "
        "one screw at each end, try it, then drive the rest.",
    ]
    return [Framed((Words(SAW_AGAIN, grave=True), Words(PULL_OUT))), ToTick(tuple(lines))]


def _screw_holes(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    """Holes for the screws that hold a cleat to its panel and a front to its cleat."""
    holes = [cut for cut in alike_cuts(cabinet) if cut.kind == SCREW_HOLE and {b.name for b in cut.boards} <= {*names}]
    return [f"Bore with a waste board behind: {alike_cut_words(cut)}." for cut in holes]
