"""sheets.json, read as another program reads it: areas balance, the judge passes all places, the cuts can be made.

No module of the workbook is asked what is right: only the file is read, and the project's plan.json beside it.
"""

import json
from functools import cache
from itertools import pairwise

import pytest

from shoplib.buying.numbering import turns
from shoplib.documents.plan_file import plan_text
from shoplib.documents.sheets_file import sheets_text
from tests.buying.laid import NAMES, laid
from tests.judge.sheets import Bought, Lying, Wanted, faults

EACH = pytest.mark.parametrize("name", NAMES)
TICK = 80_000
"""Ticks in a millimetre: a number of the file is one of them to the nearest double."""


@cache
def read(name):
    return json.loads(sheets_text(laid(name)))


@cache
def plan(name):
    return {board["name"]: board for board in json.loads(plan_text(laid(name).cabinet, ()))["boards"]}


def ticks(mm):
    return round(mm * TICK)


def rect(of):
    return tuple(ticks(of[key]) for key in ("x", "y", "w", "h"))


def area(of):
    return ticks(of["w"]) * ticks(of["h"])


@EACH
def test_format_and_the_names_of_sheets(name):
    file = read(name)
    assert (file["format"], file["units"], file["area_unit"]) == (1, "mm", f"mm2 / {TICK**2}")
    names = [sheet["name"] for sheet in file["sheets"]]
    assert len(set(names)) == len(names)
    assert [name for job in file["jobs"] for name in job["sheets"]] == names
    assert sheets_text(laid(name)) == sheets_text(laid(name))


@EACH
def test_areas_balance_to_the_last_unit(name):
    for sheet in read(name)["sheets"]:
        areas = sheet["areas"]
        assert areas["sheet"] == ticks(sheet["length"]) * ticks(sheet["width"])
        assert areas["parts"] == sum(map(area, sheet["parts"]))
        assert areas["offcuts"] == sum(map(area, sheet["offcuts"]))
        assert areas["sheet"] == areas["parts"] + areas["offcuts"] + areas["kerf"] + areas["trim"]
        ends, edges = ticks(sheet["trim"]["ends"]), ticks(sheet["trim"]["edges"])
        usable = (ticks(sheet["length"]) - 2 * ends) * (ticks(sheet["width"]) - 2 * edges)
        assert areas["trim"] == areas["sheet"] - usable
        assert min(areas.values()) >= 0


@EACH
def test_the_judge_of_coordinates_passes_every_sheet(name):
    for sheet in read(name)["sheets"]:
        wanted, lying = [], []
        for number, part in enumerate(sheet["parts"]):
            x, y, w, h = rect(part)
            length, width = (h, w) if part["turned"] else (w, h)
            board = plan(name).get(part["board"])
            wanted.append(Wanted(length, width, 1, board is not None and board["grain"] == "none"))
            lying.append(Lying(number, x, y, w, h))
        stock = Bought(*(ticks(sheet[key]) for key in ("length", "width")), *(ticks(sheet["trim"][key])
                       for key in ("ends", "edges")), 1)  # fmt: skip
        assert faults(wanted, [stock], ticks(sheet["kerf"]), [(0, lying)]) == []


@EACH
def test_parts_have_the_size_at_the_saw_that_the_plan_gives(name):
    seen = set()
    for sheet in read(name)["sheets"]:
        for part in sheet["parts"]:
            board = plan(name).get(part["board"])
            seen.add(part["board"])
            if sheet["sheet"] == "ash":  # solid wood is cut rough, and strips are ripped from it
                continue
            size = [part["h"], part["w"]] if part["turned"] else [part["w"], part["h"]]
            assert size == board["cut_size"][:2] and board["sheet"] == sheet["sheet"]
            assert board["stage"] in sheet["stages"]
    assert set(plan(name)) <= seen


@EACH
def test_parts_offcuts_and_trim_lie_clear_of_one_another(name):
    for sheet in read(name)["sheets"]:
        pieces = [rect(one) for one in (*sheet["parts"], *sheet["offcuts"])]
        for n, (x, y, w, h) in enumerate(pieces):
            assert w > 0 and h > 0
            for a, b, c, d in pieces[:n]:
                assert x >= a + c or a >= x + w or y >= b + d or b >= y + h


@EACH
def test_the_cuts_can_be_made_in_their_order_and_leave_parts_and_offcuts(name):
    """Sawn from the file alone: each cut finds its piece, its kerf is the blade's, and in the end all is there."""
    file = read(name)
    stock = {sheet["name"]: sheet for sheet in file["sheets"]}
    there = {
        called: {(0, 0, ticks(sheet["length"]), ticks(sheet["width"]))} for called, sheet in stock.items()
    }
    for step in file["order"]:
        pieces, kerf = there[step["sheet"]], ticks(stock[step["sheet"]]["kerf"])
        assert rect(step["piece"]) == rect(step["cuts"][0]["piece"])
        for cut in step["cuts"]:
            whole, off = rect(cut["piece"]), rect(cut["off"])
            left = rect(cut["left"]) if cut["left"] else None
            pieces.remove(whole)
            pieces.add(off)
            across = 0 if off[3] == whole[3] and off[2] != whole[2] else 1
            assert off[2 + across] == ticks(step["fence"])
            assert off[3 - across] == whole[3 - across]  # from edge to edge
            if left:
                pieces.add(left)
                assert left[3 - across] == whole[3 - across]
                assert whole[2 + across] == off[2 + across] + left[2 + across] + kerf
            elif step["kind"] != "trim":
                assert 0 < whole[2 + across] - off[2 + across] <= kerf
    for called, sheet in stock.items():
        assert there[called] == {rect(one) for one in (*sheet["parts"], *sheet["offcuts"])}


@EACH
def test_steps_and_settings_are_numbered_on(name):
    """Between the stages stand the joint cuts of cut_order.csv, which have numbers too."""
    order = read(name)["order"]
    stages = {turn.steps + step.number: turn.number for turn in turns(laid(name)) for step in turn.cuts}
    assert order[0]["step"] == order[0]["setting"] == 1
    for one, other in pairwise(order):
        if stages[one["step"]] == stages[other["step"]]:
            assert other["step"] - one["step"] == 1 and other["setting"] - one["setting"] in (0, 1)
        else:
            assert other["step"] > one["step"] and other["setting"] > one["setting"]
        if one["setting"] == other["setting"]:
            assert (one["set_by"], one["fence"]) == (other["set_by"], other["fence"])
            assert (one["kind"] == "trim") == (other["kind"] == "trim")


@EACH
def test_the_cost_of_a_job_is_that_of_its_stock_and_no_less_than_its_bound(name):
    file = read(name)
    project = laid(name).cabinet.project
    by_name = {sheet["name"]: sheet for sheet in file["sheets"]}
    for job in file["jobs"]:
        assert job["cost"] >= job["bound"] >= 0
        assert job["cost_in"] == f"hundredths of {project.buying.currency}"
        sold = project.sheets[job["sheet"]]
        prices = {(ticks_of.length, ticks_of.width): ticks_of.price for ticks_of in (sold, *sold.sizes)}
        bought = [by_name[called] for called in job["sheets"] if by_name[called]["bought"]]
        paid = sum(float(prices[ticks(one["length"]), ticks(one["width"])]) for one in bought)
        assert job["cost"] == round(100 * paid)
