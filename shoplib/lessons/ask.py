"""Puts an exercise on the page, with the learner's own numbers and unit."""

from shoplib.lessons.choice import BEFORE_ANY, read_choice, save_unit
from shoplib.lessons.exercise import Exercise
from shoplib.lessons.posed import pose
from shoplib.live.exercise_box import ExerciseBox
from shoplib.live.unit_choice import UnitChoice

NOT_CHOSEN = "This is in inches until you choose inches or millimetres on the page 00 Start here."


def ask(exercise: Exercise) -> ExerciseBox:
    """The exercise in a box with Check, Hint and Show working, in the unit that the learner chose.

    The box also answers in a cell: `box.check("33 27/32 in")`, `box.hint()`, `box.show_working()`.
    """
    choice = read_choice()
    chosen = choice or BEFORE_ANY
    return ExerciseBox(pose(exercise, chosen.learner, chosen.unit), note="" if choice else NOT_CHOSEN)


def choose_unit() -> UnitChoice:
    """The question of the start page, inches or millimetres; the answer holds for all notebooks."""
    choice = read_choice()
    return UnitChoice(choice.unit if choice else None, lambda unit: save_unit(unit).unit)
