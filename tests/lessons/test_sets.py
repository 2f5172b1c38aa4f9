"""Whole sets of sizes: right ones, others that fit as well, each slip, and answers that are none."""

import re
from fractions import Fraction
from itertools import pairwise
from random import Random

import pytest

from shoplib.checks.misfits import CLASH, misfits, outside
from shoplib.documents.examples import cabinet_from
from shoplib.lessons.bay_fronts import BAY_FRONTS, LOWEST, MIDDLE, TOP
from shoplib.lessons.box_boards import BOX_BOARDS
from shoplib.lessons.lesson_j05 import BOX_SET
from shoplib.lessons.lesson_j08 import FRAME_SET
from shoplib.lessons.one_strip import ONE_STRIP
from shoplib.lessons.posed_set import PosedSet, pose_set
from shoplib.lessons.set_exercise import NEAR, Asked
from shoplib.lessons.together import put_together
from shoplib.lessons.tongue_set import TONGUE_SET
from shoplib.lessons.whole_case import BACK_WIDTH, BOTTOM, WHOLE_CASE
from shoplib.measure import INCH, INCH_STYLE, MM, to_quantity
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Carcass, Project, Size
from shoplib.model.sheet import Sheet
from tests.lessons.answers import millimetres
from tests.lessons.learners import LEARNERS
from tests.lessons.posed_once import posed_once
from tests.lessons.sets import set_by_hand
from tests.lessons.test_exercises import MALFORMED, read_on_page, typed

FEW = LEARNERS[:6]
OVER = {"length": "long", "width": "wide", "height": "high", "depth": "deep"}
THIRTYSECOND = Fraction(254, 320)
"""1/32 in, in mm: what the outside may be off and a joint may be open."""


@pytest.fixture(scope="module")
def posed_to():
    """As in the other files, of whole sets."""
    return posed_once(pose_set)


def planned(posed: PosedSet) -> dict[str, int]:
    return {one.name: one.right(posed.case) for one in posed.exercise.asked}


def in_text(sizes: dict[str, int]) -> dict[str, str]:
    return {name: typed(ticks) for name, ticks in sizes.items()}


def check(posed: PosedSet, **other: int):
    """The planned set with other sizes in place of some."""
    return posed.check(in_text(planned(posed) | other))


def slips(posed: PosedSet):
    return [(one, slip, slip.rule(posed.givens)) for one in posed.exercise.asked for slip in one.slips]


def test_sizes_and_slips_agree_with_sums_by_hand_and_stand_apart(whole_set, unit, posed_to, learners):
    assert len(slips(posed_to(whole_set, FEW[0], unit))) >= 3
    least, tick = 3 * Fraction(NEAR.of(unit), MM), Fraction(1, MM)
    for learner in learners:
        posed = posed_to(whole_set, learner, unit)
        right, wrong = set_by_hand(whole_set.id, read_on_page(posed.givens))
        assert planned(posed).keys() == right.keys()
        assert all(abs(Fraction(ticks, MM) - right[name]) <= tick for name, ticks in planned(posed).items())
        assert {slip.id for _, slip, _ in slips(posed)} == set(wrong)
        for one, slip, ticks in slips(posed):
            name, by_hand = wrong[slip.id]
            assert name == one.name and abs(Fraction(ticks, MM) - by_hand) <= 2 * tick, slip.id
        for name, size in right.items():
            values = sorted([size, *(value for about, value in wrong.values() if about == name)])
            assert all(above - below > least for below, above in pairwise(values)), (learner, name)


def test_planned_sets_are_right_however_they_are_given(whole_set, unit, posed_to, count):
    for learner in LEARNERS[:count(10, 200)]:
        posed = posed_to(whole_set, learner, unit)
        feedback = posed.check(posed.answer)
        assert feedback.right and feedback.kind == feedback.name == "right", (learner, feedback)
        assert not feedback.items and "No gap and no clash" in feedback.picture.alt
    rounded = {name: text.split(" (")[0] for name, text in posed.answer.items()}
    assert posed.check(rounded).right
    assert posed.check(list(posed.answer.values())).right
    assert posed.check({name: to_quantity(ticks) for name, ticks in planned(posed).items()}).right
    assert posed.check({name: text.removesuffix(f" {unit}") for name, text in rounded.items()}, unit).right


