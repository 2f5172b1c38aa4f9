"""Boards against the sheets they come out of."""

from dataclasses import replace

from shoplib.checks.stock import find_too_big_for_sheet
from shoplib.model.board import Edge
from shoplib.model.cutting import OnHand, StockSize
from tests.checks.cabinets import SHEETS, board, cabinet, ticks, tool_case


def shelf(length, width, grain="length", name="shelf"):
    return board(name, (0, 0, 0), (length, width, 18), "z", grain=grain)


def found(*boards, sheets=SHEETS):
    return find_too_big_for_sheet(cabinet(boards, sheets=sheets))


def test_a_sound_case_comes_out_of_its_sheets():
    assert find_too_big_for_sheet(tool_case()) == ()
    assert found(shelf(2440, 1220)) == ()


def test_a_board_too_long():
    (finding,) = found(shelf(2450, 300))
    assert (finding.level, finding.amount, finding.boards) == ("stop", ticks(10), ("shelf",))
    assert finding.text == (
        "shelf: 2450 mm x 300 mm does not come out of the case sheet, 2440 mm x 1220 mm, "
        "with the grain along it: 10 mm too much. "
        "Use a larger sheet, make the piece smaller, or join it from two."
    )


def test_a_board_may_turn_only_where_it_has_no_grain():
    (finding,) = found(shelf(600, 1300))
    assert finding.amount == ticks(80)
    assert found(shelf(600, 1300, grain="none")) == ()
    (finding,) = found(shelf(2500, 1300, grain="none"))
    assert finding.amount == ticks(80) and "either way round" in finding.text


def test_the_cut_size_counts_since_edging_goes_on_afterwards():
    edged = replace(shelf(2446, 300), edging=(("left", Edge("strip", ticks(6))),))
    assert found(edged) == ()


def test_equal_boards_are_one_finding():
    (finding,) = found(*(shelf(2450, 300, name=f"shelf {number}") for number in range(1, 7)))
    assert len(finding.boards) == 6
    assert finding.text.startswith("shelves 1 to 6: ")


def test_sheets_of_unknown_size_are_one_note():
    sheets = {name: replace(sheet, length=None) for name, sheet in SHEETS.items()}
    back = board("back", (0, 0, 0), (300, 6, 300), "y", sheet="thin sheet")
    (finding,) = found(shelf(2450, 300), shelf(600, 300, name="other"), back, sheets=sheets)
    assert (finding.level, finding.amount) == ("note", None)
    assert finding.text.startswith("No length and width are given for case sheet and thin sheet, so ")


def test_solid_stock_is_bought_to_length():
    solid = {"case sheet": replace(SHEETS["case sheet"], kind="solid", length=None, width=None)}
    assert found(shelf(3000, 300), sheets=solid) == ()


def test_a_turned_board_is_held_against_both_sides_of_its_sheet():
    """2440 x 1220: 1000 x 2500 turned is 60 too long, 1300 x 2000 turned is 80 too wide."""
    (long,) = found(shelf(1000, 2500, grain="none"))
    (wide,) = found(shelf(1300, 2000, grain="none"))
    assert (long.amount, wide.amount) == (ticks(60), ticks(80))
    assert found(shelf(1000, 2440, grain="none")) == ()


def test_any_size_that_is_bought_or_lies_in_the_shop_will_do():
    sheet = replace(SHEETS["case sheet"], sizes=(StockSize(ticks(3000), ticks(1200)),))
    assert found(shelf(2450, 300), sheets={"case sheet": sheet}) == ()
    sheet = replace(SHEETS["case sheet"], on_hand=(OnHand(ticks(3000), ticks(200)),))
    (finding,) = found(shelf(2450, 300), sheets={"case sheet": sheet})
    assert finding.amount == ticks(10) and "2440 mm x 1220 mm" in finding.text


def test_a_solid_part_may_be_wider_than_its_boards_but_not_longer():
    solid = {"case sheet": replace(SHEETS["case sheet"], kind="solid", length=ticks(2400), width=ticks(150))}
    assert found(shelf(800, 300), sheets=solid) == ()
    (finding,) = found(shelf(2450, 100), sheets=solid)
    assert finding.amount == ticks(50)
    assert finding.text.endswith("along the grain: 50 mm too much. Get a longer board, or make the piece shorter.")
