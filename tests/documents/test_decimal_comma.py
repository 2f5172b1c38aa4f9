"""The cut list for spreadsheets with a decimal comma says what the other says, cell by cell.

The two are held together by the rules of CSV (RFC 4180) and by the reader of typed lists, which shares no code with the
writer.
"""

import csv
import io
from decimal import Decimal

import pytest

from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.decimal_comma import with_decimal_comma
from shoplib.documents.examples import cabinet_from
from shoplib.documents.hand_list import read_hand_list

EXAMPLES = [
    "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "under_bench_case", "wheel_wall_drawers",
]


@pytest.fixture(scope="module", params=EXAMPLES)
def tables(request):
    table = cut_list_csv(cabinet_from(request.param))
    return table, with_decimal_comma(table)


def test_numbers_are_the_same_and_have_a_comma(tables):
    point, comma = tables
    rows = list(csv.DictReader(io.StringIO(point)))
    others = list(csv.DictReader(io.StringIO(comma.decode("utf-8-sig")), delimiter=";"))
    assert len(rows) == len(others) > 5
    decimals = 0
    for row, other in zip(rows, others, strict=True):
        for column in (name for name in row if name.endswith("_mm")):
            assert "." not in other[column]
            assert Decimal(other[column].replace(",", ".")) == Decimal(row[column])
            decimals += "," in other[column]
        assert other["names"] == row["names"] and other["count"] == row["count"]
    assert decimals > 5


def test_both_are_read_back_as_one_list(tables, tmp_path):
    point, comma = tables
    (tmp_path / "point.csv").write_bytes(point.encode())
    (tmp_path / "comma.csv").write_bytes(comma)
    read, other = read_hand_list(tmp_path / "point.csv"), read_hand_list(tmp_path / "comma.csv")
    assert read.unreadable == other.unreadable == ()
    assert [_sizes(row) for row in read.rows] == [_sizes(row) for row in other.rows]


def _sizes(row):
    sizes = (row.length, row.width, row.thickness, row.finished_length, row.finished_width)
    return row.names, row.count, [[(one.column, one.ticks) for one in said] for said in sizes]


def test_a_name_keeps_what_is_in_it():
    comma = with_decimal_comma("names,sheet,length_mm,cuts\nfront 1.1,birch 6.5 mm,12.5,dado 6.5 mm deep\n")
    _, row = csv.reader(io.StringIO(comma.decode("utf-8-sig")), delimiter=";")
    assert row == ["front 1.1", "birch 6.5 mm", "12,5", "dado 6,5 mm deep"]
