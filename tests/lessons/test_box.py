"""The box on the page: what the browser gets, what a press does, and the same from a cell."""

import json
from base64 import b64decode

import pytest

from shoplib.lessons.lesson_02 import BOTTOM
from shoplib.lessons.posed import pose
from shoplib.lessons.posed_set import pose_set
from shoplib.lessons.whole_case import WHOLE_CASE
from shoplib.live import exercise_box
from shoplib.live.exercise_box import ExerciseBox


@pytest.fixture
def box():
    return ExerciseBox(pose(BOTTOM, "Noor", "in"))


def press(box, what, answer=""):
    """What the browser sends when a button is pressed."""
    box.face._handle_custom_msg({"press": what, "answer": answer}, [])


def sent(box) -> str:
    state = box.face.get_state()
    return json.dumps({name: value for name, value in state.items() if not name.startswith("_")}, default=str)


def bare(box) -> str:
    return box.posed.answer.split(" (")[0].removesuffix(" in")


def test_check_in_the_field_uses_the_unit_printed_beside_it(box):
    press(box, "check", bare(box))
    assert box.face.said["kind"] == "right"
    assert box.face.said["heading"] == "Right"
    assert box.face.said["parts"][0].startswith(f"You gave {bare(box)} in.")


@pytest.mark.parametrize(("answer", "wrong"), [("-3", "is negative"), ("-0.5", "is negative"), ("0", "is zero")])
def test_what_is_wrong_is_not_the_unit_where_it_stands_beside_the_field(box, answer, wrong):
    press(box, "check", answer)
    assert box.face.said["parts"][0].endswith(f'"{answer}" {wrong}.')
    assert box.check(answer).kind == "no unit"


def test_an_answer_copied_from_the_page_is_read(box):
    press(box, "check", f" {box.posed.answer}\n".replace(" ", "\u00a0"))
    assert box.face.said["kind"] == "right"


def test_check_in_a_cell_wants_the_unit(box):
    assert box.check(bare(box)).kind == "no unit"
    assert box.check(box.posed.answer).right
    assert box.face.said["kind"] == "right"
    assert box.face.answer == box.posed.answer
    assert box.check().kind == "not tried"


def test_a_slip_in_the_field_is_named_in_three_parts(box):
    press(box, "check", "20 in")
    assert box.face.said["kind"] == "other"
    slip = box.posed.exercise.misconceptions[1].rule(box.posed.givens)
    press(box, "check", f"{slip / 80_000:.6f} mm")
    assert box.face.said["kind"] == "slip"
    assert len(box.face.said["parts"]) == 3


def test_the_same_answer_again_is_said_again(box):
    press(box, "check", "1")
    first = box.face.said
    press(box, "check", "1")
    assert box.face.said != first
    assert box.face.said["parts"] == first["parts"]


def test_hints_come_one_at_a_time_and_end(box):
    assert box.face.hints_left == "Hint (3 left)"
    for number in (1, 2, 3):
        press(box, "hint")
        assert box.face.hints == list(box.posed.hints[:number])
    assert box.face.hints_left == "No more hints"
    assert box.hint() == box.posed.hints[-1]
    assert len(box.face.hints) == 3 and not box.face.more_hints


@pytest.mark.parametrize("what", ["hint", "working"])
def test_a_press_that_changes_nothing_is_answered(box, what):
    for _ in range(4):
        heard = box.face.heard
        press(box, what)
        assert box.face.heard == heard + 1


def test_nothing_of_the_answer_reaches_the_page_before_it_is_asked_for(box):
    press(box, "check", "1 in")
    press(box, "check", "")
    for _ in box.posed.hints:
        press(box, "hint")
    assert bare(box) not in sent(box)
    assert box.face.working == box.face.own_working == []
    press(box, "working")
    assert bare(box) in sent(box)
    assert box.show_working() == box.posed.working
    assert box.face.own_working == list(box.posed.own_working)


def test_strange_messages_do_nothing(box):
    before = sent(box)
    for content in ({}, {"press": "other"}, {"press": None}):
        box.face._handle_custom_msg(content, [])
    box.face.heard = 0  # that they came is told
    assert sent(box) == before


