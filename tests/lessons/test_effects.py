"""What a wrong number would do in the shop: each direction and each amount by hand, in both units.

Off by 1/32 in or 0.8 mm (calipers: 0.032 in), so half of it, twice it and so on are sums anybody can check.
"""

import re

import pytest

from shoplib.lessons import drawer_effects, effects, hardware_effects, joint_effects
from shoplib.lessons.exercise import Given, Givens
from shoplib.lessons.judge import coarse
from shoplib.lessons.posed import pose
from shoplib.lessons.say import Say
from shoplib.lessons.slide_length import SLIDE_LENGTH, slide_off
from shoplib.measure import INCH, MM, read_length, write_mm
from tests.lessons.answers import of_joint

AMOUNTS = {
    # half, once, twice, ... six times
    ("in", False): ("1/64 in", "1/32 in", "1/16 in", "3/32 in", "1/8 in", "5/32 in", "3/16 in"),
    ("mm", False): ("0.4 mm", "0.8 mm", "1.6 mm", "2.4 mm", "3.2 mm", "4 mm", "4.8 mm"),
    ("in", True): ("0.016 in", "0.032 in", "0.064 in", "0.096 in", "0.128 in", "0.160 in", "0.192 in"),
    ("mm", True): ("0.4 mm", "0.8 mm", "1.6 mm", "2.4 mm", "3.2 mm", "4 mm", "4.8 mm"),
}
OFF = {
    ("in", False): INCH // 32, ("mm", False): MM * 8 // 10,
    ("in", True): INCH * 32 // 1000, ("mm", True): MM * 8 // 10,
}

LINE = ("{by} too large", "{by} too small")
WOOD = ("count on {by} of wood that is not there", "{by} more wood than that")
BOTTOM = (
    "{by} too long: with {half} at each end ... hold the sides apart ... {by} too wide",
    "{by} too short: each end would stop {half} short ... {by} too narrow",
)
SPACER = ("{by} too high on both sides", "{by} too low on both sides")

