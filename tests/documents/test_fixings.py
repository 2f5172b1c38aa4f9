"""What holds each joint is said, the screws and heights stand in the list too, and notes on cuts where they belong."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.building.riding import heights, riding
from shoplib.buying.screws import estimated
from shoplib.documents.cut_list_file import cut_list_text
from shoplib.documents.cut_notes import ENDS, TONGUES, WIDTHS, cut_notes
from shoplib.documents.fixings import YOURS, fixings, hanging
from shoplib.documents.hardware_page import hardware_page
from shoplib.documents.project_file import read_project
from shoplib.documents.slides_section import stop_words
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, read_length
from shoplib.model.board import Hole
from shoplib.model.cabinet import solve
from shoplib.model.project import Base, Bay, Carcass
from shoplib.words.naming import plural
from tests.lists.projects import chest, stand
from tests.random_projects import project

PROJECTS = Path(__file__).parents[2] / "data" / "projects"
WOOD = ("side-hung wood runner", "wood runner below with kicker")


def shipped(name):
    return solve(read_project(PROJECTS / f"{name}.toml"))


def section(cabinet, title):
    return next((part for part in hardware_page(cabinet) if part.title == title), None)


def wooden(slide):
    first = chest().bays[0]
    return solve(chest(bays=(replace(first, drawers=replace(first.drawers, slide=slide)),)))


@pytest.mark.parametrize("seed", range(25))
def test_every_butted_pair_is_screwed_or_left_to_the_maker(seed):
    cabinet = solve(project(seed))
    lines = fixings(cabinet).lines
    listed = " ".join(line for line in lines if line.startswith("With the screws"))
    open_ = " ".join(line for line in lines if line.startswith("Butted"))
    screwed = {frozenset((h.on, s.into)) for h in cabinet.hardware for s in h.screws}
    for joint in cabinet.joints:
        one, other = (cabinet.by_name[name].role for name in (joint.enters, joint.receives))
        if joint.depth or (one, other) == ("front", "panel"):  # held by the cleat
            continue
        where = listed if frozenset((joint.enters, joint.receives)) in screwed else open_
        clauses = re.split(r"[;:]", where)
        assert any(plural(one) in c and plural(other) in c for c in clauses), (one, other, lines)
    assert (YOURS in open_) == bool(open_)


def test_what_is_not_glued_is_named_for_what_the_project_has():
    assert "Glue them too, but none under fronts." in " ".join(fixings(shipped("under_bench_case")).lines)
    assert "none under runners and fronts; and" in " ".join(fixings(shipped("wheel_wall_drawers")).lines)


def test_what_the_plan_leaves_open_is_named_for_what_the_project_has():
    assert "toe boards against sides" in " ".join(fixings(shipped("under_bench_case")).lines)
    rolling = " ".join(fixings(shipped("rolling_stand")).lines)
    for words in ("backs against bottoms, sides and tops", "box bottom lies under the box back", "Casters: with"):
        assert words in rolling
    plinth = " ".join(fixings(solve(stand(base=Base("plinth", 3 * INCH, INCH)))).lines)
    assert "plinths against" in plinth
    assert "Casters" not in plinth
    assert "box bottom" not in plinth
    assert "let into" not in " ".join(fixings(solve(stand(carcass=Carcass("birch 18"), bays=(Bay(),)))).lines)


def test_the_wall_case_says_what_is_not_worked_out():
    cabinet = shipped("small_parts_wall_case")
    text = " ".join(section(cabinet, "Hanging it").lines)
    rail = cabinet.by_name["rail 1"]
    assert f"2 in wide and {Writing(cabinet.style).measured(rail.thickness)} thick" in text
    for words in ("screws into the wall", "studs", "load", "not worked out", "licensed", "local codes",
                  "length only what the buying list says"):
        assert words in text
    back = cabinet.by_name["back"]
    assert cabinet.outside.high[1] - back.box.high[1] == read_length("3/4 in")  # the setback of its project file
    assert "3/4 in stays hollow" in text
    assert hanging(shipped("under_bench_case")).lines == ()


@pytest.mark.parametrize("slide", WOOD)
def test_each_runner_is_told_with_its_drawer_and_its_height(slide):
    cabinet = wooden(slide)
    drawers = {item.group for item in riding(cabinet)}
    assert drawers == {f"bay 1 drawer {n}" for n in range(1, 5)}
    rows = section(cabinet, "Slides and runners").rows
    assert not any("case" in row[0] for row in rows)
    floor = next(b for b in cabinet.boards if b.role == "bottom").box.high[2]
    page, text = Writing(cabinet.style), cut_list_text(cabinet)
    for board in (b for b in cabinet.boards if b.role in ("runner", "kicker")):
        drawer = board.name.rsplit(" ", 2)[0]
        high = page.length(board.box.low[2] - floor)
        assert f"{drawer}: {high} under the wood {board.role}, above the bottom" in text
        assert any(row[:2] == (drawer, f"wood {board.role}") and row[3] == high for row in rows)
    assert "A drawer stop is not drawn" in text
    assert any("A drawer stop is not drawn" in line for line in section(cabinet, "Slides and runners").lines)


def test_bought_slides_hold_the_drawer_and_are_told_once():
    cabinet = shipped("under_bench_case")
    assert stop_words(cabinet) == ()
    assert heights(cabinet) == cabinet.spacers
    told = " ".join(stop_words(shipped("small_parts_wall_case")))
    assert "A drawer stop" in told and "stop block" not in told  # that one is clamped at the saw


@pytest.mark.parametrize("name", ["under_bench_case", "small_parts_wall_case", "rolling_stand"])
def test_the_list_counts_the_same_screws_as_the_cabinet(name):
    cabinet = shipped(name)
    part = cut_list_text(cabinet).partition("\nScrews\n")[2].partition("\nFixings\n")[0]
    counts = [int(n) for n in re.findall(r"(\d+) (?:screws|brads) ", part)]
    planned = sum(screw.count for h in cabinet.hardware for screw in h.screws)
    assert sum(counts) == planned + sum(need.count for need in estimated(cabinet)) > 0


def test_the_screw_of_a_pull_passes_the_front_and_what_is_bored_behind_it():
    cabinet = shipped("under_bench_case")
    rows = section(cabinet, "Holes for pulls").rows
    front, box = (cabinet.by_name[f"bay 1 drawer 1 {name}"] for name in ("front", "box front"))
    assert any(isinstance(cut, Hole) for cut in box.cuts)
    passed = Writing(cabinet.style).measured(front.thickness + box.thickness)
    assert (passed, passed) == ("1.193 in", rows[0][-1])  # 0.721 + 0.472


def test_the_pad_of_a_caster_is_called_assumed():
    part = section(shipped("rolling_stand"), "Under the case")
    assert "no plate size" in part.lines[0]
    assert all("assumed pad" in word for word in part.head[2:4])


def test_notes_on_cuts_stand_where_there_are_such_cuts():
    assert cut_notes(shipped("rolling_stand")) == (WIDTHS, TONGUES, ENDS)  # tongued boxes, stopped shelves
    assert cut_notes(shipped("under_bench_case")) == (WIDTHS,)
    assert cut_notes(solve(stand(carcass=Carcass("birch 18"), bays=(Bay(),)))) == ()
    assert ENDS in " ".join(cut_list_text(shipped("rolling_stand")).split())
