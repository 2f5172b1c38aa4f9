"""All checks together: order, sound cabinets, odd cabinets."""

from itertools import pairwise

from shoplib.checks import LEVELS, check
from shoplib.measure import INCH_STYLE
from shoplib.model.solved import Finding
from tests.checks.cabinets import board, cabinet, case_boards, case_joints, joint, space, tool_case


def test_a_sound_cabinet_gets_notes_alone():
    assert {f.level for f in check(tool_case())} == {"note"}


def test_stops_come_before_warnings_before_notes_and_the_solver_first():
    boards = case_boards()
    boards[2] = board("bottom", (12.4, 0, 0), (487.9, 300, 18), "z", role="bottom")
    given = (Finding("measured", "note", (), "A note."), Finding("measured", "stop", (), "A stop."))
    found = check(cabinet(boards, case_joints(), findings=given))
    ranks = [LEVELS.index(f.level) for f in found]
    assert all(a <= b for a, b in pairwise(ranks)) and set(ranks) == {0, 1, 2}
    assert found[0].text == "A stop."
    assert next(f for f in found if f.level == "note").text == "A note."


def test_every_finding_is_a_sentence_or_two_with_no_ticks_in_it():
    broken = cabinet(
        [board("side", (0, 0, 0), (18, 300, 3000), "x", ("dado", (1, 0, 100), (18, 300, 117), "shelf")),
         board("shelf", (2, 0, 100), (400, 300, 118), "z")],
        [joint("dado", "shelf", "side", "-x", 15, 0.1)],
        space=space(300, 300, 200, bring_in="stood up from its back", room_height=1000, door_width=100),
        style=INCH_STYLE,
    )  # fmt: skip
    found = check(broken)
    assert {"overlap", "seating", "wood left", "stock", "space"} <= {f.check for f in found}
    for finding in found:
        assert finding.text.endswith(".") and 1 <= finding.text.count(". ") + 1 <= 3
        assert not any(len(word) > 5 and word.isdigit() for word in finding.text.split())


def test_odd_cabinets_raise_nothing():
    lone = board("shelf", (0, 0, 0), (500, 300, 18), "z")
    gone = board("ghost", (0, 0, 0), (5, 5, 18), "z", ("notch", (0, 0, 0), (5, 5, 18)))
    drop = board("strip", (0, 0, 0), (5, 5, 18), "z", ("dado", (-9, -9, -9), (99, 99, 9)))
    for boards in ([], [lone], [gone], [lone, gone, drop], [lone, lone]):
        joints = [joint("dado", a.name, b.name, "+x", 6) for a in boards for b in boards]
        check(cabinet(boards, [*joints, joint("butt", "shelf", "nothing", "-z")]))
