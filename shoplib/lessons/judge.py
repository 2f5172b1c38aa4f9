"""Judges an answer: not tried, not a length, not a number, no unit, wrong unit, a slip, some other number, right.

Feedback names what was given, what it would do in the shop, and where to look next. It never holds
the answer before it is found or asked for.
"""

import re
from dataclasses import dataclass, replace
from numbers import Number
from typing import NamedTuple

from shoplib.lessons.counted import Counted
from shoplib.lessons.exercise import Exercise, Givens, Twin
from shoplib.lessons.say import UNIT_WORDS, Say
from shoplib.measure import INCH, MM, LengthError, read_length

NOT_TRIED, NOT_A_LENGTH, NO_UNIT, WRONG_UNIT = "not tried", "not a length", "no unit", "wrong unit"
NOT_A_NUMBER = "not a number"
SLIP, OTHER, RIGHT = "slip", "other", "right"

NUMBERS = (WRONG_UNIT, SLIP, OTHER, RIGHT)
"""The kinds of answer that were a number: they count as a try."""

_PLACEHOLDERS = ("", "?", "...", "…")
_EXAMPLE = {"in": "2 3/8 in", "mm": "60 mm"}
"""More than any exercise asks for, so that no answer is given away."""

_NOT_ON_A_RULE = "A board is cut to a length, and this is none that can be found on a rule."

