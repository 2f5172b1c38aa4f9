"""Measuring, the fifth rung: find the slip in a list that somebody else wrote."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.fractions_slipped import carry_dropped, odd_one_lost, places_mixed, rest_not_halved
from shoplib.lessons.measuring_givens import board_and_cut, odd_length, two_lengths
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM, share
from shoplib.model.strip import cut_at

LINES = ("both boards, end to end", "middle of the rail", "left of the long board")


def _lines(g: Givens | dict[str, int]) -> tuple[int, int, int]:
    """The three lines as they should be."""
    return g["B"] + g["C"], share(g["A"], 2, 1)[0], cut_at(g["L"], g["P"], g["k"], "waste side").rest


def _slipped(g: dict[str, int], unit: str) -> tuple[tuple[int, int], ...]:
    """Each line as Sam may have got it wrong, in one of two ways."""
    return (
        (carry_dropped(g["B"], g["C"], unit), places_mixed(g["B"], g["C"], unit)),
        (odd_one_lost(g["A"], unit), rest_not_halved(g["A"], unit)),
        (g["L"] - g["P"], g["L"] - g["P"] + g["k"]),
    )


def _givens(draw: Draw) -> list[Given]:
    rows = [*two_lengths(draw), odd_length(draw), *board_and_cut(draw)]
    values = {row.name: row.value for row in rows}
    line, slip = draw.count("line", "", 0, 2), draw.count("slip", "", 0, 1)
    listed = list(_lines(values))
    listed[line.value] = _slipped(values, draw.unit)[line.value][slip.value]
    written = [
        draw.derived(f"line {number}", f"Sam's list: {what}", listed[number]) for number, what in enumerate(LINES)
    ]
    return [*rows, *written, Given("line", "", line.value, LINES[line.value])]


def _right(givens: Givens) -> int:
    return _lines(givens)[givens["line"]]


def _listed(givens: Givens, on: int = 0) -> int:
    """What Sam wrote on the line that is wrong, or on the one that comes `on` further (round and round)."""
    return givens[f"line {(givens['line'] + on) % len(LINES)}"]


def _too(off: int) -> str:
    return "too large" if off > 0 else "too small"


def _effect(_givens: Givens, off: int, say: Say) -> str:
    return f"The line that is wrong would be {say.amount(off)} {_too(off)}, and so would what is cut by it."


def _effect_of_sound_line(givens: Givens, _off: int, say: Say) -> str:
    off = _listed(givens) - _right(givens)
    return f"The line that is wrong would stay as Sam wrote it: {say.amount(off)} {_too(off)}."


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    both, middle, left = (say.length(line) for line in _lines(givens))
    return (
        f"{text['B']} + {text['C']} = {both}", f"Sam has {text['line 0']}.",
        f"{text['A']} / 2 = {middle}", f"Sam has {text['line 1']}.",
        f"{text['L']} - {text['P']} - {text['k']} = {left}", f"Sam has {text['line 2']}.",
        f"The line that is wrong is \"{text['line']}\": it should say {say.length(_right(givens))}.",
    )


SAMS_LIST = Exercise(
    id="01-sams-list",
    title="The slip in Sam's list",
    rung="find the slip in another's list",
    question=(
        "Sam wrote three lines. Two boards of {B} and {C}, end to end: {line 0}. The middle of a rail {A} long: "
        "{line 1} from its end. A board {L} long, {P} sawn off beside the line with a kerf of {k}: {line 2} is left. "
        "One line is wrong. What should that line say?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "kept", _listed,
            "Sam wrote just that.",
            "The other two lines are sound: work this one out with your own hand.",
        ),
        Misconception(
            "sound-line", lambda g: _listed(g, 1),
            "Sam has that number on a line that is right.",
            "Check the other two lines.",
            _effect_of_sound_line,
        ),
        Misconception(
            "other-sound-line", lambda g: _listed(g, 2),
            "Sam has that number on a line that is right.",
            "Check the other two lines.",
            _effect_of_sound_line,
        ),
        Misconception(
            "wrong-way", lambda g: 2 * _listed(g) - _right(g),
            "The line is the one that is wrong, and so is the amount; but you mended it the wrong way.",
            "Is what Sam wrote too large or too small?",
        ),
    ),
    effect=_effect,
    fits="The line was \"{line}\"; with it mended, all three are sound.",
    hints=(
        "Turn each line round: does the half, twice, give the rail? Do board, piece and kerf add up?",
        "Two of your three numbers agree with the list.",
        "The third is the answer.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 10),
)
