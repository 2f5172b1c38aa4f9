"""The hardware panel at the ends of every control and at random: a layout, or one clear sentence."""

import random
import re
from fractions import Fraction
from itertools import pairwise

import pytest

from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.hardware_project import ALIKE, ALONE, KINDS, ONE_MORE, SHELVES
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild
from shoplib.live.table import LENGTH
from shoplib.live.tool_list import read_tools
from shoplib.measure import INCH, MM, read_length
from tests.draw.test_pen import outside, overlaps
from tests.live.picked import assert_told_as_shown

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])
OVERLAY, INSET = KINDS
LISTS = {
    "in": ["pump 3", "key 1/2, key 1/2, key 1/2; pump 3 in", "wide rack 60", "", "pump", "1, 2, 3", "pump 3 kg", "a 0"],
    "mm": ["pump 76", "key 12, key 12, key 12; pump 7 cm", "wide rack 1500", "", "pump", "20, 30", "pump 3 kg", "a 0"],
}


def opened(unit, **entered):
    """The panel with all groups open."""
    panel = hardware_panel(unit)
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
    for name, value in entered.items():
        panel.enter(name, value)
    return panel


def put(control, value):
    setattr(control, "ticks" if isinstance(control, LengthControl) else "value", value)


def values(control, unit):
    if isinstance(control, LengthControl):
        return [control.low, control.high]
    return list(getattr(control, "options", LISTS[unit]))


def is_told(panel):
    """The last good picture with a sentence that names no key of a file, or new ones with every drawer."""
    if panel.stale:
        return panel.message.endswith(".") and not re.search(r"_|bays\[|pulls\.|fault in the workbook", panel.message)
    outcome = panel.outcome
    texts = [each.text for each in outcome.findings] + list(outcome.sums)
    assert not [text for text in texts if re.search(r"_|bays\[|None|  ", text)], texts
    assert all(drawing.alt and drawing.svg.startswith("<svg") for drawing in outcome.drawings)
    return len(outcome.tables[0].rows) == panel.controls["count"].value


def column(panel, table, number):
    """One column of a table as ticks."""
    return [read_length(row[number].split(" (")[0]) for row in panel.outcome.tables[table].rows]


def through_the_divider(panel):
    return next(drawing.svg for drawing in panel.outcome.drawings if drawing.title == "Through divider 1")


def said(panel):
    return " ".join(each.text for each in panel.outcome.findings)


@UNITS
def test_it_begins_with_three_controls(unit):
    panel = hardware_panel(unit)
    assert len(panel.opened) == 1 and len(panel.groups[0].controls) == 3
    assert len(panel.outcome.drawings) == 1 and not panel.outcome.findings
    assert f"slides set back {({'in': '1/16 in', 'mm': '2 mm'})[unit]}." in panel.message


@UNITS
def test_both_ends_of_every_control(unit):
    for beside in (ALONE, ALIKE, SHELVES):
        panel = opened(unit, beside=beside)
        for name, control in panel.controls.items():
            before = control.ticks if isinstance(control, LengthControl) else control.value
            for value in values(control, unit):
                put(control, value)
                assert is_told(panel), (name, value, panel.message)
            put(control, before)
        assert not panel.stale


