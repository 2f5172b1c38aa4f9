"""The practice sheet of a joint: one or two pages to take to the saw, for a measured sheet and a chosen tool."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from shoplib.checks.readings import MOST_SPREAD, unlike_in
from shoplib.documents.paper import AT_FULL_SIZE, BAR, PAPERS, USUAL
from shoplib.documents.practice_cuts import CutRow, cut_rows
from shoplib.documents.practice_pieces import Piece, pieces
from shoplib.documents.practice_results import fit_rows, measured_form, results_of
from shoplib.documents.practice_setup import setup_rows
from shoplib.documents.practice_tools import Tools, suited_values, usual_tools
from shoplib.documents.typeset import typeset
from shoplib.draw.pair_section import pair_section, said
from shoplib.draw.pen import Drawn, draw_to_scale
from shoplib.draw.scene import Scene
from shoplib.joints.bench_pair import JointKind, Pair, Setting, Stock
from shoplib.measure import MM, Style, write_brief
from shoplib.model.dado_stack import target_width
from shoplib.model.sheet import Sheet
from shoplib.tables.joint_facts import joint_facts
from shoplib.tables.setups import Setup, setups

_ROOMS = tuple((wide * MM, 92 * MM) for wide in (112, 96, 80))
_WIDEST = 174.0
"""What the drawing may show of the boards, and how wide it may be with sizes and names round it, beside the upright
bar on A4 (mm). Where these take too much, less of the boards is shown: a smaller scale would not be true."""

_HEADINGS = (
    ("order", "Order of cuts"),
    ("reference", "Reference faces"),
    ("stops", "Stops"),
    ("test", "Test piece"),
    ("measure", "What to measure"),
    ("tear_out", "Against tear-out"),
)


_LARGE, _SMALL, _MUCH = 8.6, 7.8, 2000
"""Letters in points: larger ones where cautions and steps have fewer letters than the third number."""

_UNLIKE = MOST_SPREAD // 2
"""Readings farther apart than 1/32 in are unlike, even where they may be of one sheet (common practice, no source)."""

_SOURCES = (
    "Where each sentence comes from, and how far to trust it: data/cautions.toml, data/setups/{0}.toml and "
    "data/joints/{0}.toml of the workbook. Limits of the fits, and what a result means (data/results.toml): common "
    "practice, no source."
)


def practice_sheet(
    kind: JointKind, stock: Stock, way: str = "", values: Mapping[str, int] = MappingProxyType({}),
    date: str = "", paper: str = "", tools: Tools | None = None,
) -> bytes:
    """The sheet as a PDF: cautions first, then pieces, cuts, set-up, a drawing in true size, and lines to fill in.

    A setting that `values` leaves out is the usual one, or what suits the narrowest stack (`suited_values`).
    `way` is the name of one of `setups(kind.name)`, the first of them where it is left out; `date` is printed as it
    is given, with a line to write on where there is none; `paper` is a key of `PAPERS`; `tools` are the cutters to
    work with. The page must be printed in its own size, which the check bars show.

    Raises CannotCut where the joint leaves too little wood of this stock, KeyError for a way or paper that is none.

    >>> from shoplib.documents.practice_pieces import practice_stock
    >>> from shoplib.joints import joint
    >>> from shoplib.measure import MM_STYLE
    >>> sheet = Sheet("sheet", "plywood", 18 * MM, (1456000, 1460000))
    >>> dado = joint("dado")
    >>> practice_sheet(dado, practice_stock(dado, sheet, sheet, MM_STYLE), "router", date="3 May")[:5]
    b'%PDF-'
    """
    by_name = {setup.way.name: setup for setup in setups(kind.name)}
    chosen = by_name[way] if way else next(iter(by_name.values()))
    tools = tools or usual_tools(stock.style)
    pair = kind.build(stock, suited_values(kind, stock, chosen, tools) | dict(values))
    paper = PAPERS[paper or USUAL[stock.style.unit]].typeset
    return typeset("practice_sheet.typ", sheet_data(kind, pair, chosen, date, paper, tools))


def sheet_data(kind: JointKind, pair: Pair, setup: Setup, date: str, paper: str, tools: Tools) -> dict:
    """What the template sets, every number of it from the solved pair and the tables."""
    stock, style = pair.stock, pair.stock.style
    rows, facts = cut_rows(pair), joint_facts(kind.name)
    scene, drawn = _in_true_size(pair)
    return {
        "letter": _LARGE if _long(setup) < _MUCH else _SMALL,
        "title": f"Practice sheet: {kind.title}",
        "paper": paper,
        "foot": f"True size: print {AT_FULL_SIZE}.",
        "joint": kind.title,
        "sheet": _sheet(stock),
        "date": date,
        "also": ", ".join(facts.also),
        "summary": facts.summary,
        "tool": setup.way.name,
        "cautions": _halves([caution.claim.say for caution in setup.cautions]),
        "sheets": _readings(stock),
        "pieces": [_piece(piece, style) for piece in pieces(pair)],
        "cuts": [_cut(row, pair) for row in rows],
        "chosen": [f"{one.label}: {_value(one, pair.values[one.name], style)}" for one in kind.settings],
        "setup": [list(row) for row in (*_width(pair, rows), *setup_rows(pair, rows, setup, tools))],
        "steps": _halves(_steps(setup), lambda part: part["title"] + "".join(part["lines"])),
        "drawing": {
            "note": scene.noted, "alt": scene.alt, "svg": drawn.svg, "width": round(drawn.size_mm[0], 4),
        },
        "bar": BAR // MM,
        "bar_inches": write_brief(BAR, style, decimal=True) if style.unit == "in" else "",
        "measured": [piece.name for piece in pieces(pair)[:2]],
        "form": measured_form(pair, rows),
        "fits": fit_rows(pair, rows, setup),
        "results": results_of(pair),
        "sources": _SOURCES.format(kind.name.replace(" ", "_")),
    }


def _in_true_size(pair: Pair) -> tuple[Scene, Drawn]:
    """As much of the section as the paper has room for."""
    for room in _ROOMS:
        scene = pair_section(pair, room)
        drawn = draw_to_scale(scene, 1)
        if drawn.size_mm[0] <= _WIDEST:
            break
    return scene, drawn


def _long(setup: Setup) -> int:
    """How many letters the cautions and the steps have."""
    claims = [one for heading, _ in _HEADINGS for one in getattr(setup, heading)]
    return sum(len(one.say) for one in (*claims, *(caution.claim for caution in setup.cautions)))


def _steps(setup: Setup) -> list[dict]:
    """What is said of the set-up, the order of cuts first."""
    return [
        {"title": title, "numbered": heading == "order", "lines": [claim.say for claim in getattr(setup, heading)]}
        for heading, title in _HEADINGS if getattr(setup, heading)
    ]


def _halves(parts: list, text: Callable[[Any], str] = str) -> list[list]:
    """The parts in two columns, the longer one as short as it can be, read down the first and then the second."""
    def longer(cut: int) -> int:
        return max(sum(len(text(part)) for part in half) for half in (parts[:cut], parts[cut:]))

    cut = min(range(1, len(parts) + 1), key=longer)
    return [parts[:cut], parts[cut:]]


def _sheet(stock: Stock) -> str:
    """The thickness of the sheet, or of both where they differ."""
    one, other = (_thickness(sheet, stock.style) for sheet in (stock.enters, stock.receives))
    return f"sheet {one}" if one == other else f"sheets {other} and {one}"


def _thickness(sheet: Sheet, style: Style) -> str:
    return write_brief(sheet.thickness, style, decimal=True)


def _readings(stock: Stock) -> list[str]:
    """What was measured, or that nothing was; and that the readings are not of one sheet where they are unlike."""
    style = stock.style
    enters, receives = (_read(sheet, style) for sheet in (stock.enters, stock.receives))
    told = [f"Both boards: {enters}"] if enters == receives else [
        f"Board that enters: {enters}", f"Board that is cut to receive it: {receives}"]
    return [*told, *_unlike(stock.enters, style)]


def _read(sheet: Sheet, style: Style) -> str:
    if not sheet.readings:
        return f"{_thickness(sheet, style)} thick, as given."
    each = ", ".join(write_brief(one, style, decimal=True) for one in sheet.readings)
    return (f"read {each}; mean {_thickness(sheet, style)}, thickest "
            f"{write_brief(sheet.thickest, style, decimal=True)}.")


def _unlike(sheet: Sheet, style: Style) -> list[str]:
    """What to do about readings that one sheet does not give, or with which its thin places stand loose in the cut."""
    found, apart = unlike_in(sheet, style), sheet.thickest - sheet.thinnest
    if found or apart <= _UNLIKE:
        return [finding.text for finding in found]
    thin, room = (write_brief(size, style, decimal=True) for size in (sheet.thinnest, apart))
    return [f"The readings are unlike: where it measures {thin} it stands {room} loose in a cut for the thickest. "
            "Read it again, and take offcuts that measure alike."]


def _piece(piece: Piece, style: Style) -> list[str]:
    """One row of the table: what, how many, length, width, thickness."""
    count = f"{piece.count} + {piece.tests} to test" if piece.tests else f"{piece.count}"
    across = write_brief(piece.width, style)
    thick = write_brief(piece.thickness, style, decimal=True)
    size = [f"{across} round", ""] if piece.round_ else [across, thick]
    return [piece.name, count, write_brief(piece.length, style), *size]


def _cut(row: CutRow, pair: Pair) -> list[str]:
    """One row of the table: which cut in which board, how wide, how deep, where."""
    style = pair.stock.style
    what = f"{row.count} x {row.kind}" if row.count > 1 else row.kind
    wide, deep = (said(size, style) if size else "see drawing" for size in (row.wide, row.deep))
    if row.bored:
        wide, deep = f"{wide} round", "through" if row.through else deep
    return [f"{what} in the {row.board}", wide, deep, row.where]


def _value(setting: Setting, value: int, style: Style) -> str:
    """A setting as it is said: a length, a count, an angle, a slope (1 in so many), or a choice."""
    if setting.unit == "length":
        return said(value, style) if value else "none"
    if setting.unit == "slope":
        return f"1 in {value // 10}.{value % 10}".removesuffix(".0")
    if setting.unit == "choice":
        return setting.choices[value]
    return f"{value} degrees" if setting.unit == "degrees" else f"{value}"


def _width(pair: Pair, rows: tuple[CutRow, ...]) -> list[tuple[str, str]]:
    """How the width of the cut comes about that takes the whole thickness of a board."""
    style, enters, fit = pair.stock.style, pair.stock.enters, pair.values.get("fit", 0)
    wide = target_width(enters.readings or (enters.thickness,), fit)
    row = next((row for row in rows if row.wide == wide), None)
    if row is None:
        return []
    each = (write_brief(size, style, decimal=True) for size in (enters.thickest, fit, wide))
    return [(f"Width of the {row.kind}", "thickest reading {} + fit {} = {}".format(*each))]