SAID = {
    "00-bottom-follows": BOTTOM,
    "01-read": ("{by} too long ... cut again", "{by} too short"),
    "01-half": ("{by} off the middle ... differ by {twice}", "{by} off the middle ... differ by {twice}"),
    "01-sum": ("{by} too long", "{by} too short"),
    "01-line": ("{by} of wood that is not there ... comes out shorter", "{by} longer than you wrote"),
    # n - 1 of them each take so much from the last, which stands beside one that has it over: n times.
    "01-equal": ("{by} too long ... {all} shorter than the others", "{by} too short, and {all} ... left over"),
    "01-sams-list": LINE,
    "02-thickness": ("{by} too thick ... {twice} too short", "{by} too thin ... {twice} too long"),
    "02-back": ("{by} too wide: {half} at each side ... not go in", "{by} too narrow: {half} of each rabbet"),
    "02-bottom": BOTTOM,
    "02-bays": ("{by} too long ... {all} narrower than the others", "{by} too short ... {all} wider than the others"),
    "02-noors-list": LINE,
    "03-place": ("{by} too high", "{by} too low"),
    "03-width": ("{by} too wide ... loose", "{by} too narrow ... would not go in"),
    "03-wood": WOOD,
    "03-back-to-back": WOOD,
    "03-tongues": (
        "{by} too long: {left} would stay open under each tongue instead of {gap}",
        "{by} too short: each shoulder would stand {half} off its side ... {by} too narrow",
    ),
    "03-noors-marks": LINE,
    "04-reading": ("{by} too wide ... stick", "{by} narrower than it need be ... shimmed"),
    "04-box-width": ("{by} too wide ... would not go in", "{by} too narrow: {half} would be open"),
    "04-box-front": ("{by} too long ... {by} too wide", "{by} too short ... {by} too narrow"),
    "04-bottom": ("{by} too wide: it would touch the floors", "{by} too narrow: {half} less ... in each groove"),
    "04-slide-length": (
        "{by} longer than the longest ... keep the room behind it, but nobody sells it",
        "{by} shorter than the longest ... open {by} less",
    ),
    "04-ilses-list": LINE,
    "05-reading": ("{by} too wide where the opening is narrowest", "{by} narrower than it need be"),
    "05-overlay": ("{by} too wide: {half} more of each side", "{by} too narrow: {half} less of each side"),
    "05-inset": ("{by} too high ... {all} too far up", "{by} too low ... {all} more than a gap"),
    # Both fronts on a divider come nearer to its middle: the gap between them loses twice as much.
    "05-divider": ("{by} too far over ... take {twice} from the gap", "stop {by} short ... {twice} too wide"),
    "05-season": ("{by} more than comes", "grow {by} more than you expect ... stick"),
    "05-irmas-list": LINE,
    "06-reading": SPACER,
    "06-setback": ("{by} too far back ... inside the case", "{by} too far forward ... out of the case"),
    "06-spacer": SPACER,
    # Left and right hole are mirror images: both go towards the middle, or both away from it.
    "06-pull": ("{by} too far right ... {twice} too near", "{by} too far left ... {twice} too far"),
    "06-screw": ("{by} nearer to the face", "up to {by} longer"),
    "06-pegs": ("{by} too wide ... adds up", "{by} too narrow ... left over"),
    "06-tess-list": LINE,
    "07-reading": ("{by} more sag than comes", "{by} farther than you expect"),
    "07-limit": ("sag {by} more than the card allows", "{by} less than the card allows"),
    "07-thicker": ("{by} more sag than comes", "{by} farther than you expect"),
    "07-divider": ("{by} more sag than comes", "{by} farther than you expect"),
    "07-tipping": ("{by} farther out than the case can bear", "{by} before the case is about to tip"),
    "07-screw": ("{by} longer than the load asks for", "{by} too short"),
    "08-reading": ("{by} too long", "{by} too short"),
    "08-bands": ("{by} too long", "{by} too short"),
    "08-offcut": ("{by} more than is left", "{by} less than is left"),
    "08-fronts": ("{by} more board", "{by} too short"),
    "08-umas-list": LINE,
    "template-room": ("{by} too wide ... would not go", "leave {by} open"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small; those of a
joint's page stand in its `answers_jNN.py`."""


def said_of(exercise: str) -> tuple[str, str]:
    """The two patterns of an exercise."""
    return of_joint(exercise).SAID[exercise] if exercise.startswith("j") else SAID[exercise]


LEFT = {"1/32 in": "1/64 in", "1/16 in": "3/64 in", "1 mm": "0.6 mm", "1.5 mm": "1.1 mm"}
"""What stays open under a tongue, of each gap, where the board is 1/32 in or 0.8 mm too long: half of that less."""


def holds(said: str, pattern: str, amounts: tuple[str, ...], count: int = 1, gap: str = "") -> bool:
    """Whether the words and amounts of the pattern stand in the sentence in their order, and no other amount."""
    half, by, twice = amounts[:3]
    wanted = pattern.format(half=half, by=by, twice=twice, all=amounts[count], gap=gap, left=LEFT.get(gap))
    found = re.search(".*".join(re.escape(part) for part in wanted.split(" ... ")), said)
    size = r"\d[\d/.]* (?:in|mm)\b"
    return found is not None and re.findall(size, said) == re.findall(size, wanted)


def test_a_number_a_little_off_does_what_it_does_by_hand(exercise, unit):
    kind = unit, exercise.caliper
    for learner in ("Ada", "Bo", "Cleo"):
        givens = pose(exercise, learner, unit).givens
        count = givens.get("n", 1)
        for off, pattern in zip((OFF[kind], -OFF[kind]), said_of(exercise.id), strict=True):
            said = exercise.effect(givens, off, Say(*kind))
            gap = givens.texts["e"] if exercise.id == "03-tongues" else ""
            assert holds(said, pattern, AMOUNTS[kind], count, gap), (said, pattern)


def test_the_judge_says_it_of_what_the_answer_is_off_by(exercise, unit):
    posed = pose(exercise, "Ada", unit)
    right, near = exercise.right(posed.givens), 2 * exercise.tolerance.of(unit)
    slips = [(slip.rule(posed.givens), slip.effect) for slip in exercise.misconceptions]
    for given, effect in [(right + near, None), (right - near, None), *slips]:
        does = posed.check(f"{write_mm(given)} mm").does
        assert does == (effect or exercise.effect)(posed.givens, given - right, Say(unit, exercise.caliper))


T = 16 * MM
"""What the following are off by."""

TOOLS = dict.fromkeys(("w1", "w2", "w3", "w4"), T)

BRANCHES = [
    (effects.bottom_off, {"d": T // 2}, -T, "16 mm too short, 8 mm at each end: it would not enter"),
    (effects.bottom_off, {"d": T // 2 + 1}, -T, "16 mm too short: each end would stop 8 mm short ... 16 mm too narrow"),
    (effects.back_off, {"b": T // 2}, -T, "16 mm too narrow, 8 mm at each side: it would reach no rabbet"),
    (effects.back_off, {"b": T // 2 + 1}, -T, "16 mm too narrow: 8 mm of each rabbet"),
    (drawer_effects.bottom_off, {"e": T, "q": 3 * T}, T, "16 mm too wide: it would touch the floors"),
    (drawer_effects.bottom_off, {"e": T - 1, "q": 3 * T}, T, "16 mm too wide: it would hold the sides apart"),
    (drawer_effects.bottom_off, {"e": T, "q": 2 * T}, -T, "16 mm too narrow: pushed to one side ... drop out"),
    (drawer_effects.bottom_off, {"e": T, "q": 2 * T + 1}, -T, "16 mm too narrow: 8 mm less"),
    (joint_effects.tongues_off, {"d": 3 * T, "e": T // 2}, T, "16 mm too long: both tongues would reach to the floors"),
    (joint_effects.tongues_off, {"d": 3 * T, "e": T // 2 - 1}, T, "16 mm too long: its tongues would strike"),
    # Half of 16 mm at each end, of 10 mm that should stay open: 2 mm are left.
    (joint_effects.tongues_off, {"d": 3 * T, "e": 10 * MM}, T,
     "16 mm too long: 2 mm would stay open under each tongue instead of 10 mm"),
    (joint_effects.tongues_off, {"d": T, "e": T // 2}, -T, "16 mm too short, 8 mm at each end: the tongues would not"),
    (joint_effects.tongues_off, {"d": T + 1, "e": T // 2}, -T, "16 mm too short: each ... 8 mm off ... 16 mm too"),
    (hardware_effects.setback_off, {"t": T}, T, "16 mm too far back"),
    (hardware_effects.setback_off, {"t": T - 1}, T, "the whole front would stand inside"),
    (hardware_effects.pegs_off, TOOLS | {"W": 9 * T}, T, "beside the panel"),
    (hardware_effects.pegs_off, TOOLS | {"W": 9 * T + 1}, T, "16 mm too wide ... adds up"),
]


@pytest.mark.parametrize(("effect", "sizes", "off", "pattern"), BRANCHES)
def test_where_another_thing_happens_it_is_told(effect, sizes, off, pattern):
    said = effect(sizes, off, Say("mm"))
    assert holds(said, pattern, ("",) * 3), said


@pytest.mark.parametrize(("right", "pattern"), [
    (2 * T, "16 mm too long: the last of the 3 bays would have no room left"),
    (2 * T + 1, "16 mm too long ... 48 mm narrower"),
])
def test_two_spacers_too_long_may_leave_the_third_bay_no_room(right, pattern):
    assert holds(effects.bay_off({"n": 3}, T, Say("mm"), right), pattern, ("",) * 3)


@pytest.mark.parametrize(("off", "step", "told"), [
    # Up to a step it is told as it is; past that, in whole steps that it is truly more than.
    (8, 8, (8, False)), (-8, 8, (-8, False)), (9, 8, (8, True)), (-9, 8, (-8, True)),
    (16, 8, (8, True)), (17, 8, (16, True)), (-16, 8, (-8, True)), (-31, 8, (-24, True)),
])
def test_what_is_far_off_is_told_by_less_than_it_is_off(off, step, told):
    assert coarse(off, step) == told


@pytest.mark.parametrize(("off", "said"), [
    (INCH * 5, "more than 3 in longer"), (-INCH * 5, "more than 3 in shorter"), (INCH * 2, "more than 2 in longer"),
])
def test_a_slide_far_off_is_told_no_more_than_three_inches(off, said):
    """Slides are sold in whole steps: how far off would be the answer itself."""
    assert said in slide_off(_slide("in", "19 in", "3/4 in", "1/16 in", "1/4 in"), off, Say("in", rough=True))


def _slide(unit, inside, front, setback, rear):
    read = {"I": inside, "f": front, "c": setback, "m": rear}
    rows = [Given(name, "", read_length(text), text) for name, text in read.items()]
    return Givens([*rows, Given("metric", "", int(unit == "mm"), "")])


def test_a_slide_far_off_is_told_only_what_is_sure():
    """19 - 3/4 - 1/16 - 1/4 = 17 15/16, so 16 in; 17 1/2 in would keep its room, and is told as more than 1 in over."""
    told = slide_off(_slide("in", "19 in", "3/4 in", "1/16 in", "1/4 in"), INCH, Say("in", rough=True))
    assert "no slide is sold in that length, or it would take of what must stay free" in told


@pytest.mark.parametrize(("case", "slide", "said"), [
    # By hand. 23 - 3/4 - 1/16 - 22 = 3/16: it shuts; the longest with 3/8 behind it is 20 in.
    (("in", "23 in", "3/4 in", "1/16 in", "3/8 in"), "22 in",
     "2 in longer than the longest that has its room: the drawer would shut, but only 3/16 in would stay free behind "
     "it, and its sheet asks for 3/8 in"),
    (("in", "22 13/16 in", "3/4 in", "1/16 in", "3/8 in"), "22 in", "shut, but nothing would stay free behind it"),
    (("in", "22 25/32 in", "3/4 in", "1/16 in", "3/8 in"), "22 in", "would strike the back before it is shut"),
    # 554 - 18 - 2 - 6 = 528, the room itself: it keeps its 6 mm.
    (("mm", "554 mm", "18 mm", "2 mm", "6 mm"), "528 mm", "keep the room behind it, but nobody sells it"),
    (("mm", "554 mm", "18 mm", "2 mm", "6 mm"), "530 mm", "only 4 mm would stay free behind it, and its sheet"),
])
def test_a_slide_strikes_only_what_it_reaches(case, slide, said):
    givens = _slide(*case)
    told = slide_off(givens, read_length(slide) - SLIDE_LENGTH.right(givens), Say(case[0]))
    assert said in told and ("strike" in told) == ("strike" in said), told
