"""A solid front through the year, as a chart: its height and the gap beside it over the humidity of the room."""

from fractions import Fraction
from io import StringIO

import matplotlib
from matplotlib.figure import Figure

from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.season import HUMIDITIES, Season

_INK, _ROOM, _TOUCH = "#1b3a5c", "#d9b26a", "#a02020"


class SeasonChart:
    """One figure that is kept, and drawn anew for each season; nothing global is changed."""

    def __init__(self) -> None:
        self.figure = Figure(figsize=(6.4, 4.2))
        self.figure.subplots_adjust(left=0.14, right=0.96, top=0.92, bottom=0.13, hspace=0.1)
        above, below = self._axes = self.figure.subplots(2, 1, sharex=True)
        self._lines, self._marks, self._rooms = [], [], []
        for axes in self._axes:
            self._lines += axes.plot(list(HUMIDITIES), [0.0] * len(HUMIDITIES), color=_INK, linewidth=2)
            self._marks.append([axes.plot([], [], mark, color=_INK, markersize=8)[0] for mark in "vo^"])
            self._rooms.append(axes.axvspan(0, 1, color=_ROOM, alpha=0.35))
            axes.grid(visible=True, color="#cccccc", linewidth=0.6)
            axes.set_xlim(HUMIDITIES[0], HUMIDITIES[-1])
        below.axhline(0, color=_TOUCH, linewidth=1.5, linestyle="--")
        below.annotate("under this line they touch", (HUMIDITIES[0] + 1, 0), color=_TOUCH, fontsize=9,
                       xytext=(0, 4), textcoords="offset points")
        above.set_title("A solid front through the year", loc="left", fontweight="bold")
        below.set_xlabel("relative humidity of the room, %. ▼ driest, ● as made, ▲ dampest")

    def svg(self, season: Season, style: Style) -> str:
        """The chart as SVG text, byte for byte the same for the same season; sizes in the unit of `style`."""
        one, unit, digits = (INCH, "inches", 2) if style.unit == "in" else (MM, "mm", 1)
        grown = [season.grown(humid) for humid in HUMIDITIES]
        heights = [float(Fraction(int(season.height) + more, one)) for more in grown]
        gaps = [float(Fraction(int(season.gap) - more, one)) for more in grown]
        for number, (axes, values) in enumerate(zip(self._axes, (heights, gaps), strict=True)):
            self._lines[number].set_ydata(values)
            for mark, humid in zip(self._marks[number], (season.driest, season.made, season.dampest), strict=True):
                mark.set_data([humid], [values[humid - HUMIDITIES.start]])
            self._rooms[number].set_x(season.driest)
            self._rooms[number].set_width(season.dampest - season.driest)
            low, high = min([*values, *([0.0] if number else [])]), max(values)
            edge = (high - low) * 0.12 or 1.0
            axes.set_ylim(low - edge, high + edge)
            axes.yaxis.set_major_formatter(f"{{x:.{digits}f}}")
            axes.set_ylabel(f"{('height of front', 'gap beside it')[number]}, {unit}")
        with matplotlib.rc_context({"svg.hashsalt": "season", "svg.fonttype": "none"}):
            page = StringIO()
            self.figure.savefig(page, format="svg", metadata={"Date": None, "Creator": None})
        text = page.getvalue()
        return text[text.index("<svg"):]


def season_alt(season: Season, style: Style) -> str:
    """The chart in words."""
    ends = []
    for name, humid in (("driest", season.driest), ("dampest", season.dampest)):
        more = season.grown(humid)
        gap = season.gap - more
        told = f"{_sized(gap, style)} wide" if gap > 0 else "closed"
        ends.append(f"At its {name}, {humid} %, the front is {_sized(season.height + more, style)} high and "
                    f"the gap {told}.")
    return (
        f"A chart over the relative humidity of the room, {HUMIDITIES[0]} to {HUMIDITIES[-1]} %. Above, the height of "
        f"a solid front, {_sized(season.height, style)} as made at {season.made} %, rises with it; below, the gap "
        f"beside it falls. {' '.join(ends)} The span of the room is shaded."
    )


def _sized(ticks: int, style: Style) -> str:
    return write_brief(ticks, style, decimal=True)
