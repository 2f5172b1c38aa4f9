"""Glue and finish to buy, from the areas and from how far they go."""

from collections.abc import Iterator
from decimal import Decimal

from shoplib.buying.line import Line, up
from shoplib.buying.surfaces import SQUARE_METRE, finish_areas, glue_area
from shoplib.model.board import CASE
from shoplib.model.solved import Cabinet
from shoplib.tables.coverage import Coverage, coverage
from shoplib.words.areas import area
from shoplib.words.naming import and_list
from shoplib.words.stages import STAGES

_LITRE = {
    "fl oz": (Decimal("0.0295735295625"), Decimal(1)),
    "qt": (Decimal("0.946352946"), Decimal("0.1")),
    "ml": (Decimal("0.001"), Decimal(10)),
    "l": (Decimal(1), Decimal("0.1")),
}
"""How many litres each is (US measures: NIST Handbook 44), and the step that it is bought in, rounded up."""

_MEASURES = {"glue": {"in": "fl oz", "mm": "ml"}, "finish": {"in": "qt", "mm": "l"}}


def amount(square_ticks: int, row: Coverage, measure: str) -> Decimal:
    """How much covers an area with all coats of the row, up to a whole step of the measure.

    >>> amount(5 * SQUARE_METRE, coverage("finish"), "l"), amount(5 * SQUARE_METRE, coverage("finish"), "qt")
    (Decimal('1.5'), Decimal('1.6'))
    """
    litres, step = _LITRE[measure]
    steps = Decimal(square_ticks) * row.coats / (SQUARE_METRE * row.square_metres * litres * step)
    return up(steps) * step


def area_lines(cabinet: Cabinet, seams: int = 0) -> Iterator[Line]:
    """Glue for the joints that are glued, and for so many square ticks of seams between staves; finish for all faces
    and edges that no board lies against.
    """
    unit = cabinet.style.unit
    glued = glue_area(cabinet)
    if glued or seams:
        row, measure = coverage("glue"), _MEASURES["glue"][unit]
        staves = f" and {area(seams, cabinet.style)} of seams between staves" if seams else ""
        yield Line(
            "glue", "wood glue", amount(glued + seams, row, measure), measure, stage=CASE,
            uses=f"{area(glued, cabinet.style)} of joints{staves}, {row.what}; none in grooves and behind fronts",
        )  # fmt: skip
    areas = finish_areas(cabinet)
    row, measure = coverage("finish"), _MEASURES["finish"][unit]
    told = and_list([f"{STAGES[stage]} {area(size, cabinet.style)}" for stage, size in sorted(areas.items())])
    yield Line(
        "finish", "clear finish", amount(sum(areas.values()), row, measure), measure, stage=CASE,
        uses=f"{row.coats} coats on all faces and edges, inside and out, that no board lies against: {told}",
    )  # fmt: skip