def test_a_right_case_is_told_as_wide_as_high_and_as_deep_as_was_asked(unit, posed_to):
    for learner in FEW:
        posed = posed_to(WHOLE_CASE, learner, unit)
        wide, high, deep = (posed.givens.texts[name] for name in "WHD")
        assert f"the case is {wide} wide, {high} high and {deep} deep;" in posed.check(posed.answer).summary[0]


def test_sets_rounded_to_a_mark_of_the_rule_are_right(whole_set, unit, posed_to):
    """Each size is rounded to the nearest 1/64 in or 0.1 mm, so that two that meet may press by one mark."""
    mark = INCH // 64 if unit == "in" else MM // 10
    for learner in FEW:
        posed = posed_to(whole_set, learner, unit)
        sizes = planned(posed)
        nearest = {name: (ticks + mark // 2) // mark * mark for name, ticks in sizes.items()}
        assert check(posed, **nearest).right, learner


def test_other_sets_that_fit_are_right(unit, posed_to):
    for learner in FEW:
        posed = posed_to(WHOLE_CASE, learner, unit)
        sizes, small = planned(posed), MM * 7 // 10
        # Narrower by less than 1/32 in, and the back with it.
        both = check(posed, bottom=sizes["bottom"] - small, back_width=sizes["back_width"] - small)
        assert both.right, (learner, both)
        # A back that is a little loose both ways; a case a little wide, whose back has room.
        assert check(posed, back_width=sizes["back_width"] - small, back_height=sizes["back_height"] - small).right
        assert check(posed, bottom=sizes["bottom"] + small).right
        assert check(posed, side=sizes["side"] - small, back_height=sizes["back_height"] - small).right


def test_just_past_what_is_allowed_is_wrong(unit, posed_to):
    for learner in FEW:
        posed = posed_to(WHOLE_CASE, learner, unit)
        sizes, much = planned(posed), MM * 9 // 10
        assert not check(posed, bottom=sizes["bottom"] + much).right
        assert not check(posed, back_width=sizes["back_width"] - much).right
        assert not check(posed, back_height=sizes["back_height"] - much).right
        # The back would clash by 0.5 mm, though the outside and every size are within 1/32 in.
        clash = check(posed, bottom=sizes["bottom"] - MM // 2)
        assert not clash.right and "clash of " in clash.picture.alt
        # What compensates in the back does not mend the outside.
        narrow = check(posed, bottom=sizes["bottom"] - 5 * MM, back_width=sizes["back_width"] - 5 * MM)
        assert [item.label for item in narrow.items] == [BOTTOM.label, BACK_WIDTH.label]
        assert "The case comes" in narrow.items[0].said.does and "too narrow" in narrow.items[0].said.does


def test_each_slip_has_its_own_feedback(whole_set, unit, posed_to, count):
    for learner in FEW[:count(2, 6)]:
        posed = posed_to(whole_set, learner, unit)
        said = set()
        for one, slip, ticks in slips(posed):
            feedback = check(posed, **{one.name: ticks})
            assert (feedback.kind, feedback.name) == ("slip", slip.id), (learner, slip.id, feedback)
            (item,) = feedback.items
            assert item.label == one.label and len(item.parts) == 3
            assert slip.says.format_map(posed.givens.texts) in item.parts[0]
            assert feedback.heading == "Not yet"
            said.add(str(feedback))
        assert len(said) == len(slips(posed))


def amounts(text: str) -> list[Fraction]:
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def test_words_and_picture_hold_the_amount_by_hand(unit, posed_to):
    step = Fraction(254, 640) if unit == "in" else Fraction(1, 10)
    for learner in FEW:
        posed = posed_to(WHOLE_CASE, learner, unit)
        right, wrong = set_by_hand(WHOLE_CASE.id, read_on_page(posed.givens))
        for one, slip, ticks in slips(posed):
            feedback = check(posed, **{one.name: ticks})
            off = abs(wrong[slip.id][1] - right[one.name])
            assert any(abs(amount - off) <= step / 2 for amount in amounts(feedback.items[0].said.does)), slip.id
            kind = "gap" if (ticks < planned(posed)[one.name]) == ("back" in one.name) else "clash"
            named = re.search(r"A (gap|clash) of (.+?) between back and (.+?),", feedback.picture.alt)
            assert named and named[1] == kind, (slip.id, feedback.picture.alt)
            assert any(abs(amount - off) <= step / 2 for amount in amounts(named[2])), (slip.id, named[0])
            assert named[3] == ("top" if one.axis == "z" else "right side")
            assert f"{kind} {named[2]}</text>" in feedback.picture.svg


def test_a_back_too_wide_is_told_in_words(posed_to):
    posed = posed_to(WHOLE_CASE, FEW[0], "mm")
    feedback = check(posed, back_width=planned(posed)["back_width"] + 56 * MM // 10)
    assert "The back is 5.6 mm too wide for its rabbet in the right side." in str(feedback)
    assert "A clash of 5.6 mm between back and right side, from left to right, is marked." in feedback.picture.alt
    assert "drawn larger than they are" in feedback.picture.alt
    svg = feedback.picture.svg
    assert "drawn larger than they are" in re.sub(r"<[^>]+>", " ", svg).replace("  ", " ") and ">clash 5.6 mm<" in svg
    assert "All sizes in millimetres" in svg and "<title>" in svg


def test_the_drawing_says_that_it_is_larger_only_where_it_is(posed_to):
    posed = posed_to(WHOLE_CASE, FEW[0], "mm")
    assert "larger" not in check(posed).picture.alt
    assert "larger" not in check(posed, back_width=planned(posed)["back_width"] - 24 * MM).picture.alt


def test_several_slips_are_told_each_with_its_own_board_and_no_more_than_three(unit, posed_to):
    # Where the rabbets are the deeper ones, a bottom that is too short pinches even a back that is too narrow.
    cases = [posed_to(WHOLE_CASE, learner, unit) for learner in FEW]
    posed = next(case for case in cases if case.givens["b"] >= case.givens["d"])
    g = posed.givens
    wide, high = g["W"] - 2 * g["t"], g["H"] - 2 * g["t"]
    feedback = check(posed, bottom=wide, back_width=wide)
    assert {item.label for item in feedback.items} == {BOTTOM.label, BACK_WIDTH.label}
    texts = {item.label: item.said.does for item in feedback.items}
    assert "The case comes" in texts[BOTTOM.label] and "the back" not in texts[BOTTOM.label].lower()
    all_wrong = check(posed, bottom=wide, side=high, back_width=g["W"], back_height=g["H"])
    assert len(all_wrong.items) == 3 and all(item.said.kind == "slip" for item in all_wrong.items)
    assert "4 sizes are off." in all_wrong.summary[1] and "1 more will be told" in all_wrong.summary[1]


def test_a_size_that_is_over_is_never_told_to_be_under_whatever_the_others_are(whole_set, unit, posed_to, count):
    chance, told, many = Random(4), 0, count(8, 40)
    for learner in LEARNERS[:many]:
        posed = posed_to(whole_set, learner, unit)
        off = {name: chance.choice((-1, 1)) * chance.randint(2 * MM, 15 * MM) for name in planned(posed)}
        feedback = check(posed, **{name: ticks + off[name] for name, ticks in planned(posed).items()})
        for item in feedback.items:
            one = next(one for one in whole_set.asked if one.label == item.label)
            under = {one.too(-off[one.name]), *(["short"] if off[one.name] > 0 else [])}
            for board in one.boards:
                told += 1
                wrong = rf"\b{board} (is|ends|comes) [^.,]*\b({'|'.join(under)})\b"
                assert not re.search(wrong, item.said.does), (item, off)
    assert told > many


def test_a_size_out_of_the_air_is_told_without_its_exact_difference(whole_set, unit, posed_to):
    posed = posed_to(whole_set, FEW[0], unit)
    for one in whole_set.asked:
        feedback = posed.check(in_text(planned(posed)) | {one.name: "2 m"})
        assert (feedback.kind, feedback.name, feedback.picture) == ("other", "other", None)
        (item,) = feedback.items
        assert item.label == one.label and "more than " in item.said.does
        least, too = re.search(r"more than (.+? (?:in|mm)) too (\w+) ", item.said.does).groups()
        off = 2000 * MM - one.right(posed.case)
        assert too == OVER[one.size] and 0 < millimetres(least) * MM < off


def test_the_right_figure_in_the_other_unit_is_told(whole_set, posed_to):
    posed = posed_to(whole_set, FEW[0], "in")
    for one in whole_set.asked:
        figure = posed.answer[one.name].split(" (")[0].removesuffix(" in")
        feedback = posed.check(posed.answer | {one.name: f"{figure} mm"})
        assert feedback.kind == "wrong unit" and "inches" in feedback.items[0].said.look


def test_a_malformed_size_is_told_by_its_label(whole_set, unit, posed_to):
    posed = posed_to(whole_set, FEW[0], unit)
    one = whole_set.asked[-1]
    for answer, kind in MALFORMED.items():
        feedback = posed.check(posed.answer | {one.name: answer})
        assert feedback.kind == kind and not feedback.right and feedback.picture is None, answer
        assert [item.label for item in feedback.items] == [one.label], answer
        assert feedback.heading == "Not judged yet", answer


class Awkward:
    def __str__(self):
        raise RuntimeError("no text")

    __repr__ = __str__
    __eq__ = None


ODD = [
    None, ..., "", "12 in", 3, 3.5, [], ["1 in"], {}, {"lid": "3 in"}, {3: "3 in"}, object(), {"bottom": object()},
    b"12 in", {"bottom": Awkward()}, Awkward(), [None] * 4, [True] * 4, [float("nan")] * 4, {"bottom": "<b>1</b>"},
    {"x" * 5000: "1 in"}, [["1 in"]] * 4, range(4), {"bottom": -5}, {"bottom": 10**5000},
]


def test_odd_answers_end_in_words(whole_set, posed_to):
    posed = posed_to(whole_set, FEW[0], "in")
    for number, answers in enumerate(ODD):  # some of them cannot be shown
        feedback = posed.check(answers)
        assert feedback.kind in ("not tried", "not a length", "no unit"), number
        assert 10 < len(str(feedback)) < 900, number


def test_random_sets_are_judged_by_the_rule_and_end_in_words(unit, posed_to, count):
    """The rule again, on sums by hand for this case: outside within 1/32 in, back in its rabbets, no clash."""
    chance, mark = Random(3), (Fraction(254, 640) if unit == "in" else Fraction(1, 10))
    found = set()
    for number in range(count(75, 150)):
        posed = posed_to(WHOLE_CASE, LEARNERS[number], unit)
        most = 2 * MM if number % 2 else 20 * MM
        off = {name: chance.randint(-most, most) // (1 + 3 * (number % 3)) for name in planned(posed)}
        feedback = check(posed, **{name: ticks + off[name] for name, ticks in planned(posed).items()})
        by = {name: Fraction(ticks, MM) for name, ticks in off.items()}
        widest = THIRTYSECOND if unit == "in" else Fraction(8, 10)
        room = [by["bottom"] - by["back_width"], by["side"] - by["back_height"]]
        fits = all(-mark <= gap <= widest for gap in room)
        right = fits and abs(by["bottom"]) <= widest and abs(by["side"]) <= widest
        assert feedback.right == right, (posed.givens, by, feedback)
        assert feedback.right or feedback.items or len(feedback.summary) > 1, (by, feedback)
        found.add(feedback.right)
    assert found == {True, False}


def test_no_feedback_and_no_hint_holds_a_right_size(whole_set, unit, posed_to, count):
    for learner in FEW[:count(2, 6)]:
        posed = posed_to(whole_set, learner, unit)
        given = set(posed.givens.texts.values())
        sizes = {text.split(" (")[0] for text in posed.answer.values()} - given
        whole = re.compile("|".join(rf"(?<![\d./])(?<!\d ){re.escape(size)}(?![\d/.])" for size in sizes))
        for one in whole_set.asked:
            for wrong in (*(slip.rule(posed.givens) for slip in one.slips), planned(posed)[one.name] + 9 * MM, 3 * MM):
                feedback = check(posed, **{one.name: wrong})
                mine = re.sub(r"You gave .*?(?:mm|in)\.", "", str(feedback))
                assert not whole.search(mine), (sizes, feedback)
        assert not [hint for hint in (*posed.hints, posed.question) if whole.search(hint)]


def test_the_working_ends_in_each_size(whole_set, unit, posed_to):
    for learner in FEW:
        posed = posed_to(whole_set, learner, unit)
        working = "\n".join(posed.working)
        for name, label in posed.fields:
            assert f"{label}:" in posed.working and posed.answer[name] in working
        assert not re.search(r"[{}]|None|  ", "\n".join([working, posed.question, *posed.hints]))


def test_every_misfit_of_a_set_is_found_where_it_is(posed_to):
    posed = posed_to(WHOLE_CASE, FEW[0], "mm")
    case, by = posed.case, 10 * MM
    given = {one: one.right(case) + (by if one is BACK_WIDTH else 0) for one in WHOLE_CASE.asked}
    built = put_together(case, given).built
    (clash,) = misfits(built, case)
    assert (clash.kind, clash.boards, clash.axis, clash.amount) == (CLASH, ("back", "right side"), 0, by)
    end = case.by_name["back"].box.high[0]
    assert (clash.box.low[0], clash.box.high[0]) == (end, end + by)
    assert outside(built, case) == case.outside
    assert misfits(case, case) == ()


def test_new_numbers_for_each_learner(whole_set, unit, posed_to, learners):
    asked = {posed_to(whole_set, learner, unit).question for learner in learners}
    assert len(asked) > len(learners) * 3 // 4


def drawer_set():
    """The sizes of one box in the shipped case, as an exercise would ask for them."""
    case = cabinet_from("under_bench_case")
    box = "bay 1 drawer 1 "
    rows = [
        ("front", "Box front and back", "length", (f"{box}box front", f"{box}box back"), "x"),
        ("bottom", "Box bottom", "width", (f"{box}box bottom",), "x"),
    ]
    return case, [Asked(*row, (), lambda _givens, _say: ()) for row in rows]


def test_a_drawer_box_is_judged_against_its_slides_and_told_without_its_number():
    case, (front, bottom) = drawer_set()
    right = {one: one.right(case) for one in (front, bottom)}
    assert put_together(case, right).right
    narrow = put_together(case, right | {front: right[front] - INCH // 2})
    assert not narrow.right
    assert "the box is 1/2 in too narrow, its slides take 1 in for the pair" in narrow.says
    wide = put_together(case, right | {bottom: right[bottom] + INCH // 4})
    slack = INCH // 16  # the plan leaves 1/32 in at each end of the bottom, and it gives way until both are used up
    assert not wide.right and wide.misfits[0].amount == INCH // 4 - slack
    assert wide.says == ("the box bottom is 3/16 in too wide for its groove in the right box side",)
    # Rounded to the nearest mark of the rule it still is right, though slides forgive no box that is too wide.
    assert put_together(case, right | {front: right[front] + case.style.step // 2}).right
    assert not put_together(case, right | {front: right[front] + case.style.step}).right


def test_a_box_too_wide_for_its_case_is_told_as_the_box(posed_to):
    posed = posed_to(BOX_SET, FEW[0], "in")
    said = str(check(posed, front=planned(posed)["front"] + INCH))
    assert "The box has no room: right side and the right box side overlap by" in said and "The has" not in said


def test_a_side_that_ends_before_its_second_dado_has_no_dado(posed_to):
    posed = posed_to(BOX_SET, FEW[0], "in")
    assert "has no dado for the box back" in str(check(posed, side=planned(posed)["side"] - INCH))


def applied_back():
    """A case with a back laid over its rear, flush all round, and the sizes of back, top and bottom asked for."""
    sheets = {"case": Sheet("case", "plywood", INCH * 3 // 4), "thin": Sheet("thin", "plywood", INCH // 4)}
    size = Size("outside", 30 * INCH, 20 * INCH, 18 * INCH)
    case = solve(Project("case", INCH_STYLE, sheets, size, Carcass("case", back=Back("applied", "thin"))))
    rows = [("width", "Back", "width", ("back",), "x"), ("height", "Back", "height", ("back",), "z"),
            ("bottom", "Top and bottom", "length", ("bottom", "top"), "x")]
    return case, [Asked(*row, (), lambda _givens, _say: ()) for row in rows]


def test_an_applied_back_too_small_is_told_and_what_it_leaves_bare():
    case, asked = applied_back()
    width, height, bottom = asked
    right = {one: one.right(case) for one in asked}
    assert put_together(case, right).right
    assert put_together(case, right | {width: right[width] - INCH // 64}).right
    narrow = put_together(case, right | {width: right[width] - INCH // 16, height: right[height] - INCH // 8})
    assert not narrow.right and set(narrow.says) == {
        "the back is 1/16 in too narrow, and the edge of the left side lies bare for 1/16 in",
        "the back is 1/8 in too low, and the edge of the bottom lies bare for 1/8 in",
    }
    wide = right | {bottom: right[bottom] + INCH // 8}
    found = put_together(case, wide)
    assert "the edge of the left side lies bare for 1/8 in: the back ends short of it" in found.says
    assert put_together(case, right | {width: right[width] + INCH // 8}).says == ("the case comes 1/8 in too wide",)


@pytest.mark.parametrize("off", [(3, 3, 3), (10, 10, 10), (3, -2, 2), (0, 3, 3), (3, 3, 0)])
def test_each_front_that_is_wrong_is_named_with_its_own_gap(posed_to, off):
    posed = posed_to(BAY_FRONTS, FEW[0], "mm")
    asked = (LOWEST, MIDDLE, TOP)
    feedback = check(posed, **{one.name: one.right(posed.case) + by * MM for one, by in zip(asked, off, strict=True)})
    wrong = [one for one, by in zip(asked, off, strict=True) if by]
    assert {item.label for item in feedback.items} == {one.label for one in wrong}
    for item in feedback.items:
        (board,) = next(one.boards for one in wrong if one.label == item.label)
        assert board in item.said.does.lower(), item


@pytest.mark.parametrize("off", [-3, 3, 8])
def test_gaps_that_are_alike_are_told_once(posed_to, off):
    posed = posed_to(BAY_FRONTS, FEW[0], "mm")
    (item,) = check(posed, width=planned(posed)["width"] + off * MM).items
    assert "(likewise bay 1 drawers 2 and 3)" in item.said.does and item.said.does.count("bay 1 drawer 2") == 0


def test_a_box_off_its_slides_is_marked_in_the_picture(unit, posed_to):
    for learner in FEW:
        posed = posed_to(BOX_BOARDS, learner, unit)
        for by, kind in ((3, "clash"), (-3, "gap")):
            feedback = check(posed, front=planned(posed)["front"] + by * MM)
            found = re.search(rf"A {kind} of (.+?) between .* right box side and its slide", feedback.picture.alt)
            assert found and not feedback.right
        assert "No gap and no clash" in check(posed).picture.alt


@pytest.mark.parametrize("off", [-20, -3, 3, 6])
def test_a_box_that_is_not_as_long_as_its_slides_is_wrong_though_its_bottom_fits(unit, posed_to, off):
    """The question asks for a box as long as its slides: what the sides give, the bottom must not make good."""
    for learner in FEW:
        posed = posed_to(BOX_BOARDS, learner, unit)
        right = planned(posed)
        sizes = {name: right[name] + off * MM for name in ("side", "bottom_depth")}
        feedback = check(posed, **sizes)
        assert not feedback.right
        does = feedback.items[0].said.does + feedback.items[1].said.does
        assert f"{'longer' if off > 0 else 'shorter'} than its slides" in does


@pytest.mark.parametrize(("name", "off", "left"), [
    # The groove floors are 2 mm farther apart than the bottom is wide or deep: what is left of these 2 mm.
    ("bottom_width", 2, "nothing"), ("bottom_width", 1.5, "0.5 mm"), ("bottom_depth", 1.5, "0.5 mm"),
    ("front", -1.5, "0.5 mm"), ("front", -2, "nothing"), ("side", -2, "nothing"),
])
def test_a_bottom_clashes_only_where_its_whole_slack_is_used_up(posed_to, name, off, left):
    posed = next(one for one in (posed_to(BOX_BOARDS, each, "mm") for each in LEARNERS) if one.givens["e"] == 2 * MM)
    right = planned(posed)
    feedback = check(posed, **{name: right[name] + int(off * MM)})
    (item,) = feedback.items
    assert f"has {left} to spare in its grooves" in item.said.does and "and was to have 2 mm" in item.said.does
    assert "clash" not in item.said.does and "bottom is" not in item.said.does
    more = 2 if off > 0 else -2
    feedback = check(posed, **{name: right[name] + int((off + more) * MM)})
    over = f"{abs(off + more) - 2:g} mm"
    assert re.search(rf"box bottom (is {over} too|has {over} too little room)", feedback.items[0].said.does), feedback


def test_sides_that_are_off_are_told_to_be_so_themselves(unit, posed_to):
    for learner in FEW:
        posed = posed_to(BOX_BOARDS, learner, unit)
        for off, word in ((3, "long"), (-3, "short")):
            feedback = check(posed, side=planned(posed)["side"] + off * MM)
            assert f"too {word}." in feedback.items[0].said.does.split(". ")[0] + "."


@pytest.mark.parametrize(("name", "ends"), [("divider", 1), ("shelf", 2)])
def test_a_plain_end_that_is_short_is_told_once(posed_to, name, ends):
    """1/16 in short: the divider is open at its top, each of the two shelves at one end."""
    posed = posed_to(ONE_STRIP, "Ada", "in")
    said = str(check(posed, **{name: planned(posed)[name] - INCH // 16}))
    assert said.count("1/16 in") == ends and "stops" not in said, said


@pytest.mark.parametrize("learner", FEW)
def test_tongues_counted_to_the_floor_put_the_shoulders_too_far_out(posed_to, unit, learner):
    """The board is longer by 2e and its tongues are not: each shoulder e too far out, and the case 2e too wide."""
    posed = posed_to(TONGUE_SET, learner, unit)
    gap = posed.givens.texts["e"]
    wider = {"1/16 in": "1/8 in", "1.5 mm": "3 mm", "2 mm": "4 mm"}[gap]
    said = str(check(posed, bottom=planned(posed)["bottom"] + 2 * posed.givens["e"]))
    assert f"shoulders stands {gap} too far out. The case comes {wider} too wide" in said and "floors" not in said


def test_boards_that_are_no_case_are_called_by_what_they_are(unit, posed_to):
    posed = posed_to(FRAME_SET, FEW[0], unit)
    assert "the frame is " in posed.check(posed.answer).summary[0]
    short = check(posed, rails=planned(posed)["rails"] - 20 * MM)
    assert "The frame comes " in str(short) and not re.search(r"\bcase\b", str(short))
    far = posed.check(posed.answer | {"rails": "2 m"})
    assert "for this frame." in far.items[0].said.does
