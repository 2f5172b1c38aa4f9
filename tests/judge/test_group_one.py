"""Pocket screws, drawer-front joints and fingers in project files: sound as planned, and each seeded fault is caught.

The judge learns the joints from plan.json alone; the project's own dry-fit must say stop to the same boards. Made-up
sizes, no source.
"""

import json
import random
from copy import deepcopy
from functools import cache

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import project_from_text
from shoplib.model.cabinet import solve
from tests.judge.faults import KINDS, long_slides
from tests.judge.judge import judge
from tests.judge.mutate import board

PLAN = """
format = 1
name = "Drawers for small parts"
show = {{ unit = "{unit}", step = "{step}" }}
size = {{ width = "600 mm", height = "480 mm", depth = "480 mm" }}
carcass = {{ sheet = "ply", corner = {{ kind = "{corner}" }}, shelf = {{ kind = "pocket screws" }} }}

[sheets.ply]
kind = "plywood"
nominal = "18 mm"
readings = ["17.8 mm", "18.1 mm"]

[sheets.box]
kind = "plywood"
nominal = "12 mm"
readings = ["11.9 mm", "12.1 mm"]

[sheets.thin]
kind = "plywood"
nominal = "6 mm"
readings = ["5.9 mm"]

[[bays]]
kind = "drawers"

[bays.drawers]
count = 2
slide = "side-mount ball-bearing, metric lengths"
box_sheet = "{box}"
bottom_sheet = "thin"
bottom_fit = "0.1 mm"
between = "strip"
{drawers}

[[bays]]
kind = "shelves"
shelves = {{ fixed = 1 }}
"""
BOXES = {
    "drawer lock": 'corner = { kind = "drawer lock", fit = "0.1 mm", end_gap = "0.5 mm" }',
    "finger": 'corner = { kind = "finger", fit = "0.1 mm", finger = "8 mm" }',
    "usual finger": 'corner = { kind = "finger" }\nbottom = "under back"',
    "dadoed back": 'back_corner = { kind = "dado", depth = "5 mm", stop = "10 mm" }\nbehind_back = "15 mm"',
    "lock and dado": 'corner = { kind = "drawer lock" }\nback_corner = { kind = "dado" }\nbehind_back = "15 mm"',
    "tongues": 'corner = { kind = "tongue", depth = "6 mm" }',
    "pocket screws": 'corner = { kind = "pocket screws" }',
}
STYLES = {"mm": "0.5 mm", "in": "1/32 in"}


@cache
def cabinet_of(box, corner="pocket screws", unit="mm"):
    sheet = "ply" if box == "pocket screws" else "box"
    text = PLAN.format(unit=unit, step=STYLES[unit], corner=corner, drawers=BOXES[box], box=sheet)
    return solve(project_from_text(text))


def plan_of(*what):
    return json.loads(plan_text(cabinet_of(*what), ()))


@pytest.mark.parametrize(("unit", "corner"), [("mm", "pocket screws"), ("in", "finger"), ("mm", "rabbet")])
@pytest.mark.parametrize("box", BOXES)
def test_cases_and_drawers_of_each_joint_are_sound(box, corner, unit):
    cabinet = cabinet_of(box, corner, unit)
    findings = check(cabinet)
    assert [finding.text for finding in findings if finding.level == "stop"] == []
    assert judge(json.loads(plan_text(cabinet, findings))) == []


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind is not long_slides], ids=lambda kind: kind.__name__)
@pytest.mark.parametrize("box", BOXES)
def test_every_general_fault_in_them_is_caught(box, kind, count):
    """A sample of what can be spoiled in each; a fault that makes the board another board that also fits is none."""
    plan = plan_of(box, "finger" if "finger" in box else "rabbet")
    drawn = random.Random(f"{box} {kind.__name__}").sample(faults := kind(plan), min(count(2, 3), len(faults)))
    unseen = []
    for what, name, spoil in drawn:
        spoiled = deepcopy(plan)
        spoil(spoiled)
        if not any(name in fault for fault in judge(spoiled)):
            unseen.append(f"{name}: {what}")
    assert unseen == []


def spoiled(plan, name, change):
    plan = deepcopy(plan)
    change(board(plan, name))
    return judge(plan)


def cuts_of(target, kind):
    found = [cut for cut in target["cuts"] if cut["kind"] == kind]
    assert found, f"{target['name']} has no {kind}"
    return found


FRONT, SIDE = "bay 1 drawer 1 box front", "bay 1 drawer 1 left box side"


@pytest.mark.parametrize("name", [FRONT, SIDE])
@pytest.mark.parametrize(("own", "end"), [(0, "high"), (1, "low"), (1, "high")])
@pytest.mark.parametrize("by", [-0.5, 0.5])
def test_a_socket_half_a_millimetre_off_is_caught(name, own, end, by):
    """Along the corner, or in its depth: too narrow, too wide, too shallow, too deep."""

    def change(target):
        socket = cuts_of(target, "socket")[1]
        socket[end][own] += by

    assert any(name in fault for fault in spoiled(plan_of("finger"), name, change))


@pytest.mark.parametrize("name", [FRONT, SIDE])
def test_a_socket_that_was_forgotten_is_caught(name):
    faults = spoiled(plan_of("finger"), name, lambda target: target["cuts"].remove(cuts_of(target, "socket")[2]))
    assert any(name in fault for fault in faults)


@pytest.mark.parametrize(
    ("name", "kind", "own", "end", "by"),
    [
        (FRONT, "groove", 2, "low", 0.5),  # the tongue thicker than the dado
        (FRONT, "groove", 2, "high", -0.5),  # the lip thicker: the side does not go home
        (FRONT, "groove", 2, "high", 0.5),  # the lip thinner: the side stands off it
        (FRONT, "groove", 0, "high", 0.5),  # at the left end: deeper than the side is thick
        (FRONT, "rabbet", 0, "high", -0.5),  # the tongue longer than the dado is deep
        (FRONT, "rabbet", 0, "high", 0.5),  # the tongue shorter
        (SIDE, "dado", 0, "low", 0.5),
        (SIDE, "dado", 0, "low", -0.5),
        (SIDE, "dado", 2, "low", 0.6),
        (SIDE, "dado", 2, "low", -0.6),
    ],
)
def test_a_drawer_front_joint_that_is_off_is_caught(name, kind, own, end, by):
    def change(target):
        cut = next(cut for cut in cuts_of(target, kind) if "bottom" not in cut["for"])
        assert 0 < cut[end][own] < target["size"][own], "nothing is moved"
        cut[end][own] += by

    assert any(name in fault for fault in spoiled(plan_of("drawer lock"), name, change))


def test_a_pocket_that_was_forgotten_is_caught():
    faults = spoiled(plan_of("tongues"), "bottom", lambda target: target["cuts"].remove(cuts_of(target, "pocket")[0]))
    assert any("bottom" in fault for fault in faults)


@pytest.mark.parametrize("longer", [10, 20])
def test_a_pocket_screw_that_comes_out_is_caught(longer):
    plan = plan_of("tongues")
    fitting = next(fitting for fitting in plan["hardware"] if fitting["what"] == "pocket screws")
    fitting["screws"][0]["length"] += longer
    assert any("comes out" in fault and fitting["on"] in fault for fault in judge(plan))


def test_screws_of_pockets_are_counted():
    plan = plan_of("tongues")
    fitting = next(fitting for fitting in plan["hardware"] if fitting["what"] == "pocket screws")
    fitting["screws"][0]["count"] += 1
    assert any("screws for" in fault for fault in judge(plan))
