"""Cover, cautions and buying, read back out of the PDF: what plan.json, sheets.json and buying.csv say."""

import csv
import io
import re
import tomllib
from dataclasses import replace
from functools import cache

import pypdf
import pytest

from shoplib.buying.list import buying_list
from shoplib.buying.seams import seam_area
from shoplib.buying.stock_lines import stocked
from shoplib.documents.buying_file import buying_csv
from shoplib.documents.examples import project_path
from shoplib.documents.paper import PAPERS
from shoplib.documents.sheets_file import sheets_dict
from shoplib.draw.whole_view import assembled_view, exploded_view
from shoplib.measure import MM, Style, read_length
from shoplib.model.cabinet import solve
from shoplib.model.solved import Finding
from shoplib.printed.plan.buying_pages import buying_pages
from shoplib.printed.plan.caution_page import caution_pages
from shoplib.printed.plan.cover import cover_pages, key_sizes
from shoplib.printed.plan.front_pages import HEADING, front_pages
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from tests.printed.lengths import BARE, UNIT, about, boards, mm, near, plan, unit_of
from tests.printed.parts import cabinet_of, in_print
from tests.printed.sets import PROJECTS, solved

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
EVERY = pytest.mark.parametrize("project", PROJECTS)
WAYS = ("width", "depth", "height")
WHEN = {
    "Now, for the case": "now",
    "Later: can wait until the case stands": "can wait until the case stands",
    "Later: better not before the case stands and is measured": "when the case stands and is measured",
}


@cache
def pages(project, paper):
    """These parts alone, without the drawings of sheets and boards, which take far longer."""
    of, on = solved(project), PAPERS[paper]
    cautions = caution_pages(of.cabinet, of.findings, of.in_use, of.found)
    return in_print([cautions, cover_pages(of.cabinet, on), buying_pages(of.found)], paper)


def table(parts, head):
    [found] = [part.rows for part in parts if part.tag == "Table" and part.rows[0][0] == head]
    return found


@SETS
def test_the_cover_tells_sizes_over_all_as_wide_deep_and_high(project, paper):
    parts, unit, of = pages(project, paper).under(plan(project)["name"]), unit_of(project), plan(project)
    head, *rows = table(parts, "size")
    assert head == ("size", "wide", "deep", "high")
    told = {row[0]: row[1:] for row in rows}
    assert all(near(size, of["outside"][way], unit) for size, way in zip(told["outside, closed"], WAYS, strict=True))
    out = [sizes for name, sizes in told.items() if name.startswith("with ")]
    assert len(out) == (of["envelope"] != of["outside"])
    assert all(near(size, of["envelope"][way], unit) for sizes in out for size, way in zip(sizes, WAYS, strict=True))
    bays = dict(term for term in of["sums"][0]["terms"] if term[0].startswith("bay "))
    assert {size for name, size in bays.items()} == {
        size for size in bays.values()
        if any(near(row[0], size, unit) for name, row in told.items() if name.endswith(", inside"))}
    spaces = {tuple(high - low for low, high in zip(*about(walls), strict=True)) for walls in boxes(project).values()}
    printed = [row for name, row in told.items() if name.startswith("box of ")]
    assert spaces and printed
    fits = [[all(near(*pair, unit) for pair in zip(row, space, strict=True)) for space in spaces] for row in printed]
    assert all(map(any, fits)) and all(map(any, zip(*fits, strict=True)))


def boxes(project):
    """The walls of every drawer box, by its drawer."""
    found = {}
    for board in boards(project).values():
        if board["role"] in ("box side", "box front", "box back"):
            found.setdefault(board["group"], []).append(board)
    return found


@SETS
def test_the_cover_tells_the_mean_of_the_readings_and_the_thickest(project, paper):
    head, *rows = table(pages(project, paper).under(plan(project)["name"]), "sheet, by name")
    assert head[1:] == ("mean", "thickest")
    used = {board["sheet"] for board in boards(project).values()}
    sheets = {sheet["name"]: sheet for sheet in plan(project)["sheets"] if sheet["name"] in used}
    assert {row[0].rpartition(": ")[0] for row in rows} == set(sheets)
    for named, mean, thickest in rows:
        sheet = sheets[named.rpartition(": ")[0]]
        if sheet["readings"]:
            within = float(UNIT[unit_of(project)]) * {"in": 0.0005, "mm": 0.005}[unit_of(project)] + 1e-6
            readings = sheet["readings"]
            assert float(mm(mean, unit_of(project))) == pytest.approx(sum(readings) / len(readings), abs=within)
            assert float(mm(thickest, unit_of(project))) == pytest.approx(max(readings), abs=within)
        else:
            assert (mean, thickest) == ("not measured yet", "")


@EVERY
def test_the_pictures_of_the_whole_tell_wide_deep_and_high(project):
    cabinet, unit = solved(project).cabinet, unit_of(project)
    for scene in (assembled_view(cabinet), exploded_view(cabinet)):
        told = re.search(rf"({BARE}) wide, ({BARE}) deep, ({BARE}) high", scene.note)
        assert all(near(*pair, unit) for pair in zip(told.groups(), map(plan(project)["outside"].get, WAYS),
                                                     strict=True)), scene.note


