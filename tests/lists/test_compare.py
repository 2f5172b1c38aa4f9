"""What a typed list is told: which line, by how much, and what the dry-fit makes of it."""

import csv
import io
import re
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.hand_list import parse_hand_list
from shoplib.documents.project_file import read_project
from shoplib.lists.compare import Difference, compare
from shoplib.lists.cut_list import kinds
from shoplib.measure import INCH, MM, MM_STYLE, read_length, write_length
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


def told(cabinet: Cabinet, text: str) -> tuple[Difference, ...]:
    return compare(cabinet, parse_hand_list(text).rows, check).differences


def typed(cabinet: Cabinet, edit=lambda row: None, drop=(), columns=None) -> str:
    """The plan's own list without the millimetre and finished columns, after `edit` of each row."""
    rows = list(csv.DictReader(io.StringIO(cut_list_csv(cabinet))))
    columns = columns or [column for column in rows[0] if not column.endswith("_mm") and "finished" not in column]
    for row in rows:
        edit(row)
    out = io.StringIO()
    writer = csv.DictWriter(out, columns, extrasaction="ignore", lineterminator="\n")
    writer.writeheader()
    writer.writerows(row for row in rows if row["names"] not in drop)
    return out.getvalue()


def set_size(names: str, column: str, text: str):
    def edit(row):
        if row["names"] == names:
            row[column] = text

    return edit


def all_text(differences) -> str:
    lines = [sentence for d in differences for _, sentence in d.lines]
    return "\n".join([*lines, *(d.slip for d in differences), *(w for d in differences for w in d.would)])


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_the_plans_own_list_agrees(path):
    cabinet = solve(read_project(path))
    assert told(cabinet, cut_list_csv(cabinet)) == ()


@pytest.mark.parametrize("project", [chest(), stand()], ids=["inch", "mm"])
def test_name_length_and_width_without_the_rest_agree(project):
    cabinet = solve(project)

    def bare(row):
        for column in ("length", "width"):
            row[column] = row[column].partition(" (")[0]

    assert told(cabinet, typed(cabinet, bare, columns=["width", "names", "length"])) == ()


def test_an_inch_list_typed_in_millimetres_agrees():
    cabinet = solve(chest())

    def metric(row):
        for column in ("length", "width", "thickness"):
            ticks = read_length(row[column])
            row[column] = write_length(ticks, MM_STYLE).partition(" (")[0].replace(".", ",")

    assert told(cabinet, typed(cabinet, metric)) == ()


def test_both_sides_short_bring_the_top_down_on_the_upper_drawer():
    cabinet = solve(chest())
    (found,) = told(cabinet, typed(cabinet, set_size("left side; right side", "length", "28 in")))
    assert found.lines == ((2, "both sides: length 28 in, planned 30 in: 2 in short."),)
    assert found.slip == "both sides 2 in short"
    assert found.would[0] == "the top stands 2 in low"
    # The upper box side ends 30 - 45/64 - 1/4 (room above) - ... in high; here only that it is the one:
    (drawer,) = [sentence for sentence in found.would if "has no room" in sentence]
    assert drawer.startswith("bay 1 drawer 4 has no room: top and bay 1 drawer 4")
    planned_room = cabinet.by_name["top"].box.low[2] - cabinet.by_name["bay 1 drawer 4 left box side"].box.high[2]
    amount = read_length(drawer.rpartition(" by ")[2])
    assert abs(amount - (2 * 2_032_000 - planned_room)) <= 15_875  # half of 1/64 in


def test_one_side_short_stands_apart_from_the_top():
    cabinet = solve(chest())
    rows = "names,length,width\nleft side,28 in,21 19/64 in\nright side,30 in,21 19/64 in\n"
    found = told(
        cabinet,
        rows + typed(cabinet, columns=["names", "length", "width"], drop=["left side; right side"]).partition("\n")[2],
    )
    assert found[0].lines == ((2, "left side: length 28 in, planned 30 in: 2 in short."),)
    assert any("top" in sentence and "left side" in sentence for sentence in found[0].would)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
