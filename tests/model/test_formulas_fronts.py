"""Fronts, their heights and the hardware beside arithmetic by hand, in fractions of an inch or of a millimetre.

The formulas follow from what must stand beside what; each stands in the name or first line of its test.
"""

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from shoplib.model.board import Hole
from shoplib.model.project import Bay, PullOut, Pulls
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case, each, exact, usual_size

# --- fronts


@each(
    "h, t, g",
    (IN, "30", "0.703", "1/8"),
    (IN, "27 9/16", "3/4", "3/32"),
    (MM, "760", "17.86", "3"),
    (MM, "688.5", "18.3", "2.5"),
)
@pytest.mark.parametrize("n", [1, 2, 4, 5])
def test_n_inset_fronts_are_o_less_n_plus_1_g_by_n(unit, h, t, g, n):
    """Whole steps but for the bottom one, which takes what will not divide."""
    case = drawer_case(unit, size=usual_size(unit, height=h), t=[t], gap=g, rule={"count": n})
    names = [f"bay 1 drawer {k} front" for k in range(1, n + 1)]
    o = h - 2 * t
    ideal = (o - (n + 1) * g) / n
    unrounded = Solved(replace(case, rounding=1), unit)
    assert all(abs(unrounded.size(name, 2) - ideal) < Fraction(n, unit.ticks) for name in names)
    solved = Solved(case, unit)
    heights = [solved.size(name, 2) for name in names]
    assert heights[1:] == [unit.down(ideal)] * (n - 1)
    assert sum(heights) + (n + 1) * g == o
    edges = [solved.high("bottom", 2)]
    for name in names:
        assert solved.low(name, 2) - edges[-1] == g
        edges.append(solved.high(name, 2))
    assert solved.low("top", 2) - edges[-1] == g
    assert solved.size(names[0], 0) == usual_size(unit)[0] - 2 * t - 2 * g


@each("w, t, reveal", (IN, "24", "0.703", "1/8"), (IN, "33 13/16", "0.719", "1/16"), (MM, "601", "17.86", "3"))
def test_an_overlay_front_is_o_plus_2a(unit, w, t, reveal):
    o, a = w - 2 * t, t - reveal
    solved = Solved(drawer_case(unit, fronts="overlay", size=(w, w + 1, w), t=[t], reveal=reveal), unit)
    assert solved.size("bay 1 drawer 1 front", 0) == o + 2 * a
    assert solved.size("bay 1 drawer 1 front", 2) == w + 1 - 2 * t + 2 * a
    assert solved.low("bay 1 drawer 1 front", 0) - solved.low("left side", 0) == reveal


@each("t, g", (IN, "0.703", "1/8"), (IN, "3/4", "3/32"), (MM, "17.86", "3"), (MM, "18.3", "2"))
def test_two_overlay_fronts_share_a_divider_with_t_less_g_by_2_each(unit, t, g):
    w = 40 if unit is IN else 1000
    case = drawer_case(unit, fronts="overlay", columns=2, size=(w, w, w / 2), t=[t], gap=g)
    solved = Solved(case, unit)
    left, right = "bay 1 drawer 1 front", "bay 2 drawer 1 front"
    assert solved.high(left, 0) - solved.low("divider 1", 0) == (t - g) / 2
    assert solved.high("divider 1", 0) - solved.low(right, 0) == (t - g) / 2
    assert solved.low(right, 0) - solved.high(left, 0) == g


@each("h, step_down, t", (IN, "30 5/8", "1 3/16", "0.703"), (MM, "760", "22.5", "17.86"))
@pytest.mark.parametrize("fronts", ["inset", "overlay"])
def test_stepped_heights_fall_alike_and_add_up(unit, h, step_down, t, fronts):
    n, g = 4, exact("1/8" if unit is IN else 3)
    rule = {"count": n, "heights": "stepped", "difference": unit.of(step_down)}
    case = drawer_case(unit, fronts=fronts, size=usual_size(unit, height=h), t=[t], gap=g, reveal=g, rule=rule)
    solved = Solved(case, unit)
    heights = [solved.size(f"bay 1 drawer {k} front", 2) for k in range(1, n + 1)]
    total = h - 2 * t - (n + 1) * g if fronts == "inset" else h - 2 * g - (n - 1) * g
    assert sum(heights) == total
    top = unit.down((total - step_down * (1 + 2 + 3)) / n)
    assert heights[1:] == [top + 2 * step_down, top + step_down, top]
    assert 0 <= heights[0] - (top + 3 * step_down) < n * unit.step


