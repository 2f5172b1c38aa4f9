"""From the cabinet to the jobs: which parts are laid out together, on what, and what is refused in one sentence."""

from collections import Counter
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from shoplib.buying.jobs import asks, in_shop, job_of, offered
from shoplib.buying.laid_out import laid_out
from shoplib.documents.project_file import read_project
from shoplib.layout.pieces import LayoutError
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.cutting import Cutting, OnHand, StockSize
from shoplib.model.project import ImpossibleProject

PROJECTS = Path(__file__).parents[2] / "data" / "projects"


def project(name="finger_jointed_drawers", sheet="", cutting=None, **changed):
    """A shipped project with one of its sheets changed."""
    plain = read_project(PROJECTS / f"{name}.toml")
    sheets = plain.sheets | ({sheet: replace(plain.sheets[sheet], **changed)} if sheet else {})
    return replace(plain, sheets=sheets, cutting=cutting or plain.cutting)


def asked(plan, sheet, stage=0):
    return next(ask for ask in asks(solve(plan)) if ask.sheet.name == sheet and (not stage or stage in ask.stages))


def test_equal_parts_are_one_part_and_each_board_is_asked_for_once():
    """By hand from the cut list: 4 sides of 350 x 100 mm and 4 fronts and backs of 339 x 100 mm."""
    ask = asked(project(), "box sheet")
    assert [(part.length, part.width, part.count, part.may_turn) for part in ask.parts] == [
        (350 * MM, 100 * MM, 4, False), (339 * MM, 100 * MM, 4, False),
    ]  # fmt: skip
    names = [board.name for boards in ask.boards for board in boards]
    assert len(set(names)) == len(names) == 8
    assert sum("box side" in board.name for board in ask.boards[0]) == 4


def test_stage_by_stage_and_all_together():
    parted = [(ask.sheet.name, ask.stages) for ask in asks(solve(project()))]
    assert parted == [
        ("case sheet", (1,)), ("thin sheet", (1,)), ("box sheet", (2,)), ("thin sheet", (2,)), ("case sheet", (3,)),
    ]  # fmt: skip
    together = asks(solve(project(cutting=Cutting(lay_out="all together"))))
    assert [(ask.sheet.name, ask.stages) for ask in together] == [
        ("case sheet", (1, 3)), ("thin sheet", (1, 2)), ("box sheet", (2,)),
    ]  # fmt: skip


def test_letters_go_on_from_stage_to_stage():
    case = [ask.letters for ask in asks(solve(project())) if ask.sheet.name == "case sheet"]
    assert case == [("A", "B", "C"), ("D", "E")]


@pytest.mark.parametrize("lay_out", ["stage by stage", "all together"])
@pytest.mark.parametrize("path", sorted(PROJECTS.glob("*.toml")), ids=lambda path: path.stem)
def test_no_board_is_left_out_or_asked_for_twice(path, lay_out):
    plan = read_project(path)
    cabinet = solve(replace(plan, cutting=replace(plan.cutting, lay_out=lay_out)))
    counted = Counter(board.name for ask in asks(cabinet) for boards in ask.boards for board in boards)
    assert {board.name for board in cabinet.boards} <= set(counted)
    glued = {board.name for ask in asks(cabinet) if ask.sheet.kind == "solid" for board in sum(ask.boards, ())}
    assert {counted[board.name] for board in cabinet.boards if board.name not in glued} == {1}
    for ask in asks(cabinet):
        assert [part.count for part in ask.parts] == [len(boards) for boards in ask.boards]


