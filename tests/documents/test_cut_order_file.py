"""cut_order.csv as spreadsheets read and write it, with a decimal point and with a decimal comma."""

import csv
import io
import json
import re
from decimal import Decimal

import pytest

from shoplib.buying.piece_sizes import PieceSizes
from shoplib.documents.cut_list_file import FORMULA_SIGNS
from shoplib.documents.cut_order_file import CAUTION, COLUMNS, ONE, TWO, cut_order_csv
from shoplib.documents.sheets_file import sheets_text
from shoplib.documents.sheets_words import sheets_words
from shoplib.draw.scene import Shape
from shoplib.draw.sheet_layout import sheet_layout
from shoplib.lists.writing import Writing
from shoplib.measure import read_length, to_step, write_brief
from tests.buying.laid import NAMES, laid

EACH = pytest.mark.parametrize("name", NAMES)
MINDED = {"again": "set again", "short": "short, ", "skim": "trimming", "left_to_size": "left to size"}
LENGTHS = ("piece_length", "piece_width", "fence")


def rows(name, text=None, delimiter=","):
    """The saw cuts of the table; the joint cuts after them have rows of another kind (test_joint_rows.py)."""
    table = csv.DictReader(io.StringIO(text or cut_order_csv(laid(name))), delimiter=delimiter)
    return [row for row in table if row["cut"] in ("trim", "rip", "crosscut")]


@EACH
def test_no_cell_is_a_formula_and_every_row_is_whole(name):
    head, *table = csv.reader(io.StringIO(cut_order_csv(laid(name))))
    assert tuple(head) == COLUMNS and len(table) > 10
    for row in table:
        assert len(row) == len(COLUMNS)
        assert not any(cell.lstrip().startswith(FORMULA_SIGNS) for cell in row)


@EACH
def test_the_table_says_what_sheets_json_says(name):
    order = json.loads(sheets_text(laid(name)))["order"]
    table = rows(name)
    assert len(table) == len(order)
    for row, step in zip(table, order, strict=True):
        assert (int(row["step"]), int(row["setting"]), row["cut"]) == (step["step"], step["setting"], step["kind"])
        assert (row["piece"], int(row["cuts"])) == (step["piece"]["mark"], len(step["cuts"]))
        assert [float(row[f"{what}_mm"]) for what in LENGTHS] == pytest.approx(
            [step["piece"]["w"], step["piece"]["h"], step["fence"]], abs=1e-6
        )
        assert row["set_by"] == step["set_by"]
        for what, words in MINDED.items():
            assert bool(step[what]) == (words in row["mind"])
        parts = [one["mark"] for one in (*step["off"], *([step["left"]] if step["left"] else [])) if one["part"]]
        assert row["finishes"] == "; ".join(parts)
        assert row["lift"] == (TWO if step["heavy"] else ONE)


@EACH
def test_what_is_kept_is_told_by_its_letter_where_it_is_left(name):
    """A later step asks for it by the same words; what has no letter on the drawing is scrap, not an offcut."""
    table = rows(name)
    left = " ; ".join(f"; {row['comes_off']}; {row['is_left']}" for row in table)
    begun = {}
    for row in table:
        begun.setdefault(row["piece"], int(row["step"]))
    for sheet in laid(name).sheets:
        for called in sheet.kept.values():
            offcut = f"{sheet.name}, offcut {called}"
            where = re.compile(rf"(^|; ){offcut}, [0-9]")
            [row] = [row for row in table if where.search(row["comes_off"]) or where.search(row["is_left"])]
            assert begun.get(offcut, int(row["step"]) + 1) > int(row["step"])
        if sheet.held and not sheet.held.left_of:
            assert "offcut" not in sheet.name
    assert not re.search(r"; (\d+ x )?offcut, ", left)
    scrap = sum(len(sheet.sawn.offcuts) - len(sheet.kept) for sheet in laid(name).sheets)
    told = sum(int(count or 1) for count in re.findall(r"; (?:(\d+) x )?scrap, ", left))
    assert told == scrap > 0


@EACH
def test_every_board_is_finished_once(name):
    """A part that is as large as its sheet needs no cut; no shipped project has one."""
    found = laid(name)
    finished = [part for row in rows(name) for part in row["finishes"].split("; ") if part]
    assert sorted(finished) == sorted(piece.name for sheet in found.sheets for piece in sheet.pieces)


@EACH
def test_written_lengths_are_those_of_the_columns_in_mm(name):
    """A shop sets no finer than 0.002 in or 0.05 mm, which is what the written length may be off."""
    style = laid(name).cabinet.style
    for row in rows(name):
        for what in LENGTHS:
            exact = read_length(f"{row[f'{what}_mm']} mm")
            # What is merely left over is rounded down: no more is told than is surely there.
            left = exact - read_length(row[what])
            assert row[what] in {write_brief(exact, style), write_brief(to_step(exact, style.step, "down"), style)}
            assert abs(left) <= 0.051 * 80_000 or 0 < left < style.step
            if what == "fence":
                assert row[what] == write_brief(exact, style)


