"""Fronts and gaps in print: gaps, sums and spacers by plan.json, and sums that close exactly."""

import re
from fractions import Fraction

import pytest

from shoplib.building.front_chains import chains_across, chains_upward, fronts_of
from shoplib.building.gaps import open_gaps
from shoplib.documents.paper import PAPERS
from shoplib.draw.elevation import front_elevation
from shoplib.draw.scene import Chain
from shoplib.lists.writing import Writing
from shoplib.model.cabinet import solve
from shoplib.printed.plan.front_pages import HEADING, front_pages
from shoplib.printed.typeset.blocks import told
from tests.building.cases import measured_unevenly
from tests.printed.lengths import HIDDEN, UNIT, boards, mm, near, plan, unit_of
from tests.printed.parts import PROJECTS, cabinet_of, in_print, printed
from tests.random_projects import project as random_project

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])


def under(project, paper):
    return printed(project, paper).under(HEADING)


def table(project, paper, column):
    [found] = [part.rows for part in under(project, paper) if part.tag == "Table" and column in part.rows[0]]
    return [dict(zip(found[0], row, strict=True)) for row in found[1:]]


@SETS
def test_the_table_has_every_gap_of_the_plan(project, paper):
    unit, ways = unit_of(project), {"side by side": "x", "one above the other": "z"}
    told = {}
    for row in table(project, paper, "which lie"):
        key = ways[row["which lie"]], round(mm(row["size"].removesuffix(f" {unit}"), unit), 3)
        told[key] = told.get(key, 0) + int(row["how many"])
    planned = {}
    for gap in plan(project)["gaps"]:
        key = gap["along"], round(Fraction(str(gap["size"])), 3)
        planned[key] = planned.get(key, 0) + 1
    assert told == planned and planned


@SETS
def test_gaps_are_told_between_what_they_lie(project, paper):
    """Bays, drawers and boards that a row names are those of its gaps, taken together."""
    text = " ".join(row["between"] for row in table(project, paper, "which lie"))
    for gap in plan(project)["gaps"]:
        for name in gap["between"]:
            if not name.endswith(" front"):
                assert name in text
            else:
                assert re.search(rf"bays? [\d, and to]*{name.split()[1]}\b|bays? \d+ to \d+", text)


@SETS
def test_the_sums_close_in_the_numbers_that_are_printed(project, paper):
    unit = unit_of(project)
    parts = under(project, paper)
    sums = [part.text for part in parts if ", upward: " in part.text or ", across: " in part.text]
    bays = {name.split()[1] for name in boards(project) if name.endswith(" front") and name.count(" ") <= 4
            and boards(project)[name]["role"] == "front"}
    upward = " ".join(text.split(", upward")[0] for text in sums if ", upward" in text)
    assert all(re.search(rf"\b{bay}\b", upward) for bay in bays)
    assert any(", across: " in text for text in sums)
    for text in sums:
        numbers = re.search(r": ([^:]+) = ([^=]+)$", text)
        terms = [mm(term.strip(), unit) for term in numbers[1].split(" + ")]
        hidden = HIDDEN[unit] * UNIT[unit] * (len(terms) + 1)
        assert abs(sum(terms) - mm(numbers[2].strip(), unit)) < hidden, text
        assert len(terms) == text.split(": ")[1].count(" + ") + 1


@SETS
def test_fronts_are_as_large_as_in_the_plan(project, paper):
    unit, fronts = unit_of(project), [b for b in boards(project).values() if b["role"] == "front"]
    rows = table(project, paper, "at the saw")
    assert sum(int(row["count"]) for row in rows) == len(fronts)
    for row in rows:
        alike = [
            front for front in fronts
            if all(near(*pair, unit) for pair in zip(row["at the saw"].split(" × "), front["cut_size"], strict=True))
            and all(near(*pair, unit) for pair in zip(row["finished"].split(" × "), front["size"], strict=True))
        ]
        assert len(alike) >= int(row["count"])


