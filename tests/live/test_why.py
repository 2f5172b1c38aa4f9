"""Any size on a panel can be asked, and the answer comes from the functions that gave it."""

import re

import pytest

from shoplib.documents.examples import example
from shoplib.live.carcass_panel import carcass_panel
from shoplib.live.project_panel import project_panel
from shoplib.measure import read_length


def asked(panel) -> dict[str, str]:
    """What can be picked on the panel: name and text."""
    shown = "".join(drawing.svg for drawing in panel.outcome.drawings)
    shown += "".join(table.html() for table in panel.outcome.tables)
    return dict(re.findall(r'data-ask="([^"]+)"[^>]*>([^<]+)<', shown))


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_every_size_of_the_whole_case_says_why(unit):
    panel = project_panel(example("under_bench_case"), unit)
    names = asked(panel)
    assert len(names) > 120
    for name, text in list(names.items())[::7]:
        panel.working.ask(name)
        assert panel.working.asked == name
        first = panel.working.lines[0]
        said = first.partition(" = ")[0].removeprefix("this size ").rpartition(", ")[2]
        if name.startswith("table/"):
            number = re.search(rf"[\d./ ]+ {unit}", said)
            assert abs(read_length(number[0].strip()) - read_length(text)) < read_length("0.02 in"), (name, text, first)


def test_the_bottom_says_its_sum_and_follows_the_slider():
    panel = carcass_panel("in")
    row = next(i for i, row in enumerate(panel.outcome.tables[0].rows) if row[0].startswith("bottom"))
    panel.working.ask(f"table/{row}/2")
    assert panel.working.lines[0] == (
        "bottom, length 33 19/32 in (+0.00025 in) = case width 34 1/2 in "
        "- 2 x thickness of case sheet 0.703 in + 2 x rabbet depth of the case corners 1/4 in"
    )
    panel.enter("width", "30 in")
    assert "case width 30 in" in panel.working.lines[0]
    panel.enter("joint_depth", "5/8 in")
    panel.enter("thickness", "0.5 in")
    assert panel.stale
    assert "case width 30 in" in panel.working.lines[0]


@pytest.mark.parametrize("name", ["", "table/99/2", "table/0/1", "drawing/7/1.1", "drawing/0/x", "nothing", "a/b/c/d"])
def test_what_is_not_shown_closes_the_box(name):
    panel = carcass_panel("in")
    panel.working.ask("table/0/2")
    panel.working.ask(name)
    assert (panel.working.asked, panel.working.lines) == ("", [])


def test_a_press_in_the_browser_asks():
    panel = carcass_panel("mm")
    panel.working._handle_custom_msg({"ask": "table/0/2"}, [])
    assert panel.working.lines
