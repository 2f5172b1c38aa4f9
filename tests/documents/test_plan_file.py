"""plan.json read back by another program: worked again from the JSON alone."""

import json
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import read_project
from shoplib.measure import MM
from shoplib.model.cabinet import solve

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.fixture(scope="module", params=PROJECTS, ids=lambda path: path.stem)
def planned(request):
    cabinet = solve(read_project(request.param))
    return cabinet, json.loads(plan_text(cabinet, check(cabinet)))


def test_it_has_what_the_format_promises(planned):
    _, plan = planned
    assert (plan["format"], plan["units"]) == (1, "mm")
    promised = "name outside envelope sheets boards joints travel gaps hardware findings"
    assert set(promised.split()) <= set(plan)
    board = "name group stage sheet size designed grain edging origin axes cuts"
    assert all(set(board.split()) <= set(one) for one in plan["boards"])
    assert all({"kind", "enters", "receives", "axis", "depth", "fit", "end_gap"} <= set(j) for j in plan["joints"])
    assert all({"check", "level", "boards", "text"} <= set(finding) for finding in plan["findings"])
    names = [one["name"] for one in plan["boards"]]
    assert len(set(names)) == len(names)


def world_box(board):
    """The board's box in the cabinet, from origin, axes and size alone."""
    low, high = {}, {}
    for axis, size in zip(board["axes"], board["size"], strict=True):
        at = board["origin"]["xyz".index(axis[1])]
        ends = sorted((at, at + size if axis[0] == "+" else at - size))
        low[axis[1]], high[axis[1]] = ends
    return low, high


def test_the_boards_fill_the_outside_box(planned):
    _, plan = planned
    boxes = [world_box(board) for board in plan["boards"]]
    for size, axis in (("width", "x"), ("depth", "y"), ("height", "z")):
        extent = max(high[axis] for _, high in boxes) - min(low[axis] for low, _ in boxes)
        assert extent == pytest.approx(plan["outside"][size], abs=1e-6)
        assert plan["envelope"][size] >= plan["outside"][size] - 1e-6


def test_numbers_are_exact_to_a_millionth_of_a_millimetre(planned):
    cabinet, plan = planned
    for one in plan["boards"]:
        board = cabinet.by_name[one["name"]]
        for mm, ticks in zip(one["size"] + one["origin"], board.size + board.placement.origin, strict=True):
            assert round(mm * MM) == ticks
            assert abs(mm - ticks / MM) < 1e-6


def test_cuts_lie_inside_their_boards(planned):
    _, plan = planned
    for board in plan["boards"]:
        for cut in board["cuts"]:
            if "low" in cut:
                spans = zip(cut["low"], cut["high"], board["size"], strict=True)
                assert all(-1e-6 <= low < high <= size + 1e-6 for low, high, size in spans)
            elif "outline" in cut:
                own = "uvw".index(cut["along"])
                assert 0 <= cut["from"] < cut["to"] <= board["size"][own] + 1e-6
                for side in (0, 1):
                    most = board["size"][(own + 1 + side) % 3] + 1e-6
                    assert all(-1e-6 <= corner[side] <= most for corner in cut["outline"])
            else:
                own = "uvw".index(cut["along"])
                assert cut["centre"][own] in (0, board["size"][own])


def test_rounding_moves_nothing_by_more_than_a_few_steps(planned):
    cabinet, plan = planned
    for board in plan["boards"]:
        for size, designed in zip(board["size"], board["designed"], strict=True):
            assert abs(size - designed) <= 20 * cabinet.style.step / MM


def test_the_same_project_gives_the_same_bytes():
    for path in PROJECTS:
        texts = set()
        for _ in range(2):
            cabinet = solve(read_project(path))
            texts.add(plan_text(cabinet, check(cabinet)))
        assert len(texts) == 1
        assert "\r" not in texts.pop()
