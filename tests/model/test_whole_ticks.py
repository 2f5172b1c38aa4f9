"""A float where a length of a project is meant is refused where it is written, before any sum."""

from dataclasses import replace

import pytest

from shoplib.measure import INCH, MM
from shoplib.model.project import Drawers, Fronts, Measured, Opening, PartSize, PullOut, Rail, Shelves, Size, Space
from shoplib.model.sheet import Sheet

SLIPS = {
    "Size.width": lambda: Size("outside", 20.5 * INCH, INCH, INCH),
    "Fronts.gap": lambda: Fronts(gap=3.0),
    "Fronts.reveal": lambda: Fronts(reveal=True),
    "Space.width": lambda: Space((INCH, 1.5 * INCH), (INCH,), (INCH,)),
    "Drawers.given": lambda: Drawers(given=("rest", 4.5 * INCH)),
    "Shelves.at": lambda: Shelves(at=(10.5 * INCH,)),
    "PullOut.room": lambda: replace(PullOut(), room=4.0),
    "Rail.at": lambda: Rail(INCH, at=0.5),
    "Sheet.readings": lambda: Sheet("ply", "plywood", 18 * MM, (17.8 * MM,)),
    "Opening.front": lambda: Opening(15.5 * INCH, INCH),
    "PartSize.length": lambda: PartSize(29.5 * INCH),
    "Measured.depths": lambda: Measured(depths={"bay 1": 19.25 * INCH}),
}


@pytest.mark.parametrize("where", SLIPS)
def test_a_float_is_refused_by_name(where):
    with pytest.raises(TypeError, match=rf"^{where}: a length is a whole number of ticks, not .*read_length"):
        SLIPS[where]()