def test_what_a_learner_types_is_never_markup(box):
    press(box, "check", "<img src=x onerror=alert(1)> in")
    assert box.face.said["kind"] == "not a length"
    script = exercise_box._Face._esm
    assert "innerHTML" not in str(script)


def test_repr_is_the_question_and_stable(box):
    assert repr(box) == f"Exercise 02-bottom: {box.posed.question}"
    assert repr(ExerciseBox(pose(BOTTOM, "Noor", "in"))) == repr(box)


def test_shown_it_leaves_a_living_box_and_a_still_question(box, monkeypatch):
    shown = []
    monkeypatch.setattr(exercise_box, "display", lambda bundle, raw: shown.append(bundle))
    box._ipython_display_()
    living, still = shown
    assert "application/vnd.jupyter.widget-view+json" in living
    assert living["text/plain"] == "Exercise 02-bottom"
    assert "What is given" in still["text/html"] and box.posed.givens.texts["W"] in still["text/html"]
    assert bare(box) not in still["text/html"]


@pytest.fixture
def set_box():
    return ExerciseBox(pose_set(WHOLE_CASE, "Noor", "in"))


def press_set(box, answers):
    box.face._handle_custom_msg({"press": "check", "answers": answers}, [])


def figures(box) -> dict[str, str]:
    return {name: text.split(" (")[0].removesuffix(" in") for name, text in box.posed.answer.items()}


def test_a_set_shows_a_field_for_each_size_and_is_checked_with_the_unit_beside_it(set_box):
    assert [label for _, label in set_box.face.fields] == [
        "Top and bottom, length", "Sides, length", "Back, width", "Back, height",
    ]
    assert set_box.face.picture == {} and set_box.posed.answer["bottom"].split(" (")[0] not in sent(set_box)
    press_set(set_box, figures(set_box))
    assert set_box.face.said["kind"] == "right" and set_box.face.said["items"] == []
    assert set_box.face.answers == figures(set_box)


def test_a_wrong_set_shows_where_it_gapes(set_box):
    press_set(set_box, figures(set_box) | {"back_width": "20 1/2 in, or so"})
    assert set_box.face.said["kind"] == "not a length" and set_box.face.picture == {}
    g = set_box.posed.givens
    inside = f"{(g['W'] - 2 * g['t']) / 80_000:.4f} mm"
    press_set(set_box, figures(set_box) | {"back_width": inside})
    assert set_box.face.said["kind"] == "slip"
    (item,) = set_box.face.said["items"]
    assert item["label"] == "Back, width" and len(item["parts"]) == 3
    assert "A gap of " in set_box.face.picture["alt"]
    kind, _, picture = set_box.face.picture["source"].partition(",")
    assert kind == "data:image/svg+xml;base64" and b64decode(picture).startswith(b"<svg")
    press_set(set_box, {})
    assert set_box.face.picture == {} and set_box.face.said["kind"] == "not tried"


def test_a_set_is_checked_from_a_cell_by_name_or_in_order(set_box):
    assert set_box.check(set_box.posed.answer).right
    assert set_box.face.answers == set_box.posed.answer
    assert set_box.check(list(set_box.posed.answer.values())).right
    assert set_box.check(figures(set_box)).kind == "no unit"
    assert set_box.check("12 in").kind == "not a length"
    assert set_box.check().kind == "not tried"
    assert set(set_box.face.answers.values()) == {""}


@pytest.mark.parametrize("answers", [None, 3, [], "20 in", {"bottom": None}, {"bottom": ["1 in"]}, {"lid": "1 in"}])
def test_strange_messages_of_a_set_are_told_in_words(set_box, answers):
    press_set(set_box, answers)
    assert set_box.face.said["kind"] in ("not tried", "not a length")


def test_a_set_leaves_what_it_asks_in_a_saved_page(set_box):
    still = set_box.still_html()
    assert "Back, width" in still and set_box.posed.givens.texts["H"] in still
    assert set_box.posed.answer["bottom"].split(" (")[0] not in still
