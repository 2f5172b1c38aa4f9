"""The plan set: cut order, stamp of each page, tags and pictures, and what a stop does."""

import csv
import io
import re
from dataclasses import replace

import pytest

from shoplib.buying.laid_out import laid_out
from shoplib.documents.before_cutting import STOPPED
from shoplib.documents.cut_order_file import cut_order_csv
from shoplib.documents.examples import project_path
from shoplib.documents.paper import ACROSS, PAPERS
from shoplib.model.solved import Finding
from shoplib.printed.everything import print_project, stamp_of
from tests.documents.pdf_paths import paths
from tests.printed.sets import DATE, PROJECTS, plan_set_of, plan_set_pdf, read, solved

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
PARTS = ("Cautions first", "How to read this plan set", "Cut list", "What to buy", "Sheets and saw cuts",
         "Each board with its cuts")


@SETS
def test_the_tables_of_cuts_are_cut_order_csv_row_by_row(project, paper):
    printed = []
    for part in plan_set_of(project, paper).under("Sheets and saw cuts"):
        if part.tag == "Table" and part.rows[0][:2] == ("done", "step"):
            printed += [dict(zip(part.rows[0], row, strict=True)) for row in part.rows[1:]]
    rows = list(csv.DictReader(io.StringIO(cut_order_csv(solved(project).found))))
    rows = [row for row in rows if row["cut"] != "caution"]
    assert len(printed) == len(rows) > 0
    for there, row in zip(printed, rows, strict=True):
        assert [there[column] for column in ("step", "setting", "cut", "cuts")] == [
            row[column] for column in ("step", "setting", "cut", "cuts")
        ]
        if "set by" in there:  # a saw cut
            assert there["piece"] == f"{row['piece']}, {row['piece_length']} x {row['piece_width']}"
            assert (there["set by"], there["at"]) == (row["set_by"], row["fence"])
            assert (there["comes off"], there["is left"]) == (row["comes_off"], row["is_left"])
            two = "two people" if row["lift"] == "two people" else ""
            told = "; ".join(filter(None, [row["mind"], row["then"], two]))
            first = f"not before {row['not_before']}"  # where other stages are cut from the same sheets
            assert there.get("mind", "") in (told, "; ".join(filter(None, [first, told])))
        else:
            assert there["boards"] == row["piece"]
            assert (there["set from"], there["how wide and deep"]) == (row["fence"], row["comes_off"])
            assert there.get("mind", "") == row["mind"]


@SETS
def test_each_sheet_is_drawn_and_what_waits_says_so(project, paper):
    of = solved(project)
    parts = plan_set_of(project, paper).under("Sheets and saw cuts")
    titles = [part.text for part in parts if part.tag == "H3"]
    for sheet in of.found.sheets:
        assert sum(title.startswith(f"{sheet.name}: ") for title in titles) == 1
    assert sum(part.tag == "Figure" for part in parts) == len(of.found.sheets)
    first = {2: "not before the case stands and is measured",
             3: "not before the boxes hang and the openings are measured again"}
    for stage, told in first.items():
        waiting = sum(any(step.turn == stage for step in job.steps) for job in of.found.jobs)
        assert sum(told in title for title in titles) == waiting > 0


@SETS
def test_the_parts_stand_in_the_order_of_the_work(project, paper):
    begins = plan_set_of(project, paper).begins
    assert list(begins)[:2] == ["Cautions first", solved(project).cabinet.name]
    assert begins["Cautions first"] == 1
    at = [begins[part] for part in PARTS]
    assert at == sorted(at) and len(set(at)) == len(at)
    contents = " ".join(part.text for part in plan_set_of(project, paper).under("How to read this plan set"))
    for title, page in begins.items():
        assert re.search(rf"{re.escape(title)} {page}\b", contents)


@SETS
def test_each_page_has_name_fingerprint_date_and_number(project, paper):
    of, stamps = solved(project), plan_set_of(project, paper).stamps()
    stamp = stamp_of(of, DATE)
    for number, text in enumerate(stamps, start=1):
        assert text.startswith(f"{of.cabinet.name} , plan set {DATE} plan {stamp.fingerprint} ")
        assert f"page {number} of {len(stamps)}" in text


@SETS
def test_it_is_tagged_and_every_picture_has_its_text(project, paper):
    tagged = plan_set_of(project, paper)
    root = tagged.reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] and "/StructTreeRoot" in root
    assert root["/Lang"].startswith("en")
    texts = tagged.pictures()
    assert len(texts) > len(solved(project).found.sheets)
    assert all(len(text) > 20 for text in texts)


@SETS
def test_frames_of_tables_and_boxes_stay_inside_the_margins(project, paper):
    """Corners of every path, so of frames too, from the edges of the paper in mm; 0.3 mm for half a line."""
    tagged = plan_set_of(project, paper)
    for number in (page for title in ("Cautions first", "Cut list") for page in (tagged.begins[title],)):
        page = tagged.reader.pages[number - 1]
        width = float(page.mediabox.width) * 25.4 / 72
        across = [x for path in paths(page) for x, _ in path.corners]
        assert min(across) >= ACROSS - 0.3 and max(across) <= width - ACROSS + 0.3


def test_a_stop_stands_on_every_page_and_first():
    of = solved("wheel_wall_drawers")
    stop = Finding("overlap", "stop", ("left side", "top"), "The left side and the top lie in one another by 1/8 in.")
    tagged = plan_set_pdf(replace(of, findings=(*of.findings, stop)), "letter")
    assert all(STOPPED in stamp for stamp in tagged.stamps())
    first = [part.text for part in tagged.under("Cautions first")]
    at = first.index(stop.text)
    assert at < first.index("While you cut, lift and load")
    cut_list = " ".join(part.text for part in tagged.under("Cut list"))
    assert cut_list.count(f"STOP, do not cut: {stop.text}") == 2  # at the left side, and at the top
    clean = plan_set_of("wheel_wall_drawers", "letter")
    assert not any(STOPPED in stamp for stamp in clean.stamps())


def test_without_sheets_it_is_printed_and_says_so():
    tagged = plan_set_pdf(replace(solved("wheel_wall_drawers"), found=None), "a4")
    assert "not laid out on sheets here" in " ".join(part.text for part in tagged.under("Sheets and saw cuts"))
    assert "Cut list" in tagged.begins


def test_a_part_that_fits_no_sheet_is_printed_without_its_sheets(tmp_path):
    """What `sheets` refuses: a back larger than the sheet that it is cut from."""
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    small = tmp_path / "small.toml"
    small.write_text(text.replace('length = "48 in"\nwidth = "24 in"', 'length = "12 in"\nwidth = "12 in"'), "utf-8")
    printed = print_project(small, PAPERS["letter"], DATE, lambda cabinet: laid_out(cabinet, 0))
    assert "comes out of no sheet" in printed.not_laid_out
    assert "Cut list" in read(printed.files["plan_set.pdf"]).begins
