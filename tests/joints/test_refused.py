"""A joint that leaves too little wood is refused, with the amount; so is a setting that it has not."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import CannotCut, stock_of
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length
from shoplib.measure.traced import leaf
from shoplib.model.board import LEAST_WOOD
from shoplib.model.wood_kept import missing_wood

IN_MM = {"width": 150 * MM, "receives_width": 50 * MM, "style": MM_STYLE}
"""18 mm on 18 mm, 150 mm wide, stiles 50 mm."""


@pytest.mark.parametrize(
    ("name", "sizes", "setting", "amount"),
    [
        ("butt", {"edge": "4 mm", "clearance hole": "5 mm"}, "edge", "1.5 mm"),
        ("butt", {"clearance hole": "17 mm"}, "clearance hole", "0.5 mm"),
        ("pocket screws", {"pocket": "14 mm"}, "web", None),
        ("rabbet", {"depth": "16 mm"}, "depth", "1 mm"),
        ("dado", {"depth": "17.5 mm"}, "depth", "2.5 mm"),
        ("dado", {"depth": "20 mm"}, "depth", "5 mm"),
        ("dado", {"depth": "6 mm", "end gap": "6 mm"}, "end gap", None),
        ("dado", {"depth": "6 mm", "end gap": "8 mm"}, "end gap", None),
        ("stopped dado", {"depth": "6 mm", "end gap": "6 mm"}, "end gap", None),
        ("stopped dado", {"stop": "149 mm"}, "stop", "2 mm"),
        ("stopped dado", {"stop": "1 mm"}, "stop", "2 mm"),
        ("groove", {"up": "2 mm"}, "up", "1 mm"),
        ("groove", {"depth": "16 mm"}, "depth", "1 mm"),
        ("tongue", {"tongue": "16 mm"}, "beyond", "1 mm"),
        ("tongue", {"face": 1}, "beyond", "3 mm"),
        ("tongue", {"tongue": "2 mm"}, "tongue", "1 mm"),
        ("drawer lock", {"lip": "2 mm"}, "lip", "1 mm"),
        ("drawer lock", {"lip": "6 mm", "groove": "10 mm"}, "groove", "1 mm"),
        ("drawer lock", {"tongue length": "15 mm", "end gap": "1 mm"}, "tongue length", "1 mm"),
        ("finger", {"finger": "40 mm"}, "finger", "30 mm"),
        ("finger", {"finger": "2 mm", "fit": "0.2 mm"}, "finger", "1.1 mm"),
        ("half lap", {"lap": "16 mm"}, "lap", "1 mm"),
        ("half lap", {"lap": "2.5 mm"}, "lap", "0.5 mm"),
        ("cross lap", {"lap": "17 mm"}, "lap", "2 mm"),
        ("dowel", {"into side": "14 mm", "end gap": "2 mm"}, "into side", "1 mm"),
        ("dowel", {"diameter": "14 mm", "fit": 0}, "diameter", "1 mm"),
        ("spline", {"spline": "14 mm", "fit": 0}, "spline", "1 mm"),
        ("bridle", {"tongue": "14 mm", "fit": 0}, "tongue", "1 mm"),
        ("mortise and tenon", {"length": "46 mm", "end gap": "2 mm"}, "length", "1 mm"),
        ("mortise and tenon", {"top shoulder": "1 mm"}, "top shoulder", "2 mm"),
        ("mortise and tenon", {"haunch": "36 mm", "length": "38 mm"}, "haunch", "1 mm"),
        ("mortise and tenon", {"rails": 2}, "rails", "32 mm"),
        ("dovetail", {"tails": 12, "pin": "6 mm"}, "tails", None),
        ("dovetail", {"tails": 1, "half-pin": 0}, "half-pin", "6 mm"),
        ("splined mitre", {"slot": "16 mm"}, "slot", None),
        ("splined mitre", {"heel": "2 mm"}, "heel", "1 mm"),
    ],
)
def test_too_little_wood_is_refused_with_the_amount(name, sizes, setting, amount):
    """3 mm must stay. Common practice, no source."""
    values = {key: read_length(v) if isinstance(v, str) else v for key, v in sizes.items()}
    with pytest.raises(CannotCut) as refused:
        joint(name).build(stock_of(18 * MM, **IN_MM), values)
    assert refused.value.setting == setting
    assert refused.value.amount > 0
    if amount is not None:
        assert refused.value.amount == read_length(amount)
        assert amount in refused.value.sentence
    assert refused.value.sentence.endswith(".")


def test_haunches_that_would_meet_in_a_leg_are_refused():
    """Leg 50 mm square, rail 18 set in 20: the tenon's back is 32 mm from the face, so a haunch may be 18 long."""
    stock = stock_of(18 * MM, 50 * MM, **IN_MM)
    meeting = {"rails": 2, "set in": 20 * MM, "length": 30 * MM, "end gap": MM, "haunch": 18 * MM}
    assert joint("mortise and tenon").build(stock, meeting)
    with pytest.raises(CannotCut, match="No wood is left between the haunches of the two rails: 1 mm is missing"):
        joint("mortise and tenon").build(stock, meeting | {"haunch": 19 * MM})


