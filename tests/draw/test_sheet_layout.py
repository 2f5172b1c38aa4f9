"""Drawings of sheets: each part is there and named, nothing is written over or off the page, no sign is colour."""

import csv
import io
import json
import re
from collections import Counter
from dataclasses import replace
from xml.etree import ElementTree as ET

import pytest

from shoplib.buying.laid_out import laid_out
from shoplib.buying.numbering import numbered_steps
from shoplib.documents.cut_order_file import cut_order_csv
from shoplib.documents.fitted import fitted
from shoplib.documents.sheets_file import sheets_text
from shoplib.draw.letters import LARGE, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Chain, Label, Line, Scene, Shape, Tag
from shoplib.draw.sheet_layout import SAW_CUT, sheet_layout, sheet_scenes
from shoplib.measure import MM, write_brief
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from tests.buying.laid import NAMES, laid
from tests.draw.leaders_read import leaders, meets, run_through
from tests.draw.test_pen import outside, overlaps, text_boxes
from tests.random_projects import project

EACH = pytest.mark.parametrize("name", NAMES)


def scenes(name):
    return list(sheet_scenes(laid(name)))


def box(at):
    return at.x, at.y, at.x + at.w, at.y + at.h


@EACH
def test_parts_offcuts_and_trim_are_drawn_where_they_lie(name):
    for sheet, scene in scenes(name):
        shapes = [item for item in scene.items if isinstance(item, Shape)]
        drawn = [rect for shape in shapes for rect in shape.rects]
        assert drawn[0] == (0, 0, sheet.stock.length, sheet.stock.width) and shapes[0].fill == SAW_CUT
        for piece in sheet.pieces:
            [shape] = [shape for shape in shapes if shape.rects == (box(piece.placed.at),)]
            assert shape.name.startswith(f"{piece.letter}: {piece.name}, ") and not shape.hatch
        for rest in sheet.sawn.offcuts:
            [shape] = [shape for shape in shapes if shape.rects == (box(rest),)]
            assert shape.hatch == "/"
        covered = sum((c - a) * (d - b) for a, b, c, d in drawn[1:])
        # The ground that shows is what the blade takes.
        assert covered == sheet.stock.length * sheet.stock.width - sheet.sawn.kerf


@EACH
@pytest.mark.parametrize("size", [1.0, LARGE])
def test_no_words_lie_on_others_or_off_the_page(name, size):
    for sheet, scene in scenes(name):
        with drawn_with(size):
            svg = draw(scene)
        assert (sheet.name, overlaps(svg)) == (sheet.name, [])
        assert outside(svg) == []
        assert run_through(svg) == []


def test_on_sheets_of_other_projects_hardly_a_leader_runs_through_words(count):
    """As they are printed, laid out in no time. By our own count of 60 projects, a sheet in a hundred is so full that
    one does, all of them with strips narrower than a letter."""
    full, looked_at = [], 0
    for seed in range(count(8, 60)):
        try:
            found = laid_out(solve(project(seed)), 0)
        except ImpossibleProject:
            continue  # a board is larger than all sheets
        for sheet, scene in sheet_scenes(found):
            svg = fitted(scene, (170.0, 150.0), found.cabinet.style.unit).svg
            assert overlaps(svg) == [] and outside(svg) == [], (seed, sheet.name)
            looked_at += 1
            full += [(seed, sheet.name)] if run_through(svg) else []
    assert looked_at > 25 and len(full) <= looked_at // 50, full


@EACH
def test_every_part_carries_its_letter_and_the_legend_its_name_and_size(name):
    for sheet, scene in scenes(name):
        words = [text for text, _ in text_boxes(draw(scene))]
        for called in {piece.letter for piece in sheet.pieces}:
            count = sum(piece.letter == called for piece in sheet.pieces)
            on_parts = [word for word in words if re.fullmatch(rf"{called}(  .*)?", word)]
            assert len(on_parts) == count, (sheet.name, called)
            assert sum(line.startswith(f"{called}: {count} × ") for line in scene.legend) == 1


