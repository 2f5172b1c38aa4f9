"""The hardware in print: heights, setbacks, spacers, screws and holes by plan.json; tables inside the page."""

import csv
import io
import json
import re
from collections import Counter
from itertools import pairwise

import pytest

from shoplib.building.spacers import slide_spacers
from shoplib.buying.list import buying_list
from shoplib.buying.screws import estimated, screw_lines
from shoplib.buying.stock_lines import stocked
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.checks.runner_points import driven_at_each_other
from shoplib.documents.buying_file import buying_csv
from shoplib.documents.examples import project_path
from shoplib.documents.hardware_page import screws_section
from shoplib.documents.paper import ABOVE, ACROSS, BELOW, PAPERS
from shoplib.model.cabinet import solve
from shoplib.printed.build.pages import build_pages
from shoplib.printed.plan.drawer_page import HEADING as DRAWERS
from shoplib.printed.plan.front_pages import HEADING as FRONTS
from shoplib.printed.plan.hardware_pages import HEADING, hardware_pages
from shoplib.printed.typeset.blocks import as_data
from shoplib.words.naming import and_list, in_short
from tests.documents.pdf_paths import paths
from tests.printed.lengths import WRITTEN, boards, corners, near, plan, unit_of
from tests.printed.parts import PROJECTS, cabinet_of, in_print, parts_of, printed
from tests.printed.sets import solved
from tests.random_projects import project as random_project

RULE = 0.4
"""The rules of tables are drawn so wide, in points, and nothing else is."""
SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])


def under(project, paper):
    return printed(project, paper).under(HEADING)


def table(project, paper, column):
    return [dict(zip(part.rows[0], row, strict=True)) for part in under(project, paper)
            if part.tag == "Table" and column in part.rows[0] for row in part.rows[1:]]


def runs(project):
    """Slides and side runners: what they lie on, and their lowest corner in the cabinet."""
    found = [(h["on"], h["group"], h["low"], h["high"]) for h in plan(project)["hardware"] if h["what"] == "slide"]
    on = {joint["enters"]: joint["receives"] for joint in plan(project)["joints"]}
    for board in boards(project).values():
        if board["role"] in ("runner", "kicker"):
            low, high = corners(board)
            found.append((on[board["name"]], " ".join(board["name"].split()[:4]), low, high))
    return found


def bare(text):
    return text.replace(" in", "").replace(" mm", "")


@SETS
def test_each_slide_is_told_from_the_reference_sides_of_its_upright(project, paper):
    """A row names all uprights that have it there, and all drawers that it serves, and no other."""
    unit, left = unit_of(project), list(runs(project))
    rows = table(project, paper, "lower edge, from the bottom of the upright")
    for row in rows:
        mine = [run for run in left if _is_there(row, run, project, unit) and _named(run[1], row["for"])]
        assert row["on"] == and_list(in_short(dict.fromkeys(on for on, *_ in mine))), row
        assert row["for"] == and_list(in_short(dict.fromkeys(group for _, group, *_ in mine))), row
        left = [run for run in left if run not in mine]
    assert not left


def _is_there(row, run, project, unit):
    on, _, low, _ = run
    foot = corners(boards(project)[on])[0]
    return (near(bare(row["lower edge, from the bottom of the upright"]), low[2] - foot[2], unit)
            and near(bare(row["set back, from its front"]), low[1] - foot[1], unit))


def _named(group, told):
    """Whether a drawer is among those of a row: "drawer 1 in bays 1 and 3" or "bay 1 drawer 2"."""
    _, bay, what = group.split(" ", 2)
    several = told.startswith(f"{what} in bays ") and bay in re.findall(r"\d+", told.partition(" in ")[2])
    return group == told or several


@SETS
def test_spacers_are_as_high_as_the_slides_stand_and_enough(project, paper):
    unit, floor = unit_of(project), corners(boards(project)["bottom"])[1][2]
    rows, heights = table(project, paper, "how many"), {}
    for _, group, low, _ in runs(project):
        heights.setdefault(round(low[2] - floor, 3), []).append(group)
    assert len(rows) == len(heights)
    for row, (height, groups) in zip(rows, sorted(heights.items()), strict=True):
        assert near(bare(row["size"]), height, unit)
        assert int(row["how many"]) == max(groups.count(group) for group in groups)