@pytest.mark.parametrize(
    ("turn", "column", "sign", "word"),
    [(0, "length", 1, "long"), (1, "length", -1, "short"), (2, "width", 1, "wide"), (3, "thickness", 1, "thick")],
)
def test_each_changed_line_is_named_and_no_other(path, turn, column, sign, word, quick):
    """Ten steps more or less in one line at a time: that line is told with exactly that amount.

    Each line is changed in one of the four ways, in turn; with --long in all of them.
    """
    cabinet = solve(read_project(path))
    step = cabinet.style.step
    for kind in kinds(cabinet)[turn :: 4] if quick else kinds(cabinet):
        more = dict(zip(("length", "width", "thickness"), kind.cut, strict=True))[column] + sign * 10 * step
        found = told(
            cabinet,
            typed(cabinet, set_size("; ".join(kind.names), column, write_length(more, cabinet.style))),
        )
        lines = {line for difference in found for line, _ in difference.lines}
        assert lines == {2 + [k.names for k in kinds(cabinet)].index(kind.names)}
        assert all(f"{write_length(10 * step, cabinet.style)} {word}" in d.lines[0][1] for d in found)
        assert not re.search(r"(?<!\()-\d", all_text(found))  # nothing overlaps by less than nothing


def edited(cabinet: Cabinet, **sizes: str) -> tuple[Difference, ...]:
    """What is told of a list with one column only of one board changed: `left_side__length="28 in"`."""
    ((key, text),) = sizes.items()
    names, _, column = key.partition("__")
    return told(cabinet, typed(cabinet, set_size(names.replace("_", " "), column, text)))


def test_one_side_short_leaves_the_top_crooked():
    (found,) = edited(under_bench(), left_side__length="33 1/4 in")  # of 33 1/2 in
    assert found.would == ("the top would not lie level: left side has it 1/4 in lower than right side",)


def test_one_of_a_mirrored_pair_narrower_is_named_with_how_much():
    (found,) = edited(under_bench(), right_side__width="22 1/4 in")  # the left one is 22 15/32 in
    assert "right side: width 22 1/4 in, planned 22 15/32 in" in found.lines[0][1]
    assert "right side has it 7/32 in further forward than left side" in found.would[0]


def test_a_long_toe_board_does_not_push_the_case_apart():
    (found,) = edited(under_bench(), toe_board__length="59 3/32 in")  # of 58 19/32 in
    assert found.would == ("right side and toe board overlap by 1/2 in",)


def test_a_length_that_leaves_out_the_joint_is_told_as_such():
    cabinet = solve(stand())
    (found,) = told(cabinet, typed(cabinet, set_size("bottom; top", "length", "863.8 mm")))  # less 2 x 9 mm
    assert found.lines[0][1].endswith("18 mm short (its length leaves out the joints: 2 x 9 mm).")


def test_a_thickness_by_the_name_of_the_sheet():
    (found,) = edited(under_bench(), left_side__thickness="3/4 in")  # sold as 23/32 in here, measured 0.703 in
    assert "(that is what the sheet is sold as, not what it measures)" in found.lines[0][1]


def test_the_cabinet_comes_wider_by_what_a_side_is_thicker():
    (found,) = edited(under_bench(), left_side__thickness="0.828 in")
    assert found.would == ("the cabinet comes 1/8 in too wide",)


def test_without_dividers_the_drawers_have_nothing_to_hang_on():
    cabinet = under_bench()
    (found,) = told(cabinet, typed(cabinet, drop=["divider 1; divider 2"]))
    assert found.would == ("drawers 1 to 4 in bays 1 and 3, and bay 2 pull-out have nothing to hang on there",)


