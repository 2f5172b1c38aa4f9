"""The joint cuts of cut_order.csv that must match, each stop a row, numbered on from the saw cuts of their stage."""

import csv
import io
from decimal import Decimal

import pytest

from shoplib.buying.laid_out import laid_out
from shoplib.documents.cut_order_file import CAUTION, cut_order_csv
from shoplib.documents.sheets_words import sheets_words
from shoplib.lists.dado_stops import dado_stops, two_stops
from shoplib.model.cabinet import solve
from tests.lists.projects import chest, stand

SAW = {"trim", "rip", "crosscut"}


def rows_of(project):
    found = laid_out(solve(project), 0)
    rows = csv.DictReader(io.StringIO(cut_order_csv(found)))
    return found, [row for row in rows if row["cut"] != CAUTION]


def stages(row):
    return [int(stage) for stage in row["stage"].split(", ")]


@pytest.mark.parametrize("project", [chest, stand])
def test_joint_cuts_come_after_the_saw_cuts_of_their_stage_and_before_those_of_the_next(project):
    """Boards of the case are jointed before the case stands, and it is measured before the next stage is cut."""
    found, rows = rows_of(project())
    assert [int(row["step"]) for row in rows] == list(range(1, len(rows) + 1))
    settings = [int(row["setting"]) for row in rows if row["setting"]]
    assert settings == sorted(settings) and set(settings) == set(range(1, settings[-1] + 1))
    joints = [row for row in rows if row["cut"] not in SAW]
    count = len(dado_stops(found.cabinet)), len(two_stops(found.cabinet))
    assert (len(joints) - sum(not row["setting"] for row in joints), len(joints)) == (count[0], sum(count))
    begun = [min(stages(row)) if row["cut"] in SAW else max(stages(row)) for row in rows]
    assert begun == sorted(begun)
    where = [n for n, row in enumerate(rows) if row["cut"] not in SAW]
    assert where and any(row["cut"] in SAW for row in rows[where[0]:]) == (project is chest or max(begun) > 1)
    for stage in set(begun):
        kinds = [row["cut"] in SAW for row, one in zip(rows, begun, strict=True) if one == stage]
        assert kinds == sorted(kinds, reverse=True)


def test_what_waits_until_the_case_is_measured_says_so_in_each_row():
    """A case with boxes: stage 1 is cut as planned, nothing of the others before the case stands and is measured."""
    _, rows = rows_of(chest())
    assert {(stage, row["not_before"]) for row in rows for stage in stages(row)} >= {
        (1, ""), (2, "the case stands and is measured"),
    }  # fmt: skip
    assert all(bool(row["not_before"]) == (1 not in stages(row)) for row in rows)


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
