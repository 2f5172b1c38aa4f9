"""In a short run each project is printed on one paper, in turn; with --long on both."""

from shoplib.documents.paper import PAPERS
from tests.printed.sets import PROJECTS


def on_other_paper(item) -> bool:
    """Whether a case is of a shipped project on the paper that is not its turn."""
    given = getattr(item, "callspec", None) and item.callspec.params
    if not given or "paper" not in given:
        return False
    project = given.get("project", given.get("name"))
    papers = [paper for paper in PAPERS if given["paper"] in (paper, PAPERS[paper])]
    return project in PROJECTS and papers != [list(PAPERS)[PROJECTS.index(project) % len(PAPERS)]]


def pytest_collection_modifyitems(config, items):
    if config.getoption("--long"):
        return
    other = [item for item in items if "tests/printed/" in item.nodeid and on_other_paper(item)]
    items[:] = [item for item in items if item not in other]
    config.hook.pytest_deselected(items=other)
