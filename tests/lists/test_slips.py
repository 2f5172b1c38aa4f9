"""The slip behind a wrong size: what gives it away, and what does not."""

import pytest

from shoplib.model.cabinet import solve
from tests.lists.projects import chest
from tests.lists.test_compare import all_text, set_size, told, typed


@pytest.mark.parametrize(("text", "sold"), [("19 mm", True), ("20 mm", False), ("3/4 in", True), ("7/8 in", False)])
def test_only_a_round_number_just_above_the_sheet_is_what_it_is_sold_as(text, sold):
    """The sheet measures 0.704 in, 17.88 mm: it is sold as up to 1/16 in more (common practice, no source)."""
    cabinet = solve(chest())
    found = told(cabinet, typed(cabinet, set_size("left side; right side", "thickness", text)))
    assert ("that is what the sheet is sold as" in all_text(found)) == sold