def test_what_has_consequences_stands_before_what_has_none():
    cabinet = solve(stand())

    def edit(row):
        if row["names"] == "left side":
            row["edging"] = ""
        if row["names"] == "bottom; top":
            row["length"] = "871.8 mm"

    first, second = told(cabinet, typed(cabinet, edit))
    assert first.slip == "bottom and top, 10 mm short"
    assert second.lines[0][1].startswith("left side: no edging on the front edge, planned a band of 1 mm")


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("front edge band 2 mm", "the edging on the front edge is 2 mm, planned 1 mm."),
        ("strip 1 mm on the front edge", "the edging on the front edge is a strip, planned a band."),
        ("band 1 mm on the front and back edges", "edging on the back edge, which the plan leaves bare."),
        (
            "band 1 mm on the front edge, strip 4 mm on the top edge",
            "edging on the top edge, which the plan leaves bare.",
        ),
        ("band 1 mm all round", "edging on the back, bottom and top edges, which the plan leaves bare."),
        ("front", ""),
        ("1 front edge", ""),
    ],
)
def test_edging_is_compared_edge_by_edge(text, sentence):
    cabinet = solve(stand())
    found = told(cabinet, typed(cabinet, set_size("divider 1", "edging", text)))
    assert [line[1] for difference in found for line in difference.lines] == (
        [f"divider 1: {sentence}"] if sentence else []
    )


def test_edging_and_grain_in_other_words_are_not_compared_and_told():
    cabinet = solve(stand())

    def edit(row):
        if row["names"] == "divider 1":
            row["edging"], row["grain"] = "oak lipping in front", "up and down"

    comparison = compare(cabinet, parse_hand_list(typed(cabinet, edit)).rows, check)
    assert comparison.differences == ()
    assert [(part, text) for part, _, text in comparison.what.unread] == [
        ("grain", "up and down"), ("edging", "oak lipping in front"),
    ]  # fmt: skip


@pytest.mark.parametrize(("word", "told_of"), [("across", "across"), ("none", "freely"), ("Lengthwise", "")])
def test_grain_is_compared(word, told_of):
    cabinet = solve(stand())
    found = told(cabinet, typed(cabinet, set_size("left side", "grain", word)))
    assert bool(found) == bool(told_of)
    assert told_of in all_text(found)


def under_bench() -> Cabinet:
    return solve(read_project(next(path for path in PROJECTS if path.stem == "under_bench_case")))


def test_half_a_step_agrees_and_more_does_not():
    cabinet = solve(stand())
    for text, agrees in (
        ("800.05 mm", True),
        ("800.06 mm", False),
        ("799.95 mm", True),
        ("799.94 mm", False),
    ):
        assert (told(cabinet, typed(cabinet, set_size("left side", "length", text))) == ()) == agrees


def test_a_missing_row_an_extra_row_and_a_misspelt_name():
    cabinet = solve(stand())
    text = typed(cabinet, set_size("left side", "names", "left sied"), drop=["divider 1"])
    found = told(cabinet, text + "1,1,wine rack,birch 18,100 mm,100 mm,18.1 mm,,,length,\n")
    text = all_text(found)
    assert "the plan has no board called left sied; it is read as left side." in text
    assert "the plan has no board called wine rack; take it out, or correct its name." in text
    assert "In the plan and in no line: divider 1." in text
    assert "without divider 1, " in text
    assert len(found) == 3


def test_a_wrong_count_and_a_board_listed_twice():
    cabinet = solve(stand())
    edit = set_size("bottom; top", "count", "1")
    text = typed(cabinet, edit) + "1,1,top,birch 18,881.8 mm,499 mm,18.1 mm,,,length,\n"
    text = all_text(told(cabinet, text))
    assert "the count is 1, but the line names 2 boards: bottom and top." in text
    assert "top is listed already in line 5; each board is cut once." in text


