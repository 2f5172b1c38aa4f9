"""A board that a joint stands on its end is cautioned of wherever that joint is called for, with how it is cut.

Which set-ups stand a board so is read straight from `data/setups/`; the joints of the projects, by hand from their
files. That such a board needs a tall fence or a carrier is common practice, no source.
"""

import csv
import io
import tomllib
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from shoplib.building.boxes import alike_boxes
from shoplib.buying.laid_out import laid_out
from shoplib.documents.cut_notes import TONGUES
from shoplib.documents.cut_order_file import COLUMNS, cut_order_csv
from shoplib.documents.paper import PAPERS
from shoplib.lists.on_end import MIND
from shoplib.model.cabinet import solve
from shoplib.model.project import JointChoice
from shoplib.printed.build.boxes import box
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.told.on_end import TITLE
from shoplib.printed.typeset.blocks import Framed, ToTick
from tests.building.cases import SHIPPED
from tests.lists.projects import chest
from tests.printed.test_build_pages import flat
from tests.printed.test_cautions_in_frames import RECORDS, framed, frames_of

SETUPS = Path(__file__).parents[2] / "data" / "setups"
ON_END = {one["say"] for one in RECORDS["board on edge or end"]}
JOINTS = {
    "finger_jointed_drawers": ("rabbet", "finger"), "rolling_stand": ("rabbet", "tongue"),
    "small_parts_wall_case": ("rabbet", "rabbet"), "under_bench_case": ("rabbet", "rabbet"),
    "wheel_wall_drawers": ("rabbet", "rabbet"),
}
"""Those of the case and of its boxes, by hand from the project files: corners, and backs in a rabbet."""


def ways(joint):
    """The ways of a joint, and of these the ones that stand a board on end."""
    told = tomllib.loads((SETUPS / f"{joint.replace(' ', '_')}.toml").read_text(encoding="utf-8"))["setup"]
    return told, [way for way in told if "board on edge or end" in way.get("cuts", ())]


@cache
def drawers(joint):
    """A small chest, its boxes put together by this joint."""
    [bay] = chest().bays
    return solve(chest(bays=(replace(bay, drawers=replace(bay.drawers, corner=JointChoice(joint))),)))


@pytest.mark.parametrize("name", SHIPPED)
def test_each_step_that_stands_a_board_on_end_is_framed_so(name):
    steps = frames_of(name)
    of_case, of_boxes = JOINTS[name]
    assert ways(of_case)[1] and ways(of_boxes)[1]
    cuts = [told for kind in ("cut the case", "joints") for told in steps.get(kind, ()) if ON_END & {*told}]
    assert len(cuts) == 1 and {*cuts[0]} >= ON_END
    assert all({*told} >= ON_END for told in steps["box"])
    assert any("Rabbet, with single blade in passes: " in told for told in map("".join, cuts))


@pytest.mark.parametrize("joint", ["tongue", "drawer lock"])
def test_a_joint_that_is_never_cut_flat_says_how_it_is_cut_and_so_in_each_list(joint):
    cabinet, (_, upright) = drawers(joint), ways(joint)
    assert {way["way"] for way in upright} >= {"stacked dado set", "single blade in passes"}
    for alike in alike_boxes(cabinet):
        made = box(alike, cabinet, ())
        lines = [line for block in flat(made) if isinstance(block, ToTick) for line in block.lines]
        assert {row["say"] for way in upright for part in ("reference", "order") for row in way[part]} <= {*lines}
        assert {*framed(made)} >= ON_END
    laid = laid_out(cabinet, 0)
    framed_there = [block for block in flat(sheet_pages(laid, PAPERS["a4"]))
                    if isinstance(block, Framed) and block.title == TITLE]
    assert any({*framed([block])} >= ON_END and joint in " ".join(framed([block])).lower() for block in framed_there)
    rows = [dict(zip(COLUMNS, row, strict=True)) for row in csv.reader(io.StringIO(cut_order_csv(laid)))]
    assert {row["mind"] for row in rows} >= ON_END
    minded = [row for row in rows if MIND in row["mind"]]
    assert minded and all("box front" in row["piece"] or "box back" in row["piece"] for row in minded)
    assert {row["cut"] for row in minded} == {"rabbet" if joint == "tongue" else "groove"}


def test_the_words_about_tongues_say_how_the_board_stands():
    """Against the fence by its face, so that the cutter lies beyond the tongue: the board cannot lie flat."""
    assert "on its end" in TONGUES and "tall fence" in TONGUES


def test_no_board_that_lies_flat_is_said_to_stand():
    """A dado is cut flat in every way, and so is the dado of a lock joint in a side."""
    assert ways("dado")[1] == []
    cabinet = drawers("drawer lock")
    told = framed(box(alike_boxes(cabinet)[0], cabinet, ()))
    [text] = [text for text in told if ", with " in text]
    assert text.startswith("Drawer lock") and "box side" not in text and "box front" in text
