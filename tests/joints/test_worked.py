"""The worked numbers of old handbooks, each from its inputs.

Marks: read = the figure stands in the source; derived = numbers read, the step between them ours; else said. Sources:
Fairham, Woodwork Joints (1920); Noyes, Handwork in Wood (1910); Foster, Elementary Woodworking (1903) and Carpentry and
Woodwork (1911); Zerbe, Carpentry for Boys (1914); Windsor, Mission Furniture part 3 (1912); Ross, Elementary Course in
Woodwork. All public domain.
"""

from dataclasses import replace

import pytest

from shoplib.checks.pair_fit import fit_pair, free_way
from shoplib.joints import joint
from shoplib.joints.bench_pair import CannotCut, stock_of
from shoplib.measure import INCH, read_length
from shoplib.model.board import BoxCut, PrismCut
from shoplib.model.finger_layout import boundaries, fingers
from shoplib.model.sheet import Sheet


def inches(text):
    return read_length(f"{text} in")


def solid(enters, receives=None, **rest):
    """Solid stock of stated sizes in inches."""
    sizes = {name: inches(size) for name, size in rest.items()}
    return stock_of(inches(enters), None if receives is None else inches(receives), kind="solid", **sizes)


def built(name, stock, **values):
    """A pair without a finding; lengths of the settings in inches, counts plain."""
    given = {key.replace("_", " "): inches(v) if isinstance(v, str) else v for key, v in values.items()}
    pair = joint(name).build(stock, given)
    assert fit_pair(pair) == ()
    return pair


def gained(name, stock, **values):
    given = {key.replace("_", " "): inches(v) if isinstance(v, str) else v for key, v in values.items()}
    return joint(name).allowance(stock, given)


def cut_sizes(pair, name, kind):
    return [
        tuple(far - near for near, far in zip(cut.low, cut.high, strict=True))
        for cut in pair.by_name[name].cuts
        if isinstance(cut, BoxCut) and cut.kind == kind
    ]


@pytest.mark.parametrize("name", ["dado", "stopped dado"])
def test_a_dado_is_as_wide_as_the_thickest_reading_and_the_fit(name):
    """Readings 0.70, 0.71 and 0.72 in, fit 0.004 in: by hand 0.72 + 0.004 = 0.724 in wide, not 0.71 + 0.004."""
    shelf = Sheet("shelf stock", "plywood", inches("3/4"), tuple(map(inches, ("0.70", "0.71", "0.72"))))
    stock = replace(solid("3/4", width="6"), enters=shelf)
    ((deep, long, wide),) = cut_sizes(built(name, stock, depth="1/4", fit="0.004"), "side", "dado")
    stop = 0 if name == "dado" else joint(name).usual(stock)["stop"]
    assert sorted((deep, long, wide)) == sorted((inches("1/4"), inches("6") - stop, inches("0.724")))


def test_end_lap():
    """Foster 1903 Fig. 58b (read): two pieces 5 x 1 3/4 x 1 1/8, laps 9/16 + 9/16, as long as the mate is wide."""
    stock = solid("1 1/8", width="1 3/4", enters_length="3 1/4", receives_length="3 1/4")
    pair = built("half lap", stock, long=0)
    lap, mate = inches("9/16"), inches("1 3/4")
    assert cut_sizes(pair, "rail", "lap") == cut_sizes(pair, "stile", "lap") == [(mate, mate, lap)]
    assert {board.length for board in pair.boards} == {inches("5")}


def test_lap_of_two_inch_wood():
    """Fairham p. 29 (read): 2 in wood, 1 in each side of the centre line."""
    pair = built("cross lap", solid("2", width="3"), fit=0)
    assert cut_sizes(pair, "rail", "notch") == [(inches("3"), inches("3"), inches("1"))]


TABLE = solid("1", "2", width="7", receives_width="2", enters_length="16")
TENON = {"tenon": "1/2", "length": "1 1/2", "set_in": "1/4", "front_shoulder": "1/4", "top_shoulder": "1/2"}