@EACH
def test_what_comes_off_at_the_fence_has_the_size_that_the_fence_is_set_to(name):
    """And a part has that of the cut list, in the order and on the drawing of its sheet."""
    found, style = laid(name), laid(name).cabinet.style
    for row in rows(name):
        left_over = re.search("offcut [a-z]+, [0-9]|scrap, ", row["comes_off"])
        if row["cut"] in ("rip", "crosscut") and "," in row["comes_off"] and not left_over:
            length, width = row["comes_off"].rsplit(", ", 1)[1].split(" x ")
            assert row["fence"] == (width if row["cut"] == "rip" else length)
    for sheet in found.sheets:
        sizes = PieceSizes(sheet, Writing(style))
        drawn = sheet_layout(sheet, style)
        for piece in sheet.pieces:
            at = piece.placed.at
            listed = f"{write_brief(at.w, style)} x {write_brief(at.h, style)}"
            assert sizes.size(at) == listed
            on_sheet = f"{piece.letter}: {piece.name}, {listed.replace(f' {style.unit}', '').replace(' x ', ' × ')}"
            assert on_sheet in [item.name for item in drawn.items if isinstance(item, Shape)]
        for rest in sheet.sawn.offcuts:
            assert read_length(sizes.length(rest)) <= rest.w and read_length(sizes.width(rest)) <= rest.h
            assert "(" not in sizes.size(rest)


def with_commas(text):
    """The table as a spreadsheet with a decimal comma saves it: semicolons between cells, commas in numbers."""
    out = io.StringIO()
    writer = csv.writer(out, delimiter=";", lineterminator="\r\n")
    for row in csv.reader(io.StringIO(text)):
        writer.writerow([re.sub(r"(\d)\.(\d)", r"\1,\2", cell) for cell in row])
    return out.getvalue()


@EACH
def test_a_round_trip_in_either_decimal_convention_changes_no_number(name):
    text = cut_order_csv(laid(name))
    pointed, comma = rows(name), rows(name, with_commas(text), ";")
    assert with_commas(text) != text
    for one, other in zip(pointed, comma, strict=True):
        for what in LENGTHS:
            assert Decimal(one[f"{what}_mm"]) == Decimal(other[f"{what}_mm"].replace(",", "."))
            assert read_length(one[what]) == read_length(other[what])


def test_a_board_whose_name_is_a_formula_stays_text():
    """Names of a project may not begin so; a board's name in a file of other hands still might."""
    from dataclasses import replace

    found = laid("finger_jointed_drawers")
    job = found.jobs[0]
    sheet = job.sheets[0]
    pieces = tuple(replace(one, board=replace(one.board, name="=1+1")) for one in sheet.pieces)
    changed = replace(found, jobs=(replace(job, sheets=(replace(sheet, pieces=pieces), *job.sheets[1:])),))
    finishes = {row["finishes"] for row in rows("", cut_order_csv(changed))}
    assert "'=1+1" in finishes and not any(cell.startswith("=") for cell in finishes)


@EACH
def test_cautions_come_before_all_cuts(name):
    """What a workshop teacher says before a sheet is cut; common practice, no source."""
    table = list(csv.DictReader(io.StringIO(cut_order_csv(laid(name)))))
    cautions = [row["cut"] == CAUTION for row in table]
    assert cautions == sorted(cautions, reverse=True)
    text = " ".join(row["mind"] for row in table if row["cut"] == CAUTION).lower()
    for word in ("manual", "kickback", "riving knife", "mitre gauge", "sled", "support", "long offcuts", "by two"):
        assert word in text
    rough = any(sheet.kind == "solid" for sheet in laid(name).cabinet.project.sheets.values())
    for word in ("jointer", "planer", "rough or crooked edge"):
        assert (word in text) == rough
    said = " ".join(sheets_words(laid(name), ()).split())
    assert all(row["mind"] in said for row in table if row["cut"] == CAUTION)


@EACH
def test_no_crosscut_along_a_grain_stands_at_the_fence(name):
    """A crosscut has a stop or a line; a fence has an edge on it no shorter than it is away (common practice)."""
    for job in laid(name).jobs:
        for step in job.steps:
            if step.set_by == "fence":
                assert step.edge >= step.fence
                assert step.kind == "rip" or not job.job.grained or step.piece.at.w == step.off[0].at.w
            if step.kind == "rip" and job.job.grained:
                assert step.short == (step.edge < job.job.shortest)
                assert not (step.short and step.set_by == "fence")


@EACH
def test_a_gauge_is_a_part_that_is_finished_by_then(name):
    """What is still to be cut to its other size does not lie there; common practice, no source."""
    for job in laid(name).jobs:
        for step in job.steps:
            before = {part for other in job.steps if other.setting < step.setting for part in other.done}
            assert set(step.gauge) <= before


@EACH
def test_a_piece_has_one_size_in_its_row(name):
    """How it pivots, or how short it is, is told by the length and width beside it."""
    for row in rows(name):
        sides = {row["piece_length"], row["piece_width"]}
        found = re.search(r"(?:^|; )([^;]+) wide and only (.+?) along the fence", row["mind"])
        assert not found or set(found.groups()) == sides, row
        assert {*re.findall(r"short, (.+?) along the cut", row["mind"])} <= sides, row


@EACH
def test_a_setting_is_set_again_on_its_first_row_alone(name):
    """As the page says, what is set stays for all its rows."""
    seen = set()
    for row in rows(name):
        assert row["setting"] not in seen or "set again" not in row["mind"], row
        seen.add(row["setting"])


def test_each_row_that_waits_says_for_what_where_one_sheet_serves_several_stages():
    """By the boards that it finishes: box bottoms lie on the sheet of the back, fronts on that of the boxes."""
    stages = {board.name: board.stage for board in laid("small_parts_wall_case").cabinet.boards}
    first = {1: "", 2: "the case stands and is measured", 3: "the boxes hang and the openings are measured again"}
    table = rows("small_parts_wall_case")
    for row in table:
        made = {stages[part] for part in row["finishes"].split("; ") if part}
        assert row["not_before"] == first[int(row["stage"])]
        assert made <= {int(row["stage"])} or "and wait" in row["mind"]
    assert {row["sheet"] for row in table if row["stage"] == "2"} == {"thin sheet", "box sheet"}
    assert [row["stage"] for row in table] == sorted(row["stage"] for row in table)