@EACH
def test_words_on_a_part_stay_on_it(name):
    """Each label's words lie in the rectangle of the part that they name, or beside the sheet."""
    for _, scene in scenes(name):
        svg = draw(scene)
        root = ET.fromstring(svg)
        grounds = [path for path in root.iter() if path.tag.endswith("path") and path.get("d", "").count("H") == 2]
        boxes = []
        for path in grounds:
            numbers = list(map(float, re.findall(r"-?\d+\.\d+", path.get("d"))))
            if len(numbers) == 5:  # M x y H x V y H x Z
                x0, y0, x1, y1, _ = numbers
                boxes.append((min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)))
        sheet, *parts = boxes
        numbers = {item.text for item in scene.items if isinstance(item, Tag)}
        for text, (x0, y0, x1, y1) in text_boxes(svg):
            if text in numbers:
                continue
            middle = ((x0 + x1) / 2, (y0 + y1) / 2)
            if not (sheet[0] < middle[0] < sheet[2] and sheet[1] < middle[1] < sheet[3]):
                continue
            holding = [b for b in parts if b[0] <= middle[0] <= b[2] and b[1] <= middle[1] <= b[3]]
            assert any(
                b[0] - 0.1 <= x0 and x1 <= b[2] + 0.1 and b[1] - 0.1 <= y0 and y1 <= b[3] + 0.1 for b in holding
            ), text


@EACH
def test_title_units_grain_sizes_and_words_for_those_who_do_not_see_it(name):
    for sheet, scene in scenes(name):
        unit = laid(name).cabinet.style.unit
        assert scene.title.startswith(f"{sheet.name}: ")
        assert ("inches" if unit == "in" else "millimetres") in scene.note
        one = len(sheet.pieces) == 1
        assert f" with {len(sheet.pieces)} {'part where it is' if one else 'parts where they are'} cut." in scene.alt
        assert all(line in scene.alt for line in scene.legend)
        arrows = [item for item in scene.items if isinstance(item, Line) and item.kind == "grain"]
        grain, narrow = sheet.sheet.grain == "length", sheet.stock.width * 6 <= sheet.stock.length
        assert len(arrows) == (grain and not narrow)
        for arrow in arrows:
            assert arrow.start[1] == arrow.end[1] > sheet.stock.width  # along the length, above the sheet
        assert ("no grain to follow" in scene.note) != grain
        assert ("The grain runs from left to right." in scene.note) == (grain and narrow)
        solid = sheet.sheet.kind == "solid"
        assert ("4/4 rough, planed to 3/4 in" in scene.title) == solid != scene.title.endswith(f" {unit} thick")
        chains = {item.side: item.at for item in scene.items if isinstance(item, Chain)}
        assert chains == {"below": (0, sheet.stock.length), "left": (0, sheet.stock.width)}


def test_offcuts_worth_keeping_have_letters_and_what_is_surely_there_of_them():
    """Common practice, no source: 12 by 4 in is kept. By hand: a 900 x 240 mm offcut trimmed by 8 mm leaves
    224 - 2 x (100 + 3) = 18 mm, too narrow, and beside the sides 884 - 2 x (350 + 3) = 178 mm, too short."""
    sheets = {sheet.name: scene for sheet, scene in scenes("finger_jointed_drawers")}
    small = sheets["box sheet on hand 1"]
    assert "Hatched without a letter: scrap, too small to keep." in small.legend
    assert not any("worth keeping" in line for line in small.legend)
    large = sheets["case sheet 1"]
    assert any(line.startswith("Left, worth keeping: a ") for line in large.legend)
    letters = [item.texts[-1] for item in large.items if isinstance(item, Label) and item.plate]
    assert letters == sorted(letters) and letters[0] == "a"


def test_what_lies_across_is_told_and_sized_as_it_lies():
    """The drawer bottoms of the rolling stand may turn: on the sheet their size reads along it and then across it, as
    in the order of cuts; the legend has that of the cut list, length along the board's own grain first.
    """
    style = laid("rolling_stand").cabinet.style
    bottoms = [sheet for sheet, _ in scenes("rolling_stand") if "bottom" in sheet.pieces[0].board.name]
    assert bottoms
    for sheet in bottoms:
        for across in (False, True):
            placed = replace(sheet.pieces[0].placed, turned=across)
            one = replace(sheet, pieces=(replace(sheet.pieces[0], placed=placed),))
            scene, at = sheet_layout(one, style), placed.at
            w, h = (write_brief(side, style).replace(" mm", "") for side in (at.w, at.h))
            [line] = [line for line in scene.legend if line.startswith(f"{one.pieces[0].letter}: ")]
            expected = f", {h} × {w}; across the sheet, as {w} × {h}." if across else f", {w} × {h}."
            assert line.endswith(expected)
            words = " ".join(text for text, _ in text_boxes(draw(scene)))
            assert f"{w} × {h}" in words.split(line)[0]


