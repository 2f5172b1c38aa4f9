"""Every working that a panel tells is worked out again from what is printed, by a reader with nothing but fractions.

That a printed sum must come to its printed result is arithmetic; the parser below knows nothing of `words.working`.
"""

import random
import re
from fractions import Fraction
from math import ceil, floor

import pytest

from tests.live.picked import picked
from tests.live.test_every_length_asks import PANELS, set_at_random

NO_SUMS = ("shelf", "tipping")
"""Their sizes rest on tables of strength and weight: nothing there is a plain sum of lengths."""

NUMBER = r"(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)"
SIZE = re.compile(rf"(-?)({NUMBER}) (in|mm)(?: \(([+-][\d.]+) (?:in|mm)\))?$")
REST = re.compile(rf", its rest to the nearest whole ({NUMBER}) (in|mm)$")
ROUNDED = re.compile(rf", (to the nearest|down to a|up to a) whole ({NUMBER}) (in|mm)$")


def number(text):
    return sum(map(Fraction, text.split()))


def last_size(text):
    """The size that stands at the end, in millimetres, and what its last digit counts (0 for a mark)."""
    sign, size, unit, rest = SIZE.search(text).groups()
    per = Fraction(254, 10) if unit == "in" else Fraction(1)
    digits = max(len(each.partition(".")[2]) for each in (size, rest or ""))
    value = (-1 if sign else 1) * number(size) + Fraction(rest or 0)
    return value * per, per / 10**digits if digits else Fraction(0)


def terms(text):
    """A sum of named sizes; None where something else is told. What stands in brackets behind a size explains it."""
    flat = text
    while re.search(r"\([^()]*\)", flat):
        flat = re.sub(r" ?\([^()]*\)", "", flat)
    total = Fraction(0)
    if not SIZE.search(flat) or " as made" in flat or re.search(r"x 0\.", flat):
        return None  # words, or wood that moves by a rounded coefficient
    for part in re.findall(r"(?:^| )(?:[+-] )?.*?(?: (?:in|mm))(?= [+-] |$)", flat):
        part = part.strip()
        sign = -1 if part.startswith("- ") else 1
        times = re.match(r"(?:[+-] )?(\d+) x ", part)
        if not SIZE.search(part):
            return None
        total += sign * int(times[1] if times else 1) * last_size(part)[0]
    return total


def worked_out(text):
    """What the right side of a line comes to, in millimetres; None for one that is no plain sum."""
    if rounded := ROUNDED.search(text):
        inner, step = worked_out(text[: rounded.start()]), number(rounded[2])
        step *= Fraction(254, 10) if rounded[3] == "in" else 1
        way = {"to the nearest": lambda x: floor(x + Fraction(1, 2)), "down to a": floor, "up to a": ceil}[rounded[1]]
        return None if inner is None else way(inner / step) * step
    if among := re.match(r"the (mean|smallest|largest) of: (.*)$", text):
        sizes = [terms(one) for one in among[2].split("; ")]
        if None in sizes:
            return None
        return {"mean": lambda each: sum(each) / len(each), "smallest": min, "largest": max}[among[1]](sizes)
    if share := re.match(r"(half|1/(\d+)) of (.*)$", text):
        whole = share[3][1:-1] if share[3].startswith("(") and share[3].endswith(")") else share[3]
        inner = worked_out(whole)
        return None if inner is None else inner / int(share[2] or 2)
    if re.match(r"\(|the square root|the largest of |fixed ", text) or re.search(r" x [\d/.]+$|%", text):
        return None
    return terms(text)


def wrong_lines(lines):
    """The lines whose right side does not come to the size before their equals sign, to its last printed digit."""
    seen, wrong = 0, []
    for line in lines:
        head, equals, text = line.partition(" = ")
        rest = REST.search(text)
        text = re.sub(r" at \d+ % of humidity", "", text[: rest.start()] if rest else text)  # a name, and no percentage
        if not equals or not SIZE.search(head) or (comes_to := worked_out(text)) is None:
            continue
        seen += 1
        size, digit = last_size(head)
        if rest:
            near = number(rest[1]) * (Fraction(254, 10) if rest[2] == "in" else 1) / 2
            comes_to = size if abs(comes_to - size) <= near else comes_to
        elif digit:
            comes_to = floor(comes_to / digit + Fraction(1, 2)) * digit
        if comes_to != size:
            wrong.append(line)
    return seen, wrong


def test_the_reader_finds_a_sum_that_does_not_come_out():
    assert wrong_lines(["bay 1, 10.5625 in = 1/3 of (case width 34 1/2 in - 4 x side 0.703 in)"]) == (
        1, ["bay 1, 10.5625 in = 1/3 of (case width 34 1/2 in - 4 x side 0.703 in)"]
    )
    assert wrong_lines(["side 0.6995 in = the mean of: reading 1, 0.69 in; reading 2, 0.699 in; reading 3, 0.71 in"])[1]
    assert wrong_lines(["height 7 7/32 in = 7.7345 in - rim 1/4 in - rim 1/4 in"])[1]
    assert wrong_lines(["side 0.7 in = the mean of: reading 1, 0.69 in; reading 2, 0.71 in"]) == (1, [])


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", PANELS)
def test_every_working_of_a_panel_adds_up(name, unit, quick):
    if quick and (list(PANELS).index(name) + (unit == "mm")) % 2:
        pytest.skip("each panel in one unit, in turn; with --long in both")
    panel, draw, seen, wrong = PANELS[name](unit), random.Random(41), 0, []
    for setting in range(len(panel.groups) + 2):
        shown = "".join(drawing.svg for drawing in panel.outcome.drawings) + panel._tables.value
        asks = list(dict.fromkeys(ask for ask, _ in picked(shown)))
        for asked in draw.sample(asks, min(len(asks), 10)):
            panel.working.ask(asked)
            count, found = wrong_lines(panel.working.lines)
            seen, wrong = seen + count, wrong + found
        if setting < len(panel.groups):
            panel.unfold()
        else:
            set_at_random(panel, draw)
    assert (seen > 0) == (name not in NO_SUMS)
    assert not list(dict.fromkeys(wrong))
