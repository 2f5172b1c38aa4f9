"""An opening that is wider at its back: the shims stand in the step that puts the slides on, with their thickness."""

from dataclasses import replace

from shoplib.checks import check
from shoplib.documents.paper import PAPERS
from shoplib.measure import read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Measured, Opening
from shoplib.printed.build.pages import build_pages
from shoplib.printed.plan.board_pages import board_pages
from shoplib.printed.typeset.blocks import told
from tests.building.cases import shipped


def test_shims_are_told_with_their_thickness_where_the_slides_go_on():
    """By hand: slides take 1/2 in a side, so the box is 22 19/32 - 1 in wide; 3/32 in more at the back is 3/64 in, that
    is 0.047 in, behind each slide.
    """
    front, back = read_length("22 19/32 in"), read_length("22 11/16 in")
    read = {f"bay 1 drawer {n}": Opening(front, back) for n in (2, 3)} | {"bay 1 drawer 1": Opening(front, front)}
    case = solve(replace(shipped("under_bench_case").project, measured=Measured(read)))
    steps = told(build_pages(case, (), ())).split("\nStep ")
    [shimmed] = [step for step in steps if "Shim the back" in step]
    assert "Slides" in shimmed.splitlines()[0]
    assert "Bay 1 drawers 2 and 3: the opening is 3/32 in wider at the back" in shimmed
    assert "0.047 in behind each slide, tapering to nothing at the front" in shimmed
    assert shimmed.index("Rest the slide on the spacer") < shimmed.index("Shim the back") < shimmed.index("Drive one")
    findings = check(case)
    assert any("shim the slides" in found.text for found in findings)
    assert "shim" not in told(board_pages(case, findings, PAPERS["letter"]))
