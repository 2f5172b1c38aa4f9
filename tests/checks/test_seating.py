"""Joints: seated ones are silent, each way of not being seated is told with its exact amount."""

import pytest

from shoplib.checks.seating import find_unseated
from tests.checks.cabinets import board, cabinet, joint, ticks, tool_case

DADO = joint("dado", "shelf", "side", "-x", 6, 0.1, 0.2)


def side(*cuts):
    return board("side", (0, 0, 0), (18, 300, 400), "x", *cuts)


def dado(depth=6.0, low=100.0, width=18.2, front=0.0, kind="dado", name="shelf"):
    return (kind, (18 - depth, front, low), (18, 300, low + width), name)


def shelf(end=12.2, low=100.0, thick=18.0):
    return board("shelf", (end, 0, low), (400, 300, low + thick), "z")


def findings(side_board, shelf_board, the_joint=DADO):
    return find_unseated(cabinet([side_board, shelf_board], [the_joint]))


def test_a_sound_case_with_its_drawer_is_seated():
    assert find_unseated(tool_case()) == ()


def test_a_dado_is_seated():
    assert findings(side(dado()), shelf()) == ()


def test_a_dado_too_shallow():
    (found,) = findings(side(dado(depth=5)), shelf(13.2), joint("dado", "shelf", "side", "-x", 6, 0.1, 1.2))
    assert (found.level, found.amount, found.boards) == ("stop", ticks(1), ("shelf", "side"))
    assert found.text == (
        "The dado in side for shelf is 1 mm too shallow: it should be 6 mm deep. Cut it deeper by 1 mm."
    )


def test_a_dado_too_deep_is_a_warning():
    (found,) = findings(side(dado(depth=6.5)), shelf())
    assert (found.level, found.amount) == ("warn", ticks(0.5))
    assert found.text == (
        "The dado in side for shelf is 0.5 mm too deep: it should be 6 mm deep. "
        "Set the cutter higher by 0.5 mm; if it is cut already, glue in a slip of that thickness."
    )


def test_a_board_too_short():
    (found,) = findings(side(dado()), shelf(14.2))
    assert (found.level, found.amount) == ("stop", ticks(2))
    assert found.text == (
        "shelf stands 2 mm short of its place in the dado of side. "
        "Make it longer by 2 mm, or bring the boards closer."
    )


def test_a_board_that_does_not_reach_the_other_at_all():
    (found,) = findings(side(dado()), shelf(21))
    assert (found.level, found.amount) == ("stop", ticks(8.8))


def test_an_end_gap_smaller_than_stated_is_a_warning():
    (found,) = findings(side(dado()), shelf(12.1))
    assert (found.level, found.amount) == ("warn", ticks(0.1))
    assert found.text == (
        "shelf goes 0.1 mm too far into the dado of side: the gap at its end should be 0.2 mm. "
        "Make it shorter by 0.1 mm."
    )


def test_a_board_too_long_for_its_cut():
    found = findings(side(dado()), shelf(11.5), joint("dado", "shelf", "side", "-x", 6, 0.1))
    assert [(f.level, f.amount) for f in found] == [("stop", ticks(0.5))]
    assert found[0].text == (
        "shelf is 0.5 mm too long for the dado of side and would strike the floor of the dado. "
        "Make it shorter by 0.5 mm."
    )


def test_a_board_that_comes_out_behind_is_told_by_all_that_it_is_too_long():
    """6 deep, and it sticks out 5 mm beyond the outer face: 12 + 5 must come off, not the 12 of wood that it struck."""
    (found,) = findings(side(dado()), shelf(-5), joint("dado", "shelf", "side", "-x", 6, 0.1))
    assert (found.level, found.amount) == ("stop", ticks(17))
    assert found.text.endswith("Make it shorter by 17 mm.")


def test_no_cut_at_all():
    (found,) = findings(side(), shelf())
    assert (found.level, found.amount) == ("stop", ticks(6))
    assert found.text == (
        "side has no dado for shelf. Cut one 6 mm deep, or make shelf end at the face."
    )


@pytest.mark.parametrize(
    ("width", "level", "amount", "text"),
    [
        (18.1, "stop", 0.1,
         "The dado in side is 0.1 mm too narrow for shelf: it needs the thickest reading 18.1 mm "
         "and 0.1 mm of clearance. Widen it by 0.1 mm."),
        (18.5, "warn", 0.3,
         "The dado in side leaves 0.3 mm more play to shelf than the 0.1 mm meant. Make it narrower by 0.3 mm."),
    ],
)  # fmt: skip
def test_clearance_is_counted_from_the_thickest_reading(width, level, amount, text):
    (found,) = findings(side(dado(width=width)), shelf())
    assert (found.level, found.amount, found.text) == (level, ticks(amount), text)


def test_a_cut_that_is_too_narrow_is_told_once():
    found = findings(side(dado(width=17.5)), shelf())
    assert [f.amount for f in found] == [ticks(0.7)]


