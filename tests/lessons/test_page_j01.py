"""What the screwed butt's own page says of lengths is what the bench and its facts make of the same side."""

import json
import re

import pytest

from shoplib.joints import joint
from shoplib.joints.butt import pilot_depth, reach
from shoplib.lessons.joint_page import cuts_worked, pair_of
from shoplib.live.joint_rows import Row
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length
from shoplib.tables.joint_facts import joint_facts
from tests.pages import NOTEBOOKS

TEXT = "\n".join(
    "".join(cell["source"])
    for cell in json.loads((NOTEBOOKS / "joints" / "butt.ipynb").read_text(encoding="utf-8"))["cells"]
    if cell["cell_type"] == "markdown"
)


@pytest.mark.parametrize("shop", ["in", "mm"])
def test_the_rule_that_adds_half_an_inch_is_told_beside_what_the_bench_takes(shop):
    """Common practice, no source: 2 1/2 times the side and 1/2 in (13 mm) more into end grain."""
    side = pair_of("butt", shop).stock.receives.thickness
    other = joint_facts("butt").rule("length of screw").values[1]
    assert "1/2 in (13 mm) more into end grain" in other.claim.say
    more = INCH // 2 if shop == "in" else 13 * MM
    theirs = int(other.low * side) + more
    taken = joint("butt").usual(pair_of("butt", shop).stock)["screw"]
    found = {"in": r"(\S+ in) for the side above, where the bench takes (\S+ in)",
             "mm": r"\((\S+ mm), where it takes (\S+ mm)\)"}[shop]
    said, bench = (read_length(size) for size in re.search(found, TEXT).groups())
    assert abs(said - theirs) <= (INCH // 200 if shop == "in" else MM // 20) and said != bench == taken
    even = read_length(re.search(r"thinner than (1 in) \((26 mm)\)", TEXT)[1 if shop == "in" else 2])
    assert other.low * even + more == 3 * even


@pytest.mark.parametrize(("shop", "style"), [("in", INCH_STYLE), ("mm", MM_STYLE)])
def test_the_pilot_hole_that_the_page_tells_is_that_of_the_bench(shop, style):
    pair = pair_of("butt", shop)
    screw, deep = re.search(rf"of (\d+ {shop}), (\S+ {shop})", TEXT).groups()
    assert read_length(screw) == pair.values["screw"]
    assert read_length(deep) == pilot_depth(pair.stock, pair.values) < reach(pair.stock, pair.values)
    rows = {what: text for what, _, text in cuts_worked("butt", shop).lines}
    assert rows["2 pilot holes in the bottom, depth"] == deep
    assert rows["screw reaches into the bottom"] == Row("", reach(pair.stock, pair.values)).text(style)
