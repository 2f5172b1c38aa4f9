"""The carcass panels at the ends of every control and at random: boards, or one clear sentence."""

import random
import re

import pytest

from shoplib.documents.examples import example
from shoplib.live.carcass_panel import carcass_panel, width_panel
from shoplib.live.length_control import LengthControl
from shoplib.live.project_panel import project_panel
from shoplib.measure import MM

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
        # Each remedy is a control that the panel has.
        named = re.search(r"\b(Width|Height|Depth|Depth of the joint)\b", panel.message)
        return named and panel.message.endswith(".") and "fault in the workbook" not in panel.message
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
    tries = count(30, 400)
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


def shown(control):
    return control.layout.display != "none"


def test_only_what_applies_is_asked():
    panel = carcass_panel("in")
    height = panel.controls["height"]
    assert not shown(panel.controls["base_height"]) and not shown(panel.controls["fronts"])
    panel.enter("holds", "drawers")
    panel.enter("base", "casters")
    assert shown(panel.controls["base_height"]) and shown(panel.controls["fronts"])
    assert height.label == "Height of the case, without casters"
    panel.enter("base", "plinth")
    assert height.label == "Height"


def test_casters_are_summed_to_the_height_over_all():
    panel = carcass_panel("in")
    panel.enter("base", "casters")
    assert not [each.text for each in panel.outcome.findings if "size." in each.text]
    assert panel.outcome.sums[-1] == "casters + case = height over all: 4 in + 30 in = 34 in"


def test_nothing_finer_than_a_shop_can_set_is_read_in_a_panel(panel):
    panel.enter("width", "1601 mm")  # 63 1/32 in and 0.0002 in more
    if "thickness" in panel.controls:
        panel.enter("thickness", "18 mm")  # 0.70866 in
    outcome = panel.outcome
    texts = [*(each.text for each in panel.controls.values() if isinstance(each, LengthControl)), *outcome.sums]
    texts += [cell for row in outcome.tables[0].rows for cell in row]
    assert not [text for text in texts if re.search(r"\.\d{5}|\.\d{3} ?mm", text)]
    assert panel.controls["width"].ticks == 1601 * MM


def test_one_number_for_several_readings_is_explained():
    panel = project_panel(example("under_bench_case"), "in")
    panel.enter("thickness", "0.5")
    (told,) = [each.text for each in panel.outcome.findings if each.check == "readings" and each.level == "warn"]
    assert told.startswith("You set the mean of the 4 caliper readings of the case sheet; they moved together")
    assert "PS 1, the plywood standard" in told


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("values", [
    {"bays": 4, "width": "low", "holds": "drawers", "thickness": "high"},
    {"holds": "drawers", "drawers": 8, "height": "low"},
    {"holds": "drawers", "depth": "low", "drawers": 1},
    {"holds": "shelves", "height": "low", "thickness": "high", "base": "toe space", "base_height": 127 * MM},
    {"holds": "drawers and a pull-out", "width": "low", "bays": 4, "thickness": "high"},
    {"joint_depth": "high", "thickness": "low"},
])
def test_following_the_remedy_mends_what_cannot_be_built(unit, values):
    """Each control that a refusal names is put right; after a few such steps the case stands."""
    panel = carcass_panel(unit)
    while panel.opened != tuple(group.title for group in panel.groups):
        panel.unfold()
    ends_of = {"low": lambda control: control.low, "high": lambda control: control.high}
    panel.put({
        name: ends_of[value](panel.controls[name]) if value in ends_of else value for name, value in values.items()
    })
    assert panel.stale
    for _ in range(4):
        if not panel.stale:
            break
        control = panel.controls[
            "joint_depth" if "Depth of the joint" in panel.message
            else next(name for name in ("depth", "width", "height") if name.capitalize() in panel.message)
        ]
        put(control, control.low if "Depth of the joint" in panel.message else control.high)
    assert not panel.stale, panel.message
