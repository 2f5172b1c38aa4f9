"""A session: no action raises whatever it is given, what is refused is told in a sentence, and the count is kept."""

from dataclasses import dataclass, replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from shoplib.checks import check
from shoplib.measure import INCH, MM, ureg, write_brief
from shoplib.practice import (
    DRAWN,
    MEASURED,
    SLIP_NAMES,
    Step,
    another_sheet,
    cut_pair,
    measure,
    measure_sheet,
    press_down,
    result,
    set_depth,
    set_fence,
    set_stack,
    start,
    test_cut,
    try_fit,
)
from shoplib.practice.dry_fit import planned_case
from shoplib.practice.plan import LEVELS, SIDES, planned_side
from shoplib.practice.spreads import NONE, THOU
from tests.practice.benches import UNITS, anew, cut, perfect, set_up

ANYTHING = st.one_of(
    st.text(max_size=70), st.text(st.characters(categories=["Cs", "Nd", "Zs"]), max_size=5), st.integers(), st.floats(),
    st.none(), st.booleans(), st.binary(max_size=3), st.lists(st.integers(), max_size=2), st.just(10**5000),
    st.sampled_from(["0.7 in", "1/4 in", "18 mm", "9 in", "16 in", "0 in", "-1 in", "230 mm", "1/8 in", "1 in (+9 in)",
                     *SLIP_NAMES, DRAWN, *SIDES, "shelf", "bottom", *MEASURED, "mm", "in"]),
    st.builds(ureg.Quantity, st.floats(-5, 20), st.sampled_from(["inch", "mm", "kg", "degC"])),
)
ACTIONS = st.one_of(
    st.tuples(st.sampled_from([set_stack, set_depth, measure_sheet, press_down, test_cut, cut_pair]), ANYTHING),
    st.tuples(st.sampled_from([set_fence, measure, cut_pair]), ANYTHING, ANYTHING),
    st.tuples(st.sampled_from([try_fit, test_cut, measure_sheet, press_down])),
)
SENSIBLE = st.one_of(
    st.tuples(st.just(set_stack), st.integers(125, 812).map(lambda n: f"{n / 1000} in")),
    st.tuples(st.just(set_depth), st.integers(1, 600).map(lambda n: f"{n / 1000} in")),
    st.tuples(st.just(set_fence), st.integers(0, 15000).map(lambda n: f"{n / 1000} in"), st.sampled_from(LEVELS)),
    st.tuples(st.just(press_down), st.booleans()),
)


def is_a_sentence(text: str) -> bool:
    return text.endswith(".") and "\n" not in text and len(text) < 600


@settings(max_examples=300, deadline=None)
@given(learner=ANYTHING, unit=ANYTHING, actions=st.lists(ACTIONS, max_size=8))
def test_no_action_raises_and_what_is_refused_changes_nothing(learner, unit, actions):
    step = start(learner, unit=unit)
    assert is_a_sentence(step.said)
    for do, *given_to in actions:
        before = step.session
        step = do(before, *given_to)
        assert isinstance(step, Step) and is_a_sentence(step.said)
        assert step.done or step.session == before
    assert result(step.session) is None or result(step.session).said


@settings(max_examples=200, deadline=None)
@given(
    learner=st.text(max_size=5), unit=st.sampled_from(UNITS), actions=st.lists(SENSIBLE, max_size=10),
    slip=st.sampled_from(["", DRAWN, *SLIP_NAMES]), on=st.sampled_from(SIDES),
)
def test_any_settings_can_be_cut_and_judged(learner, unit, actions, slip, on):
    session = set_up("Noor", unit)
    session = replace(session, bench=replace(session.bench, learner=learner))
    for do, *given_to in actions:
        session = do(session, *given_to).session
    done = result(cut(session, slip, on))
    assert all(is_a_sentence(text) for text in done.said)
    assert all(each.proof.clean for each in done.rescues if each.saved)
    assert done.dry_fit.clean or done.troubles or done.alike  # nothing goes wrong without a word


@pytest.mark.parametrize("unit", UNITS)
def test_a_perfect_saw_gives_exactly_the_planned_dry_fit(unit):
    session = perfect(unit)
    done = result(session)
    assert session.sides == tuple(planned_side(session.plan, side, session.stock) for side in SIDES)
    planned = planned_case(session.bench, session.plan, session.stock).cabinet
    assert done.dry_fit.case.cabinet == planned
    assert done.findings == done.dry_fit.gaps == done.troubles == done.rescues == ()
    assert [finding for finding in check(planned) if finding.level != "note"] == []
    assert done.dry_fit.out_of_square == 0
    # Worked by hand: outside 18 in or 450 mm, and 16 in or 400 mm high; 8 in or 200 mm deep.
    sizes = (18 * INCH, 8 * INCH, 16 * INCH) if unit == "in" else (450 * MM, 200 * MM, 400 * MM)
    assert planned.outside.size == sizes
    assert {fit.over for _, _, fit in done.fits} == {session.plan.fit}


@dataclass(frozen=True)
class Arrangement:
    """Something that has a width in ticks, as an arrangement of cutters and shims has."""

    width: object