def test_rows_named_by_what_the_boards_do():
    cabinet = solve(chest())
    both = typed(cabinet, set_size("left side; right side", "names", "Sides"))
    assert told(cabinet, both) == ()
    few = told(cabinet, "part,qty,length,width\nbox sides,2,20 in,6 1/4 in\n")
    assert "8 box sides, 2 in each of 4" in all_text(few)
    many = told(cabinet, both.replace("1,2,Sides", "1,3,Sides"))
    assert "Sides: 3 here, and the plan needs 2." in all_text(many)
    more = told(cabinet, both + "1,2,sides,case sheet,30 in,21 19/64 in,0.704 in,,,length,\n")
    assert "sides: 2 here, 2 in other lines, and the plan needs 2." in all_text(more)


def test_swapped_sizes_are_told_as_such():
    cabinet = solve(stand())

    def swap(row):
        if row["names"] == "left side":
            row["length"], row["width"] = row["width"], row["length"]

    (found,) = told(cabinet, typed(cabinet, swap))
    assert found.lines[0][1].startswith(
        "left side: length and width have changed places; the length runs with the grain"
    )


@pytest.mark.parametrize(
    ("project", "names", "column", "text", "hint"),
    [
        (stand, "left side", "thickness", "18 mm", "that is what the sheet is sold as, not what it measures"),
        (stand, "left side", "width", "500 mm", "that is the finished width; the edging goes on afterwards"),
        (stand, "divider 1", "length", "757.8 mm", "two of its digits have changed places"),
        (chest, "left side; right side", "length", "30 mm", "the number is right in inches"),
        (chest, "left side; right side", "thickness", "17.9 in", "the number is right in millimetres"),
    ],
)
def test_a_slip_that_the_numbers_give_away(project, names, column, text, hint):
    cabinet = solve(project())
    found = told(cabinet, typed(cabinet, set_size(names, column, text)))
    assert f"({hint})" in found[0].lines[0][1]


def test_a_line_of_which_no_size_can_be_read_has_not_its_sizes_swapped():
    cabinet = solve(stand())
    text = typed(cabinet, set_size("left side", "length", "8oo mm"), columns=["names", "length", "width"])
    rows = parse_hand_list(text.replace("8oo mm,499 mm", "8oo mm,49g mm"))
    assert len(rows.unreadable) == 2
    assert compare(cabinet, rows.rows, check).differences == ()


def test_of_two_columns_the_edited_one_is_taken():
    cabinet = solve(stand())
    columns = ["names", "length", "length_mm", "width", "width_mm"]
    for column, cell, other in (("length_mm", "780", "length"), ("length", "780 mm", "length_mm")):
        text = all_text(told(cabinet, typed(cabinet, set_size("left side", column, cell), columns=columns)))
        assert (
            "left side: length 780 mm, planned 800 mm: 20 mm short. "
            f"Taken from `{column}`; `{other}` still says what the plan does."
        ) in text
        assert "make them say the same" not in text


def test_of_two_columns_the_edited_ones_have_changed_places():
    cabinet = solve(stand())

    def swap(row):
        if row["names"] == "left side":
            row["length"], row["width"] = row["width"], row["length"]

    (found,) = told(cabinet, typed(cabinet, swap, columns=["names", "length", "length_mm", "width", "width_mm"]))
    assert found.lines[0][1].startswith("left side: length and width have changed places; ")
    assert found.lines[0][1].endswith(
        "Taken from `length` and `width`; `length_mm` and `width_mm` still say what the plan does."
    )


def test_two_columns_that_were_both_edited_and_contradict_each_other_are_told():
    cabinet = solve(stand())

    def edit(row):
        if row["names"] == "left side":
            row["length"], row["length_mm"] = "790 mm", "780"

    text = all_text(told(cabinet, typed(cabinet, edit, columns=["names", "length", "length_mm", "width"])))
    assert "left side: length `790 mm` and length_mm `780` are 10 mm apart; make them say the same." in text
    assert "length 780 mm, planned 800 mm: 20 mm short" in text