class TestTable:
    """Zerbe pp. 44-48 (read): leg 2 x 2, rail 1 x 7, top 36 x 42 that overhangs by 2, rail set in 1/4."""


    @pytest.mark.parametrize(("top", "between", "whole"), [("42", "34", "37"), ("36", "28", "31")])
    def test_rails(self, top, between, whole):
        legs, overhang = 2 * inches("2"), 2 * inches("2")
        shoulders = inches(top) - overhang - legs
        assert shoulders == inches(between)
        assert shoulders + 2 * gained("mortise and tenon", TABLE, **TENON) == inches(whole)

    def test_tenon_is_six_and_a_half_wide_and_the_mortise_half_to_one_from_the_face(self):
        pair = built("mortise and tenon", TABLE, **TENON, fit=0, end_gap=0)
        (mortise,) = [cut for cut in pair.by_name["stile"].cuts if cut.kind == "mortise"]
        assert mortise.high[0] - mortise.low[0] == inches("6 1/2")
        assert (mortise.low[2], mortise.high[2]) == (inches("1/2"), inches("1"))
        assert pair.by_name["stile"].length - mortise.high[0] == inches("1/2")  # below the top of the leg

    def test_tenons_that_meet_are_mitred_for_their_last_half_inch(self):
        pair = built("mortise and tenon", TABLE, **TENON, fit=0, end_gap=0, rails=2)
        for name in ("rail", "second rail"):
            (mitre,) = [cut for cut in pair.by_name[name].cuts if isinstance(cut, PrismCut)]
            along = [corner[1] for corner in mitre.outline]
            assert max(along) - min(along) == inches("1/2")
        assert free_way(pair.by_name["rail"], pair.by_name["second rail"], "-x") == 0


def test_tenon_of_a_panelled_frame():
    """Noyes's rule, p. 164 (read; the sum ours): rail 3 wide, groove 1/4: tenon 3/2 - 1/4 = 1 1/4, 1/4 thick."""
    stock = solid("3/4", width="3", receives_width="3")
    groove = inches("1/4")
    tenon = inches("3") // 2 - groove
    shoulders = {"top_shoulder": "1 1/2", "bottom_shoulder": "1/4", "haunch": "1/4"}
    pair = built("mortise and tenon", stock, **shoulders, horn="1", fit=0, end_gap=0)
    (mortise,) = [cut for cut in pair.by_name["stile"].cuts if cut.kind == "mortise"]
    assert tenon == inches("1 1/4") == mortise.high[0] - mortise.low[0]
    assert mortise.high[2] - mortise.low[2] == inches("1/4")


def test_mortise_in_the_middle():
    """Ross ex. 3 (read): a piece of 6, a tenon of 1 1/2, lines at 2 1/4 and 3 3/4."""
    pair = built("mortise and tenon", solid("6", width="8"), tenon="1 1/2", front_shoulder="2 1/4", fit=0)
    (mortise,) = [cut for cut in pair.by_name["stile"].cuts if cut.kind == "mortise"]
    assert (mortise.low[2], mortise.high[2]) == (inches("2 1/4"), inches("3 3/4"))


def test_rabbeted_box():
    """Foster 1911 pp. 315-316 (read; the sum ours): stock 1/2, sides 3 high, lids rabbeted 1/4: 11 x 7 x 3 1/2."""
    stock = solid("1/2", width="6")
    into = gained("rabbet", stock, depth="1/4")
    assert inches("3") + 2 * (inches("1/2") - into) == inches("3 1/2")
    for outside, lid, inside in (("11", "10 1/2", "10"), ("7", "6 1/2", "6")):
        assert inches(lid) - 2 * inches("1/4") == inches(outside) - 2 * inches("1/2") == inches(inside)
    pair = built("rabbet", stock, depth="1/4")
    # The usual depth is half of the stock, as here.
    assert joint("rabbet").usual(stock)["depth"] == inches("1/4")
    assert pair.by_name["bottom"].length - stock.enters_length == inches("1/4")


def test_dado_cabinet():
    """Foster 1911 pp. 210-211 (derived): outside 25 1/8, ends 1/2, shelf 24 5/8, so dadoes 1/4 deep."""
    ends = 2 * inches("1/2")
    depth = (inches("24 5/8") - (inches("25 1/8") - ends)) // 2
    assert depth == inches("1/4")
    stock = solid("3/8", "1/2", width="12")
    assert inches("25 1/8") - ends + 2 * joint("dado").allowance(stock, {"depth": depth}) == inches("24 5/8")


