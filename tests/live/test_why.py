"""Any size on a panel can be asked, and the answer comes from the functions that gave it."""

import re

import pytest

from shoplib.documents.examples import example
from shoplib.live.carcass_panel import carcass_panel, width_panel
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.front_panel import front_panel
from shoplib.live.panel import Outcome, Panel
from shoplib.live.project_panel import project_panel
from shoplib.live.saw_panel import saw_panel
from shoplib.live.table import Table
from shoplib.live.why import lengths
from shoplib.measure import read_length
from shoplib.model.solved import ClosingSum
from tests.live.picked import picked


def asked(panel) -> dict[str, str]:
    """What can be picked on the panel: name and text."""
    shown = "".join(drawing.svg for drawing in panel.outcome.drawings)
    shown += "".join(table.html() for table in panel.outcome.tables)
    return dict(picked(shown))


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
        "bottom, length 33 19/32 in = case width 34 1/2 in "
        "- 2 x thickness of case sheet 0.703 in + 2 x rabbet depth of the case corners 1/4 in, "
        "to the nearest whole 1/32 in"
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


def test_a_fault_of_ours_in_a_working_is_heard_of():
    def fails(name):
        raise KeyError(name)

    table = Table("Boards", ("Board", "Length"), [("side", "9 in")], (1,))
    panel = Panel("Case", [], lambda _: Outcome([], [table], why=fails))
    with pytest.raises(KeyError):
        panel.working.ask("table/0/1")


def test_a_press_in_the_browser_asks():
    panel = carcass_panel("mm")
    panel.working._handle_custom_msg({"ask": "table/0/2"}, [])
    assert panel.working.lines


PANELS = {
    "first": width_panel, "carcass": carcass_panel, "drawer": drawer_panel, "fronts": front_panel, "saw": saw_panel,
    "whole case": lambda unit: project_panel(example("under_bench_case"), unit),
}


def unfolded(name: str, unit: str):
    panel = PANELS[name](unit)
    for _ in panel.groups[1:]:
        panel.unfold()
    return panel


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", PANELS)
def test_every_length_of_a_closing_sum_says_why(name, unit):
    panel = unfolded(name, unit)
    found = picked(panel._sums.value, "sum/")
    lengths = [text for line in panel.outcome.sums for text in re.findall(rf"[\d./]+ {unit}\b(?! \w+ short)", line)]
    bracketed = [text for line in panel.outcome.sums for text in re.findall(rf"\([+-][\d.]+ {unit}\)", line)]
    assert len(found) == len(lengths) - len(bracketed)
    assert found or not panel.outcome.sums
    for ask, text in found:
        panel.working.ask(ask)
        assert panel.working.asked == ask, (ask, text)
        said = re.search(rf"[\d./]+(?: \d+/\d+)? {unit}\b", panel.working.lines[0])[0]
        assert abs(read_length(said, zero=True) - read_length(text, zero=True)) < read_length("0.02 in"), (ask, text)


def test_a_sum_follows_its_slider_and_an_open_one_says_what_is_left():
    panel = carcass_panel("in")
    panel.working.ask("sum/0/1")
    assert panel.working.lines[0].startswith("bay 1, 33 3/32 in")
    panel.enter("width", "30 in")
    assert panel.working.lines[0].startswith("bay 1, 28 19/32 in (+0.00025 in) = case width 30 in - 2 x ")
    assert lengths(ClosingSum((("a", 3), ("b", 4)), ("whole", 9)))[-1] == ("what is left over", 2)


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", ["fronts", "whole case"])
def test_the_sizes_inside_fronts_say_why(name, unit):
    panel = unfolded(name, unit)
    labels = re.findall(r'<g data-ask="([^"]+)">(.*?)</g>', panel.outcome.drawings[0].svg)
    assert labels
    for ask, inside in labels:
        panel.working.ask(ask)
        assert panel.working.asked == ask
        lines = panel.working.lines
        wide, high = (next(line for line in lines if f", {side} " in line) for side in ("width", "height"))
        first = re.search(r"([\d./]+(?: \d+/\d+)?)(?: \([^)]*\))? × ([\d./]+(?: \d+/\d+)?)",
                          " ".join(re.findall(r">([^<]+)</text>", inside)))
        for written, line in zip(first.groups(), (wide, high), strict=True):
            said = re.search(rf", (?:width|height) ([\d./]+(?: \d+/\d+)? {unit})\b", line)[1]
            assert abs(read_length(f"{written} {unit}") - read_length(said)) < read_length("0.02 in"), (ask, line)


@pytest.mark.parametrize("name", ["sum/9/0", "sum/0/99", "sum/0/x"])
def test_a_sum_that_is_not_shown_closes_the_box(name):
    panel = carcass_panel("in")
    panel.working.ask(name)
    assert (panel.working.asked, panel.working.lines) == ("", [])
