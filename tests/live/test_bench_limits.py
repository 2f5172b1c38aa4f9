"""What the joint bench advises where a joint cannot be cut: held against every value that the control can be moved to.

Common practice, no source: what is advised can be done, and what is called a limit is one.
"""

import random
import re

import pytest

from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import CannotCut
from shoplib.live.bench_controls import READINGS, Bench, key_of, meant, shown
from shoplib.live.bench_limits import nearest
from shoplib.live.bench_panel import bench_panel
from shoplib.live.length_control import LengthControl
from shoplib.measure import INCH, read_length

LIMIT = re.compile(r"It can be (.+?) at (most|least)\.$")
EITHER = re.compile(r"The nearest that can be cut are (.+?) and (.+?)\.$")
NONE = "Other boards, or other sizes beside it, would mend that."


def anywhere(panel, draw):
    """A few controls anywhere between their limits."""
    found = {}
    for name in draw.sample([one for one in panel.controls if one != "look"], draw.randint(1, 3)):
        control = panel.controls[name]
        if isinstance(control, LengthControl):
            found[name] = control.low + draw.randint(0, (control.high - control.low) // control.step) * control.step
        else:
            found[name] = draw.choice(control.options)
    return found


def cut(bench, stock, values, setting, value):
    try:
        bench.kind.make(stock, values | {setting.name: value})
    except CannotCut:
        return False
    return True


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", [kind.name for kind in JOINTS])
def test_what_is_advised_works_and_one_step_further_does_not(name, unit, quick):
    names = [kind.name for kind in JOINTS]
    if (names.index(name) + (unit == "mm")) % 2 and quick:
        pytest.skip("each joint in one unit, in turn; with --long in both")
    draw, bench, told = random.Random(11), Bench(joint(name), unit), 0
    panel = bench_panel(name, unit)
    for _ in panel.groups:
        panel.unfold()
    start = {key: getattr(panel.values, key) for key in panel.controls}
    for _ in range(30):
        panel.put(start | {"look": "section only"} | anywhere(panel, draw))
        setting = next((one for one in bench.kind.settings
                        if panel.message.startswith(f"{one.label[:1].upper()}{one.label[1:]}: ")), None)
        if not panel.stale or setting is None:
            continue
        told += 1
        message, given = panel.message, panel.values
        stock = bench.stock({key: getattr(given, key) for key in (*READINGS, "receives", "width")})
        values = bench.values(given)
        can = [one for one in bench.grid(setting) if cut(bench, stock, values, setting, one)]
        below = [one for one in can if one < values[setting.name]]
        above = [one for one in can if one > values[setting.name]]
        if limit := LIMIT.search(message):
            most = limit[2] == "most"
            assert not (above if most else below), message
            texts, wanted = [limit[1]], [below[-1] if most else above[0]]
        elif either := EITHER.search(message):
            texts, wanted = either.groups(), [below[-1], above[0]]
        else:
            assert message.endswith(NONE) and not can, (message, can)
            continue
        said = [_read(setting, text, stock) for text in texts]
        assert said == wanted, message
        for value in said:
            panel.put({key_of(setting): value if setting.unit == "length" else shown(setting, value)})
            assert not panel.stale, (message, panel.message)
    assert told or name in ("butt", "rabbet")


def _read(setting, text, stock):
    if setting.unit == "length":
        return read_length(text, zero=True)
    return meant(setting, int(text) if setting.unit == "count" else text, stock)


def test_a_finger_that_does_not_close_is_told_the_nearest_that_do():
    """6 in by hand: 6 / 10 = 0.6 is no mark, 6 / 9 none, 6 / 8 = 3/4; below 11/16 comes 6 / 12 = 1/2, for 6 / 11,
    6 / 10 and 6 / 9 are no sixty-fourths."""
    panel = bench_panel("finger", "in")
    panel.put({"width": 6 * INCH, "finger": 11 * INCH // 16})
    assert panel.message.endswith("The nearest that can be cut are 1/2 in and 3/4 in.")


@pytest.mark.parametrize("worth", [500, 707, 2001])
@pytest.mark.parametrize(("low", "high"), [(0, 5), (40, 41), (60, 200), (300, 400)])
def test_the_end_of_a_range_is_found_whatever_a_step_is_worth(low, high, worth):
    tried = []

    def refused(value):
        tried.append(value)
        short = max(low - value, value - high) * worth + 3
        what = "below" if value < low else "above"
        return CannotCut("size", "No.", short, what) if not low <= value <= high else None

    now = 50
    assert nearest(refused, now, range(300)) == (
        (high, None) if high < now else (None, low) if now < low < 300 else (None, None)
    )
    assert len(tried) < 12