def test_a_letter_in_a_long_narrow_part_stands_level():
    """The rail of the case for small parts, 36 by 2 in: what is written on it runs along it."""
    for sheet, scene in scenes("small_parts_wall_case"):
        for piece in sheet.pieces:
            if piece.board.role == "rail":
                assert piece.placed.at.w > 9 * piece.placed.at.h
                turned = re.findall(r"rotate\(-90\)[^>]*>([^<]*)<", draw(scene))
                assert not any(text.startswith(piece.letter) for text in turned)


@EACH
def test_each_cut_carries_the_number_of_its_step_in_the_table(name):
    """Read off cut_order.csv: the pieces that a step is made in lie where its number stands."""
    order = json.loads(sheets_text(laid(name)))["order"]
    table = {int(row["step"]): row for row in csv.DictReader(io.StringIO(cut_order_csv(laid(name)))) if row["step"]}
    for sheet, scene in scenes(name):
        steps = [step for step in order if step["sheet"] == sheet.name]
        tags = [item for item in scene.items if isinstance(item, Tag)]
        told = Counter(text for text, _ in text_boxes(draw(scene)))
        assert len(tags) == sum(len(step["cuts"]) for step in steps) == len(sheet.sawn.cuts)
        for step in steps:
            here = [tag for tag in tags if tag.text == str(step["step"])]
            assert len(here) == int(table[step["step"]]["cuts"]) <= told[str(step["step"])]
            for tag, cut in zip(here, step["cuts"], strict=True):
                x, y, w, h = (round(cut["piece"][side] * MM) for side in "xywh")
                ends = [side[1] - side[0] for side in zip(tag.start, tag.end, strict=True)]
                assert sorted(ends) == [0, w if cut["off"]["w"] == cut["piece"]["w"] else h]
                assert x <= tag.start[0] <= tag.end[0] <= x + w and y <= tag.start[1] <= tag.end[1] <= y + h


@EACH
def test_every_piece_that_is_cut_further_is_named_in_the_legend_with_its_step(name):
    table = list(csv.DictReader(io.StringIO(cut_order_csv(laid(name)))))
    for sheet, scene in scenes(name):
        told = next((line for line in scene.legend if line.startswith("Pieces that are cut further")), "")
        named = {
            (piece, step) for pieces, step in re.findall(r"([0-9, and]+) at step ([0-9]+)", told)
            for piece in re.findall("[0-9]+", pieces)
        }
        assert named == {
            (piece, row["step"]) for row in table if row["comes_off"]
            for piece in re.findall(rf"(?:^|; ){sheet.name}, piece ([0-9]+), [0-9]", row["comes_off"])
        }


def test_words_over_the_whole_of_a_cut_say_less_to_make_room_for_its_number():
    """As on the box sheet of the case under the bench, where leaders struck through the names of parts."""
    whole = (0, 0, 100 * MM, 100 * MM)
    room = (0, 46 * MM, 100 * MM, 54 * MM)
    tag = Tag((0, 50 * MM), (100 * MM, 50 * MM), "50", whole)
    for texts, told in ((("m" * 38, "m" * 36, "A"), "A"), (("m" * 38, "m" * 30, "A"), "m" * 30)):
        svg = draw(Scene("Sheet", "mm", "A sheet.", whole, (Shape((whole,), "case"), Label(room, texts), tag)))
        assert overlaps(svg) == [] and leaders(svg) == []
        words = [text for text, _ in text_boxes(svg)]
        assert "50" in words and [text for text in texts if text in words] == [told]