def test_stock_costs_what_the_project_says_and_what_lies_in_the_shop_costs_nothing():
    plan = project("under_bench_case")
    ask = asked(plan, "thin sheet", 2)
    on = offered(ask, in_shop(ask.sheet), plan.style)
    assert [(one.length, one.width, one.count, one.cost) for one in on.stock] == [
        (24 * INCH, 23 * INCH, 2, 0), (96 * INCH, 48 * INCH, None, 3100), (48 * INCH, 48 * INCH, None, 1800),
    ]  # fmt: skip
    assert on.priced and {one.trim_ends for one in on.stock} == {one.trim_edges for one in on.stock} == {INCH // 4}
    assert job_of(ask, on).kerf == INCH // 8


def test_where_one_price_is_missing_sizes_are_compared_by_area():
    plan = project(sheet="case sheet", price="")
    ask = asked(plan, "case sheet", 1)
    on = offered(ask, (), plan.style)
    assert not on.priced
    assert [one.cost for one in on.stock] == [2440 * 1220, 1220 * 1220]


def test_an_offcut_may_have_a_trim_of_its_own():
    on_hand = (OnHand(700 * MM, 500 * MM), OnHand(400 * MM, 400 * MM, 2, trim=0, trim_ends=3 * MM))
    sheet = project(sheet="thin sheet", on_hand=on_hand, trim=8 * MM).sheets["thin sheet"]
    trims = [(one.trim_ends // MM, one.trim_edges // MM) for one in in_shop(sheet)]
    assert trims == [(8, 8), (3, 0), (3, 0)]


def refused(plan):
    with pytest.raises((ImpossibleProject, LayoutError)) as fault:
        laid_out(solve(plan), 0.2)
    text = str(fault.value)
    assert "\n" not in text and len(text) < 400
    return text


def test_a_part_larger_than_every_sheet_is_told_in_shop_units_with_the_sheets_there_are():
    size = (StockSize(300 * MM, 300 * MM),)
    text = refused(project(sheet="case sheet", length=400 * MM, width=400 * MM, sizes=size))
    assert text.startswith('sheets."case sheet": ')
    for said in ("left side and right side, 280 mm x 430 mm", "400 mm x 400 mm, 300 mm x 300 mm", "give a larger one"):
        assert said in text


def test_pieces_in_the_shop_that_are_too_small_ask_for_what_can_be_bought():
    only_small = {"length": None, "width": None, "sizes": (), "on_hand": (OnHand(300 * MM, 200 * MM),)}
    text = refused(project(sheet="case sheet", **only_small))
    assert "only pieces in the shop are given: give length and width of the sheet as it can be bought" in text


def test_trim_counts_where_a_part_just_does_not_fit():
    """By hand: the bottom is 381.468 by 430 mm, so a board of 446 mm holds it trimmed by 8 mm, and by 8.01 not."""
    fitting = project(sheet="case sheet", length=600 * MM, width=446 * MM, sizes=(), trim=8 * MM)
    assert laid_out(solve(fitting), 0.2).sheets
    text = refused(project(sheet="case sheet", length=600 * MM, width=446 * MM, sizes=(), trim=8 * MM + 800))
    assert "comes out of no sheet that there is, with its grain along the sheet and with the edges trimmed" in text


def test_grain_decides_whether_a_part_may_turn():
    narrow = {"length": 400 * MM, "width": 2440 * MM, "sizes": (), "trim": 0}
    assert "with its grain along the sheet" in refused(project(sheet="case sheet", **narrow | {"length": 300 * MM}))
    said = refused(project(sheet="case sheet", **narrow | {"length": 2440 * MM, "width": 400 * MM}))
    assert said.endswith("only lie across the grain: see whether length (along the grain) and width are swapped")
    assert laid_out(solve(project(sheet="case sheet", **narrow | {"length": 400 * MM})), 0.2).sheets
    turning = project(sheet="case sheet", **narrow | {"length": 385 * MM, "grain": "none"})
    assert laid_out(solve(turning), 0.2).sheets


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"length": None, "width": None, "sizes": ()}, 'sheets."case sheet": no size is given, so nothing can be laid'),
        ({"width": None}, 'sheets."case sheet".width: it is missing'),
        ({"length": None}, 'sheets."case sheet".length: it is missing'),
        ({"trim": 700 * MM}, 'sheets."case sheet": '),
        (
            {"sizes": (StockSize(610 * MM, 610 * MM, "21.00"), StockSize(610 * MM, 610 * MM, "23.50"))},
            'sheets."case sheet": 610 mm x 610 mm stands there with several prices (21.00 and 23.50); give it once',
        ),
        ({"sizes": (StockSize(610 * MM, 610 * MM, "0"),)}, 'sheets."case sheet": a price is 0, as if sheets were free'),
        ({"price": "0.00"}, 'sheets."case sheet": a price is 0.00, as if sheets were free'),
    ],
)
def test_a_sheet_that_nothing_can_be_laid_out_on_is_told(changed, said):
    assert refused(project(sheet="case sheet", **changed)).startswith(said)


def test_a_sheet_without_a_size_of_its_own_takes_those_that_can_be_bought():
    sizes = (StockSize(1220 * MM, 1220 * MM, "36.00"),)
    found = laid_out(solve(project(sheet="case sheet", length=None, width=None, sizes=sizes)), 0.2)
    assert {sheet.stock.length for sheet in found.sheets if sheet.sheet.name == "case sheet" and sheet.bought} == {
        1220 * MM
    }


