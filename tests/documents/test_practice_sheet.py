"""The practice sheet: never more than two pages, in true size, its numbers those of the pair and the tables."""

from dataclasses import replace
from functools import cache
from io import BytesIO
from itertools import combinations

import pytest
import typst
from pypdf import PdfReader

from shoplib.documents.paper import PAPERS, USUAL
from shoplib.documents.practice_cuts import cut_rows
from shoplib.documents.practice_pieces import pieces, practice_stock
from shoplib.documents.practice_sheet import practice_sheet, sheet_data
from shoplib.documents.practice_tools import suited_values, usual_tools
from shoplib.documents.typeset import typeset
from shoplib.draw.pair_section import pair_section, said
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import CannotCut, Stock
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length, write_brief
from shoplib.model.board import BoxCut
from shoplib.model.sheet import Sheet
from shoplib.tables.claims import FactError
from shoplib.tables.setups import setup, setups
from tests.documents.pdf_paths import Path, paths
from tests.documents.test_drawings import _figures

STYLES = {"in": INCH_STYLE, "mm": MM_STYLE}
READ = {
    "in": tuple(read_length(text) for text in ("0.703 in", "0.709 in", "0.706 in")),
    "mm": tuple(read_length(text) for text in ("18.1 mm", "18.3 mm", "18.2 mm")),
}
NEARLY = 0.005
"""Millimetres: the drawing is written to a hundredth of its unit, which is 0.0025 mm on paper."""


