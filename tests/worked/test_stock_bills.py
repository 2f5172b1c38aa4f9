"""The published bills of stock, part by part, against what is cut from solid boards.

Sources stand in `published.csv`, row by row. The text of wall shelf G says that its bill gives 1/4 in of
width and 1/2 in of length over the finished sizes; the bills of the other pieces print the sizes of the parts, with
nothing over. The sums here are worked from the printed figures alone.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shoplib.buying.board_measure import board_feet, cubic_metres
from shoplib.buying.jobs import asks
from shoplib.buying.laid_out import laid_out
from shoplib.buying.wood_used import wood_used
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, read_length
from shoplib.model.cabinet import solve
from shoplib.model.cutting import Cutting
from tests.layout.judged import judged
from tests.worked.test_published_pieces import BOARDS, HERE, PARTS, PIECES

AS_PRINTED = Cutting(rough_length=0, rough_width=0, rough_thickness=0, lay_out="all together")
WITH_G = replace(AS_PRINTED, rough_length=INCH // 2, rough_width=INCH // 4)
SOLID = [row for row in PARTS if (row["example_id"], row["part"]) in BOARDS]


def exact(text):
    return sum(map(Fraction, text.split()), Fraction(0))


def piece(name, **sheet):
    """The piece solved, its sheets all boards of this size, with the allowances of its own bill."""
    project = read_project(HERE / PIECES[name])
    sheets = {one.name: replace(one, kind="solid", **sheet) for one in project.sheets.values()}
    return solve(replace(project, sheets=sheets, cutting=WITH_G if name.startswith("G") else AS_PRINTED))


def cut_sizes(cabinet):
    """For each board, the length and width that it is cut to and the thickness of its sheet, in ticks."""
    return {
        board.name: (part.length, part.width, ask.sheet.thickness)
        for ask in asks(cabinet)
        for part, boards in zip(ask.parts, ask.boards, strict=True)
        for board in boards
    }


@pytest.mark.parametrize("row", SOLID, ids=lambda row: f"{row['example_id']}: {row['part']}")
def test_every_printed_part_is_cut_as_it_is_billed(row):
    cut = cut_sizes(piece(row["example_id"]))
    names = BOARDS[row["example_id"], row["part"]]
    billed = tuple(read_length(f"{row[column]} in") for column in ("length_in", "width_in", "thickness_in"))
    assert len(names) == int(row["qty"])
    assert {cut[name] for name in names} == {billed}


def test_the_wall_shelf_is_so_many_board_feet():
    """By hand, 3/4 in: 2 x 7 1/4 x 16 1/2, 6 1/4 x 30 1/2, 4 3/4 x 30 1/2; 3/8 in: 3 1/2 x 30 1/2, 3 x 30 1/2."""
    volume = {"oak": Fraction(0), "back oak": Fraction(0)}
    for row in (row for row in SOLID if row["example_id"] == "G_wall_shelf"):
        of = "oak" if row["thickness_in"] == "3/4" else "back oak"
        volume[of] += int(row["qty"]) * exact(row["thickness_in"]) * exact(row["width_in"]) * exact(row["length_in"])
    assert volume == {"oak": Fraction("431.0625"), "back oak": Fraction("74.34375")}  # cubic inches
    cabinet = piece("G_wall_shelf", length=96 * INCH, width=8 * INCH)
    found = laid_out(cabinet, 2)
    for name, wood in wood_used(found).items():
        assert board_feet(wood.finished + wood.planed) == volume[name] / 144
        boards = sum(1 for sheet in found.sheets if sheet.sheet.name == name)
        thick = exact("3/4") if name == "oak" else exact("3/8")
        assert board_feet(wood.bought) == boards * thick * 8 * 96 / 144
        assert cubic_metres(wood.bought) == board_feet(wood.bought) * Fraction("2359.737216") / 1_000_000


def test_the_wall_shelf_comes_out_of_one_board_of_each_thickness():
    """No two parts of oak lie side by side on 8 in: twice 16 1/2, twice 30 1/2 and three kerfs are 94 3/8 in."""
    found = laid_out(piece("G_wall_shelf", length=96 * INCH, width=8 * INCH), 2)
    assert [sheet.sheet.name for sheet in found.sheets] == ["oak", "back oak"]
    for job in found.jobs:
        assert judged(job.job, job.layout) == []
    short = laid_out(piece("G_wall_shelf", length=94 * INCH, width=8 * INCH), 2)
    assert [sheet.sheet.name for sheet in short.sheets] == ["oak", "oak", "back oak"]
