"""buying.csv as a spreadsheet reads it (Python's csv reader, RFC 4180), and the list to read."""

import csv
import io
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from shoplib.buying.line import Line, Price, read_price
from shoplib.buying.list import BuyingList, buying_list
from shoplib.buying.stock_lines import Stocked
from shoplib.buying.waiting import HANG, STANDS
from shoplib.documents.buying_file import (
    CARRYING,
    COLUMNS,
    FIRST,
    LATER,
    NO_PRICE,
    NOW,
    buying_csv,
    buying_text,
    yard_cautions,
)
from shoplib.documents.cut_list_file import FORMULA_SIGNS
from shoplib.documents.project_file import ProjectFileError, project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.measure import INCH, MM, read_length
from shoplib.model.cabinet import solve
from shoplib.model.cutting import Buying
from tests.building.cases import measured
from tests.lists.projects import stand
from tests.random_projects import project

ROOT = Path(__file__).parents[2]
PROJECTS = sorted((ROOT / "data" / "projects").glob("*.toml"))


def wanted_of(plan, first=()):
    cabinet = solve(plan)
    stock = [Stocked(sheet.name, (1,), sheet.length, sheet.width) for sheet in plan.sheets.values() if sheet.length]
    return buying_list(cabinet, stock, first)


def shipped(name):
    return next(read_project(path) for path in PROJECTS if path.stem == name)


def table(wanted):
    return list(csv.DictReader(io.StringIO(buying_csv(wanted))))


def flat(text):
    return " ".join(text.split())


PLANS = [*map(read_project, PROJECTS), project(3), project(8)]


@pytest.mark.parametrize("plan", PLANS, ids=lambda plan: plan.name)
def test_the_table_says_each_line_with_its_sizes(plan):
    wanted = wanted_of(plan)
    rows = table(wanted)
    assert tuple(rows[0]) == COLUMNS
    assert len(rows) == len(wanted.lines)
    for row, line in zip(rows, wanted.lines, strict=True):
        assert (row["kind"], row["item"]) == (line.kind, line.item)
        assert Decimal(row["needed"]) + Decimal(row["spare"]) == Decimal(row["quantity"]) == line.quantity
        assert "E" not in row["quantity"]
        for name, ticks in zip(("length", "width", "thickness"), line.size, strict=True):
            assert bool(row[name]) == bool(row[f"{name}_mm"]) == bool(ticks)
            if ticks:
                assert Decimal(row[f"{name}_mm"]) == Decimal(ticks) / MM
                assert abs(read_length(row[name]) - ticks) <= MM // 1000
        assert row["when"] in (NOW, LATER, f"when {STANDS}")
        assert (row["when"] == f"when {STANDS}") == bool(row["measure_first"])


@pytest.mark.parametrize("plan", PLANS, ids=lambda plan: plan.name)
def test_no_cell_is_a_formula_and_every_line_ends_in_a_line_feed(plan):
    text = buying_csv(wanted_of(plan))
    assert "\r" not in text
    assert text.endswith("\n")
    cells = [cell for row in csv.reader(io.StringIO(text)) for cell in row]
    assert not any(cell.lstrip().startswith(FORMULA_SIGNS) for cell in cells)


@pytest.mark.parametrize("name", ["=1+1", "@x", " -x"])
def test_a_name_that_looks_like_a_formula_is_guarded(name):
    sheet = replace(stand().sheets["birch 18"], name=name)
    plan = stand(sheets={name: sheet}, carcass=replace(stand().carcass, sheet=name))
    assert table(wanted_of(plan))[0]["item"].startswith(f"'{name}")


