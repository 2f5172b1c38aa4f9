"""The season on the front panel: which front moves most, its heights and gaps, and whether they touch."""

from dataclasses import dataclass

from shoplib.live.table import Table
from shoplib.measure import Style, to_step, write_brief
from shoplib.model.front_face import Face
from shoplib.model.season import Season, moisture
from shoplib.model.solved import Finding
from shoplib.tables.wood import woods
from shoplib.words.amounts import how_much

SOLID = "plywood or other sheet goods"
"""What hardly moves: the sum of the season is not made for it."""


@dataclass(frozen=True, slots=True)
class Room:
    """Of which wood and cut the fronts are, and the humidities as made and of the room, in percent."""

    wood: str
    cut: str
    made: int
    driest: int
    dampest: int


def season_of(room: Room, face: Face, gap: int) -> Season:
    """The season of the highest front of bay 1, which moves most; beside it stands one at most as high."""
    return season_for(room, max(piece.height for piece in face.bay(1)), gap)


def season_for(room: Room, height: int, gap: int) -> Season:
    """The season of a front `height` high with a `gap` beside it, in ticks."""
    return Season(height, gap, woods()[room.wood].coefficient(room.cut), room.made, room.driest, room.dampest)


def room_table(season: Season, style: Style) -> Table:
    """The front as made, in the driest and in the dampest room."""
    rows = []
    for name, humid in (("as made", season.made), ("driest", season.driest), ("dampest", season.dampest)):
        more = season.grown(humid)
        gap = season.gap - more
        rows.append((
            f"{name}, {humid} %", f"{moisture(humid):.1f} %", write_brief(season.height + more, style, decimal=True),
            write_brief(gap, style, decimal=True) if gap > 0 else "they touch",
        ))
    head = ("Humidity", "Moisture in the wood", "Height", "Gap beside it")
    return Table("The highest front through the year", head, rows, (2, 3), "season/")


def season_findings(season: Season, face: Face, style: Style) -> list[Finding]:
    """Whether fronts press on each other when the room is dampest, and the gap that would do."""
    least, widest = season.narrowest_gap(), season.widest_gap()
    alone = len(face.bay(1)) == 1
    beside = "and the case" if alone else "and the next"
    half = " (Each of its two gaps loses half of what it grows: the table shows two such fronts, side by side.)"
    if least <= 0:
        room = to_step(season.gap - least, style.step, "up") + style.step
        return [Finding(
            "season", "stop", (), f"In the damp season the highest front {beside} touch: the gap of "
            f"{how_much(season.gap, style)} is used up. Leave {how_much(room, style)} when you make them, or take a "
            f"wood that moves less, quartersawn boards, or plywood.{half if alone else ''}", -least,
        )]
    span = f"from {how_much(least, style)} to {how_much(widest, style)}"
    return [Finding(
        "season", "note", (), f"Through the year the gap beside the highest front goes {span}; its width, along the "
        f"grain, hardly changes.{half if alone else ''}",
    )]
