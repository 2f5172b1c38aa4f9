"""A solid front through the year, as a chart that stands still on a page; a panel draws `season_view` anew."""

from fractions import Fraction
from io import StringIO

import matplotlib
from matplotlib.figure import Figure

from shoplib.measure import INCH, MM, Style
from shoplib.model.season import HUMIDITIES, Season

_INK, _ROOM, _TOUCH = "#1b3a5c", "#d9b26a", "#a02020"


def season_chart(season: Season, style: Style) -> str:
    """The chart as SVG text, byte for byte the same for the same season; sizes in the unit of `style`.

    `season_view.season_alt` tells it in words. Nothing global is changed.
    """
    one, unit, digits = (INCH, "inches", 2) if style.unit == "in" else (MM, "mm", 1)
    figure = Figure(figsize=(6.4, 4.2))
    figure.subplots_adjust(left=0.14, right=0.96, top=0.92, bottom=0.13, hspace=0.1)
    above, below = figure.subplots(2, 1, sharex=True)
    grown = [season.grown(humid) for humid in HUMIDITIES]
    for axes, name, sizes in (
        (above, "height of front", [season.height + more for more in grown]),
        (below, "gap beside it", [season.gap - more for more in grown]),
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
        axes.set_ylabel(f"{name}, {unit}")
    below.axhline(0, color=_TOUCH, linewidth=1.5, linestyle="--")
    below.annotate("under this line they touch", (HUMIDITIES[0] + 1, 0), color=_TOUCH, fontsize=9,
                   xytext=(0, 4), textcoords="offset points")
    above.set_title("A solid front through the year", loc="left", fontweight="bold")
    below.set_xlabel("relative humidity of the room, %. ▼ driest, ● as made, ▲ dampest")
    with matplotlib.rc_context({"svg.hashsalt": "season", "svg.fonttype": "none"}):
        page = StringIO()
        figure.savefig(page, format="svg", metadata={"Date": None, "Creator": None})
    text = page.getvalue()
    return text[text.index("<svg"):]