@each("h, t", (IN, "30 5/8", "0.703"), (MM, "761.5", "17.86"))
@pytest.mark.parametrize("ratio", [(7, 6, 5, 4), (3, 2, 1), (5, 5, 3, 2, 2)])
def test_heights_by_ratio_add_up(unit, h, t, ratio):
    n, g = len(ratio), exact("1/8" if unit is IN else 3)
    rule = {"count": n, "heights": "ratio", "ratio": ratio}
    solved = Solved(drawer_case(unit, size=usual_size(unit, height=h), t=[t], gap=g, rule=rule), unit)
    heights = [solved.size(f"bay 1 drawer {k} front", 2) for k in range(1, n + 1)]
    total = h - 2 * t - (n + 1) * g
    assert sum(heights) == total
    assert heights[1:] == [unit.down(total * part / sum(ratio)) for part in ratio[1:]]


# --- hardware


@each("g, t, below, above, tall", (IN, "1/8", "0.703", "1/4", "1/4", "1 3/4"), (MM, "3", "17.86", "6", "6", "45"))
@pytest.mark.parametrize("n", [2, 4])
def test_the_kth_spacer_is_the_fronts_and_gaps_below_and_then_the_slide_in_its_box(unit, g, t, below, above, tall, n):
    """`below`, `above`, `tall` as in data/slides.toml; a box begins whole steps up and is whole steps high.

    Its slide lies in its middle, down to a step: a spacer is cut to a step.
    """
    solved = Solved(drawer_case(unit, t=[t], gap=g, rule={"count": n}), unit)
    o = (30 if unit is IN else 760) - 2 * t
    ideal = unit.down((o - (n + 1) * g) / n)
    fronts = [o - (n + 1) * g - (n - 1) * ideal] + [ideal] * (n - 1)
    spacers = [unit.back(one.height) for one in solved.cabinet.spacers]
    assert len(spacers) == n
    for k, spacer in enumerate(spacers):
        datum = sum(fronts[:k]) + (k + 1) * g
        start = -unit.down(-(datum + below))
        box = unit.down(datum + fronts[k] - above - start)
        assert solved.size(f"bay 1 drawer {k + 1} left box side", 2) == box
        assert spacer == start + unit.down((box - tall) / 2)
        assert spacer % unit.step == 0
    if n > 2:
        assert [b - a for a, b in pairwise(spacers[1:])] == [ideal + g] * (n - 2)


@each("p", (IN, "3"), (IN, "3 49/64"), (MM, "96"), (MM, "128.5"))
@pytest.mark.parametrize("fronts", ["inset", "overlay"])
def test_pull_holes_lie_at_half_the_length_less_and_plus_half_the_pitch(unit, p, fronts):
    """On the front from its own end; on the box front from the box front's end."""
    solved = Solved(drawer_case(unit, fronts=fronts, pulls=Pulls(pitch=unit.of(p))), unit)
    for name in ("bay 1 drawer 1 front", "bay 1 drawer 1 box front"):
        board = solved.board(name)
        holes = [cut for cut in board.cuts if isinstance(cut, Hole)]
        axis = board.placement.own_axis(0)
        half = solved.size(name, 0) / 2
        measured = sorted(unit.back(hole.centre[axis]) for hole in holes)
        assert len(measured) == 2, name
        assert abs(measured[0] - (half - p / 2)) < Fraction(2, unit.ticks)
        assert measured[1] - measured[0] == p
        up = board.placement.own_axis(2)
        if name.endswith("1 front"):
            middle = unit.down(solved.size(name, 2) / 2 + unit.step / 2)  # the nearest step from the lower edge
            assert [unit.back(hole.centre[up]) for hole in holes] == [middle, middle]


SOLD = {  # data/screws.toml, No. 8 in inches and 4.0 mm; common practice, no source
    IN: [exact(length) for length in ("5/8", "3/4", "1", "1 1/4", "1 1/2")], MM: [16, 20, 25, 30, 35, 40],
}
SPARE = {IN: exact("1/8"), MM: 3}