def test_the_same_size_twice_with_one_price_is_one_size():
    sizes = (StockSize(1220 * MM, 1220 * MM, "36.00"),) * 2
    plan = project(sheet="case sheet", sizes=sizes)
    on = offered(asked(plan, "case sheet"), (), solve(plan).style)
    assert [(one.length, one.cost) for one in on.stock].count((1220 * MM, 3600)) == 1


def test_too_few_offcuts_are_told():
    text = refused(project(sheet="box sheet", length=None, width=None, on_hand=(OnHand(400 * MM, 120 * MM, 2),)))
    assert text.startswith("box sheet: the sheets that there are cannot hold all parts; ")


@pytest.mark.parametrize(("name", "unit", "widest"), [
    ("finger_jointed_drawers", MM, 12), ("under_bench_case", INCH, Fraction(1, 2)),
])  # fmt: skip
def test_a_kerf_that_no_saw_has_is_refused(name, unit, widest):
    """Common practice, no source: a blade takes some 1/8 in, a wide one twice that."""
    usual = read_project(PROJECTS / f"{name}.toml")
    most = int(widest * unit)
    assert solve(replace(usual, cutting=replace(usual.cutting, kerf=most)))
    with pytest.raises(ImpossibleProject, match=r"cutting.kerf.*every saw takes some wood at a cut"):
        solve(replace(usual, cutting=replace(usual.cutting, kerf=0)))
    for kerf in (most + 1, 2000 * MM):
        with pytest.raises(ImpossibleProject, match=r"no saw takes .* at a cut, and .* is the most; give") as fault:
            solve(replace(usual, cutting=replace(usual.cutting, kerf=kerf)))
        assert fault.value.key == "cutting.kerf" and "\n" not in str(fault.value)


def test_the_sentence_names_the_sheet_that_its_boards_are_too_few_of():
    few = {"length": None, "width": None, "sizes": (), "on_hand": (OnHand(41 * INCH, 11 * INCH),)}
    text = refused(project("wheel_wall_drawers", sheet="ash", **few))
    assert text.startswith("ash: ") and "too few or too narrow" in text


@pytest.mark.filterwarnings("error")
@pytest.mark.parametrize("name", ["wheel_wall_drawers", "rolling_stand"])
@pytest.mark.parametrize("on_hand", [(), (OnHand(2500 * MM, 180 * MM, 3),)])
def test_nothing_warns_while_solid_boards_are_laid_out(name, on_hand):
    """numpy's own warnings, with the path of a file, are no words for the terminal."""
    sheet = "ash" if name == "wheel_wall_drawers" else "case sheet"
    size = {"kind": "solid", "length": 2500 * MM, "width": 180 * MM, "sizes": (), "on_hand": on_hand}
    assert laid_out(solve(project(name, sheet=sheet, **size)), 2.0).sheets


def test_a_negative_kerf_never_comes_so_far():
    from shoplib.documents.project_file import ProjectFileError, project_from_text

    text = (PROJECTS / "finger_jointed_drawers.toml").read_text(encoding="utf-8")
    with pytest.raises(ProjectFileError, match=r"^cutting\.kerf: ") as fault:
        project_from_text(text + '\n[cutting]\nkerf = "-3 mm"\n')
    assert "\n" not in str(fault.value)
    with pytest.raises(LayoutError, match="the kerf is negative"):
        laid_out(solve(project(cutting=Cutting(kerf=-3 * MM))), 0.2)


def test_more_parts_than_can_be_laid_out_are_told():
    """Sixty bays of fourteen drawers each: 840 boxes of four sides."""
    plan = read_project(PROJECTS / "small_parts_wall_case.toml")
    cabinet = solve(plan)
    boards = [board for board in cabinet.boards if board.sheet == "box sheet" and board.stage == 2]
    many = replace(cabinet, boards=tuple(
        replace(board, name=f"bay 1 drawer {number} {board.name}") for number in range(105) for board in boards
    ))  # fmt: skip
    assert len(many.boards) > 5000
    with pytest.raises(LayoutError, match=r"^box sheet: 5040 parts are more than one layout can take; ") as fault:
        laid_out(many, 0.2)
    assert "\n" not in str(fault.value)
