"""Pocket screws must be driven: their pockets look where a bit can reach them when the board goes in."""

from dataclasses import replace

import shoplib.model.assembly
from shoplib.checks import check
from shoplib.checks.driver_room import find_pockets_out_of_reach, pocket_face
from shoplib.documents.cautions import hangs
from shoplib.model.cabinet import solve
from shoplib.model.project import Back
from tests.building.cases import shipped


def test_before_a_back_in_grooves_the_pockets_of_a_rail_open_to_the_front():
    """A bit does not pass a back that stands in its grooves (read off the drawing: it begins where the rail ends)."""
    cabinet = shipped("finger_jointed_drawers")
    assert pocket_face(cabinet.by_name["rail 1"]) == "front"
    assert find_pockets_out_of_reach(cabinet) == ()


def test_pockets_behind_which_the_back_stands_stop_the_plan(monkeypatch):
    """As it was drawn once: the pockets in the rear face, the back before them."""
    drill = shoplib.model.assembly.drill_pockets
    monkeypatch.setattr(shoplib.model.assembly, "drill_pockets", lambda *given: drill(*given[:5]))
    cabinet = solve(shipped("finger_jointed_drawers").project)
    assert pocket_face(cabinet.by_name["rail 1"]) == "rear"
    told = [finding for finding in check(cabinet) if finding.check == "driver room"]
    assert [(finding.level, finding.boards) for finding in told] == [("stop", ("rail 1", "back"))]
    assert "rear face of rail 1 cannot be reached: back stands before them" in told[0].text


def test_a_back_that_is_nailed_on_last_leaves_the_rear_free():
    drawn = shipped("finger_jointed_drawers").project
    back = Back("applied", sheet="thin sheet")
    cabinet = solve(replace(drawn, carcass=replace(drawn.carcass, back=back)))
    assert pocket_face(cabinet.by_name["rail 1"]) == "rear"
    assert find_pockets_out_of_reach(cabinet) == ()


def test_a_rail_that_only_stiffens_does_not_hang_a_case():
    """By what the project says of it (`in_use.stands`), not by having a rail."""
    cabinet = shipped("finger_jointed_drawers")
    assert not hangs(cabinet)
    assert hangs(shipped("wheel_wall_drawers"))
