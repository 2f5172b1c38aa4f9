"""The drawer panel at the ends of every control and at random: a drawer, or one clear sentence."""

import random
import re
from fractions import Fraction

import pytest

import shoplib.live.drawer_panel as module
from shoplib.live.drawer_panel import READINGS, SECOND, drawer_panel
from shoplib.live.drawer_says import DEPTH, STOCK
from shoplib.live.length_control import LengthControl
from shoplib.measure import INCH, MM, read_length
from shoplib.tables.slides import slides
from tests.live.picked import assert_told_as_shown

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])


def opened(unit, to=""):
    """The panel, unfolded as far as the group named, or all of it."""
    panel = drawer_panel(unit)
    while panel.opened[-1] != (to or panel.groups[-1].title):
        panel.unfold()
    return panel


def put(control, value):
    setattr(control, "ticks" if isinstance(control, LengthControl) else "value", value)


def is_told(panel):
    """The last good picture with a sentence that names no key of a file, or new ones with the boards of the box."""
    if panel.stale:
        return panel.message.endswith(".") and not re.search(r"_|bays\[|fault in the workbook", panel.message)
    outcome = panel.outcome
    texts = [each.text for each in outcome.findings] + list(outcome.sums)
    assert not [text for text in texts if re.search(r"_|bays\[|None", text)], texts
    return len(outcome.tables[0].rows) >= 3 and len(outcome.drawings) == 2 and all(one.alt for one in outcome.drawings)


def amounts(text):
    found = re.findall(r"((?:\d+ )?\d+(?:/\d+|\.\d+)?) (in|mm)\b", text)
    scale = {"in": Fraction(254, 10), "mm": Fraction(1)}
    return [sum(map(Fraction, number.split()), Fraction(0)) * scale[unit] for number, unit in found]


@UNITS
def test_it_begins_with_two_controls_and_a_box_that_fits(unit):
    panel = drawer_panel(unit)
    assert len(panel.opened) == 1 and len(panel.groups[0].controls) == 2
    assert panel.message.endswith("it goes together dry.") and not panel.outcome.findings
    # 16 - 2 x 1/2 = 15; 400 - 2 x 12.7 = 374.6, down to half a millimetre 374.5
    assert {"in": "15 in", "mm": "374.5 mm"}[unit] in panel.message


@UNITS
def test_both_ends_of_every_control(unit):
    panel = opened(unit)
    for name, control in panel.controls.items():
        length = isinstance(control, LengthControl)
        before = control.ticks if length else control.value
        for end in ([control.low, control.high] if length else control.options):
            put(control, end)
            assert is_told(panel), (name, end, panel.message)
        put(control, before)
    assert not panel.stale


