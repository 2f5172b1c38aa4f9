"""Cuts typed otherwise than planned: the line that is told, and what the boards then do, worked by hand.

The stand is 900 mm wide, of 18.2 mm birch; its bay 1 has shelves dadoed 6 mm deep into the left side at
260.6 and 521.2 mm and into the divider, which stands in the bottom, at 248.5 and 509.1 mm.
"""

from shoplib.checks import check
from shoplib.documents.hand_list import parse_hand_list
from shoplib.lists.compare import compare
from shoplib.lists.cut_list import kinds
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, Fronts, JointChoice
from tests.lists.projects import chest, stand
from tests.lists.test_compare import typed


def edited(project, *changes: tuple[str, str, str], column: str = "cuts"):
    """The differences of the plan's own list where (names, old, new) are replaced in one column."""
    cabinet = solve(project)
    done = set()

    def edit(row):
        for names, old, new in changes:
            if row["names"] == names and old in row[column]:
                row[column] = row[column].replace(old, new)
                done.add(names)

    differences = compare(cabinet, parse_hand_list(typed(cabinet, edit)).rows, check).differences
    assert done == {names for names, _, _ in changes}
    return differences


def open_case():
    """The chest without drawers, fronts and back: sides, and bottom and top between them in rabbets."""
    carcass = Carcass("case sheet", corner=JointChoice("rabbet"), back=Back("none"))
    return chest(bays=(Bay("open"),), fronts=Fronts("none"), carcass=carcass)


def test_a_dado_that_is_high_at_one_end_leaves_the_shelf_crooked():
    (found,) = edited(stand(), ("left side", "260.6 mm", "272.6 mm"))
    assert found.lines == (
        (2, "left side: the dado for the fixed shelf is 272.6 mm from the bottom end, planned 260.6 mm: 12 mm high."),
    )
    assert found.slip == "left side, dado for the fixed shelf 12 mm high"
    assert found.would == ("bay 1 shelf 1 would not lie level: left side has it 12 mm higher than divider 1",)


def test_dadoes_that_are_high_at_both_ends_are_one_slip_and_take_the_shelf_along():
    (found,) = edited(stand(), ("left side", "260.6 mm", "272.6 mm"), ("divider 1", "248.5 mm", "260.5 mm"))
    assert [line for line, _ in found.lines] == [2, 4]
    assert found.would == ("bay 1 shelf 1 stands 12 mm high",)


def test_shallow_corner_rabbets_make_the_case_wide():
    # Bottom and top are as long as planned and go 0.1 in less far into either side: 0.2 in together.
    sides = "left side; right side"
    (found,) = edited(open_case(), (sides, "0.352 in deep", "0.252 in deep"))
    assert found.lines[0][1] == (
        "both sides: the rabbet for the bottom is 0.252 in deep, planned 0.352 in: 0.1 in shallow; "
        "the rabbet for the top is 0.252 in deep, planned 0.352 in: 0.1 in shallow."
    )
    assert "the right side stands 13/64 in too far right" in found.would  # 0.2 in at the nearest 1/64
    assert "the cabinet comes 13/64 in too wide" in found.would
    assert not any("too shallow" in sentence for sentence in found.would)  # the line has told it


def test_one_deep_rabbet_of_two_lets_nothing_further_in():
    sides, bottom = "left side; right side", "in deep for the bottom"
    (found,) = edited(open_case(), (sides, f"0.352 {bottom}", f"0.402 {bottom}"))
    assert not any("stand" in sentence for sentence in found.would)


def test_a_narrow_groove_is_told_by_what_does_not_go_in():
    name = next("; ".join(kind.names) for kind in kinds(solve(chest())) if kind.first.role == "box side")
    (found,) = edited(chest(), (name, "groove 0.25 in wide", "groove 0.2 in wide"))
    assert "the groove for the box bottom is 0.2 in wide, planned 0.25 in: 0.05 in narrow." in found.lines[0][1]
    assert any(
        "left and right box side is 0.05 in too narrow for bay 1 drawer 1 box bottom" in sentence
        for sentence in found.would
    )


def test_a_cut_on_a_board_that_lies_turned_is_put_where_it_lies_there():
    # Bottom and top are one row; told of the bottom, the dado lies at the same distance in the top.
    (found,) = edited(stand(), ("bottom; top", "431.8 mm", "451.8 mm"))
    assert found.would[0] == "right side, divider 1 and bay 2 shelf 1 stand 20 mm too far right"
    assert not any("stand square" in sentence for sentence in found.would)