def cautions(project, paper):
    """The lines under each heading of the first pages."""
    found, heading = {}, ""
    for part in pages(project, paper).under("Cautions first"):
        if part.tag in ("H1", "H2"):
            heading = part.text
        elif part.tag == "LBody":
            found.setdefault(heading, []).append(part.text)
    return found


@SETS
def test_what_two_lift_stands_on_the_first_pages(project, paper):
    """Every sheet whose first cut sheets.json has as a heavy one."""
    told = cautions(project, paper).get("Two people lift", [])
    assert {line.split(", ")[0] for line in told if "in twos" in line} == heavy(project)
    assert heavy(project) or project in ("small_parts_wall_case", "wheel_wall_drawers")


@cache
def heavy(project):
    said = sheets_dict(solved(project).found)
    kinds = {sheet["name"]: sheet["sheet"] for sheet in said["sheets"]}
    whole = {sheet["name"]: (sheet["length"], sheet["width"]) for sheet in said["sheets"]}
    return {kinds[step["sheet"]] for step in said["order"]
            if step["heavy"] and (step["piece"]["w"], step["piece"]["h"]) == whole[step["sheet"]]}


@SETS
def test_all_that_is_to_be_looked_at_stands_on_the_first_pages(project, paper):
    told = cautions(project, paper).get("Look at this before you build", [])
    of = solved(project)
    texts = [found.text for found in (*of.findings, *of.in_use) if found.level == "warn"]
    assert len(told) == len(dict.fromkeys(texts))
    assert [plain(line) for line in told] == [plain(text) for text in dict.fromkeys(texts)]


def plain(text):
    """Without marks of quotation, which print sets its own way."""
    return "".join(letter for letter in text if letter.isalnum())


@cache
def bought(project):
    found = solved(project).found
    wanted = buying_list(found.cabinet, stocked(found.sheets), (), seam_area(found))
    return list(csv.DictReader(io.StringIO(buying_csv(wanted))))


@SETS
def test_each_line_of_buying_csv_is_printed_with_its_amount_when_it_is_bought(project, paper):
    printed, heading = {}, ""
    for part in pages(project, paper).under("What to buy"):
        heading = part.text if part.tag == "H2" else heading
        if part.tag == "Table":
            assert part.rows[0] == ("bought", "what", "for")
            printed.setdefault(WHEN[heading], []).extend(part.rows[1:])
    assert sum(map(len, printed.values())) == len(bought(project)) > 5
    for row in bought(project):
        lines = [line for line in printed[row["when"]] if row["item"] in line[1] and line[2] == row["for"]]
        assert len(lines) == 1, row
        [(_, what, _)] = lines
        assert re.match(r"[\d.]+ ", what) and float(what.split()[0]) == float(row["quantity"]), (what, row["quantity"])


@SETS
def test_the_total_is_that_of_buying_csv(project, paper):
    text = " ".join(part.text for part in pages(project, paper).under("What to buy"))
    priced = [row for row in bought(project) if row["cost"]]
    told = re.search(r"Total.*?: ([\d.]+) (\w+)[ ;.]", text)
    if priced:
        assert float(told[1]) == pytest.approx(sum(float(row["cost"]) for row in priced), abs=0.001)
        assert told[2] == priced[0]["currency"]
        left = len(bought(project)) - len(priced)
        assert (f"{left} of the {len(bought(project))} lines have none yet" in text
                or f"{left} of the {len(bought(project))} lines has none yet" in text) == (left > 0)
    else:
        assert "Total: not known" in text


def test_a_stop_stands_at_the_front_that_it_names():
    cabinet = solved("under_bench_case").cabinet
    name = next(board.name for board in cabinet.boards if board.role == "front")
    stop = Finding("gap", "stop", (name,), "The front lies in the side by 1/8 in.")
    tagged = in_print([front_pages(cabinet, (stop,), PAPERS["letter"])], "letter")
    text = " ".join(" ".join(part.text for part in tagged.under(HEADING)).split())
    assert text.count(f"STOP, do not cut: {stop.text}") == 1


@EVERY
def test_the_cover_tells_what_of_the_space_stays_free_each_way(project):
    """As the project file asks for it, wide, deep and high; where it asks for nothing, there is no such row."""
    asked = tomllib.loads(project_path(project).read_text(encoding="utf-8")).get("space", {})
    free = [asked.get(f"clearance_{way}") for way in WAYS]
    rows = [row[1:] for row in key_sizes(cabinet_of(project)) if row[0] == "of it to stay free"]
    assert len(rows) == any(free)
    assert [read_length(told) for row in rows for told in row] == [read_length(text) for text in free if text]
    assert bool(rows) == (project in ("under_bench_case", "rolling_stand"))


@pytest.mark.parametrize("paper", PAPERS)
def test_names_of_key_sizes_are_not_squeezed_by_sizes_with_rests(paper):
    """A case in inches, shown in half millimetres: nearly every size has a rest in brackets. All is on one page."""
    drawn = solved("under_bench_case").cabinet.project
    cabinet = solve(replace(drawn, style=Style("mm", MM // 2)))
    assert sum("(" in cell for row in key_sizes(cabinet) for cell in row) > 3
    pdf = set_in_type("Cover", cover_pages(cabinet, PAPERS[paper]), Stamp("Trial", "2222-3333"), PAPERS[paper], "Foot.")
    assert len(pypdf.PdfReader(io.BytesIO(pdf)).pages) == 1
