"""Drawer clearance, the fourth rung: find the slip in a list that somebody else wrote."""

from shoplib.lessons.anothers_list import AnothersList, too
from shoplib.lessons.drawer_givens import bottom_groove, bottom_slack, box_stock, corner_rabbet, opening, slide_side
from shoplib.lessons.exercise import Exercise, Given, Givens, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_box import box_width, part, small_box
from shoplib.measure import INCH, MM, Style, narrowest, thickest, write_length

ROWS = ("box, outside width", "box front and back, length", "bottom, width")
_NAMES = ("F", "R", "c", "s", "r", "q", "e")


def _mark(unit: str) -> Style:
    return Style("in", INCH // 64) if unit == "in" else Style("mm", MM // 5)


def _rows(front: int, rear: int, slide: int, stock: int, rabbet: int, groove: int, slack: int) -> tuple[int, ...]:
    """The three lines as they should be."""
    case = small_box(front, rear, side=slide, stock=stock, rabbet=rabbet, groove=groove, slack=slack)
    return box_width(case), part(case, "box front", 0), part(case, "box bottom", 0)


def _slipped(
    line: int, slip: int, front: int, rear: int, slide: int, stock: int, rabbet: int, groove: int, slack: int
) -> int:
    """One line as Ilse may have got it wrong, in one of two ways; the others follow from the right box."""
    box = narrowest([front, rear]) - 2 * slide
    return (
        (thickest([front, rear]) - 2 * slide, box + slide),
        (box - 2 * stock + rabbet, box - stock),
        (box - 2 * stock + groove, box - 2 * stock),
    )[line][slip]


def _givens(draw: Draw) -> list[Given]:
    sizes = [*opening(draw), slide_side(draw), box_stock(draw), corner_rabbet(draw), bottom_groove(draw),
             bottom_slack(draw)]
    values = [given.value for given in sizes]
    line, slip = draw.count("line", "", 0, 2), draw.count("slip", "", 0, 1)
    listed = list(_rows(*values))
    listed[line.value] = _slipped(line.value, slip.value, *values)
    mark = _mark(draw.unit)
    said = Given("mark", "", mark.step, write_length(mark.step, mark))
    return [*sizes, said, *LIST.rows(draw, listed, line.value, mark.step)]


def _should(givens: Givens) -> tuple[int, ...]:
    return _rows(*(givens[name] for name in _NAMES))


def _right(givens: Givens) -> int:
    return _should(givens)[givens["line"]]


LIST = AnothersList("Ilse", ROWS, _right)


def _effect(_givens: Givens, off: int, say: Say) -> str:
    return f"That line would be {say.amount(off)} {too(off)}, and it would show when the box is put together or hung."


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    box, front, bottom = _should(givens)
    least, shown = say.exact(narrowest([givens["F"], givens["R"]])), say.exact(box)
    sides = f"{shown} - 2 x {text['s']}"
    return (
        f"box = {least} - 2 x {text['c']} = {say.length(box)}; Ilse has {text['line 0']}",
        f"front = {sides} + 2 x {text['r']} = {say.length(front)}; Ilse has {text['line 1']}",
        f"bottom = {sides} + 2 x {text['q']} - {text['e']} = {say.length(bottom)}; Ilse has {text['line 2']}",
        LIST.told_right(givens, say),
    )


ILSES_LIST = Exercise(
    id="04-ilses-list",
    title="The slip in Ilse's list",
    rung="find the slip in another's list",
    question=(
        "Ilse wrote three lines for the drawer of the wheel bench. The opening reads {F} at the front and {R} at the "
        "back, a slide takes {c}, the sides are {s}, corner rabbets {r} deep, grooves {q} deep, the bottom with {e} "
        "slack. To the nearest {mark}: box {line 0}, front and back {line 1}, bottom {line 2}. One line is wrong, and "
        "the others do not follow from it. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=LIST.slips,
    effect=_effect,
    fits="The line was \"{line}\"; with it mended, all three make one box.",
    hints=(
        "Work out the box first, from the narrower reading and two slides.",
        "Front and back: two sides off, two rabbets on. Bottom: two sides off, two grooves on, the slack off.",
        "To the nearest {mark}, two of your three numbers agree with the list. The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 5),
)