def test_a_wide_dado_gives_play_and_moves_nothing():
    (found,) = edited(stand(), ("left side", "dadoes 18.2 mm wide", "dadoes 19.2 mm wide"))
    assert "the dado for the fixed shelf is 19.2 mm wide, planned 18.2 mm: 1 mm wide" in found.lines[0][1]
    assert not any("stand" in sentence or "level" in sentence for sentence in found.would)
    assert "leaves 1 mm more play to bay 1 shelf 1" in found.would[0]


def test_a_phrase_that_says_only_what_is_odd_is_completed_from_the_plan():
    cabinet = solve(stand())

    def short(row):
        if row["names"] == "left side":
            row["cuts"] = "rabbet 18.2 wide for the bottom; rabbet for the top, 6 deep; " + row["cuts"].split("; ")[2]

    (found,) = compare(cabinet, parse_hand_list(typed(cabinet, short)).rows, check).differences
    assert found.lines == ((2, "left side: the rabbet for the top is 6 mm deep, planned 9 mm: 3 mm shallow."),)


def test_a_cut_typed_for_another_board_is_told():
    (found,) = edited(stand(), ("left side", "deep for the top", "deep for the divider"))
    assert found.lines == ((2, "left side: the rabbet for the top is typed as for the divider."),)
    assert edited(stand(), ("left side", "deep for the top", "deep for the lid")) == ()


def test_the_wrong_end_is_told_in_full():
    (found,) = edited(stand(), ("left side", "for the top, in the inside face, along the top end",
                                "for the top, in the outside face, along the top end"))  # fmt: skip
    assert "is typed as `rabbet 18.2 mm wide, 9 mm deep for the top, in the outside face" in found.lines[0][1]
    assert "planned rabbet 18.2 mm wide" in found.lines[0][1]
    assert found.would


def test_a_cut_left_out_a_cut_too_many_and_no_cuts():
    rabbet = "; rabbet 18.2 mm wide, 9 mm deep for the top, in the inside face, along the top end"
    (found,) = edited(stand(), ("left side", rabbet, ""))
    assert found.lines == ((2, f"left side: cuts leave out {rabbet[2:]}."),)
    assert found.would == ("top has nothing to go into in left side",)
    more = "groove 6 mm wide, 5 mm deep, in the inside face, 20 mm from the back edge"
    (found,) = edited(stand(), ("right side", "dado 18.2 mm", f"{more}; dado 18.2 mm"))
    assert found.lines == ((3, f"right side: cuts add {more}."),)


def test_an_empty_cell_is_no_cuts_where_others_say_theirs():
    cabinet = solve(stand())

    def empty(row):
        if row["names"] == "divider 1":
            row["cuts"] = ""

    (found,) = compare(cabinet, parse_hand_list(typed(cabinet, empty)).rows, check).differences
    assert found.lines[0][1].startswith("divider 1: no cuts, planned 2 dadoes 18.2 mm wide")
    assert found.would == ("all 3 fixed shelves have nothing to go into in divider 1",)


def test_cuts_in_words_that_are_not_read_are_no_difference_but_are_told():
    cabinet = solve(stand())

    def words(row):
        if row["names"] == "divider 1":
            row["cuts"] = "dadoes as usual"

    comparison = compare(cabinet, parse_hand_list(typed(cabinet, words)).rows, check)
    assert comparison.differences == ()
    assert comparison.what.unread == (("cuts", 4, "dadoes as usual"),)
    assert not comparison.what.whole


def test_a_cut_one_step_off_is_told_and_two_steps_leave_the_shelf_crooked():
    """The stand is listed to 0.1 mm: half a step is rounding, a whole one is another cut."""
    (found,) = edited(stand(), ("left side", "260.6 mm", "260.7 mm"))
    assert found.lines[0][1].endswith("is 260.7 mm from the bottom end, planned 260.6 mm: 0.1 mm high.")
    assert not any("not lie level" in sentence for sentence in found.would)
    (found,) = edited(stand(), ("left side", "260.6 mm", "260.8 mm"))
    assert any("bay 1 shelf 1 would not lie level" in sentence for sentence in found.would)


def test_the_gap_at_the_end_takes_up_what_a_cut_is_shallow():
    """1/16 in is left at the end of each rabbet: 0.1 in shallow holds the sides 0.0375 in off, 0.05 in not at all."""
    carcass = Carcass("case sheet", corner=JointChoice("rabbet", end_gap=INCH // 16), back=Back("none"))
    project = chest(bays=(Bay("open"),), fronts=Fronts("none"), carcass=carcass)
    sides = "left side; right side"
    (found,) = edited(project, (sides, "0.352 in deep", "0.252 in deep"))
    assert "the cabinet comes 5/64 in too wide" in found.would  # 0.075 in at the nearest 1/64
    (found,) = edited(project, (sides, "0.352 in deep", "0.302 in deep"))
    assert not any("too wide" in sentence for sentence in found.would)
