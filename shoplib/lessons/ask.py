"""Puts an exercise on the page, with the learner's own numbers and unit."""

from shoplib.documents.atomic import WriteError
from shoplib.lessons.choice import BEFORE_ANY, read_choice, save_unit, unit_in_use
from shoplib.lessons.course import opens_page
from shoplib.lessons.exercise import Exercise
from shoplib.lessons.judge import NUMBERS
from shoplib.lessons.large_type import large_in_use
from shoplib.lessons.posed import pose
from shoplib.lessons.posed_set import pose_set
from shoplib.lessons.progress import note_answer, read_progress
from shoplib.lessons.set_exercise import SetExercise
from shoplib.live.exercise_box import ExerciseBox
from shoplib.live.kept_choice import KeptChoice

UNITS = {"in": "inches", "mm": "millimetres"}
EITHER = "Choose inches or millimetres. Whichever it is, the other is read too, wherever you write its unit."
NOT_CHOSEN = "In inches for now. For millimetres: choose near the top of 00 Start here, then menu Run, Run All Cells."


def ask(exercise: Exercise | SetExercise) -> ExerciseBox:
    """The exercise in a box with Check, Hint and Show working, in the unit that the learner chose.

    The box also answers in a cell: `box.check("33 27/32 in")`, `box.hint()`, `box.show_working()`; a whole set
    is checked by its names, `box.check({"bottom": "33 27/32 in", ...})`.
    """
    choice = read_choice()
    chosen = choice or BEFORE_ANY
    return ExerciseBox(
        (pose_set if isinstance(exercise, SetExercise) else pose)(exercise, chosen.learner, chosen.unit),
        note=NOT_CHOSEN if not choice and opens_page(exercise) else "",
        standing=standing(exercise),
        keep=lambda judged: keep(exercise.id, exercise.version, judged.kind, judged.right, chosen.unit),
        large=large_in_use(),
    )


def standing(exercise: Exercise | SetExercise) -> str:
    """How the exercise stands, in a few words; nothing where it was not tried, or has new numbers since."""
    return standing_of(exercise.id, exercise.version, unit_in_use())


def standing_of(id: str, version: int, unit: str) -> str:
    """The same for anything that progress keeps under a name and a version of its own, for who works in `unit`."""
    tried = read_progress().get(id)
    return tried.told(unit) if tried and tried.version == version else ""


def keep(id: str, version: int, kind: str, right: bool, unit: str) -> str:
    """Keep an answer if its `kind` says that it was a number, and say how it stands now; `unit` is that of the
    exercise.
    """
    if kind not in NUMBERS:
        return standing_of(id, version, unit)
    try:
        return note_answer(id, version, right, unit=unit).told(unit)
    except WriteError as fault:
        return f"This could not be kept. {fault}"


def choose_unit() -> KeptChoice[str]:
    """The question of the start page, inches or millimetres; the answer holds for all notebooks."""
    choice = read_choice()
    return KeptChoice(
        "unit", "I work in", UNITS, choice.unit if choice else None, save_unit, EITHER, large_in_use()
    )
