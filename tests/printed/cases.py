"""The shipped projects, solved, and what is printed of them in true scale."""

from functools import cache
from pathlib import Path

from shoplib.checks import check
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_file import plan_dict
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
NAMES = [path.stem for path in PROJECTS]


@cache
def solved(name: str) -> Cabinet:
    return solve(read_project(next(path for path in PROJECTS if path.stem == name)))


@cache
def planned(name: str) -> dict:
    """What plan.json says."""
    cabinet = solved(name)
    return plan_dict(cabinet, check(cabinet))


def printed(title: str, blocks: list, paper: str) -> bytes:
    return set_in_type(title, blocks, Stamp("Trial", "2222-3333"), PAPERS[paper], "Measure first.")
