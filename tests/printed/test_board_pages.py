"""Each board with its cuts, read back out of the PDF: number for number what the cut list and plan.json say."""

import csv
import io
import re

import pytest

from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.paper import ABOVE, ACROSS, BELOW, PAPERS
from shoplib.lists.cut_list import kinds
from shoplib.lists.row_words import kind_cut_words
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.board import Hole
from shoplib.model.solved import Finding
from shoplib.printed.plan.board_pages import HEADING, board_pages
from shoplib.printed.true_scale.labels import label_pages
from shoplib.printed.true_scale.reference import reference_face
from tests.documents.pdf_paths import paths
from tests.printed.lengths import WRITTEN, boards, near, numbers, unit_of
from tests.printed.parts import PROJECTS, cabinet_of, found_in, in_print, printed

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
DATUM = {"x": "left", "y": "front", "z": "bottom"}
"""The side that places are measured from, by the way that a board runs in the cabinet: nearest the left, the front,
the floor."""


def entries(project, paper):
    """By the number of the row: what is read there, and the alternative texts of its pictures."""
    found, number = {}, 0
    for part in printed(project, paper).under(HEADING):
        begins = re.match(r"No\. (\d+): ", part.text) if part.tag == "H3" else None
        number = int(begins[1]) if begins else 0 if part.tag in ("H1", "H2") else number
        if number:
            texts, alts = found.setdefault(number, ([], []))
            texts.append(part.text)
            alts += [part.alt] if part.tag == "Figure" else []
    return {number: (" ".join(" ".join(texts).split()), alts) for number, (texts, alts) in found.items()}


def listed(project):
    return list(csv.DictReader(io.StringIO(cut_list_csv(cabinet_of(project), found_in(project)))))


@SETS
def test_each_row_of_the_cut_list_has_its_size_at_the_saw(project, paper):
    unit, found = unit_of(project), entries(project, paper)
    assert sorted(found) == list(range(1, len(listed(project)) + 1))
    for number, row in enumerate(listed(project), start=1):
        text, _ = found[number]
        assert text.startswith(f"No. {number}: {row['count']} x ")
        told = re.search(r"At the saw: (.+?) × (.+?) × (.+?), (.+?), grain", text)
        sizes = boards(project)[row["names"].split("; ")[0]]["cut_size"]
        assert all(near(size, exact, unit) for size, exact in zip(told.groups()[:3], sizes, strict=True)), text
        assert told[4] == row["sheet"]
        if row["edging"]:
            finished = re.search(r"Finished: (.+?) × (.+?) × ", text)
            sizes = boards(project)[row["names"].split("; ")[0]]["size"]
            assert all(near(*pair, unit) for pair in zip(finished.groups(), sizes[:2], strict=True)), text
        else:
            assert "Finished" not in text


@SETS
def test_each_cut_is_told_with_its_numbers(project, paper):
    cabinet, found = cabinet_of(project), entries(project, paper)
    for number, kind in enumerate(kinds(cabinet), start=1):
        here = numbers(found[number][0])
        for phrase in kind_cut_words(kind, cabinet, Writing(cabinet.style)):
            lengths = {match[1] for match in WRITTEN.finditer(phrase) if match[2]}
            assert lengths <= here, (number, phrase, lengths - here)


@SETS
def test_each_face_that_is_cut_is_drawn_and_told(project, paper):
    """A cut that begins at one face and does not go through opens there; so plan.json says which faces are worked."""
    found = entries(project, paper)
    for number, row in enumerate(listed(project), start=1):
        board = boards(project)[row["names"].split("; ")[0]]
        thick, faces = board["size"][2], set()
        for cut in board["cuts"]:
            low, high = (cut["low"][2], cut["high"][2]) if "low" in cut else _bored(cut, thick)
            if low <= 0 < thick > high:
                faces.add("lower")
            if low > 0 and high >= thick:
                faces.add("upper")
        _, alts = found[number]
        assert len(alts) >= max(len(faces), 1)
        assert all(len(alt) > 20 for alt in alts)


def _bored(hole, thick):
    if hole.get("along") != "w":
        return thick / 3, 2 * thick / 3
    deep = min(hole["depth"], thick)
    return (0, deep) if hole["centre"][2] == 0 else (thick - deep, thick)


@SETS
def test_a_rail_or_toe_board_has_its_place_at_itself_and_at_the_sides(project, paper):
    """No cut holds it there. How high and how far back, against the boards of plan.json; what is flush is told so."""
    found = {name: found_text for (found_text, _), row in zip(
        (entry for _, entry in sorted(entries(project, paper).items())), listed(project), strict=True)
        for name in row["names"].split("; ")}
    for name, board in boards(project).items():
        if board["role"] not in ("rail", "toe board"):
            continue
        for text in (found[name], found["left side"], found["right side"]):
            told = re.search(
                rf"Place of {name} on left side and right side: its bottom edge (flush with|.+? above) the bottom end, "
                r"its front face (.+?) behind the front edge(, where the notch ends)?;? ?(.*?)\.(?: |$)", text)
            low, side = cabinet_of(project).by_name[name].box.low, cabinet_of(project).by_name["left side"].box.low
            up, back = ((low[k] - side[k]) / MM for k in (2, 1))
            assert up == 0 if told[1] == "flush with" else near(told[1].removesuffix(" above"), up, unit_of(project))
            assert near(told[2], back, unit_of(project))
            assert bool(told[3]) == (board["role"] == "toe board")
            assert "its top edge against" in told[4]
            assert ("its back face against back" in told[4]) == (board["role"] == "rail")