@SETS
def test_screws_are_counted_as_in_the_plan(project, paper):
    unit, planned, told = unit_of(project), {}, {}
    for fitting in plan(project)["hardware"]:
        for screw in fitting["screws"]:
            key = screw["gauge"], round(screw["length"], 2)
            planned[key] = planned.get(key, 0) + screw["count"]
    rows = table(project, paper, "screw")
    for row in (row for row in rows if "estimated" not in row["for"]):
        [length] = [length for gauge, length in planned if gauge == row["screw"]
                    and near(bare(row["length"]), length, unit)]
        key = row["screw"], length
        told[key] = told.get(key, 0) + int(row["count"])
    assert told == planned and planned
    [total] = [part.text for part in under(project, paper) if "In all: " in part.text]
    summed = [int(text.split(" of ")[0].split()[-1])
              for text in total.split("In all: ")[1].replace(" and ", ", ").split(", ")]
    assert sum(summed) == sum(int(row["count"]) for row in rows)
    assert sorted(summed) == sorted(bought(project))


def bought(project):
    """How many of each kind of screw and brad the buying list needs, but for those of pulls."""
    of = solved(project)
    wanted = csv.DictReader(io.StringIO(buying_csv(buying_list(of.cabinet, stocked(of.found.sheets)))))
    return [int(row["needed"]) for row in wanted
            if (row["item"].startswith("brad") or "screw" in row["item"]) and not row["item"].startswith("pull")]


@SETS
def test_pull_holes_are_where_the_plan_bores_them(project, paper):
    unit = unit_of(project)
    rows, seen = table(project, paper, "from the left"), 0
    for front in (b for b in boards(project).values() if b["role"] == "front"):
        low = corners(front)[0]
        holes = [_world(front, cut["centre"]) for cut in front["cuts"] if cut["kind"] == "pull"]
        across, up = (sorted({round(place[k] - low[k], 4) for place in holes}) for k in (0, 2))
        assert any(_are(row["from the left"], across, unit) and _are(row["from the bottom edge"], up, unit)
                   for row in rows), front["name"]
        seen += 1
    assert seen


def _are(text, places, unit):
    told = [match[0].replace(f" {unit}", "") for match in WRITTEN.finditer(text)]
    return len(told) == len(places) and all(near(*pair, unit) for pair in zip(told, places, strict=True))


@SETS
def test_peg_holes_are_where_the_plan_bores_them(project, paper):
    unit, rows = unit_of(project), table(project, paper, "panel")
    bored = {name: [cut for cut in board["cuts"] if cut["kind"] == "peg"] for name, board in boards(project).items()}
    bored = {name: holes for name, holes in bored.items() if holes}
    assert [row["panel"] for row in rows] == list(bored)
    for row in rows:
        board, holes = boards(project)[row["panel"]], bored[row["panel"]]
        assert int(row["holes"]) == len(holes)
        low = corners(board)[0]
        for column, way in (("from the front edge", 1), ("from the bottom edge", 2)):
            places = sorted({round(_world(board, hole["centre"])[way] - low[way], 3) for hole in holes})
            told = [bare(match[0]) for match in WRITTEN.finditer(row[column])]
            assert len(told) == len(places)
            assert all(near(*pair, unit) for pair in zip(told, places, strict=True))


def _world(board, point):
    place = list(board["origin"])
    for axis, along in zip(board["axes"], point, strict=True):
        place["xyz".index(axis[1])] += along if axis[0] == "+" else -along
    return place


def test_casters_and_hanging_are_told_where_there_are_any():
    casters = [h for h in plan("rolling_stand")["hardware"] if h["what"] == "caster"]
    assert len(table("rolling_stand", "a4", "assumed pad, from its front")) == len(casters) == 4
    for project in PROJECTS:
        hung = any(part.text == "Hanging it" for part in under(project, "letter"))
        assert hung == ('stands = "hung"' in project_path(project).read_text(encoding="utf-8"))


