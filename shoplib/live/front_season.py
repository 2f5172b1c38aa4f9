"""The season on the front panel: which gap gets tightest, the front beside it, and whether they touch."""

from dataclasses import dataclass

from shoplib.live.table import Table
from shoplib.measure import Style, to_step, write_brief
from shoplib.model.front_face import Face, gaps_of
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


@dataclass(frozen=True, slots=True)
class Tightest:
    """The gap that is left narrowest when the room is dampest: what it lies between, in words, and its season.

    `between` is empty where there is none and the season is that of a gap to another front like it.
    """

    between: tuple[str, ...]
    season: Season


def tightest(room: Room, face: Face, gap: int) -> Tightest:
    """The gap in height that is left narrowest, and of the fronts beside it the higher one.

    One front alone before the case has no such gap: then it is `gap` to another as high.
    """
    found = [(each.between, each.size, each.fronts) for each in gaps_of(face) if each.fronts]
    alone = face.pieces[0].height
    found = found or [((), gap, (alone, alone))]
    seasons = [Tightest(between, season_for(room, size, *fronts)) for between, size, fronts in found]
    return min(seasons, key=lambda each: each.season.narrowest_gap())


def season_for(room: Room, gap: int, height: int, beside: int = 0) -> Season:
    """The season of a `gap` beside a front `height` high, and at its other side one `beside` high, or the case (0)."""
    low, high = sorted((int(height), int(beside)))
    return Season(high, low, int(gap), woods()[room.wood].coefficient(room.cut), room.made, room.driest, room.dampest)


def room_table(shown: Tightest, style: Style) -> Table:
    """The front and its tightest gap as made, in the driest and in the dampest room."""
    season, rows = shown.season, []
    for name, humid in (("as made", season.made), ("driest", season.driest), ("dampest", season.dampest)):
        height, gap = season.height + season.grown(humid), season.gap_at(humid)
        rows.append((
            f"{name}, {humid} %", f"{moisture(humid):.1f} %", write_brief(height, style, decimal=True),
            write_brief(gap, style, decimal=True) if gap > 0 else "they touch",
        ))
    head = ("Humidity", "Moisture in the wood", "Height", f"Gap, {' to '.join(shown.between) or 'to one like it'}")
    return Table("The highest front through the year", head, rows, (2, 3), "season/")


def season_findings(shown: Tightest, style: Style) -> list[Finding]:
    """Whether the tightest gap is used up when the room is dampest, and the gap that would do."""
    season = shown.season
    least, widest = season.narrowest_gap(), season.widest_gap()
    between = " and ".join(shown.between)
    if not between:
        return [Finding(
            "season", "note", (), "One front before the case has no gap to lose. Shown is the gap to another like it, "
            "if there were one.",
        )]
    if least <= 0:
        room = to_step(season.gap - least, style.step, "up") + style.step
        return [Finding(
            "season", "stop", (), f"In the damp season {between} touch: the gap of {how_much(season.gap, style)} is "
            f"used up. Leave {how_much(room, style)} when you make them, or take a wood that moves less, quartersawn "
            "boards, or plywood.", -least,
        )]
    low, high = (write_brief(gap, style, decimal=True) for gap in (least, widest))
    return [Finding(
        "season", "note", (), f"Through the year the gap between {between} goes from {low} to {high}, and no other is "
        "tighter; the width of a front, along the grain, hardly changes.",
    )]
