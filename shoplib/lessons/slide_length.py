"""Drawer clearance: the longest slide that goes in behind an inset front."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_box import SLIDES, part, small_box
from shoplib.measure import INCH, MM, largest_fitting, narrowest
from shoplib.tables.slides import slide

FAR = Twin(3 * INCH, 75 * MM)
"""Slides are sold in whole steps, so how far off a number is would often be the answer itself."""


def _givens(draw: Draw) -> list[Given]:
    inch, mm = ("19 in", "25 in", "1/8 in"), ("470 mm", "615 mm", "1 mm")
    inside = draw.tape("I", "inside depth, front edge to back", inch=inch, mm=mm)
    behind = draw.pick("V", "", inch=("3 1/2 in", "4 in"), mm=("90 mm", "100 mm"))
    front = draw.pick("f", "inset front, thickness", inch=("11/16 in", "3/4 in"), mm=("17 mm", "18 mm"))
    setback = draw.pick("c", "a slide begins behind the front, by", inch=("1/16 in", "1/8 in"), mm=("2 mm", "3 mm"))
    rear = draw.pick("m", "room behind the slide", inch=("1/4 in", "3/8 in"), mm=("6 mm", "10 mm"))
    outside = draw.derived("D", "outside depth of the case", inside.value + behind.value)
    return [outside, inside, front, setback, rear, _sold(draw), Given("metric", "", int(draw.unit == "mm"), "")]


def _sold(draw: Draw) -> Given:
    """The sizes in words: the one that is asked for is not among them."""
    first, second, *_, last = slide(SLIDES[draw.unit]).lengths
    low, by, high = (draw.derived("", "", size).text for size in (first, second - first, last))
    return Given("sold", "", 0, f"every {by} from {low} to {high} long")


def _sizes(givens: Givens) -> tuple[int, ...]:
    return slide(SLIDES["mm" if givens["metric"] else "in"]).lengths


def _right(givens: Givens) -> int:
    wide = 16 * INCH
    case = small_box(
        wide, wide, unit="mm" if givens["metric"] else "in", depth=givens["I"], inset=givens["f"], rear=givens["m"],
        setback=givens["c"],
    )
    return part(case, "left box side", 1)


def _room(givens: Givens) -> int:
    return givens["I"] - givens["f"] - givens["c"] - givens["m"]


def _nearest(givens: Givens) -> int:
    return min(_sizes(givens), key=lambda size: (abs(size - _room(givens)), size))


def _by_outside(givens: Givens) -> int:
    return largest_fitting(_sizes(givens), givens["D"] - givens["f"] - givens["c"] - givens["m"]) or 0


def slide_off(givens: Givens, off: int, say: Say) -> str:
    """A slide `off` too long (minus: too short) for the room; far off, no more is told than `FAR`.

    It strikes the back only where front, setback and slide together are deeper than the case is inside; else what it
    is too long by comes out of the room behind it. Far off (`say.rough`), nobody knows which.
    """
    by = say.amount(narrowest([abs(off), FAR.of(say.unit)]) if say.rough else off)
    if off < 0:
        return f"That is {by} shorter than the longest that goes in: the drawer would open {by} less than it could."
    longer, size = f"That is {by} longer than the longest that has its room", _right(givens) + off
    left = _room(givens) + givens["m"] - size
    if left < 0:
        return f"{longer}: the drawer would strike the back before it is shut."
    if say.rough:
        return f"{longer}: no slide is sold in that length, or it would take of what must stay free behind it."
    if left >= givens["m"]:
        return f"{longer} and is sold: it would go in and keep the room behind it, but nobody sells it."
    keeps = f"only {say.amount(left)} would stay free behind it" if left else "nothing would stay free behind it"
    return f"{longer}: the drawer would shut, but {keeps}, and its sheet asks for {givens.texts['m']}."


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, room = givens.texts, say.length(_room(givens))
    return (
        f"Outside the case is {text['D']} deep, but a drawer ends before the back: the inside depth counts.",
        "room = inside depth - inset front - what the slide begins behind it - room behind the slide",
        f"room = {text['I']} - {text['f']} - {text['c']} - {text['m']} = {room}",
        f"The longest slide that is not longer than {room} is {say.length(_right(givens))}.",
    )


SLIDE_LENGTH = Exercise(
    id="04-slide-length",
    title="How long a slide goes in",
    rung="two steps",
    question=(
        "The case is {D} deep outside; its back stands in front of some pipes, so that it is {I} deep inside, from the "
        "front edge to the back. The fronts are inset and {f} thick; a slide begins {c} behind them, and {m} stays "
        "free behind it. Slides are sold {sold}. Which length do you buy?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "nearest", _nearest,
            "That is the size nearest to the room, and it is longer than the room.",
            "What must stay free behind a slide is no room for it, however little the slide would take of that.",
        ),
        Misconception(
            "outside", _by_outside,
            "That is the sum with {D}, the outside depth.", "Where does the room behind the drawer end?",
        ),
        Misconception(
            "room", _room,
            "That is the room itself; no slide is sold in that length.", "Look at the sizes they are sold in.",
        ),
    ),
    effect=slide_off,
    fits="It goes in, with at least {m} free behind it.",
    hints=(
        "Begin with the inside depth, {I}.",
        "An inset front takes its own thickness, {f}; the slide begins {c} behind it, and {m} stays free at its end.",
        "Take the longest slide that is not longer than that.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 5),
)
