"""The carcass panels at the ends of every control and at random: boards, or one clear sentence."""

import random

import pytest

from shoplib.documents.examples import example
from shoplib.live.carcass_panel import carcass_panel, project_panel, width_panel
from shoplib.live.length_control import LengthControl

PANELS = {
    "width": width_panel,
    "carcass": carcass_panel,
    "bench case": lambda unit: project_panel(example("under_bench_case"), unit),
}


@pytest.fixture(params=[(name, unit) for name in PANELS for unit in ("in", "mm")], ids=" ".join)
def panel(request):
    name, unit = request.param
    return PANELS[name](unit)


def ends(control):
    if isinstance(control, LengthControl):
        return [control.low, control.high]
    return [control.options[0], control.options[-1]]


def put(control, value):
    if isinstance(control, LengthControl):
        control.ticks = value
    else:
        control.value = value


def is_told(panel):
    """The last good picture with a sentence that names no key of a file, or a new one with its boards."""
    if panel.stale:
        return panel.message.endswith(".") and "fault in the workbook" not in panel.message and "_" not in panel.message
    outcome = panel.outcome
    return outcome.tables[0].rows and all(drawing.title and drawing.alt for drawing in outcome.drawings)


def test_a_panel_begins_with_a_case_that_goes_together(panel):
    assert not panel.stale and panel.message.endswith("it goes together dry.")
    assert all(finding.level == "note" for finding in panel.outcome.findings)


def test_both_ends_of_every_control(panel):
    for control in panel.controls.values():
        before = control.ticks if isinstance(control, LengthControl) else control.value
        for end in ends(control):
            put(control, end)
            assert is_told(panel), panel.message
        put(control, before)
    assert not panel.stale


def test_random_settings(panel, count):
    draw, built = random.Random(7), 0
    tries = count(40, 400)
    while panel.opened != tuple(group.title for group in panel.groups):
        panel.unfold()
    for _ in range(tries):
        for control in panel.controls.values():
            if isinstance(control, LengthControl):
                put(control, draw.randint(-(-control.low // control.step), control.high // control.step) * control.step)
            else:
                put(control, draw.choice(control.options))
        assert is_told(panel), panel.message
        built += not panel.stale
    assert built > tries // 4


def test_inches_and_millimetres_show_the_same_bench_case():
    inch, metric = (project_panel(example("under_bench_case"), unit) for unit in ("in", "mm"))
    assert inch.controls["width"].ticks == metric.controls["width"].ticks
    assert inch.message == metric.message
