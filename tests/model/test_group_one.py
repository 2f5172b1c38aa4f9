"""Pocket screws, drawer-front joints and fingers in a project: what is refused, with the amount, and what follows."""

import pytest

from shoplib.documents.project_file import project_from_text
from shoplib.documents.project_text import project_text
from shoplib.measure import MM
from shoplib.model.board import PrismCut
from shoplib.model.cabinet import solve
from shoplib.model.finger_layout import fingers
from shoplib.model.project import ImpossibleProject

CASE = """
format = 1
name = "Case for hubs"
show = {{ unit = "mm", step = "0.5 mm" }}
size = {{ width = "500 mm", height = "400 mm", depth = "450 mm" }}
carcass = {{ sheet = "ply", {carcass} }}
base = {{ {base} }}
[sheets.ply]
kind = "plywood"
nominal = "18 mm"
readings = ["17.8 mm", "18.1 mm"]
[sheets.box]
kind = "plywood"
nominal = "12 mm"
readings = ["11.8 mm", "12.1 mm"]
[sheets.thin]
kind = "plywood"
nominal = "6 mm"
[[bays]]
kind = "drawers"
[bays.drawers]
box_sheet = "{box}"
bottom_sheet = "thin"
slide = "{slide}"
{drawers}
"""
SLIDE = "side-mount ball-bearing, metric lengths"
RABBET = 'corner = { kind = "rabbet" }'


def project_of(drawers=RABBET, carcass=RABBET, base='kind = "none"', box="box", slide=SLIDE):
    return project_from_text(CASE.format(drawers=drawers, carcass=carcass, base=base, box=box, slide=slide))


REFUSED = [  # amounts up to a step; the first by hand: 5.975 - 6 sin 15 - 4.75 cos 15 = -0.166, for a sheet of 11.95 mm
    ({"drawers": 'corner = { kind = "pocket screws" }'}, "bays[1].drawers.corner.kind", "0.5 mm is missing"),
    ({"drawers": 'corner = { kind = "finger", finger = "200 mm" }'}, "bays[1].drawers.corner.finger", "400 mm is"),
    ({"drawers": 'corner = { kind = "finger", finger = "2 mm" }'}, "bays[1].drawers.corner.finger", "1 mm is missing"),
    ({"carcass": 'corner = { kind = "finger", finger = "20 mm" }'}, "carcass.corner.finger", "leave 10 mm"),
    ({"carcass": 'corner = { kind = "finger" }, top = "over", overhang_sides = "12 mm"'}, "carcass.corner.kind",
     "lies 12 mm from the end"),
    ({"carcass": 'corner = { kind = "finger" }', "base": 'kind = "toe space", height = "80 mm"'},
     "carcass.corner.kind", "lies 80 mm from the end"),
    ({"carcass": 'corner = { kind = "drawer lock" }'}, "carcass.corner.kind", "corners of drawer boxes"),
    ({"drawers": 'corner = { kind = "drawer lock", lip = "2 mm" }'}, "bays[1].drawers.corner.lip", "1 mm is missing"),
    ({"drawers": 'corner = { kind = "drawer lock", lip = "6 mm" }'}, "bays[1].drawers.corner.tongue", "is missing"),
    ({"drawers": 'corner = { kind = "drawer lock", depth = "9 mm" }'}, "bays[1].drawers.corner.depth",
     "0.5 mm is missing"),
    ({"drawers": 'corner = { kind = "drawer lock" }', "slide": "side-hung wood runner"}, "bays[1].drawers.corner.kind",
     "closes at its end"),
    ({"drawers": 'corner = { kind = "drawer lock" }\nbehind_back = "10 mm"'}, "bays[1].drawers.behind_back", "dado"),
    ({"drawers": 'back_corner = { kind = "dado" }\nbehind_back = "390 mm"'}, "bays[1].drawers.behind_back", "no room"),
    ({"drawers": 'corner = { kind = "finger", depth = "5 mm" }'}, "bays[1].drawers.corner.depth", "take it out"),
    ({"drawers": 'corner = { kind = "rabbet", lip = "5 mm" }'}, "bays[1].drawers.corner.lip", "take it out"),
    ({"carcass": 'corner = { kind = "dado", finger = "5 mm" }'}, "carcass.corner.finger", "take it out"),
    ({"carcass": 'shelf = { kind = "pocket screws", stop = "5 mm" }'}, "carcass.shelf.stop", "not stopped"),
]  # fmt: skip


@pytest.mark.parametrize(("what", "key", "says"), REFUSED)
def test_what_cannot_be_is_refused_in_one_sentence(what, key, says):
    with pytest.raises(ImpossibleProject) as refused:
        solve(project_of(**what))
    assert refused.value.key == key
    assert says in refused.value.sentence
    assert not refused.value.sentence.endswith(".")
    assert "; " not in refused.value.sentence.partition("; ")[2]


@pytest.mark.parametrize(
    "drawers",
    [
        'corner = { kind = "drawer lock", lip = "3.5 mm", tongue = "4 mm", fit = "0.1 mm" }',
        'corner = { kind = "finger", finger = "8 mm" }\nfront_sheet = "ply"',
        'back_corner = { kind = "dado", depth = "5 mm", stop = "8 mm" }\nbehind_back = "15 mm"',
    ],
)
def test_a_project_is_saved_and_read_again(drawers):
    project = project_of(drawers)
    assert project_from_text(project_text(project)) == project


