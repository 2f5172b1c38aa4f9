"""Each thing that can hurt someone brings its caution, and the README and the start page say the same.

What is cautioned against is common practice, no source.
"""

import json
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from shoplib.commands import plan
from shoplib.documents import cautions as told
from shoplib.documents.cautions import cautions
from shoplib.documents.drawings import drawing_files
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Base, Bay, Carcass, Fronts, InUse, PullOut, Rail
from tests.lists.projects import chest, stand

ROOT = Path(__file__).parents[2]
PROJECTS = sorted((ROOT / "data" / "projects").glob("*.toml"))
ALWAYS = {told.TOOLS, told.LIFTING, told.RULES}
FLOOR = ALWAYS | {told.ANCHOR}


def plain(**changes):
    """A case without a single dado, rabbet or groove, drawer or back."""
    return stand(carcass=Carcass("birch 18"), bays=(Bay(),), edging=(), **changes)


PULL = Bay("pull-out", pull_out=PullOut(room=2 * INCH, peg_length=INCH))


@pytest.mark.parametrize(
    ("project", "expected"),
    [
        (plain(), FLOOR),
        (plain(base=Base("feet", 2 * INCH)), FLOOR),
        (plain(base=Base("casters", 4 * INCH)), ALWAYS | {told.CASTERS}),
        (stand(), FLOOR | {told.SLOTS}),
        (chest(), FLOOR | {told.SLOTS, told.DRAWERS}),
        (chest(base=Base("casters", 4 * INCH)), ALWAYS | {told.SLOTS, told.DRAWERS, told.CASTERS}),
        (stand(carcass=Carcass("birch 18", rails=(Rail(3 * INCH),)), bays=(Bay(),), edging=()),
         FLOOR | {told.NOT_HUNG}),
        (stand(carcass=Carcass("birch 18", rails=(Rail(3 * INCH),)), bays=(Bay(),), edging=(),
               in_use=InUse(stands="hung")), FLOOR | {told.WALL}),
        (stand(carcass=Carcass("birch 18", rails=(Rail(3 * INCH),)), bays=(Bay(),), edging=(),
               base=Base("plinth", 3 * INCH, INCH)), FLOOR),
        (chest(carcass=Carcass("case sheet", back=Back()), bays=(PULL,), fronts=Fronts()), FLOOR | {told.PULL_OUT}),
    ],
)
def test_each_condition_brings_its_sentence_and_no_other(project, expected):
    found = cautions(solve(project))
    assert set(found) == expected
    assert len(found) == len(set(found))
    assert found[0] == told.TOOLS
    assert found[-1] == told.RULES


def test_the_readme_and_the_start_page_say_the_same():
    readme = " ".join((ROOT / "README.md").read_text(encoding="utf-8").split())
    page = json.loads((ROOT / "notebooks" / "00_start_here.ipynb").read_text(encoding="utf-8"))
    start = " ".join("".join("".join(cell["source"]) for cell in page["cells"]).split())
    for text in (told.TOOLS, told.RULES, told.ANCHOR.partition(". ")[0] + "."):
        assert text in readme
    for text in (told.LIFTING, "Not every saw may take a dado set"):
        assert text in start
    assert "Not every saw may take a dado set" in told.SLOTS


def test_what_is_named_is_named_in_words_a_maker_looks_for():
    """The points that the work room's own rules ask for."""
    for text, words in (
        (told.SLOTS, ("featherboards", "push blocks", "guard", "back at once", "manual")),
        (told.ANCHOR, ("wall", "studs or masonry")),
        (told.DRAWERS, ("one drawer at a time",)),
        (told.CASTERS, ("lock", "lowest")),
        (told.WALL, ("rail", "studs", "do not stand", "lean", "not worked out")),
        (told.RULES, ("Local codes", "licensed")),
    ):
        assert [word for word in words if word not in text] == []


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_they_stand_in_the_pdf_and_end_the_list(path, tmp_path, capsys):
    assert plan.run(str(path), str(tmp_path)) == plan.DRY_FITTED
    capsys.readouterr()
    cabinet = solve(read_project(path))
    pages = [" ".join(p.extract_text().split()) for p in PdfReader(tmp_path / "drawings.pdf").pages]
    assert "read the cautions" in pages[0]
    hardware = next(text for text in pages if "Hardware, and what to test while building Cautions" in text)
    listed = " ".join((tmp_path / "cut_list.txt").read_text(encoding="utf-8").split())
    for text in cautions(cabinet):
        assert text in hardware
        assert text in listed
    assert listed.endswith(told.RULES)
    to_measure = tmp_path / "to_measure.toml"
    assert "cautions" in to_measure.read_text(encoding="utf-8")


def test_the_pages_follow_the_cabinet():
    case = solve(chest())
    rolling = replace(case, hardware=(*case.hardware, replace(case.hardware[0], what="caster", screws=())))
    text = " ".join(
        " ".join(page.extract_text().split())
        for page in PdfReader(BytesIO(drawing_files(rolling)["drawings.pdf"])).pages
    )
    assert told.CASTERS in text
    assert told.ANCHOR not in text
