"""What the page from the cut list to the yard shows, against sums by hand in exact fractions of a millimetre.

Strips, kerf and trim: common practice, no source; 144 cubic inches a board foot: NIST Handbook 44.
"""

import re
from collections import Counter
from fractions import Fraction

from shoplib.lessons import page_08, sheets_shown
from shoplib.lessons.lesson_08 import EXERCISES, SETS
from shoplib.lessons.sheets_shown import case_sheets
from shoplib.live.layout_panel import layout_panel
from shoplib.measure import write_length
from tests.lessons.answers import millimetres

GIVEN = {
    "in": ("30 in", "24 in", "12 1/2 in", "23/32 in", "1/4 in", "1/4 in", "48 in", "1/4 in", "1/8 in"),
    "mm": ("760 mm", "610 mm", "316 mm", "17.4 mm", "6 mm", "6 mm", "1220 mm", "6 mm", "3.2 mm"),
}
"""Width, height, depth, sheet, back, strip; half sheet, trim and kerf."""


def by_hand(unit):
    wide, high, deep, t, back, strip, sheet, trim, kerf = (millimetres(text) for text in GIVEN[unit])
    return {
        "left side": high, "divider": high - 2 * t, "bottom": wide - 2 * t, "shelves": (wide - 3 * t) / 2,
        "saw": deep - back - strip, "finished": deep - back, "room": sheet - 2 * trim, "kerf": kerf,
    }


def amounts(text):
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def test_each_line_of_the_list_is_the_sum_by_hand(unit):
    hand = by_hand(unit)
    lines = {what: (amounts(how), amounts(comes)) for what, how, comes in page_08.list_worked(unit).lines}
    assert [int(what.split(" x ")[0]) for what in lines] == [2, 1, 2, 4, 1]
    for part in ("left side", "divider", "bottom", "shelves"):
        (saw, finished) = next(sizes for what, sizes in lines.items() if part in what.split(" x ")[1])
        assert saw[:2] == [hand[part], hand["saw"]] and finished == [hand[part], hand["finished"]], part


def test_noor_halved_the_bottom_and_the_check_says_by_how_much(unit):
    hand = by_hand(unit)
    typed = next(amounts(comes)[0] for what, _, comes in page_08.typed_worked(unit).lines if "shelves" in what)
    step = Fraction(254, 640) if unit == "in" else Fraction(1, 10)
    assert abs(typed - hand["bottom"] / 2) < step
    (first, *so) = page_08.slip_worked(unit).lines
    assert first[0] == "line 5" and amounts(first[2]) == [typed, hand["shelves"], typed - hand["shelves"]]
    assert any(line[2].startswith("the cabinet comes") for line in so)


def test_strips_are_counted_and_what_is_left_is_measured(unit):
    hand = by_hand(unit)
    half, bare, room, each, count, left = (line[2] for line in page_08.strips_worked(unit).lines)
    assert amounts(half) == [millimetres(GIVEN[unit][6])] * 2
    whole = (hand["room"] + hand["kerf"]) // (hand["saw"] + hand["kerf"])
    assert (bare, count) == ("4 strips", f"{whole} strips") and whole == 3
    assert amounts(room) == [hand["room"]] and amounts(each) == [hand["saw"] + hand["kerf"]]
    assert amounts(left) == [hand["room"] - whole * (hand["saw"] + hand["kerf"])]


def test_area_says_one_half_sheet_and_the_layout_two(unit):
    hand, sheet = by_hand(unit), millimetres(GIVEN[unit][6])
    area = (2 * hand["left side"] + hand["divider"] + 2 * hand["bottom"] + 4 * hand["shelves"]) * hand["saw"]
    by_area, by_layout, *_ = (line[2] for line in page_08.sheets_worked(unit).lines)
    assert by_area == f"{float(area / sheet**2):.2f}" and area < sheet**2
    assert by_layout == "2 half sheets"
    # A half sheet holds three strips; all parts one after another are longer than three of them.
    assert area / hand["saw"] > 3 * hand["room"]


def test_each_cut_of_the_order_stands_once(unit):
    lines, found = page_08.order_worked(unit).lines, case_sheets(unit)
    letters = re.findall(r"\b[A-D]\b", " ".join(how for _, how, _ in lines))
    assert sorted(letters) == ["A"] * 2 + ["B"] + ["C"] * 2 + ["D"] * 4
    assert sum(len(sheet.pieces) for sheet in found.sheets) == len(letters)
    hand = by_hand(unit)
    sheet, trim = (millimetres(GIVEN[unit][n]) for n in (6, 7))
    trims = [(how, amounts(fence)[0]) for what, how, fence in lines if "trim" in what]
    assert sorted({fence for _, fence in trims}) == [sheet - 2 * trim, sheet - trim]
    each = Counter(one for how, _ in trims for one in how.split("; "))
    assert each == {f"sheet {number}, {edge}": 2 for number in (1, 2) for edge in ("an end", "a long edge")}
    assert [int(what.split(".")[0]) for what, _, _ in lines] == list(range(1, len(lines) + 1))
    fences = {amounts(fence)[0] for what, _, fence in lines if "trim" not in what}
    assert fences == {hand["saw"], hand["bottom"], hand["left side"], hand["divider"], hand["shelves"]}


