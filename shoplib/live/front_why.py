"""Why a size of the front panel is what it is: the same functions, on numbers that carry their names."""

from collections.abc import Callable
from dataclasses import replace

from shoplib.draw.front_view import front_view
from shoplib.live.front_project import FrontChoices
from shoplib.live.front_says import sum_lengths
from shoplib.live.front_season import Room, year_of
from shoplib.live.why import drawn, workings
from shoplib.measure import Style, write_brief
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.front_face import Face, face_of, gaps_of
from shoplib.model.project import Project
from shoplib.model.season import Season, moisture
from shoplib.model.tracing import traced
from shoplib.words.amounts import setting
from shoplib.words.working import working

OFF = "what the part is off"
"""The name of that length in workings."""


def why_of_fronts(
    project: Project, choices: FrontChoices, shown: Callable[[Face, int], Face], over: int, style: Style,
    room: Room | None,
) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for the panel: by the name of a cell or of a dimension; LookupError for another."""

    def explain(name: str) -> tuple[str, ...]:
        planned = face_of(solve(traced(project)), choices.inset)
        face = shown(planned, leaf(over, OFF, "measured"))
        kind, one, place = name.split("/")
        if kind == "drawing":
            return drawn(front_view(face, choices.gap, style), place, style)
        if kind == "sum":
            return workings([sum_lengths(planned, _named(choices))[int(one)][int(place)]], style)
        row = int(one)
        if kind == "front":
            piece = face.pieces[row]
            side = {"1": "width", "2": "height"}[place]
            size = getattr(piece, side)
            return working(size, f"front {piece.number}, {side}", style, write_brief(size, style))
        if kind == "gap":
            gap = gaps_of(face)[row]
            return working(gap.size, "this gap", style, setting(gap.size, style) if gap.size > 0 else "")
        if kind == "season" and room is not None:
            return in_season(year_of(room, planned, choices.gap).tightest.season, row, place, style)
        raise LookupError(f"the panel shows no size {name!r}")

    return explain


def _named(choices: FrontChoices) -> FrontChoices:
    """The choices that closing sums show, under the names that their controls have."""
    called = {"gap": "gap", "around": "gap at the case", "height": "opening height", "width": "opening width"}
    return replace(choices, **{name: leaf(getattr(choices, name), f"{what} chosen") for name, what in called.items()})


def in_season(season: Season, row: int, place: str, style: Style) -> tuple[str, ...]:
    """The sum of the handbook for one row of the table of the year, and what it rests on.

    `row` is 0 as made, 1 driest, 2 dampest; `place` "2" the height, "3" the gap. KeyError for another.
    """
    def told(ticks: int) -> str:
        return write_brief(ticks, style, decimal=True)

    def less(ticks: int, what: str = "") -> str:
        return f" {'-' if ticks >= 0 else '+'} {what}{told(abs(ticks))}"

    humid = (season.made, season.driest, season.dampest)[row]
    before, after = moisture(season.made), moisture(humid)
    moves = {season.height: season.grown(humid)}
    if place not in ("2", "3"):
        raise KeyError(place)
    if place == "2":
        first = f"height {told(season.height + season.grown(humid))} = {told(season.height)} as made"
        first += less(-season.grown(humid), "the movement ")
    else:
        first = f"gap {told(season.gap_at(humid))} = {told(season.gap)} as made{less(season.grown(humid))} / 2"
        if season.beside:
            moves[season.beside] = season.beside_grown(humid)
            first += f"{less(season.beside_grown(humid))} / 2, half the movement of each front"
        else:
            first += ", half the movement of the front; the case stands still"
    drier, damper = sorted((before, after))
    change = f"{float(season.coefficient):.5f} x ({damper:.2f} - {drier:.2f})"
    return (
        first,
        *(f"movement {told(abs(more))} = height {told(height)} x {change}" for height, more in moves.items()),
        f"{after:.2f} % of moisture at {humid} % humidity, {before:.2f} % at {season.made} %, where it was made",
    )