@each(
    "s, f, expected",
    (IN, "0.5", "0.625", "1"),  # exactly s + f - 1/8
    (IN, "0.499", "0.625", "3/4"),
    (IN, "0.472", "0.721", "1"),
    (IN, "0.472", "0.6", "3/4"),  # by the names, 1/2 and 3/4, it would be 1
    (MM, "11.86", "18.3", "25"),
    (MM, "9", "14", "20"),  # exactly s + f - 3
    (MM, "9", "13.9", "16"),
)
def test_the_longest_screw_through_the_box_front_is_s_plus_f_less_an_eighth_or_3_mm(unit, s, f, expected):
    solved = Solved(drawer_case(unit, fronts="overlay", s=[s], f=[f]), unit)
    (fixed,) = (piece for piece in solved.cabinet.hardware if piece.what == "front screws")
    (screw,) = fixed.screws
    assert unit.back(screw.length) == expected == max(x for x in SOLD[unit] if x <= s + f - SPARE[unit])
    assert solved.high("bay 1 drawer 1 front", 1) == solved.low("bay 1 drawer 1 box front", 1)


@each("f, clear", (IN, "0.721", "1/16"), (IN, "0.703", "1/16"), (MM, "18.3", "2"))
@pytest.mark.parametrize("fronts", ["inset", "overlay", "none"])
def test_a_slide_stands_back_by_the_inset_front_and_its_clearance(unit, f, clear, fronts):
    """`clear` is the setback of the slide's row in data/slides.toml."""
    solved = Solved(drawer_case(unit, fronts=fronts, f=[f]), unit)
    starts = {unit.back(piece.box.low[1]) for piece in solved.cabinet.hardware if piece.what == "slide"}
    assert starts == {(f if fronts == "inset" else 0) + clear}
    if fronts == "overlay":
        assert solved.low("bay 1 drawer 1 front", 1) == -f


def pull_out(unit, columns, peg):
    panel = PullOut(slide=unit.slide, room=unit.of(exact(1) * unit.step), peg_columns=columns, peg_rows=columns)
    panel = replace(panel, peg_diameter=unit.of(peg), peg_length=unit.of(1 if unit is IN else 25))
    panel = replace(panel, peg_depth=unit.of("3/8" if unit is IN else 9))
    return Solved(replace(a_case(unit, bays=(Bay("pull-out", pull_out=panel),)), rounding=1), unit)


def pegs(solved, axis):
    """Low and high ends of the pegs along a world axis, and the ends of their panel."""
    boxes = [piece.box for piece in solved.cabinet.hardware if piece.what == "peg"]
    spans = sorted({(solved.unit.back(box.low[axis]), solved.unit.back(box.high[axis])) for box in boxes})
    return spans, solved.low("bay 1 pull-out panel", axis), solved.high("bay 1 pull-out panel", axis)


@each("peg", (IN, "1/2"), (IN, "3/4"), (MM, "12"))
@pytest.mark.parametrize("n", [2, 3, 5])
def test_pegs_stand_at_one_pitch(unit, peg, n):
    for axis in (1, 2):
        spans, low, high = pegs(pull_out(unit, n, peg), axis)
        centres = [(a + b) / 2 for a, b in spans]
        assert len(centres) == n
        assert all(b - a == centres[1] - centres[0] for a, b in pairwise(centres))
        assert abs(centres[0] - low - (high - centres[-1])) < Fraction(2 * n, unit.ticks)


@each("peg", (IN, "1/2"), (IN, "3/4"), (MM, "12"))
@pytest.mark.parametrize("n", [2, 3, 5])
def test_the_spaces_beside_and_between_pegs_are_w_less_their_widths_by_n_plus_1(unit, peg, n):
    for axis in (1, 2):
        spans, low, high = pegs(pull_out(unit, n, peg), axis)
        even = (high - low - n * peg) / (n + 1)
        ends = [low, *(edge for span in spans for edge in span), high]
        spaces = [b - a for a, b in zip(ends[::2], ends[1::2], strict=True)]
        assert all(abs(space - even) < Fraction(2 * n, unit.ticks) for space in spaces)
