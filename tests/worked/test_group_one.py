"""Published numbers of the drawer-front joint and the finger joint, from project files.

The same numbers stand beside the joint bench in `tests/joints/test_worked.py`. Both sets are common practice, no
source; that lip, groove and tongue are the front, and that fingers close on the width, follows.
"""

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import project_from_text
from shoplib.measure import read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject

DRAWER = """
format = 1
name = "A drawer after a published set"
show = {{ unit = "in", step = "1/32 in" }}
size = {{ by = "inside", width = "{width}", height = "{height}", depth = "{depth}" }}
carcass = {{ sheet = "case", corner = {{ kind = "rabbet" }} }}

[sheets.case]
kind = "plywood"
nominal = "3/4 in"

[sheets.half]
kind = "solid"
nominal = "1/2 in"

[sheets.thin]
kind = "plywood"
nominal = "1/4 in"

[[bays]]
kind = "drawers"

[bays.drawers]
slide = "box rides on the shelf"
box_sheet = "half"
bottom_sheet = "thin"
{drawers}
"""


def inches(text):
    return read_length(f"{text} in")


def box_of(drawers, width="20 in", height="5 in", depth="18 1/2 in"):
    """The one drawer that is planned, its boards by what they are called, and nothing that stops it."""
    text = DRAWER.format(drawers=drawers, width=width, height=height, depth=depth)
    cabinet = solve(project_from_text(text))
    assert [finding.text for finding in check(cabinet) if finding.level == "stop"] == []
    return {board.name.removeprefix("bay 1 drawer 1 "): board for board in cabinet.groups["bay 1 drawer 1"]}


def deep(box):
    return max(board.box.high[1] for board in box.values()) - min(board.box.low[1] for board in box.values())


def cut(board, kind, into="side"):
    return next(one for one in board.cuts if one.kind == kind and into in one.for_board)


LOCK = """corner = {{ kind = "drawer lock", lip = "{lip} in", tongue = "{tongue} in" }}
back_corner = {{ kind = "rabbet" }}
front_sheet = "case"
"""


@pytest.mark.parametrize(("lip", "groove", "tongue"), [("1/4", "1/4", "1/4"), ("1/4", "3/8", "1/8")])
def test_drawer_front_of_three_quarters(lip, groove, tongue):
    """Front 3/4, side 1/2: lip, groove and tongue are the front; the dado begins a groove from the side's end."""
    box = box_of(LOCK.format(lip=lip, tongue=tongue))
    front, side = box["box front"], box["left box side"]
    slot, shortened, dado = cut(front, "groove"), cut(front, "rabbet"), cut(side, "dado", "front")
    assert front.thickness - slot.high[2] == inches(lip)
    assert slot.high[2] - slot.low[2] == inches(groove)
    assert slot.low[2] == inches(tongue)
    assert slot.high[0] - slot.low[0] == inches("1/2")  # as deep as the side is thick
    assert shortened.high[0] - shortened.low[0] == inches("1/4")  # a tongue of half the side is left
    assert (dado.low[0], dado.high[0]) == (inches(groove), inches(groove) + inches(tongue))
    assert dado.high[2] - dado.low[2] == inches("1/4")


def test_side_is_shorter_than_the_drawer_by_two_lips():
    """Lip 1/4 in front and back, drawer 18 deep: side 17 1/2. Front and back are as long as the box is wide."""
    lock = 'corner = { kind = "drawer lock", lip = "1/4 in", tongue = "1/4 in" }\nfront_sheet = "case"'
    box = box_of(f'{lock}\nback_corner = {{ kind = "drawer lock", lip = "1/4 in", tongue = "1/8 in" }}')
    short = inches("18") - deep(box)  # what the depth of this case leaves
    assert box["left box side"].length + short == inches("17 1/2")
    wide = box["right box side"].box.high[0] - box["left box side"].box.low[0]
    assert box["box front"].length == box["box back"].length == wide


def test_nine_fingers_of_a_half_in_four_and_a_half():
    """Five fingers on the one board and four on the other; the layout closes on the width."""
    box = box_of('corner = { kind = "finger", finger = "1/2 in" }')
    front, side = box["box front"], box["left box side"]
    assert front.width == side.width == inches("4 1/2")
    for board, mate, count in ((front, "left box side", 4), (side, "box front", 5)):
        sockets = [one for one in board.cuts if one.kind == "socket" and mate in one.for_board]
        assert len(sockets) == count
        assert {one.high[1] - one.low[1] for one in sockets} == {inches("1/2")}
    assert (front.length, side.length) == (
        box["right box side"].box.high[0] - side.box.low[0], deep(box)
    )  # both are cut to the full outside


def test_fingers_that_do_not_close_are_refused_with_what_is_over():
    """5 in is 13 1/3 fingers of 3/8: 1/8 is over (common practice, no source). Here: the sides of a case 5 in deep."""
    text = DRAWER.format(drawers="", width="20 in", height="5 in", depth="5 in").replace(
        'corner = { kind = "rabbet" }', 'corner = { kind = "finger", finger = "3/8 in" }'
    )
    text = text[: text.index("[[bays]]")]
    with pytest.raises(ImpossibleProject) as refused:
        solve(project_from_text(text))
    assert refused.value.key == "carcass.corner.finger"
    assert "5 in is 13.33 fingers of 3/8 in: 13 of them leave 1/8 in" in refused.value.sentence
