"""An exercise for a whole set of sizes put to one learner, with that learner's numbers."""

from dataclasses import dataclass, replace
from functools import cached_property

from shoplib.lessons.exercise import Givens
from shoplib.lessons.numbers import givens_for
from shoplib.lessons.say import UNIT_WORDS, Say
from shoplib.lessons.set_exercise import SetExercise
from shoplib.lessons.set_judge import SetFeedback, judge_set
from shoplib.measure.traced import Traced
from shoplib.model.solved import Cabinet
from shoplib.words.working import working


@dataclass(frozen=True)
class PosedSet:
    """`exercise` with its `givens`, for a learner who works in `unit` ("in" or "mm")."""

    exercise: SetExercise
    givens: Givens
    unit: str

    @cached_property
    def case(self) -> Cabinet:
        """The case as solved, whose lengths are shown in the learner's unit."""
        return replace(self.exercise.case(self.givens), style=Say(self.unit).style)

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
        """What stands beside each field: the unit."""
        return self.unit

    @property
    def unit_word(self) -> str:
        """The learner's unit in words."""
        return UNIT_WORDS[self.unit]

    @property
    def question(self) -> str:
        """The question with its numbers."""
        return self.exercise.question.format_map(self.givens.texts)

    @property
    def facts(self) -> tuple[tuple[str, str], ...]:
        """What is given, as rows of name and text."""
        return self.givens.facts

    @property
    def fields(self) -> tuple[tuple[str, str], ...]:
        """The sizes that are asked for, as rows of name and label."""
        return tuple((one.name, one.label) for one in self.exercise.asked)

    @property
    def hints(self) -> tuple[str, ...]:
        """The hints in order, each a step further; none holds a right size."""
        return tuple(hint.format_map(self.givens.texts) for hint in self.exercise.hints)

    @property
    def answer(self) -> dict[str, str]:
        """The planned sizes by name, for whoever asks for them; others may be right too."""
        return {one.name: Say(self.unit).length(one.right(self.case)) for one in self.exercise.asked}

    @property
    def working(self) -> tuple[str, ...]:
        """The solution on paper: for each size its name, then its lines."""
        say = Say(self.unit)
        return tuple(line for one in self.exercise.asked for line in (f"{one.label}:", *one.working(self.givens, say)))

    @property
    def own_working(self) -> tuple[str, ...]:
        """How the workbook came by each size, from the very sums that it works with."""
        style, traced = Say(self.unit).style, self.exercise.case(self.givens.traced())
        rights = {one.label.lower(): one.right(traced) for one in self.exercise.asked}
        told = (working(right, label, style) for label, right in rights.items() if isinstance(right, Traced))
        return tuple(line for lines in told for line in lines)

    def check(self, answers: object = None, unit: str | None = None) -> SetFeedback:
        """Judge a set. `unit` is the one printed beside the fields; from a cell, write it out."""
        return judge_set(self.exercise, self.givens, self.case, self.unit, answers, unit)

    def __repr__(self) -> str:
        return f"Exercise {self.id}: {self.question}"


def pose_set(exercise: SetExercise, learner: str, unit: str) -> PosedSet:
    """The exercise with the numbers of `learner` in `unit`, the same at each call."""
    return PosedSet(exercise, givens_for(exercise, learner, unit), unit)
