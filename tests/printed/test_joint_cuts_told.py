"""Joint cuts stand under the stage that they are of, and the cautions of the saw agree with what its table sets."""

import pytest

from shoplib.documents.cut_order_words import saw_cautions
from shoplib.documents.paper import PAPERS
from shoplib.printed.plan.sheet_pages import HEAD, JOINT_HEAD, sheet_pages
from shoplib.printed.typeset.blocks import Heading, Table
from tests.printed.sets import PROJECTS, solved


@pytest.mark.parametrize("project", PROJECTS)
def test_joint_cuts_stand_under_a_heading_of_their_own(project):
    """Under the heading of a sheet they would be taken for those of its boards alone."""
    heading, seen = None, 0
    for block in sheet_pages(solved(project).found, PAPERS["letter"]):
        if isinstance(block, Heading):
            heading = block
        if isinstance(block, Table) and block.head[:8] == JOINT_HEAD[:8]:
            seen += 1
            assert heading.level == 2
            assert heading.text.startswith("Joint cuts of stage")
    assert seen


def test_the_caution_allows_what_the_table_sets():
    """A crosscut of a sheet without grain may run along the fence (layout/set_by.py): then no caution says that only a
    rip does. Common practice, no source."""
    ways = set()
    for project in PROJECTS:
        for block in sheet_pages(solved(project).found, PAPERS["letter"]):
            if isinstance(block, Table) and block.head[:10] == HEAD[:10]:
                ways |= {(row[HEAD.index("cut")], row[HEAD.index("set by")]) for row in block.rows}
    assert ("crosscut", "fence") in ways
    assert ("rip", "stop") in ways or ("rip", "line") in ways
    said = " ".join(saw_cautions())
    assert "A rip runs along the fence. A crosscut goes on a sled" not in said
    assert "of a sheet that has none to follow, either way" in said
