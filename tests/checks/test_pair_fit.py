"""The exact dry-fit of a pair tells what is wrong, between whom, and by how much to the tick."""

from dataclasses import replace

import pytest

from shoplib.checks.pair_fit import fit_pair, free_way
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.measure import INCH, MM, MM_STYLE
from shoplib.model.board import BoxCut, Hole
from shoplib.model.placement import Placement


def pair_of(name, **given):
    values = {key.replace("_", " "): value for key, value in given.items()}
    return joint(name).build(stock_of(18 * MM, style=MM_STYLE), values)


def recut(pair, name, change):
    """The pair with one board whose cuts are changed; a change to None leaves the cut as it is."""
    board = pair.by_name[name]
    board = replace(board, cuts=tuple(change(cut) or cut for cut in board.cuts))
    return replace(pair, boards=tuple(board if one.name == name else one for one in pair.boards))


def moved(pair, name, by):
    board = pair.by_name[name]
    origin = tuple(at + way for at, way in zip(board.placement.origin, by, strict=True))
    board = replace(board, placement=Placement(origin, board.placement.axes))
    return replace(pair, boards=tuple(board if one.name == name else one for one in pair.boards))


def told(pair):
    return [(finding.check, finding.level, finding.boards, finding.amount) for finding in fit_pair(pair)]


def test_a_dado_half_a_millimetre_shallow():
    def shallow(cut):
        return replace(cut, high=(*cut.high[:2], cut.high[2] - MM // 2)) if isinstance(cut, BoxCut) else None

    spoilt = recut(pair_of("dado", depth=6 * MM, fit=0), "side", shallow)
    assert told(spoilt) == [("overlap", "stop", ("side", "shelf"), MM // 2)]
    assert "side and shelf want the same wood: 0.5 mm" in fit_pair(spoilt)[0].text


def test_a_shelf_lifted_by_a_tick():
    spoilt = moved(pair_of("dado", fit=100), "shelf", (0, 0, 1))
    assert told(spoilt) == [("seating", "stop", ("shelf", "side"), 1)] * 2  # off the lower wall, nearer the upper one


def test_a_shelf_short_of_its_dado():
    spoilt = moved(pair_of("dado"), "shelf", (MM, 0, 0))
    assert [finding.text for finding in fit_pair(spoilt)] == [
        "End of the shelf and bottom of the dado: 1 mm more room than meant between shelf and side."
    ]


def test_a_shelf_out_of_its_dado():
    spoilt = moved(pair_of("dado"), "shelf", (0, 0, 500 * MM))
    assert [finding.text for finding in fit_pair(spoilt)][:1] == [
        "shelf meets nothing of side: no end of the shelf and bottom of the dado."
    ]


def test_the_mitred_boards_a_tick_too_near():
    spoilt = moved(pair_of("splined mitre"), "bottom", (-1, 0, 0))
    assert ("overlap", "stop", ("side", "bottom"), 1) in told(spoilt)


def test_a_tail_a_tick_too_wide():
    pair = pair_of("dovetail", fit=0)

    def wider(cut):
        (a, b), *rest = cut.outline
        return replace(cut, outline=((a, b + 1), *rest)) if b else None

    assert ("overlap", ("side", "bottom")) in {what[::2] for what in told(recut(pair, "bottom", wider))}


class TestDowels:
    def test_a_hole_a_tick_shallow(self):
        def shallow(cut):
            return replace(cut, depth=cut.depth - 1) if isinstance(cut, Hole) and cut.for_board == "dowel 1" else None

        spoilt = recut(pair_of("dowel", end_gap=10), "side", shallow)
        assert told(spoilt) == [("seating", "stop", ("dowel 1", "side"), 1)]

    def test_a_hole_that_does_not_take_the_dowel(self):
        def short(cut):
            return replace(cut, depth=5 * MM) if cut.for_board == "dowel 2" else None

        found = told(recut(pair_of("dowel"), "bottom", short))
        assert ("bottom", "dowel 2") in {boards for check, _, boards, _ in found if check == "overlap"}

    def test_a_hole_out_of_line(self):
        """A quarter of a millimetre aside, with half of that to spare."""

        def aside(cut):
            u, v, w = cut.centre
            return replace(cut, centre=(u, v + MM // 4, w)) if cut.for_board == "dowel 1" else None

        found = told(recut(pair_of("dowel", fit=MM // 4), "side", aside))
        assert ("overlap", "stop", ("side", "dowel 1")) in {what[:3] for what in found}

    @pytest.mark.parametrize(("way", "room"), [("+y", MM // 8), ("-y", MM // 8), ("+z", MM // 8), ("-x", 7)])
    def test_the_room_of_a_dowel_in_its_hole(self, way, room):
        pair = pair_of("dowel", fit=MM // 4, end_gap=7)
        assert free_way(pair.by_name["dowel 1"], pair.by_name["side"], way) == room

    def test_a_dowel_comes_out_of_its_hole(self):
        pair = pair_of("dowel")
        assert free_way(pair.by_name["dowel 1"], pair.by_name["side"], "+x") is None


def test_whole_inches_are_said_in_inches():
    pair = joint("rabbet").build(stock_of(3 * INCH // 4))
    assert fit_pair(moved(pair, "bottom", (-INCH // 16, 0, 0)))[0].text == (
        "side and bottom want the same wood: 1/16 in."
    )