@SETS
def test_spacers_are_as_thick_as_the_gaps(project, paper):
    unit = unit_of(project)
    sizes = [mm(row["size"].removesuffix(f" {unit}"), unit) for row in table(project, paper, "what for")]
    assert sizes == sorted({round(Fraction(str(gap["size"])), 4) for gap in plan(project)["gaps"]})


def test_every_chain_closes_and_every_gap_is_open_in_random_projects():
    with_strips = without = 0
    for seed in range(120):
        cabinet = solve(random_project(seed))
        blocks = front_pages(cabinet, (), PAPERS["letter"])
        if not blocks:
            without += 1
            assert not any(board.role == "front" for board in cabinet.boards)
            continue
        for _, chain in (*chains_upward(cabinet), *chains_across(cabinet)):
            assert chain.rest == 0
        gaps = open_gaps(cabinet)
        with_strips += len(gaps) > len(cabinet.gaps)
        assert sum(gap.size for gap in gaps) <= sum(gap.size for gap in cabinet.gaps)
    assert without > 3


@pytest.mark.parametrize("project", PROJECTS)
def test_once_measured_the_drawing_tells_openings_and_gaps_as_the_sums_do(project):
    cabinet = measured_unevenly(project)
    drawn = [item for item in front_elevation(cabinet, cabinet.style).items
             if isinstance(item, Chain) and item.side == "below"]
    told = [size for item in drawn for size in item.sizes]
    write = Writing(cabinet.style, units=False)
    lowest = {fronts[0].group for fronts in fronts_of(cabinet).values()}
    for group in lowest:
        assert cabinet.project.measured.openings[group].front in told
    assert all(text.replace("\n", " ") in (write.length(size), write.measured(size))
               for item in drawn if item.sizes for text, size in zip(item.texts, item.sizes, strict=True))
    if cabinet.project.fronts.kind == "inset":
        [row] = [item.sizes for item in drawn if item.row == 0]
        gaps = [size for _, chain in chains_across(cabinet) for name, size in chain.terms if name.startswith("gap")]
        thick = {board.thickness for board in cabinet.boards}
        fronts = {board.box.size[0] for board in cabinet.boards if board.role == "front"}
        assert [size for size in row if size not in thick | fronts] == gaps


def test_drawing_and_frame_stand_first():
    for project in PROJECTS:
        parts = under(project, "letter")
        [drawn] = [n for n, part in enumerate(parts) if part.tag == "Figure"]
        assert "seen from the front" in parts[drawn].alt
        assert parts[0].text == HEADING and "do not cut before measuring" in parts[1].text
        assert drawn < min(n for n, part in enumerate(parts) if part.tag == "Table")
        assert {part.page for part in parts[:drawn + 1]} == {parts[0].page}  # no page end parts them


def test_strips_between_inset_fronts_part_the_gap():
    """A strip between two inset fronts leaves a gap below it and one above it."""
    for seed in range(400):
        cabinet = solve(random_project(seed))
        if len(open_gaps(cabinet)) > len(cabinet.gaps):
            break
    else:
        pytest.fail("no random project has a strip between inset fronts")
    around = cabinet.project.fronts.around
    filled = [gap for gap in open_gaps(cabinet) if gap.along == "z"
              and any(cabinet.by_name[name].role in ("strip", "fixed shelf") for name in gap.between)]
    assert filled and all(abs(gap.size - around) <= cabinet.project.step for gap in filled)
    text = " ".join(part.text for part in in_print([front_pages(cabinet, (), PAPERS["a4"])], "a4").under(HEADING))
    assert " strip 1 + gap + " in text or " shelf 1 + gap + " in text


@pytest.mark.parametrize("project", PROJECTS)
def test_spacers_are_called_for_only_where_there_is_a_gap(project):
    """Overlay fronts of one bay have no gap beside them, and the table has no spacer for one."""
    cabinet = cabinet_of(project)
    lines = told(front_pages(cabinet, (), PAPERS["a4"])).splitlines()
    [order] = [line for line in lines if line.startswith("Level and")]
    gaps = {gap.along for gap in open_gaps(cabinet) if gap.size > 0}
    assert ("two under each" in order, "at each side" in order) == ("z" in gaps, "x" in gaps)
    assert " sides" not in order
