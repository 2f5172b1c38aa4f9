"""The panel of a shelf under its load: span, thickness, sheet; then load and depth; then how it is held."""

from collections.abc import Callable
from types import SimpleNamespace

import pint

from shoplib.draw.asking import sizes
from shoplib.draw.pen import draw
from shoplib.draw.sag_view import SagsOver, sag_over_span, sag_view
from shoplib.draw.scene import Scene
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said
from shoplib.live.table import Table
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, narrowest, write_brief
from shoplib.measure.noted import noting
from shoplib.measure.quantity import read_quantity, write_force
from shoplib.model.beam import Held
from shoplib.model.material import Material, material_of
from shoplib.model.sag import Sag, allowed_sag, board_sag, bottom_sag, sags_over, shop_sag
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Finding
from shoplib.tables.properties import sheet_properties

PICTURE = (400.0, 250.0)
SHELF, BOTTOM = PARTS = ("a shelf", "a drawer bottom")
HELD: dict[str, Held] = {"free to turn at both ends": "simply supported", "held fast at both ends": "clamped"}
"""Words of the panel for the two ways that the formulas know."""

WOODS = ("northern red oak", "sugar maple", "yellow-poplar", "eastern white pine")
"""Boards of solid wood beside the sheets, by their names in the table."""

LOADS = {"in": ("5 lb/ft2", "15 lb/ft2", "25 lb/ft2", "40 lb/ft2"),
         "mm": ("25 kg/m2", "73 kg/m2", "120 kg/m2", "200 kg/m2")}
"""What lies on it; the second is the 15 lb/ft2 of KCMA A161.1, the others are plain numbers to try."""


def stuff(kind: str) -> Material:
    """The figures of a sheet or a wood of the panel. KeyError for another.

    >>> stuff("MDF").known_as, stuff("sugar maple").solid
    ('MDF', True)
    """
    if kind in sheet_properties():
        return material_of(Sheet("sheet", kind, INCH))
    if kind not in WOODS:
        raise KeyError(kind)
    return material_of(Sheet("board", "solid", INCH, species=kind))


def sag_panel(unit: str = "in") -> Panel:
    """The panel of a shelf, or a drawer bottom, in inches or millimetres.

    >>> panel = sag_panel("in")
    >>> panel.enter("span", "48 in")
    >>> panel.message
    'In years it comes to sag 0.346 in to 0.425 in; 0.25 in is allowed.'
    """
    style, inch = (INCH_STYLE, True) if unit == "in" else (MM_STYLE, False)
    groups = [
        Group("Three choices", {
            "span": LengthControl("Span between supports", "36 in" if inch else "900 mm",
                                  *(("6 in", "60 in") if inch else ("150 mm", "1500 mm")), style,
                                  "1/4 in" if inch else "5 mm"),
            "thick": LengthControl("Measured thickness", "0.703 in" if inch else "17.5 mm",
                                   *(("0.15 in", "1.5 in") if inch else ("4 mm", "38 mm")), style,
                                   "0.001 in" if inch else "0.1 mm", measured=True),
            "kind": choose_one("Of", (*sheet_properties(), *WOODS)),
        }),
        Group("Load and depth", {
            "load": choose_one("On it, spread evenly", LOADS[unit], LOADS[unit][1]),
            "depth": LengthControl("Depth, front to back", "12 in" if inch else "300 mm",
                                   *(("4 in", "30 in") if inch else ("100 mm", "750 mm")), style,
                                   "1/8 in" if inch else "1 mm"),
        }, "The second of the loads is the one of KCMA A161.1, the test of kitchen cabinets. What you have, you can "
           "weigh: all of it together, over length x depth."),
        Group("How it is held, or a drawer bottom", {
            "part": choose_one("This is", PARTS),
            "held": choose_one("At its ends it is", tuple(HELD)),
        }, "A shelf in dadoes is between the two. A drawer bottom lies in grooves all round and is taken as a strip "
           "over the shorter way; there, span is its width."),
    ]
    controls = {name: control for group in groups for name, control in group.controls.items()}

    def follow(_change: object = None) -> None:
        controls["held"].layout.display = "none" if controls["part"].value == BOTTOM else None

    controls["part"].observe(follow, names="value")
    panel = Panel("A shelf under its load", groups, lambda values: outcome_of(values, style))
    follow()
    return panel


def outcome_of(values: SimpleNamespace, style: Style) -> Outcome:
    """The sag of what was chosen, drawn, charted and judged.

    Raises CannotBuild where it would bend so far that the formulas do not hold.
    """
    material, load = stuff(values.kind), read_quantity(values.load)
    held = HELD[values.held] if values.part == SHELF else "simply supported"
    if values.part == SHELF:
        sag = board_sag(values.span, values.depth, values.thick, material, load, style, held)
        across = values.depth
    else:
        sag = bottom_sag(values.span, values.depth, values.thick, material, load, style)
        across = values.span + values.depth - narrowest([values.span, values.depth])
    if 10 * sag.most > sag.span:
        raise CannotBuild("It would bend by more than a tenth of its span, and for that these formulas do not hold.",
                          "Make the span shorter, the board thicker or the load lighter.")
    over = over_spans(across, values.thick, material, load, held, style)
    scenes = [sag_view(sag, values.thick, held, style), sag_over_span(over, sag.span, sag.most, style)]
    drawings = [Drawing(scene.title, draw(scene, PICTURE, f"drawing/{number}/"), scene.alt)
                for number, scene in enumerate(scenes)]
    with noting() as notes:
        found = said(notes, findings(sag, style), message(sag, style))
    rows = _rows(sag, style)
    table = Table("How far it sags", ("What", "How much"), [(name, text) for name, text, _ in rows], (1,), "sag/")
    return Outcome(drawings, [table], (), found.findings, found.message, _why(sag, rows, scenes, found, style))


