"""Tipping by moments: worked by hand, and against the solids of plan.json weighed by manifold3d."""

import json
import re
from dataclasses import replace
from math import cos, radians, sin, tan
from pathlib import Path

import numpy as np
import pytest

from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, MM, MM_STYLE, read_length, ureg
from shoplib.measure.quantity import read_quantity
from shoplib.model.cabinet import solve
from shoplib.model.laden import drawer_groups, filled, in_use, room_in, stand_of
from shoplib.model.tip_conditions import LEANT_ON, ONE, conditions, in_scope, middle_of_rail, wall_pull
from shoplib.model.tipping import Push, stability
from shoplib.model.weight import Weight, together
from shoplib.tables.loads import loads
from tests.judge.solids import Body

FILES = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
SHIPPED = {path.stem: solve(read_project(path)) for path in FILES}
PLYWOOD = [name for name, cabinet in SHIPPED.items() if {one.kind for one in cabinet.sheets.values()} == {"plywood"}]


def at(newton, y, z=0, low=None):
    high = ureg.Quantity(newton, "newton")
    return Weight("it", high if low is None else ureg.Quantity(low, "newton"), high, (0, y * MM, z * MM))


def moments(found):
    return tuple(round(m.to("newton * meter").magnitude, 4) for m in (found.holding, found.tipping))


def test_by_hand():
    """A case of 300 N, its middle 250 mm behind its front edge, stands on a toe 50 mm behind it: 300 x 0.2 = 60 N m.
    Two drawers of 100 N each, middles 150 mm before the edge, so 200 before the line: 2 x 100 x 0.2 = 40 N m. It
    stands, 1.5 times over. 60 lb = 266.9 N on the front of one, 350 mm before the edge: 266.9 x 0.4 = 106.8 more.
    """
    case = [at(300, 250), at(100, -150), at(100, -150)]
    found = stability(case, 50 * MM, 0, MM_STYLE)
    assert moments(found) == (60, 40) and not found.tips and found.times == pytest.approx(1.5)
    leant = stability([*case, at(266.9, -350)], 50 * MM, 0, MM_STYLE)
    assert moments(leant) == (60, pytest.approx(146.76)) and leant.tips
    assert leant.pull_to_hold(800 * MM).to("newton").magnitude == pytest.approx((146.76 - 60) / 0.8, rel=1e-4)
    assert found.pull_to_hold(800 * MM).magnitude == 0


def test_a_range_counts_on_the_safe_side():
    """What holds counts with its least, what tips with its most."""
    found = stability([at(200, 100, low=150), at(200, -100, low=150)], 0, 0, MM_STYLE)
    assert moments(found) == (15, 20)


def test_a_pull_at_the_top():
    """44.4 N (10 lb) at 900 mm: 39.96 N m."""
    found = stability([at(300, 250)], 0, 0, MM_STYLE, pushes=[Push("pull", 44.4 * ureg.newton, 900 * MM)])
    assert moments(found) == (75, pytest.approx(39.96))
    assert found.working[1] == "pull: 4.5 kg x 900 mm over the floor = 40.0 N m, tips"


def test_leaning_forward():
    """10 mm under the rear, 400 mm behind the line: 1.4321 degrees. A middle 250 mm behind and 600 mm up comes to
    250 cos - 600 sin = 249.92 - 15.00 = 234.93 mm."""
    found = stability([at(1000, 250, 600)], 0, 0, MM_STYLE, raised=10 * MM, over=400 * MM)
    lean = radians(1.43210)
    assert tan(lean) == pytest.approx(10 / 400, rel=1e-4)
    assert moments(found)[0] == pytest.approx(250 * cos(lean) - 600 * sin(lean), abs=0.01)
    assert moments(found)[0] == pytest.approx(234.92, abs=0.02)


def centre_and_volume(solid):
    """Volume and centre of mass of a manifold3d solid, from the tetrahedra over its triangles."""
    mesh = solid.to_mesh()
    a, b, c = (np.asarray(mesh.vert_properties)[:, :3].astype(float)[mesh.tri_verts[:, k]] for k in range(3))
    six = np.einsum("ij,ij->i", a, np.cross(b, c))
    volume = six.sum() / 6
    return volume, (six[:, None] * (a + b + c) / 4).sum(axis=0) / 6 / volume


@pytest.mark.parametrize("name", PLYWOOD)
def test_moments_of_the_solids_of_the_plan(name):
    """The boards of plan.json as solids, weighed with the densities of the tables written here, all drawers open.

    Plywood 0.4 to 0.6 (Table 12-1, read): a group behind the line counts with the least, before it with the most.
    """
    cabinet = SHIPPED[name]
    plan = json.loads(plan_text(cabinet, ()))
    run = {travel["group"]: travel["vector"] for travel in plan["travel"]}
    stand = stand_of(cabinet)
    groups = {}
    for board in plan["boards"]:
        body = Body(board)
        volume, own = centre_and_volume(body.own_wood)
        centre = body.to_world([own])[0] + np.asarray(run.get(board["group"], (0, 0, 0)))
        weight, moment = groups.get(board["group"], (0.0, np.zeros(3)))
        groups[board["group"]] = (weight + volume, moment + volume * centre)
    holding = tipping = 0.0
    for volume, moment in groups.values():
        arm = moment[1] / volume - stand.edge / MM
        force = volume * 1e-6 * 9.80665 * (0.4 if arm >= 0 else 0.6)
        holding += force * arm / 1000 if arm >= 0 else 0
        tipping += -force * arm / 1000 if arm < 0 else 0
    found = stability(in_use(cabinet, None, None), stand.edge, stand.floor, cabinet.style)
    assert found.holding.to("newton * meter").magnitude == pytest.approx(holding, rel=1e-4)
    assert found.tipping.to("newton * meter").magnitude == pytest.approx(tipping, rel=1e-4)


