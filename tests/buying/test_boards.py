"""Solid parts from rough boards: rough sizes, strips, staves, runs of fronts, and that no wood is lost from the sums.

The allowances, and how boards are planed, jointed and glued up, are common practice, no source, but for piece G's
(tests/worked). What is checked here is arithmetic on the sizes of a case.
"""

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from random import Random

import pytest

from shoplib.buying.board_words import boards_told
from shoplib.buying.jobs import Ask, asks, in_shop
from shoplib.buying.laid_out import laid_out
from shoplib.buying.lifts import needs_two, one_lifts, weight_of
from shoplib.buying.list import buying_list
from shoplib.buying.rough import boards_by_sheet
from shoplib.buying.seams import seam_area
from shoplib.buying.staves import from_boards, glued_up
from shoplib.buying.strip_runs import strip_runs
from shoplib.buying.wood_used import wood_used
from shoplib.documents.cut_order_file import COLUMNS, order_rows
from shoplib.documents.cut_order_words import minded
from shoplib.documents.examples import cabinet_from, example
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.sheets_file import sheets_dict
from shoplib.layout.order import Piece, Step
from shoplib.layout.pieces import Job, LayoutError, Part, Rect, Stock
from shoplib.layout.sawn import SawCut
from shoplib.layout.set_by import set_by
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.cutting import OnHand
from shoplib.model.placement import Placement
from shoplib.model.project import Edging, ImpossibleProject
from shoplib.model.sheet import Sheet
from shoplib.tables.setups import cautions
from tests.layout.judged import judged

HOME = Placement((0, 0, 0), ("+x", "+y", "+z"))
JOINTING = INCH // 8


@pytest.fixture(scope="module")
def project():
    return read_project(example("wheel_wall_drawers"))


@pytest.fixture(scope="module")
def laid(project):
    return laid_out(solve(project), 0)


def stand(**changed):
    """The rolling stand, with other values of its [cutting] and, as `more`, one more sheet."""
    project = read_project(example("rolling_stand"))
    more = changed.pop("more", None)
    sheets = project.sheets | ({more.name: more} if more else {})
    return replace(project, sheets=sheets, cutting=replace(project.cutting, **changed))


def boards_of(name, thick, width=120 * MM, length=2400 * MM):
    return Sheet(name, "solid", thick, length=length, width=width)


# Staves


def wide(*parts):
    """An ask for so many tops of each length and width in inches."""
    boards = tuple(
        tuple(Board(f"top {k}.{n}", "case", 1, "oak", a, b, 1, HOME) for n in range(count))
        for k, (a, b, count) in enumerate(parts)
    )
    asked = tuple(Part(f"top {k}", a * INCH, b * INCH, count) for k, (a, b, count) in enumerate(parts))
    return Ask(Sheet("oak", "solid", INCH), (1,), asked, boards, ("A",) * len(parts), 0)


def board(length, width, count=None):
    return Stock("board", length * INCH, width * INCH, count)


def made(ask, *stock):
    """How many pieces of each part, and how wide in inches."""
    parts = glued_up(ask, stock, JOINTING, INCH_STYLE).parts
    return [(part.count, Fraction(part.width, INCH)) for part in parts]


def test_a_part_that_a_board_is_wide_enough_for_stays_whole():
    assert made(wide((30, 6, 2)), board(96, 6)) == [(2, 6)]


def test_a_wider_part_is_as_few_equal_staves_as_the_boards_give():
    """11 in from boards of 6 in, 1/8 in to joint: 2 x 5 7/8 is enough, so 2 of 5 1/2 + 1/8 each."""
    assert made(wide((30, 11, 1)), board(96, 6)) == [(2, Fraction("5.625"))]
    assert made(wide((30, Fraction("11.75"), 1)), board(96, 6)) == [(2, 6)]
    assert made(wide((30, 12, 3)), board(96, 6)) == [(9, Fraction("4.125"))]


