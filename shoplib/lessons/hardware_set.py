"""The last exercise of hardware layout: the spacers and the gauge that all slides of a side are set with."""

from dataclasses import replace

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_RIGHT
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.hardware_givens import front_gap, front_height, slide_height
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_hardware import lower_edges, small_hardware
from shoplib.lessons.usual_givens import sheet_as_sold
from shoplib.measure import INCH, share
from shoplib.model.board import BOXES, Board
from shoplib.model.box import Box
from shoplib.model.placement import standing_in
from shoplib.model.solved import Cabinet, Gap

_UP, _BACK = ("+z", "+y", "-x"), ("+y", "+z", "+x")


def _givens(draw: Draw) -> list[Given]:
    room = replace(draw.pick("r", "", inch=("1/4 in", "5/16 in"), mm=("6 mm", "8 mm")), called="room under a box")
    rows = {row.name: row for row in (front_height(draw), front_gap(draw), slide_height(draw))}
    box = rows["f"].value - 2 * room.value
    return [
        *rows.values(), room,
        draw.derived("v", "lowest box, lower edge above the bottom", rows["g"].value + room.value),
        draw.derived("H", "boxes, height", box),
        sheet_as_sold(draw),
        draw.pick("t", "fronts, as measured", inch=("41/64 in", "43/64 in"), mm=("16.9 mm", "17.1 mm", "17.3 mm")),
        draw.pick("c", "slide behind the front, by its sheet", inch=("1/16 in", "1/8 in"), mm=("2 mm", "3 mm")),
    ]


def _case(givens: Givens) -> Cabinet:
    """The case with its slides as they are marked on the left side, the spacers between them, and the gauge."""
    case = small_hardware(
        kind="inset", front_height=givens["f"], gap=givens["g"], slide_height=givens["h"], front=givens["t"],
        setback=givens["c"], below=givens["r"],
    )
    boards = [board for board in case.boards if board.group == "case"]
    floor, gaps = case.by_name["bottom"].box.high[2], []
    for number, place in enumerate(lower_edges(case), 1):
        low, high = place.fitting.box.low, place.fitting.box.high
        spacer = Box((low[0], low[1] + INCH, floor), (high[0], high[1] - INCH, low[2]))
        boards += [_piece(f"spacer {number}", spacer, _UP), _piece(f"slide {number}", place.fitting.box, _UP, "runner")]
        gaps.append(Gap((f"spacer {number}", f"slide {number}"), "z", 0))
        if number == 1:
            gauge = Box((low[0], low[1] - place.setback, low[2]), (high[0], low[1], high[2]))
            boards.append(_piece("gauge", gauge, _BACK))
            gaps.append(Gap(("gauge", "slide 1"), "y", 0))
        floor = high[2]
    kept = {board.name for board in boards}
    joints = tuple(joint for joint in case.joints if {joint.enters, joint.receives} <= kept)
    return replace(
        case, boards=tuple(boards), joints=joints, gaps=tuple(gaps), hardware=(), travel=(), sums=(), findings=(),
        spacers=(), waiting=(), project=None,
    )


def _piece(name: str, box: Box, axes: tuple[str, str, str], role: str = "") -> Board:
    placement = standing_in(box, axes)
    length, width, thickness = placement.to_board(box).high
    return Board(name, "layout", BOXES, "box", length, width, thickness, placement, role=role or name.split()[0])


def _half(ticks: int) -> int:
    return share(ticks, 2, 1)[0]


def _lowest(givens: Givens) -> int:
    return givens["v"] + _half(givens["H"] - givens["h"])


def _lowest_lines(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    return (
        f"above and below the slide on the box side: ({text['H']} - {text['h']}) / 2 = "
        f"{say.length(_half(givens['H'] - givens['h']))}",
        f"lowest spacer = {text['v']} + {say.length(_half(givens['H'] - givens['h']))} = {say.length(_lowest(givens))}",
    )


LOWEST = Asked(
    "lowest", "Spacer under the lowest slide", "length", ("spacer 1",), "z",
    (
        Misconception(
            "lowest-middle", lambda g: g["v"] + _half(g["H"]),
            "That goes to the middle of the slide.", "The spacer ends where the slide begins.",
        ),
        Misconception(
            "lowest-box", lambda g: g["v"],
            "That goes to the lower edge of the box.", "The slide lies in the middle of the box side.",
        ),
        Misconception(
            "lowest-not-halved", lambda g: g["v"] + g["H"] - g["h"],
            "That puts the slide at the upper edge of the box side.", "How much of the rest lies below the slide?",
        ),
    ),
    _lowest_lines,
)

BETWEEN = Asked(
    "between", "Spacers between two slides", "length", ("spacer 2", "spacer 3"), "z",
    (
        Misconception(
            "between-slide-forgotten", lambda g: g["f"] + g["g"],
            "That goes from lower edge to lower edge.", "The slide below takes {h} of it.",
        ),
        Misconception(
            "between-gap-forgotten", lambda g: g["f"] - g["h"],
            "That leaves the gap between the fronts out.", "How far is it from one front to the next?",
        ),
    ),
    lambda g, say: (
        f"from slide to slide, lower edge to lower edge: {g.texts['f']} + {g.texts['g']} = "
        f"{say.length(g['f'] + g['g'])}",
        f"spacer = {say.length(g['f'] + g['g'])} - {g.texts['h']} = {say.length(g['f'] + g['g'] - g['h'])}",
    ),
)

GAUGE = Asked(
    "gauge", "Setback gauge", "width", ("gauge",), "y",
    (
        Misconception(
            "gauge-overlay", lambda g: g["c"],
            "That is the setback behind overlay fronts.",
            "An inset front stands in the opening: how much of the depth does it take?",
        ),
        Misconception(
            "gauge-front-only", lambda g: g["t"],
            "That is the front alone.", "What does the sheet of the slide ask for behind the front?",
        ),
        Misconception(
            "gauge-nominal", lambda g: g["T"] + g["c"],
            "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read.",
        ),
    ),
    lambda g, say: (f"{g.texts['t']} + {g.texts['c']} = {say.exact(g['t'] + g['c'])}",),
)

SPACER_SET = SetExercise(
    id="06-spacer-set",
    title="Assemble what you cut: spacers and gauge for the slides",
    question=(
        "Three equal inset fronts {f} high, gap {g} everywhere. Each box is {H} high, the lowest begins {v} above the "
        "bottom, and a slide {h} high lies in the middle of each box side. Fronts measure {t}, and the sheet of the "
        "slide wants it {c} behind them. Here spacers are stacked: one under the lowest slide, one more on each slide "
        "below the next; a gauge sets them all back from the front edge. Each slide is held where its line is on the "
        "plan."
    ),
    givens=_givens,
    case=_case,
    asked=(LOWEST, BETWEEN, GAUGE),
    view=View(FROM_RIGHT, "spacer 1"),
    fits="The spacers fill the spaces between the slides, on the left side and then on the right.",
    hints=(
        "Begin with the box: how much of its side stays free below the slide?",
        "From one slide to the next it is one front and one gap; the slide below takes its own height of that.",
        "The gauge: the front as it measures, and what the sheet of the slide asks for.",
    ),
)
