"""The course and its words: one meaning a word, sketches that say what they show, pages that lead to the glossary."""

import re
from base64 import b64decode
from itertools import pairwise
from pathlib import Path

import nbformat
import pytest

from shoplib.documents import glossary
from shoplib.draw.pen import draw
from shoplib.lessons.course import PAGES, PLAN_WORDS, entries, lessons
from shoplib.lessons.glossary_page import SKETCH
from shoplib.lessons.glossary_page import glossary as shown
from shoplib.lessons.word import sentence

NOTEBOOKS = Path(__file__).parents[2] / "notebooks"
NUMBERED = sorted(path for path in NOTEBOOKS.glob("*.ipynb") if path.stem[:2].isdigit())
WORDS = [(lesson, word) for lesson in lessons() for word in lesson.words]


def text_of(page):
    cells = nbformat.read(page, as_version=4).cells
    return "\n".join(cell.source for cell in cells if cell.cell_type == "markdown")


@pytest.mark.parametrize("page", NUMBERED, ids=lambda page: page.stem)
def test_each_numbered_page_is_in_the_course_and_leads_to_the_glossary(page):
    (lesson,) = [each for each in lessons() if each.number == page.stem[:2]]
    text = text_of(page)
    assert lesson.page == page.name and text.splitlines()[0].lower().endswith(lesson.title.lower())
    assert "(glossary.ipynb)" in text
    assert lesson.words and all(re.search(re.escape(word.name), text, re.IGNORECASE) for word in lesson.words)


def test_the_start_page_leads_to_every_lesson_and_to_the_glossary():
    text = text_of(NOTEBOOKS / "00_start_here.ipynb")
    there = [page.name for page in NUMBERED if page.stem[:2] != "00"]
    assert re.findall(r"^- \[\*\*.+?\]\((\d\d_.+?)\)", text, re.MULTILINE) == there
    assert "(glossary.ipynb)" in text


def test_lessons_are_in_order_and_their_exercises_are_their_own():
    numbers = [lesson.number for lesson in lessons()]
    assert numbers == sorted(numbers) and set(numbers) <= set(PAGES)
    names = [asked.id for lesson in lessons() for asked in lesson.asked]
    assert len(set(names)) == len(names)
    assert all(asked.id.startswith(f"{lesson.number}-") for lesson in lessons() for asked in lesson.asked)


def test_one_meaning_a_word_in_the_whole_workbook():
    meanings = {}
    for lesson, word in WORDS:
        assert meanings.setdefault(word.name.casefold(), word.meaning) == word.meaning, (lesson.name, word.name)
    for name, meaning in {**glossary.WORDS, **glossary.BENCH_WORDS}.items():
        taught = meanings.get(name.casefold())
        assert taught is None or taught.startswith(sentence(meaning)), name


def test_a_lesson_has_at_most_seven_new_words():
    for lesson in lessons():
        new = [each.word.name for each in entries() if each.lesson and each.lesson.number == lesson.number]
        assert len(new) <= 7, (lesson.name, new)


@pytest.mark.parametrize(("lesson", "word"), WORDS, ids=lambda each: each.name)
def test_a_word_has_two_sentences_at_most_and_a_sketch_that_says_what_it_shows(lesson, word, unit):
    assert word.meaning.endswith(".") and len(re.findall(r"\.(?: |$)", word.meaning)) <= 2
    if word.sketch is None:
        return
    scene = word.sketch(unit)
    assert scene.title and len(scene.alt) >= 20
    assert {"in": "inches", "mm": "millimetres"}[unit] in scene.note or "without sizes" in scene.note, scene.note
    svg = draw(scene, SKETCH)
    assert "<title>" in svg and "<desc>" in svg


def test_the_glossary_holds_every_word_once_in_the_order_of_the_alphabet():
    names = [each.word.name.casefold() for each in entries()]
    assert names == sorted(set(names))
    papers = {name.casefold() for name in (*glossary.WORDS, *glossary.TOOL_WORDS, *glossary.BENCH_WORDS)}
    assert set(names) == {word.name.casefold() for _, word in WORDS} | papers
    cells = nbformat.read(NOTEBOOKS / "glossary.ipynb", as_version=4).cells
    ranges = [found for cell in cells for found in re.findall(r'glossary\("(\w)", "(\w)"\)', cell.source)]
    on_page = [name for first, last in ranges for name in names if first <= name[0] <= last]
    assert on_page == names


def test_a_word_leads_to_the_lesson_where_it_first_stands(own_folder):
    html = shown("d", "d")._repr_html_()
    assert 'first in <a href="00_start_here.ipynb">00 Start here</a>' in html
    assert re.search(r'<img alt="A board lying flat[^"]+" src="data:image/svg', html)
    assert "dado: A slot across a board" in repr(shown("d", "d"))
    assert "the board is cut smaller by it. (08 Cut list and sheets)" in repr(shown("b", "b"))
    assert "(01 Measuring, and in the lists and drawings of a plan)" in repr(shown("p", "p"))
    upright = 'first in <a href="02_carcass_sizing.ipynb">02 Carcass sizing</a>, and in the lists and drawings'
    assert upright in shown("u", "u")._repr_html_()


