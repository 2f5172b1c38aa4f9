"""The joint cuts of cut_order.csv that must match, each stop a row, numbered on from the saw cuts of their stage."""

import csv
import io
from collections import Counter
from decimal import Decimal

import pytest

import shoplib.layout.set_by
from shoplib.buying.laid_out import laid_out
from shoplib.documents.cut_order_file import CAUTION, cut_order_csv
from shoplib.documents.examples import cabinet_from, project_path
from shoplib.documents.project_file import read_project
from shoplib.documents.sheets_words import sheets_words
from shoplib.lists.alike_cuts import alike_cuts
from shoplib.lists.dado_stops import dado_stops, two_stops
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from tests.lists.projects import chest, stand

SAW = {"trim", "rip", "crosscut"}


def rows_of(project):
    found = laid_out(solve(project), 0)
    rows = csv.DictReader(io.StringIO(cut_order_csv(found)))
    return found, [row for row in rows if row["cut"] != CAUTION]


def stages(row):
    return [int(stage) for stage in row["stage"].split(", ")]


@pytest.mark.parametrize("project", [chest, stand])
def test_joint_cuts_come_after_the_saw_cuts_of_their_stage_and_before_those_of_the_next(project):
    """Boards of the case are jointed before the case stands, and it is measured before the next stage is cut."""
    found, rows = rows_of(project())
    assert [int(row["step"]) for row in rows] == list(range(1, len(rows) + 1))
    settings = [int(row["setting"]) for row in rows if row["setting"]]
    assert settings == sorted(settings) and set(settings) == set(range(1, settings[-1] + 1))
    joints = [row for row in rows if row["cut"] not in SAW]
    count = len(dado_stops(found.cabinet)) + len(alike_cuts(found.cabinet)), len(two_stops(found.cabinet))
    assert (len(joints) - sum(not row["setting"] for row in joints), len(joints)) == (count[0], sum(count))
    begun = [min(stages(row)) if row["cut"] in SAW else max(stages(row)) for row in rows]
    assert begun == sorted(begun)
    where = [n for n, row in enumerate(rows) if row["cut"] not in SAW]
    assert where and any(row["cut"] in SAW for row in rows[where[0]:]) == (project is chest or max(begun) > 1)
    for stage in set(begun):
        kinds = [row["cut"] in SAW for row, one in zip(rows, begun, strict=True) if one == stage]
        assert kinds == sorted(kinds, reverse=True)


def test_what_waits_until_the_case_is_measured_says_so_in_each_row():
    """A case with boxes: stage 1 is cut as planned, nothing of the others before the case stands and is measured."""
    _, rows = rows_of(chest())
    assert {(stage, row["not_before"]) for row in rows for stage in stages(row)} >= {
        (1, ""), (2, "the case stands and is measured"),
    }  # fmt: skip
    assert all(bool(row["not_before"]) == (1 not in stages(row)) for row in rows)


def test_a_stop_says_what_is_cut_and_where():
    """By hand: a chest of four boxes has a groove of 1/4 in, 1/4 in above the bottom edge, in four boards of each."""
    _, rows = rows_of(chest())
    groove = next(row for row in rows if row["cut"] == "groove")
    assert (groove["cuts"], groove["stage"], groove["sheet"]) == ("16", "2", "box sheet")
    assert groove["fence"] == "the near wall 1/4 in from the bottom edge"
    assert Decimal(groove["fence_mm"]) == Decimal("6.35")
    assert groove["comes_off"] == "0.25 in wide, 1/4 in deep"