def test_lengths_in_the_words_are_compared_and_other_words_are_not():
    cabinet = solve(stand())
    assert told(cabinet, typed(cabinet, set_size("divider 1", "cuts", "dadoes for shelves, 18.2 wide"))) == ()
    text = all_text(told(cabinet, typed(cabinet, set_size("divider 1", "cuts", "dado 18.2 mm wide, 9 mm deep"))))
    assert "divider 1: cuts say 9 mm, which the plan does not" in text
    text = all_text(told(cabinet, typed(cabinet, set_size("divider 1", "edging", "front edge band 2 mm"))))
    assert "divider 1: the edging on the front edge is 2 mm, planned 1 mm." in text


def test_sheet_and_stage_are_compared():
    cabinet = solve(stand())
    assert "divider 1: sheet oak, planned birch 18." in all_text(
        told(cabinet, typed(cabinet, set_size("divider 1", "sheet", "oak")))
    )
    assert "divider 1: stage 3, planned 1." in all_text(
        told(cabinet, typed(cabinet, set_size("divider 1", "stage", "3")))
    )


def test_lines_off_alike_are_one_slip_and_all_slips_are_built_together():
    cabinet = solve(chest())

    def edit(row):
        if row["names"] == "left side; right side":
            row["length"] = "28 in"
        if row["names"] == "bottom; top":
            row["length"] = "17 19/64 in"

    found = told(cabinet, typed(cabinet, edit))
    assert [d.slip for d in found] == [
        "both sides 2 in short",
        "bottom and top, 2 in short",
        "all these together",
    ]
    assert "the top stands 2 in low" in found[2].would
    assert "the right side stands 2 in too far left" in found[2].would


def test_a_narrow_front_leaves_a_wide_gap():
    cabinet = solve(chest())
    name = "bay 1 drawer 1 front"
    text = typed(cabinet, set_size("; ".join(f"bay 1 drawer {n} front" for n in (1, 2, 3, 4)), "width", "6 27/32 in"))
    (found,) = told(cabinet, text)
    # 1/2 in less on each front: the gaps of 1/8 in between them come out at 5/8 in.
    assert f"the gap between {name} and bay 1 drawer 2 front comes out at 5/8 in, planned 1/8 in" in found.would[0]
    assert found.slip == "all 4 fronts 1/2 in narrow"


def test_one_collision_of_two_drawers_is_told_once():
    cabinet = solve(chest())
    text = "names,length,width\n" + "".join(
        f"{board.name},{board.cut_size[0] / MM} mm,"
        f"{(board.cut_size[1] + (INCH if board.name == 'bay 1 drawer 2 front' else 0)) / MM} mm\n"
        for board in cabinet.boards
    )
    (found,) = told(cabinet, text)
    rooms = [sentence for sentence in found.would if "no room" in sentence]
    # 1 in more on a front with a gap of 1/8 in above it
    assert rooms == [
        "bay 1 drawer 2 and bay 1 drawer 3 have no room: "
        "bay 1 drawer 2 front and bay 1 drawer 3 front overlap by 7/8 in"
    ]


def test_forgotten_screw_holes_are_told_with_what_no_screw_goes_into():
    cabinet = solve(read_project(next(path for path in PROJECTS if "under_bench" in path.stem)))

    def forget(row):
        row["cuts"] = "; ".join(cut for cut in row["cuts"].split("; ") if "screw hole" not in cut)

    found = {found.lines[0][1].partition(":")[0]: found for found in told(cabinet, typed(cabinet, forget))}
    panel, cleat = found.pop("bay 2 pull-out panel"), found.pop("bay 2 pull-out cleat")
    assert {name: one.would for name, one in found.items()} == {
        side: (f"no screw goes through {side} into toe board",) for side in ("left side", "right side")
    }
    assert "cuts leave out 3 screw holes 11/64 in across" in panel.lines[0][1]
    assert panel.would == ("no screw goes through bay 2 pull-out panel into bay 2 pull-out cleat",)
    assert "no cuts, planned 4 screw holes 11/64 in across" in cleat.lines[0][1]
    assert cleat.would == ("no screw goes through bay 2 pull-out cleat into bay 2 pull-out front",)
