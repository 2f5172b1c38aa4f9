"""Exercises whose answer is a number of things: the same is asked of them as of those with a length."""

import re
from itertools import pairwise

import pytest

from shoplib.lessons.posed import Posed
from shoplib.lessons.say import Say
from shoplib.live.exercise_box import ExerciseBox
from tests.lessons.answers import by_hand
from tests.lessons.learners import ONE
from tests.lessons.test_exercises import read_on_page

MALFORMED = {
    "": "not tried", "?": "not tried", "...": "not tried", None: "not tried", ...: "not tried",
    "a few": "not a number", "7 1/2": "not a number", "7.5": "not a number", "-3": "not a number",
    "7 in": "not a number", "7 mm": "not a number", "9" * 5000: "not a number", "<b>7</b>": "not a number",
    "7; import os": "not a number", "\u0667": "not a number", True: "not a number", 7.5: "not a number",
    ("7",): "not a number", -3: "not a number", b"7": "not a number", object(): "not a number",
}

SAID = {
    "08-strips": ("count on {by} that the offcut does not hold", "holds {by} over"),
    "08-sheets": ("pay for {by} that no part needs", "come home {by} short"),
    "08-spare": ("trust in {by} that cannot be cut", "leave {by} out"),
}
"""What each says of a number that is too large, and of one that is too small."""


def slips(posed: Posed) -> dict[str, int]:
    return {slip.id: slip.rule(posed.givens) for slip in posed.exercise.misconceptions}


def test_answer_and_slips_agree_with_counts_by_hand_and_stand_apart(counting, unit, posed_to, learners):
    assert len(counting.misconceptions) >= 3 and tuple(counting.tolerance) == (0, 0)
    for learner in learners:
        posed = posed_to(counting, learner, unit)
        right, wrong = by_hand(counting.id, read_on_page(posed.givens))
        assert counting.right(posed.givens) == right > 0
        assert slips(posed) == wrong, learner
        values = sorted([right, *wrong.values()])
        assert all(above > below for below, above in pairwise(values)), (learner, values)


def test_numbers_differ_from_learner_to_learner(counting, unit, posed_to, learners):
    assert len({posed_to(counting, learner, unit).question for learner in learners}) > len(learners) // 2


def test_a_count_is_right_however_it_is_given(counting, unit, posed_to, few):
    for learner in few:
        posed = posed_to(counting, learner, unit)
        right = counting.right(posed.givens)
        for answer in (right, str(right), f" {right} ", posed.answer, f"{right} {counting.counted.many}", f"{right}.0",
                       f"{right},0"):
            said = posed.check(answer, posed.beside)
            assert said.right and said.kind == said.name == "right", (answer, said)
        assert posed.beside == posed.unit_word == counting.counted.many


def test_each_slip_has_its_own_feedback_with_the_actual_amount(counting, unit, posed_to, few):
    for learner in few:
        posed = posed_to(counting, learner, unit)
        right, said = counting.right(posed.givens), set()
        for name, count in slips(posed).items():
            feedback = posed.check(str(count))
            assert (feedback.kind, feedback.name) == ("slip", name) and len(feedback.parts) == 3
            assert re.findall(r"\d+", feedback.does) == [str(abs(count - right))], feedback.does
            said.add(str(feedback))
        assert len(said) == len(counting.misconceptions)


def test_what_a_wrong_count_does_goes_the_right_way(counting, unit, posed_to):
    givens = posed_to(counting, ONE, unit).givens
    for off, pattern in zip((3, -3), SAID[counting.id], strict=True):
        said = counting.effect(givens, off, Say(unit, counted=counting.counted))
        assert pattern.format(by=counting.counted.told(3)) in said


def test_a_number_out_of_the_air_is_told_without_its_difference(counting, unit, posed_to, few):
    for learner in few:
        posed = posed_to(counting, learner, unit)
        feedback = posed.check("999")
        assert feedback.kind == "other" and f"more than 1 {counting.counted.one}" in feedback.does
        taken = {counting.right(posed.givens), *slips(posed).values()}
        near = next((count for count in (counting.right(posed.givens) + 1, counting.right(posed.givens) - 1)
                     if count not in taken and count > 0), None)
        if near is not None:
            assert counting.counted.told(1) in posed.check(near).does


@pytest.mark.parametrize("answer", MALFORMED, ids=lambda answer: str(answer)[:12])
def test_what_is_no_count_is_told_so(counting, answer, posed_to):
    feedback = posed_to(counting, ONE, "in").check(answer)
    assert feedback.kind == feedback.name == MALFORMED[answer]
    assert feedback.look and not feedback.right and len(str(feedback)) < 400


def test_the_answer_stands_in_no_feedback_and_no_hint(counting, unit, posed_to, few):
    for learner in few:
        posed = posed_to(counting, learner, unit)
        whole = re.compile(rf"(?<![\d./]){re.escape(posed.answer)}\b")
        right = counting.right(posed.givens)  # off by as many as are right: that tells nothing
        given = [*(str(count) for count in slips(posed).values() if count != 2 * right), "999", "", "a few"]
        said = [re.sub(r"You gave .*?\.", "", str(posed.check(answer))) for answer in given]
        assert not [text for text in (*said, *posed.hints, posed.question) if whole.search(text)]


def test_the_working_holds_what_is_given_and_ends_in_the_answer(counting, unit, posed_to, few):
    for learner in few:
        posed = posed_to(counting, learner, unit)
        working = "\n".join(posed.working)
        assert working.endswith(posed.answer)
        assert all(text in working for _, text in posed.facts), posed.facts
        assert not re.search(r"[{}]|None|  ", "\n".join([posed.question, *posed.hints, working]))


def test_the_box_shows_what_is_counted_beside_the_field(counting, unit, posed_to):
    posed = posed_to(counting, ONE, unit)
    box = ExerciseBox(posed)
    assert box.face.unit == box.face.unit_word == counting.counted.many
    box.face._handle_custom_msg({"press": "check", "answer": str(counting.right(posed.givens))}, [])
    assert box.face.said["kind"] == "right"