def test_a_stack_is_text_a_quantity_or_an_arrangement():
    session = start("Noor").session
    for stack in ("0.7 in", ureg.Quantity(0.7, "inch"), Arrangement(INCH * 7 // 10)):
        assert set_stack(session, stack).session.stack == INCH * 7 // 10
    for stack in (Arrangement(0.7), Arrangement(True), Arrangement(INCH), Arrangement(INCH // 16), 0.7, "0.9 in"):
        step = set_stack(session, stack)
        assert not step.done and is_a_sentence(step.said)


@pytest.mark.parametrize(("do", "said"), [
    (lambda s: set_depth(s, "0.65 in"), "A dado 0.65 in deep leaves 0.055 in of the side, and 0.118 in must be left at "
                                        "least; choose less."),
    (lambda s: set_depth(s, "1 in"), "A dado 1 in deep leaves nothing of the side, and 0.118 in must be left at least; "
                                     "choose less."),
    (lambda s: set_fence(s, "15 1/2 in"), "At 15 1/2 in the dado could run out of the upper end of the side, which is "
                                          "16 in high; choose 15 in at most."),
    (lambda s: measure(s, "weight"), "A cut has a width, a depth and a wall to measure, and no `weight`."),
    (lambda s: measure_sheet(s, 10), "Take 1 to 9 readings, not `10`."),
    (lambda s: cut_pair(s, "sneeze"), "No slip is called `sneeze`; there are wrong reference edge, mirrored pair, "
                                      "wrong face, wrong side of the line and second dado forgotten."),
    (lambda s: cut_pair(cut(s)), "The pair is cut already; come to the bench anew for another one."),
])
def test_a_refusal_says_what_would_be_right(do, said):
    step = do(set_up(spreads=NONE))
    assert (step.said, step.done) == (said, False)


def test_the_caliper_reads_the_last_test_cut():
    session = test_cut(set_up(spreads=NONE, wider=3 * THOU, deeper=4 * THOU, farther=5 * THOU)).session
    said = [measure(session, what, 2).said for what in MEASURED]
    assert said == [
        "The width of test cut 1 reads 0.709 and 0.709 in; the mean is 0.709 in.",
        "The depth of test cut 1 reads 0.254 and 0.254 in; the mean is 0.254 in.",
        "The distance of the near wall from the end of test cut 1 reads 9.005 and 9.005 in; the mean is 9.005 in.",
    ]


def test_test_cuts_are_counted_against_a_practised_hand():
    session = set_up()
    assert result(cut(session)).tests == "You made no test cut; a practised hand makes 2 on this bench."
    for _ in range(4):
        session = test_cut(session).session
    assert result(cut(session)).tests == "You made 4 test cuts; a practised hand makes 2 on this bench."


def test_a_bowed_panel_rides_up_unless_it_is_pressed_and_the_offcut_does_not_show_it():
    pressed = set_up()
    loose = press_down(pressed, False).session
    assert test_cut(loose).session.tests == test_cut(pressed).session.tests
    flat, bowed = cut(pressed), cut(loose)
    bows = [pressed.bench.bow(side) for side in SIDES for _ in range(2)]
    assert [one.depth - two.depth for one, two in zip(flat.kerfs, bowed.kerfs, strict=True)] == bows
    assert max(bows) > 5 * THOU
    done = result(bowed)
    assert "shallow" in {trouble.kind for trouble in done.troubles}
    assert any("rode up in the middle" in text for text in done.said)
    assert not any("rode up in the middle" in text for text in result(flat).said)


def test_a_drawn_slip_repeats_and_all_are_drawn_for_somebody():
    drawn = {cut(set_up(f"learner {number}"), DRAWN).slip for number in range(60)}
    assert drawn == {"", *SLIP_NAMES}
    session = set_up("Tess")
    assert cut(session, DRAWN).slip == cut(anew(cut(session)), DRAWN).slip


@pytest.mark.parametrize("unit", UNITS)
def test_another_sheet_is_cut_on_the_same_saw_as_it_stands(unit):
    first = cut(test_cut(measure_sheet(set_up(unit=unit)).session).session)
    second = another_sheet(first).session
    assert second.bench.saw == first.bench.saw and second.bench.sheet != first.bench.sheet
    assert (second.stack, second.depth, second.fences, second.pressed) == (
        first.stack, first.depth, first.fences, first.pressed
    )
    assert second.tests == second.readings == second.fits == second.kerfs == () and second.sides is None
    assert cut(second).kerfs != first.kerfs
    drawn = [another_sheet(each).session.bench for each in (first, second)]
    assert len({bench.sheet for bench in (first.bench, *drawn)}) == 3
    hand = result(cut(second)).practised.session.bench
    assert hand == second.bench  # judged by a hand at this sheet


def test_the_unit_of_a_control_applies_where_the_text_has_none():
    session = start("Noor", unit="mm").session
    assert set_depth(session, "6", unit="mm").session.depth == 6 * MM
    assert set_stack(session, "17.8", unit="mm").session.stack == MM * 178 // 10
    assert set_fence(session, "9 in", "shelf", unit="mm").session.fence("shelf") == 9 * INCH
    assert not set_depth(session, "6").done


def test_a_refused_depth_tells_nothing_of_a_sheet_that_nobody_measured():
    said = {set_depth(start(f"learner {number}").session, "0.65 in").said for number in range(20)}
    assert said == {"A dado 0.65 in deep leaves 0.055 in of the side, and 0.118 in must be left at least; choose less."}
    measured = measure_sheet(start("learner 1").session).session
    left = measured.reading("sheet").mean - 650 * THOU
    assert f"leaves {write_brief(left, measured.bench.style, decimal=True)} of" in set_depth(measured, "0.65 in").said