def stock_for(kind, unit: str) -> Stock:
    sheet = Sheet("sheet", "plywood", 3 * INCH // 4 if unit == "in" else 18 * MM, READ[unit])
    return practice_stock(kind, sheet, sheet, STYLES[unit])


def made(kind, stock: Stock, way: str):
    """The pair as it is cut in that way."""
    return kind.build(stock, suited_values(kind, stock, setup(kind.name, way), usual_tools(stock.style)))


def words(page) -> str:
    """What stands on a page, in one line."""
    return " ".join(page.extract_text().split())


def read_back(pdf: bytes) -> str:
    """The whole text in one line."""
    return " ".join(map(words, PdfReader(BytesIO(pdf)).pages))


DATE = "3 May 2026"


@cache
def pages_of(name: str, unit: str, way: str) -> tuple[bytes, tuple[str, ...]]:
    """The sheet of a joint on the paper of its unit, and its text page by page.

    Several tests look at one, and to read it back takes long.
    """
    pdf = practice_sheet(joint(name), stock_for(joint(name), unit), way, date=DATE)
    return pdf, tuple(map(words, PdfReader(BytesIO(pdf)).pages))


def told_by(name: str, unit: str, way: str = "") -> str:
    """The whole text of the sheet of a joint, in its first way where none is named."""
    return " ".join(pages_of(name, unit, way or setups(name)[0].way.name)[1])


@pytest.mark.parametrize("unit", STYLES)
@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_every_setup_fits_on_two_pages_of_either_paper_and_is_tagged(kind, unit):
    """ANSI/ASME Y14.1 size A: 8.5 x 11 in; ISO 216 A4: 210 x 297 mm; 72 points an inch. Tags: ISO 32000-1, 14.7."""
    stock = stock_for(kind, unit)
    for chosen in setups(kind.name):
        for paper, size in (("letter", (612.0, 792.0)), ("a4", (595.28, 841.89))):
            usual = paper == USUAL[stock.style.unit]
            pdf, each = pages_of(kind.name, unit, chosen.way.name) if usual else (
                practice_sheet(kind, stock, chosen.way.name, date=DATE, paper=paper), ())
            reader = PdfReader(BytesIO(pdf))
            assert len(reader.pages) in (1, 2), (chosen.way.name, paper)
            if not usual:
                continue  # the same words; they take long to read back
            for number, (page, text) in enumerate(zip(reader.pages, each, strict=True), 1):
                assert (round(float(page.mediabox.width), 2), round(float(page.mediabox.height), 2)) == size
                assert f"page {number} of {len(reader.pages)}" in text
                assert text.startswith(f"{kind.title}, sheet {said(stock.enters.thickness, stock.style)}, ")
                assert DATE in text
            assert reader.metadata.title == f"Practice sheet: {kind.title}"
            assert reader.trailer["/Root"]["/MarkInfo"]["/Marked"]
            [figure] = _figures(reader)
            assert figure["/Alt"] == pair_section(made(kind, stock, chosen.way.name), (112 * MM, 92 * MM)).alt
            text = " ".join(each)
            first_setting = text.index(f"Set-up: {chosen.way.name}")
            assert all(
                0 <= _found(caution.claim.say, text) < first_setting for caution in chosen.cautions
            ), chosen.way.name


def _found(sentence: str, text: str) -> int:
    """Where a sentence stands, whatever line breaks did to its hyphens."""
    return text.replace("- ", "-").find(sentence.replace("- ", "-"))


@pytest.mark.parametrize("thickness", ["1/4 in", "12 mm", "1 in", "60 mm"])
@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_thin_and_thick_sheets_fit_as_well(kind, thickness):
    unit = thickness[-2:]
    sheet = Sheet("sheet", "plywood", read_length(thickness))
    stock = practice_stock(kind, sheet, sheet, STYLES[unit])
    try:
        pdf = practice_sheet(kind, stock, paper="letter")
    except CannotCut:
        assert sheet.nominal < 15 * MM, f"{thickness} is thick enough"
    else:
        assert len(PdfReader(BytesIO(pdf)).pages) in (1, 2)


@pytest.mark.parametrize("unit", STYLES)
@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_the_numbers_read_back_are_those_of_the_pair(kind, unit):
    stock = stock_for(kind, unit)
    pair, style = made(kind, stock, setups(kind.name)[0].way.name), stock.style
    text = told_by(kind.name, unit)
    for piece in pieces(pair):
        tests = f" + {piece.tests} to test" if piece.tests else ""
        row = f"{piece.name} {piece.count}{tests} {write_brief(piece.length, style)} {write_brief(piece.width, style)}"
        assert row in text
        board = pair.by_name.get(piece.name)
        if board in pair.boards[:2]:
            assert piece.width == board.width and piece.thickness == board.thickness
            assert 0 <= piece.length - board.length < 7 * MM
    for row in cut_rows(pair):
        many = f"{row.count} x " if row.count > 1 else ""
        cut = f"{many}{row.kind} in the {row.board}"
        assert cut in text
    for board in pair.boards[:2]:
        for cut in board.cuts:
            if isinstance(cut, BoxCut):
                sizes = [said(high - low, style) for low, high in zip(cut.low, cut.high, strict=True)]
                assert any(f"in the {board.name} {a} {b} " in text for a in sizes for b in sizes), (cut, sizes)
    for each in READ[unit]:
        assert write_brief(each, style, decimal=True) in text


def test_the_stack_is_the_nearest_of_every_arrangement():
    """By trying all: two outer cutters, any of the chippers, at most two shims (manuals of saws, as in the data)."""
    kind = joint("dado")
    for unit, style in STYLES.items():
        stock = stock_for(kind, unit)
        tools = usual_tools(style)
        owned = tools.dado_set
        wanted = max(READ[unit]) + kind.values(stock)["fit"]
        widths = {
            2 * owned.outer + sum(chippers) + sum(shims)
            for count in range(len(owned.chippers) + 1) for chippers in combinations(owned.chippers, count)
            for slips in range(3) for shims in combinations(owned.shims, slips)
        }
        best, following = sorted((width for width in widths if width <= tools.saw.widest),
                                 key=lambda width: (abs(width - wanted), -width))[:2]
        text = told_by("dado", unit, "stacked dado set")
        for width, lead in ((best, "It cuts "), (following, ": ")):
            off = abs(width - wanted)
            how = "as wanted" if not off else (
                f"{write_brief(off, style, decimal=True)} {'wider' if width > wanted else 'narrower'} than wanted")
            assert f"{lead}{write_brief(width, style, decimal=True)}, {how}" in text
        for size in (max(READ[unit]), kind.values(stock)["fit"], wanted):
            assert write_brief(size, style, decimal=True) in text


@pytest.mark.parametrize("name", ["tongue", "drawer lock"])
def test_a_narrow_cut_is_made_as_wide_as_the_narrowest_stack(name):
    """5/8 in stock: a third of it is narrower than the two outer cutters, 1/4 in, which no stack can be less than."""
    sheet = Sheet("sheet", "plywood", 5 * INCH // 8)
    kind = joint(name)
    text = read_back(practice_sheet(kind, practice_stock(kind, sheet, sheet, INCH_STYLE), "stacked dado set"))
    assert "It cuts 0.25 in, as wanted" in text
    assert "none:" not in text
    by_blade = read_back(practice_sheet(kind, practice_stock(kind, sheet, sheet, INCH_STYLE), "single blade in passes"))
    assert "Passes for 0.25 in" not in by_blade and "Passes for 1/4 in" not in by_blade


def _bars(found: list[Path]) -> list[tuple[float, float]]:
    """Width and height of the longest two lines that are 0.6 points wide, as the template draws the bars."""
    sizes = [
        (abs(p.corners[0][0] - p.corners[1][0]), abs(p.corners[0][1] - p.corners[1][1]))
        for p in found if p.painted == "S" and len(p.corners) == 2 and abs(p.line - 0.6) < 0.01
    ]
    return sorted(sizes, key=max)[-2:]


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_the_check_bars_are_100_mm_both_ways(kind, quick):
    """One template draws them: each joint on one paper, in turn, and on both with --long."""
    in_turn = [tuple(PAPERS)[JOINTS.index(kind) % len(PAPERS)]]
    for paper in in_turn if quick else PAPERS:
        reader = PdfReader(BytesIO(practice_sheet(kind, stock_for(kind, "mm"), paper=paper)))
        across, up = sorted((bar for page in reader.pages for bar in _bars(paths(page))), reverse=True)
        assert across == pytest.approx((100.0, 0.0), abs=NEARLY)
        assert up == pytest.approx((0.0, 100.0), abs=NEARLY)


@pytest.mark.parametrize("unit", STYLES)
@pytest.mark.parametrize(
    ("name", "cut", "across", "up"),
    [("dado", "dado", 2, 0), ("rabbet", "rabbet", 2, 0), ("groove", "groove", 2, 1), ("half lap", "lap", 2, 0)],
)
def test_a_drawn_cut_measures_what_the_model_says(name, cut, across, up, unit):
    """On the page, from the wall, floor and shoulder of the cut in the outline of the receiving board."""
    kind = joint(name)
    stock = stock_for(kind, unit)
    board = kind.build(stock).boards[0]
    [taken] = [one for one in board.cuts if one.kind == cut]
    deep, wide = ((taken.high[k] - taken.low[k]) / MM for k in (across, up))
    if name == "half lap":
        deep, wide = board.width / MM, deep  # seen from above, the lap goes right across the stile
    reader = PdfReader(BytesIO(practice_sheet(kind, stock)))
    shapes = [path for page in reader.pages for path in paths(page) if path.painted in ("B", "B*", "f", "f*")]
    assert any(_has_step(path, deep, wide) for path in shapes), (deep, wide)


def _has_step(path: Path, deep: float, wide: float) -> bool:
    """Whether the outline has an edge so long across and one so long up that meet in a corner."""
    corners = path.corners
    across = [(a, b) for a in corners for b in corners
              if abs(abs(a[0] - b[0]) - deep) < NEARLY and abs(a[1] - b[1]) < NEARLY]
    up = [(a, b) for a in corners for b in corners
          if abs(abs(a[1] - b[1]) - wide) < NEARLY and abs(a[0] - b[0]) < NEARLY]
    return any(one[0] == other[0] for one in across for other in up)


def test_no_setup_is_typeset_without_its_cautions():
    kind = joint("dado")
    stock = stock_for(kind, "in")
    chosen = setup("dado", "stacked dado set")
    with pytest.raises(FactError, match="no set-up is shown without them"):
        replace(chosen, cautions=())
    with pytest.raises(FactError, match="no set-up is shown without them"):
        replace(chosen, cautions=tuple(one for one in chosen.cautions if one.of != "dado set"))
    data = sheet_data(kind, kind.build(stock), chosen, "", "us-letter", usual_tools(INCH_STYLE))
    assert typeset("practice_sheet.typ", data).startswith(b"%PDF")
    with pytest.raises(typst.TypstError, match="without its cautions"):
        typeset("practice_sheet.typ", data | {"cautions": [[], []]})


def test_without_a_date_there_is_a_line_to_write_one_on():
    kind = joint("butt")
    assert read_back(practice_sheet(kind, stock_for(kind, "in"))).count("date:") == 2
    assert "date:" not in told_by("butt", "in")


def test_a_joint_that_leaves_too_little_wood_is_refused():
    sheet = Sheet("sheet", "plywood", 4 * MM)
    with pytest.raises(CannotCut, match=r"0\.3 mm is missing"):
        practice_sheet(joint("dado"), practice_stock(joint("dado"), sheet, sheet, MM_STYLE))


def test_a_drawing_too_wide_for_the_page_shows_less_of_the_boards():
    """A4 leaves 175 mm beside the upright bar; 60 mm stock needs a long screw, drawn in true size."""
    kind = joint("butt")
    sheet = Sheet("sheet", "plywood", read_length("60.3 mm"))
    stock = practice_stock(kind, sheet, sheet, INCH_STYLE)
    data = sheet_data(kind, kind.build(stock, {"screw": 6 * INCH}), setup("butt", "drill"), "", "a4",
                      usual_tools(INCH_STYLE))
    assert data["drawing"]["width"] <= 174
    reader = PdfReader(BytesIO(practice_sheet(kind, stock, values={"screw": 6 * INCH}, paper="a4")))
    assert len(reader.pages) == 2
    right = max(x for page in reader.pages for path in paths(page) for x, _ in path.corners if path.painted != "f")
    assert right <= 210 - 12 + 0.5


def test_the_same_sheet_gives_the_same_bytes():
    kind = joint("rabbet")
    assert practice_sheet(kind, stock_for(kind, "mm")) == practice_sheet(kind, stock_for(kind, "mm"))


def _results(name: str, way: str) -> str:
    """What a sheet says below the heading of the results, and the form before it."""
    text = told_by(name, "in", way)
    return text[text.index("What you measured"):].replace("- ", "-")


@pytest.mark.parametrize("way", [one.way.name for one in setups("rabbet")])
def test_the_result_of_a_rabbet_is_that_of_one_wall(way):
    """Too narrow, and the mate stands proud; too wide, and there is a step: follows from the geometry."""
    told = _results("rabbet", way)
    assert "stands out of the end of the cut board" in told and "a step" in told
    for strange in ("does not go in", "drops", "shim", "clamp", "splits"):
        assert strange not in told, strange
    kind = joint("rabbet")
    pair = made(kind, stock_for(kind, "in"), way)
    [cut] = pair.boards[0].cuts
    left = pair.boards[0].thickness - (cut.high[2] - cut.low[2])
    assert f"Wood left Result wanted: rabbet in the side {said(cut.high[0] - cut.low[0], INCH_STYLE)} " \
        f"{said(left, INCH_STYLE)} flush" in told


def test_the_result_of_a_bored_hole_asks_for_no_shim_and_no_shaving():
    told = _results("dowel", "drill")
    assert "Measure the dowel, not its label" in told and "depth stop" in told
    for strange in ("shim", "shaving", "fence"):
        assert strange not in told, strange


def test_two_halves_cut_at_one_setting_are_set_by_half_of_what_is_measured():
    """The error counts twice: follows from the geometry, 2 (T / 2 + e) = T + 2 e."""
    for name in ("half lap", "cross lap"):
        told = _results(name, "stacked dado set")
        assert "the error counts twice" in told and "deeper by half of what you measure" in told


@pytest.mark.parametrize(("name", "way", "tight", "loose"), [
    ("dado", "stacked dado set", "Put in a shim", "Take out a shim"),
    ("dado", "single blade in passes", "Move the last pass out", "Move the last pass in"),
    ("dado", "hand tools", "Pare a wall to its line", "saw and pare on the waste side"),
    ("cross lap", "router", "out by what is missing", "in by what is too much"),
    ("finger", "router", "too far from the cutter: move it nearer", "too near the cutter: move it away"),
])
def test_a_fit_is_mended_with_the_tool_in_hand(name, way, tight, loose):
    told = _results(name, way)
    assert tight in told and loose in told
    assert ("shim" in told) == (way == "stacked dado set")


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_what_to_do_next_stands_with_every_joint(kind):
    assert "What to do next" in _results(kind.name, "")


def test_no_metric_sheet_is_worked_for_a_stack_wider_than_its_own_caution_allows():
    """At most 20 mm: the European standard that the caution names (second hand)."""
    told = " ".join(one.claim.say for one in setup("dado", "stacked dado set").cautions)
    assert "A European standard" in told and "20 mm) wide" in told
    assert usual_tools(MM_STYLE).saw.widest == read_length("20 mm")
    text = told_by("dado", "mm", "stacked dado set")
    assert "whose maker allows 20 mm wide" in text
