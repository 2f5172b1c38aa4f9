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
        draw.pick("t", "fronts, as measured", inch=("11/16 in",), mm=("17.1 mm", "17.2 mm", "17.3 mm")),
        draw.pick("c", "slide behind the front, by its sheet", inch=("3/32 in", "5/32 in"), mm=("2 mm", "3 mm")),
    ]


def _case(givens: Givens) -> Cabinet:
    return set_out(small_hardware(
        kind="inset", front_height=givens["f"], gap=givens["g"], slide_height=givens["h"], front=givens["t"],
        setback=givens["c"], below=givens["r"],
    ))


def set_out(case: Cabinet) -> Cabinet:
    """The case with its slides as they are marked on the left side, a spacer to each from the bottom, and the gauge.

    While slides are set, no lower one is in the way, for they begin with the top one. So that all can be seen at once,
    the spacers stand side by side from front to back, each under a piece of its own slide.

    >>> laid = set_out(small_hardware(count=2, kind="inset"))
    >>> sorted(board.name for board in laid.boards if board.group == "layout")
    ['gauge', 'slide 1', 'slide 2', 'spacer 1', 'spacer 2']
    """
    boards = [board for board in case.boards if board.group == "case"]
    floor, gaps, places = case.by_name["bottom"].box.high[2], [], lower_edges(case)
    sheet = case.project.bays[0].drawers.box_sheet
    for number, place in enumerate(places, 1):
        slide = _part(place.fitting.box, number, len(places))
        low, high = slide.low, slide.high
        spacer = Box((low[0], low[1] + INCH, floor), (high[0], high[1] - INCH, low[2]))
        boards += [_piece(f"spacer {number}", spacer, _UP, sheet)]
        boards += [_piece(f"slide {number}", slide, _UP, sheet, "runner")]
        gaps.append(Gap((f"spacer {number}", f"slide {number}"), "z", 0))
        if number == 1:
            gauge = Box((low[0], low[1] - place.setback, low[2]), (high[0], low[1], high[2]))
            boards.append(_piece("gauge", gauge, _BACK, sheet))
            gaps.append(Gap(("gauge", "slide 1"), "y", 0))
    kept = {board.name for board in boards}
    joints = tuple(joint for joint in case.joints if {joint.enters, joint.receives} <= kept)
    return replace(
        case, boards=tuple(boards), joints=joints, gaps=tuple(gaps), hardware=(), travel=(), sums=(), findings=(),
        spacers=(), waiting=(), project=None,
    )


def _part(box: Box, number: int, parts: int) -> Box:
    """One of so many equal parts of a slide, counted from its front end."""
    (x0, y0, z0), (x1, y1, z1) = box.low, box.high
    long = share(y1 - y0, parts, 1)[0]
    return Box((x0, y0 + (number - 1) * long, z0), (x1, y0 + number * long, z1))


def _piece(name: str, box: Box, axes: tuple[str, str, str], sheet: str, role: str = "") -> Board:
    placement = standing_in(box, axes)
    length, width, thickness = placement.to_board(box).high
    return Board(name, "layout", BOXES, sheet, length, width, thickness, placement, role=role or name.split()[0])


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

def _step(givens: Givens, say: Say) -> str:
    return say.length(givens["f"] + givens["g"])


def _step_line(givens: Givens, say: Say) -> str:
    text = givens.texts
    return f"from slide to slide, lower edge to lower edge: {text['f']} + {text['g']} = {_step(givens, say)}"


SECOND = Asked(
    "second", "Spacer under the second slide", "length", ("spacer 2",), "z",
    (
        Misconception(
            "second-gap-forgotten", lambda g: _lowest(g) + g["f"],
            "That leaves the gap between the fronts out.", "How far is it from one front to the next?",
        ),
        Misconception(
            "second-stacked", lambda g: g["f"] + g["g"] - g["h"],
            "That is a piece that would stand on the slide below.", "From where is every spacer counted?",
        ),
    ),
    lambda g, say: (
        _step_line(g, say),
        f"second spacer = {say.length(_lowest(g))} + {_step(g, say)} = {say.length(_lowest(g) + g['f'] + g['g'])}",
    ),
)

THIRD = Asked(
    "third", "Spacer under the third slide", "length", ("spacer 3",), "z",
    (
        Misconception(
            "third-gaps-forgotten", lambda g: _lowest(g) + 2 * g["f"],
            "That leaves the gaps between the fronts out.", "How far is it from one front to the next?",
        ),
        Misconception(
            "third-one-gap", lambda g: _lowest(g) + 2 * g["f"] + g["g"],
            "That counts one gap only.", "How many gaps lie between the first front and the third?",
        ),
        Misconception(
            "third-middle", lambda g: _lowest(g) + 2 * (g["f"] + g["g"]) + _half(g["h"]),
            "That goes to the middle of the slide.", "The spacer ends where the slide begins.",
        ),
    ),
    lambda g, say: (
        f"third spacer = {say.length(_lowest(g))} + 2 x {_step(g, say)} = "
        f"{say.length(_lowest(g) + 2 * (g['f'] + g['g']))}",
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
        "slide wants it {c} behind them. The case lies on its side: every spacer goes from the inside of the bottom to "
        "the lower edge of its slide, and a gauge sets all slides back from the front edge. Each slide is held where "
        "its line is on the plan; so that all three can be seen, they are drawn as short pieces, side by side."
    ),
    givens=_givens,
    case=_case,
    asked=(LOWEST, SECOND, THIRD, GAUGE),
    version=2,
    view=View(FROM_RIGHT, "spacer 1"),
    fits="Every spacer just reaches from the bottom to its slide, on the left side and then on the right.",
    hints=(
        "Begin with the box: how much of its side stays free below the slide?",
        "From one slide to the next, lower edge to lower edge, it is one front and one gap.",
        "All are counted from the bottom: the lowest spacer, and one such step more for each slide.",
        "The gauge: the front as it measures, and what the sheet of the slide asks for.",
    ),
)