def test_dado_stand():
    """Windsor 1912 (derived): sides 3/4, housed shelf 17, dado 1/4: 18 outside; keyed shelf 21: projects 1 1/2."""
    stock = solid("3/4", width="10")
    outside = inches("17") - 2 * gained("dado", stock) + 2 * inches("3/4")  # the usual depth, a third of the side
    assert outside == inches("18")
    assert (inches("21") - outside) // 2 == inches("1 1/2")


def test_stopped_dado_of_the_dictionary_stand():
    """Windsor 1912 (read): 1/4 deep in 3/4 sides, the shelf shouldered 1/2 back of the edge. The usual settings."""
    pair = built("stopped dado", solid("3/4", width="10"), fit=0)
    assert cut_sizes(pair, "side", "dado") == [(inches("3/4"), inches("9 1/2"), inches("1/4"))]
    assert cut_sizes(pair, "shelf", "notch") == [(inches("1/4"), inches("1/2"), inches("3/4"))]


def test_tongue_in_dado():
    """Geometry: stock 3/4, tongue 1/4 inside: rabbet 1/2 deep, dado 1/4 wide from 1/2 off the end, 1/4 deep."""
    pair = built("tongue", solid("3/4", width="6"), fit=0, end_gap=0)  # the usual depth, tongue and face
    (dado,) = [cut for cut in pair.by_name["side"].cuts]
    assert (dado.low[0], dado.high[0]) == (inches("1/2"), inches("3/4"))
    assert (dado.low[2], dado.high[2]) == (0, inches("1/4"))
    assert cut_sizes(pair, "bottom", "rabbet") == [(inches("1/4"), inches("6"), inches("1/2"))]


class TestDrawerFront:
    """Published sets (common practice, no source) and the identities of the joint."""

    def test_side_is_shorter_than_the_drawer_by_two_lips(self):
        """Front 3/4, side 1/2, lip 1/4, groove 1/4, drawer 18 deep: side 17 1/2."""
        stock = solid("1/2", "3/4", width="4")
        between = inches("18") - 2 * inches("3/4")
        assert between + 2 * gained("drawer lock", stock, lip="1/4", groove="1/4") == inches("17 1/2")

    @pytest.mark.parametrize(
        ("front", "lip", "groove", "tongue"), [("3/4", "1/4", "1/4", "1/4"), ("3/4", "1/4", "3/8", "1/8")]
    )
    def test_lip_groove_and_tongue_are_the_front(self, front, lip, groove, tongue):
        pair = built("drawer lock", solid("1/2", front, width="4"), lip=lip, groove=groove, fit=0, end_gap=0)
        assert pair.joints[0].tongue == inches(tongue)
        # The dado begins as far from the side's end as the groove is wide, as wide as the tongue, half the side deep.
        (dado,) = pair.by_name["side"].cuts
        assert (dado.low[0], dado.high[0]) == (inches(groove), inches(groove) + inches(tongue))
        assert dado.high[2] - dado.low[2] == inches("1/4")


class TestFingers:
    """Geometry of equal fingers; boards cut to the full outside (common practice, no source)."""

    def test_nine_of_a_half_in_four_and_a_half(self):
        stock = solid("1/2", width="4 1/2")
        assert len(fingers(stock.width, inches("1/2"), 0).own) == 5
        edges = boundaries(stock.width, inches("1/2"))
        assert (edges[0], edges[-1]) == (0, stock.width)
        pair = built("finger", stock, finger="1/2", fit=0)
        sockets = {board.name: len(board.cuts) for board in pair.boards}
        assert sockets == {"bottom": 4, "side": 5}  # five fingers on the one, four on the other

    def test_thirteen_and_a_third_is_refused(self):
        with pytest.raises(CannotCut, match=r"5 in is 13\.33 fingers of 3/8 in: 13 of them leave 1/8 in") as refused:
            built("finger", solid("1/2", width="5"), finger="3/8")
        assert (refused.value.setting, refused.value.amount) == ("finger", inches("1/8"))

    def test_sides_of_a_box_keep_the_outside_size(self):
        """A box 12 x 9: its parts are 12 and 9 long."""
        stock = solid("1/2", width="4 1/2")
        assert inches("12") - 2 * inches("1/2") + 2 * gained("finger", stock, finger="1/2") == inches("12")


