"""What goes between uprights is judged where they were measured; slips are told once, and nothing is cut for them."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, MM, read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Fronts, Measured, Opening, PartSize
from shoplib.model.shell import shell_of

PROJECTS = Path(__file__).parents[2] / "data" / "projects"
CASE = read_project(PROJECTS / "under_bench_case.toml")
ROW = "bay 1 drawer 2"


def with_drawers(**changed):
    """The under-bench case with another rule for all its drawers."""
    bays = tuple(replace(b, drawers=replace(b.drawers, **changed)) if b.drawers else b for b in CASE.bays)
    return replace(CASE, bays=bays)


def opening(plan, bay=1):
    """The planned clear width of a bay."""
    walls = sorted((b.box for b in solve(plan).boards if b.role in ("side", "divider")), key=lambda box: box.low[0])
    return walls[bay].low[0] - walls[bay - 1].high[0]


def read(plan, front, back=None, *, row=ROW, bay=1, **more):
    """The plan with one opening measured so much wider than planned; narrower is less than nothing."""
    width = opening(plan, bay)
    got = Opening(width + front, width + (front if back is None else back))
    return solve(replace(plan, measured=Measured(openings={row: got}, **more)))


def stops(cabinet):
    return [finding for finding in check(cabinet) if finding.level == "stop"]


WIDTHS = [-INCH * 3 // 16, -INCH // 32, INCH // 32, INCH * 3 // 16, INCH * 7 // 16]


@pytest.mark.parametrize("off", WIDTHS)
@pytest.mark.parametrize(("bay", "row"), [(1, ROW), (2, "bay 2 pull-out"), (3, "bay 3 drawer 4")])
def test_an_inset_front_keeps_its_gaps_in_the_opening_as_measured(off, bay, row):
    cabinet = read(CASE, off, row=row, bay=bay)
    beside = [gap.size for gap in cabinet.gaps if f"{row} front" in gap.between and gap.along == "x"]
    assert beside == [CASE.fronts.around] * 2
    assert cabinet.by_name[f"{row} front"].box.size[0] == opening(CASE, bay) + off - 2 * CASE.fronts.around
    assert stops(cabinet) == []


@pytest.mark.parametrize("off", WIDTHS)
@pytest.mark.parametrize(
    "rule",
    [
        {"slide": "side-hung wood runner"},
        {"slide": "wood runner below with kicker"},
        {"between": "strip"},
    ],
    ids=lambda rule: next(iter(rule.values())),
)
def test_what_is_cut_to_a_measured_opening_is_not_told_to_overlap(rule, off):
    plan = with_drawers(**({"corner": replace(CASE.bays[0].drawers.corner, depth=None)} | rule))
    assert stops(solve(plan)) == []
    row = "bay 1 strip 1" if "between" in rule else ROW
    assert stops(read(plan, off, row=row)) == []


@pytest.mark.parametrize("off", [-INCH // 16, INCH // 16])
def test_a_strip_is_as_long_as_its_opening_measures(off):
    plan = with_drawers(between="strip")
    strip = read(plan, off, row="bay 1 strip 1").by_name["bay 1 strip 1"]
    assert strip.length == opening(plan) + off


def test_the_divider_gives_way_and_not_the_side():
    """Top and bottom hold the sides; under an overlay front a wider opening is covered on the divider's side."""
    plan = replace(CASE, fronts=Fronts("overlay", "front sheet"))
    before, after = (c.by_name[f"{ROW} front"].box for c in (solve(plan), read(plan, INCH // 16)))
    assert after.low[0] == before.low[0] and after.high[0] == before.high[0] + INCH // 16
    right = "bay 3 drawer 2"
    before = solve(plan).by_name[f"{right} front"].box
    after = read(plan, INCH // 16, row=right, bay=3).by_name[f"{right} front"].box
    assert after.high[0] == before.high[0] and after.low[0] == before.low[0] - INCH // 16


def test_a_part_that_does_not_go_into_the_measured_opening_is_found():
    """As planned it would: the opening governs, not the plan."""
    planned = solve(CASE).by_name[f"{ROW} front"]
    part = {f"{ROW} front": PartSize(length=planned.length)}
    assert stops(solve(replace(CASE, measured=Measured(parts=part)))) == []
    told = stops(read(CASE, -INCH * 3 // 8, parts=part))
    assert [f.check for f in told] == ["overlap"] and told[0].boards == ("divider 1", f"{ROW} front")


def test_a_box_too_wide_for_the_measured_opening_is_a_stop():
    length = solve(CASE).by_name[f"{ROW} box front"].length
    told = stops(read(CASE, -INCH // 16, parts={f"{ROW} box front": PartSize(length=length)}))
    assert [f.check for f in told] == ["slide room"] and "too wide" in told[0].text


@pytest.mark.parametrize("kind", ["inset", "overlay"])
@pytest.mark.parametrize("front", [3 * INCH, -5 * INCH])
def test_a_slip_is_told_once_and_nobody_is_sent_to_cut_the_case(kind, front):
    plan = replace(CASE, fronts=Fronts(kind, "front sheet"))
    told = stops(read(plan, front, 0))
    assert [f.check for f in told] == ["as measured"]
    assert "Measure it again" in told[0].text and told[0].text.endswith("leave the plan of the case as it is.")
    assert not any("straighten" in f.text for f in check(read(plan, front, 0)))


def test_another_fault_is_told_beside_a_slip():
    short = solve(CASE).by_name["divider 2"].length - INCH // 4
    told = stops(read(CASE, 3 * INCH, 0, parts={"divider 2": PartSize(length=short)}))
    assert {f.check for f in told} == {"as measured", "seating"}


DEPTH = shell_of(CASE).behind


@pytest.mark.parametrize(
    ("off", "level"),
    [("1/8 in", None), ("-1/8 in", None), ("-1/4 in", "warn"), ("-3 in", "warn"), ("3/8 in", "warn"),
     ("-3 1/64 in", "stop"), ("33/64 in", "stop"), ("-11 in", "stop")],
)  # fmt: skip
def test_a_measured_depth_far_off_the_plan_is_doubted(off, level):
    depth = DEPTH + read_length(off, negative=True)
    told = [f for f in check(solve(replace(CASE, measured=Measured(depths={"bay 1": depth})))) if f.level != "note"]
    assert [(f.check, f.level) for f in told] == ([("as measured", level)] if level else [])
    assert all(f.amount == abs(depth - DEPTH) and "Measure it again" in f.text for f in told)


def test_other_slides_are_to_be_bought_for_a_shallower_bay():
    told = [f.text for f in solve(replace(CASE, measured=Measured(depths={"bay 1": DEPTH - 2 * INCH}))).findings]
    assert "bay 1: it takes slides of 18 in, where the plan had 20 in; buy these, or change them." in told


@pytest.mark.parametrize(("name", "word"), [("divider 1", "before the back"), ("bottom", "the rear edges")])
def test_a_part_finished_narrower_says_what_it_changes(name, word):
    width = solve(CASE).by_name[name].width - INCH // 8
    cabinet = solve(replace(CASE, measured=Measured(parts={name: PartSize(width=width)})))
    (text,) = [f.text for f in cabinet.findings if f.boards == (name,)]
    assert "ends 1/8 in" in text and word in text


def test_a_finished_part_far_off_its_plan_is_to_be_measured_again():
    side = solve(CASE).by_name["left side"]
    for less, level in ((INCH // 2, "note"), (INCH, "warn")):
        part = PartSize(length=side.length - less)
        cabinet = solve(replace(CASE, measured=Measured(parts={"left side": part})))
        (told,) = [f for f in cabinet.findings if f.boards == ("left side",)]
        assert told.level == level and ("Measure it again" in told.text) == (level == "warn")


def test_in_millimetres_too():
    plan = read_project(PROJECTS / "rolling_stand.toml")
    row = "bay 1 drawer 1"
    cabinet = read(plan, 2 * MM, row=row)
    assert stops(cabinet) == []
    assert any(f.boards == (f"{row} front",) for f in cabinet.findings)


@pytest.mark.parametrize("off", [-INCH // 4, INCH // 8, INCH * 3 // 16, INCH * 7 // 16])
@pytest.mark.parametrize(("bay", "row"), [(1, ROW), (3, "bay 3 drawer 2")])
def test_an_overlay_front_is_not_held_against_one_that_still_waits_for_its_opening(off, bay, row):
    plan = replace(CASE, fronts=Fronts("overlay", "front sheet"))
    told = [f for f in check(read(plan, off, row=row, bay=bay)) if f.level != "note"]
    assert {f.check for f in told} <= {"as measured"}


def test_overlay_fronts_whose_openings_were_both_measured_are_held_against_each_other():
    plan = replace(CASE, fronts=Fronts("overlay", "front sheet"))
    widths = {ROW: opening(plan), "bay 2 pull-out": opening(plan, 2)}
    wider = {name: Opening(width + INCH * 3 // 8, width + INCH * 3 // 8) for name, width in widths.items()}
    told = stops(solve(replace(plan, measured=Measured(openings=wider))))
    assert any(set(f.boards) == {f"{ROW} front", "bay 2 pull-out front"} for f in told)