def test_mates_that_no_stop_serves_are_told():
    found, rows = rows_of(stand())
    words = " ".join(sheets_words(found, ()).split())
    assert "Joint cuts that must match" in words
    assert "bay 1 shelf 1: near wall 248.5 mm in divider 1 and 260.6 mm in left side, from the bottom end" in words
    assert "the stops differ by 12.1 mm" in words
    row = next(row for row in rows if row["piece"].endswith(", for bay 1 shelf 1"))
    assert (row["setting"], row["cut"]) == ("", "dado")
    assert row["fence"] == "near wall 248.5 mm in divider 1 and 260.6 mm in left side, from the bottom end"
    assert row["mind"].startswith("the stops differ by 12.1 mm")
    assert set(row["piece"].partition(", for")[0].split(" and ")) == {"divider 1", "left side"}
    assert "wide" in row["comes_off"] and "deep" in row["comes_off"] and row["cuts"] == "2"


def joint_rows(name):
    _, rows = rows_of(read_project(project_path(name)))
    return [row for row in rows if row["cut"] not in SAW]


def test_both_toe_notches_are_one_setting():
    """By hand from the project file: toe room 4 in high and 3 in deep, out of the lower front corner of both sides."""
    [notch] = [row for row in joint_rows("under_bench_case") if row["cut"] == "notch"]
    assert (notch["piece"], notch["cuts"], bool(notch["setting"])) == ("left side and right side", "2", True)
    assert notch["comes_off"] == "4 in along the length x 3 in across"
    assert notch["fence"] == "at the bottom end and front edge"
    found, _ = rows_of(read_project(project_path("under_bench_case")))
    assert "2 x notch, 4 in along the length x 3 in across" in " ".join(sheets_words(found, ()).split())


@pytest.mark.parametrize(("name", "cut", "boards"), [
    ("wheel_wall_drawers", "notch", "divider 1"), ("small_parts_wall_case", "notch", "dividers 1 to 3"),
    ("rolling_stand", "notch", "bay 2 shelves 1 and 2"),
    ("wheel_wall_drawers", "screw hole", "left side and right side"),
    ("under_bench_case", "screw hole", "bay 2 pull-out panel"),
])  # fmt: skip
def test_notches_and_holes_for_screws_are_in_the_order(name, cut, boards):
    """Without its notch a divider does not let the rail in, which shows with glue on."""
    assert boards in [row["piece"] for row in joint_rows(name) if row["cut"] == cut]


def test_pockets_are_one_setting_of_guide_and_collar():
    """By hand: a rail 60 mm wide has two pockets at either end, a sixth of its width from its edges, in the face that a
    driver reaches before a back in grooves; their web is half of 17.8 mm, rounded to the step of 0.5 mm."""
    [row] = [row for row in joint_rows("finger_jointed_drawers") if row["cut"] == "pocket"]
    assert (row["piece"], row["cuts"], row["stage"], bool(row["setting"])) == ("rail 1", "4", "1", True)
    assert row["comes_off"] == "9.5 mm across, the hole before it 4 mm, 15 degrees, web 9 mm"
    assert row["fence"] == "rail 1: in the front face, middles 10 mm and 50 mm from the bottom edge, at either end"
    assert "set the collar" in row["mind"] and "9 mm before the end" in row["mind"]


