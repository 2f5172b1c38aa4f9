"""What the tables say that the bench begins with, held against the value that the bench does begin with.

The figures are those of `data/joints`, whose sources stand beside them there; what each is a part of is found here.
"""

import pytest

from shoplib.joints import joint
from shoplib.joints.dovetail import wide_tail
from shoplib.live.bench_controls import Bench
from shoplib.measure import INCH, MM, read_length
from shoplib.tables.joint_facts import all_joint_facts

RULES = [(name, rule) for name, facts in all_joint_facts().items() for rule in facts.rules if rule.setting]
OF = {
    "thickness of the side": lambda stock: stock.receives.thickness,
    "thickness of the board": lambda stock: stock.receives.thickness,
    "thickness of the board that enters": lambda stock: stock.enters.thickness,
    "thickness of the rail": lambda stock: stock.enters.thickness,
    "width of the rail": lambda stock: stock.width,
}
NO_SETTING = {
    ("butt", "length of thread"), ("butt", "depth of the pilot hole"), ("butt", "depth of the pilot hole on the bench"),
    ("butt", "hold in end grain"), ("pocket screws", "where the screw leaves"), ("rabbet", "width"), ("dado", "width"),
    ("groove", "width"), ("groove", "thickness of a tongue"), ("groove", "room under a tongue"),
    ("tongue", "short grain"), ("drawer lock", "depth of the groove"),
    ("drawer lock", "front and side of equal thickness"),
    ("finger", "depth"), ("finger", "height of the box"), ("half lap", "three boards"), ("cross lap", "width"),
    ("cross lap", "three boards"), ("cross lap", "notch in a beam"), ("dowel", "spacing along an edge"),
    ("dowel", "length"), ("dowel", "thinnest stock"), ("spline", "depth of both grooves"), ("spline", "stopped groove"),
    ("bridle", "bit for the waste"), ("bridle", "fit"),
    ("mortise and tenon", "length of a tenon that does not go through"), ("mortise and tenon", "haunch"),
    ("mortise and tenon", "horn"), ("mortise and tenon", "table rail"), ("mortise and tenon", "several tenons"),
    ("mortise and tenon", "drawbored pin"), ("mortise and tenon", "fox wedges"),
    ("mortise and tenon", "slot of a key inside the outer face"), ("dovetail", "tails to pins"),
    ("dovetail", "baseline"), ("dovetail", "lap of a half-blind dovetail"), ("splined mitre", "angle"),
    ("splined mitre", "keys"),
}
"""Numbers of what the bench has no control for: what follows from its readings, and what it does not cut."""


def test_every_number_of_a_default_is_held_against_the_bench_or_has_no_control_there():
    numbers = {(name, rule.about) for name, facts in all_joint_facts().items() for rule in facts.rules
               if rule.default.low is not None and not rule.setting}
    assert numbers == NO_SETTING


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize(("name", "rule"), RULES, ids=[f"{name}: {rule.about}" for name, rule in RULES])
def test_the_bench_begins_with_what_the_table_says(name, rule, unit):
    kind, value = joint(name), rule.default
    bench = Bench(kind, unit)
    stock = bench.start()
    usual, setting = kind.usual(stock), next(one for one in kind.settings if one.name == rule.setting)
    begins, step = usual[rule.setting], setting.step(stock)
    assert value.low is not None
    if value.of == "length along the tail":
        assert (value.low, value.high) == (10 / begins, 10 / begins)
    elif value.of == "width of the cutter":
        assert begins % (INCH // 16 if unit == "in" else MM) == 0
    elif value.of == "length of the screw":
        assert abs(begins - stock.receives.thickness - value.low * begins) <= step
    elif value.of == "diameter":
        assert begins == value.low * usual["diameter"]
    elif value.of == "thickness of the thinner board":  # the next size below that is sold: 3/8 in 3/4, 8 in 19
        assert begins == read_length("3/8 in" if unit == "in" else "8 mm")
    elif rule.about == "lip, groove and tongue":  # it is said for a front of 3/4 in
        assert abs(begins * (3 * INCH // 4) / stock.receives.thickness - value.low) <= step
    else:
        whole = OF[value.of](stock) if value.of else 1
        if name == "drawer lock":
            whole = stock.enters.thickness
        near = step if unit == "in" else MM  # 1/2 in is 12.7 mm, and 12 the round number
        assert value.low * whole - near <= begins <= value.high * whole + near


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_tails_of_the_bench_are_about_three_times_as_wide_as_its_pins(unit):
    """Noyes p. 165 (read): up to 4 to 1, no tail over 1 3/4 in; half way along, by hand."""
    kind = joint("dovetail")
    stock = Bench(kind, unit).start()
    usual = kind.usual(stock)
    wide, leans = wide_tail(stock, usual), stock.receives.thickness / 8
    assert 2.5 <= (wide - leans) / (usual["pin"] + leans) <= 4
    assert wide <= read_length("1 3/4 in")
