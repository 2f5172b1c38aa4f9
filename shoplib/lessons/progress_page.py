"""How the exercises of all lessons stand, for the page that shows it."""

from shoplib.lessons.ask import standing
from shoplib.lessons.course import lessons
from shoplib.lessons.large_type import large_in_use
from shoplib.lessons.progress import clear_progress, read_progress
from shoplib.live.progress_view import ProgressView, Standing


def standings() -> tuple[Standing, ...]:
    """Each lesson with its exercises, as they stand on disk now; new numbers make an exercise a new one."""
    kept = read_progress()
    return tuple(
        Standing(lesson.name, tuple(
            (asked.title, how, how != "" and kept[asked.id].right)
            for asked in lesson.asked for how in (standing(asked),)
        ))
        for lesson in lessons()
    )


def show_progress() -> ProgressView:
    """What was tried and found, lesson by lesson, with a button that forgets it after asking once more."""
    return ProgressView(standings, clear_progress, large_in_use())