@UNITS
def test_random_settings(unit, count):
    panel, draw, built = opened(unit), random.Random(4), 0
    tries = count(50, 200)
    for _ in range(tries):
        for name in draw.sample(sorted(panel.controls), 3):
            control = panel.controls[name]
            if isinstance(control, LengthControl):
                steps = -(-control.low // control.step), control.high // control.step
                put(control, draw.randint(*steps) * control.step)
            else:
                put(control, draw.choice(control.options))
        assert is_told(panel), panel.message
        built += not panel.stale
    assert built > tries // 4


@UNITS
@pytest.mark.parametrize("slide", list(slides()))
def test_the_box_is_the_opening_less_what_the_slide_takes(unit, slide):
    """By hand: narrowest opening - 2 x side, and two box sides on top where the slide holds the inside."""
    panel = opened(unit, STOCK)
    panel.enter("slide", slide)
    front, back = ("16 1/16", "15 15/16") if unit == "in" else ("403", "401")
    panel.enter("front", front)
    panel.enter("back", back)
    row, stock = slides(unit)[slide], panel.controls["stock"].ticks
    least = read_length(back, unit=unit) - 2 * row.side + (2 * stock if row.holds == "inside" else 0)
    step = INCH // 32 if unit == "in" else MM // 2
    box = read_length(re.match(r"The box is (.+?) wide", panel.message)[1])
    assert box == least // step * step


def text_of(panel, check):
    return next((each.text for each in panel.outcome.findings if each.check == check), "")


@UNITS
def test_a_taper_is_forgiven_shimmed_or_straightened(unit):
    panel = opened(unit, READINGS)
    forgiven, shimmed, too_much = {
        "in": ("16 1/16", "16 3/32", "16 3/16"), "mm": ("401.5", "402.5", "404")
    }[unit]
    panel.enter("back", forgiven)
    assert "nothing is shimmed" in text_of(panel, "shims") and "(Look)" not in panel.message
    panel.enter("back", shimmed)
    each = {"in": "3/64 in", "mm": "1.3 mm"}[unit]  # (16 3/32 - 15) / 2 - 1/2; (402.5 - 374.5) / 2 - 12.7
    assert f"between case and slide: {each} behind each slide" in text_of(panel, "shims")
    assert "1 to look at (Look)" in panel.message and ">shim<" in panel.outcome.drawings[0].svg
    panel.enter("back", too_much)
    assert "straighten the sides" in text_of(panel, "shims")


def test_a_runner_under_the_box_is_not_shimmed_nor_a_box_on_a_shelf():
    """By hand: 16 - 2 x 1/32 = 15 15/16; at the back (16 3/32 - 15 15/16) / 2 - 1/32 = 3/64.

    Common practice, no source.
    """
    panel = opened("in", READINGS)
    panel.enter("slide", "wood runner below with kicker")
    panel.enter("back", "16 3/32")
    told = text_of(panel, "shims")
    assert "no shim goes behind them: the box is looser at the back" in told and "Shim the" not in told
    assert "guide strip to each side of the case, 3/64 in thick at the back" in told and "or 3/32 in to one" in told
    assert ">shim<" not in panel.outcome.drawings[0].svg
    panel.enter("back", "16 3/16")
    assert "more than guide strips are for (up to 1/8 in here)" in text_of(panel, "shims")
    panel.enter("slide", next(name for name, row in slides().items() if row.carries == "shelf"))
    assert "nothing is shimmed" in text_of(panel, "shims") and ">shim<" not in panel.outcome.drawings[0].svg


@UNITS
def test_a_wider_back_changes_no_board_and_a_narrower_one_does(unit):
    panel = opened(unit, READINGS)
    rows = panel.outcome.tables[0].rows
    panel.enter("back", {"in": "16 1/8", "mm": "403"}[unit])
    assert panel.outcome.tables[0].rows == rows
    panel.enter("back", {"in": "15 31/32", "mm": "399"}[unit])
    assert panel.outcome.tables[0].rows != rows


@UNITS
@pytest.mark.parametrize("slide", list(slides()))
def test_unfolding_with_nothing_moved_changes_nothing_that_is_found(unit, slide):
    """What is not unfolded yet stands at the numbers that are shown when it is."""
    panel = drawer_panel(unit)
    panel.enter("slide", slide)
    message, rows = panel.message, panel.outcome.tables[0].rows
    assert message.endswith("it goes together dry.")
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
        assert (panel.message, panel.outcome.tables[0].rows) == (message, rows), panel.opened[-1]


@UNITS
def test_the_rabbet_goes_with_the_runner_until_it_is_moved(unit):
    """Half of what the groove leaves, down to a mark: (0.472 - 3/16) / 2 gives 1/8 in, (11.9 - 5) / 2 gives 3 mm."""
    panel = opened(unit, STOCK)
    usual, beside = {"in": ("7/32 in", "1/8 in"), "mm": ("5.5 mm", "3 mm")}[unit]
    rabbet = panel.controls["rabbet"]
    for slide, text in (("side-hung wood runner", beside), ("undermount", usual), ("side-hung wood runner", beside)):
        panel.enter("slide", slide)
        assert rabbet.text == text
    moved = {"in": "3/16 in", "mm": "4 mm"}[unit]
    panel.enter("rabbet", moved)
    panel.enter("slide", "undermount")
    assert rabbet.text == moved


@UNITS
def test_a_slide_goes_in_where_its_setback_and_its_room_do(unit):
    """By hand: 450 + 2 + 6 mm, and 18 + 1/16 + 1/4 in; before it was found, 456 mm and 18 1/4 in were enough."""
    panel = opened(unit, DEPTH)
    enough, less, slide, shorter = {
        "in": ("18 5/16", "18 1/4", 18 * INCH, 16 * INCH), "mm": ("458", "456", 450 * MM, 400 * MM)
    }[unit]
    for depth, length in ((enough, slide), (less, shorter)):
        panel.enter("depth", depth)
        *terms, total = amounts(panel.outcome.sums[-1])
        assert terms[1] * MM == length and sum(terms) == total
        assert terms[2] >= (6 if unit == "mm" else Fraction(254, 40))


def test_one_offcut_is_right_where_the_rabbet_is_half_of_the_measured_side():
    panel = opened("in", STOCK)
    panel.enter("rabbet", "0.236")
    assert "that is the right length" in text_of(panel, "offcut")
    panel.enter("rabbet", "1/4")
    assert "0.028 in too short" in text_of(panel, "offcut").replace("1/32 in", "0.028 in")
    panel.enter("stock", "0.5")
    assert "that is the right length" in text_of(panel, "offcut")


@UNITS
def test_no_offcut_is_held_where_nothing_that_carries_the_box_stands_beside_it(unit):
    """What lies under a box is not held on edge in its opening (from memory)."""
    panel, under = opened(unit, STOCK), {"undermount", "wood runner below with kicker", "box rides on the shelf"}
    assert under < set(slides(unit))
    for slide in slides(unit):
        panel.enter("slide", slide)
        told = [finding for finding in panel.outcome.findings if finding.check == "offcut"]
        assert len(told) == (slide not in under), slide


def test_no_rabbet_is_offered_that_leaves_too_little_beside_the_groove_of_a_runner():
    """0.472 - 0.236 - 3/16 = 0.0485 in; 0.75 - 0.375 - 3/16 = 3/16 in, above 1/8 in (common practice, no source)."""
    panel = opened("in", STOCK)
    panel.enter("slide", "side-hung wood runner")
    assert "It would be right" not in text_of(panel, "offcut") and "only 0.0485 in beside" in text_of(panel, "offcut")
    panel.enter("stock", "0.75")
    assert "It would be right with rabbets of 0.375 in" in text_of(panel, "offcut")


@UNITS
def test_closing_sums_close(unit):
    panel = opened(unit, DEPTH)
    panel.enter("back", {"in": "15 29/32", "mm": "398"}[unit])
    across, _, along = panel.outcome.sums
    for line in (across, along):
        *terms, total = amounts(line)
        assert sum(terms) == total, line


def test_two_drawers_have_boxes_of_their_own_widths():
    panel = opened("in", SECOND)
    for name, value in (("height", "13"), ("drawers", 2), ("upper_front", "15 15/16"), ("upper_back", "15 7/8")):
        panel.enter(name, value)
    assert "Drawer 1 goes by 16 in and drawer 2 by 15 7/8 in" in text_of(panel, "heights")
    lengths = {row[0]: row[2] for row in panel.outcome.tables[0].rows}
    fronts = [text for name, text in lengths.items() if "box front" in name]
    assert len(fronts) == 2
    assert abs(amounts(fronts[0])[0] - amounts(fronts[1])[0]) == Fraction(254, 80)


def test_readings_not_yet_asked_for_follow_the_front_and_stay_near_it_later():
    panel = drawer_panel("in")
    panel.enter("front", "20 in")
    panel.unfold()
    assert panel.controls["back"].text == "20 in"
    panel.enter("back", "20 1/16")
    panel.enter("front", "20 1/32")
    assert panel.controls["back"].text == "20 1/16 in"
    panel.enter("front", "24")
    assert panel.controls["back"].text == "24 in"


@UNITS
def test_every_size_that_is_shown_says_why(unit):
    panel = opened(unit)
    panel.enter("back", {"in": "16 3/32", "mm": "402.5"}[unit])
    assert assert_told_as_shown(panel, unit) > 20


@UNITS
def test_a_size_of_a_drawing_is_the_one_that_its_working_tells(unit):
    """Clearances are drawn larger than they are: the number that is picked must be the true one."""
    panel = opened(unit, READINGS)
    panel.enter("back", {"in": "16 3/32", "mm": "402.5"}[unit])
    numbers = 0
    for text, ask in re.findall(r'data-ask="([^"]+)"[^>]*>([^<]+)<', panel.outcome.drawings[0].svg):
        if ask.startswith("("):
            continue  # the rest, on a line of its own under its size
        number = re.sub(r"^(front|back|slide|box|depth) ", "", ask).split(" (")[0]
        told = panel.outcome.why(text)[0].split(" = ")[0].removeprefix("this size ")
        off = abs(read_length(told) - read_length(number, unit=unit))
        assert off <= (INCH // 128 if unit == "in" else MM // 20), (ask, told)
        numbers += 1
    assert numbers > 5


def test_what_is_drawn_larger_is_said_to_be():
    panel = drawer_panel("in")
    for slide in ("side-hung wood runner", "box rides on the shelf"):
        panel.enter("slide", slide)
        assert all("drawn larger than it is" in drawing.alt for drawing in panel.outcome.drawings)


@UNITS
def test_a_move_of_the_front_is_worked_out_once(unit, monkeypatch):
    """Far off, it takes the other readings along: nothing in between is worked out or shown."""
    panel, told, work = opened(unit), [], module.outcome_of
    panel.enter("drawers", 2)
    monkeypatch.setattr(module, "outcome_of", lambda *asked: told.append(asked) or work(*asked))
    control = panel.controls["front"]
    control.ticks += 40 * control.step
    ((asked, *_),) = told
    assert asked.front == asked.back == asked.upper_front == asked.upper_back == control.ticks


@pytest.mark.parametrize(("unit", "half"), [("in", "0.236 in"), ("mm", "5.95 mm")])
def test_one_offcut_would_be_right_with_half_of_the_side(unit, half):
    """B - s = B - 2s + 2r where r = s / 2; the sides measure 0.472 in and 11.9 mm."""
    panel = opened(unit)
    assert panel.controls["stock"].text in ("0.472 in", "11.9 mm")
    assert f"right with rabbets of {half}, half of" in text_of(panel, "offcut")


@pytest.mark.parametrize(("unit", "back", "told"), [
    # 16 - 2 x 1/2; 20 - 1/16 - 18. 400 - 2 x 12.7, down to a mark; 500 - 2 - 450.
    ("in", "16 1/8 in", ("16 in", "1/8 in wider", "15 in", "18 in", "1 15/16 in")),
    ("mm", "403 mm", ("400 mm", "3 mm wider", "374.5 mm", "450 mm", "48 mm")),
])
def test_the_drawing_from_above_is_told_in_words(unit, back, told):
    panel = opened(unit)
    panel.enter("front", {"in": "16 in", "mm": "400 mm"}[unit])
    panel.enter("back", back)
    front, wider, wide, deep, free = told
    assert (
        f"The opening is {front} wide at the front and {wider} at the back; the box is {wide} wide and {deep} deep, "
        f"with {free} free behind the slides."
    ) in panel.outcome.drawings[0].alt
