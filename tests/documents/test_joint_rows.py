"""The end of cut_order.csv: the joint cuts that must match, each stop a row, numbered on from the saw cuts."""

import csv
import io
from decimal import Decimal

from shoplib.buying.laid_out import laid_out
from shoplib.documents.cut_order_file import CAUTION, cut_order_csv, joint_rows
from shoplib.documents.sheets_words import sheets_words
from shoplib.model.cabinet import solve
from tests.lists.projects import chest, stand

SAW = {"trim", "rip", "crosscut"}


def rows_of(project):
    found = laid_out(solve(project), 0)
    rows = csv.DictReader(io.StringIO(cut_order_csv(found)))
    return found, [row for row in rows if row["cut"] != CAUTION]


def test_joint_cuts_come_last_and_are_numbered_on():
    found, rows = rows_of(chest())
    kinds = [row["cut"] in SAW for row in rows]
    assert kinds == sorted(kinds, reverse=True) and not all(kinds) and any(kinds)
    assert [int(row["step"]) for row in rows] == list(range(1, len(rows) + 1))
    joints = [row for row in rows if row["cut"] not in SAW]
    assert len(joints) == len(list(joint_rows(found)))
    joints = [row for row in joints if row["setting"]]
    last = max(int(row["setting"]) for row in rows if row["cut"] in SAW)
    assert [int(row["setting"]) for row in joints] == list(range(last + 1, last + 1 + len(joints)))


def test_a_stop_says_what_is_cut_and_where():
    """By hand: a chest of four boxes has a groove of 1/4 in, 1/4 in above the bottom edge, in four boards of each."""
    _, rows = rows_of(chest())
    groove = next(row for row in rows if row["cut"] == "groove")
    assert (groove["cuts"], groove["stage"], groove["sheet"]) == ("16", "2", "box sheet")
    assert groove["fence"] == "the near wall 1/4 in from the bottom edge"
    assert Decimal(groove["fence_mm"]) == Decimal("6.35")
    assert groove["comes_off"] == "0.25 in wide, 1/4 in deep"


def test_mates_that_no_stop_serves_are_told():
    found, rows = rows_of(stand())
    words = " ".join(sheets_words(found, ()).split())
    assert "Joint cuts that must match" in words
    assert "bay 1 shelf 1: near walls 248.5 mm and 260.6 mm from the bottom end" in words
    assert "the stops differ by 12.1 mm" in words
    row = next(row for row in rows if row["piece"] == "mates of bay 1 shelf 1")
    assert (row["setting"], row["cut"]) == ("", "dado")
    assert row["fence"] == "near walls 248.5 mm and 260.6 mm from the bottom end"
    assert row["mind"] == "the stops differ by 12.1 mm"
