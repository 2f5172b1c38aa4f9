"""An exercise put to one learner, with that learner's numbers: the question, the check, the help."""

from dataclasses import dataclass

from shoplib.lessons.exercise import Exercise, Givens
from shoplib.lessons.judge import Feedback, judge
from shoplib.lessons.numbers import givens_for
from shoplib.lessons.say import UNIT_WORDS, Say
from shoplib.measure.traced import Traced
from shoplib.words.working import working


@dataclass(frozen=True)
class Posed:
    """`exercise` with its `givens`, for a learner who works in `unit` ("in" or "mm")."""

    exercise: Exercise
    givens: Givens
    unit: str

    @property
    def id(self) -> str:
        """The name of the exercise."""
        return self.exercise.id

    @property
    def title(self) -> str:
        """Its heading."""
        return self.exercise.title

    @property
    def beside(self) -> str:
        """What stands beside the field: the unit, or what is counted."""
        return self.exercise.counted.many if self.exercise.counted else self.unit

    @property
    def unit_word(self) -> str:
        """The same in words."""
        return self.exercise.counted.many if self.exercise.counted else UNIT_WORDS[self.unit]

    @property
    def question(self) -> str:
        """The question with its numbers."""
        return self.exercise.question.format_map(self.givens.texts)

    @property
    def facts(self) -> tuple[tuple[str, str], ...]:
        """What is given, as rows of name and text."""
        return self.givens.facts

    @property
    def fields(self) -> tuple[()]:
        """It has one answer, which needs no name."""
        return ()

    @property
    def hints(self) -> tuple[str, ...]:
        """The hints in order, each a step further; none holds the answer."""
        return tuple(hint.format_map(self.givens.texts) for hint in self.exercise.hints)

    @property
    def answer(self) -> str:
        """The right answer, for whoever asks for it."""
        if self.exercise.counted:
            return self.exercise.counted.told(self.exercise.right(self.givens))
        return Say(self.unit, self.exercise.caliper).length(self.exercise.right(self.givens))

    @property
    def working(self) -> tuple[str, ...]:
        """The solution on paper, line by line, ending in the answer."""
        return self.exercise.working(self.givens, Say(self.unit, self.exercise.caliper))

    @property
    def own_working(self) -> tuple[str, ...]:
        """How the workbook came by the answer, from the very sums that it works with."""
        say, right = Say(self.unit, self.exercise.caliper), self.exercise.right(self.givens.traced())
        return working(right, "the answer", say.style) if isinstance(right, Traced) else ()

    def check(self, answer: object = None, unit: str | None = None) -> Feedback:
        """Judge an answer. `unit` is the one printed beside a field; from a cell, write it out."""
        return judge(self.exercise, self.givens, self.unit, answer, unit)

    def __repr__(self) -> str:
        return f"Exercise {self.id}: {self.question}"


def pose(exercise: Exercise, learner: str, unit: str) -> Posed:
    """The exercise with the numbers of `learner` in `unit`, the same at each call."""
    return Posed(exercise, givens_for(exercise, learner, unit), unit)
