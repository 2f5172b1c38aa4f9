"""A solid panel in its frame over the humidity of the room, as a chart that stands still on a page."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shoplib.draw.chart_page import chart_page, chart_svg
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.season import HUMIDITIES

_INK, _ROOM = "#1b3a5c", "#d9b26a"
_LINES = {"flatsawn": "-", "quartersawn": "--"}


@dataclass(frozen=True, slots=True)
class Moves:
    """By how much a panel `width` wide has grown (minus: shrunk; ticks) at each of `HUMIDITIES`, by its cut.

    It was as wide as that at `made`; the room goes from `driest` to `dampest`, humidities in percent.
    """

    width: int
    grown: dict[str, Sequence[int]]
    made: int
    driest: int
    dampest: int

    def at(self, cut: str, humidity: int) -> int:
        """The growth at one humidity."""
        return self.grown[cut][humidity - HUMIDITIES.start]


def moves_chart(moves: Moves, style: Style) -> str:
    """The chart as SVG text, byte for byte the same for the same panel; sizes in the unit of `style`.

    `moves_alt` tells it in words. Nothing global is changed. Larger letters (`letters.drawn_with`) stand on a smaller
    page that is shown larger.
    """
    one, unit = (INCH, "inches") if style.unit == "in" else (MM, "mm")
    figure = chart_page(3.8)
    figure.subplots_adjust(left=0.16, right=0.96, top=0.91, bottom=0.19)
    axes = figure.subplots()
    for cut, grown in moves.grown.items():
        values = [float(Fraction(int(ticks), one)) for ticks in grown]
        axes.plot(list(HUMIDITIES), values, color=_INK, linewidth=2, linestyle=_LINES[cut], label=cut)
        for mark, humid in zip("vo^", (moves.driest, moves.made, moves.dampest), strict=True):
            axes.plot([humid], [values[humid - HUMIDITIES.start]], mark, color=_INK, markersize=8)
    axes.axvspan(moves.driest, moves.dampest, color=_ROOM, alpha=0.35)
    axes.axhline(0, color="#555555", linewidth=0.8)
    axes.grid(visible=True, color="#cccccc", linewidth=0.6)
    axes.set_xlim(HUMIDITIES[0], HUMIDITIES[-1])
    axes.set_title("A solid panel through the year", loc="left", fontweight="bold")
    axes.set_xlabel("relative humidity of the room, %. ▼ driest, ● as made, ▲ dampest", wrap=True)
    axes.set_ylabel(f"wider than as made, {unit}")
    axes.legend(loc="upper left", fontsize=9)
    return chart_svg(figure, "moves")


def moves_alt(moves: Moves, style: Style) -> str:
    """The chart in words."""
    told = [
        f"a {cut} one is {_sized(-moves.at(cut, moves.driest), style)} narrower at {moves.driest} % and "
        f"{_sized(moves.at(cut, moves.dampest), style)} wider at {moves.dampest} %"
        for cut in moves.grown
    ]
    return (
        f"A chart over the relative humidity of the room: how much wider a solid panel is than as made at "
        f"{moves.made} %, {write_brief(moves.width, style)}. Both lines rise: {'; '.join(told)}. The span of the room "
        "is shaded."
    )


def _sized(ticks: int, style: Style) -> str:
    return write_brief(ticks, style, decimal=True)
