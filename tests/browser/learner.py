"""What a learner does on a page, for the tests of every page: open and run it, type, choose, unfold, answer."""

import shutil
from pathlib import Path

from shoplib.lessons.choice import BEFORE_ANY
from shoplib.lessons.posed import pose
from shoplib.lessons.posed_set import pose_set
from shoplib.measure import write_mm

NOTEBOOKS = Path(__file__).resolve().parents[2] / "notebooks"


def opened_and_run(lab, name, awake):
    shutil.copytree(NOTEBOOKS / "pictures", lab.work / "pictures", dirs_exist_ok=True)
    opened = lab.open(lab.copy(NOTEBOOKS / name), height=900)
    opened.run_all(awake=awake)
    return opened


def enter(opened, panel, name, text):
    box = panel.get_by_role("textbox", name=f"{name}, typed in")
    box.fill(text)
    box.press("Enter")
    opened.settle()


def choose(opened, panel, name, label):
    panel.get_by_label(name, exact=True).select_option(label)
    opened.settle()


def unfold(opened, panel):
    panel.get_by_role("button", name="Next").click()
    opened.settle()


def says(panel):
    return panel.locator(".shop-picture-says").first.text_content()


def answer(opened, title, text):
    """Type an answer by keyboard; gives what the box then says."""
    box = opened.page.locator(".shop-exercise", has_text=title)
    field = box.get_by_role("textbox")
    field.focus()
    field.fill("")
    opened.page.keyboard.type(text)
    opened.page.keyboard.press("Enter")
    opened.settle()
    return box.get_by_role("status").inner_text().replace("\xa0", " ")


def typed(exercise, number):
    """An answer as it is typed: a length, or a plain number of things."""
    return str(number) if exercise.counted else f"{write_mm(number)} mm"


def wrong_then_right(opened, exercise, slip):
    posed = pose(exercise, BEFORE_ANY.learner, BEFORE_ANY.unit)
    named = next(each for each in exercise.misconceptions if each.id == slip)
    said = answer(opened, exercise.title, typed(exercise, named.rule(posed.givens)))
    assert "Not yet." in said and named.says.format_map(posed.givens.texts) in said
    assert posed.answer not in said
    said = answer(opened, exercise.title, typed(exercise, exercise.right(posed.givens)))
    assert "Right." in said and exercise.fits.format_map(posed.givens.texts) in said


def whole_set_wrong_then_right(opened, exercise, slip):
    """Give the right size in every field but in that of the slip, then there too."""
    posed = pose_set(exercise, BEFORE_ANY.learner, BEFORE_ANY.unit)
    box = opened.page.locator(".shop-exercise", has_text=exercise.title)
    asked, named = next((one, each) for one in exercise.asked for each in one.slips if each.id == slip)
    sizes = {one.label: one.right(posed.case) for one in exercise.asked}
    for label, ticks in (sizes | {asked.label: named.rule(posed.givens)}).items():
        box.get_by_role("textbox", name=label).fill(f"{write_mm(ticks)} mm")
    box.get_by_role("button", name="Check").click()
    opened.settle()
    said = box.get_by_role("status").inner_text().replace("\xa0", " ")
    assert "Not yet." in said and named.says in said
    assert box.get_by_role("img").count()
    box.get_by_role("textbox", name=asked.label).fill(posed.answer[asked.name])
    box.get_by_role("button", name="Check").click()
    opened.settle()
    assert "Right." in box.get_by_role("status").inner_text()