def test_only_the_inner_wall_of_a_rabbet_counts():
    rabbet = joint("rabbet", "shelf", "side", "-x", 6, 0.1, 0.2)
    assert findings(side(dado(low=0, kind="rabbet")), shelf(low=0), rabbet) == ()
    (found,) = findings(side(dado(low=0, width=19, kind="rabbet")), shelf(low=0), rabbet)
    assert (found.level, found.amount) == ("warn", ticks(0.8))
    top = side(dado(low=381.8, kind="rabbet"))
    assert findings(top, shelf(low=382), rabbet) == ()


def test_a_groove_laid_too_low():
    (found,) = findings(side(dado(low=97)), shelf())
    assert (found.level, found.amount) == ("stop", ticks(2.8))
    assert found.text == (
        "shelf stands 2.8 mm over the wall of the dado in side. Move the dado by 2.8 mm; if it is cut already, glue a "
        "strip into it and cut it again, or make side anew."
    )


def test_a_stopped_dado_that_stops_too_soon():
    (found,) = findings(side(dado(front=25)), shelf())
    assert found.amount == ticks(25)
    assert "over the end of the dado" in found.text


def test_a_notched_corner_clears_the_stop():
    corner = ("notch", (12.2, 0, 100), (18, 25, 118), "side")
    notched = board("shelf", (12.2, 0, 100), (400, 300, 118), "z", corner)
    assert findings(side(dado(front=25)), notched) == ()


TONGUE = joint("tongue", "shelf", "side", "-x", 6, 0.1, 0, tongue=8)


def tongued(thick):
    rabbet = ("rabbet", (12, 0, 100 + thick), (18, 300, 118), "side")
    return board("shelf", (12, 0, 100), (400, 300, 118), "z", rabbet)


def test_a_tongue_fits_its_narrow_dado():
    assert findings(side(dado(width=8.1)), tongued(8), TONGUE) == ()


@pytest.mark.parametrize(
    ("thick", "level", "amount", "word"),
    [(8.05, "stop", 0.05, "too thick"), (7.5, "warn", 0.5, "too thin")],
)
def test_a_rabbet_that_leaves_another_tongue(thick, level, amount, word):
    (found,) = findings(side(dado(width=8.1)), tongued(thick), TONGUE)
    assert (found.level, found.amount) == (level, ticks(amount))
    assert word in found.text and "it should be 8 mm" in found.text


def test_a_tongue_dado_too_narrow():
    (found,) = findings(side(dado(width=8)), tongued(8), TONGUE)
    assert (found.level, found.amount) == ("stop", ticks(0.1))
    assert "needs the tongue 8 mm" in found.text


def test_a_back_laid_into_a_rabbet_from_behind():
    rabbet = ("rabbet", (12, 293.8, 0), (18, 300, 400), "back")
    back = board("back", (12, 293.8, 0), (400, 299.8, 400), "y", sheet="thin sheet")
    into = joint("rabbet", "back", "side", "-y", 6.2)
    assert findings(side(rabbet), back, into) == ()
    back = board("back", (12, 294, 0), (400, 300, 400), "y", sheet="thin sheet")
    (found,) = findings(side(rabbet), back, into)
    assert (found.level, found.amount) == ("stop", ticks(0.2))


BUTT = joint("butt", "shelf", "side", "-x")


@pytest.mark.parametrize(
    ("end", "low", "amount", "text"),
    [
        (19.5, 100, 1.5, "The end of shelf stops 1.5 mm short of side. "
         "Make shelf that much longer, or move it up to side."),
        (16, 100, 2, "The end of shelf goes 2 mm past the face of side that it should lie against. "
         "Make shelf that much shorter."),
        (18, 410, 10, "The end of shelf misses side sideways by 10 mm. "
         "Move one of them until the end lies on wood."),
    ],
)  # fmt: skip
def test_a_butt_end_that_does_not_lie_against_its_receiver(end, low, amount, text):
    (found,) = findings(side(), shelf(end, low), BUTT)
    assert (found.level, found.amount, found.text) == ("stop", ticks(amount), text)


def test_a_butt_end_that_touches():
    assert findings(side(), shelf(18), BUTT) == ()


def test_a_butt_in_a_notch_touches_the_bottom_of_the_notch():
    notched = side(("notch", (10, 0, 90), (18, 300, 130)))
    assert findings(notched, shelf(10), BUTT) == ()
    (found,) = findings(notched, shelf(18), BUTT)
    assert found.amount == 0 and "meets only air" in found.text


def test_a_joint_whose_board_is_not_there():
    (found,) = find_unseated(cabinet([side()], [DADO]))
    assert (found.level, found.boards) == ("stop", ("shelf", "side"))
    assert found.text == (
        "The dado of shelf with side cannot be made: there is no board called shelf. "
        "Add it, or take the joint away."
    )


def test_a_board_beside_its_joint_is_not_seated():
    (found,) = findings(side(dado()), shelf(low=450.0))
    assert (found.level, found.amount) == ("stop", ticks(50))
    assert found.text.startswith("shelf misses the dado of side sideways by 50 mm.")