def box(cabinet):
    return {board.name.removeprefix("bay 1 drawer 1 "): board for board in cabinet.groups["bay 1 drawer 1"]}


def test_a_front_with_lips_is_as_long_as_the_box_is_wide_and_the_sides_end_at_them():
    cabinet = solve(project_of('corner = { kind = "drawer lock", lip = "4 mm" }'))
    parts, plain = box(cabinet), box(solve(project_of()))
    wide = plain["right box side"].box.high[0] - plain["left box side"].box.low[0]
    assert parts["box front"].length == parts["box back"].length == wide
    assert parts["left box side"].length == plain["left box side"].length - 2 * 4 * MM


def test_boards_with_fingers_are_cut_to_the_full_outside():
    parts, plain = box(solve(project_of('corner = { kind = "finger" }'))), box(solve(project_of()))
    wide = plain["right box side"].box.high[0] - plain["left box side"].box.low[0]
    assert (parts["box front"].length, parts["left box side"].length) == (wide, plain["left box side"].length)


def test_a_given_finger_makes_the_box_a_whole_number_of_them_high():
    high = box(solve(project_of('corner = { kind = "finger", finger = "11 mm" }')))["box front"].width
    planned = box(solve(project_of()))["box front"].width
    assert high % (11 * MM) == 0
    assert 0 <= planned - high < 11 * MM


@pytest.mark.parametrize(("width", "finger", "fit"), [(990, 90, 0), (1000, 100, 8), (1003, 77, 5)])
def test_sockets_of_both_boards_are_a_finger_and_half_the_fit(width, finger, fit):
    layout = fingers(width, finger, fit)
    own, mate = (sum(high - low for low, high in spans) for spans in (layout.own, layout.mate))
    assert own + mate == width
    for places, cut in ((layout.mate, layout.sockets), (layout.own, layout.mate_sockets)):
        for (low, high), (begin, end) in zip(places, cut, strict=True):
            assert low == begin
            assert end - high == (0 if high == width else fit // 2)


@pytest.mark.parametrize(("up", "through"), [
    (10, {"box front", "box back"}), (2, {"left box side", "right box side"}), (6, set()),
])
def test_a_groove_stops_short_only_where_it_would_come_out_in_a_finger(up, through):
    """By hand: fingers of 10 mm, the front's at 0 and 20, the sides' at 10 and 30; the groove is 6 mm wide."""
    drawers = f'corner = {{ kind = "finger", finger = "10 mm", fit = "0.1 mm" }}\nbottom_up = "{up} mm"'
    parts, found = box(solve(project_of(drawers))), set()
    for name, board in parts.items():
        for groove in (cut for cut in board.cuts if cut.kind == "groove"):
            ends = {groove.low[0], board.length - groove.high[0]}
            assert len(ends) == 1
            found |= {name} if ends == {0} else set()
    assert found == through


def test_pockets_open_where_they_are_not_seen():
    """Of what lies level below, of a rail behind, of a box front before it, where the false front covers them."""
    rail = 'corner = { kind = "pocket screws" }, rails = [{ width = "80 mm", joint = { kind = "pocket screws" } }]'
    cabinet = solve(project_of('corner = { kind = "pocket screws" }', rail, box="ply"))
    opens = {}
    for board in cabinet.boards:
        for one in board.cuts:
            if isinstance(one, PrismCut) and one.kind == "pocket":
                low = board.placement.point_to_world((0, 0, one.low[2]))
                high = board.placement.point_to_world((0, 0, one.high[2]))
                axis = next(k for k in range(3) if low[k] != high[k])
                faces = {board.box.low[axis]: "low", board.box.high[axis]: "high"}
                opens.setdefault(board.role, set()).update(faces.get(end[axis], "") for end in (low, high))
    assert {role: sides - {""} for role, sides in opens.items()} == {
        "bottom": {"low"}, "top": {"low"}, "rail": {"high"}, "box front": {"low"}, "box back": {"high"},
    }  # fmt: skip


def test_a_part_that_was_measured_decides_the_box():
    """A front with lips, and sides that end inside them, as measured."""
    drawers = 'corner = { kind = "drawer lock", lip = "4 mm" }'
    planned = box(solve(project_of(drawers)))
    front, side = planned["box front"].length - 2 * MM, planned["left box side"].length - 3 * MM
    told = f'"bay 1 drawer 1 box front" = {{ length = "{front / MM} mm" }}\n' + "\n".join(
        f'"bay 1 drawer 1 {hand} box side" = {{ length = "{side / MM} mm" }}' for hand in ("left", "right")
    )
    text = CASE.format(drawers=drawers, carcass=RABBET, base='kind = "none"', box="box", slide=SLIDE)
    parts = box(solve(project_from_text(f"{text}\n[measured.parts]\n{told}")))
    assert (parts["box front"].length, parts["box back"].length) == (front, front)
    assert {parts[f"{hand} box side"].length for hand in ("left", "right")} == {side}
    assert parts["right box side"].box.high[0] - parts["left box side"].box.low[0] == front
