"""The joint panels at the ends of every control and at random: a joint, or one clear sentence; and why."""

import random
import re

import pytest

from shoplib.draw.asking import dimension
from shoplib.draw.scene import Chain, Scene
from shoplib.live.corner_panel import CORNERS, corner_panel
from shoplib.live.joint_panel import joint_panel
from shoplib.live.joint_project import JOINTS
from shoplib.live.length_control import LengthControl
from shoplib.measure import INCH, MM, read_length
from tests.draw.test_pen import outside, overlaps
from tests.live.picked import picked

PANELS = {"joints": joint_panel, "corners": corner_panel}


@pytest.fixture(params=[(name, unit) for name in PANELS for unit in ("in", "mm")], ids=" ".join)
def panel(request):
    name, unit = request.param
    return PANELS[name](unit)


def open_all(panel):
    while panel.opened != tuple(group.title for group in panel.groups):
        panel.unfold()
    return panel


def put(control, value):
    if isinstance(control, LengthControl):
        control.ticks = value
    else:
        control.value = value


def is_told(panel):
    if panel.stale:
        return panel.message.endswith(".") and "fault in the workbook" not in panel.message and "_" not in panel.message
    shown = panel.outcome
    return shown.tables[0].rows and all(drawing.title and drawing.alt for drawing in shown.drawings)


def test_both_ends_of_every_control(panel):
    kinds = JOINTS if "kind" in panel.controls else (None,)
    for kind in kinds:
        if kind:
            panel.enter("kind", kind)
        for control in panel.controls.values():
            if isinstance(control, LengthControl):
                before = control.ticks
                for end in (control.low, control.high):
                    put(control, end)
                    assert is_told(panel), panel.message
                put(control, before)
        assert not panel.stale
    open_all(panel)
    for control in panel.controls.values():
        if isinstance(control, LengthControl):
            for end in (control.low, control.high):
                put(control, end)
                assert is_told(panel), panel.message