COARSE_RULE, _COARSE_CALIPER = Twin(INCH, 25 * MM), Twin(INCH // 8, 3 * MM)
"""From here on a number that is no slip is told in whole steps by how much it is off."""


@dataclass(frozen=True, slots=True)
class Feedback:
    """What is said to one answer, in three short parts.

    `kind` is one of not tried, not a length, not a number, no unit, wrong unit, slip, other, right; `name` is
    the id of the slip, else the kind. `gave` repeats the answer, `does` tells what it would do in the
    shop, `look` where to look next.
    """

    kind: str
    name: str
    gave: str
    does: str
    look: str

    @property
    def right(self) -> bool:
        """Whether the answer is right."""
        return self.kind == RIGHT

    @property
    def heading(self) -> str:
        """A few words that say how it stands, so that colour need not."""
        return {RIGHT: "Right", SLIP: "Not yet", OTHER: "Not yet"}.get(self.kind, "Not judged yet")

    @property
    def parts(self) -> tuple[str, ...]:
        """The parts that have something to say."""
        return tuple(part for part in (self.gave, self.does, self.look) if part)

    @property
    def items(self) -> tuple[()]:
        """One answer has no parts with names of their own."""
        return ()

    @property
    def picture(self) -> None:
        """One answer is told in words."""
        return None

    def __str__(self) -> str:
        return f"{self.heading}. {' '.join(self.parts)}"

    __repr__ = __str__


def judge(
    exercise: Exercise, givens: Givens, unit: str, answer: object, assumed: str | None = None
) -> Feedback:
    """What to say to `answer`, text or a pint quantity.

    `unit` is the learner's, "in" or "mm". `assumed` is the unit printed beside a field, which applies
    to text that has none. Whatever the answer is, there is feedback; nothing is raised.
    """
    if exercise.counted:
        read = read_count(answer, exercise.counted)
    else:
        read = read_answer(answer, unit, assumed, exercise.zero)
    return read if isinstance(read, Feedback) else _judge_number(exercise, givens, unit, read.shown, read.ticks)


class Read(NamedTuple):
    """An answer that is a length: `ticks`, and how it is repeated to the learner. Of things, `ticks` is how many."""

    ticks: int
    shown: str


def read_answer(answer: object, unit: str, assumed: str | None = None, zero: bool = False) -> Read | Feedback:
    """The length that was given, or what to say where it is none; `zero` says that nothing at all is one too."""
    if _is_not_tried(answer):
        look = f"Work it out on paper, then type a length, such as {_EXAMPLE[unit]}."
        return Feedback(NOT_TRIED, NOT_TRIED, "There is no answer yet.", "", look)
    if isinstance(answer, Number) and not isinstance(answer, bool):
        return _without_unit(answer, unit)
    try:
        given = read_length(answer, what="Your answer", unit=assumed, zero=zero)
    except LengthError as error:
        return _unreadable(answer, unit, str(error), assumed)
    shown = _shown(answer)
    if assumed and isinstance(answer, str) and _is_bare_number(answer):
        shown += f" {assumed}"
    return Read(given, shown)


def read_count(answer: object, counted: Counted) -> Read | Feedback:
    """The whole number of things that was given, or what to say where it is none."""
    look = f"Type a whole number of {counted.many}, in digits alone."
    if _is_not_tried(answer):
        return Feedback(NOT_TRIED, NOT_TRIED, "There is no answer yet.", "", look)
    whole = isinstance(answer, int) and not isinstance(answer, bool)
    count = counted.read(str(answer)) if isinstance(answer, str) or whole else None
    if count is None:
        gave = f"You gave {_shown(answer)}, which is no whole number of {counted.many}."
        return Feedback(NOT_A_NUMBER, NOT_A_NUMBER, gave, "", look)
    return Read(count, counted.told(count))


def _is_not_tried(answer: object) -> bool:
    return answer is None or answer is Ellipsis or (isinstance(answer, str) and answer.strip() in _PLACEHOLDERS)


def _judge_number(exercise: Exercise, givens: Givens, unit: str, shown: str, given: int) -> Feedback:
    say = Say(unit, exercise.caliper, counted=exercise.counted)
    right, near = exercise.right(givens), exercise.tolerance.of(unit)
    gave = f"You gave {shown}."
    if abs(given - right) <= near:
        gave += f" To {say.amount(near)} that is the number." if given != right else ""
        return Feedback(RIGHT, RIGHT, gave, exercise.fits.format_map(givens.texts), "")
    for slip in exercise.misconceptions:
        if abs(given - slip.rule(givens)) <= near:
            gave = f"{gave} {slip.says.format_map(givens.texts)}"
            does = (slip.effect or exercise.effect)(givens, given - right, say)
            return Feedback(SLIP, slip.id, gave, does, slip.look.format_map(givens.texts))
    swapped = None if exercise.counted else in_the_other_unit(given, right, near, gave)
    if swapped:
        return swapped
    off, rough = _told_off(exercise, given - right, unit)
    does = exercise.effect(givens, off, replace(say, rough=rough))
    look = "Do the sum once more, one line for each step; a hint gives the next one."
    return Feedback(OTHER, OTHER, gave, does, look)


def in_the_other_unit(given: int, right: int, near: int, gave: str) -> Feedback | None:
    """What to say where the figure would be right with the other unit behind it."""
    for wrote, meant, swapped in (("mm", "in", given * 254 // 10), ("in", "mm", given * 10 // 254)):
        if abs(swapped - right) <= near:
            does = f"In {UNIT_WORDS[wrote]} it is another part altogether."
            look = f"Look at the unit once more: did you mean {UNIT_WORDS[meant]}?"
            return Feedback(WRONG_UNIT, WRONG_UNIT, gave, does, look)
    return None


def coarse(off: int, step: int) -> tuple[int, bool]:
    """How far off a number is: exactly where it is near, down to a whole step where it is far.

    A number out of the air, told its exact difference, would give the answer away. It is off by more than what is
    told, so one that is off by whole steps is told the step before.
    """
    if abs(off) <= step:
        return off, False
    size = (abs(off) - 1) // step * step
    return (size if off > 0 else -size), True


def _told_off(exercise: Exercise, off: int, unit: str) -> tuple[int, bool]:
    """By how much it is off, as it may be told; of things, no more than that it is off by more than one."""
    if exercise.counted:
        return max(-1, min(1, off)), abs(off) > 1
    step = exercise.coarse or (_COARSE_CALIPER if exercise.caliper else COARSE_RULE)
    return coarse(off, step.of(unit))


def _without_unit(answer: object, unit: str) -> Feedback:
    gave = f"You gave {_shown(answer)}, without a unit."
    look = f"Write the unit behind the number, such as {_EXAMPLE[unit]}."
    return Feedback(NO_UNIT, NO_UNIT, gave, "In inches and in millimetres it is two different boards.", look)


def _unreadable(answer: object, unit: str, sentence: str, assumed: str | None) -> Feedback:
    if not assumed and isinstance(answer, str) and _is_bare_number(answer):
        return _without_unit(answer, unit)
    look = f"Type one length, such as {_EXAMPLE[unit]}."
    other = _other_unit(answer)
    if other:
        gave = f"You gave {_shown(answer)}; {other} is not a unit of length."
        return Feedback(WRONG_UNIT, WRONG_UNIT, gave, _NOT_ON_A_RULE, look)
    # The reader's sentence ends in an example of its own, which might happen to be the answer.
    wrong, _, _example = sentence.rpartition("; ")
    gave = f"{wrong}.".replace("`", '"') if wrong else f"You gave {_shown(answer)}, which is not a length."
    return Feedback(NOT_A_LENGTH, NOT_A_LENGTH, gave, _NOT_ON_A_RULE, look)


def _is_bare_number(text: str) -> bool:
    """Whether nothing but a unit is missing for text to be a length."""
    try:
        read_length(f"{text} mm", zero=True, negative=True)
    except LengthError:
        return False
    return True


def _other_unit(answer: object) -> str:
    """The unit of `answer` where it has one that measures something else than length, or ""."""
    from shoplib.measure import ureg  # pint loads slowly, and is asked only where a length could not be read

    if hasattr(answer, "unit_items"):
        return "" if answer.check("[length]") else f"{answer.units}"
    split = re.fullmatch(r"\s*(.*\d)\s*([^\W\d]+)\s*", answer) if isinstance(answer, str) else None
    if split is None or not _is_bare_number(split[1]) or split[2] not in ureg:
        return ""
    return "" if ureg.parse_units(split[2]).is_compatible_with("mm") else split[2]


def _shown(answer: object) -> str:
    """The answer as it is repeated to the learner: one short line."""
    if isinstance(answer, int) and not isinstance(answer, bool) and abs(answer) > 10**12:
        return "a very large number"
    if not isinstance(answer, str | Number) and not hasattr(answer, "unit_items"):
        return f"something of type {type(answer).__name__}"
    text = "".join(sign if sign.isprintable() else "?" for sign in " ".join(str(answer).split()))
    return text if len(text) <= 40 else text[:37] + "..."
