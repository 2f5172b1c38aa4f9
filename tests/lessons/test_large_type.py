"""Large type for a projector: kept beside the unit, honoured by all that a page shows, ordinary without a good file."""

import re
from base64 import b64decode

import pytest

from shoplib.documents.atomic import WriteError
from shoplib.draw.letters import letters
from shoplib.lessons import fronts_shown, page_00, page_01, page_02, page_03, page_04, page_05, page_06, page_07
from shoplib.lessons.ask import ask, choose_unit
from shoplib.lessons.choice import read_choice, save_unit
from shoplib.lessons.glossary_page import glossary
from shoplib.lessons.large_type import choose_type, large_in_use, save_large
from shoplib.lessons.progress_page import show_progress
from shoplib.lessons.whole_case import WHOLE_CASE
from shoplib.lessons.worked import Worked
from tests.draw.test_pen import outside, overlaps

PANELS = {
    "first slider": page_00.first_slider,
    "tape": page_01.tape_reader,
    "calipers": page_01.calipers,
    "saw": page_01.sawing,
    "carcass": page_02.sizing_panel,
    "joints": page_03.joints_panel,
    "corners": page_03.four_corners,
    "drawer": page_04.clearance_panel,
    "fronts": page_05.fronts_panel,
    "hardware": page_06.layout_panel,
    "shelf": page_07.shelf_panel,
    "tipping": page_07.tipping_panel,
}

LESS = {"joints": 1.25, "drawer": 1.2}
"""How much the letters grow where the words of a tall drawing, or the names beside its sizes, need the room; elsewhere
1.4 times."""


def longer_side(svg: str) -> float:
    return max(map(float, re.search(r'viewBox="\S+ \S+ (\S+) (\S+)"', svg).groups()))


def test_the_type_is_ordinary_until_it_is_chosen(own_folder):
    assert not large_in_use()
    assert not own_folder.exists()


def test_what_is_chosen_is_kept_and_the_unit_with_it(own_folder, unit):
    learner = save_unit(unit)
    choose_type().buttons.value = True  # what a click does
    assert large_in_use()
    assert read_choice() == learner
    choose_type().buttons.value = False
    assert not large_in_use()
    assert read_choice() == learner
    assert sorted(path.name for path in own_folder.iterdir()) == ["choice.json", "type.json"]


@pytest.mark.parametrize("content", [
    b"", b'{"large": t', b"large", b"\xff\xfe{}", b"[]", b"null", b"{}", b'{"large": "yes"}', b'{"large": 1}',
    b"[" * 100_000,
])
def test_a_broken_file_means_ordinary_type_and_is_mended_by_choosing(own_folder, content):
    own_folder.mkdir()
    (own_folder / "type.json").write_bytes(content)
    assert not large_in_use()
    assert choose_type().says == "Type: ordinary, for all pages."
    save_large(True)
    assert large_in_use()


def test_a_choice_that_cannot_be_kept_is_told_in_a_sentence(own_folder, monkeypatch):
    def refuse(*_args):
        raise WriteError("The folder is read-only; choose another.")

    monkeypatch.setattr("shoplib.lessons.large_type.write_files", refuse)
    assert choose_type().choose(True) == "The choice could not be kept. The folder is read-only; choose another."


@pytest.mark.parametrize("name", PANELS)
def test_the_letters_of_each_panel_grow_and_none_lies_on_another(own_folder, unit, name):
    save_unit(unit)
    ordinary = PANELS[name]()
    assert "shop-large" not in ordinary.widget._dom_classes
    save_large(True)
    large = PANELS[name]()
    assert "shop-large" in large.widget._dom_classes
    for before, after in zip(ordinary.outcome.drawings, large.outcome.drawings, strict=True):
        assert before.title == after.title and before.alt == after.alt
        assert overlaps(after.svg) == [] == outside(after.svg)
    grown = longer_side(ordinary.outcome.drawings[0].svg) / longer_side(large.outcome.drawings[0].svg)
    assert grown >= LESS.get(name, 1.4)
    assert letters() == 1.0


def test_a_move_of_a_control_keeps_the_large_letters(own_folder):
    save_large(True)
    panel = page_00.first_slider()
    before = panel.outcome.drawings[0].svg
    panel.enter("width", "30 in")
    panel.enter("width", "34 1/2 in")
    assert panel.outcome.drawings[0].svg == before


def test_boxes_sums_figures_and_words_follow(own_folder):
    sums = Worked("Bottom", [("between the sides", "30 in - 2 x 3/4 in", "28 1/2 in wide")])
    plain = [sums._repr_html_(), page_02.wrong_bottom("nominal")._repr_html_(), glossary("d", "d")._repr_html_()]
    save_large(True)
    grown = [sums._repr_html_(), page_02.wrong_bottom("nominal")._repr_html_(), glossary("d", "d")._repr_html_()]
    for before, after in zip(plain, grown, strict=True):
        assert "1.5em" not in before and after.startswith('<div style="font-size: 1.5em">')
    assert "28\u00a01/2\u00a0in wide" in plain[0] and "28\u00a01/2\u00a0in wide" in grown[0]
    for shown in (ask(WHOLE_CASE).face, page_01.drill().face, show_progress().widget, choose_unit().widget,
                  choose_type().widget):
        assert "shop-large" in shown._dom_classes


def test_the_chart_of_the_year_has_large_letters_too(own_folder):
    """Its letters are set in points, so a page of fewer points that is shown as large has larger ones."""
    def shown(svg):
        wide, page = re.search(r'<svg [^>]*?width="([\d.]+)pt"', svg)[1], re.search(r'viewBox="0 0 ([\d.]+)', svg)[1]
        return float(wide) / float(page)

    ordinary = fronts_shown.year()
    save_large(True)
    large = fronts_shown.year()
    assert shown(ordinary.svg) == pytest.approx(1.0, rel=1e-3) and shown(large.svg) == pytest.approx(1.5, rel=1e-3)
    assert large.alt == ordinary.alt


def test_the_picture_of_a_set_and_of_the_drill_have_large_letters(own_folder):
    def picture(box):
        return b64decode(box.face.picture["source"].partition(",")[2]).decode()

    ordinary = page_01.drill()
    save_large(True)
    large = page_01.drill()
    assert longer_side(picture(ordinary)) / longer_side(picture(large)) >= 1.4
    assert overlaps(picture(large)) == []
