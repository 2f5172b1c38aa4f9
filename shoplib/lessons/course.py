"""The course: its lessons in order, with the exercises, sets and words of each.

A lesson is in the course as soon as it has its module of exercises, `lesson_NN.py`; nothing else lists it.
"""

from dataclasses import dataclass
from importlib import import_module
from pkgutil import iter_modules

import shoplib.lessons
from shoplib.documents import glossary
from shoplib.lessons.exercise import Exercise
from shoplib.lessons.set_exercise import SetExercise
from shoplib.lessons.word import Word, sentence

PAGES = {
    "00": ("Start here", "00_start_here.ipynb"),
    "01": ("Measuring", "01_measuring.ipynb"),
    "02": ("Carcass sizing", "02_carcass_sizing.ipynb"),
    "03": ("Joinery allowances", "03_joinery_allowances.ipynb"),
    "04": ("Drawer clearance", "04_drawer_clearance.ipynb"),
    "05": ("Fronts and gaps", "05_fronts_and_gaps.ipynb"),
    "06": ("Hardware layout", "06_hardware_layout.ipynb"),
    "07": ("Will it hold", "07_will_it_hold.ipynb"),
    "08": ("Cut list and sheets", "08_cut_list_and_sheets.ipynb"),
    "j01": ("The screwed butt", "joints/butt.ipynb"),
    "j02": ("Pocket screws", "joints/pocket_screws.ipynb"),
    "j03": ("The rabbet", "joints/rabbet.ipynb"),
    "j04": ("The dado", "joints/dado.ipynb"),
    "j05": ("Groove and tongue", "joints/groove_and_tongue.ipynb"),
    "j06": ("The drawer-front joint", "joints/drawer_front_joint.ipynb"),
    "j07": ("The finger joint", "joints/finger.ipynb"),
    "j08": ("Half laps", "joints/half_laps.ipynb"),
    "j09": ("Dowels and splines", "joints/dowels_and_splines.ipynb"),
    "j10": ("Bridle, mortise and tenon", "joints/bridle_mortise_and_tenon.ipynb"),
    "j11": ("The dovetail", "joints/dovetail.ipynb"),
    "j12": ("The splined mitre", "joints/splined_mitre.ipynb"),
}
"""Title and file of each page, by the number of the lesson; those of joints have a j before theirs."""

PLAN_WORDS = {"cleat": "02", "inside face": "03", "PS 1": "01", "toe notch": "02",
              "undermount": "04", "upright": "02"}
"""Words that the papers of a plan explain, and the page that uses them first without teaching them as new ones."""


@dataclass(frozen=True)
class Lesson:
    """One lesson: `page` is the file of its page, beside the other pages."""

    number: str
    title: str
    page: str
    exercises: tuple[Exercise, ...]
    sets: tuple[SetExercise, ...]
    words: tuple[Word, ...]

    @property
    def name(self) -> str:
        """Number and title, as a link to it is called; no page of a joint shows a number, so it is called by none."""
        return f"{self.number} {self.title}" if self.number.isdigit() else self.title

    @property
    def asked(self) -> tuple[Exercise | SetExercise, ...]:
        """All its exercises, in the order of the page."""
        return (*self.exercises, *self.sets)


@dataclass(frozen=True)
class Entry:
    """A word of the glossary; `lesson` teaches it, None for one that stands in `papers` or in cautions alone.

    `used` is the first lesson that uses such a word of the papers of a plan, None where none does.
    """

    word: Word
    lesson: Lesson | None
    used: Lesson | None = None
    papers: str = "in the lists and drawings of a plan"


def lessons() -> tuple[Lesson, ...]:
    """The lessons that are there, in the order of the course.

    >>> [lesson.title for lesson in lessons() if lesson.number in ("00", "02")]
    ['Start here', 'Carcass sizing']
    """
    there = {module.name for module in iter_modules(shoplib.lessons.__path__)}
    return tuple(_lesson(number, there) for number in PAGES if f"lesson_{number}" in there)


def entries() -> tuple[Entry, ...]:
    """All words of the workbook in the order of the alphabet, each once, at the lesson where it first stands."""
    found: dict[str, Entry] = {}
    course = {lesson.number: lesson for lesson in lessons()}
    for lesson in course.values():
        for word in lesson.words:
            found.setdefault(word.name.casefold(), Entry(word, lesson))
    for name, meaning in glossary.WORDS.items():
        used = course.get(PLAN_WORDS.get(name, ""))
        found.setdefault(name.casefold(), Entry(Word(name, sentence(meaning)), None, used))
    for name, meaning in glossary.TOOL_WORDS.items():
        found.setdefault(name.casefold(), Entry(Word(name, sentence(meaning)), None, papers="in cautions and set-ups"))
    for name, meaning in glossary.BENCH_WORDS.items():
        found.setdefault(name.casefold(), Entry(Word(name, sentence(meaning)), None, papers="in a plan set"))
    return tuple(found[name] for name in sorted(found))


def opens_page(exercise: Exercise | SetExercise) -> bool:
    """Whether it is the first exercise of its page.

    >>> from shoplib.lessons.lesson_02 import BACK, THICKNESS
    >>> opens_page(THICKNESS), opens_page(BACK)
    (True, False)
    """
    page = import_module(f"shoplib.lessons.lesson_{exercise.id.partition('-')[0]}")
    return exercise.id == page.EXERCISES[0].id


def _lesson(number: str, there: set[str]) -> Lesson:
    exercises = import_module(f"shoplib.lessons.lesson_{number}")
    title, page = PAGES[number]
    return Lesson(number, title, page, exercises.EXERCISES, getattr(exercises, "SETS", ()), _words(number, there))


def _words(number: str, there: set[str]) -> tuple[Word, ...]:
    """The words of a lesson, from a module of their own or from that of its page; none where it has none yet."""
    for module in (f"words_{number}", f"page_{number}"):
        if module in there and hasattr(import_module(f"shoplib.lessons.{module}"), "WORDS"):
            return import_module(f"shoplib.lessons.{module}").WORDS
    return ()