def test_a_number_without_room_on_its_cut_stands_near_it_with_a_short_line_to_it():
    """Words close below a short cut and the number of another close above it; 1 mm is 4.4 units of the page, a number
    11.5 high."""
    whole = (0, 0, 100 * MM, 100 * MM)
    words = Label((30 * MM, 454 * MM // 10, 70 * MM, 494 * MM // 10), ("m" * 14,))
    above = Tag((50 * MM, 51 * MM), (50 * MM, 54 * MM), "7", whole)
    tag = Tag((48 * MM, 50 * MM), (52 * MM, 50 * MM), "50", whole)
    svg = draw(Scene("Sheet", "mm", "A sheet.", whole, (Shape((whole,), "case"), words, above, tag)))
    assert overlaps(svg) == [] and leaders(svg) == []
    [line] = re.findall(r'M([-0-9.]+) ([-0-9.]+)L([-0-9.]+) ([-0-9.]+)" stroke="#1d1f21" stroke-width="0.7"', svg)
    x, y, x1, y1 = map(float, line)
    boxes = dict(text_boxes(svg))
    left, top, right, bottom = boxes["50"]
    assert 48 * 4.4 <= x <= 52 * 4.4 and y == pytest.approx(50 * 4.4)
    assert left < x1 < right and top < y1 < bottom < y
    assert not any(meets((x, y, x1, y1), boxes[text]) for text in ("7", "m" * 14))


def test_numbers_stand_clear_of_words_or_beside_the_drawing():
    """Three cuts through a sheet: two have room, on one the words go from edge to edge and leave none."""
    whole = (0, 0, 100 * MM, 100 * MM)
    label = Label((0, 40 * MM, 100 * MM, 60 * MM), ("m" * 38,))
    tags = tuple(Tag((0, y * MM), (100 * MM, y * MM), str(y), whole) for y in (20, 50, 80))
    svg = draw(Scene("Sheet", "mm", "A sheet.", whole, (Shape((whole,), "case"), label, *tags)))
    assert overlaps(svg) == [] and outside(svg) == []
    boxes = dict(text_boxes(svg))
    edges = [float(number) for number in re.search(r'd="M([-0-9.]+) ([-0-9.]+)H([-0-9.]+)', svg).groups()]
    assert [edges[0] < boxes[text][0] < edges[2] for text in ("20", "50", "80")] == [True, False, True]


def test_a_number_touches_its_cut_where_words_lie_close_above_all_of_it():
    """It stands in the sheet, under the cut, and needs no leader from beside the drawing."""
    whole = (0, 0, 100 * MM, 100 * MM)
    label = Label((0, 49 * MM, 100 * MM, 55 * MM), ("m" * 38,))
    tag = Tag((0, 50 * MM), (100 * MM, 50 * MM), "50", whole)
    svg = draw(Scene("Sheet", "mm", "A sheet.", whole, (Shape((whole,), "case"), label, tag)))
    assert overlaps(svg) == [] and outside(svg) == []
    boxes = dict(text_boxes(svg))
    edges = [float(number) for number in re.search(r'd="M([-0-9.]+) ([-0-9.]+)H([-0-9.]+)', svg).groups()]
    assert edges[0] < boxes["50"][0] < edges[2] and boxes["50"][1] > boxes["m" * 38][3]


def test_a_later_stage_is_not_cut_before_the_case_is_measured():
    for sheet, scene in scenes("under_bench_case"):
        first = {1: "", 2: "the case stands and is measured", 3: "the boxes hang and the openings are measured again"}
        waits = first[min(sheet.stages)]
        assert scene.alarms == ((f"Do not cut this before {waits}: its parts have planned sizes.",) if waits else ())
    assert {1 in sheet.stages for sheet, _ in scenes("under_bench_case")} == {True, False}


def test_of_a_sheet_that_serves_several_stages_the_cuts_that_wait_are_told_by_their_numbers():
    """The bottoms of the boxes lie beside the back of the case, the fronts beside the boxes."""
    told = {sheet.name: (sheet, scene.alarms) for sheet, scene in scenes("small_parts_wall_case")}
    numbered = numbered_steps(laid("small_parts_wall_case"))
    for name, stage, first in (
        ("thin sheet 1", 2, "the case stands and is measured"),
        ("box sheet 1", 3, "the boxes hang and the openings are measured again"),
    ):
        sheet, alarms = told[name]
        mine = [number for number, step in numbered[name] if step.turn == stage]
        letters = {piece.letter for piece in sheet.pieces if piece.board.stage == stage}
        [alarm] = [alarm for alarm in alarms if alarm.startswith("Do not make")]
        assert alarm.startswith(f"Do not make steps {mine[0]} to {mine[-1]}, which cut ")
        assert alarm.endswith(f", before {first}: these have planned sizes.")
        assert set(re.findall(r"\b[A-Z]\b", alarm)) == letters
    assert told["case sheet 1"][1] == ()


@EACH
def test_no_part_is_called_by_half_its_name(name):
    """A side without its drawer could be that of any; its letter alone is looked up in the legend."""
    for sheet, scene in scenes(name):
        labels = [item for item in scene.items if isinstance(item, Label) and not item.plate]
        for piece, label in zip(sheet.pieces, labels, strict=True):
            for text in label.texts:
                words = " ".join(text.split())
                assert piece.name in words.replace(",", "") or piece.name in words or "side" not in words