FIG_62B = solid("1 1/8", width="1 3/4", enters_length="3 7/8", receives_length="3 7/8")
FIGURE = {"tails": 2, "pin": "1/4", "half-pin": 0, "slope": 60, "fit": 0}


class TestDovetail:
    """Foster 1903 Fig. 62b (read): two pieces 5 x 1 3/4 x 1 1/8, one pin 5/8 inside, 1/4 outside."""

    def test_the_pin(self):
        pair = built("dovetail", FIG_62B, **FIGURE)
        (socket,) = pair.by_name["bottom"].cuts
        by_length = {}
        for length, across in socket.outline:
            by_length.setdefault(length, []).append(across)
        outside, inside = (max(at) - min(at) for _, at in sorted(by_length.items()))
        assert (inside, outside) == (inches("5/8"), inches("1/4"))
        assert [sum(ends) for ends in by_length.values()] == [inches("1 3/4")] * 2  # in the middle
        assert {board.length for board in pair.boards} == {inches("5")}

    def test_it_cannot_be_pulled_out(self):
        pair = built("dovetail", FIG_62B, **FIGURE)
        assert free_way(pair.by_name["bottom"], pair.by_name["side"], "+x") == 0
        loose = built("dovetail", FIG_62B, **(FIGURE | {"fit": "1/32"}))
        # A gap of 1/64 on a flank of 1 in 6 lets the tails come by six times that.
        assert free_way(loose.by_name["bottom"], loose.by_name["side"], "+x") == 6 * inches("1/64")


@pytest.mark.parametrize(("thick", "tongue"), [("3/4", "1/4"), ("1 1/8", "3/8")])
def test_bridle_in_three(thick, tongue):
    """Fairham p. 39 (read): three equal parts. 7/8 in gives 0.2917, a third that no chisel has."""
    assert joint("bridle").usual(solid(thick, width="2"))["tongue"] == inches(tongue)
    assert joint("bridle").usual(solid("7/8", width="2"))["tongue"] / INCH == pytest.approx(0.2917, abs=1e-4)


@pytest.mark.parametrize(("gap", "slot"), [(0, "7/16"), ("1/16", "1/2")])
def test_spline_in_two_slots(gap, slot):
    """Fairham p. 52 (read): a tongue of 7/8; two slots of 7/16 take it, two of 1/2 leave 1/16 each side (geometry)."""
    pair = built("spline", solid("3/4", width="4"), spline_width="7/8", end_gap=gap)
    assert [cut_sizes(pair, name, "groove")[0][1] for name in ("left board", "right board")] == [inches(slot)] * 2


def test_dowel_of_half_the_stock():
    """Common practice, no source: 3/4 stock takes 3/8, three diameters deep, which is 1 1/8."""
    usual = joint("dowel").usual(solid("3/4", "2", width="6"))
    assert (usual["diameter"], usual["into end"]) == (inches("3/8"), inches("1 1/8"))
    pair = built("dowel", solid("3/4", "2", width="6"))
    holes = 2 * (usual["into end"] + usual["end gap"])
    assert holes - pair.by_name["dowel 1"].length == inches("1/8")


def test_screw_with_two_thirds_in_the_second_board():
    """Common practice, no source: through 3/4 a screw of 2 1/4, two thirds of it in the second board."""
    assert joint("butt").usual(solid("3/4", width="6"))["screw"] == inches("2 1/4")


def pilot(thick, screw):
    pair = built("butt", solid(thick, width="6"), screw=screw)
    return [cut.depth for cut in pair.by_name["bottom"].cuts if cut.kind == "pilot"]


def test_pilot_hole_of_two_thirds_of_the_thread():
    """Derived: thread 2/3 of the screw (Noyes pp. 125-126, read), hole 2/3 of it (US Army course EN5155 p. 1-37, read):
    2 1/4 has a thread of 1 1/2, and a hole of 1."""
    assert pilot("3/4", "2 1/4") == [inches("1")] * 2
    assert pilot("3/4", "1 1/8") == [inches("3/8")] * 2, "4/9 of it were 1/2: past its point"
