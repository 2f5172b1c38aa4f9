"""The judge itself: a plan made by hand passes, and each kind of fault in wood and joints is told."""

import pytest

from tests.judge.hand_made import BOX, BOX_GROOVE, CASE, FIT, RABBET, RABBET_END
from tests.judge.judge import judge
from tests.judge.mutate import board, cut_for, joint, mirror_cuts, move, shorten, told
from tests.judge.solids import Body


def test_the_hand_made_plan_has_no_fault(plan):
    assert judge(plan) == []


def test_the_hand_made_sizes_are_the_trade_s_own_sums(plan):
    """Rules read in published work: front between rabbeted sides = outside - 2 sides + 2 rabbets;
    a pair of 12.7 mm (1/2 in) side slides takes 25.4 mm (1 in) of the opening.
    """
    outside_of_box = 600 - 2 * CASE - 25.4
    front = board(plan, "bay 1 drawer 1 box front")["size"][0]
    assert front == pytest.approx(outside_of_box - 2 * BOX + 2 * 6)
    assert board(plan, "bottom")["size"][0] == pytest.approx(600 - 2 * CASE + 2 * (RABBET - RABBET_END))


def test_the_hand_of_a_description_does_not_matter(plan):
    """Each board described from its opposite corner: u and v reversed, which stays right-handed."""
    opposite = {"+": "-", "-": "+"}
    for turned in plan["boards"]:
        length, width, _ = turned["size"]
        turned["origin"] = [float(c) for c in Body(turned).to_world([[length, width, 0]])[0].round(9)]
        u, v, w = turned["axes"]
        turned["axes"] = [opposite[u[0]] + u[1], opposite[v[0]] + v[1], w]
        mirror_cuts(turned, 0)
        mirror_cuts(turned, 1)
    assert judge(plan) == []


class TestWood:
    def test_a_cut_that_takes_off_an_end(self, plan):
        low, high = [0, 0, 0], [1, 500, 18.1]
        board(plan, "left side")["cuts"].append({"kind": "rabbet", "low": low, "high": high, "for": ""})
        assert told(plan, "cuts in left side take off a whole end")

    def test_a_board_cut_in_two(self, plan):
        low, high = [200, 0, 0], [201, 500, 18.1]
        board(plan, "left side")["cuts"].append({"kind": "dado", "low": low, "high": high, "for": ""})
        assert told(plan, "cuts in left side part it into 2")

    def test_overlap_is_told_with_its_volume(self, plan):
        """The box bottom sits on the lower wall of its groove: 1 mm down is 1 mm of wood, as long as the
        side between its rabbets and as wide as the bottom is in it.
        """
        name = "bay 1 drawer 1 "
        move(plan, name + "box bottom", (0, 0, -1))
        volume = (450 - 2 * 12.2) * (BOX_GROOVE - 0.5) * 1
        assert told(plan, "overlap", f"{name}left", f"{volume:.4f} mm3")

    def test_outside(self, plan):
        plan["outside"]["width"] += 0.01
        assert told(plan, "outside: width over all boards is 600")

    def test_envelope_under_outside(self, plan):
        plan["envelope"] = plan["outside"] | {"height": 399}
        assert told(plan, "the envelope's height")