def test_the_words_that_keep_fingers_on_are_explained():
    """Those a newcomer asked after in the cautions; and each word of that list stands in what is said of tools."""
    asked = {"spreader", "insert", "gullet", "mitre gauge", "featherboard", "push block", "collet", "shank",
             "bench hook", "racking", "tear-out", "offcut", "riving knife", "fence", "arbor", "chipper", "kickback",
             "sled", "stop block", "dado set"}
    assert asked <= {each.word.name for each in entries()}
    data = Path(__file__).parents[2] / "data"
    files = (data / "cautions.toml", *(data / "setups").glob("*.toml"), *(data / "joints").glob("*.toml"))
    said = "\n".join(path.read_text() for path in files).casefold() + "tear_out"
    said += text_of(NOTEBOOKS / "08_cut_list_and_sheets.ipynb").casefold()  # its cautions are its own
    for name in glossary.TOOL_WORDS:
        assert name in said.replace("tear_out", "tear-out"), name
    assert "fence: The straight guide" in repr(shown("f", "f")) and "(in cautions and set-ups)" in repr(shown("f", "f"))
    [buried] = [line for line in said.splitlines() if "bury the cutter in a wooden face" in line]
    assert "lower it" not in buried and "lower the cutter" in buried


def test_a_word_of_the_papers_stands_first_on_the_page_that_the_glossary_names():
    texts = {page.stem[:2]: text_of(page).casefold() for page in NUMBERED}
    untaught = {each.word.name: each.used for each in entries() if each.lesson is None}
    untaught = {name: used for name, used in untaught.items() if name in glossary.WORDS}
    assert {name for name, used in untaught.items() if used} == set(PLAN_WORDS)
    for name, used in untaught.items():
        stands = [number for number, text in texts.items() if re.search(rf"\b{re.escape(name.casefold())}", text)]
        assert stands[:1] == ([used.number] if used else []), name


def test_a_word_has_one_meaning_and_the_block_to_push_against_is_no_stop():
    """A Stop is a finding; what ends a dado makes it a stopped dado, what boards are pushed against is a stop block."""
    for page in NUMBERED:
        for found in re.findall(r".{25}\bstop\b.{12}", text_of(page)):
            assert "stop block" in found, (page.name, found)


def test_what_is_asked_before_a_panel_is_answered_on_the_page():
    for page in NUMBERED[1:]:
        asked = [part for part in re.split(r"^#+ .*$", text_of(page), flags=re.MULTILINE) if "Try this:" in part]
        assert asked and all("<details><summary>Answers</summary>" in part for part in asked), page.name


def test_a_page_says_what_fits_into_one_sitting():
    """The last page takes a beginner 60 to 70 minutes, as one asked for, and says where its first sitting ends."""
    for page in NUMBERED[1:]:
        minutes = "60 to 70" if page == NUMBERED[-1] else "45"
        assert f"Time: {minutes} minutes hold " in text_of(page) and "second sitting" in text_of(page), page.name
    before, after = text_of(NUMBERED[-1]).split("**Here the first sitting ends.**")
    assert "## Kerf, trim and grain" in before and "## The sheet, live" in after


@pytest.mark.parametrize("page", NUMBERED[1:-1], ids=lambda page: page.stem)
def test_a_page_names_the_next_one(page):
    following = NUMBERED[NUMBERED.index(page) + 1].name
    assert f"]({following})" in text_of(page).split("## Summary card")[-1]


def test_the_last_page_says_where_to_go_from_there():
    assert "*A whole cabinet* in the README" in text_of(NUMBERED[-1]).split("## Summary card")[-1]
    assert "\n## A whole cabinet\n" in (NOTEBOOKS.parent / "README.md").read_text(encoding="utf-8")


def test_exercises_and_pictures_of_the_course_have_titles_of_their_own():
    titles = [asked.title for lesson in lessons() for asked in lesson.asked]
    again = {title for title in titles if titles.count(title) > 1}
    assert again <= {"Assemble what you cut"}, again
    for page in NUMBERED:
        cells = nbformat.read(page, as_version=4).cells
        shown_there = [output.get("data", {}) for cell in cells for output in cell.get("outputs", ())]
        html = [each for data in shown_there if "shop-still" not in (each := str(data.get("text/html", "")))]
        drawn = [b64decode(svg).decode() for each in html for svg in re.findall(r'svg\+xml;base64,([^"]+)"', each)]
        named = [found[1] for svg in drawn if (found := re.search(r"<title>(.*?)</title>", svg))]  # a chart has none
        assert len(set(named)) == len(named), (page.name, named)


def test_a_page_of_a_joint_ends_with_the_way_to_the_next():
    joints = [PAGES[number] for number in PAGES if number.startswith("j")]
    for (_, page), (title, following) in pairwise(joints):
        last = nbformat.read(NOTEBOOKS / page, as_version=4).cells[-1].source
        assert f"Next: [{title}]({following.removeprefix('joints/')})" in last, page


def test_the_pages_of_joints_are_called_by_no_number_that_they_do_not_show():
    names = {lesson.number: lesson.name for lesson in lessons()}
    assert names["03"] == "03 Joinery allowances" and names["j03"] == "The rabbet"
    assert not any(name.startswith("j0") or name.startswith("j1") for name in names.values())


def test_a_sheet_is_asked_for_in_either_unit_where_its_thickness_is_written():
    for page in sorted(NOTEBOOKS.glob("joints/*.ipynb")):
        for cell in nbformat.read(page, as_version=4).cells:
            if "shoplib practice" in cell.source and re.search(r'"[\d.]+ in"', cell.source):
                assert re.search(r'"[\d.]+ mm"', cell.source), page.name
