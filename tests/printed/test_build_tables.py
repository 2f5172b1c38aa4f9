"""The tables of the build order, read back and held against the boards, joints and gaps of plan.json."""

import re
from functools import cache
from itertools import combinations

import pytest

from shoplib.building.clamps import clamps_for
from shoplib.building.glue_faces import glue_faces
from shoplib.building.order import build_order
from shoplib.checks import check
from shoplib.documents.plan_file import plan_dict
from shoplib.measure import to_mm
from shoplib.model.cabinet import solve
from shoplib.printed.build.pages import build_pages
from shoplib.printed.typeset.blocks import Table
from shoplib.words.naming import and_list, boards_in_short, in_short
from tests.building.cases import SHIPPED, shipped
from tests.printed.lengths import corners, mm
from tests.printed.test_build_pages import flat, steps_of, words
from tests.random_projects import project

EVERY = pytest.mark.parametrize("name", [*SHIPPED, 0, 6, 13])
FROM = {"+x": "from the left", "-x": "from the right", "+y": "from the front", "-y": "from the back",
        "+z": "from below", "-z": "from above"}
"""A board that moves to the right comes from the left."""
JOINT = {"butt": "against", "finger": "fingers"}


@cache
def told(name):
    """Cabinet, plan.json, and each step with its blocks; a number is the seed of a random project."""
    cabinet = solve(project(name)) if isinstance(name, int) else shipped(name)
    findings = check(cabinet)
    blocks = build_pages(cabinet, findings, ())
    return cabinet, plan_dict(cabinet, findings), blocks, list(zip(build_order(cabinet), steps_of(blocks), strict=True))


def tables(blocks, *head):
    return [block for block in flat(blocks) if isinstance(block, Table) and block.head[:len(head)] == head]


def close(text, exact, cabinet):
    """Up to half a step of the tape, or what a caliper does not show."""
    return abs(float(mm(text, cabinet.style.unit)) - exact) <= 0.06 + to_mm(cabinet.style.step) / 2


def named(cabinet, names):
    return boards_in_short(cabinet.by_name[name] for name in names)


@EVERY
def test_the_glance_names_every_board_of_each_step(name):
    cabinet, _, blocks, steps = told(name)
    [glance] = tables(blocks, "step", "what is done")
    assert [row[2] for row in glance.rows] == [named(cabinet, step.boards) for step, _ in steps]


@EVERY
def test_settings_are_the_cuts_of_the_plan(name):
    cabinet, plan, blocks, _ = told(name)
    found = []
    for board in (board for board in plan["boards"] if board["stage"] == 1):
        for cut in (cut for cut in board["cuts"] if cut["kind"] in ("dado", "rabbet", "groove")):
            u, v, deep = (high - low for low, high in zip(cut["low"], cut["high"], strict=True))
            found.append((cut["kind"], min(u, v), deep, board["name"]))
    read = [row for table in tables(blocks, "cut", "wide") for row in table.rows]
    assert sum(int(row[3]) for row in read) == len(found)
    for kind, wide, deep in {(row[0].split(",")[0], row[1], row[2]) for row in read}:
        rows = [row for row in read if (row[0].split(",")[0], *row[1:3]) == (kind, wide, deep)]
        alike = [cut for cut in found if cut[0] == kind and abs(float(mm(wide, cabinet.style.unit)) - cut[1]) < 0.06
                 and abs(float(mm(deep, cabinet.style.unit)) - cut[2]) < 0.06]
        assert sum(int(row[3]) for row in rows) == len(alike)
        if len(rows) == 1:
            assert rows[0][4] == named(cabinet, [cut[3] for cut in alike])


@EVERY
def test_boards_go_in_from_where_they_come_and_into_their_joints(name):
    cabinet, plan, _, steps = told(name)
    for step, blocks in steps:
        goes = tables(blocks, "", "board", "comes")
        entries = list(step.boxes.entries) if step.boxes else list(step.go.entries) if step.go else []
        group = cabinet.by_name[entries[0].board].group if entries else ""
        assert len(goes) == bool(entries)
        for row in goes[0].rows if goes else ():
            count = next(k for k in range(1, len(entries) + 1) if row[1] == short(entries[:k], group))
            for entry in entries[:count]:
                assert row[2] == (FROM[entry.way] if entry.way else "" if entry.onto else "lies ready")
                kinds = {}
                for joint in plan["joints"]:
                    if joint["enters"] == entry.board and joint["receives"] in entry.onto:
                        kinds.setdefault((joint["kind"], "into"), []).append(joint["receives"])
                    elif joint["receives"] == entry.board and joint["enters"] in entry.onto:
                        way = "into" if joint["kind"] in ("butt", "finger", "pocket screws") else "takes"
                        kinds.setdefault((joint["kind"], way), []).append(joint["enters"])
                pieces = row[3].replace("its dado takes the tongue", "tongue")
                for (kind, _), others in kinds.items():
                    mine = and_list(in_short(other.removeprefix(f"{group} ") for other in others))
                    assert any(JOINT.get(kind, kind) in part and mine in part for part in pieces.split("; ")), row
                assert bool(kinds) == bool(row[3])
            del entries[:count]
        assert not entries


def short(entries, group):
    return and_list(in_short(entry.board.removeprefix(f"{group} ") for entry in entries))