@pytest.mark.parametrize("seed", range(40))
def test_staves_make_up_the_width_and_one_fewer_would_not(seed):
    random = Random(seed)
    width, on = random.randint(100, 900) * MM + random.randint(0, 79_999), random.randint(60, 250) * MM
    one = replace(wide((30, 6, 1)), parts=(Part("top", 700 * MM, width),))
    [part] = glued_up(one, [Stock("board", 2400 * MM, on)], 3 * MM, MM_STYLE).parts
    if width <= on:
        assert (part.count, part.width) == (1, width)
        return
    assert part.width <= on and part.count * (part.width - 3 * MM) >= width
    assert part.count * (part.width - 3 * MM) - width < part.count * MM_STYLE.step + part.count  # no wider than need be
    assert (part.count - 1) * ((on - 3 * MM) // MM_STYLE.step * MM_STYLE.step) < width


def test_a_wide_board_in_the_shop_counts_where_it_has_room_for_all_of_them():
    shop = board(62, 12, 1)
    assert made(wide((30, 11, 2)), shop, board(96, 6)) == [(2, 11)]
    assert made(wide((30, 11, 3)), shop, board(96, 6)) == [(6, Fraction("5.625"))]


@pytest.mark.parametrize(("shop", "count"), [(board(30, 19, 1), 3), (board(60, 6, 1), 2)])
def test_the_blade_takes_its_part_between_pieces(shop, count):
    """Three of 30 x 6 in lie abreast on 19 in, and two one behind another on 60 in, but not with 1 in between them."""
    for kerf, expected in ((0, [(count, 6)]), (INCH, [(2 * count, Fraction("3.125"))])):
        assert made(replace(wide((30, 6, count)), kerf=kerf), shop, board(96, 4)) == expected


def test_one_wide_board_is_not_counted_for_two_parts():
    """Either pair would come out of 62 in of the wide board, but not both: the narrower one is glued up."""
    tops = wide((30, 10, 2), (30, 11, 2))
    assert made(tops, board(62, 12, 1), board(96, 6)) == [(4, Fraction("5.125")), (2, 11)]
    assert made(tops, board(62, 12, 2), board(96, 6)) == [(2, 10), (2, 11)]


def test_staves_from_the_shop_alone_are_as_wide_as_there_are_boards_for():
    """Two tops of 11 in: the one board of 8 in gives two staves of 5 5/8, of four; six of 11/3 + 1/8 there are."""
    up = Fraction(235, 64)  # 11/3 in, up to the step of 1/64 in
    assert made(wide((30, 11, 2)), board(61, 8, 1), board(62, 4, 4)) == [(6, up + Fraction(1, 8))]


def test_a_board_stands_once_for_each_of_its_staves():
    ask = glued_up(wide((30, 11, 2)), [board(96, 6)], JOINTING, INCH_STYLE)
    assert [one.name for one in ask.boards[0]] == ["top 0.0", "top 0.0", "top 0.1", "top 0.1"]
    assert (ask.parts[0].name, ask.parts[0].count) == ("staves of top 0", 4)


@pytest.mark.parametrize(
    ("stock", "said"),
    [
        (board(29, 12), "top 0: 30 in long at rough size, and the longest board leaves 29 in"),
        (board(96, 6, 1), "the boards that are 30 in long are too few or too narrow for it"),
        (Stock("sliver", 96 * INCH, INCH // 8), "too few or too narrow for it, even glued up"),
    ],
)
def test_what_boards_cannot_give_is_refused_in_one_sentence(stock, said):
    with pytest.raises(LayoutError, match=said):
        glued_up(wide((30, 11, 4)), [stock], JOINTING, INCH_STYLE)


def test_plywood_is_never_glued_up(project):
    cabinet = solve(project)
    ask = next(one for one in asks(cabinet) if one.sheet.name == "box sheet")
    assert from_boards(ask, in_shop(ask.sheet), JOINTING, cabinet.style) is ask


# Strips


def test_wood_runners_come_from_the_boards_that_the_project_names(project):
    """Nominal 3/4 in ash is thicker than the runners are high: they are ripped on edge, each as wide as it is thick."""
    cabinet = solve(project)
    ask = next(one for one in asks(cabinet) if one.sheet.name == "ash" and one.stages == (2,))
    runner = cabinet.by_name["bay 1 drawer 1 left runner"]
    assert (ask.parts[0].count, ask.parts[0].length) == (4, runner.length + project.cutting.rough_length)
    assert ask.parts[0].width == min(runner.width, runner.thickness)
    without = solve(replace(project, cutting=replace(project.cutting, strips_from="")))
    assert not any(one.name.endswith("runner") for boards in boards_by_sheet(without).values() for one in boards)


SAFELY = ("a low fence that the guard passes over, with featherboards and a thin push block that may be cut, or it is "
          "planed to that")


def test_a_narrow_strip_falls_off_on_the_outer_side_of_the_blade(laid):
    """No guard passes between blade and fence at 3/8 in (common practice, no source): a thin-strip stop there instead.

    What is over 1 1/2 in is ripped along the fence.
    """
    rows = [dict(zip(COLUMNS, row, strict=True)) for row in order_rows(laid)]
    narrow = [row for row in rows if row["cut"] == "rip" and 0 < float(row["fence_mm"]) < 38.1]
    assert [row["fence"] for row in narrow] == ["3/8 in"]
    for row in narrow:
        assert row["set_by"] == "thin-strip stop"
        assert "joint both its edges first" in row["mind"] and "outer side of the blade" in row["mind"]
    assert all(row["set_by"] != "thin-strip stop" for row in rows if row not in narrow)
    said = [one.claim.say for one in cautions().only(["sheet at the saw"]) if "thin-strip stop" in one.claim.say]
    assert len(said) == 1 and "outer side of the blade" in said[0] and "guard" in said[0]


def test_what_is_narrow_on_both_sides_of_the_blade_has_a_low_fence():
    """A strip of 20 mm ripped to 13: 4 mm would lie against the fence, and the strip has to."""
    at, off = Rect(0, 0, 900 * MM, 20 * MM), Rect(0, 0, 900 * MM, 13 * MM)
    cut = SawCut("rip", 1, at, 13 * MM, off, Rect(0, 16 * MM, 900 * MM, 4 * MM))
    job = Job((Part("strip", 900 * MM, 13 * MM),), ())
    assert set_by(job, cut) == "fence"
    step = Step(1, 1, "rip", 13 * MM, 0, Piece("strip", at), (cut,), (Piece("A", off, 0),), None, edge=900 * MM)
    assert "a low fence that the guard passes over" in minded(step, ("A",), str, ("900", "20"))


def test_a_strip_from_a_thicker_board_is_ripped_once_more_before_it_is_cut_to_length(laid):
    """Runners 1/2 by 3/8 in from ash 3/4 in thick: what comes off the board is 3/8 by 3/4 in and enters no groove."""
    found = laid
    runner = found.cabinet.by_name["bay 1 drawer 1 left runner"]
    assert sorted(runner.cut_size[1:]) == [3 * INCH // 8, INCH // 2]
    again = f"ripped once more, lying on its jointed face, to 1/2 in, before it is cut to length: along {SAFELY}"
    assert f"and as soon as it is off the board, {again}" in " ".join(boards_told(found))
    then = f"each strip is {again}"
    rows = [dict(zip(COLUMNS, row, strict=True)) for row in order_rows(found)]
    told = {(row["then"], row["cut"]) for row in rows if row["then"].startswith("each strip")}
    assert told == {(then, "rip")}
    ripped = next(number for number, row in enumerate(rows) if row["then"] == then)
    to_length = next(number for number, row in enumerate(rows) if "runner" in row["finishes"])
    assert ripped < to_length and rows[to_length]["cut"] == "crosscut"


@pytest.mark.parametrize(("thick", "flush"), [(20, True), (30, False), (0, False)])
def test_edging_is_planed_flush_or_ripped_to_the_thickness_of_its_board(thick, flush):
    """Common practice, no source: 3 mm and less is planed off. The case sheet of the stand is 17.9 mm thick."""
    one = stand(more=boards_of("maple", thick * MM or 1_432_000), strips_from="maple")
    told = " ".join(boards_told(laid_out(solve(one), 1)))
    assert ("what stands over the edge of its board is planed flush" in told) == flush
    assert ("on its jointed face, to 17.9 mm, before it is cut to length" in told) == (thick == 30)


def test_edging_strips_are_as_long_as_their_edges_and_as_wide_as_the_sheet_is_thick():
    """Three fronts of the rolling stand with a strip on all four edges: twelve strips, 4 mm x 17.9 mm."""
    cabinet = solve(stand(more=boards_of("maple", 20 * MM), strips_from="maple"))
    strips = boards_by_sheet(cabinet)["maple"]
    assert len(strips) == 12 and {(strip.width, strip.thickness) for strip in strips} == {(1_432_000, 320_000)}
    front = cabinet.by_name["bay 1 drawer 1 front"]
    lengths = {strip.name: strip.length for strip in strips if strip.name.startswith(front.name)}
    assert lengths == {
        "bay 1 drawer 1 front left strip": front.width, "bay 1 drawer 1 front right strip": front.width,
        "bay 1 drawer 1 front bottom strip": front.length, "bay 1 drawer 1 front top strip": front.length,
    }  # fmt: skip


@pytest.mark.parametrize(("thick", "width"), [(20, 4 * MM), (12, 1_432_000)])
def test_a_strip_is_ripped_on_edge_or_flat(thick, width):
    cabinet = solve(stand(more=boards_of("maple", thick * MM), strips_from="maple"))
    assert {part.width for ask in asks(cabinet) if ask.sheet.name == "maple" for part in ask.parts} == {width}


def test_a_strip_thicker_than_its_board_is_refused():
    cabinet = solve(stand(more=boards_of("lath", 3 * MM), strips_from="lath"))
    with pytest.raises(LayoutError, match=r"4 mm thick, and lath is only 3 mm; name a thicker one in cutting\."):
        asks(cabinet)


def test_bands_are_not_ripped():
    banded = replace(
        stand(more=boards_of("maple", 20 * MM), strips_from="maple"), edging=(Edging("fronts", "band", MM),)
    )
    assert boards_by_sheet(solve(banded))["maple"] == []


def test_short_strips_are_ripped_as_one_and_cut_to_length(project):
    """Four runners of some 7 in: two and two, each pair in a row on one piece, long enough to be ripped (12 in)."""
    found = laid_out(solve(project), 1)
    runners = [f"bay {bay} drawer 1 {side} runner" for bay in (1, 2) for side in ("left", "right")]
    places = lying(found, runners)
    assert all(at.w < 12 * INCH for _, at in places)
    for (sheet, first), (other, second) in (places[:2], places[2:]):
        assert sheet == other and second.y == first.y
        assert second.x == first.x + first.w + project.cutting.kerf
        assert second.x + second.w - first.x >= 12 * INCH


def test_strips_stay_single_where_no_board_holds_them_as_one(project):
    """Boards of 9 in hold a runner, and no two."""
    ask = next(one for one in asks(solve(project)) if one.stages == (2,) and one.sheet.name == "ash")
    jobs = [Job(ask.parts, (board(length, 4),), ask.kerf) for length in (9, 24)]
    assert [len(strip_runs(ask, job, INCH_STYLE)) for job in jobs] == [0, 2]


@pytest.mark.parametrize("name", ["birch", "box sheet"])
def test_strips_come_from_solid_boards_of_the_project(name):
    text = example("wheel_wall_drawers").read_text(encoding="utf-8")
    wrong = project_from_text(text.replace('strips_from = "ash"', f'strips_from = "{name}"'))
    with pytest.raises(ImpossibleProject, match=f'"{name}" is no such sheet; name one of "ash"') as refused:
        solve(wrong)
    assert refused.value.key == "cutting.strips_from"


# Fronts in the order of their grain


def lying(found, names):
    """The sheet and place of each of these boards."""
    return [next((sheet.name, piece.placed.at) for sheet in found.sheets for piece in sheet.pieces
                 if piece.board.name == name) for name in names]  # fmt: skip


def test_fronts_of_a_row_come_from_one_board_from_left_to_right(project):
    found = laid_out(solve(project), 1)
    (sheet, left), (other, right) = lying(found, ["bay 1 drawer 1 front", "bay 2 drawer 1 front"])
    assert sheet == other and right.x - left.x - left.w == project.cutting.kerf and right.y == left.y


@pytest.mark.parametrize("way", ["along each row", "down each bay"])
@pytest.mark.parametrize("width", [4, 5])
def test_fronts_in_staves_come_stave_by_stave_from_one_board(width, way):
    """Two drawers a bay, and boards that no front comes out of: like staves of a run lie in its order, a kerf apart."""
    plain = read_project(example("wheel_wall_drawers"))
    bays = tuple(replace(bay, drawers=replace(bay.drawers, count=2)) for bay in plain.bays)
    ash = replace(plain.sheets["ash"], length=96 * INCH, width=width * INCH, sizes=(), on_hand=())
    project = replace(plain, bays=bays, size=replace(plain.size, height=14 * INCH), sheets=plain.sheets | {"ash": ash},
                      cutting=replace(plain.cutting, fronts_in_grain_order=way))  # fmt: skip
    found = laid_out(solve(project), 2)
    runs = [[f"bay {bay} drawer {n} front" for bay in (1, 2)] for n in (1, 2)]
    if way == "down each bay":
        runs = [[f"bay {bay} drawer {n} front" for n in (2, 1)] for bay in (1, 2)]
    for run in runs:
        places = {(piece.board.name, piece.stave): (sheet.name, piece.placed.at) for sheet in found.sheets
                  for piece in sheet.pieces if piece.board.name in run}  # fmt: skip
        assert sorted({stave for _, stave in places}) == [1, 2]
        for stave in (1, 2):
            (sheet, first), (other, second) = (places[name, stave] for name in run)
            assert sheet == other and first.y == second.y
            assert second.x - first.x - first.w == project.cutting.kerf
    told = " ".join(boards_told(found))
    assert told.count("cut stave by stave, stave 1 of them all from one piece in the order") == 2
    assert "front of drawer 1 in bays 1 and 2: cut from one piece" not in told


DOWN = [f"bay 1 drawer {number} front" for number in (3, 2, 1)]


def test_fronts_of_a_bay_lie_on_a_sheet_as_they_stand():
    one = stand(fronts_in_grain_order="down each bay")
    down = lying(laid_out(solve(one), 1), DOWN)
    assert len({sheet for sheet, _ in down}) == 1 and len({at.x for _, at in down}) == 1
    assert [below.y - above.y - above.h for (_, above), (_, below) in pairwise(down)] == [one.cutting.kerf] * 2


def test_fronts_of_a_bay_follow_one_another_on_a_board_that_is_too_narrow_for_a_stack():
    one = stand(more=boards_of("pine", 18 * MM, 400 * MM), fronts_in_grain_order="down each bay")
    one = replace(one, fronts=replace(one.fronts, sheet="pine"))
    down = lying(laid_out(solve(one), 1), DOWN)
    assert len({sheet for sheet, _ in down}) == 1
    assert [below.x - above.x - above.w for (_, above), (_, below) in pairwise(down)] == [one.cutting.kerf] * 2


def test_fronts_that_no_board_holds_in_one_piece_are_refused():
    one = stand(more=boards_of("pine", 18 * MM, 400 * MM, 900 * MM), fronts_in_grain_order="down each bay")
    with pytest.raises(LayoutError, match=r"in the order of their grain: no board leaves .* fronts_in_grain_order"):
        laid_out(solve(replace(one, fronts=replace(one.fronts, sheet="pine"))), 1)


# Wood


@pytest.mark.parametrize("seed", range(12))
def test_whatever_boards_there_are_layouts_can_be_sawn_and_no_wood_is_lost(project, seed):
    """Volumes again from the sizes themselves: boards of their rough thickness, parts as the cut list has them."""
    random = Random(seed)
    on_hand = tuple(
        OnHand(random.randint(20, 60) * INCH, random.randint(3, 12) * INCH, random.randint(1, 3), trim_ends=INCH)
        for _ in range(random.randint(0, 3))
    )
    ash = replace(project.sheets["ash"], length=random.choice([72, 96, 120]) * INCH, sizes=(), on_hand=on_hand,
                  width=random.choice([15, 17, 22]) * INCH // 2)  # fmt: skip
    cutting = replace(
        project.cutting,
        fronts_in_grain_order=random.choice(["no", "down each bay", "along each row"]),
        lay_out=random.choice(["all together", "stage by stage"]),
        kerf=random.choice([INCH // 16, INCH // 8]),
        rough_thickness=random.choice([0, INCH // 4]),
    )
    cabinet = solve(replace(project, sheets=project.sheets | {"ash": ash}, cutting=cutting))
    found = laid_out(cabinet, 1)
    assert [judged(job.job, job.layout) for job in found.jobs if judged(job.job, job.layout)] == []
    wood = wood_used(found)["ash"]
    own = [sheet for sheet in found.sheets if sheet.sheet.name == "ash"]
    rough = ash.thickness + cutting.rough_thickness
    assert wood.bought == rough * sum(
        sheet.stock.length * sheet.stock.width for sheet in own if not (sheet.held and sheet.held.left_of)
    )
    parts = [one for one in cabinet.boards if one.sheet == "ash" or one.role == "runner"]
    assert wood.finished == sum(one.length * one.width * one.thickness for one in parts)
    left = {sheet.name: sum(rest.area for rest in sheet.sawn.offcuts) for sheet in own}
    for sheet in own:
        if sheet.held and sheet.held.left_of:
            left[sheet.held.left_of] -= sheet.stock.length * sheet.stock.width
    assert wood.offcuts == rough * sum(left.values())
    assert min(wood.finished, wood.planed, wood.kerf + 1, wood.trim, wood.offcuts + 1) > 0
    assert 0 < wood.waste < 100


def test_what_is_told_and_written_of_boards(project):
    found = laid_out(solve(project), 1)
    told = "\n".join(boards_told(found))
    assert "Parts are cut rough, 1/2 in longer and 1/4 in wider than finished, from boards 1/4 in thicker." in told
    assert "bottom and top: no board is wide enough; glue each up from 2 staves, each 4 7/8 in wide" in told
    assert "ripped 3/8 in wide, and as soon as it is off the board, ripped once more, lying on" in told
    assert ", from ash that is planed already, to 3/4 in; joint the edge" in told
    assert "front of drawer 1 in bays 1 and 2: cut from one piece in the order in which they stand" in told
    assert "no piece under 12 in is ripped" in told
    for caution in ("is jointed flat on one face", "cut them out by eye", "the manual of the machine"):
        assert caution in told
    written = sheets_dict(found)
    assert written["notes"] == boards_told(found)
    parts = written["wood"]["ash"]["m3"]
    assert parts.pop("bought") == pytest.approx(sum(parts.values()), abs=1e-8)
    assert boards_told(laid_out(solve(stand()), 0.5)) == []


def test_rough_boards_weigh_what_they_weigh_before_they_are_planed():
    """By hand: white ash 96 x 7 1/2 in, 1 in thick, is a third heavier than at 3/4 in, and is lifted so."""
    found = laid_out(cabinet_from("wheel_wall_drawers"), 1)
    assert {sheet.thickness for sheet in found.sheets if sheet.sheet.name == "ash"} == {INCH}
    thick = {sheet["sheet"]: (sheet["thickness"], sheet["planed"]) for sheet in sheets_dict(found)["sheets"]}
    assert thick["ash"] == (25.4, 19.05) and thick["box sheet"][1] is None
    ash = found.cabinet.sheets["ash"]
    rough, planed = (weight_of(ash, 96 * INCH, 15 * INCH // 2, thick) for thick in (INCH, 3 * INCH // 4))
    assert rough.high.magnitude == pytest.approx(planed.high.magnitude * 4 / 3)
    row = next(dict(zip(COLUMNS, row, strict=True)) for row in order_rows(found) if row[3] == "ash")
    length, width = (float(row[side]) for side in ("piece_length_mm", "piece_width_mm"))
    assert row["weighs"] == weight_of(ash, round(length * MM), round(width * MM), INCH).told("in")
    area = one_lifts(ash, "20 lb", INCH)
    heavy = weight_of(ash, INCH, area // INCH, INCH).high.to("lbf").magnitude
    assert heavy == pytest.approx(20, rel=1e-6) and needs_two(ash, INCH, area // INCH + 2, "20 lb", INCH)


def test_glue_goes_on_the_seams_of_what_is_glued_up(project):
    """By hand: bottom and top of two staves each, 25 1/2 in long rough and 1 in thick: 2 x 25.5 sq in."""
    found = laid_out(solve(project), 1)
    tops = [piece for sheet in found.sheets for piece in sheet.pieces if piece.board.name in ("bottom", "top")]
    assert len(tops) == 4 and seam_area(found) == sum(piece.placed.at.w for piece in tops) // 2 * INCH
    without, glue = (next(line for line in buying_list(found.cabinet, seams=seams).lines if line.kind == "glue")
                     for seams in (0, seam_area(found) * 100))  # fmt: skip
    assert glue.quantity > without.quantity and "of seams between staves" in glue.uses
    assert "seams" not in without.uses
