"""Every exercise with its right answer, each of its slips, and answers that are no answers."""

import re
from fractions import Fraction
from itertools import pairwise

from shoplib.lessons.exercise import Givens
from shoplib.lessons.lesson_02 import THICKNESS
from shoplib.lessons.posed import Posed
from shoplib.measure import MM, to_quantity, ureg, write_mm
from shoplib.measure.traced import Traced
from shoplib.words.working import leaves
from tests.lessons.answers import by_hand, millimetres
from tests.lessons.learners import ONE


def typed(ticks: int) -> str:
    return f"{write_mm(ticks)} mm"


def read_on_page(givens: Givens) -> dict[str, Fraction]:
    """What the learner reads, as exact numbers; counts stay counts, words are left out."""
    found = {}
    for name, text in givens.texts.items():
        if re.fullmatch(r".+ (in|mm)", text):
            found[name] = millimetres(text)
        elif text.isdigit():
            found[name] = Fraction(text)
    return found


def judged(posed: Posed):
    """Feedback to each slip, to a number near and a number far from the answer, and to no answers."""
    right, near = posed.exercise.right(posed.givens), posed.exercise.tolerance.of(posed.unit)
    answers = [typed(slip.rule(posed.givens)) for slip in posed.exercise.misconceptions]
    answers += [typed(right + 2 * near), typed(right * 2), typed(right // 4), *MALFORMED, None]
    found = [posed.check(answer) for answer in answers]
    return [feedback for feedback in found if not feedback.right]


MALFORMED = {
    "": "not tried",
    "   ": "not tried",
    "?": "not tried",
    "...": "not tried",
    "a bit more": "not a length",
    "about 30 in": "not a length",
    "12 13 in": "not a length",
    "5/0 in": "not a length",
    "-3 in": "not a length",
    "0 mm": "not a length",
    "4000 in": "not a length",
    "3 im": "not a length",
    "12 1/2": "no unit",
    "600": "no unit",
    "3 kg": "wrong unit",
    "12 lbf": "wrong unit",
    "3 1/2 hours": "wrong unit",
}


def test_answer_and_slips_agree_with_sums_by_hand_and_stand_apart(exercise, unit, posed_to, learners):
    allowed = Fraction(exercise.tolerance.of(unit), MM)
    for learner in learners:
        posed = posed_to(exercise, learner, unit)
        right, slips = by_hand(exercise.id, read_on_page(posed.givens))
        tick = Fraction(1, MM)
        assert abs(Fraction(exercise.right(posed.givens), MM) - right) <= tick
        assert {slip.id for slip in exercise.misconceptions} == set(slips)
        for slip in exercise.misconceptions:
            assert abs(Fraction(slip.rule(posed.givens), MM) - slips[slip.id]) <= 2 * tick, slip.id
        values = sorted([right, *slips.values()])
        assert all(above - below > 3 * allowed for below, above in pairwise(values)), (learner, values)


def test_numbers_differ_from_learner_to_learner(exercise, unit, posed_to, learners):
    questions = {posed_to(exercise, learner, unit).question for learner in learners}
    assert len(questions) > (10 if exercise.caliper else len(learners) // 2)  # a sheet has few thicknesses


def test_right_answers(exercise, unit, posed_to, few):
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        right, near = exercise.right(posed.givens), exercise.tolerance.of(unit)
        edges = [typed(right - near), typed(right + near)]
        for answer in (posed.answer, typed(right), *edges, to_quantity(right)):
            feedback = posed.check(answer)
            assert (feedback.kind, feedback.name) == ("right", "right"), (learner, answer, feedback)
            assert feedback.right
        assert not posed.check(typed(right + near + MM // 100)).right
        assert not posed.check(typed(right - near - MM // 100)).right


def test_each_slip_has_its_own_feedback(exercise, unit, posed_to, few):
    assert len(exercise.misconceptions) >= 3
    assert len({slip.id for slip in exercise.misconceptions}) == len(exercise.misconceptions)
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        said = set()
        for slip in exercise.misconceptions:
            feedback = posed.check(typed(slip.rule(posed.givens)))
            assert (feedback.kind, feedback.name) == ("slip", slip.id)
            assert len(feedback.parts) == 3
            assert feedback.gave.startswith("You gave ")
            said.add(str(feedback))
        assert len(said) == len(exercise.misconceptions)


def test_what_a_slip_does_in_the_shop_holds_the_actual_amount(exercise, unit, posed_to, few):
    step = Fraction(254, 640) if unit == "in" else Fraction(1, 10)
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        right, slips = by_hand(exercise.id, read_on_page(posed.givens))
        for slip in exercise.misconceptions:
            does = posed.check(typed(slip.rule(posed.givens))).does
            off = abs((slips["kept"] if "sound" in slip.id else slips[slip.id]) - right)
            amounts = [millimetres(text) for text in re.findall(r"\d[\d/. ]* (?:in|mm)\b", does)]
            if slips.get(slip.id) == 0:  # by how much it is off would be the answer
                assert not amounts
                continue
            assert any(abs(amount - off) <= step / 2 for amount in amounts), (slip.id, does, float(off))
            if "sound" in slip.id:
                assert ("too large" if slips["kept"] > right else "too small") in does


def test_a_number_out_of_the_air_is_told_without_its_exact_difference(exercise, unit, posed_to, few):
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        feedback = posed.check("2 m")
        assert (feedback.kind, feedback.name) == ("other", "other")
        least = re.search(r"more than (\d[\d/. ]* (?:in|mm))\b", feedback.does)[1]
        assert 0 < millimetres(least) < 2000 - Fraction(exercise.right(posed.givens), MM)


def test_a_number_near_the_answer_is_told_by_how_much_it_is_off(exercise, unit, posed_to):
    posed = posed_to(exercise, ONE, unit)
    off = 2 * exercise.tolerance.of(unit)
    feedback = posed.check(typed(exercise.right(posed.givens) + off))
    assert feedback.kind == "other"
    amount = re.search(r"\d[\d/. ]* (?:in|mm)\b", feedback.does)[0]
    assert abs(millimetres(amount) - Fraction(off, MM)) <= Fraction(1, 10)


def test_malformed_answers(exercise, unit, posed_to):
    posed = posed_to(exercise, ONE, unit)
    for answer, kind in MALFORMED.items():
        feedback = posed.check(answer)
        if answer == "0 mm" and exercise.zero:  # there it is a slip with a name
            assert feedback.kind == "slip"
            assert next(slip.rule({}) for slip in exercise.misconceptions if slip.id == feedback.name) == 0
        else:
            assert (feedback.kind, feedback.name) == (kind, kind), answer
        assert feedback.gave and feedback.look, answer
        assert not feedback.right, answer


WRONG_TYPE = [
    (None, "not tried"),
    (..., "not tried"),
    (3, "no unit"),
    (33.84, "no unit"),
    (float("nan"), "no unit"),
    (Fraction(1, 3), "no unit"),
    (10**5000, "no unit"),
    (True, "not a length"),
    (["12 in"], "not a length"),
    (b"12 in", "not a length"),
    (object(), "not a length"),
    (3 * ureg.kilogram, "wrong unit"),
    (-3 * ureg.inch, "not a length"),
    ("9" * 5000, "not a length"),
    ("<b>12</b> in", "not a length"),
    ("12; import os", "not a length"),
    ("\x00", "not a length"),
]


def test_answers_of_the_wrong_type(exercise, unit, posed_to):
    posed = posed_to(exercise, ONE, unit)
    for number, (answer, kind) in enumerate(WRONG_TYPE):  # some of them are too long to be shown
        feedback = posed.check(answer)
        assert feedback.kind == kind, number
        assert len(str(feedback)) < 600, number


def test_the_unit_beside_the_field_applies_only_where_none_is_typed(exercise, unit, posed_to):
    posed = posed_to(exercise, ONE, unit)
    number = typed(exercise.right(posed.givens)).removesuffix(" mm")
    assert posed.check(number, "mm").right
    assert posed.check(number).kind == "no unit"
    assert posed.check(typed(exercise.right(posed.givens)), "in").right


def test_the_right_figure_in_the_other_unit_is_told(unit, posed_to):
    posed = posed_to(THICKNESS, ONE, unit)
    other = {"in": "mm", "mm": "in"}[unit]
    figure = posed.answer.removesuffix(f" {unit}")
    feedback = posed.check(f"{figure} {other}")
    assert feedback.kind == "wrong unit"
    assert {"in": "inches", "mm": "millimetres"}[unit] in feedback.look


def test_the_answer_stands_in_no_feedback_and_no_hint(exercise, unit, posed_to, few):
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        plain = posed.answer.split(" (")[0]
        whole = re.compile(rf"(?<![\d./]){re.escape(plain.rsplit(' ', 1)[0])}(?![\d/.])")
        for feedback in judged(posed):
            for part in feedback.parts:
                mine = re.sub(r"You gave .*?(?:mm|in)\.", "", part)  # the learner's own words come back
                assert not whole.search(mine), (plain, feedback)
        hints = [hint for hint in posed.hints if whole.search(hint)]
        assert not hints, (plain, hints)
        if exercise.rung != "read a number off":
            assert not whole.search(posed.question)


def test_working_shows_the_numbers_and_ends_in_the_answer(exercise, unit, posed_to, few):
    for learner in few:
        posed = posed_to(exercise, learner, unit)
        working = "\n".join([*posed.working, *posed.own_working])
        assert posed.answer.split(" (")[0] in working
        for _, text in posed.facts:
            assert text in working, (text, working)


NO_SUM = {"02-thickness", "00-bottom-follows", "j01-through", "j03-shoulder"}
"""Their working says which reading is the answer."""


def test_sums_in_the_working_are_true(exercise, unit, posed_to, few):
    """Each `a = b` of the working that holds only numbers, worked out anew in exact fractions."""
    step = Fraction(254, 64 * 10) if unit == "in" else Fraction(1, 10)
    checked = 0
    for learner in few:
        for line in posed_to(exercise, learner, unit).working:
            said = re.split(r" = |; [A-Z][a-z]+", line)
            assert all(a != b for a, b in pairwise(said)), line
            sides = [worked_out(side) for side in said]
            numbers = [side for side in sides if side is not None]
            checked += len(numbers) > 1
            assert all(abs(a - b) <= step for a, b in pairwise(numbers)), line
    assert checked or exercise.id in NO_SUM


def worked_out(side: str) -> Fraction | None:
    """A sum such as `(28 in - 3 x 0.7 in) / 2` in millimetres; None where it holds words."""
    plain = re.sub(r" \([+-][\d.]+ (?:in|mm)\)", "", side).strip(" .;")
    plain = re.sub(r"\d[\d/. ]* (?:in|mm)\b", lambda found: f"<{millimetres(found[0])}>", plain)
    plain = plain.replace(" x ", " * ")
    if not re.fullmatch(r"[\d<>/ ()*+-]+", plain):
        return None
    exact = re.sub(r"<(\d+)(?:/(\d+))?>", lambda m: f"Fraction({m[1]}, {m[2] or 1})", plain)
    return Fraction(eval(exact, {"Fraction": Fraction}))


def test_questions_and_help_have_no_holes(exercise, unit, posed_to):
    posed = posed_to(exercise, ONE, unit)
    text = [posed.question, posed.title, *posed.hints, *posed.working, *(str(each) for each in judged(posed))]
    text.append(str(posed.check(posed.answer)))
    assert not [line for line in text if re.search(r"[{}]|None|Fraction|  |\btick", line)]
    assert all(posed.unit in value for what, value in posed.facts if what not in ("bays", "strips", "fronts"))


def test_the_working_comes_from_the_functions_that_gave_the_answer(exercise, unit, posed_to, learners):
    for learner in learners[::8]:
        posed = posed_to(exercise, learner, unit)
        right = exercise.right(posed.givens.traced())
        assert right == exercise.right(posed.givens)
        assert isinstance(right, Traced)
        named = {given.what or given.called or given.name for given in posed.givens.rows}
        assert {leaf.name for leaf in leaves(right)} <= named
        assert posed.own_working[0].startswith("the answer ")
        assert all(len(one.name) > 2 for one in leaves(right)), "a letter says nothing to a learner"
