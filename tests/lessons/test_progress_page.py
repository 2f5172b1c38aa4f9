"""The view of what was tried: it says how each exercise stands, and forgets only when told twice."""

import pytest

from shoplib.documents.atomic import WriteError
from shoplib.lessons.ask import ask
from shoplib.lessons.course import lessons
from shoplib.lessons.lesson_00 import FOLLOWS
from shoplib.lessons.lesson_02 import BACK, BOTTOM
from shoplib.lessons.progress import note_answer, read_progress
from shoplib.lessons.progress_page import show_progress
from shoplib.live import progress_view


def lines(view):
    return repr(view).splitlines()


@pytest.fixture
def tried(own_folder):
    box = ask(FOLLOWS)
    box.check("1 in")
    box.check(box.posed.answer)
    ask(BACK).check("1 in")
    note_answer(BOTTOM.id, BOTTOM.version + 1, True)  # right, but with numbers that are no longer asked


def test_every_lesson_and_every_exercise_has_its_line(own_folder):
    view = show_progress()
    assert lines(view) == [f"{each.name}: 0 of {len(each.asked)} right" for each in lessons()]
    html = view._list.value
    assert html.count("<details>") == len(lessons())
    assert html.count("not tried") == sum(len(each.asked) for each in lessons())


def test_what_was_tried_is_told_in_words_and_signs(tried):
    view = show_progress()
    assert "00 Start here: 1 of 1 right" in lines(view)
    assert "02 Carcass sizing: 0 of 6 right, 1 begun" in lines(view)
    html = view._list.value
    assert f"<li>{FOLLOWS.title}: ✓ right, tried 2 times</li>" in html
    assert f"<li>{BACK.title}: ○ not yet right, tried once</li>" in html
    assert f"<li>{BOTTOM.title}: not tried</li>" in html


def test_look_again_shows_what_other_pages_added(own_folder):
    view = show_progress()
    note_answer(BACK.id, BACK.version, True)
    assert "02 Carcass sizing: 0 of 6 right" in lines(view)
    view.again.click()
    assert "02 Carcass sizing: 1 of 6 right" in lines(view)
    assert view.says == "This is how it stands now."


def test_one_press_forgets_nothing_and_no_keeps_all(tried):
    view, before = show_progress(), read_progress()
    view.yes.click()  # hidden until it is asked: nothing to say yes to
    assert not view.asking and read_progress() == before
    view.clear.click()
    assert view.asking and view.says == "Forget the 2 exercises that were tried? It cannot be brought back."
    assert read_progress() == before
    view.no.click()
    assert not view.asking and view.says == "Nothing was forgotten." and read_progress() == before
    view.yes.click()
    assert read_progress() == before


def test_yes_after_the_question_forgets_all(tried):
    view = show_progress()
    view.clear.click()
    view.yes.click()
    assert read_progress() == {} and not view.asking and view.says.startswith("Forgotten.")
    assert "00 Start here: 0 of 1 right" in lines(view)
    view.clear.click()
    assert not view.asking and view.says == "There is nothing to forget: no exercise was tried yet."


def test_what_cannot_be_forgotten_is_said(tried):
    def forget():
        raise WriteError("The disk is full.")

    view = progress_view.ProgressView(lambda: [progress_view.Standing("02", [("Back", "right", True)])], forget)
    view.clear.click()
    view.yes.click()
    assert view.says == "Nothing was forgotten. The disk is full." and not view.asking


def test_titles_are_shown_as_text():
    view = progress_view.ProgressView(lambda: [progress_view.Standing("<b>", [("<i>", "", False)])], print)
    assert "<b>" not in view._list.value and "<i>" not in view._list.value
