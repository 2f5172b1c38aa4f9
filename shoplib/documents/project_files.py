"""Which of the TOML files that lie in a folder are projects."""

import tomllib
from pathlib import Path

from shoplib.documents.project_file import fields_of
from shoplib.model.project import Project

_ELSEWHERE_TOO = {"name", "measured"}
"""Keys that other files have as well, such as `to_measure.toml`."""


def project_files(folder: Path) -> list[Path]:
    """The projects in a folder, by name.

    A file that cannot be read may be a project with a slip in it: it is among them, and what reads it says what is
    wrong. One that can be read and has nothing that only a project has is none.

    >>> from shoplib.documents.examples import PROJECTS
    >>> [path.stem for path in project_files(PROJECTS)][:2], project_files(PROJECTS.parent)
    (['finger_jointed_drawers', 'rolling_stand'], [])
    """
    found = [path for path in folder.glob("*.toml") if path.is_file() and _may_be_one(path)]
    return sorted(found, key=lambda path: path.name.casefold())


def _may_be_one(path: Path) -> bool:
    try:
        table = tomllib.loads(path.read_bytes().decode("utf-8-sig"))
    except (OSError, ValueError, RecursionError):
        return True
    return any(key in table for key in fields_of(Project) if key not in _ELSEWHERE_TOO)
