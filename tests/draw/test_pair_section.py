"""The section of a pair in true size: as much wood as the solids have, no more of the boards than there is room for."""

import numpy as np
import pytest
from shapely import Polygon, box

from shoplib.draw.pair_section import pair_section
from shoplib.draw.pen import draw_to_scale
from shoplib.draw.scene import Chain, Leader, Region
from shoplib.draw.slices import Plane
from shoplib.draw.solids import solid, turned
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import stock_of
from shoplib.measure import INCH, MM, MM_STYLE

ROOM = (112 * MM, 92 * MM)


def regions(scene) -> dict[str, list[Polygon]]:
    found: dict[str, list[Polygon]] = {}
    for item in scene.items:
        if isinstance(item, Region):
            found.setdefault(item.name, []).append(Polygon(item.rings[0], item.rings[1:]))
    return found


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_boards_keep_in_the_room_and_out_of_one_another(kind):
    scene = pair_section(kind.build(stock_of(18 * MM, style=MM_STYLE)), ROOM)
    assert scene.size[0] <= ROOM[0] and scene.size[1] <= ROOM[1]
    boards = [part for parts in regions(scene).values() for part in parts]
    left, bottom, right, top = scene.bounds
    for number, one in enumerate(boards):
        assert one.is_valid
        assert left <= one.bounds[0] and bottom <= one.bounds[1] and one.bounds[2] <= right and one.bounds[3] <= top
        for other in boards[number + 1:]:
            assert one.intersection(other).area < MM * MM / 1000


def test_fingers_are_cut_along_the_comb_so_that_all_are_seen_that_there_is_room_for():
    """A cut across shows one finger. 81 mm in nine fingers fit into the room: five of the bottom, four of the side."""
    nine = joint("finger").build(stock_of(12 * MM, width=81 * MM, style=MM_STYLE), {"finger": 9 * MM, "fit": 0})
    cut = regions(pair_section(nine, ROOM))
    assert len(cut["bottom"]) == 5
    assert {round(part.bounds[2] - part.bounds[0]) for part in cut["bottom"]} == {9 * MM}


def test_the_wood_that_is_cut_is_what_the_solid_has_there():
    """A dado's side in a window that holds it whole: thickness times height less depth times width."""
    pair = joint("dado").build(stock_of(18 * MM, style=MM_STYLE, receives_length=60 * MM, enters_length=60 * MM))
    [side] = regions(pair_section(pair, (300 * MM, 300 * MM)))["side"]
    board = pair.by_name["side"]
    # 26 mm beyond the joint are shown at most, above and below; the teeth take a little of either end.
    deep, wide = pair.values["depth"], pair.stock.enters.thickest + pair.values["fit"]
    high = wide + 2 * 26 * MM
    assert side.area == pytest.approx(board.thickness * high - deep * wide, rel=0.03)
    notch = Polygon([(board.box.high[0] - deep, 0), (board.box.high[0], 0), (board.box.high[0], wide),
                     (board.box.high[0] - deep, wide)])
    assert side.intersection(notch).area == 0
    assert side.distance(notch) == 0


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_a_slice_is_what_solid_arithmetic_cuts_of_each_board(kind):
    """As much wood as manifold3d has in the plane, in as many pieces; holes of 24 and 32 sides differ a little."""
    pair = kind.build(stock_of(18 * MM, style=MM_STYLE))
    plane = Plane.of(pair)
    for board in pair.boards:
        turn = np.zeros((3, 4))
        for row, axis in enumerate((plane.look.across, plane.look.up, plane.look.along)):
            turn[row, :3], turn[row, 3] = turned(board)[axis], board.placement.origin[axis]
        # Half a tick on: a plane along a wall takes what lies behind it.
        flat = solid(board).transform(turn).slice(plane.at + 0.5)
        parts = plane.slice(board).parts(box(-1e9, -1e9, 1e9, 1e9))
        assert sum(part.area for part in parts) == pytest.approx(flat.area(), rel=0.003, abs=0.01 * MM * MM)
        assert len(parts) == len([one for one in flat.decompose() if one.area() > MM * MM / 100])


def test_every_size_stands_as_far_apart_as_it_says():
    for kind in JOINTS:
        for item in pair_section(kind.build(stock_of(3 * INCH // 4)), ROOM).items:
            if isinstance(item, Chain):
                assert item.sizes == tuple(b - a for a, b in zip(item.at, item.at[1:], strict=False))


def test_parts_that_lie_elsewhere_are_not_named_in_the_plane():
    pair = joint("finger").build(stock_of(18 * MM, style=MM_STYLE))
    named = {item.text for item in pair_section(pair, ROOM).items if isinstance(item, Leader)}
    assert "finger" in named
    assert "socket" not in named


def test_on_paper_a_millimetre_is_a_millimetre():
    pair = joint("dado").build(stock_of(18 * MM, style=MM_STYLE))
    scene = pair_section(pair, ROOM)
    assert draw_to_scale(scene, 1).size_mm[0] > scene.size[0] / MM
