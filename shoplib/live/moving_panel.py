"""The panel of wood that moves: wood, width and air in; the room to leave, and the year, out."""

from collections.abc import Callable
from dataclasses import dataclass
from types import SimpleNamespace

from shoplib.draw.pen import draw
from shoplib.draw.season_view import Moving, season_view
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.percent_control import PercentControl
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, to_step, write_brief
from shoplib.measure.noted import noting
from shoplib.measure.traced import leaf, named
from shoplib.model.movement import gap_left
from shoplib.model.season import HUMIDITIES, Season, moisture
from shoplib.model.solved import Finding
from shoplib.tables.wood import woods
from shoplib.words.working import working

PICTURE = (400.0, 300.0)


@dataclass(frozen=True, slots=True)
class Place:
    """Where the wood is: what it is called, what the room for it is called, and what is said of it.

    `both` says that the room is taken by two halves of what it grows: its own whole growth, or half of each of two.
    """

    moving: Moving
    room: str
    both: bool
    says: str


FRAME = "a panel in a frame"
PLACES = {
    FRAME: Place(Moving("panel", "width", "wide", "room"), "in each groove", False, ""),
    "a drawer bottom, free behind": Place(
        Moving("bottom", "width", "wide", "room"), "behind it", True,
        "Fix it at its front edge alone, let it run out under a low back, and glue it nowhere else.",
    ),
    "a front, one like it beside it": Place(
        Moving("front", "height", "high", "gap"), "between the two", True,
        "Fix each front along the middle of its height, so that it moves half up and half down.",
    ),
    "a front beside the case": Place(
        Moving("front", "height", "high", "gap"), "to the case", False,
        "Fix it along the middle of its height. The case of sheet goods stands still.",
    ),
}


def moving_panel(unit: str = "in") -> Panel:
    """The panel of wood that moves, in inches or millimetres.

    >>> panel = moving_panel("in")
    >>> panel.enter("width", "20 in")
    >>> panel.message
    'Leave 1/8 in in each groove: 0.0335 in of it stays when it is dampest. Through the year it goes from 19.889 in to \
20.183 in.'
    """
    style, inch = (INCH_STYLE, True) if unit == "in" else (MM_STYLE, False)
    ends = HUMIDITIES[0], HUMIDITIES[-1]
    groups = [
        Group("Three choices", {
            "wood": choose_one("Wood", tuple(woods()), "white oak, commercial"),
            "width": LengthControl("Size across the grain, as made", "14 in" if inch else "350 mm",
                                   *(("2 in", "30 in") if inch else ("50 mm", "750 mm")), style,
                                   "1/8 in" if inch else "1 mm"),
            "dampest": PercentControl("Humidity of the room, dampest", 60, *ends),
        }),
        Group("The air, and the cut", {
            "made": PercentControl("Humidity when it was made", 45, *ends),
            "driest": PercentControl("Humidity of the room, driest", 35, *ends),
            "cut": choose_one("Boards", ("flatsawn", "quartersawn"), "flatsawn"),
        }, "A hygrometer, hung up for a year, tells the humidity of your room. The sum is for 70 °F (21 °C). Along the "
           "grain wood hardly moves."),
        Group("Where it is", {
            "place": choose_one("It is", tuple(PLACES), FRAME),
            "least": LengthControl("To be left when it is dampest", "1/32 in" if inch else "1 mm",
                                   *(("1/64 in", "1/4 in") if inch else ("0.5 mm", "6 mm")), style,
                                   "1/64 in" if inch else "0.5 mm"),
        }, "In a frame or a groove the grain runs along the groove that is named here: across it is where it moves."),
    ]
    return Panel("Wood that moves", groups, lambda values: outcome_of(values, style))


