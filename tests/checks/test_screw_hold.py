"""What screws hold by hand: into a face, into the edge of plywood, into the side of wood as it grows."""

from pathlib import Path

import pytest

from shoplib.checks.screw_hold import hold_of
from shoplib.documents.project_file import project_from_text
from shoplib.measure import INCH
from shoplib.model.cabinet import solve

TEXT = (Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml").read_text(encoding="utf-8")
PLYWOOD = '[sheets."case sheet"]\nkind = "plywood"'
SOLID = '[sheets."case sheet"]\nkind = "solid"\nspecies = "sugar maple"'


def held(what, text=TEXT):
    cabinet = solve(project_from_text(text))
    return hold_of(cabinet, next(piece for piece in cabinet.hardware if piece.what == what))


def side_grain(hold, gravity):
    """2,850 G^2 D lb for each inch of thread (read); the shank of a No. 8 screw is 0.164 in thick."""
    return 2850 * gravity**2 * 0.164 * hold.thread / INCH


@pytest.mark.parametrize(("what", "text", "gravity", "part"), [
    ("front screws", TEXT, 0.40, 1),  # through the box front, into the face of the front
    ("cleat screws", TEXT, 0.40, 0.60),  # through the panel, into the edge of the cleat: plywood has end grain there
    ("cleat screws", TEXT.replace(PLYWOOD, SOLID), 0.63, 1),  # a solid cleat stands upright: its edge is side grain
])
def test_a_screw_holds_less_in_the_edge_of_plywood(what, text, gravity, part):
    """0.60 in end grain (trade page, read), and so in any edge of plywood (common practice, no source)."""
    hold = held(what, text)
    assert hold.in_end == (part < 1)
    assert hold.one.allowable.to("pound_force").magnitude == pytest.approx(side_grain(hold, gravity) * part, rel=1e-3)