class TestJoints:
    def test_dado_too_shallow(self, plan):
        cut_for(plan, "left side", "bottom")["high"][2] -= 0.5
        faults = judge(plan)
        assert any("overlap: left side and bottom" in f for f in faults)  # 0.2 end gap, 0.5 less: 0.3 of wood
        assert any("bottom in left side" in f and "in the 0.2 mm left at the end" in f for f in faults)
        assert any("5.5000 mm deep, not 6" in f for f in faults)

    def test_dado_too_shallow_within_the_end_gap(self, plan):
        cut_for(plan, "left side", "bottom")["high"][2] -= 0.1
        assert told(plan, "bottom in left side", "in the 0.2 mm left at the end")

    def test_dado_too_deep(self, plan):
        cut_for(plan, "left side", "bottom")["high"][2] += 0.5
        assert told(plan, "bottom in left side", "no wood 0.2 mm behind its end")

    def test_groove_low(self, plan):
        groove = cut_for(plan, "bay 1 drawer 1 left", "bay 1 drawer 1 box bottom")
        groove["low"][1] -= 1
        groove["high"][1] -= 1
        assert told(plan, "overlap: bay 1 drawer 1 left and bay 1 drawer 1 box bottom")
        assert told(plan, "bay 1 drawer 1 box bottom in bay 1 drawer 1 left", "no cut holds its end")

    def test_part_short(self, plan):
        shorten(board(plan, "bottom"), 0, 1)
        reach = RABBET - RABBET_END
        assert told(
            plan, "bottom in right side", f"reaches {reach - 1:.4f} mm past the face, not {reach:.4f}"
        )

    def test_part_too_short_to_reach_the_face(self, plan):
        shorten(board(plan, "bottom"), 0, 10)
        assert told(plan, "bottom in right side", "reaches -4.2000 mm")

    def test_part_long(self, plan):
        board(plan, "bottom")["size"][0] += 0.1
        assert told(plan, "bottom in right side", "reaches 5.9000")

    def test_the_direction_matters(self, plan):
        joint(plan, "bottom", "left side")["axis"] = "+x"
        assert told(plan, "bottom in left side", "past the face")

    def test_a_board_that_misses_its_receiver(self, plan):
        joint(plan, "bottom", "left side")["axis"] = "-z"
        joint(plan, "bay 1 drawer 1 front", "bay 1 drawer 1 box front")["receives"] = (
            "bay 1 drawer 2 box front"
        )
        assert told(plan, "bay 1 drawer 1 front in bay 1 drawer 2 box front: no wood stands over the face")

    def test_cut_for_the_mean_and_not_for_the_thickest(self, plan):
        name = "bay 1 drawer 1 "
        groove = cut_for(plan, name + "left", name + "box bottom")
        groove["high"][1] -= 0.1
        assert told(
            plan, f"{name}box bottom in {name}left", "6.2000 mm wide, not 6.3000 (6.2 and 0.1 mm fit)"
        )

    def test_rabbet_wall_too_far(self, plan):
        cut_for(plan, "left side", "bottom")["high"][0] += 1
        assert told(plan, "bottom in left side: stands 1.2000 mm off the wall")

    def test_groove_too_wide(self, plan):
        cut_for(plan, "left side", "back")["high"][1] += 0.2
        assert told(plan, "back in left side", "6.5000 mm wide")

    def test_no_cut(self, plan):
        board(plan, "left side")["cuts"] = [
            c for c in board(plan, "left side")["cuts"] if c["for"] != "bottom"
        ]
        assert told(plan, "overlap: left side and bottom")
        assert told(plan, "bottom in left side", "no cut holds its end")

    def test_butt_that_does_not_touch(self, plan):
        move(plan, "bay 1 drawer 1 front", (0, -1, 0))
        assert told(plan, "bay 1 drawer 1 front in bay 1 drawer 1 box front: reaches -1.0000 mm")

    def test_a_cut_whose_joint_is_missing(self, plan):
        plan["joints"] = [
            j for j in plan["joints"] if (j["enters"], j["receives"]) != ("bottom", "left side")
        ]
        assert told(plan, "rabbet in left side for bottom, but no joint")

    def test_mirrored_cuts(self, plan):
        """The same axes, the cuts of the other hand: grooves on the outside face."""
        mirror_cuts(board(plan, "left side"), 2)
        assert told(plan, "overlap: left side and bottom")

    def test_mirrored_front_to_back(self, plan):
        mirror_cuts(board(plan, "left side"), 1)
        assert told(plan, "overlap: left side and back")


def with_tongues(plan, name="bay 1 drawer 1 "):
    """The drawer's front corners as a 5 mm tongue in a dado, the tongue to the inside."""
    tongue, deep = 5.0, 6.0
    front = board(plan, name + "box front")
    for side, u in (("left", (0, deep)), ("right", (front["size"][0] - deep, front["size"][0]))):
        front["cuts"].append(
            {"kind": "rabbet", "low": [u[0], 0, tongue], "high": [u[1], 120, BOX], "for": name + side}
        )
        dado = cut_for(plan, name + side, name + "box front")
        dado["low"][0], dado["high"][0] = BOX - tongue - FIT, BOX
        dado["kind"] = "dado"
        own = joint(plan, name + "box front", name + side)
        own |= {"kind": "tongue", "tongue": tongue, "depth": deep}
    return plan


class TestTongue:
    def test_a_tongue_in_a_narrower_dado_passes(self, plan):
        assert judge(with_tongues(plan)) == []

    def test_tongue_too_thick(self, plan):
        name = "bay 1 drawer 1 "
        for c in board(with_tongues(plan), name + "box front")["cuts"]:
            if c["for"] == name + "left":
                c["low"][2] += 0.5
        assert told(
            plan, f"{name}box front in {name}left", "5.5000 mm of its thickness enters, not a tongue of 5"
        )
        assert told(plan, f"overlap: {name}left and {name}box front")

    def test_dado_not_for_the_tongue(self, plan):
        name = "bay 1 drawer 1 "
        cut_for(with_tongues(plan), name + "left", name + "box front")["low"][0] -= 0.5
        assert told(plan, f"{name}box front in {name}left", "5.6000 mm wide, not 5.1000")