@pytest.mark.parametrize(("depth", "told"), [
    # 3/4 in less the depth is left, 3 mm (0.11811 in) must stay; by hand: 0.75 - 0.6875 = 0.0625; 0.05561 is missing.
    ("11/16 in", "Only 1/16 in of wood is left under the dado in the side, and 1/8 in must stay: 1/16 in is missing."),
    # 0.75 - 0.7 = 0.05 is more than 3/64 in; 0.0681 in is missing, 5/64 in mend it.
    ("0.7 in", "Only 3/64 in of wood is left under the dado in the side, and 1/8 in must stay: 5/64 in is missing."),
    # 0.75 - 0.645 = 0.105 is more than 3/32 in; 0.0131 in is missing, but 3/32 and 1/64 would not be 1/8.
    ("0.645 in", "Only 3/32 in of wood is left under the dado in the side, and 1/8 in must stay: 1/32 in is missing."),
    # 0.75 - 0.74 = 0.01 is less than any mark of the rule; 0.108 in is missing.
    ("0.74 in",
     "Less than 1/64 in of wood is left under the dado in the side, and 1/8 in must stay: 1/8 in is missing."),
])
def test_amounts_are_whole_marks_on_the_safe_side(depth, told):
    with pytest.raises(CannotCut) as refused:
        joint("dado").build(stock_of(3 * INCH // 4), {"depth": read_length(depth)})
    assert refused.value.sentence == told
    assert refused.value.amount == LEAST_WOOD - (3 * INCH // 4 - read_length(depth))


@pytest.mark.parametrize("style", [INCH_STYLE, MM_STYLE], ids=lambda style: style.unit)
@given(left=st.integers(1, LEAST_WOOD - 1))
def test_what_is_left_and_what_is_missing_are_what_must_stay(style, left):
    """As it is written, whatever is left: a reader adds it up. Common practice, no source."""
    told, short = missing_wood("under it", left, style)
    form = r"(less than|only) (.+?) of wood is left under it, and (.+?) must stay: (.+?) is missing"
    words = re.fullmatch(form, told)
    is_left, must, missing = (read_length(text) for text in words.groups()[1:])
    assert (is_left if words[1] == "only" else 0) + missing == must
    assert missing >= short == LEAST_WOOD - left


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_no_refusal_has_a_rest_in_brackets(kind):
    """What must stay is 3 mm, which no rule in inches shows."""
    stock, refused = stock_of(3 * INCH // 4), 0
    for setting in (each for each in kind.settings if each.unit != "choice"):
        for value in (setting.low(stock), setting.high(stock), setting.high(stock) * 2, setting.high(stock) * 3):
            try:
                kind.build(stock, {setting.name: value})
            except CannotCut as refusal:
                refused += 1
                assert "(" not in refusal.sentence, refusal.sentence
    assert refused


def test_just_enough_wood_is_cut():
    assert joint("dado").build(stock_of(18 * MM, **IN_MM), {"depth": 18 * MM - LEAST_WOOD})


@pytest.mark.parametrize("kind", [k for k in JOINTS if k.name != "dovetail"], ids=lambda kind: kind.name)
def test_thin_stock_is_refused(kind):
    """4 mm takes no joint that leaves wood under it, or bores into an end; tails and pins run right through."""
    with pytest.raises(CannotCut):
        kind.build(stock_of(4 * MM, **IN_MM))


def test_a_setting_that_the_joint_has_not():
    with pytest.raises(ValueError, match="a dado has no setting 'stop'; it has depth, fit, end gap"):
        joint("dado").build(stock_of(INCH), {"stop": 5})


@pytest.mark.parametrize(("name", "given", "amount", "told"), [
    ("dado", {"fit": -MM}, MM, "For fit, -1 mm is given; 0 mm or more can be cut."),
    ("butt", {"count": 0}, 1, "For count, 0 is given; 1 or more can be cut."),
    ("dowel", {"count": -2}, 3, "For count, -2 is given; 1 or more can be cut."),
    ("dovetail", {"tails": 0}, 1, "For tails, 0 is given; 1 or more can be cut."),
    ("dovetail", {"slope": 0}, 1, "For slope, 0 is given; 1 or more can be cut."),
    ("butt", {"clearance hole": 0}, MM_STYLE.step, "For clearance hole, 0 mm is given; 0.1 mm or more can be cut."),
    ("butt", {"pilot hole": 0}, MM_STYLE.step, "For pilot hole, 0 mm is given; 0.1 mm or more can be cut."),
    ("dowel", {"diameter": 1}, MM_STYLE.step - 1, None),
    ("spline", {"spline width": 0}, MM_STYLE.step, "For spline width, 0 mm is given; 0.1 mm or more can be cut."),
    ("splined mitre", {"spline": 0}, MM_STYLE.step, "For spline, 0 mm is given; 0.1 mm or more can be cut."),
    ("pocket screws", {"shank hole": 0}, MM_STYLE.step, "For shank hole, 0 mm is given; 0.1 mm or more can be cut."),
    ("pocket screws", {"angle": 0}, 1, "For angle, 0 is given; 1 or more can be cut."),
    ("pocket screws", {"angle": 90}, 1, "For angle, 90 degrees is given; less than 90 can be cut."),
    ("mortise and tenon", {"rails": 3}, 1, "3 rails do not meet in a leg: it takes 1, or 2."),
])
def test_what_nobody_can_cut_is_refused(name, given, amount, told):
    """A hole, a tongue or a spline of no size, no screw at all, an angle that leads out of no board."""
    ((setting, _),) = given.items()
    with pytest.raises(CannotCut) as refused:
        joint(name).build(stock_of(18 * MM, **IN_MM), given)
    assert (refused.value.setting, refused.value.amount) == (setting, amount)
    assert told is None or refused.value.sentence == told


@pytest.mark.parametrize("face", [-1, 2])
def test_a_choice_that_there_is_not(face):
    with pytest.raises(ValueError, match=rf"the face is one of 0 \(inner\), 1 \(outer\); there is no {face}\."):
        joint("tongue").build(stock_of(18 * MM, **IN_MM), {"face": face})


def test_a_setting_is_a_whole_number():
    with pytest.raises(TypeError, match=r"the count is a whole number, not 2\.5"):
        joint("butt").build(stock_of(18 * MM, **IN_MM), {"count": 2.5})


def test_what_the_slider_does_not_offer_may_still_be_cut():
    """What goes wrong is shown with it: a rabbet looser than any fit, more screws than the slider has."""
    stock = stock_of(18 * MM, **IN_MM)
    assert joint("rabbet").build(stock, {"fit": 2 * MM}) and joint("butt").build(stock, {"count": 9, "edge": 12 * MM})


def test_the_allowance_carries_its_working():
    depth, gap = leaf(6 * MM, "depth"), leaf(MM, "end gap")
    gained = joint("dado").allowance(stock_of(18 * MM, **IN_MM), {"depth": depth, "end gap": gap})
    assert [(atom.name, times) for atom, times in gained.sum.terms] == [("depth", 1), ("end gap", -1)]
