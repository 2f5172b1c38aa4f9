"""A solid front through the year, as a chart that stands still on a page; a panel draws `season_view` anew."""

from fractions import Fraction

from shoplib.draw.chart_page import chart_page, chart_svg
from shoplib.draw.letters import ORDINARY, letters
from shoplib.measure import INCH, MM, Style
from shoplib.model.season import HUMIDITIES, Season

_INK, _ROOM, _TOUCH = "#1b3a5c", "#d9b26a", "#a02020"

_EDGES = {"left": 0.14, "top": 0.92, "bottom": 0.13}
_WIDER_EDGES = {"left": 0.22, "top": 0.91, "bottom": 0.19}
"""Where the axes end, in parts of the page; large letters need more."""


def season_chart(season: Season, style: Style) -> str:
    """The chart as SVG text, byte for byte the same for the same season; sizes in the unit of `style`.

    `season_view.season_alt` tells it in words. Nothing global is changed. Larger letters (`letters.drawn_with`) stand
    on a smaller page that is shown larger.
    """
    one, unit, digits = (INCH, "inches", 2) if style.unit == "in" else (MM, "mm", 1)
    larger = letters()
    figure = chart_page(4.2)
    figure.subplots_adjust(**(_EDGES if larger == ORDINARY else _WIDER_EDGES), right=0.96, hspace=0.1)
    broken = " " if larger == ORDINARY else "\n"
    above, below = figure.subplots(2, 1, sharex=True)
    grown = [season.grown(humid) for humid in HUMIDITIES]
    for axes, name, sizes in (
        (above, "height of front", [season.height + more for more in grown]),
        (below, "gap beside it", [season.gap_at(humid) for humid in HUMIDITIES]),
    ):
        values = [float(Fraction(int(size), one)) for size in sizes]
        axes.plot(list(HUMIDITIES), values, color=_INK, linewidth=2)
        for mark, humid in zip("vo^", (season.driest, season.made, season.dampest), strict=True):
            axes.plot([humid], [values[humid - HUMIDITIES.start]], mark, color=_INK, markersize=8)
        axes.axvspan(season.driest, season.dampest, color=_ROOM, alpha=0.35)
        axes.grid(visible=True, color="#cccccc", linewidth=0.6)
        axes.set_xlim(HUMIDITIES[0], HUMIDITIES[-1])
        low, high = min([*values, 0.0] if axes is below else values), max(values)
        edge = (high - low) * 0.12 or 1.0
        axes.set_ylim(low - edge, high + edge)
        axes.yaxis.set_major_formatter(f"{{x:.{digits}f}}")
        axes.set_ylabel(f"{name},{broken}{unit}")
    below.axhline(0, color=_TOUCH, linewidth=1.5, linestyle="--")
    below.annotate("under this line they touch", (HUMIDITIES[0] + 1, 0), color=_TOUCH, fontsize=9,
                   xytext=(0, 4), textcoords="offset points")
    above.set_title("A solid front through the year", loc="left", fontweight="bold")
    below.set_xlabel(f"relative humidity of the room, %.{broken}▼ driest, ● as made, ▲ dampest")
    return chart_svg(figure, "season")