def test_money_in_the_table_adds_up_to_the_total_in_the_text():
    prices = {"pull, 3 in between its holes": "4.15", "wood glue": "7.50 for 16", "clear finish": "21.90"}
    wanted = wanted_of(replace(shipped("under_bench_case"), buying=Buying("CAD", 10, prices)))
    rows = table(wanted)
    costs = [Decimal(row["cost"]) for row in rows if row["cost"]]
    without = [row for row in rows if row["price"] == NO_PRICE]
    assert all(not row["cost"] and not row["currency"] for row in without)
    # Sheets 74 + 46 + 31 + 98, nine pulls, one bottle of 16 fl oz, and 6.7 qt: seven of one quart.
    assert sum(costs) == wanted.total
    assert wanted.total == Decimal("249.00") + 9 * Decimal("4.15") + Decimal("7.50") + 7 * Decimal("21.90")
    text = flat(buying_text(wanted))
    total = f"Total of what has a price: {wanted.total} CAD; {len(without)} of the {len(rows)} lines have none yet."
    assert total in text
    assert "2 fl oz of wood glue: 1 x 7.50 for each 16 fl oz = 7.50 CAD" in text
    assert "6.7 qt of clear finish: 7 x 21.90 per qt = 153.30 CAD" in text
    assert "9 x pull, 3 in between its holes: 9 x 4.15 = 37.35 CAD" in text


def test_each_part_of_the_list_is_summed():
    """The shipped case by its own prices: one case sheet for 74 now, one box sheet for 46 when the case stands."""
    plan = shipped("under_bench_case")
    stock = [Stocked(name, stages, plan.sheets[name].length, plan.sheets[name].width)
             for name, stages in (("case sheet", (1, 2)), ("box sheet", (2,)))]  # fmt: skip
    text = flat(buying_text(buying_list(solve(plan), stock)))
    now, later = text.index("Buy now, for the case"), text.index("Better not before the case stands")
    assert text.count("Together of what has a price") == 2
    assert now < text.index("Together of what has a price: 74.00 USD; ") < later
    assert later < text.index("Together of what has a price: 46.00 USD; ")


@pytest.mark.parametrize(("count", "said"), [(7, "1 pack of 10, 2.00"), (101, "11 packs of 10 x 2.00 = 22.00")])
def test_packs_are_told_one_or_many(count, said):
    """Eleven packs: their words end like those of one."""
    line = Line("screw", "pocket screw", Decimal(count), "each", price=Price(Decimal("2.00"), Decimal(10)))
    assert f"{count} x pocket screw: {said} USD" in flat(buying_text(BuyingList("case", (line,))))


def test_every_price_given_makes_a_plain_total():
    plan = stand()
    prices = {line.item: "1.25" for line in wanted_of(plan).lines}
    sheet = replace(plan.sheets["birch 18"], price="1.25")
    wanted = wanted_of(replace(plan, sheets={sheet.name: sheet}, buying=Buying("EUR", 10, prices)))
    assert not wanted.unpriced
    assert f"Total: {wanted.total} EUR for all {len(wanted.lines)} lines." in buying_text(wanted)
    bare = wanted_of(plan)
    assert f"Total: not known; no price is given for any of the {len(bare.lines)} lines." in buying_text(bare)


def test_what_cannot_be_replaced_stands_before_everything_that_is_bought():
    text = buying_text(wanted_of(shipped("under_bench_case"), ["top (case sheet)"]))
    order = [CARRYING, FIRST, "  - top (case sheet)", "Buy now, for the case",
             "Can wait until the case stands", "Better not before the case stands and is measured", "Total of",
             "Before you buy, measure or read", "What this list assumes", "Not in this list"]
    places = [text.index(words) for words in order]
    assert places == sorted(places)
    assert max(map(len, text.splitlines())) <= 79
    now = text[places[3]:places[4]]
    assert "case sheet, 96 in x 48 in: 74.00 USD" in now
    assert "slides" not in now


def test_cautions_for_the_yard_stand_first_and_go_by_what_is_bought():
    """Common practice, no source. The weight of a sheet: 96 x 48 x 0.704 in of plywood at 400 to 600 kg/m3, which the
    table of weights has for it, is 53.2 l, so 21.3 to 31.9 kg or 47 to 70 lb, over the 50 lb that one lifts."""
    sheets = yard_cautions(wanted_of(shipped("under_bench_case")))
    assert "two-person lift" in sheets[0]
    assert any("cut at the yard" in text for text in sheets)
    assert not any("along each board" in text for text in sheets)
    text = flat(buying_text(wanted_of(shipped("under_bench_case"))))
    assert text.index(CARRYING) < text.index(sheets[-1]) < text.index("Buy now")
    assert "for the case; 47 to 70 lb each, carried by two" in text
    assert "1/2 in by name, for the case; 25 to 37 lb each [ ]" in text
    board = Line("board", "oak, 96 in x 6 in", Decimal(1), "each")
    boards = yard_cautions(BuyingList("case", (board,)))
    assert any("along each board" in text for text in boards)
    assert not any("cut at the yard" in text for text in boards)
    assert not yard_cautions(BuyingList("case", (replace(board, kind="screw"),)))


