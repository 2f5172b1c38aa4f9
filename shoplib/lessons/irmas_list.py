"""Fronts and gaps, the fifth rung: find the slip in a list of fronts that somebody else wrote."""

from shoplib.lessons.anothers_list import AnothersList, cut_by_it
from shoplib.lessons.exercise import Exercise, Given, Givens, Twin
from shoplib.lessons.front_givens import covered, divider, opening_height, opening_width, wide_gap
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_fronts import THICK, beside_divider, front_height, front_width, small_fronts
from shoplib.measure import INCH, MM, share

LINES = ("each of three inset fronts, height", "the wide overlay front", "each front beside the divider")


def _line(g: Givens | dict[str, int], number: int) -> int:
    """One line as it should be."""
    if number == 0:
        return front_height(small_fronts(height=g["O"], count=3, gap=g["g"]), 2)
    if number == 1:
        return front_width(small_fronts(width=g["W"], reveal=THICK - g["a"], kind="overlay"))
    return front_width(beside_divider(g))


def _slipped(g: dict[str, int], number: int, slip: int) -> int:
    """One line as Irma may have got it wrong, in one of two ways."""
    return (
        (share(g["O"] - 2 * g["g"], 3, 1)[0], share(g["O"], 3, 1)[0] - 2 * g["g"]),
        (g["W"] + g["a"], g["W"] - 2 * g["g"]),
        (g["W"] + g["a"] + share(g["t"], 2, 1)[0], g["W"] + g["a"] + g["t"] - g["g"]),
    )[number][slip]


def _givens(draw: Draw) -> list[Given]:
    rows = [opening_height(draw), wide_gap(draw), opening_width(draw), covered(draw), divider(draw)]
    return LIST.drawn(draw, rows, _line, _slipped)


def _right(givens: Givens) -> int:
    return _line(givens, givens["line"])


LIST = AnothersList("Irma", LINES, _right)


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    inset, wide, shared = (say.length(_line(givens, number)) for number in range(3))
    return (
        f"({text['O']} - 4 x {text['g']}) / 3 = {inset}", f"Irma has {text['line 0']}.",
        f"{text['W']} + 2 x {text['a']} = {wide}", f"Irma has {text['line 1']}.",
        f"{text['W']} + {text['a']} + ({text['t']} - {text['g']}) / 2 = {shared}", f"Irma has {text['line 2']}.",
        LIST.told_right(givens, say),
    )


IRMAS_LIST = Exercise(
    id="05-irmas-list",
    title="The slip in Irma's list",
    rung="find the slip in another's list",
    question=(
        "Irma wrote three lines, to the nearest mark. Three equal inset fronts in an opening {O} high, gap {g} "
        "everywhere: each {line 0} high. An overlay front before an opening {W} wide, {a} over each side: {line 1} "
        "wide. Two overlay fronts, each before an opening as wide, {a} over the side and sharing a divider of {t}, gap "
        "{g}: each {line 2} wide. One line is wrong. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=LIST.slips,
    effect=cut_by_it,
    fits="The line was \"{line}\"; with it mended, all three are sound.",
    hints=(
        "Turn each line round: do three fronts and four gaps fill the opening? Two shares and a gap the divider?",
        "Two of your three numbers agree with the list.",
        "The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 10),
)
