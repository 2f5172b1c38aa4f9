"""Joinery allowances, the fourth rung: find the slip in what somebody else marked out."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.joint_case import across, joint_case, shelf_joint
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.usual_givens import case_width, sheet_as_measured
from shoplib.live.carcass_panel import style_for
from shoplib.measure import INCH, MM, share, to_step, write_length

ROWS = ("shelf, length", "near wall", "back, width")


def _rows(width: int, side: int, dado: int, upper: int, groove: int) -> tuple[int, int, int]:
    """The three lines as they should be."""
    case = joint_case((side,), width=width, dado=dado, at=upper - side, groove=groove)
    return across(case, "bay 1 shelf 1"), shelf_joint(case).near_wall, across(case, "back")


def _slipped(line: int, slip: int, width: int, side: int, dado: int, upper: int, groove: int) -> int:
    """One line as Noor may have got it wrong, in one of two ways."""
    inside = width - 2 * side
    return (
        (inside, inside + dado),
        (upper, upper - share(side, 2, 1)[0]),
        (inside + groove, width),
    )[line][slip]


def _givens(draw: Draw) -> list[Given]:
    width, side = case_width(draw), sheet_as_measured(draw)
    dado = draw.pick("d", "dadoes, depth", inch=("1/4 in", "5/16 in"), mm=("6 mm", "7 mm"))
    upper = draw.tape("q", "upper face of the shelf above the lower ends",
                      inch=("9 in", "15 in", "1/8 in"), mm=("230 mm", "380 mm", "1 mm"))
    groove = draw.pick("b", "grooves for the back, depth", inch=("3/16 in", "11/32 in"), mm=("5 mm", "8.5 mm"))
    line, slip = draw.count("line", "", 0, 2), draw.count("slip", "", 0, 1)
    values = (width.value, side.value, dado.value, upper.value, groove.value)
    listed = list(_rows(*values))
    listed[line.value] = _slipped(line.value, slip.value, *values)
    mark = style_for(draw.unit)
    rows = [
        draw.derived(f"line {number}", f"Noor's marks: {what}", to_step(listed[number], mark.step))
        for number, what in enumerate(ROWS)
    ]
    said = Given("mark", "", mark.step, write_length(mark.step, mark))
    return [width, side, dado, upper, groove, *rows, said, Given("line", "", line.value, ROWS[line.value])]


def _right(givens: Givens) -> int:
    return _rows(givens["W"], givens["t"], givens["d"], givens["q"], givens["b"])[givens["line"]]


def _listed(givens: Givens, on: int = 0) -> int:
    """What Noor wrote on the line that is wrong, or on the one that comes `on` further (round and round)."""
    return givens[f"line {(givens['line'] + on) % len(ROWS)}"]


def _too(off: int) -> str:
    return "too large" if off > 0 else "too small"


def _effect(_givens: Givens, off: int, say: Say) -> str:
    return (
        f"The number on the line that is wrong would be {say.amount(off)} {_too(off)}, and it would show only when "
        "the case is put together."
    )


def _effect_of_sound_line(givens: Givens, _off: int, say: Say) -> str:
    off = _listed(givens) - _right(givens)
    return f"The line that is wrong would stay as Noor wrote it: {say.amount(off)} {_too(off)}, and cut so."


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    shelf, wall, back = _rows(givens["W"], givens["t"], givens["d"], givens["q"], givens["b"])
    return (
        f"shelf = {text['W']} - 2 x {text['t']} + 2 x {text['d']} = {say.length(shelf)}; Noor has {text['line 0']}",
        f"near wall = {text['q']} - {text['t']} = {say.length(wall)}; Noor has {text['line 1']}",
        f"back = {text['W']} - 2 x {text['t']} + 2 x {text['b']} = {say.length(back)}; Noor has {text['line 2']}",
        f"The line that is wrong is \"{text['line']}\": it should say {say.length(_right(givens))}.",
    )


ANOTHERS_MARKS = Exercise(
    id="03-noors-marks",
    title="The slip in Noor's marks",
    rung="find the slip in another's list",
    question=(
        "Noor marked out a case {W} wide outside, of a sheet {t} thick. Its shelf goes to the floor of dadoes {d} "
        "deep, and its upper face is to stand {q} above the lower ends of the sides; the back goes to the floor of "
        "grooves {b} deep. To the nearest {mark}: shelf {line 0} long, near (lower) wall of each dado {line 1} from "
        "the lower end, back {line 2} wide. One number is wrong. What should it be?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "kept", _listed,
            "Noor wrote just that.",
            "The other two numbers are sound: work this one out with your own hand.",
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
        "Draw the side with its dado, and the shelf in it. The lower wall is under the shelf.",
        "The shelf gains two dadoes, the back two grooves. The near wall lies one thickness of the shelf below its "
        "upper face.",
        "To the nearest {mark}, two of your three numbers agree with Noor's. The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 4),
    version=2,
)