@EVERY
def test_clamps_are_told_as_they_are_counted(name):
    """How many and how far: tests/building/test_clamps.py, by hand."""
    cabinet, _, _, steps = told(name)
    goes = [step.go for step, _ in steps if step.go]
    for step, blocks in steps:
        here = goes if step.kind == "dry run" else [step.go] if step.go else step.boxes.goes if step.boxes else []
        several = [clamps for go in here for clamps in clamps_for(go, cabinet)]
        rows = [dict(zip(table.head, row, strict=True))
                for table in tables(blocks, "for", "clamps") for row in table.rows]
        assert [int(row["clamps"]) for row in rows] == [clamps.count for clamps in several]
        for row, clamps in zip(rows, several, strict=True):
            group = cabinet.by_name[clamps.over[0]].group
            assert row["over the joints of"] == and_list(in_short(o.removeprefix(f"{group} ") for o in clamps.over))
            assert row["press"] == {"x": "from side to side", "y": "from front to back",
                                    "z": "from top to bottom"}[clamps.axis]
            for column, ticks in (("over", clamps.across), ("reach", clamps.reach)):
                over = float(mm(row[column], cabinet.style.unit)) - to_mm(ticks)
                assert -0.06 <= over <= to_mm(cabinet.style.step) + 0.06, (row, column)


@EVERY
def test_strips_to_mask_are_those_of_the_glue_faces(name):
    """Every board has its strips; rows that boards share name them all."""
    cabinet, _, blocks, _ = told(name)
    want = {(face.board, face.strip) for face in glue_faces(cabinet)}
    have = set()
    for row in (row for table in tables(blocks, "board", "glue face") for row in table.rows):
        strips = {strip for _, strip in want if (strip == 0 if row[2] == "all of it" else
                                                 strip and close(row[2], to_mm(strip), cabinet))}
        assert strips, row
        names = [one for one in dict.fromkeys(face.board for face in glue_faces(cabinet))
                 if any((one, strip) in want for strip in strips)]
        several = next(chosen for count in range(1, len(names) + 1) for chosen in combinations(names, count)
                       if named(cabinet, chosen) == row[0])
        have |= {(one, strip) for one in several for strip in strips if (one, strip) in want}
    assert have == want


@EVERY
def test_spacers_are_the_heights_and_gaps_of_the_plan(name):
    cabinet, plan, _, steps = told(name)
    boards = {board["name"]: corners(board) for board in plan["boards"]}
    between = [boards[b["name"]] for b in plan["boards"] if b["role"] in ("strip", "fixed shelf")]
    floor = next((boards[b["name"]][1][2] for b in plan["boards"] if b["role"] == "bottom"), 0)
    heights = [one["height"] for one in plan["spacers"]] + [
        boards[b["name"]][0][2] - floor for b in plan["boards"] if b["role"] in ("runner", "kicker")]
    gaps = []
    for gap in plan["gaps"]:
        (low, under), (above, high) = (boards[one] for one in gap["between"])
        filled = sorted(
            ((one[2], other[2]) for one, other in between if gap["along"] == "z" and under[2] - 0.01 <= one[2]
             and other[2] <= above[2] + 0.01 and all(one[k] < high[k] and above[k] < other[k]
                                                     and one[k] < under[k] and low[k] < other[k] for k in (0, 1))))
        ends = [under[2], *(edge for pair in filled for edge in pair), above[2]]
        gaps += [b - a for a, b in zip(ends[::2], ends[1::2], strict=True)] if filled else [gap["size"]]
    for kind, sizes in (("runs", heights), ("fronts", gaps)):
        sizes = [size for size in sizes if size > 0.01]
        rows = [row[0] for step, blocks in steps if step.kind == kind for table in tables(blocks, "size", "how many")
                for row in table.rows]
        assert all(any(close(text, size, cabinet) for size in sizes) for text in rows)
        assert all(any(close(text, size, cabinet) for text in rows) for size in sizes)


@EVERY
def test_minutes_brads_and_stages(name):
    """A minute a joint and two for the clamps; three times what a brad passes; hands two lengths off: common practice,
    no source. Lengths of brads: from memory."""
    cabinet, plan, _, steps = told(name)
    boards = {board["name"]: board for board in plan["boards"]}
    unit = cabinet.style.unit
    sold = [25.4 * n / 8 for n in (4, 5, 6, 8, 10, 12, 14, 16)] if unit == "in" else [12, *range(15, 55, 5)]
    for step, blocks in steps:
        text = words(blocks)
        goes = [step.go] if step.go else step.boxes.goes if step.boxes else []
        if goes:
            count = sum(len(go.joints) for go in goes)
            assert re.search(r"(\d+) joints? (?:to glue|a box): about (\d+) of", text).groups() == (
                str(count), str(count + 2))
        if step.measures:
            again = ("sheets and boards of stages 2 and 3" in text, "print stage 3 again" in text)
            assert again == (step.measures == 2, step.measures == 3)
        if step.boxes:
            assert ("runs under the back" in text) == any(under_back(boards, group) for group in step.boxes.groups)
        for one in step.boards if step.kind == "back" else ():
            thick = boards[one]["size"][2]
            strips = [j["depth"] - j["end_gap"] if j["depth"] else boards[j["receives"]]["size"][2]
                      for j in plan["joints"] if j["enters"] == one and j["kind"] != "groove"]
            length = next((size for size in sold if size >= 3 * thick), sold[-1])
            mine = re.search(rf"{one.capitalize()}: brads (.+?) long.*?Set them (.+?) from", text)
            away = re.search(r"two brad lengths away, (.+?), never", text)
            assert close(mine[1], length, cabinet) and close(away[1], 2 * length, cabinet)
            assert close(mine[2], min(strips) / 2, cabinet)


def under_back(boards, group):
    """Whether a box back stands on the bottom of its box, seen from the boards alone."""
    parts = {board["role"]: corners(board) for board in boards.values() if board["group"] == group}
    (low, high), (foot, head) = parts["box bottom"], parts["box back"]
    return abs(foot[2] - high[2]) < 1 and low[1] < head[1] and foot[1] < high[1]
