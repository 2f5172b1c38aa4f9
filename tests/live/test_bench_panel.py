"""The joint bench shows every joint: sizes that can be picked, what is gained, refusals that say what mends them."""

import random
import re

import pytest

from shoplib.draw.asking import all_sizes
from shoplib.draw.scene import Chain, Line
from shoplib.draw.stretched import Stretched
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import stock_of
from shoplib.live.bench_controls import Bench, meant, shown
from shoplib.live.bench_panel import bench_panel, section
from shoplib.live.length_control import LengthControl
from shoplib.measure import INCH, MM, read_length
from shoplib.tables.joint_facts import joint_facts
from tests.live.test_every_length_asks import first_of, lengths, texts

EACH = pytest.mark.parametrize("name", [kind.name for kind in JOINTS])
PEG = r"dowel \d"


def opened(name, unit):
    panel = bench_panel(name, unit)
    for _ in panel.groups:
        panel.unfold()
    return panel


def asked(panel):
    """Every text of drawings and tables that can be picked, with its name."""
    found = [(words, ask) for drawing in panel.outcome.drawings for words, ask in texts(drawing.svg) if ask]
    for table in panel.outcome.tables:
        found += [(re.sub("<.*?>", "", words), ask)
                  for ask, words in re.findall(r'data-ask="([^"]+)"[^>]*>(.*?)</button>', table.html())]
    return found


@pytest.mark.parametrize("unit", ["in", "mm"])
@EACH
def test_every_size_can_be_picked_and_its_working_begins_with_it(name, unit):
    panel, near = opened(name, unit), INCH // 128 if unit == "in" else MM // 4
    assert not panel.stale and panel.outcome.findings == ()
    for words, ask in asked(panel):
        panel.working.ask(ask)
        told = [first_of(line) for line in panel.working.lines]
        assert told, (ask, words)
        for size in lengths(words.replace("\xa0", " "), unit):
            assert any(abs(size - one) <= near for one in told), (words, ask, panel.working.lines)
    for drawing in panel.outcome.drawings:
        bare = " ".join(words for words, ask in texts(drawing.svg) if not ask)
        assert not re.search(r"\d", re.sub(PEG, "", bare)), (drawing.title, bare)


@EACH
def test_what_the_board_gains_is_drawn_from_its_tip(name):
    """What is gained reaches from the end of the board to where it would end against the other's face."""
    kind = joint(name)
    pair = kind.build(Bench(kind, "in").start())
    gain, scene = kind.allowance(pair.stock, pair.values), section(kind, pair)
    dashed = [item for item in scene.items if isinstance(item, Line) and item.kind == "hidden"]
    if not gain or pair.joints[0].axis[1] == pair.section[0]:
        assert not dashed
        return
    assert gain in [size for _, _, size in all_sizes(scene)]
    receives, axis = pair.by_name[pair.joints[0].receives].box, "xyz".index(pair.joints[0].axis[1])
    tip = pair.by_name[pair.joints[0].enters].box
    ends = tip.low[axis] + gain, tip.high[axis] - gain
    assert {receives.low[axis], receives.high[axis]} & set(ends)


