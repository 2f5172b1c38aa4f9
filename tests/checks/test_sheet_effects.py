"""What a sheet changes is told as it comes out when the same project is solved with the sheet's name."""

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.checks.sheet_effects import tell_what_sheets_change
from shoplib.documents.project_file import read_project
from shoplib.measure import read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Size
from shoplib.model.shell import shell_of

CASE = read_project(Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml")


def with_sheet(name, *readings, size=CASE.size):
    sheet = replace(CASE.sheets[name], readings=tuple(map(read_length, readings)))
    return replace(CASE, sheets=CASE.sheets | {name: sheet}, size=size, space=None)


def bays(plan):
    walls = sorted((b.box for b in solve(plan).boards if b.role in ("side", "divider")), key=lambda box: box.low[0])
    return sum(b.low[0] - a.high[0] for a, b in pairwise(walls))


def inside_height(plan):
    shell = shell_of(plan)
    return shell.ceiling - shell.floor


def told(plan, name):
    (finding,) = [f for f in check(solve(plan)) if f.check == "sheets" and f.text.startswith(name)]
    return finding


@pytest.mark.parametrize("reading", ["0.69 in", "0.703 in", "0.74 in"])
def test_a_case_of_given_outside_gains_inside_what_its_boards_lack(reading):
    named, read = with_sheet("case sheet", "23/32 in"), with_sheet("case sheet", reading, reading)
    finding = told(read, "case sheet")
    by = read_length("23/32 in") - read_length(reading)
    assert bays(read) - bays(named) == 4 * by == 4 * finding.amount
    assert inside_height(read) - inside_height(named) == 2 * by
    word, level = ("wider", "higher") if by > 0 else ("narrower", "lower")
    assert f"{word}" in finding.text.split("the bays are together")[1].split(" and ")[0]
    assert level in finding.text.split("the inside is")[1]
    assert finding.level == "note"


def test_the_amounts_told():
    text = told(with_sheet("case sheet", "0.69 in", "0.69 in"), "case sheet").text
    # 0.71875 - 0.69 = 0.02875; four uprights, two levels.
    assert "0.69 in, 0.029 in less than its name says" in text
    assert "together 0.115 in wider" in text and "0.0575 in higher" in text


def test_a_case_of_given_inside_is_smaller_outside():
    size = Size("inside", read_length("58 in"), read_length("28 in"), read_length("22 in"))
    named, read = (with_sheet("case sheet", r, r, size=size) for r in ("23/32 in", "0.69 in"))
    by = read_length("23/32 in") - read_length("0.69 in")
    outsides = [solve(plan).outside.size for plan in (named, read)]
    assert (outsides[0][0] - outsides[1][0], outsides[0][2] - outsides[1][2]) == (2 * by, 2 * by)
    assert bays(read) - bays(named) == 2 * by
    text = told(read, "case sheet").text
    assert "the case is 0.0575 in narrower" in text and "the case is 0.0575 in lower" in text


def test_a_sheet_that_measures_its_name_or_was_not_read_changes_nothing():
    for readings in (("23/32 in", "23/32 in"), ()):
        found = tell_what_sheets_change(solve(with_sheet("case sheet", *readings)))
        assert not any(f.text.startswith("case sheet") for f in found)


def test_inset_fronts_leave_their_room_to_the_boxes_and_box_sides_theirs_to_the_inside():
    front, box = told(CASE, "front sheet"), told(CASE, "box sheet")
    # 0.75 less 0.721, the mean of 0.720 and 0.722; twice 0.5 less 0.472, the mean of 0.470 and 0.474.
    assert front.text.endswith("because of it the room behind the fronts is 0.029 in deeper.")
    assert box.text.endswith("because of it each box is 0.056 in wider inside.")
    assert solve(CASE).by_name["bay 1 drawer 1 box front"].box.low[1] == read_length("0.721 in")


def test_a_sheet_from_which_no_size_follows_is_not_told():
    assert [f for f in check(solve(CASE)) if f.check == "sheets" and f.text.startswith("thin sheet")] == []


def test_two_stretchers_are_one_level_of_the_case():
    """Both lie at one height: bottom and stretchers take twice the thickness out of the height."""
    plans = [with_sheet("case sheet", r, r) for r in ("23/32 in", "0.69 in")]
    named, read = (replace(plan, carcass=replace(plan.carcass, top="stretchers")) for plan in plans)
    by = read_length("23/32 in") - read_length("0.69 in")
    assert inside_height(read) - inside_height(named) == 2 * by
    assert "the inside is 0.0575 in higher" in told(read, "case sheet").text