def outcome_of(values: SimpleNamespace, style: Style) -> Outcome:
    """The year of what was chosen, drawn and listed. Raises CannotBuild where the driest air is not the drier."""
    if values.driest >= values.dampest:
        raise CannotBuild(f"The driest air has {values.driest} % and the dampest {values.dampest} %.",
                          "Set the driest lower than the dampest.")
    place, season = PLACES[values.place], season_of(values, values.width, values.least, style)
    scene = season_view(season, style, place.moving)
    told = _say(season, place, style)
    head = ("Humidity", "Moisture in the wood", place.moving.size.capitalize(), f"{place.moving.room.capitalize()} "
            f"{place.room}")
    rows = [(f"{name}, {humid} %", f"{moisture(humid):.1f} %", *(write_brief(size, style, decimal=True) for _, size in
             _sizes(season, humid, place))) for name, humid in _airs(season)]
    table = Table(f"The {place.moving.thing} through the year", head, rows, (2, 3), "year/")

    def traced() -> Season:
        size = leaf(values.width, f"{place.moving.size} chosen")
        return season_of(values, size, leaf(values.least, "what is to be left"), style)

    return Outcome(
        [Drawing(scene.title, draw(scene, PICTURE), scene.alt)], [table], (), told.findings, told.message,
        why_said(told, lambda: _say(traced(), place, style), style, _why(traced, place, style)),
    )


def season_of(values: SimpleNamespace, width: int, least: int, style: Style) -> Season:
    """The season of a width across the grain, with the gap that leaves `least` when the room is dampest, rounded up."""
    coefficient = woods()[values.wood].coefficient(values.cut)
    air = (coefficient, values.made, values.driest, values.dampest)
    bare = Season(width, width if PLACES[values.place].both else 0, 0, *air)
    grown = [each for each in (bare.grown(values.dampest), bare.beside_grown(values.dampest)) if each > 0]
    gap = to_step(least - gap_left(0, grown), style.step, "up")
    return Season(width, bare.beside, named(gap, "room to leave"), *air)


def _airs(season: Season) -> tuple[tuple[str, int], ...]:
    return ("as made", season.made), ("driest", season.driest), ("dampest", season.dampest)


def _sizes(season: Season, humid: int, place: Place) -> tuple[tuple[str, int], tuple[str, int]]:
    """The width and the room at one humidity, each after what it is called."""
    size = season.height if humid == season.made else season.height + season.grown(humid)
    room = season.gap if humid == season.made else season.gap_at(humid)
    return (place.moving.size, size), (f"{place.moving.room} {place.room}", room)


def _say(season: Season, place: Place, style: Style) -> Said:
    with noting() as notes:
        low, high = (write_brief(season.height + season.grown(humid), style, decimal=True)
                     for humid in (season.driest, season.dampest))
        left = write_brief(season.narrowest_gap(), style, decimal=True)
        message = (f"Leave {write_brief(season.gap, style)} {place.room}: {left} of it stays when it is dampest. "
                   f"Through the year it goes from {low} to {high}.")
        return said(notes, [Finding("movement", "note", (), place.says or _deep(season, style))], message)


def _deep(season: Season, style: Style) -> str:
    """How deep the grooves of a frame must be for the panel to stay in them."""
    deep = to_step(2 * season.widest_gap(), style.step, "up")  # all the room of both sides lies at one, in dry air
    return (
        f"Make each groove more than {write_brief(deep, style)} deep: in dry air a panel that slid to the floor of one "
        "has the room of both at its other edge. Glue it nowhere, or at the middle of its ends alone."
    )


def _why(traced: Callable[[], Season], place: Place, style: Style) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for the cells of the table, on numbers that carry their working."""

    def explain(name: str) -> tuple[str, ...]:
        kind, *where = name.split("/")
        if kind != "year":
            raise LookupError(f"the panel shows no size {name!r}")
        row, column = map(int, where)
        season = traced()
        humid = _airs(season)[row][1]
        called, size = _sizes(season, humid, place)[column - 2]
        before, after = moisture(season.made), moisture(humid)
        return (
            *working(size, called, style, write_brief(size, style, decimal=True)),
            f"{after:.2f} % of moisture at {humid} % humidity, {before:.2f} % at {season.made} %, where it was made",
        )

    return explain
