"""Every dimension on a figure of a lesson, and on a panel as it begins, tells the length that it stands at."""

import re
from functools import partial
from itertools import pairwise

import pytest

from shoplib.draw import pen
from shoplib.draw.scene import Chain, Running
from shoplib.lessons import fronts_shown, hardware_shown, hold_shown, page_01, page_02, page_03, wrong_box
from shoplib.lessons.lesson_02 import BOTTOM
from shoplib.live.corner_panel import corner_panel
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.front_panel import front_panel
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.joint_panel import joint_panel
from shoplib.live.joint_project import JOINTS
from shoplib.live.moving_panel import moving_panel
from shoplib.live.sag_panel import sag_panel
from shoplib.live.screw_panel import screw_panel
from shoplib.live.tip_panel import tip_panel
from shoplib.measure import INCH, MM, read_length

NUMBER = re.compile(r"\d[\d./]*(?: \d+/\d+)?")
FIGURES = (
    partial(page_01.wrong_side, "keep side"),
    *(partial(page_02.wrong_bottom, slip.id) for slip in BOTTOM.misconceptions),
    page_01.strip_without_kerfs, page_01.wrong_half, page_03.loose, page_03.tight, page_03.wrong_side, page_03.too_deep,
    wrong_box.by_the_wide_end, wrong_box.by_one_offcut, wrong_box.without_grooves, wrong_box.leaning,
    fronts_shown.edges, fronts_shown.inset_edge, fronts_shown.order, fronts_shown.leaning, fronts_shown.gap_forgotten,
    fronts_shown.one_too_high,
    hardware_shown.lying, hardware_shown.behind_inset, hardware_shown.behind_overlay, hardware_shown.pull,
    hardware_shown.screw, hardware_shown.too_long, hardware_shown.tools, hardware_shown.meeting,
    hardware_shown.in_dado, hardware_shown.gap_forgotten,
    hold_shown.sagging, hold_shown.of_mdf, hold_shown.one_out, hold_shown.all_out,
)
PANELS = (corner_panel, drawer_panel, front_panel, hardware_panel, moving_panel, sag_panel, screw_panel, tip_panel)


@pytest.fixture
def drawn(monkeypatch):
    """The scenes that were drawn, as they come."""
    scenes, page = [], pen._page
    monkeypatch.setattr(pen, "_page", lambda scene, *rest, **how: scenes.append(scene) or page(scene, *rest, **how))
    return scenes


def spans(scene):
    """Each text of a dimension with the length that it stands at."""
    for item in scene.items:
        if isinstance(item, Chain):
            yield from zip(item.texts, item.sizes or [b - a for a, b in pairwise(item.at)], strict=True)
        elif isinstance(item, Running):
            yield from zip(item.texts, [abs(place - item.datum) for place in item.at], strict=True)


def told(text, unit):
    """The number of a dimension in ticks, without words before it and the rest behind it."""
    return read_length(NUMBER.search(text)[0], unit=unit, zero=True)


def test_dimensions_tell_what_they_measure(unit, drawn, own_folder, monkeypatch):
    for module in (page_01, page_02, page_03, wrong_box, fronts_shown, hardware_shown, hold_shown):
        monkeypatch.setattr(module, "unit_in_use", lambda: unit)
    for figure in FIGURES:
        figure()
    for panel in PANELS:
        panel(unit)
    joints = joint_panel(unit)
    for kind in JOINTS:
        joints.enter("kind", kind)
    found = [(text, size, scene.title) for scene in drawn for text, size in spans(scene) if NUMBER.search(text)]
    assert len(found) > 120
    near = INCH // 128 + 1 if unit == "in" else MM // 4  # half a mark of the rule, as the rest stands in brackets
    wrong = [(text, size, title) for text, size, title in found if abs(told(text, unit) - abs(size)) > near]
    assert not wrong, wrong
