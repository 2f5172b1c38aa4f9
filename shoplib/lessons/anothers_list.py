"""What every exercise has in common that hands out another's list of three lines, of which one is wrong."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import INCH_STYLE, MM_STYLE, to_step


def too(off: int) -> str:
    """In a word, what is off by so many ticks.

    >>> too(-1)
    'too small'
    """
    return "too large" if off > 0 else "too small"


def cut_by_it(_givens: Givens, off: int, say: Say) -> str:
    """What comes of an answer that is off, where boards are cut by it."""
    return f"What is cut by that line would be {say.amount(off)} {too(off)}."


@dataclass(frozen=True)
class AnothersList:
    """The list of `who`, its `lines` by what they say, and `right`, what the line that is wrong should say.

    Among the givens, "line 0" and so on are the lines as they stand there, and "line" is the number of the wrong one.
    """

    who: str
    lines: tuple[str, ...]
    right: Callable[[Givens], int]

    def rows(self, draw: Draw, listed: Sequence[int], line: int, mark: int) -> list[Given]:
        """The givens of the list: what is `listed`, to the nearest `mark`, and which `line` is wrong."""
        rows = [
            draw.derived(f"line {number}", f"{self.who}'s list: {what}", to_step(listed[number], mark))
            for number, what in enumerate(self.lines)
        ]
        return [*rows, Given("line", "", line, self.lines[line])]

    def drawn(
        self, draw: Draw, rows: Sequence[Given], line: Callable[[dict[str, int], int], int],
        slipped: Callable[[dict[str, int], int, int], int],
    ) -> list[Given]:
        """The `rows` of the case, and of the list: each `line` as it should be but one, `slipped` in one of two ways.

        What is listed stands to the nearest mark of a usual rule.
        """
        values = {row.name: row.value for row in rows}
        wrong, slip = draw.count("line", "", 0, len(self.lines) - 1), draw.count("slip", "", 0, 1)
        listed = [line(values, number) for number in range(len(self.lines))]
        listed[wrong.value] = slipped(values, wrong.value, slip.value)
        mark = (INCH_STYLE if draw.unit == "in" else MM_STYLE).step
        return [*rows, *self.rows(draw, listed, wrong.value, mark)]

    def listed(self, givens: Givens, on: int = 0) -> int:
        """What stands on the line that is wrong, or on the one that comes `on` further (round and round)."""
        return givens[f"line {(givens['line'] + on) % len(self.lines)}"]

    def told_right(self, givens: Givens, say: Say) -> str:
        """The last line of the working."""
        return f"The line that is wrong is \"{givens.texts['line']}\": it should say {say.length(self.right(givens))}."

    @property
    def slips(self) -> tuple[Misconception, ...]:
        """The line left as it was, a sound line taken for the wrong one, and the right amount the wrong way."""
        sound = f"{self.who} has that number on a line that is right."
        return (
            Misconception(
                "kept", self.listed, f"{self.who} wrote just that.",
                "The other two lines are sound: work this one out with your own hand.",
            ),
            Misconception(
                "sound-line", lambda g: self.listed(g, 1), sound, "Check the other two lines.", self._left_wrong,
            ),
            Misconception(
                "other-sound-line", lambda g: self.listed(g, 2), sound, "Check the other two lines.",
                self._left_wrong,
            ),
            Misconception(
                "wrong-way", lambda g: abs(2 * self.listed(g) - self.right(g)),
                "The line is the one that is wrong, and so is the amount; but you mended it the wrong way.",
                f"Is what {self.who} wrote too large or too small?",
            ),
        )

    def _left_wrong(self, givens: Givens, _off: int, say: Say) -> str:
        off = self.listed(givens) - self.right(givens)
        return f"The line that is wrong would stay as {self.who} wrote it: {say.amount(off)} {too(off)}."