def test_random_settings(panel, count):
    draw, built = random.Random(11), 0
    open_all(panel)
    tries = count(50, 200)
    for _ in range(tries):
        for control in panel.controls.values():
            if isinstance(control, LengthControl):
                put(control, draw.randint(-(-control.low // control.step), control.high // control.step) * control.step)
            else:
                put(control, draw.choice(control.options))
        assert is_told(panel), panel.message
        built += not panel.stale
    assert built > tries // 2


def asked(panel):
    shown = "".join(drawing.svg for drawing in panel.outcome.drawings)
    shown += "".join(table.html() for table in panel.outcome.tables)
    return dict(picked(shown))


@pytest.mark.parametrize("kind", JOINTS)
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_every_size_of_a_joint_says_why_with_the_size_that_is_shown(kind, unit):
    panel = open_all(joint_panel(unit))
    panel.enter("kind", kind)
    names = asked(panel)
    assert len(names) >= 5
    for name, text in names.items():
        panel.working.ask(name)
        assert panel.working.asked == name, (name, text)
        said = re.search(rf"([\d./ ]+ {unit})(?: \(|$| =)", panel.working.lines[0])[1]
        near = read_length("0.009 in") if unit == "in" else MM // 10
        bare = text.split(" (")[0]
        written = bare if bare.endswith(unit) else f"{bare} {unit}"
        assert abs(read_length(said.strip(), zero=True) - read_length(written, zero=True)) <= near, (name, text, said)


def test_every_size_of_the_corners_says_why():
    panel = corner_panel("in")
    for name in asked(panel):
        panel.working.ask(name)
        assert panel.working.asked == name
    panel.working.ask("table/1/4")
    assert panel.working.lines[0].startswith("sides, length 19 3/32 in = case height 20 in - 2 x ")
    assert "cuts/0/1" not in asked(panel)  # a butted side has no cut
    panel.working.ask("cuts/1/1")
    assert panel.working.lines[0].endswith(" = thickest reading of case sheet 0.703 in")
    assert any(line == "rabbet, depth 1/4 in = rabbet depth of the case corners 1/4 in" for line in panel.working.lines)
    for nothing in ("", "table/9/1", "table/0/9", "cuts/0/1", "drawing/1/0.0", "drawing/0/x", "table/0"):
        panel.working.ask(nothing)
        assert not panel.working.lines, nothing


@pytest.mark.parametrize("nothing", ["", "table/99/1", "drawing/7/1.1", "drawing/0/x", "nothing", "a/b/c/d"])
def test_what_is_not_shown_closes_the_box(nothing):
    panel = joint_panel("in")
    panel.working.ask("table/0/1")
    panel.working.ask(nothing)
    assert (panel.working.asked, panel.working.lines) == ("", [])


def test_a_tongue_is_as_thick_where_the_sheet_is_thicker():
    """17.6 in the mean, 18 at its thickest: it is the rabbet that must follow, 12 deep there, and not the tongue."""
    panel = open_all(joint_panel("mm"))
    panel.enter("kind", "tongue in a narrower dado")
    panel.enter("reading_3", "18 mm")
    rows = dict(panel.outcome.tables[0].rows)
    assert rows["tongue, as thick everywhere"] == "6 mm" and rows["dado in left side, width"] == "6.1 mm"
    assert rows["rabbet that leaves the tongue, depth by the mean"] == "11.6 mm"
    assert rows["the same where the sheet is thickest"] == "12 mm"


def test_further_readings_and_clearances_count_once_they_are_open():
    panel = joint_panel("in")
    rows = dict(panel.outcome.tables[0].rows)
    assert rows["dado in left side, width"] == "0.703 in" and rows["shelf gains at each end"] == "1/4 in"
    panel.unfold()
    assert dict(panel.outcome.tables[0].rows)["dado in left side, width"] == "0.71 in"
    panel.unfold()
    rows = dict(panel.outcome.tables[0].rows)
    assert rows["dado in left side, width"] == "0.714 in" and rows["shelf gains at each end"] == "7/32 in"
    assert not panel.outcome.findings


def test_readings_that_are_not_open_yet_move_with_the_first():
    panel = joint_panel("in")
    panel.enter("reading_1", "0.6 in")
    panel.unfold()
    assert [panel.controls[f"reading_{n}"].text for n in (1, 2, 3)] == ["0.6 in", "0.596 in", "0.607 in"]
    assert {found.check for found in panel.outcome.findings} == {"joints"}
    panel.enter("reading_1", "0.603 in")
    assert panel.controls["reading_3"].text == "0.607 in"


def test_what_cannot_be_cut_says_which_control_and_what_would_mend_it():
    panel = open_all(joint_panel("in"))
    panel.enter("depth", "5/8 in")
    panel.enter("reading_1", "0.5 in")
    panel.enter("reading_2", "0.5 in")
    panel.enter("reading_3", "0.5 in")
    assert panel.stale
    assert panel.message.startswith("Depth of the cut: the cut would go right through the left side; choose less")
    panel.enter("depth", "1/16 in")
    panel.enter("end_gap", "1/8 in")
    assert panel.stale and panel.message.startswith("End gap: ")


def test_only_what_applies_is_asked():
    panel = joint_panel("mm")

    def shown():
        return {name for name, control in panel.controls.items() if control.layout.display != "none"}

    assert {"depth", "reading_1", "reading_2"} <= shown() and not shown() & {"tongue", "stop", "back_1"}
    panel.enter("kind", "tongue in a narrower dado")
    assert "tongue" in shown() and "stop" not in shown()
    panel.enter("kind", "groove")
    assert {"back_1", "back_2", "reading_1"} <= shown() and not shown() & {"reading_2", "tongue"}
    panel.enter("kind", "butt")
    assert not shown() & {"depth", "fit", "end_gap", "tongue", "stop"}


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", PANELS)
def test_no_words_of_the_drawings_meet_or_are_cut_off(name, unit):
    panel = open_all(PANELS[name](unit))
    for kind in JOINTS if name == "joints" else (None,):
        if kind:
            panel.enter("kind", kind)
        for drawing in panel.outcome.drawings:
            assert overlaps(drawing.svg) == [] and outside(drawing.svg) == [], (kind, drawing.title)


def test_four_corners_keep_outside_and_inside():
    """Between the sides 24 - 2 x 0.703 = 22.594 in whatever the corner; common practice, no source."""
    panel = corner_panel("in")
    table = {row[0]: row[1:] for row in panel.outcome.tables[0].rows}
    assert set(table["between the sides"]) == {"22 19/32 in"} and len(table["between the sides"]) == len(CORNERS)
    cuts = {row[0]: row[1:] for row in panel.outcome.tables[1].rows}
    assert cuts["butt"] == ("none", "none")
    assert cuts["tongue in a dado"] == ("2 dadoes 0.25 in x 1/4 in", "2 rabbets 0.25 in x 0.453 in")
    panel.enter("depth", "3/8 in")
    panel.enter("thickness", "3/4 in")
    table = {row[0]: row[1:] for row in panel.outcome.tables[0].rows}
    assert table["bottom and top, length"] == ("22 1/2 in", "23 1/4 in", "23 1/4 in", "24 in")
    assert table["sides, length"] == ("20 in", "20 in", "20 in", "19 1/4 in")


def test_a_dimension_drawn_larger_tells_its_true_size():
    chain = Chain("below", 0, (0, 5 * INCH), ("1/2",), sizes=(INCH // 2,))
    assert dimension(Scene("Gap", "inches", "A gap.", (0, 0, 9, 9), (chain,)), "0.0") == INCH // 2


@pytest.mark.parametrize(("entered", "begins"), [
    ({"thickness": "0.45 in", "tongue": "1/2 in"}, "Thickness of the tongue: "),
    ({"thickness": "0.6 in", "depth": "5/8 in"}, "Depth of the cut: "),
])
def test_a_corner_that_cannot_be_names_the_control_that_would_mend_it(entered, begins):
    panel = open_all(corner_panel("in"))
    for name, value in entered.items():
        panel.enter(name, value)
    assert panel.stale and panel.message.startswith(begins)


@pytest.mark.parametrize(("unit", "stop"), [("in", "5/8 in"), ("mm", "14 mm")])
def test_a_stopped_dado_begins_where_it_was_asked_to(unit, stop):
    panel = open_all(joint_panel(unit))
    panel.enter("kind", "stopped dado")
    panel.enter("stop", stop)
    assert ("it begins behind the front edge by", stop) in panel.outcome.tables[0].rows
