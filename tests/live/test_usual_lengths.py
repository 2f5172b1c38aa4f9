"""A millimetre workshop is never handed a length that is round in inches only."""

from dataclasses import fields, is_dataclass, replace

import pytest

from shoplib.live.carcass_project import FRONTS, HOLDS, case_project, starting_case
from shoplib.live.drawer_project import drawer_project, starting_drawer
from shoplib.live.front_project import RULES, front_project, starting_fronts
from shoplib.live.hardware_project import BESIDE, hardware_project, starting_hardware
from shoplib.measure import INCH_STYLE, MM_STYLE

STYLES = {"in": INCH_STYLE, "mm": MM_STYLE}


def projects(unit):
    style = STYLES[unit]
    for holds in HOLDS:
        for fronts in FRONTS:
            yield case_project(replace(starting_case(unit), holds=holds, fronts=fronts, bays=3), style)
    yield drawer_project(starting_drawer(unit), style)
    for rule in RULES:
        yield front_project(replace(starting_fronts(unit), rule=rule, bays=2), style)
    for beside in BESIDE:
        yield hardware_project(replace(starting_hardware(unit), beside=beside), style)


def usual_lengths(record):
    """Each length of a record that has a usual value in both systems: its name, what it holds, what is usual."""
    if isinstance(record, tuple):
        for one in record:
            yield from usual_lengths(one)
    if not is_dataclass(record):
        return
    for field in fields(record):
        value = getattr(record, field.name)
        if "mm" in field.metadata:
            yield f"{type(record).__name__}.{field.name}", value, {"in": field.default, **field.metadata}
        yield from usual_lengths(value)


@pytest.mark.parametrize("unit, other", [("in", "mm"), ("mm", "in")])
def test_no_panel_keeps_the_usual_length_of_the_other_system(unit, other):
    seen = [found for project in projects(unit) for found in usual_lengths(project)]
    assert len({name for name, _, _ in seen}) > 15
    foreign = {name for name, value, usual in seen if value == usual[other] != usual[unit]}
    assert foreign == set()
