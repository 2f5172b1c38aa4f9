"""Pages of two versions are told apart: whatever shows on paper is in the fingerprint; paper and date are not."""

from dataclasses import replace

import pytest

from shoplib.buying.laid_out import laid_out
from shoplib.documents.examples import project_path
from shoplib.documents.paper import PAPERS
from shoplib.documents.project_file import project_from_text
from shoplib.model.cabinet import solve
from shoplib.printed.everything import planned, print_files, stamp_of
from tests.printed.sets import read, solved

TEXT = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
OPENINGS = '[measured.openings]\n"bay 1 drawer 1" = { front = "11 5/8 in", back = "11 5/8 in" }\n'


def mark(text: str) -> str:
    """The fingerprint of the project in the text, with the layouts of the example as it came."""
    found = solved("wheel_wall_drawers").found
    return stamp_of(planned(solve(project_from_text(text)), lambda _: found)).fingerprint


@pytest.fixture(scope="module")
def as_it_came() -> str:
    return mark(TEXT)


def test_the_same_project_has_the_same_fingerprint(as_it_came):
    """However it is typed."""
    assert mark(TEXT.replace("# as the yard names it", "").replace('"7 1/2 in"', '"7.5 in"')) == as_it_came


@pytest.mark.parametrize(
    ("was", "now"),
    [
        ('name = "Two drawers', 'name = "2 drawers'),
        ('step = "1/32 in"', 'step = "1/64 in"'),
        ('projection = "7/8 in"', 'projection = "1 in"'),
        ('readings = ["0.470 in", "0.474 in"]', 'readings = ["0.471 in", "0.473 in"]'),
        ('length = "60 in"\nwidth = "30 in"', 'length = "60 in"\nwidth = "31 in"'),
        ('price = "27.00"', 'price = "28.00"'),
        ('species = "white ash"', 'species = "northern red oak"'),
        ('length = "37 in"', 'length = "36 in"'),
        ('stands = "hung"', 'stands = "fastened"'),
        ('strips_from = "ash"', 'strips_from = "ash"\nkerf = "3/32 in"'),
        ('strips_from = "ash"', 'strips_from = "ash"\nalready_cut = "case"'),
        ("[in_use]", '[buying.prices]\n"wood glue" = "9.80"\n[in_use]'),
        ("[in_use]", "[buying]\nspare_screws = 25\n[in_use]"),
        ("[in_use]", f"{OPENINGS}[in_use]"),
    ],
)
def test_what_shows_on_paper_shows_in_the_fingerprint(as_it_came, was, now):
    assert was in TEXT
    assert mark(TEXT.replace(was, now, 1)) != as_it_came


def test_other_layouts_give_another_fingerprint():
    """A part that lies elsewhere is cut at another step, and its page must not get among the others."""
    of = solved("wheel_wall_drawers")
    without = project_from_text(TEXT.replace('    { length = "37 in", width = "6 in", count = 2 },\n', ""))
    other = laid_out(solve(without), 0)
    marks = {stamp_of(replace(of, found=found)).fingerprint for found in (of.found, other, None)}
    assert len(marks) == 3


def test_paper_and_date_have_no_part_in_it_and_the_same_is_printed_twice():
    of = solved("wheel_wall_drawers")
    files = []
    for paper, date in (("a4", "29 May"), ("letter", "30 May"), ("a4", "29 May")):
        plan = replace(of, found=laid_out(of.cabinet, 0))
        files.append(print_files(plan, stamp_of(plan, date), PAPERS[paper]))
    marks = {read(each["labels.pdf"]).stamps()[0].partition("plan ")[2][:9] for each in files}
    assert marks == {stamp_of(of).fingerprint}
    assert files[0] == files[2]
