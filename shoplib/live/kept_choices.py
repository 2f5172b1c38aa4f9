"""The way back from a project to the controls of a panel, for what was kept in a file."""

from collections.abc import Callable
from dataclasses import replace
from typing import TypeVar

from shoplib.measure import Style
from shoplib.model.project import Project

Choices = TypeVar("Choices")

_IN_WORDS = {"in": "inches", "mm": "millimetres"}


class OtherProject(ValueError):
    """A project that the controls of a panel cannot show; the text is one sentence that says why."""


def choices_again(
    project: Project, style: Style, read: Callable[[Project], Choices], make: Callable[[Choices], Project]
) -> Choices:
    """The choices that `make` makes this project of, whatever its name; `read` finds them.

    They are tried: they must give the very same project again. `read` raises LookupError or TypeError, or gives wrong
    ones, where there are none. Raises OtherProject then, and for a project in the other unit.
    """
    if project.style.unit != style.unit:
        kept, now = _IN_WORDS[project.style.unit], _IN_WORDS[style.unit]
        raise OtherProject(f"it was kept in {kept}, and this panel is in {now}: choose {kept} on 00 Start here.")
    try:
        choices = read(project)
        made = make(choices)
        same = made == replace(project, name=made.name)
    except (LookupError, TypeError):
        same = False
    if not same:
        raise OtherProject("there is more in it than these controls can set.")
    return choices
