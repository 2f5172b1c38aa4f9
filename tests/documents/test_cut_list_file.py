"""cut_list.csv as a spreadsheet reads it (Python's csv reader, RFC 4180), and the list to read."""

import csv
import io
import re
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from shoplib.documents.cut_list_file import FORMULA_SIGNS, cut_list_csv, cut_list_text, sum_text
from shoplib.documents.hand_list import parse_hand_list
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, MM, read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Base
from shoplib.model.solved import ClosingSum
from tests.lists.projects import chest, stand

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
DESIGN_COLUMNS = [
    "stage", "count", "names", "sheet", "length", "width", "thickness", "length_mm", "width_mm", "thickness_mm",
    "edging", "cuts",
]  # fmt: skip


def table(cabinet):
    return list(csv.DictReader(io.StringIO(cut_list_csv(cabinet))))


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_the_table_says_each_board_with_its_exact_size(path):
    cabinet = solve(read_project(path))
    rows = table(cabinet)
    assert list(rows[0])[:12] == DESIGN_COLUMNS
    seen = []
    for row in rows:
        names = row["names"].split("; ")
        assert len(names) == int(row["count"])
        seen += names
        for name in names:
            board = cabinet.by_name[name]
            for size, ticks in zip(("length", "width", "thickness"), board.cut_size, strict=True):
                assert read_length(row[size]) == ticks
                assert Decimal(row[f"{size}_mm"]) == Decimal(ticks) / MM
            for size, ticks in (("finished_length", board.length), ("finished_width", board.width)):
                assert read_length(row[size]) == ticks
                assert Decimal(row[f"{size}_mm"]) == Decimal(ticks) / MM
            assert (row["sheet"], int(row["stage"]), row["grain"]) == (board.sheet, board.stage, board.grain)
    assert sorted(seen) == sorted(cabinet.by_name)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_no_cell_is_a_formula_and_every_line_ends_in_a_line_feed(path):
    text = cut_list_csv(solve(read_project(path)))
    assert "\r" not in text
    assert not any(cell.startswith(FORMULA_SIGNS) for row in csv.reader(io.StringIO(text)) for cell in row)


@pytest.mark.parametrize("name", ["=1+1", "+x", "-x", "@x", " =1"])
def test_a_name_that_looks_like_a_formula_is_guarded_and_read_back(name):
    project = stand()
    sheet = replace(project.sheets["birch 18"], name=name)
    cabinet = solve(replace(project, sheets={name: sheet}, carcass=replace(project.carcass, sheet=name)))
    assert all(row["sheet"] == f"'{name}" for row in table(cabinet))
    assert all(row.sheet == name for row in parse_hand_list(cut_list_csv(cabinet)).rows)


def test_the_list_to_read_is_staged_and_closes():
    text = cut_list_text(solve(chest()))
    stages = [text.index(f"Stage {stage}: ") for stage in (1, 2, 3)]
    assert stages == sorted(stages)
    waits = text.index("Do not cut these before measuring")
    assert stages[1] < waits < stages[2]
    assert "- the opening of each of bay 1 drawers 1 to 4, front and back" in text[waits:]
    flat = " ".join(text.split())
    assert "left side + bay 1 + right side = outside width over the sides: " in flat
    assert max(len(line) for line in text.splitlines()) <= 100


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_thicknesses_and_cuts_that_take_a_sheet_are_decimals(path):
    cabinet = solve(read_project(path))
    for row in table(cabinet):
        assert not set("/(") & set(row["thickness"])
        for cut in row["cuts"].split("; "):
            wide = cut.partition(" wide")[0] if " wide, " in cut else ""
            assert not set("/(") & set(wide), cut
    text = cut_list_text(cabinet)
    rests = re.findall(r"\([+-]([\d.]+) (?:in|mm)\)", " ".join(text.partition("Closing sums")[0].split()))
    least = 0.002 if cabinet.style.unit == "in" else 0.05
    assert rests and min(map(float, rests)) >= least


def test_the_list_to_read_names_every_board_in_few_words():
    text = cut_list_text(solve(read_project(next(path for path in PROJECTS if "under_bench" in path.stem))))
    assert "  4 x left and right box side of drawer 1 in bays 1 and 3\n" in text
    assert "- cuts as in the left and right box side of drawer 1 in bays 1 and 3 above" in text
    assert "  8 x box bottom of drawers 1 to 4 in bays 1 and 3\n" in text
    flat = " ".join(text.split())
    assert "- the opening of each of drawers 1 to 4 in bays 1 and 3" in flat
    heights = text[text.index("Heights to set the slides by"):text.index("Closing sums")]
    assert heights.count("in bays 1 and 3: ") == 4


def test_finished_sizes_and_mirrored_boards_are_told():
    text = cut_list_text(solve(stand()))
    assert "finished 800 mm x 500 mm with edging: band 1 mm on the front edge" in text
    assert "finished 800" not in cut_list_text(solve(stand(edging=())))
    toe = chest(base=Base("toe space", 4 * INCH, 3 * INCH, "case sheet"))
    assert "the mirror image of right side: lay the two side by side" in cut_list_text(solve(toe))


def test_a_sum_that_does_not_close_says_so():
    cabinet = solve(stand())
    chain = ClosingSum((("side", 18 * MM), ("bay", 100 * MM)), ("outside width", 120 * MM))
    assert sum_text(chain, cabinet) == "side + bay = outside width: 18 mm + 100 mm = 120 mm, but they come 2 mm short"