@UNITS
def test_random_settings(unit, count):
    panel, draw, built = opened(unit), random.Random(6), 0
    tries = count(50, 200)
    for _ in range(tries):
        for name in draw.sample(sorted(panel.controls), 2):
            control = panel.controls[name]
            if isinstance(control, LengthControl):
                steps = -(-control.low // control.step), control.high // control.step
                put(control, draw.randint(*steps) * control.step)
            elif name != "tools" or draw.random() < 0.3:
                put(control, draw.choice(values(control, unit)))
        assert is_told(panel), panel.message
        built += not panel.stale
    assert built > tries // 5


@UNITS
@pytest.mark.parametrize("count", [2, 3, 5])
def test_spacers_of_inset_fronts_by_hand(unit, count):
    """From slide to slide it is one front and one gap, and a slide lies in the middle (common practice, no source)."""
    gap, step = (INCH // 8, INCH // 64) if unit == "in" else (3 * MM, MM // 2)
    panel = opened(unit, count=count, kind=INSET)
    front = (panel.controls["height"].ticks - (count + 1) * gap) // count // step * step
    spacers = column(panel, 0, 1)
    steps = [above - below for below, above in pairwise(spacers)]
    # The lowest front takes what does not divide, and half of it may move its slide.
    assert all(abs(one - front - gap) <= count * step for one in steps)
    assert all(one == front + gap for one in steps[1:])


@UNITS
def test_the_setback_by_hand(unit):
    """The slides' rows: 1/16 in or 2 mm behind the front (`data/slides.toml`)."""
    behind = INCH // 16 if unit == "in" else 2 * MM
    panel = opened(unit)
    assert set(column(panel, 0, 2)) == {behind}
    panel.enter("kind", INSET)
    thick = panel.controls["front"].ticks
    (told,) = set(column(panel, 0, 2))
    assert abs(told - behind - thick) <= INCH // 1000


@UNITS
def test_the_holes_of_a_pull_by_hand(unit):
    """L/2 - p/2 and L/2 + p/2 (common practice, no source); an inset front is the opening less two gaps."""
    pitch = {"in": "4 in", "mm": "100 mm"}[unit]
    panel = opened(unit, kind=INSET, pitch=pitch)
    gap = INCH // 8 if unit == "in" else 3 * MM
    wide, apart = panel.controls["width"].ticks - 2 * gap, read_length(pitch)
    assert set(column(panel, 1, 1)) == {(wide - apart) // 2}
    assert set(column(panel, 1, 2)) == {(wide + apart) // 2}


@UNITS
def test_the_longest_screw_by_hand(unit):
    """s + f - 1/8 in (3 mm), and the longest that is sold: 5/8, 3/4, 1, 1 1/4, 1 1/2 in, or 16, 20, 25, 30, 35, 40 mm
    (common practice, no source).
    """
    panel = opened(unit)
    sold = [INCH * each // 8 for each in (5, 6, 8, 10, 12)] if unit == "in" else [
        MM * each for each in (16, 20, 25, 30, 35, 40)]
    spare = INCH // 8 if unit == "in" else 3 * MM
    for box in range(panel.controls["box"].low, panel.controls["box"].high, MM // 2):
        put(panel.controls["box"], box)
        room = box + panel.controls["front"].ticks - spare
        longest = max(length for length in sold if length <= room)
        assert abs(column(panel, 2, 2)[0] - longest) <= MM // 20, box
        assert column(panel, 2, 3)[0] >= spare - MM // 20


@UNITS
def test_pegs_by_hand(unit):
    """(W - sum of widths) / (n + 1), down to a mark; each peg over the middle of its tool (common practice)."""
    lists = {"in": ("pump 3, key 1/2", (3 * INCH, INCH // 2)), "mm": ("pump 76, key 12", (76 * MM, 12 * MM))}
    text, widths = lists[unit]
    panel = opened(unit, tools=text)
    step = INCH // 64 if unit == "in" else MM // 2
    space = (panel.controls["panel"].ticks - sum(widths)) // 3 // step * step
    assert column(panel, 3, 2) == [space, 2 * space + widths[0]]
    assert column(panel, 3, 3) == [space + widths[0] // 2, 2 * space + widths[0] + widths[1] // 2]


@UNITS
def test_what_meets_in_the_divider_is_told_and_drawn(unit):
    panel = opened(unit, beside=ALIKE)
    assert "lie at one height on its two faces" in said(panel)
    assert "both want this wood" in through_the_divider(panel)
    panel.enter("beside", ONE_MORE)
    assert "Nothing meets in the divider" in said(panel)
    assert "both want this wood" not in through_the_divider(panel)
    panel.enter("beside", SHELVES)
    assert "into the dado of bay 2 shelf 2" in said(panel)
    assert "both want this wood" in through_the_divider(panel)


def test_what_is_unfolded_last_is_seen_first_or_what_was_chosen():
    panel = hardware_panel("in")
    first = [panel.outcome.drawings[0].title]
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
        first.append(panel.outcome.drawings[0].title)
    on_its_side = "The case on its side, seen from above"
    assert first == [
        on_its_side, "Setback of the slides behind an overlay front", "Holes for the pull",
        "The screw from the box into the front", on_its_side, "Tools on the panel", "Tools on the panel",
    ]
    panel.enter("seen", "the screw")
    titles = [drawing.title for drawing in panel.outcome.drawings]
    assert titles[:2] == ["The screw from the box into the front", on_its_side] and len(set(titles)) == len(titles) == 5


@UNITS
def test_what_cannot_be_says_why_and_what_would_mend_it(unit):
    panel = opened(unit)
    panel.enter("pitch", {"in": "16 in", "mm": "400 mm"}[unit])
    assert "reach" in said(panel) and "Choose a pull whose holes are at most" in said(panel)
    panel.enter("width", {"in": "8 in", "mm": "200 mm"}[unit])
    assert panel.stale and "nearer together" in panel.message
    panel = opened(unit, tools={"in": "rack 30", "mm": "rack 800"}[unit])
    assert panel.stale and "as wide as the panel" in panel.message and "Take a wider panel" in panel.message


@UNITS
def test_a_list_of_tools_that_cannot_be_read_is_told(unit):
    for text in ("", "pump", "pump 3 kg, key 2", ",".join("1" * 13), "pump 0", "pump 1/0"):
        with pytest.raises(CannotBuild) as told:
            read_tools(text, unit)
        assert str(told.value).endswith(".") and "`" not in str(told.value)


def test_a_list_of_tools_as_people_write_it():
    for text in ("hammer -2 in", "hammer \u22122", "-2 in", "key 3, pump: -5 mm"):
        with pytest.raises(CannotBuild, match="has a width below zero"):
            read_tools(text, "in")
    tools = read_tools("shaft - 2, 4-7/16 rod 4-7/16, T-key 3", "in")
    assert [(tool.name, tool.width) for tool in tools] == [
        ("shaft", 2 * INCH), ("4-7/16 rod", 71 * INCH // 16), ("T-key", 3 * INCH)
    ]
    tools = read_tools(" cone wrench: 1 1/8 ;floor pump 76 mm,\n5 mm key 1/2\", 2", "in")
    assert [(tool.name, Fraction(tool.width, INCH)) for tool in tools] == [
        ("cone wrench", Fraction(9, 8)), ("floor pump", Fraction(760, 254)), ("5 mm key", Fraction(1, 2)),
        ("tool 4", 2),
    ]


@UNITS
def test_every_size_that_is_shown_says_why(unit):
    panel = opened(unit, kind=INSET, beside=ALIKE)
    assert assert_told_as_shown(panel, unit) > 40
    with pytest.raises(LookupError):
        panel.outcome.why("spacer/99/1")


@UNITS
def test_a_spacer_says_what_it_was_made_of(unit):
    told = " ".join(opened(unit, kind=INSET).outcome.why("spacer/1/1"))
    assert "height of drawer 1" in told and "gap" in told and "slide" in told.replace("side-mount", "slide")


@UNITS
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("beside", [ALIKE, SHELVES])
def test_every_drawing_is_legible(unit, kind, beside):
    for count in (1, 3, 6):
        panel = opened(unit, kind=kind, beside=beside, count=count, height={"in": "36 in", "mm": "900 mm"}[unit])
        for drawing in panel.outcome.drawings:
            assert not overlaps(drawing.svg) and not outside(drawing.svg), (count, drawing.alt)


def test_every_length_of_a_closing_sum_says_why():
    """Each is told as it is written in the sum; the tools of the first sum of all, 7 7/8 in, are measured."""
    outcome = opened("in").outcome
    assert outcome.sums_asked and outcome.sums[-1].startswith("panel: 5 x 2 27/64 in + tools 7 7/8 in")
    for number, line in enumerate(outcome.sums):
        for place, length in enumerate(LENGTH.finditer(line)):
            assert length[0] in outcome.why(f"sum/{number}/{place}")[0]
        with pytest.raises(LookupError):
            outcome.why(f"sum/{number}/{place + 1}")


@pytest.mark.parametrize(("unit", "height", "below"), [("in", "12 in", "7/64 in"), ("mm", "300 mm", "3 mm")])
def test_a_spacer_of_less_than_nothing_is_refused_and_stops_are_counted_in_the_first_line(unit, height, below):
    """A spacer is a board: none is shorter than nothing (plain geometry, no source)."""
    panel = hardware_panel(unit)
    panel.enter("height", height)
    panel.enter("count", 5)
    assert [each.level for each in panel.outcome.findings] == ["stop", "stop"]
    assert panel.message.endswith("; 2 to mend first (Stop).") and not panel.stale
    panel.enter("count", 6)
    assert panel.stale and f"would begin {below} below the inside of the bottom" in panel.message
    assert panel.message.endswith("Take fewer drawers, a smaller gap, or a higher opening.")
    panel.enter("count", 3)
    assert not panel.stale and "Stop" not in panel.message


@UNITS
def test_no_height_and_number_of_drawers_gives_a_spacer_of_less_than_nothing(unit):
    """As above, over all heights in whole inches (25 mm) and all numbers of drawers."""
    panel, built = hardware_panel(unit), 0
    for number in range(8, 25):
        panel.enter("height", f"{number} in" if unit == "in" else f"{25 * number} mm")
        for count in range(1, 7):
            panel.enter("count", count)
            if not panel.stale:
                built += 1
                assert not [row for row in panel.outcome.tables[0].rows if "-" in row[1]], panel.message
                assert ("Stop" in panel.message) == any(each.level == "stop" for each in panel.outcome.findings)
    assert built > 40


@UNITS
@pytest.mark.parametrize("kind", KINDS)
def test_the_working_of_a_spacer_begins_with_one_sum_of_two_numbers(unit, kind):
    """How high the box begins, and how high on it the slide: what a rule in the case can check (no source)."""
    panel = hardware_panel(unit)
    panel.enter("kind", kind)
    step = INCH // 64 if unit == "in" else MM // 2
    for number, spacer in enumerate(column(panel, 0, 1)):
        first, *longer = panel.outcome.why(f"spacer/{number}/1")
        group = f"bay 1 drawer {number + 1}"
        size = rf"((?:\d+ )?[\d./]+ {unit})"
        box = re.search(rf"lower edge of the box of {group} above the bottom {size}", first)
        slide = re.search(rf"lower edge of the slide of {group} above that of its box {size}", first)
        assert first.count(" + ") == 1 and " - " not in first and "of:" not in first
        assert read_length(box[1]) + read_length(slide[1]) == spacer and read_length(box[1]) % step == 0
        assert longer and any(f"case height {panel.controls['height'].text}" in line for line in longer)


@pytest.mark.parametrize(("unit", "front", "box", "missing"), [
    # The shortest screw of a slide is 3/8 in and leaves 1/16 in, or 10 mm and leaves 1.5 mm (data/screws.toml).
    ("in", "0.45 in", "0.3 in", True), ("in", "0.45 in", "0.437 in", True), ("in", "0.45 in", "0.438 in", False),
    ("mm", "11 mm", "8 mm", True), ("mm", "11 mm", "11.4 mm", True), ("mm", "11 mm", "11.5 mm", False),
])
def test_a_box_too_thin_for_every_screw_of_its_slides_is_told(unit, front, box, missing):
    panel = opened(unit, front=front, box=box)
    assert ("no screw of the table is short enough" in said(panel)) == missing
    assert ("1 to look at (Look)" in panel.message) == missing