def test_every_notch_pocket_and_socket_of_the_shipped_projects_is_counted_once():
    for name in ("finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "under_bench_case"):
        cabinet = cabinet_from(name)
        counted = ("notch", "pocket", "socket")
        cut = Counter(cut.kind for board in cabinet.boards for cut in board.cuts if cut.kind in counted)
        told = Counter()
        for one in alike_cuts(cabinet):
            told[one.kind] += one.count
        assert [told[kind] for kind in ("notch", "pocket", "finger sockets")] == [cut[kind] for kind in counted], name


def test_fingers_say_which_boards_begin_with_a_socket():
    """By hand: boxes 100 mm high with fingers of 10 mm; fronts and backs enter and have the finger at their edge."""
    [row] = [row for row in joint_rows("finger_jointed_drawers") if row["cut"] == "finger sockets"]
    assert row["stage"] == "2" and row["comes_off"] == "10.05 mm wide, 11.85 mm deep"
    begins = row["fence"]
    assert "left and right box side of bay 1 drawers 1 and 2 begin with a socket" in begins
    assert "box front and box back of bay 1 drawers 1 and 2 begin with a finger" in begins
    assert "test corner" in row["mind"] and "backer" in row["mind"]


def test_a_stopped_dado_says_where_it_stops():
    """The shelves of the second bay are stopped 20 mm behind the front edge, by the project file."""
    rows = [row for row in joint_rows("rolling_stand") if "for bay 2 shelf" in row["piece"]]
    assert len(rows) == 2
    for row in rows:
        assert "stopped 20 mm from the front edge: divider 1 and right side" in row["mind"]
        assert (row["comes_off"], row["sheet"]) == ("18.1 mm wide, 6 mm deep", "case sheet")
    bottom = next(row for row in joint_rows("rolling_stand") if row["piece"].endswith(", for divider 1"))
    assert "stopped" not in bottom["mind"]


def test_a_rough_part_says_its_finished_size():
    """By hand: the sides of the ash case are 7 1/2 in high and 9 1/4 in deep before the back, and cut 1/2 in longer."""
    _, rows = rows_of(read_project(project_path("wheel_wall_drawers")))
    sides = [row for row in rows if "left side" in row["finishes"]]
    trimmed = "has its width, 9 1/4 in, and is only longer: trimmed to 7 1/2 in"
    assert sides and all(trimmed in row["then"] for row in sides)
    assert any("8 in x 9 1/4 in" in row["comes_off"] for row in sides)
    staves = [row for row in rows if "bottom, stave 1" in row["finishes"]]
    assert staves and all("glued up, then trimmed to 24 1/4 in x 9 1/4 in" in row["then"] for row in staves)
    first = [row for row in rows if row["sheet"] == "ash" and row["set_by"] == "fence" and row["cut"] == "rip"]
    assert any(row["mind"].startswith("its jointed edge along the fence") for row in first)


def test_a_piece_that_pivots_on_the_fence_says_so():
    """More than twice as wide as its edge on the fence is long: it turns (common practice, no source)."""
    _, rows = rows_of(read_project(project_path("rolling_stand")))
    at_fence = [row for row in rows if row["set_by"] == "fence" and row["cut"] == "rip"]
    told = ["it pivots" in row["mind"] for row in at_fence]
    assert told == [Decimal(row["piece_width_mm"]) > 2 * Decimal(row["piece_length_mm"]) for row in at_fence]
    assert any(told) and not all(told)


def test_dadoes_that_stops_have_made_are_no_cuts_again():
    """Each dado of the case of small parts is cut once: 6 + 6 in dividers, 2 + 2 in sides, 2 + 4 in bottom and top."""
    told = joint_rows("small_parts_wall_case")
    assert sum(int(row["cuts"]) for row in told if row["cut"] == "dado") == 22
    checks = [row for row in told if row["cut"] == "check"]
    assert len(checks) == 2 and {row["cuts"] for row in checks} == {"0"}
    assert all(row["mind"].startswith("cut already") and "the stops differ by" in row["mind"] for row in checks)


@pytest.mark.parametrize(("narrow", "said"), [(INCH, "joint both its edges first"), (0, "joint its sawn edge first")])
def test_no_offcut_has_a_jointed_edge_for_the_fence(narrow, said, monkeypatch):
    """Its jointed edge went with the strip that was ripped off it; on a rough one a board kicks back.

    Where a strip of 3/8 in is too narrow to lie at the fence, the other edge comes to the thin-strip stop.
    """
    monkeypatch.setattr(shoplib.layout.set_by, "NARROW", narrow)
    saws = [row for row in rows_of(read_project(project_path("wheel_wall_drawers")))[1] if row["cut"] in SAW]
    on_offcuts = [row["mind"] for row in saws if "offcut" in row["piece"] and "along the fence" in row["mind"]]
    assert not any("its jointed edge" in mind for mind in on_offcuts)
    assert any(said in mind for mind in on_offcuts)