def over_spans(
    depth: int, thick: int, material: Material, load: pint.Quantity, held: Held, style: Style
) -> SagsOver:
    """The sags over the spans of the chart: from 1 to 5 feet, or 300 to 1500 mm."""
    spans = [12 * INCH + step * INCH for step in range(49)] if style.unit == "in" else [
        300 * MM + step * 25 * MM for step in range(49)
    ]
    least, most = zip(*sags_over(spans, depth, thick, material, load, held), strict=True)
    return SagsOver(spans, least, most, [allowed_sag(span) for span in spans], [shop_sag(span) for span in spans])


def message(sag: Sag, style: Style) -> str:
    """The line above the picture."""
    least, most, allowed = (write_brief(ticks, style, decimal=True) for ticks in (sag.least, sag.most, sag.allowed))
    between = most if least == most else f"{least} to {most}"
    return f"In years it comes to sag {between}; {allowed} is allowed."


def findings(sag: Sag, style: Style) -> list[Finding]:
    """Whether it may sag too far, or so far that it is seen."""
    most, allowed, shop = (write_brief(ticks, style, decimal=True) for ticks in (
        sag.most, sag.allowed, shop_sag(sag.span)))
    if sag.least > sag.allowed:
        how = "sags more than is allowed, even with the stiffest figure"
    elif sag.too_much:
        how = f"may sag {most}, more than the {allowed} allowed"
    elif sag.most > shop_sag(sag.span):
        return [Finding("sag", "note", (), f"It stays within what is allowed, but over {shop} the eye may see it: the "
                        "shop rule, no standard.")]
    else:
        return [Finding("sag", "note", (), f"It stays within what is allowed, and under the {shop} of the shop rule.")]
    helps = (
        "A divider under it, a shorter span, a thicker board or a strip glued under its front edge helps; a deeper "
        "shelf that carries more does not."
    )
    return [Finding("sag", "warn", (), f"It {how}. {helps}", sag.most - sag.allowed)]


def _rows(sag: Sag, style: Style) -> list[tuple[str, str, int | None]]:
    def told(name: str, ticks: int) -> tuple[str, str, int]:
        return name, write_brief(ticks, style, decimal=True), ticks

    return [
        ("on it, with its own weight", write_force(sag.weight, style.unit), None),
        told("at once, at most", sag.first_most), told("in years, at least", sag.least),
        told("in years, at most", sag.most), told("allowed (KCMA A161.1)", sag.allowed),
        told("the eye does not see (shop rule)", shop_sag(sag.span)),
    ]


def _why(
    sag: Sag, rows: list[tuple[str, str, int | None]], scenes: list[Scene], found: Said, style: Style
) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for the panel, by the name of a cell, of a dimension or of a length in a sentence."""
    load, stiff, sum_of, time, limit = sag.working

    def lines(called: str, text: str, ticks: int | None) -> tuple[str, ...]:
        if ticks is None:
            return (f"{called} {text} = load, and the weight of the board", load)
        if ticks == sag.span:
            return (f"{called} {text} = span chosen",)
        if ticks == sag.allowed:
            return (f"{called} {text} = the limit for this span", limit)
        if ticks == shop_sag(sag.span):
            return (f"{called} {text} = 0.02 in for each foot of span (common practice, no source)",)
        way = (load, stiff, sum_of) if ticks == sag.first_most else (load, stiff, sum_of, time)
        return (f"{called} {text} = the sum of the beam, worked out below", *way)

    def explain(name: str) -> tuple[str, ...]:
        kind, *place = name.split("/")
        if kind == "sag":
            what, text, ticks = rows[int(place[0])]
            return lines(what.partition(" (")[0], text, ticks)
        if kind == "drawing":
            ((_, ticks),) = sizes(scenes[int(place[0])], place[1])
            return lines("this size", write_brief(ticks, style, decimal=ticks != sag.span), ticks)
        if kind in ("finding", "message"):
            sentence = found.message if kind == "message" else found.findings[int(place[0])].text
            start, end, _ = sentence.lengths[int(place[-1])]
            said_as = {write_brief(ticks, style, decimal=True): ticks for ticks in (
                shop_sag(sag.span), sag.least, sag.most, sag.allowed)}
            return lines("this length", sentence[start:end], said_as[sentence[start:end]])
        raise LookupError(f"the panel shows no size {name!r}")

    return explain
