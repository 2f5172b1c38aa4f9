"""Measuring, the first rung: a reading that somebody calls out, mark by mark."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM, Style
from shoplib.measure.tape import tape_steps
from shoplib.words.tape import spoken, sum_text

_SAYS = {
    "in": ("The figures on this tape are inches.", "That counts every mark that was said as a sixteenth.",
           "Each mark said has its own size: a half, a quarter, an eighth, a sixteenth."),
    "mm": ("The figures on this tape are centimetres.", "That takes the figure on the tape for millimetres.",
           "The figures of this tape are centimetres: how many millimetres is one of them?"),
}


def read_off_to(unit: str) -> Style:
    """Sixteenths of an inch, or single millimetres: what most tapes are divided to (common practice, no source)."""
    return Style("in", INCH // 16) if unit == "in" else Style("mm", MM)


def _givens(draw: Draw) -> list[Given]:
    style = read_off_to(draw.unit)
    ranges = {"inch": ("3 1/16 in", "46 15/16 in", "1/8 in"), "mm": ("81 mm", "969 mm", "1 mm")}
    mark = draw.tape("mark", "", **ranges).value
    figure, *finer = tape_steps(mark, style)
    last = figure.ticks + (finer[-1].ticks if finer else 0)
    beyond = mark - figure.ticks
    small = figure.ticks + len(finer) * style.step if draw.unit == "in" else figure.count * MM + beyond
    figures, says, look = _SAYS[draw.unit]
    return [
        draw.derived("the figure", "", figure.ticks), draw.derived("the marks", "", beyond),
        draw.derived("one figure", "", figure.part),
        Given("aloud", "", 0, spoken(mark, style)), Given("figures", "", 0, figures),
        Given("terms", "", 0, f"Add them: {sum_text(mark, style)}."),
        Given("last", "", last, "last"), Given("small", "", small, says), Given("look", "", 0, look),
    ]


def _right(givens: Givens) -> int:
    return givens["the figure"] + givens["the marks"]


def _effect(_givens: Givens, off: int, say: Say) -> str:
    if off > 0:
        return f"Cut to that number, the piece would be {say.amount(off)} too long, and would have to be cut again."
    return f"Cut to that number, the piece would be {say.amount(off)} too short, and no saw puts wood back."


READ = Exercise(
    id="01-read",
    title="Called out",
    rung="read a number off",
    question=(
        "Lena measures the shelf behind the wheel rack and calls out what she sees: \u201c{aloud}\u201d. {figures} "
        "What does Sam write down?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "next", lambda g: _right(g) + g["one figure"],
            "That goes on from the figure that comes after the pointer.",
            "Begin with the last figure that was passed: it lies nearer to the end of the tape.",
        ),
        Misconception(
            "last", lambda g: g["last"],
            "That adds only the last mark to the figure.",
            "The marks add up: every one that was called out is part of the length.",
        ),
        Misconception("small", lambda g: g["small"], "{small}", "{look}"),
    ),
    effect=_effect,
    fits="The figure and every mark that was passed, added up.",
    hints=(
        "Write the figure first: {the figure}.",
        "Then write each mark that was called out as a length of its own.",
        "{terms}",
    ),
    working=lambda g, say: (
        f"Called out: {g.texts['aloud']}.",
        f"{sum_text(_right(g), read_off_to(say.unit))} = {say.length(_right(g))}",
    ),
    tolerance=Twin(INCH // 64, MM // 5),
)