@SETS
def test_nothing_of_the_three_parts_leaves_the_page(project, paper):
    """Corners of every line, of frames and tables too, from the edges of the paper in mm; 0.5 mm for half a line, and
    for the white round a number at the edge of a drawing."""
    size, off = PAPERS[paper], 0.5
    for page in pages(project, paper):
        spots = [spot for path in paths(page) for spot in path.corners]
        if spots:
            assert ACROSS - off <= min(x for x, _ in spots) and max(x for x, _ in spots) <= size.width - ACROSS + off
            assert BELOW - off <= min(y for _, y in spots) and max(y for _, y in spots) <= size.height - ABOVE + off


@SETS
def test_no_column_is_squeezed(project, paper):
    """From rule to rule of a row of a table there are 8 mm at least."""
    seen = 0
    for page in pages(project, paper):
        rows = {}
        for path in paths(page):
            across = [x for x, _ in path.corners]
            if path.line == RULE and len(across) == 2 and max(across) - min(across) < 0.01:
                rows.setdefault(tuple(round(y, 1) for _, y in path.corners), set()).add(round(across[0], 1))
        for places in rows.values():
            widths = [b - a for a, b in pairwise(sorted(places))]
            seen += len(widths)
            assert all(wide >= 8.0 for wide in widths), widths
    assert seen > 20


def pages(project, paper):
    tagged = printed(project, paper)
    first = min(tagged.begins[title] for title in (DRAWERS, FRONTS, HEADING))
    return tagged.reader.pages[first - 1:]


def test_random_projects_are_printed():
    bored = spaced = 0
    for seed in range(0, 60, 3):
        cabinet = solve(random_project(seed))
        findings = check(cabinet)
        tagged = in_print(parts_of(cabinet, findings, "a4"), "a4")
        assert HEADING in tagged.begins
        assert all(len(alt) > 20 for alt in tagged.pictures())
        spaced += bool(slide_spacers(cabinet))
        bored += len(hardware_pages(cabinet)) > 2
    assert spaced > 3 and bored > 3


def test_without_hardware_the_page_says_so():
    cabinet = cabinet_of("rolling_stand")
    bare_case = type(cabinet)(cabinet.name, (), {}, style=cabinet.style, project=cabinet.project)
    text = " ".join(part.text for part in in_print([hardware_pages(bare_case)], "a4").under(HEADING))
    assert "no hardware" in text


@pytest.mark.parametrize("project", PROJECTS)
def test_screws_and_brads_are_those_of_the_buying_list_and_of_the_steps(project):
    """One count for all three: the rows of the page add up to the lines of the list, whose spare comes on top."""
    cabinet = cabinet_of(project)
    rows = screws_section(cabinet).rows
    counted = Counter()
    for gauge, length, _, _, count in rows:
        counted[f"{gauge.removeprefix('brad ')} x {length}"] += int(count)
    bought = Counter()
    for line in screw_lines(cabinet, 10):
        bought[line.item.split("screw ")[-1].removeprefix("brad ")] += int(line.needed)
    assert counted == bought
    steps = json.dumps(as_data(build_pages(cabinet, check(cabinet), check_in_use(cabinet))), ensure_ascii=False)
    for need in estimated(cabinet):
        if need.head == "brad":
            assert f"{need.count} into {need.into.name}" in steps
        elif need.passed.role in ("runner", "toe board"):
            assert f"of {need.gauge} × " in steps


def test_screws_that_would_meet_in_a_divider_are_set_apart():
    """Read off the drawing: 3/4 in long through runners of 3/8 in, from both faces of a divider of 3/4 in."""
    cabinet = cabinet_of("wheel_wall_drawers")
    told = ("From both faces of divider 1 the screws would meet point to point: set those of bay 2 drawer 1 left "
            "runner 1 in farther back than those of bay 1 drawer 1 right runner.")
    assert told in screws_section(cabinet).lines
    steps = json.dumps(as_data(build_pages(cabinet, check(cabinet), check_in_use(cabinet))), ensure_ascii=False)
    assert told in steps
    assert "8 of No. 8 × 3/4 in" in steps
    assert driven_at_each_other(cabinet_of("under_bench_case")) == ()
