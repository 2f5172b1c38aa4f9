"""The season on the front panel: which gap gets tightest, the front beside it, and all gaps that close."""

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
class GapInSeason:
    """A gap in height beside a front: what it lies between, in words, and its season, that of the higher front.

    `between` is empty where there is none and the season is that of a gap to another front like it.
    """

    between: tuple[str, ...]
    season: Season


@dataclass(frozen=True, slots=True)
class Year:
    """The gap that is left narrowest through the year, and every one, from the bottom up."""

    tightest: GapInSeason
    every: tuple[GapInSeason, ...]


def year_of(room: Room, face: Face, gap: int) -> Year:
    """The year of the gaps of a face. One front alone before the case has none: then it is `gap` to another as high."""
    every = tuple(
        GapInSeason(each.between, season_for(room, each.size, *each.fronts)) for each in gaps_of(face) if each.fronts
    )
    alone = face.pieces[0].height
    shown = every or (GapInSeason((), season_for(room, gap, alone, alone)),)
    return Year(min(shown, key=lambda each: each.season.narrowest_gap()), every)


def season_for(room: Room, gap: int, height: int, beside: int = 0) -> Season:
    """The season of a `gap` beside a front `height` high, and at its other side one `beside` high, or the case (0)."""
    low, high = sorted((height, beside))
    return Season(high, low, gap, woods()[room.wood].coefficient(room.cut), room.made, room.driest, room.dampest)


def room_table(shown: GapInSeason, style: Style) -> Table:
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


def season_findings(year: Year, style: Style) -> list[Finding]:
    """Which gaps are used up when the room is dampest, and the gaps that would do.

    The amount is what the tightest lacks.
    """
    shown, season = year.tightest, year.tightest.season
    least, widest = season.narrowest_gap(), season.widest_gap()
    between = " and ".join(shown.between)
    if not between:
        return [Finding(
            "season", "note", (), "One front before the case has no gap to lose. Shown is the gap to another like it, "
            "if there were one.",
        )]
    if least <= 0:
        others = "or take a wood that moves less, quartersawn boards, or plywood."
        closed = [each for each in year.every if each.season.narrowest_gap() <= 0]
        if len(closed) > 1:
            told = "; ".join(
                f"between {' and '.join(each.between)} leave {_enough(each.season, style)}, not "
                f"{how_much(each.season.gap, style)}" for each in closed
            )
            text = f"In the damp season {len(closed)} gaps are used up, and what lies beside them touches: {told}. "
            return [Finding("season", "stop", (), f"{text}Make them so, {others}", -least)]
        return [Finding(
            "season", "stop", (), f"In the damp season {between} touch: the gap of {how_much(season.gap, style)} is "
            f"used up. Leave {_enough(season, style)} when you make them, {others}", -least,
        )]
    low, high = (write_brief(gap, style, decimal=True) for gap in (least, widest))
    return [Finding(
        "season", "note", (), f"Through the year the gap between {between} goes from {low} to {high}, and no other is "
        "tighter; the width of a front, along the grain, hardly changes.",
    )]


def _enough(season: Season, style: Style) -> str:
    """The gap that would stay open by at least a step when the room is dampest."""
    return how_much(to_step(season.gap - season.narrowest_gap(), style.step, "up") + style.step, style)