def test_a_gap_is_drawn_larger_and_what_touches_still_touches():
    for places in ([(10, 12)], [(10, 12), (30, 33)], [(0, 40)]):
        drawn = Stretched(places, 6)
        at = [drawn(place) for place in range(60)]
        assert at == sorted(at)
        assert all(drawn(high) - drawn(low) >= 6 for low, high in places)
    pair = joint("dado").build(stock_of(3 * INCH // 4), {"fit": INCH // 500})
    scene = section(joint("dado"), pair)
    wide = next(item for item in scene.items if isinstance(item, Chain) and item.side == "left")
    assert wide.sizes == (3 * INCH // 4 + INCH // 500,)
    assert wide.at[-1] - wide.at[0] > wide.sizes[0] and "larger than they are" in scene.note


@EACH
def test_what_cannot_be_cut_says_why_and_what_it_says_mends_it(name, count):
    draw, refused = random.Random(7), 0
    panel = opened(name, "mm")
    for _ in range(count(25, 60)):
        control = draw.choice([one for one in panel.controls.values() if isinstance(one, LengthControl)])
        before = control.ticks
        control.ticks = draw.choice([control.low, control.high])
        if panel.stale:
            refused += 1
            assert "fault in the workbook" not in panel.message, panel.message
            assert panel.outcome.drawings and panel.message.endswith(".")
            found = re.search(r"It can be (.+?) (?:at most|at least)\.$", panel.message)
            if found and panel.message.startswith(control.label):
                control.ticks = read_length(found[1], zero=True)
                assert not panel.stale, panel.message
        control.ticks = before
    assert refused or name in ("rabbet", "butt")


@pytest.mark.parametrize("name", ["butt", "pocket screws", "dowel"])
def test_too_many_for_the_width_says_how_many_there_can_be(name):
    """The amount that is missing is wood, and no number of holes: it was once taken for one."""
    panel = opened(name, "mm")
    panel.controls["edge"].ticks = panel.controls["edge"].high
    assert panel.message.endswith("is missing. It can be 1 at most.")


def test_a_list_means_what_it_shows():
    for kind in JOINTS:
        stock = Bench(kind, "mm").start()
        for setting in kind.settings:
            if setting.unit != "length":
                for value in range(setting.low(stock), setting.high(stock) + 1, setting.step(stock)):
                    assert meant(setting, shown(setting, value), stock) == value


@EACH
def test_drawn_apart_each_part_in_sight_has_its_other_names(name):
    panel, facts = bench_panel(name, "in"), joint_facts(name)
    apart = panel.outcome.drawings[0]
    known = {part.name for part in facts.parts}
    pair = joint(name).build(Bench(joint(name), "in").start())
    for part in set(pair.named) & known - set(pair.by_name):
        for also in facts.part(part).also:
            other = also.partition(" (")[0]
            assert re.search(rf"{part} \([^()]*\b{other}\b[^()]*\)", apart.alt), (part, also, apart.alt)


@EACH
def test_what_is_usual_has_a_value_in_its_own_column_and_what_is_no_length_is_asked_for_nothing(name):
    panel, kind = bench_panel(name, "in"), joint(name)
    usual = panel.outcome.tables[-1]
    stock = Bench(kind, "in").start()
    for setting, (_, text, who) in zip(kind.settings, usual.rows, strict=True):
        assert text and who == setting.rule, setting.name
        if setting.unit != "length":
            assert text == str(shown(setting, setting.default(stock)))
    asked_rows = {int(row) for row in re.findall(r'data-ask="usual/(\d+)/1"', usual.html())}
    assert asked_rows == {row for row, setting in enumerate(kind.settings) if setting.unit == "length"}


def test_a_slope_reads_as_the_trade_says_it():
    panel = opened("dovetail", "in")
    assert panel.controls["slope"].description == "Slope of the tails" and panel.controls["slope"].value == "1 in 8"
    assert ("slope of the tails", "1 in 8") in [row[:2] for row in panel.outcome.tables[1].rows]


def test_a_dovetail_tells_what_is_marked_out():
    """Sides 0.75 in, boards 6 in wide, by hand: 6 less two half pins and three pins of 1/4 in is 4 3/4, four tails of
    1 3/16; a slope of 1 in 8 leans 3/32 in over 3/4 in, on both sides of a pin 3/16 in. The thickest reading of the
    bottom is 0.753 in.
    """
    cells = dict(opened("dovetail", "in").outcome.tables[0].rows)
    assert cells["tail, at its wide end"] == "1 3/16 in"
    assert cells["lean of a flank over the tails' length"] == "3/32 in"
    assert cells["pin, at its small end"] == "1/4 in" and cells["pin, at its wide end"] == "7/16 in"
    assert cells["gauge setting for the tails"] == "3/4 in" and cells["gauge setting for the pins"] == "0.753 in"


def test_a_splined_mitre_tells_what_is_set():
    """19 mm, a slot 7.6 mm deep in each mitre, of which 0.5 mm stays free: 2 x 7.1 mm of spline; 3 mm and 0.02 mm."""
    cells = dict(bench_panel("splined mitre", "mm").outcome.tables[0].rows)
    assert cells["spline, across the mitre"] == "14.2 mm" and cells["slot in each mitre, depth"] == "7.6 mm"
    assert cells["slot in each mitre, width"] == "3.02 mm" and cells["heel to the slot, along the mitre"] == "3 mm"


def test_large_type_and_further_readings():
    panel = bench_panel("dado", "in")
    panel.enlarge()
    before = panel.message
    panel.unfold()
    panel.enter("reading_3", "0.72 in")
    assert panel.message != before and "0.722 in wide" in panel.message
    panel.enter("look", "section only")
    assert [drawing.title for drawing in panel.outcome.drawings] == ["Dado, in section"]


@pytest.mark.parametrize(("name", "given", "row", "left"), [
    # By hand. A tongue and a tenon are what both cheeks leave; of a drawer front the groove lies under the rabbet, and
    # before it the lip alone.
    ("bridle", {"tongue": "1/4 in"}, "cheek in the rail, wood left under it", "1/4 in"),
    ("mortise and tenon", {"tenon": "1/4 in"}, "cheek in the rail, wood left under it", "1/4 in"),
    ("drawer lock", {"lip": "15/64 in", "groove": "15/64 in"}, "rabbet in the front, wood left under it", "15/64 in"),
    ("dado", {"receives": "3/4 in", "depth": "1/4 in"}, "dado in the side, wood left under it", "1/2 in"),
])
def test_wood_left_under_a_cut_is_what_all_cuts_leave_there(name, given, row, left):
    panel = opened(name, "in")
    for control, length in given.items():
        panel.enter(control, length)
    told = {words.removeprefix("2 ").replace("cheeks", "cheek"): text for words, text in panel.outcome.tables[0].rows}
    assert told[row] == left, told


@pytest.mark.parametrize(("unit", "gap", "told"), [("in", "1/64 in", "1/64 in"), ("mm", "1.5 mm", "1.5 mm")])
def test_the_end_of_a_spline_is_told_as_it_is_set(unit, gap, told):
    """Its slanting faces strike long before its ends, so no move along a board shows what is left open at an end."""
    panel = opened("splined mitre", unit)
    panel.enter("end_gap", gap)
    assert dict(panel.outcome.tables[0].rows)["slot in each mitre, deeper than the spline goes"] == told
    assert "End of the spline" not in " ".join(drawing.alt for drawing in panel.outcome.drawings)
    kind = joint("splined mitre")
    bears = kind.build(Bench(kind, unit).start(), {"end gap": 0})
    assert [stated.gap for stated in bears.clearances if "end of the spline" in stated.what] == [0, 0]


@pytest.mark.parametrize(("name", "given", "says", "mend"), [
    # Noyes p. 126, p. 165 and Fairham p. 134, all read.
    ("butt", {"clearance_hole": "5/64 in", "pilot_hole": "5/64 in"}, "no wider than the pilot hole",
     {"clearance_hole": "3/32 in"}),
    ("dovetail", {"slope": "1 in 5.9"}, "steeper than 1 in 6", {"slope": "1 in 6"}),
    ("dovetail", {"tails": 2}, "should not be over 1 3/4 in", {"tails": 3}),
])
def test_a_published_limit_that_is_passed_is_told(name, given, says, mend):
    panel = opened(name, "in")
    for values, passed in ((given, True), (mend, False)):
        for control, value in values.items():
            panel.enter(control, value)
        assert not panel.stale
        assert any(says in finding.text for finding in panel.outcome.findings) is passed