def test_the_drawings_of_the_cuts_say_what_the_table_says(unit, monkeypatch):
    """Each cut of the table has its number on the drawing, and each piece its name."""
    monkeypatch.setattr(sheets_shown, "unit_in_use", lambda: unit)
    lines = [line for line in page_08.order_worked(unit).lines if "trim" not in line[0]]
    for number, figure in enumerate((sheets_shown.first_cuts(), sheets_shown.second_cuts()), 1):
        mine = [(what.split(".")[0], found) for what, how, _ in lines
                for found in re.findall(rf"from (?:rest of )?sheet {number}\b[^:]*: ([^;]+)", how)]
        drawn = re.findall(r"<text[^>]*>([^<]+)", figure.svg)
        cuts = Counter(setting for setting, off in mine for _ in off.split(", "))
        assert cuts == Counter(text for text in drawn if text.isdigit())
        pieces = sorted(off for _, found in mine for off in found.split(", ") if off.startswith("piece"))
        assert pieces and pieces == sorted(text for text in drawn if text.startswith("piece"))
        assert all(f"{setting}, " in figure.alt for setting, _ in mine)


def test_the_case_is_drawn_with_its_outside_sizes_and_the_sums_come_to_them(unit, monkeypatch):
    monkeypatch.setattr(sheets_shown, "unit_in_use", lambda: unit)
    wide, high, deep = (millimetres(text) for text in GIVEN[unit][:3])
    [known] = sheets_shown.case_drawn().words
    assert amounts(known) == [wide, high, deep]
    _, *sums = (line[2] for line in page_08.sums_worked(unit).lines)
    assert [amounts(total) for total in sums] == [[wide], [high], [deep]]


def test_the_panel_of_the_page_is_done_on_one_sheet_as_its_text_says(unit):
    """A crosscut as long as a shelf, shelves and one rail there, all else beside it, each size in strips of its own."""
    panel = layout_panel(unit, seconds=60)  # it is found at once, unless the machine is busy with something else
    side, top, shelf, divider, bottom, rail = range(6)
    panel.cut_strip("crosscut", write_length(panel.hand.job.parts[shelf].length, panel.hand.style))
    strip, beside = panel.face.places[0][0], panel.face.places[1][0]
    for part in (shelf, rail):
        panel.choose_part(part)
        panel.choose_place(strip)
        (panel.lay if part == rail else panel.lay_along)()
        strip = panel.face.places[0][0]
    panel.choose_place(beside)
    for part in (side, top, divider, bottom, rail):
        panel.choose_part(part)
        panel.lay_along()
    assert panel.hand.done and len(panel.hand.sheets) == 1
    assert panel.face.result["heading"] == "As few sheets as the best found."


def test_a_board_for_three_fronts(unit):
    long, wide, thick, longer, wider, ends, kerf = (millimetres(text) for text in {
        "in": ("14 in", "5 in", "1 in", "1/2 in", "1/4 in", "2 in", "1/8 in"),
        "mm": ("360 mm", "130 mm", "26 mm", "12 mm", "6 mm", "50 mm", "3.2 mm"),
    }[unit])
    board = 3 * (long + longer) + 2 * kerf + 2 * ends
    *_, length, volume = (line[2] for line in page_08.solid_worked(unit).lines)
    assert amounts(length) == [board]
    cubic = board * (wide + wider) * thick
    feet, metres = float(cubic / (144 * Fraction(254, 10) ** 3)), float(cubic / 10**9)
    assert volume == {"in": f"{feet:.1f} board feet", "mm": f"{metres:.4f} m3"}[unit]


def test_what_is_bought_adds_up(unit):
    *lines, total = page_08.buying_worked(unit).lines
    costs = [re.search(r"= ([\d.]+) ", comes) for _, _, comes in lines]
    assert total[2].split()[0] == f"{sum(float(found[1]) for found in costs if found):.2f}"
    assert sum(found is None for found in costs) == int(total[1].split()[0])
    assert lines[0][1] == "2"


def test_the_ladder_is_whole():
    rungs = [each.rung for each in (*EXERCISES, *SETS)]
    assert list(dict.fromkeys(rungs)) == [
        "read a number off", "one step", "two steps", "find the slip in another's list", "a whole set",
    ]


def test_each_size_of_the_case_is_set_once_as_the_page_says_and_no_part_is_left_to_size(unit):
    found = sheets_shown.steps(case_sheets(unit))
    assert not any(step.again or step.to_size for step in found)
