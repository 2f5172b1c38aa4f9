"""The shipped projects laid out, each once for all tests: what is laid out in two seconds serves for what is asked."""

from functools import cache
from pathlib import Path

from shoplib.buying.laid import LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
NAMES = [path.stem for path in PROJECTS]


@cache
def laid(name: str) -> LaidOut:
    """The project of this name, laid out."""
    path = next(path for path in PROJECTS if path.stem == name)
    return laid_out(solve(read_project(path)), 2.0)
