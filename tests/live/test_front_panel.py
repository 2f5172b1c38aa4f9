"""The front panel at the ends of every control and at random: fronts, or one clear sentence."""

import random
import re
from fractions import Fraction

import pytest

from shoplib.live.front_panel import DIVIDER, NO_PART, TOO_HIGH, TOO_WIDE, front_panel
from shoplib.live.front_project import ARITHMETIC, FREER, KINDS, ONE_MORE, RULES
from shoplib.live.front_season import SOLID
from shoplib.live.length_control import LengthControl
from shoplib.live.percent_control import PercentControl
from shoplib.measure import INCH, MM, read_length
from tests.live.picked import assert_told_as_shown, picked

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])
INSET, OVERLAY = KINDS


def opened(unit, **entered):
    """The panel with all groups open, its season off unless a wood is entered."""
    panel = front_panel(unit)
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
    for name, value in ({"wood": SOLID} | entered).items():
        panel.enter(name, value)
    return panel


def put(control, value):
    setattr(control, "ticks" if isinstance(control, LengthControl) else "value", value)


def ends(control):
    if isinstance(control, LengthControl | PercentControl):
        return [control.low, control.high]
    return list(control.options) if len(control.options) < 10 else [control.options[0], control.options[-1]]


def is_told(panel):
    """The last good picture with a sentence that names no key of a file, or new ones with every front."""
    if panel.stale:
        return panel.message.endswith(".") and not re.search(r"_|bays\[|fault in the workbook", panel.message)
    outcome = panel.outcome
    texts = [each.text for each in outcome.findings] + list(outcome.sums)
    assert not [text for text in texts if re.search(r"_|bays\[|None|  ", text)], texts
    assert all(drawing.alt and drawing.svg.startswith("<svg") for drawing in outcome.drawings)
    return len(outcome.tables[0].rows) >= panel.controls["count"].value


def amounts(text):
    found = re.findall(r"((?:\d+ )?\d+(?:/\d+|\.\d+)?) (in|mm)\b", text)
    scale = {"in": Fraction(254, 10), "mm": Fraction(1)}
    return [sum(map(Fraction, number.split()), Fraction(0)) * scale[unit] for number, unit in found]


@UNITS
def test_it_begins_with_three_controls(unit):
    panel = front_panel(unit)
    assert len(panel.opened) == 1 and len(panel.groups[0].controls) == 3
    # (600 - 4 x 3) / 3 = 196; 18 - 2/8 = 17 3/4, (24 - 4/8) / 3 = 7 5/6, the rest of it at the bottom
    said = {"in": "17 3/4 in wide and 7 27/32 in high; every gap is 1/8 in",
            "mm": "444 mm wide and 196 mm high; every gap is 3 mm"}[unit]
    assert said in panel.message and not panel.outcome.findings


@UNITS
def test_both_ends_of_every_control(unit):
    panel = opened(unit, wood="sugar maple (hard)")
    for name, control in panel.controls.items():
        before = control.ticks if isinstance(control, LengthControl) else control.value
        for end in ends(control):
            put(control, end)
            assert is_told(panel), (name, end, panel.message)
        put(control, before)
    assert not panel.stale


