"""What a maker takes to the bench: stops, what to measure first, hardware and joints, read back from the PDF."""

import csv
import io
import re
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from shoplib.building.riding import riding
from shoplib.checks import check
from shoplib.documents import joint_pages
from shoplib.documents.before_cutting import before_cutting, measure_first
from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.drawings import drawing_files
from shoplib.documents.hand_list import parse_hand_list
from shoplib.documents.hardware_page import hardware_page
from shoplib.documents.joint_pages import joint_scenes, without_cut
from shoplib.documents.project_file import read_project
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.measure import LengthError
from shoplib.model.board import Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.solved import Awaited, Finding
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.fixture(scope="module", params=PROJECTS, ids=lambda p: p.stem)
def cabinet(request):
    return solve(read_project(request.param))


@pytest.fixture(scope="module")
def papers(cabinet):
    """The papers of that case as `plan` makes them, with what the checks find."""
    return drawing_files(cabinet, check(cabinet))


def pages(data: bytes) -> list[str]:
    """The words of each page, as a reader of the file finds them."""
    return [" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(data)).pages]


@pytest.fixture(scope="module")
def words(papers):
    """The words of each page of those papers: to read them back takes longer than to make them."""
    return pages(papers["drawings.pdf"])


def section(found, title):
    return next(part for part in found if part.title == title)


def test_a_stop_stands_on_the_first_page_and_on_its_boards_alone(cabinet):
    board = next(b for b in cabinet.boards if b.role == "top")
    stop = Finding("wood left", "stop", (board.name,), "Only 1 mm is left under the dado.")
    warn = Finding("wood left", "warn", (board.name,), "Less than half is left under the dado.")
    files = drawing_files(cabinet, (stop, warn))
    first = pages(files["drawings.pdf"])[0]
    assert "STOP: this plan does not go together yet" in first
    assert "STOP, do not cut: Only 1 mm is left under the dado." in first
    assert "Look before cutting: Less than half" in first
    assert "no check says stop" not in first
    kind = next(k for k in kinds(cabinet) if board.name in k.names)
    marked = [name for name, content in files.items() if name.endswith(".svg") and b"STOP, do not cut" in content]
    stem = re.sub(r"[^a-z0-9]+", "-", kind.first.name)
    assert marked
    assert all(name.startswith(f"board-{stem}-") for name in marked)
    rows = list(csv.DictReader(io.StringIO(cut_list_csv(cabinet, (stop,)))))
    assert [row["names"] for row in rows if "STOP" in row["before_cutting"]] == ["; ".join(kind.names)]


def test_a_plan_without_a_stop_says_so_and_nothing_says_stop(words):
    assert "Dry-fitted: no check says stop." in words[0]
    assert not any("STOP" in page for page in words)


def test_each_board_that_waits_says_what_to_measure_first_and_no_other_does(cabinet, papers, words):
    first = words[0]
    assert first.count("do not cut before measuring") == len({one.stage for one in cabinet.waiting}) > 0
    pictures = b"".join(content for name, content in papers.items() if name.startswith("board-"))
    assert pictures.count(b"<desc>Do not cut before measuring") > 0
    for kind in kinds(cabinet):
        lines = before_cutting(kind, cabinet)
        # A runner is of the case, and waits for the opening of the drawer that it is named after.
        groups = {b.name.rpartition(" ")[0].removesuffix(" left").removesuffix(" right")
                  if b.role == "runner" else b.group for b in kind.boards}  # fmt: skip
        assert bool(lines) == (kind.stage > 1), kind.names
        named = {one.text for one in cabinet.waiting if one.stage == kind.stage}
        for group in groups if kind.stage > 1 else ():
            assert any(group in text for text in named)
    others = [name for name, content in papers.items()
              if name.endswith(".svg") and not name.startswith("board-") and b"before measuring" in content]
    assert others == []


def test_boxes_side_by_side_wait_for_the_opening_that_they_share():
    plan = read_project(next(p for p in PROJECTS if p.stem == "small_parts_wall_case"))
    bays = tuple(replace(bay, drawers=replace(bay.drawers, across=2)) for bay in plan.bays)
    case = solve(replace(plan, bays=bays))
    beside = [kind for kind in kinds(case) if kind.first.part_of and kind.first.part_of.place]
    assert beside
    assert all(any("the opening of" in line for line in before_cutting(kind, case)) for kind in beside)


def test_a_bay_is_not_taken_for_another_whose_number_begins_alike():
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    far = replace(case, waiting=(Awaited(2, "depth", "bay 11", "from its front edge to what stands behind the boxes"),))
    assert all(before_cutting(kind, far) == () for kind in kinds(far))
    assert measure_first(far) == (f"Stage 2: do not cut before measuring {far.waiting[0].text}.",)


def test_the_same_figures_stand_in_the_hardware_page_and_in_the_records(cabinet, words):
    """Spacers against the solver's own, setbacks and holes against the world boxes."""
    found = hardware_page(cabinet, check(cabinet))
    page = Writing(cabinet.style)
    text = " ".join(words)
    if cabinet.spacers:
        slides = section(found, "Slides and runners").rows
        assert {row[3] for row in slides} == {page.length(one.height) for one in cabinet.spacers}
        for item in riding(cabinet):
            edge = cabinet.by_name[item.on].box.low[1]
            assert any(row[4] == page.length(item.box.low[1] - edge) for row in slides)
        assert "spacer: lower edge above" in text
    planned = [row for row in section(found, "Screws").rows if "estimated" not in row[2]]
    wanted = sum(screw.count for fitting in cabinet.hardware for screw in fitting.screws)
    assert sum(int(row[-1]) for row in planned) == wanted > 0
    pulls = {row[2] for row in section(found, "Holes for pulls").rows}
    for board in cabinet.boards:
        holes = [c for c in board.cuts if isinstance(c, Hole) and c.kind.startswith("pull")]
        if board.role == "front" and holes:
            at = board.placement.to_world(Box(holes[0].centre, holes[0].centre)).low[0]
            assert any(page.length(at - board.box.low[0]) in row for row in pulls)
    assert "should measure" in " ".join(section(found, "Diagonals to expect").lines)
    for what in [part.title for part in found]:
        assert what in text


def test_a_screw_is_told_as_it_is_bought():
    """By diameter and length in millimetres where the project shows millimetres (common practice, from memory)."""
    stand = solve(read_project(next(p for p in PROJECTS if p.stem == "rolling_stand")))
    rows = section(hardware_page(stand), "Screws").rows
    assert {row[:2] for row in rows} == {("3.5 mm", "16 mm"), ("3.5 mm", "10 mm"), ("4.0 mm", "25 mm"),
                                        ("brad 1.2 mm", "20 mm")}
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    rows = section(hardware_page(case), "Screws").rows
    assert {row[0] for row in rows} == {"No. 6", "No. 8", "brad 18-gauge"}
    assert all(row[1].endswith(" in") for row in rows)


def test_a_mirrored_pair_is_told_once_and_on_both_drawings():
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    lines = section(hardware_page(case), "Mirrored pairs").lines
    assert [line for line in lines if "left side" in line] == [
        "left side, with right side: cut as a mirrored pair: left side as drawn, its twin mirrored. "
        "Lay the two side by side to mark them."
    ]
    files = drawing_files(case)
    for name in ("left-side-right", "right-side-left"):
        assert b"cut as a mirrored pair" in files[f"board-{name}.svg"]
    assert b"mirrored pair" not in files["board-bottom-top.svg"]


def test_every_way_of_making_a_joint_is_drawn_once(cabinet, words):
    scenes = list(joint_scenes(cabinet))
    made = {
        (j.kind, cabinet.by_name[j.enters].role, cabinet.by_name[j.receives].role) for j in cabinet.joints if j.depth
    }
    assert len(scenes) >= len(made)
    assert len({scene.title for scene in scenes}) == len(scenes)
    counts = [int(n) if n != "One" else 1 for scene in scenes
              for n in re.findall(r"(\d+|One) joints? (?:is|are) made so", scene.legend[-1])]
    assert sum(counts) == sum(1 for j in cabinet.joints if j.depth)
    text = " ".join(words)
    assert "clearances are drawn larger than they are" in text
    for scene in scenes:
        assert scene.title in text


def test_a_joint_without_its_cut_is_named_instead_and_the_rest_drawn(cabinet):
    joint = next(j for j in cabinet.joints if j.depth)
    boards = tuple(replace(b, cuts=()) if b.name == joint.receives else b for b in cabinet.boards)
    broken = replace(cabinet, boards=boards)
    titles = [scene.title for scene in joint_scenes(broken)]
    assert f"Joint: {joint.enters} in {joint.receives}" not in titles
    assert any(f.level == "stop" for f in check(broken))
    assert without_cut(cabinet) == ""
    told = without_cut(broken)
    assert f"{joint.enters} in {joint.receives}" in told
    assert told in " ".join(pages(drawing_files(broken, check(broken))["drawings.pdf"]))


def test_any_other_fault_of_a_joint_drawing_is_not_passed_over(cabinet, monkeypatch):
    def broken(*_):
        raise LengthError("a length that cannot be written")

    monkeypatch.setattr(joint_pages, "joint_section", broken)
    with pytest.raises(LengthError):
        without_cut(cabinet)


def test_the_extra_column_is_passed_over_when_the_list_is_read_back(cabinet):
    found = parse_hand_list(cut_list_csv(cabinet, check(cabinet)))
    assert found.unreadable == ()
    assert [row.names for row in found.rows] == [kind.names for kind in kinds(cabinet)]


@pytest.mark.parametrize("seed", range(6))
def test_random_projects_are_drawn_with_their_findings(seed):
    drawn = solve(project(seed))
    found = check(drawn)
    text = pages(drawing_files(drawn, found)["drawings.pdf"])
    assert ("STOP" in text[0]) == any(f.level == "stop" for f in found)