@SETS
def test_pull_holes_that_wait_for_their_front_are_told_to_wait(project, paper):
    """A box front and its front are bored in one, when the front is screwed on; by the cuts and roles of plan.json."""
    found, seen = entries(project, paper), 0
    for number, row in enumerate(listed(project), start=1):
        board = boards(project)[row["names"].split("; ")[0]]
        pulled = any(cut["kind"].startswith("pull") for cut in board["cuts"])
        beside = {other["role"] for other in boards(project).values() if other["group"] == board["group"]}
        text, _ = found[number]
        assert ("The pull holes wait until the front is screwed on" in text) == (pulled and "front" in beside), number
        assert ("through front and box front in one" in text) == (pulled and {"front", "box front"} <= beside), number
        seen += pulled
    assert seen


@SETS
def test_what_is_measured_first_stands_at_each_board(project, paper):
    found = entries(project, paper)
    for number, row in enumerate(listed(project), start=1):
        text, alts = found[number]
        if row["before_cutting"]:
            assert row["before_cutting"] in text
        else:
            assert "Do not cut" not in text
        assert all(alt.startswith(row["before_cutting"]) for alt in alts)


@SETS
def test_reference_sides_are_those_nearest_left_front_and_floor(project, paper):
    for number, row in enumerate(listed(project), start=1):
        board = boards(project)[row["names"].split("; ")[0]]
        told = re.search(r"Reference: (\w+) face, (\w+) edge and (\w+) end[.;]", entries(project, paper)[number][0])
        assert told[2] == DATUM[board["axes"][1][1]] and told[3] == DATUM[board["axes"][0][1]]


@pytest.mark.parametrize("project", PROJECTS)
def test_labels_name_the_same_reference_sides_as_the_board_pages(project):
    """Every label against what its page reads for that very board: "inside face, ...; of top the inside face."."""
    cabinet, found = cabinet_of(project), entries(project, "a4")
    cells = {cell.title: cell.lines for block in label_pages(cabinet) if hasattr(block, "cells")
             for cell in block.cells}
    assert sorted(cells) == sorted(cabinet.by_name)
    for number, row in enumerate(listed(project), start=1):
        told = re.search(r"Reference: (.+?)\.", found[number][0])[1]
        first, *others = told.split("; ")
        face, edge, end = re.fullmatch(r"(\w+ face), (\w+ edge) and (\w+ end)", first).groups()
        named = {}
        for one in others:
            whose, its_face = re.fullmatch(r"of (.+) the (\w+ face)", one).groups()
            named |= {name: its_face for name in row["names"].split("; ") if name in whose}
        for name in row["names"].split("; "):
            lies = next(line for line in cells[name] if line.startswith("Lies on: "))
            sides = next(line for line in cells[name] if line.startswith("Measure from: "))
            assert lies.removeprefix("Lies on: ").split(",")[0] == named.get(name, face), (name, told)
            assert sorted(sides.removeprefix("Measure from: ").split(" and ")) == sorted((edge, end)), (name, told)


@pytest.mark.parametrize("project", PROJECTS)
def test_equal_boards_have_the_same_cuts_on_their_reference_faces(project):
    """Counted in each board's own coordinates: cuts that open there, and there alone, by how deep they go.

    A face without any may be named where a board carries its slides on the other one."""
    cabinet = cabinet_of(project)
    for kind in kinds(cabinet):
        on = {}
        for board in kind.boards:
            upper = reference_face(board, kind, cabinet) == looks(board, 2, 1)
            on[board.name] = sorted(
                depth for cut in board.cuts for depth in (depth_on(cut, board.thickness, upper),) if depth)
        assert all(cuts == on[kind.first.name] for cuts in on.values()), (kind.names, on)


def depth_on(cut, thickness, upper):
    """How deep a cut goes into a face, 0 where it does not open there or goes right through."""
    if isinstance(cut, Hole):
        blind = cut.along == "w" and cut.depth < thickness
        return cut.depth if blind and (cut.centre[2] != 0) == upper else 0
    low, high = cut.low[2], cut.high[2]
    if (low <= 0) == (high >= thickness):
        return 0
    return thickness - low if upper and high >= thickness else high if not upper and low <= 0 else 0


@SETS
def test_several_stand_on_a_page_and_all_inside_its_margins(project, paper):
    """Corners of every line from the edges of the paper in mm; 0.3 mm for half a line."""
    tagged, size = printed(project, paper), PAPERS[paper]
    first = tagged.begins[HEADING]
    last = min((page for page in tagged.begins.values() if page > first), default=len(tagged.reader.pages) + 1)
    drawn = sum(part.tag == "Figure" for part in tagged.under(HEADING))
    assert drawn >= 1.5 * (last - first)
    for number in range(first, last):
        spots = [spot for path in paths(tagged.reader.pages[number - 1]) for spot in path.corners]
        assert min(x for x, _ in spots) >= ACROSS - 0.3 and max(x for x, _ in spots) <= size.width - ACROSS + 0.3
        assert min(y for _, y in spots) >= BELOW - 0.3 and max(y for _, y in spots) <= size.height - ABOVE + 0.3


def test_a_stop_stands_at_the_boards_that_it_names():
    stop = Finding("overlap", "stop", ("left side", "top"), "The left side and the top lie in one another by 1/8 in.")
    findings = (*found_in("wheel_wall_drawers"), stop)
    tagged = in_print([board_pages(cabinet_of("wheel_wall_drawers"), findings, PAPERS["letter"])], "letter")
    text = " ".join(" ".join(part.text for part in tagged.under(HEADING)).split())
    assert text.count(f"STOP, do not cut: {stop.text}") == 2
