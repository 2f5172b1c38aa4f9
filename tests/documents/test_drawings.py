"""The drawings as files: names, papers, text that can be searched, alternative text for every picture."""

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from shoplib.documents.drawings import drawing_files
from shoplib.documents.project_file import read_project
from shoplib.lists.cut_list import kinds
from shoplib.measure import MM_STYLE
from shoplib.model.cabinet import solve
from shoplib.words.naming import boards_in_short
from tests.draw.bench_case import bench_case

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


def _figures(reader: PdfReader) -> list[dict]:
    """Every Figure of the structure tree (ISO 32000-1, 14.7)."""
    found, waiting = [], [reader.trailer["/Root"]["/StructTreeRoot"]]
    while waiting:
        node = waiting.pop().get_object()
        if not isinstance(node, dict):
            continue
        if node.get("/S") == "/Figure":
            found.append(node)
        below = node.get("/K", [])
        below = below.get_object() if hasattr(below, "get_object") else below
        waiting += [k for k in (below if isinstance(below, list) else [below]) if hasattr(k, "get_object")]
    return found


@pytest.mark.parametrize("path", PROJECTS, ids=lambda p: p.stem)
def test_each_kind_of_board_is_drawn_once_and_the_pdf_holds_every_drawing(path):
    cabinet = solve(read_project(path))
    files = drawing_files(cabinet)
    pictures = {name: ET.fromstring(content) for name, content in files.items() if name.endswith(".svg")}
    assert all(re.fullmatch(r"[a-z0-9-]+\.(svg|pdf)", name) for name in files)
    titles = [root[0].text for root in pictures.values()]
    for kind in kinds(cabinet):
        told = boards_in_short(kind.boards)
        assert any(title.startswith((f"{told}:", f"{kind.count} x {told}:")) for title in titles)
    reader = PdfReader(BytesIO(files["drawings.pdf"]))
    figures = _figures(reader)
    assert sorted(f["/Alt"] for f in figures) == sorted(root[1].text for root in pictures.values())
    text = " ".join(page.extract_text() for page in reader.pages)
    assert f"page 1 of {len(reader.pages)}" in text
    assert cabinet.name in reader.metadata.title
    assert "scale" in text.lower()


def test_the_paper_is_letter_for_inches_and_a4_for_millimetres():
    """ANSI/ASME Y14.1 size A: 8.5 x 11 in; ISO 216 A4: 210 x 297 mm; 72 points an inch."""
    for cabinet, sizes in (
        (bench_case(), {612.0, 792.0}),
        (replace(bench_case(), style=MM_STYLE), {595.28, 841.89}),
    ):
        for page in PdfReader(BytesIO(drawing_files(cabinet)["drawings.pdf"])).pages:
            assert {round(float(page.mediabox.width), 2), round(float(page.mediabox.height), 2)} == sizes


def test_the_same_cabinet_gives_the_same_bytes():
    assert drawing_files(bench_case()) == drawing_files(bench_case())


def test_names_that_differ_only_in_signs_keep_apart():
    case = bench_case()
    boards = [replace(b, name=f"../{b.name}" if b.name == "shelf" else b.name) for b in case.boards]
    odd = replace(boards[0], name="shelf/", stage=2, length=boards[0].length)
    files = drawing_files(replace(case, boards=(*boards, odd)))
    assert {"board-shelf-top.svg", "board-shelf-right.svg"} <= set(files)
    twin = replace(next(b for b in boards if b.name == "../shelf"), name="shelf?", stage=2)
    files = drawing_files(replace(case, boards=(*boards, twin)))
    assert {"board-shelf-top.svg", "board-shelf-top-2.svg"} <= set(files)
