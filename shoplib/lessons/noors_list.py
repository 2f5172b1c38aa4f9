"""Carcass sizing, the fourth rung: find the slip in a list that somebody else wrote."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import back_width, bay_width, bottom_length, small_case
from shoplib.lessons.usual_givens import case_width, dado_depth, rabbet_width, sheet_as_measured
from shoplib.live.carcass_panel import style_for
from shoplib.measure import INCH, MM, share, to_step, write_length

ROWS = ("bottom, length", "back, width", "each of 2 bays")


def _rows(width: int, side: int, dado: int, rabbet: int) -> tuple[int, int, int]:
    """The three lines as they should be."""
    case = small_case(width, side, dado=dado, rabbet=rabbet, bays=2)
    return bottom_length(case), back_width(case), bay_width(case)


def _slipped(line: int, slip: int, width: int, side: int, dado: int) -> int:
    """One line as Noor may have got it wrong, in one of two ways."""
    inside = width - 2 * side
    return (
        (inside, inside + dado),
        (inside, width),
        (share(inside, 2, 1)[0], share(width, 2, 1)[0]),
    )[line][slip]


def _givens(draw: Draw) -> list[Given]:
    width, side = case_width(draw), sheet_as_measured(draw)
    dado, rabbet = dado_depth(draw), rabbet_width(draw)
    line, slip = draw.count("line", "", 0, 2), draw.count("slip", "", 0, 1)
    listed = list(_rows(width.value, side.value, dado.value, rabbet.value))
    listed[line.value] = _slipped(line.value, slip.value, width.value, side.value, dado.value)
    mark = style_for(draw.unit)
    rows = [
        draw.derived(f"line {number}", f"Noor's list: {what}", to_step(listed[number], mark.step))
        for number, what in enumerate(ROWS)
    ]
    said = Given("mark", "", mark.step, write_length(mark.step, mark))
    return [width, side, dado, rabbet, *rows, said, Given("line", "", line.value, ROWS[line.value])]


def _right(givens: Givens) -> int:
    return _rows(givens["W"], givens["t"], givens["d"], givens["b"])[givens["line"]]


def _listed(givens: Givens, on: int = 0) -> int:
    """What Noor wrote on the line that is wrong, or on the one that comes `on` further (round and round)."""
    return givens[f"line {(givens['line'] + on) % len(ROWS)}"]


def _too(off: int) -> str:
    return "too large" if off > 0 else "too small"


def _effect(_givens: Givens, off: int, say: Say) -> str:
    return (
        f"The part on the line that is wrong would be cut {say.amount(off)} {_too(off)}, and it would show "
        "only when the case is dry-fitted."
    )


def _effect_of_sound_line(givens: Givens, _off: int, say: Say) -> str:
    off = _listed(givens) - _right(givens)
    return (
        f"The line that is wrong would stay as Noor wrote it: {say.amount(off)} {_too(off)}, on a part that "
        "is then cut from good wood."
    )


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    bottom, back, bay = _rows(givens["W"], givens["t"], givens["d"], givens["b"])
    sides, uprights = f"{text['W']} - 2 x {text['t']}", f"{text['W']} - 3 x {text['t']}"
    return (
        f"bottom = {sides} + 2 x {text['d']} = {say.length(bottom)}; Noor has {text['line 0']}",
        f"back = {sides} + 2 x {text['b']} = {say.length(back)}; Noor has {text['line 1']}",
        f"bay = ({uprights}) / 2 = {say.length(bay)}; Noor has {text['line 2']}",
        f"The line that is wrong is \"{text['line']}\": it should say {say.length(_right(givens))}.",
    )


ANOTHERS_LIST = Exercise(
    id="02-noors-list",
    title="The slip in Noor's list",
    rung="find the slip in another's list",
    question=(
        "Noor wrote three lines for the bench case: {W} wide outside, sides and one divider {t} thick, the "
        "bottom in dadoes {d} deep, the back in rabbets {b} wide, two equal bays. To the nearest {mark}: bottom "
        "{line 0}, back {line 1}, each bay {line 2}. One line is wrong. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "kept", _listed,
            "Noor wrote just that.",
            "The other two lines are sound: work this one out with your own hand.",
        ),
        Misconception(
            "sound-line", lambda g: _listed(g, 1),
            "Noor has that number on a line that is right.",
            "Check the other two lines.",
            _effect_of_sound_line,
        ),
        Misconception(
            "other-sound-line", lambda g: _listed(g, 2),
            "Noor has that number on a line that is right.",
            "Check the other two lines.",
            _effect_of_sound_line,
        ),
        Misconception(
            "wrong-way", lambda g: 2 * _listed(g) - _right(g),
            "The line is the one that is wrong, and so is the amount; but you mended it the wrong way.",
            "Is what Noor wrote too large or too small?",
        ),
    ),
    effect=_effect,
    fits="The line was \"{line}\"; with it mended, all three agree with the case.",
    hints=(
        "Work out the room between the sides once: {W} less two sides of {t}. All three lines begin there.",
        "The bottom gains two dadoes, the back two rabbets; the bays lose a divider.",
        "To the nearest {mark}, two of your three numbers agree with the list. The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 4),
    version=3,
)
