"""The shipped projects laid out, each once for all tests: what is laid out in two seconds serves for what is asked."""

from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from functools import cache
from itertools import count
from pathlib import Path
from types import SimpleNamespace
from unittest.mock import patch

from shoplib.buying.laid import LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.documents.project_file import read_project
from shoplib.layout import search
from shoplib.model.cabinet import solve

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
NAMES = [path.stem for path in PROJECTS]

LOOKS = 600
"""How often the search looks at the clock in a second of a quiet machine, about."""


@contextmanager
def clock_that_counts() -> Iterator[None]:
    """The search sees a clock that goes on with each look at it, so that a busy machine finds the same layout."""
    looks = count()

    def clock() -> float:
        return next(looks) / LOOKS

    with ExitStack() as patched:
        for module in ("laid_out", "searched"):
            patched.enter_context(patch(f"shoplib.buying.{module}.time", SimpleNamespace(monotonic=clock)))
        for searching in (search.layouts, search.pool):
            patched.enter_context(patch.object(searching, "__defaults__", (clock,)))
        yield


@cache
def laid(name: str) -> LaidOut:
    """The project of this name, laid out."""
    path = next(path for path in PROJECTS if path.stem == name)
    with clock_that_counts():
        return laid_out(solve(read_project(path)), 2.0)
