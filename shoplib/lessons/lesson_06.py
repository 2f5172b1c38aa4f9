"""The exercises of hardware layout, up the ladder: read off, one step, two steps, another's list, a whole set."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.hardware_effects import hole_off, setback_off, spacer_off
from shoplib.lessons.hardware_givens import (
    case_depth,
    clearance,
    front_as_measured,
    front_gap,
    front_height,
    front_width,
    lowest_spacer,
    pitch,
    slide_height,
)
from shoplib.lessons.hardware_set import SPACER_SET
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.screws_and_pegs import PEGS, RULE, SCREW
from shoplib.lessons.small_hardware import lower_edges, small_hardware
from shoplib.lessons.tess_list import TESS_LIST
from shoplib.lessons.usual_givens import sheet_as_sold
from shoplib.measure import share
from shoplib.model.hardware_places import pull_places

# Read a number off -------------------------------------------------------------------------------


def _edges(givens: Givens | dict[str, int]) -> tuple[int, ...]:
    case = small_hardware(kind="inset", front_height=givens["f"], gap=givens["g"], slide_height=givens["h"])
    return tuple(place.spacer for place in lower_edges(case))


def _plan(draw: Draw) -> list[Given]:
    hidden = {one.name: one.value for one in (front_height(draw), front_gap(draw), slide_height(draw))}
    names = ("lowest", "middle", "top")
    return [
        draw.derived(name, f"{name} slide, lower edge from the bottom", edge)
        for name, edge in zip(names, _edges(hidden), strict=True)
    ]


READING = Exercise(
    id="06-reading",
    title="The spacer on the plan",
    rung="read a number off",
    question=(
        "The plan of a side gives the lower edges of its slides, all from the inside of the bottom: {lowest}, {middle} "
        "and {top}. How long is the spacer that the middle slide lies on, when the bottom is what it stands against?"
    ),
    givens=_plan,
    right=lambda g: g["middle"],
    misconceptions=(
        Misconception(
            "lowest", lambda g: g["lowest"],
            "That is the lower edge of the lowest slide.", "Count the slides from the bottom.",
        ),
        Misconception(
            "step", lambda g: g["middle"] - g["lowest"],
            "That is how far the middle slide lies above the lowest one.",
            "Does this spacer stand on the lowest slide, or against the bottom?",
        ),
        Misconception(
            "top", lambda g: g["top"], "That is the lower edge of the top slide.", "Count the slides from the bottom.",
        ),
    ),
    effect=spacer_off,
    fits="All distances are counted from one place, the inside of the bottom, so the number on the plan is the spacer.",
    hints=(
        "From where does the plan count?",
        "All three numbers begin at the bottom. Nothing is to be added or taken off.",
    ),
    working=lambda g, say: (
        f"lower edges from the bottom: {g.texts['lowest']}, {g.texts['middle']}, {g.texts['top']}",
        f"spacer of the middle slide = {say.length(g['middle'])}; the plan counts it from the bottom.",
        f"{g.texts['lowest']} + {say.length(g['middle'] - g['lowest'])} = {say.length(g['middle'])}",
    ),
    tolerance=RULE,
)


# One step ----------------------------------------------------------------------------------------


def _setback(givens: Givens) -> int:
    return lower_edges(small_hardware(kind="inset", count=1, front=givens["t"], setback=givens["c"]))[0].setback


SETBACK = Exercise(
    id="06-setback",
    title="Behind an inset front",
    rung="one step",
    question=(
        "In a case {D} deep, inset fronts of a sheet sold as {T} measure {t}. The sheet of the slide wants it {c} "
        "behind the front. How far behind the front edge of the side does the slide begin?"
    ),
    givens=lambda draw: [case_depth(draw), sheet_as_sold(draw), front_as_measured(draw), clearance(draw)],
    right=_setback,
    misconceptions=(
        Misconception(
            "at-the-edge", lambda g: 0,
            "That begins at the front edge itself.", "The slide begins behind the front: where does the front stand?",
            lambda g, off, say: "The front would meet the slide, and stand out by all that belongs before it.",
        ),
        Misconception(
            "like-overlay", lambda g: g["c"],
            "That is what the sheet of the slide asks for, with no front before it.",
            "An inset front stands in the opening: how much of the depth does it take?",
        ),
        Misconception(
            "front-only", lambda g: g["t"],
            "That is the front alone.", "What does the sheet of the slide ask for behind the front?",
        ),
        Misconception(
            "nominal", lambda g: g["T"] + g["c"],
            "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read.",
        ),
    ),
    effect=setback_off,
    fits="The closed front is flush with the edges of the case.",
    hints=(
        "Which parts lie between the front edge of the side and the slide?",
        "First the front, {t}, then what the sheet of the slide asks for.",
    ),
    working=lambda g, say: (
        f"setback = front + clearance of the slide; {g.texts['T']} is only the name of the sheet, and the "
        f"{g.texts['D']} of the case stand in no sum.",
        f"setback = {g.texts['t']} + {g.texts['c']} = {say.exact(_setback(g))}",
    ),
    tolerance=RULE,
    zero=True,
)


# Two steps ---------------------------------------------------------------------------------------


def _third(givens: Givens) -> int:
    return _edges(givens)[2]


def _stack(draw: Draw) -> list[Given]:
    rows = [front_height(draw), front_gap(draw), slide_height(draw)]
    return [*rows, lowest_spacer({row.name: row.value for row in rows}, draw)]


def _third_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, step = givens.texts, givens["f"] + givens["g"]
    return (
        f"from slide to slide = front + gap = {text['f']} + {text['g']} = {say.length(step)}",
        f"third spacer = {text['s']} + 2 x {say.length(step)} = {say.length(_third(givens))}",
        f"The slide's own height of {text['h']} stands in no sum: the spacer goes from lower edge to lower edge.",
    )


SPACER = Exercise(
    id="06-spacer",
    title="The spacer of the third drawer",
    rung="two steps",
    question=(
        "Three equal inset fronts are {f} high, with a gap of {g} everywhere. The slides are {h} high. The lower edge "
        "of the lowest slide lies {s} above the bottom, and every slide lies alike behind its front. How long is the "
        "spacer of the third one?"
    ),
    givens=_stack,
    right=_third,
    misconceptions=(
        Misconception(
            "gaps-left-out", lambda g: g["s"] + 2 * g["f"],
            "That leaves the gaps out.", "From one front to the next there is a gap as well.",
        ),
        Misconception(
            "one-gap", lambda g: g["s"] + 2 * g["f"] + g["g"],
            "That counts one gap only.", "How many gaps does the third front have below it, above the first front?",
        ),
        Misconception(
            "to-the-middle", lambda g: g["s"] + 2 * (g["f"] + g["g"]) + share(g["h"], 2, 1)[0],
            "That goes to the middle of the slide.", "What does the slide rest on while it is screwed?",
        ),
        Misconception(
            "one-too-many", lambda g: g["s"] + 3 * (g["f"] + g["g"]),
            "That is where a fourth slide would be.", "The first slide is there already: count the steps.",
        ),
    ),
    effect=spacer_off,
    fits="The slide lies behind its front just as the lowest does behind its own.",
    hints=(
        "How far is it from one front to the next, from lower edge to lower edge?",
        "One front and one gap. How many such steps from the first slide to the third?",
        "Two steps, and {s} to begin with.",
    ),
    working=_third_working,
    tolerance=RULE,
)


def _first_hole(givens: Givens) -> int:
    case = small_hardware(count=1, front_width=givens["L"], pitch=givens["p"])
    return pull_places(case, "bay 1 drawer 1 front")[0].left


def _half(ticks: int) -> int:
    return share(ticks, 2, 1)[0]


def _holes(draw: Draw) -> list[Given]:
    wide = front_width(draw)
    less = draw.pick("less", "", inch=("1 3/4 in", "2 1/4 in"), mm=("44 mm", "56 mm")).value
    return [wide, draw.derived("B", "its box, outside width, behind the middle", wide.value - less), pitch(draw)]


PULL = Exercise(
    id="06-pull",
    title="The first hole of a pull",
    rung="two steps",
    question=(
        "A front is {L} wide, its box {B}. A pull whose holes are {p} apart goes into the middle of the front. How far "
        "from the left end of the front is the first hole?"
    ),
    givens=_holes,
    right=_first_hole,
    misconceptions=(
        Misconception(
            "whole-pitch", lambda g: _half(g["L"]) - g["p"],
            "That takes the whole of {p} off the middle.", "The middle lies between the two holes.",
        ),
        Misconception(
            "thirds", lambda g: share(g["L"], 3, 1)[0],
            "That is a third of the front, whatever the pull.", "The holes must be {p} apart.",
        ),
        Misconception(
            "from-the-box", lambda g: _half(g["B"] - g["p"]),
            "That is counted from the end of the box.", "From which end do you measure on the front?",
        ),
        Misconception(
            "middle", lambda g: _half(g["L"]),
            "That is the middle of the front.", "A pull with two holes has none in its middle.",
        ),
    ),
    effect=hole_off,
    fits="The pull stands in the middle, and its holes are {p} apart.",
    hints=(
        "Where is the middle of the front?",
        "Half of the pull lies left of the middle, half right of it.",
        "Half of {L}, less half of {p}.",
    ),
    working=lambda g, say: (
        f"The box of {g.texts['B']} stands in no sum: the pull goes by the front.",
        f"middle of the front = {g.texts['L']} / 2 = {say.length(_half(g['L']))}",
        f"first hole = {say.length(_half(g['L']))} - {g.texts['p']} / 2 = {say.length(_first_hole(g))}",
        f"second hole = {say.length(_half(g['L']))} + {g.texts['p']} / 2 = {say.length(g['L'] - _first_hole(g))}",
    ),
    tolerance=RULE,
)

EXERCISES = (READING, SETBACK, SPACER, PULL, SCREW, PEGS, TESS_LIST)
SETS = (SPACER_SET,)
