"""The cut list, the fifth rung: find the slip in a list that somebody else wrote, by its sums."""

from shoplib.lessons.anothers_list import AnothersList, cut_by_it
from shoplib.lessons.exercise import Exercise, Given, Givens, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.sheet_givens import band
from shoplib.lessons.usual_givens import case_width, side_by_the_rule
from shoplib.measure import INCH, INCH_STYLE, MM, share
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Carcass, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

LINES = ("bottom, length", "shelves, length", "loose top, length at the saw")


def _case(width: int, side: int) -> Cabinet:
    """A case of two bays, board against board, a shelf in each."""
    sheets = {"case": Sheet("case", "plywood", side)}
    size = Size("outside", width, 24 * INCH, 12 * INCH)
    bays = (Bay("shelves", shelves=Shelves(fixed=1)),) * 2
    return solve(Project("two bays", INCH_STYLE, sheets, size, Carcass("case"), bays=bays, rounding=1))


def _line(g: Givens | dict[str, int], number: int) -> int:
    """One line as it should be."""
    if number == 2:
        return g["W"] - 2 * g["b"]
    return _case(g["W"], g["t"]).by_name[("bottom", "bay 1 shelf 1")[number]].box.size[0]


def _slipped(g: dict[str, int], number: int, slip: int) -> int:
    """One line as Uma may have got it wrong, in one of two ways."""
    return (
        (g["W"] - g["t"], g["W"]),
        (share(g["W"] - 2 * g["t"], 2, 1)[0], share(g["W"] - 4 * g["t"], 2, 1)[0]),
        (g["W"] - g["b"], g["W"]),
    )[number][slip]


def _givens(draw: Draw) -> list[Given]:
    rows = [case_width(draw), side_by_the_rule(draw), band(draw)]
    return LIST.drawn(draw, rows, _line, _slipped)


def _right(givens: Givens) -> int:
    return _line(givens, givens["line"])


LIST = AnothersList("Uma", LINES, _right)


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    bottom, shelf, top = (say.exact(_line(givens, number)) for number in range(3))
    return (
        f"{text['W']} - 2 x {text['t']} = {bottom}", f"Uma has {text['line 0']}.",
        f"({text['W']} - 3 x {text['t']}) / 2 = {shelf}", f"Uma has {text['line 1']}.",
        f"{text['W']} - 2 x {text['b']} = {top}", f"Uma has {text['line 2']}.",
        LIST.told_right(givens, say),
    )


UMAS_LIST = Exercise(
    id="08-umas-list",
    title="The slip in Uma's cut list",
    rung="find the slip in another's list",
    question=(
        "Uma typed the list of a case {W} wide, of a sheet that measures {t}, board against board. The bottom lies "
        "between the sides, a divider makes two equal bays with a shelf in each, and on all of it lies a loose top: "
        "with a band {b} thick glued on at each end it is just as long as the case is wide. She has: bottom "
        "{line 0}; shelves {line 1}; loose top at the saw {line 2}. One line is wrong. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=LIST.slips,
    effect=cut_by_it,
    fits="The line was \"{line}\"; with it mended, the sums close.",
    hints=(
        "Close the sums: side + bottom + side; shelf + divider + shelf; band + top + band. What must each come to?",
        "Two of the three close.",
        "What the third is off by is the slip; share it where two boards have it.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 10),
)