def test_a_price_that_no_line_asks_for_is_told():
    text = flat(buying_text(wanted_of(replace(stand(), buying=Buying(prices={"shelf paper": "5.00"})))))
    assert 'Prices that were not used - "shelf paper": no line is called so; buying.csv has the names.' in text


def test_a_name_that_is_nearly_right_is_told_the_names_there_are():
    """What a reader wrote: the band without its sheet, and a name with a slip in it."""
    plan = replace(shipped("small_parts_wall_case"), buying=Buying(prices={"edge band": "9", "clear finnish": "30"}))
    text = flat(buying_text(wanted_of(plan)))
    assert '"edge band": no line is called so; perhaps "edge band 0.02 in, for the box sheet" is meant.' in text
    assert '"clear finnish": no line is called so; perhaps "clear finish" is meant.' in text


def test_prices_of_a_project_file_are_read_and_saved():
    text = project_text(shipped("under_bench_case")) + (
        '\n[buying]\ncurrency = "USD"\n[buying.prices]\n"side-mount ball-bearing 20 in" = "14.50"\n'
        '"pan-head screw No. 8 x 1 in" = "9.80 for 100"\n')
    plan = project_from_text(text)
    rows = {row["item"]: row for row in table(wanted_of(plan))}
    assert rows["side-mount ball-bearing 20 in"]["cost"] == "130.50"
    screws = rows["pan-head screw No. 8 x 1 in"]
    assert (screws["price"], screws["price_for"], screws["packs"], screws["cost"]) == ("9.80", "100", "1", "9.80")
    assert project_from_text(project_text(plan)) == plan


@pytest.mark.parametrize("price", ["9.80 for 0", "for 100", "9.80 for", "9.80 each", "9.80 for 10.5", "12 for 50 ft"])
def test_a_price_that_is_none_is_refused_in_one_sentence(price):
    text = project_text(stand()) + f'\n[buying]\n[buying.prices]\n"wood glue" = "{price}"\n'
    with pytest.raises(ProjectFileError, match=r'buying\.prices\."wood glue": a price is a number .* a roll of 100'):
        project_from_text(text)


def test_the_columns_stand_in_the_readme():
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert all(f"`{column}`" in readme for column in COLUMNS)


def test_what_is_sold_whole_says_how_many_of_it_are_paid_for():
    """6.7 qt at 24.95 a quart: seven are bought. Money has two places."""
    quarts = Line("finish", "clear finish", Decimal("6.7"), "qt", price=read_price("24.95"))
    pulls = Line("pull", "pull with one hole", Decimal(5), "each", price=read_price("7,3"))
    text = flat(buying_text(BuyingList("case", (quarts, pulls))))
    assert "6.7 qt of clear finish: 7 x 24.95 per qt = 174.65 USD" in text
    assert "5 x pull with one hole: 5 x 7.30 = 36.50 USD" in text


def test_once_measured_stock_of_the_fronts_waits_for_the_second_reading():
    """What serves fronts alone is bought when the boxes hang; that of the boxes can be bought at once."""
    cabinet = measured("under_bench_case")
    used = [Stocked("front sheet", (3,), 96 * INCH, 48 * INCH), Stocked("box sheet", (2,), 60 * INCH, 60 * INCH)]
    wanted = buying_list(cabinet, used)
    when = {row["item"].split(",")[0]: row["when"] for row in table(wanted) if row["kind"] == "sheet"}
    assert when == {"front sheet": f"when {HANG}", "box sheet": LATER}
    text = " ".join(buying_text(wanted).split())
    assert f"Better not before {HANG} [ ] 1 x front sheet" in text
    assert "For front sheet, 96 in x 48 in: again the opening of each of" in text
