"""Hardware layout, the fifth rung: find the slip in a list that somebody else wrote."""

from shoplib.lessons.anothers_list import AnothersList, too
from shoplib.lessons.exercise import Exercise, Given, Givens, Twin
from shoplib.lessons.hardware_givens import (
    clearance,
    front_as_measured,
    front_gap,
    front_height,
    front_width,
    lowest_spacer,
    pitch,
    slide_height,
)
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_hardware import lower_edges, small_hardware
from shoplib.measure import INCH, MM, share
from shoplib.model.hardware_places import pull_places

LINES = ("spacer of the third slide", "setback of the slides", "first hole of the pull")


def _line(g: Givens | dict[str, int], number: int) -> int:
    """One line as it should be."""
    case = small_hardware(
        kind="inset", front_height=g["f"], gap=g["g"], slide_height=g["h"], front=g["t"], setback=g["c"],
        front_width=g["L"], pitch=g["p"],
    )
    if number == 2:
        return pull_places(case, "bay 1 drawer 1 front")[0].left
    place = lower_edges(case)[2]
    return place.setback if number else place.spacer


def _slipped(g: dict[str, int], number: int, slip: int) -> int:
    """One line as Tess may have got it wrong, in one of two ways."""
    return (
        (g["s"] + 2 * g["f"], g["s"] + 2 * (g["f"] + g["g"]) + share(g["h"], 2, 1)[0]),
        (g["t"], g["c"]),
        (share(g["L"], 2, 1)[0] - g["p"], share(g["L"], 3, 1)[0]),
    )[number][slip]


def _givens(draw: Draw) -> list[Given]:
    rows = [front_height(draw), front_gap(draw), slide_height(draw)]
    rows.append(lowest_spacer({row.name: row.value for row in rows}, draw))
    rows += [front_as_measured(draw), clearance(draw), front_width(draw), pitch(draw)]
    return LIST.drawn(draw, rows, _line, _slipped)


def _right(givens: Givens) -> int:
    return _line(givens, givens["line"])


LIST = AnothersList("Tess", LINES, _right)


def _effect(givens: Givens, off: int, say: Say) -> str:
    if off >= _right(givens) and not say.rough:
        return "What is set out by that line would be far too large."
    return f"What is set out by that line would be {say.amount(off)} {too(off)}."


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    spacer, setback, hole = (say.exact(_line(givens, number)) for number in range(3))
    return (
        f"{text['s']} + 2 x ({text['f']} + {text['g']}) = {spacer}; the {text['h']} of the slide stand in no sum.",
        f"Tess has {text['line 0']}.",
        f"{text['t']} + {text['c']} = {setback}", f"Tess has {text['line 1']}.",
        f"({text['L']} - {text['p']}) / 2 = {hole}", f"Tess has {text['line 2']}.",
        LIST.told_right(givens, say),
    )


TESS_LIST = Exercise(
    id="06-tess-list",
    title="The slip in Tess's list",
    rung="find the slip in another's list",
    question=(
        "Tess wrote three lines, to the nearest mark. Three equal inset fronts {f} high, gap {g}, slides {h} high, the "
        "lowest with its lower edge {s} above the bottom: spacer of the third {line 0}. Fronts that measure {t}, "
        "slides {c} behind them: setback {line 1}. A pull of {p} in the middle of a front {L} wide: first hole "
        "{line 2} from its left end. One line is wrong. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=LIST.slips,
    effect=_effect,
    fits="The line was \"{line}\"; with it mended, all three are sound.",
    hints=(
        "Turn each line round: what lies below the third front? What lies before the slide? Where is the second hole?",
        "Two of your three numbers agree with the list.",
        "The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 10),
)
