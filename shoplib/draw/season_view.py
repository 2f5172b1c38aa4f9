"""A solid front through the year, drawn for a panel: its height and the gap beside it over the humidity of the room."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import count, pairwise

from shoplib.draw.letters import ORDINARY, letters
from shoplib.draw.scene import Disc, EdgeText, Item, Label, Leader, Line, Scene, Shape, Slanted
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.season import HUMIDITIES, Season

WIDE, HIGH, BAND = 40_000, 10_500, 3_400
"""One of the two charts, and the room for words over it, in hundredths of the unit of the drawing."""
_MARK = 400
_MOST_STEPS = {False: 5, True: 4}
"""Lines of the grid above the first: larger letters need more room between two of them."""


@dataclass(frozen=True, slots=True)
class Moving:
    """What moves, in words: the thing, which of its sizes that is, how it is said to be large, and the room for it."""

    thing: str = "front"
    size: str = "height"
    large: str = "high"
    room: str = "gap"


FRONT = Moving()


def season_view(season: Season, style: Style, moving: Moving = FRONT) -> Scene:
    """Two charts, one above the other, over the same humidities; marked are the driest, as made, and the dampest.

    Under the dashed line of the lower one the gap is used up.
    """
    grown = [season.grown(humid) for humid in HUMIDITIES]
    heights = [season.height + more for more in grown]
    gaps = [season.gap_at(humid) for humid in HUMIDITIES]
    unit = "inches" if style.unit == "in" else "mm"
    items = [
        *_chart(season, style, HIGH + BAND, heights, [], f"{moving.size} of the {moving.thing}, {unit}"),
        *_chart(season, style, 0, gaps, [0], f"{moving.room} beside it, {unit}"),
        *(EdgeText((_across(humid), 0, _across(humid), 0), "below", f"{humid}") for humid in HUMIDITIES[::10]),
    ]
    return Scene(
        f"A solid {moving.thing} through the year",
        "▼ driest, ● as made, ▲ dampest; the span of the room is shaded.",
        season_alt(season, style, moving),
        (0, 0, WIDE, 2 * (HIGH + BAND)),
        tuple(items),
        (f"Across: relative humidity of the room, %. Under the dashed line the {moving.room} is closed.",),
    )


def _across(humidity: int) -> int:
    return (humidity - HUMIDITIES[0]) * WIDE // (HUMIDITIES[-1] - HUMIDITIES[0])


def _chart(
    season: Season, style: Style, foot: int, values: Sequence[int], lines: Sequence[int], words: str
) -> list[Item]:
    """The curve of `values` (ticks) over the humidities, on a grid; `lines` are dashed, and within the chart."""
    low, high = min(*values, *lines), max(*values, *lines)
    edge = (high - low) // 8 or 1
    low, high = low - edge, high + edge

    def up(value: int) -> int:
        return foot + (value - low) * HIGH // (high - low)

    def point(humidity: int) -> tuple[int, int]:
        return _across(humidity), up(values[humidity - HUMIDITIES.start])

    head = foot + HIGH
    items: list[Item] = [Shape(((_across(season.driest), foot, _across(season.dampest), head),), "span")]
    items += [Line((_across(humid), foot), (_across(humid), head), "grid") for humid in HUMIDITIES[::10]]
    for value, text in _steps(low, high, style):
        items += [Line((0, up(value)), (WIDE, up(value)), "grid"), Leader((0, up(value)), "left", text)]
    items += [Line((0, up(value)), (WIDE, up(value)), "hidden") for value in lines]
    items += [Line((0, foot), (WIDE, foot)), Line((0, foot), (0, head))]
    items += [Line(point(one), point(next_one), "curve") for one, next_one in pairwise(HUMIDITIES)]
    x, y = point(season.driest)
    items.append(Slanted(((x - _MARK, y + _MARK), (x, y - _MARK), (x + _MARK, y + _MARK)), "mark", "driest"))
    x, y = point(season.dampest)
    items.append(Slanted(((x - _MARK, y - _MARK), (x + _MARK, y - _MARK), (x, y + _MARK)), "mark", "dampest"))
    items.append(Disc(point(season.made), 2 * _MARK, "mark", "as made"))
    return [*items, Label((0, head, WIDE, head + BAND), (words,))]


def _steps(low: int, high: int, style: Style) -> list[tuple[int, str]]:
    """Round values from `low` to `high` (ticks) for the lines of a grid, and how they are written, without unit.

    They are 1, 2 or 5 thousandths of an inch or hundredths of a millimetre apart, or ten, a hundred times that.

    >>> from shoplib.measure import MM_STYLE
    >>> [text for _, text in _steps(0, 2 * MM, MM_STYLE)]
    ['0.0', '0.5', '1.0', '1.5', '2.0']
    """
    finest, places = (INCH // 1000, 3) if style.unit == "in" else (MM // 100, 2)
    apart, power = next(
        (times * 10**power, power)
        for power in count()
        for times in (1, 2, 5)
        if high - low <= _MOST_STEPS[letters() > ORDINARY] * times * 10**power * finest
    )
    step, digits = apart * finest, max(places - power, 0)
    return [
        (number * step, f"{Decimal(number * apart).scaleb(-places):.{digits}f}")
        for number in range(-(-low // step), high // step + 1)
    ]


def season_alt(season: Season, style: Style, moving: Moving = FRONT) -> str:
    """The chart in words."""
    ends = []
    for name, humid in (("driest", season.driest), ("dampest", season.dampest)):
        more = season.grown(humid)
        gap = season.gap_at(humid)
        told = f"{_sized(gap, style)} wide" if gap > 0 else "closed"
        ends.append(f"At its {name}, {humid} %, the {moving.thing} is {_sized(season.height + more, style)} "
                    f"{moving.large} and the {moving.room} {told}.")
    return (
        f"A chart over the relative humidity of the room, {HUMIDITIES[0]} to {HUMIDITIES[-1]} %. Above, the "
        f"{moving.size} of a solid {moving.thing}, {_sized(season.height, style)} as made at {season.made} %, rises "
        f"with it; below, the {moving.room} beside it falls. {' '.join(ends)} The span of the room is shaded."
    )


def _sized(ticks: int, style: Style) -> str:
    return write_brief(ticks, style, decimal=True)