@pytest.mark.parametrize("name", SHIPPED)
def test_weight_of_the_solids_of_the_plan(name):
    cabinet = SHIPPED[name]
    plan = json.loads(plan_text(cabinet, ()))
    low, high = together(in_use(cabinet))
    for end, weighed in enumerate((low, high)):
        mass = sum(Body(board).own_wood.volume() * 1e-6 * _density(board["sheet"])[end] for board in plan["boards"])
        assert weighed.to("newton").magnitude == pytest.approx(mass * 9.80665, rel=1e-6)


def _density(sheet):
    """Least and most in kg per litre: white ash 0.60 and any wood 0.32 to 0.72 by its dry wood (Table 5-3), and 12 %
    of water; plywood 0.4 to 0.6 (Table 12-1, read)."""
    if sheet == "ash":
        return (0.60 * 1.12,) * 2
    return (0.32 * 1.12, 0.72 * 1.12) if sheet.startswith("strip for") else (0.4, 0.6)


def test_where_the_shipped_cases_stand():
    """On a 3 in toe space at its rear edge; on swivel casters at the rear of the front ones; else on the front edge."""
    edges = {name: stand_of(cabinet).edge for name, cabinet in SHIPPED.items()}
    assert edges["under_bench_case"] == read_length("3 in") and edges["small_parts_wall_case"] == 0
    stand = SHIPPED["rolling_stand"]
    wheels = [piece.box for piece in stand.hardware if piece.what == "caster"]
    assert edges["rolling_stand"] == min(wheels, key=lambda box: box.low[1]).high[1] > 0
    assert stand_of(stand).floor == -100 * MM


def test_what_lies_in_a_drawer_goes_out_with_it():
    cabinet = SHIPPED["rolling_stand"]
    group = drawer_groups(cabinet)[0]
    load = read_quantity("75 kg/m2")
    shut, out = (in_use(cabinet, load, opened) for opened in ((), [group]))
    run = next(travel.vector for travel in cabinet.travel if travel.group == group)
    moved = [(a.of, b.middle[1] - a.middle[1]) for a, b in zip(shut, out, strict=True) if a.middle != b.middle]
    assert moved == [(group, run[1]), (f"what lies in {group}", run[1])]
    wide, deep, _ = (size / MM / 1000 for size in room_in(cabinet, group).size)
    assert filled(room_in(cabinet, group), load).to("newton").magnitude == pytest.approx(wide * deep * 75 * 9.80665)


def test_conditions_grow_harder_and_the_leaning_weight_is_at_the_front():
    found = {each.name: each.found for each in conditions(SHIPPED["small_parts_wall_case"])}
    assert list(found) == [ONE, "empty", "filled", "leant on", "pulled"]
    assert found[ONE].times > found["filled"].times > found["leant on"].times
    leaning = found[LEANT_ON].working[-1]
    assert leaning.startswith("weight on an open drawer: 60 lb x ") and leaning.endswith(", tips")


def test_the_weight_leans_on_the_drawer_that_reaches_out_farthest():
    """One drawer of twelve comes out 2 in farther, or 2 in less far, than the others: by hand, the weight goes 2 in
    farther out, or stays where it was. The block under the rear leans the case by less than 3 degrees: 2 in stay 2.0.
    """
    cabinet = SHIPPED["small_parts_wall_case"]

    def arm(more, group="bay 2 drawer 1"):
        travel = tuple(replace(each, vector=(0, each.vector[1] - more, 0)) if each.group == group else each
                       for each in cabinet.travel)  # fmt: skip
        found = {each.name: each.found for each in conditions(replace(cabinet, travel=travel))}
        return float(re.fullmatch(r"weight .*: 60 lb x ([\d.]+) in before it .*", found[LEANT_ON].working[-1])[1])

    assert arm(2 * INCH) == pytest.approx(arm(0) + 2, abs=0.11)  # told to a tenth of an inch
    assert arm(-2 * INCH) == arm(0)


def test_the_wall_pull_by_hand():
    """All weights times how far before the rear, over the height of the rail: the hung case with drawers open."""
    cabinet = SHIPPED["small_parts_wall_case"]
    load = read_quantity(loads()["put_in"].value)
    rear, height = cabinet.outside.high[1], middle_of_rail(cabinet)
    moments = [one.high.to("newton").magnitude * (rear - one.middle[1]) for one in in_use(cabinet, load, None)]
    assert wall_pull(cabinet, load, height).to("newton").magnitude == pytest.approx(sum(moments) / height, rel=1e-4)


def test_the_scope_of_the_standard():
    """27 in, 30 lb, 3.2 ft3 (ASTM F2057-23, read): the wall case is 16 in high."""
    assert [in_scope(SHIPPED[name]) for name in ("under_bench_case", "small_parts_wall_case")] == [True, False]