@UNITS
def test_random_settings(unit, count):
    panel, draw, built = opened(unit), random.Random(5), 0
    tries = count(75, 300)
    for _ in range(tries):
        for name in draw.sample(sorted(panel.controls), 2):
            control = panel.controls[name]
            if isinstance(control, LengthControl):
                steps = -(-control.low // control.step), control.high // control.step
                put(control, draw.randint(*steps) * control.step)
            elif isinstance(control, PercentControl):
                put(control, draw.randint(control.low, control.high))
            else:
                put(control, draw.choice(control.options))
        assert is_told(panel), panel.message
        built += not panel.stale
    assert built > tries // 6


@UNITS
@pytest.mark.parametrize("count", [1, 2, 4, 6])
def test_equal_inset_fronts_by_hand(unit, count):
    """(O - (n + 1) g) / n, to the step below; the lowest takes what is left (common practice, no source)."""
    panel = opened(unit, count=count)
    opening, gap = (panel.controls[name].ticks for name in ("height", "gap"))
    step = INCH // 64 if unit == "in" else MM // 2
    each = (opening - (count + 1) * gap) // count // step * step
    found = [read_length(row[2]) for row in panel.outcome.tables[0].rows]
    assert found[1:] == [each] * (count - 1)
    assert found[0] == opening - (count + 1) * gap - (count - 1) * each


@pytest.mark.parametrize(("rule", "series"), [(RULES[2], "7 6 5 4 3 2 1"), (RULES[3], "9.25 8 6.75 6 5 4.75")])
def test_series_as_varnum_prints_them(rule, series):
    """Varnum, Industrial Arts Design (1916), Rule 2c, read: 7 6 5 4 3 2 1 and 9 1/4, 8, 6 3/4, 6, 5, 4 3/4."""
    printed = [Fraction(part) for part in series.split()]
    ours = ARITHMETIC if rule == RULES[2] else [Fraction(part, 4) for part in FREER]
    assert list(ours) == printed
    count, gap = 6, Fraction(1, 8)
    height = sum(printed[:count]) + (count + 1) * gap
    panel = opened("in", rule=rule, count=count, height=f"{height // 1} {height % 1}".removesuffix(" 0"))
    found = [Fraction(read_length(row[2]), INCH) for row in panel.outcome.tables[0].rows]
    assert found == printed[:count]


@UNITS
def test_overlay_fronts_by_hand(unit):
    """O + 2 (t - reveal) at the sides, and (t - gap) / 2 on a divider (common practice, no source)."""
    panel = opened(unit, kind=OVERLAY)
    opening, thick, reveal, gap = (panel.controls[name].ticks for name in ("width", "thick", "around", "gap"))
    style = panel.controls["gap"].shown_in
    (_, wide, _), *_ = panel.outcome.tables[0].rows
    assert abs(amounts(wide)[0] * MM - (opening + 2 * (thick - reveal))) < style.step
    panel.enter("bays", 2)
    (_, wide, _), *_ = panel.outcome.tables[0].rows
    should = opening + (thick - reveal) + (thick - gap) // 2
    assert abs(amounts(wide)[0] * MM - should) < style.step


def text_of(panel):
    return " ".join(each.text for each in panel.outcome.findings)


@UNITS
def test_one_front_too_high_takes_the_last_gap(unit):
    by = {"in": "1/16", "mm": "1"}[unit]
    panel = opened(unit, part=TOO_HIGH, over=by)
    gaps = dict(panel.outcome.tables[1].rows)
    assert gaps["front 3 to top"] == {"in": "1/16 in", "mm": "2 mm"}[unit]
    assert "shows at 1 gap: front 3 to top" in text_of(panel)
    panel.enter("over", {"in": "1/8", "mm": "3"}[unit])
    assert "No gap is left between front 3 and top: they touch." in text_of(panel)
    panel.enter("over", {"in": "1/4", "mm": "6"}[unit])
    assert "It does not go together".lower() in panel.message and ">clash<" in panel.outcome.drawings[0].svg
    assert {each.level for each in panel.outcome.findings} >= {"stop"}
    panel.enter("part", TOO_WIDE)
    assert "right of front 1" in text_of(panel)
    panel.enter("part", NO_PART)
    assert not panel.outcome.findings


@UNITS
def test_a_divider_that_is_off_shows_inset_and_hides_behind_overlay(unit):
    panel = opened(unit, bays=2, part=DIVIDER)
    assert "It shows at 6 gaps" in text_of(panel)
    panel.enter("kind", OVERLAY)
    assert "where no gap shows it" in text_of(panel)
    panel.enter("bays", 1)
    assert panel.stale and "One bay has no divider" in panel.message


def test_what_cannot_be_is_told():
    panel = opened("in", rule=RULES[3], count=6, height="40", bays=2)
    panel.enter("rows", ONE_MORE)
    assert panel.stale and "seven fronts" in panel.message
    panel = opened("in", wood="teak")
    panel.enter("driest", 65)
    assert panel.stale and "Make the driest humidity the lower one." in panel.message
    panel = opened("in", height="8", rule="stepped", difference="4", count=6)
    assert panel.stale and "leaves front" in panel.message


def test_solid_fronts_touch_in_a_damp_room_and_plywood_is_not_asked():
    panel = opened("in", wood="American beech", height="30", count=2)
    assert any(each.level == "stop" and "damp season" in each.text for each in panel.outcome.findings)
    assert "they touch" in panel.outcome.tables[2].rows[2][3]
    panel.enter("cut", "quartersawn")
    assert not [each for each in panel.outcome.findings if each.level == "stop"]
    panel.enter("wood", SOLID)
    assert len(panel.outcome.drawings) == 1


def stops(panel):
    return [each.text for each in panel.outcome.findings if each.level == "stop"]


@pytest.mark.parametrize(("unit", "height", "dampest", "left"), [
    # 11.75 x .00365 x 3.50 = 0.150, half of it from 1/8; 23.75 x .00365 x 2.51 = 0.2175; 294 x .00365 x 3.50 = 3.76
    ("in", "12", 65, "0.050"), ("in", "24", 60, "0.016"), ("mm", "300", 65, "1.12"),
])
def test_one_front_loses_half_of_its_growth_at_each_of_its_two_gaps(unit, height, dampest, left):
    """Movement as in Wood Handbook, chapter 13; half at each side: common practice, no source."""
    panel = opened(unit, wood="white oak, commercial", count=1, height=height, dampest=dampest)
    assert not stops(panel)
    assert "between bottom and front 1" in text_of(panel)
    told = panel.outcome.tables[2].rows[2][3].split()[0]
    assert abs(Fraction(told) - Fraction(left)) <= Fraction("0.0006" if unit == "in" else "0.02")


def test_of_several_fronts_the_tightest_gap_is_told():
    """Stepped, 1/8 in: fronts of 8 27/32 and 7 53/64 in, .113 / 2 + .100 / 2 from .125 leave .0185 (as above)."""
    oak = {"wood": "white oak, commercial", "rule": "stepped", "dampest": 65}
    panel = opened("in", **oak)
    assert panel.outcome.tables[2].head[3] == "Gap, front 1 to front 2"
    assert panel.outcome.tables[2].rows[2][3] == "0.0185 in" and not stops(panel)
    panel = opened("in", **oak, around="1/32", gap="1/4")
    assert panel.outcome.tables[2].head[3] == "Gap, bottom to front 1"
    # .113 / 2 is 4/64 in, and a mark more; above, .087 / 2 is 3/64 in, and a mark more.
    assert "2 gaps are used up" in stops(panel)[0]
    assert "between bottom and front 1 leave 5/64 in, not 1/32 in" in stops(panel)[0]
    assert "between front 3 and top leave 1/16 in, not 1/32 in" in stops(panel)[0]


def test_every_gap_that_closes_is_told_with_the_gap_to_leave():
    """By hand, as above: fronts of (24 - 1/16 - 1/8) / 2 = 11.906 in grow 11.906 x .00365 x 3.501 = 0.152 in, of which
    half goes into a gap to the case (0.076, so 5/64 and a mark more) and twice half between them (5/32 and a mark).
    """
    oak = {"wood": "white oak, commercial", "count": 2, "height": "24", "gap": "1/8", "around": "1/32"}
    told = stops(opened("in", **oak, dampest=65))
    assert len(told) == 1 and "3 gaps are used up" in told[0]
    for each in (
        "between bottom and front 1 leave 3/32 in, not 1/32 in",
        "between front 1 and front 2 leave 11/64 in, not 1/8 in",
        "between front 2 and top leave 3/32 in, not 1/32 in",
    ):
        assert each in told[0]


@pytest.mark.parametrize(("unit", "choices"), [
    ("in", {"count": 1, "height": "36"}), ("in", {"count": 2, "height": "30"}), ("mm", {"count": 1, "height": "900"}),
    ("mm", {"count": 3, "height": "900", "rule": "stepped"}), ("mm", {"count": 2, "height": "900", "kind": OVERLAY}),
])
def test_the_gap_that_is_advised_does(unit, choices):
    panel = opened(unit, wood="American beech", dampest=73, **choices)
    (told,) = stops(panel)
    gap = max(re.findall(r"[Ll]eave (.+?)(?:,| when)", told), key=lambda text: read_length(text))
    for name in ("gap", "around"):
        panel.enter(name, gap)
    assert not stops(panel), (told, text_of(panel))
    # No front is held to what is less than a mark of the rule.
    assert amounts(panel.outcome.tables[2].rows[2][3])[0] >= (Fraction(254, 640) if unit == "in" else Fraction(1, 2))


@UNITS
def test_one_front_before_the_case_has_no_gap_to_lose(unit):
    panel = opened(unit, wood="American beech", count=1, kind=OVERLAY, dampest=73)
    assert not stops(panel) and "no gap to lose" in text_of(panel)
    assert panel.outcome.tables[2].head[3] == "Gap, to one like it"


@pytest.mark.parametrize("rule", RULES)
def test_in_millimetres_every_height_is_on_a_mark(rule):
    """0.5 mm is the finest mark of a rule that the first lesson teaches."""
    for count in range(2, 6):
        panel = opened("mm", rule=rule, count=count)
        heights = [amounts(row[2])[0] for row in panel.outcome.tables[0].rows]
        assert all(height % Fraction(1, 2) == 0 for height in heights), heights
        assert sum(heights) + (count + 1) * 3 == 600


def test_a_movement_by_hand():
    """White fir, 232 mm high, from 45 to 60 % humidity; moisture from Table 4-2 at 70 F: between cells."""
    panel = opened("mm", wood="white fir", count=1, height="238", gap="3")
    rows = panel.outcome.tables[2].rows
    assert rows[0][2] == "232 mm"
    # 232 x 0.00245 x (11.0 - 8.4) = 1.47
    assert abs(float(rows[2][2].split()[0]) - 232 - 1.47) < 0.06


@UNITS
def test_closing_sums_close(unit):
    panel = opened(unit, rule="stepped", count=4, gap={"in": "3/32", "mm": "2.5"}[unit])
    for line in panel.outcome.sums:
        *terms, total = amounts(line)
        assert sum(terms) == total, line


@UNITS
def test_every_size_that_is_shown_says_why(unit):
    panel = opened(unit, bays=2, part=TOO_HIGH, wood="black cherry")
    assert assert_told_as_shown(panel, unit) > 30
    with pytest.raises(LookupError):
        panel.outcome.why("gap/99/1")


@UNITS
def test_a_size_of_the_drawing_is_the_one_that_its_working_tells(unit):
    """Gaps are drawn larger than they are: the number that is picked must be the true one."""
    panel = opened(unit, bays=2, part=TOO_HIGH)
    for name, text in re.findall(r'data-ask="([^"]+)"[^>]*>([^<]+)<', panel.outcome.drawings[0].svg):
        told = panel.outcome.why(name)[0].split(" = ")[0].removeprefix("this size ")
        off = abs(read_length(told) - read_length(text.split(" (")[0], unit=unit))
        assert off <= (INCH // 128 if unit == "in" else MM // 20), (text, told)


@UNITS
def test_the_chart_is_the_same_byte_for_byte(unit):
    one, two = (opened(unit, wood="teak").outcome.drawings[1].svg for _ in range(2))
    assert one == two
    assert "relative humidity of the room" in one
    panel = opened(unit, wood="teak")
    panel.enter("made", 60)
    assert panel.outcome.drawings[1].svg != one
    panel.enter("made", 45)
    assert panel.outcome.drawings[1].svg == one


@pytest.mark.parametrize(("unit", "gap", "narrow"), [
    ("in", "1/16 in", False), ("in", "1/32 in", True), ("mm", "1.5 mm", False), ("mm", "1 mm", True),
])
def test_inset_gaps_narrower_than_usual_are_told(unit, gap, narrow):
    """1/16 to 1/8 in, or 1.5 to 3 mm, round an inset front (common practice, no source)."""
    assert ("Inset fronts usually have" in text_of(opened(unit, gap=gap))) == narrow


@pytest.mark.parametrize(("unit", "height", "made", "damp", "left"), [
    # 11.75 x .00365 x 3.50 = 0.150 more; 294 x .00365 x 3.50 = 3.76 more; half of it from each gap.
    ("in", "12", "11.75", "11.900", "0.050"), ("mm", "300", "294", "297.76", "1.12"),
])
def test_the_chart_of_the_year_is_told_in_words(unit, height, made, damp, left):
    """Movement as in Wood Handbook, chapter 13."""
    panel = opened(unit, wood="white oak, commercial", count=1, height=height, dampest=65)
    size = rf"(\d+(?:\.\d+)?) {unit}"
    told = re.search(
        rf"front, {size} as made .* driest, .*? is {size} high and the gap {size} wide.* dampest, 65 %, "
        rf"the front is {size} high and the gap {size} wide", panel.outcome.drawings[-1].alt,
    )
    as_made, dry, dry_gap, wet, wet_gap = map(Fraction, told.groups())
    near = Fraction("0.0011" if unit == "in" else "0.03")
    assert (as_made, abs(wet - Fraction(damp)) <= near, abs(wet_gap - Fraction(left)) <= near) == (
        Fraction(made), True, True
    )
    # What the front loses in the dry season, both its gaps gain, half each.
    gap = Fraction(1, 8) if unit == "in" else 3
    assert dry < as_made and abs((dry_gap - gap) - (as_made - dry) / 2) <= near


@UNITS
@pytest.mark.parametrize("choices", [{"count": 1}, {"count": 3, "rule": "stepped"}])
def test_the_sum_of_a_season_adds_up_to_what_it_tells(unit, choices):
    """Each cell of the year, worked out anew from the numbers that its own line holds."""
    panel = opened(unit, wood="black cherry", driest=32, dampest=58, **choices)
    for name, _ in picked(panel._tables.value, "season/"):
        told, _, made_of = panel.outcome.why(name)[0].partition(" = ")
        if not made_of:
            continue  # a moisture, which is looked up
        terms = re.findall(rf"([+-]?) ?(?:the movement )?(-?[\d.]+) {unit}( / 2)?", made_of)
        total = sum(
            Fraction(number) * (-1 if sign == "-" else 1) / (2 if halved else 1) for sign, number, halved in terms
        )
        size = Fraction(re.search(r"-?[\d.]+", told)[0])
        assert len(terms) > 1 and abs(total - size) <= Fraction("0.0012" if unit == "in" else "0.03"), (told, made_of)
