"""Sag over span as a chart that stands still on a page; a panel draws `sag_view.sag_over_span` anew."""

from fractions import Fraction

from shoplib.draw.chart_page import chart_page, chart_svg
from shoplib.draw.sag_view import SagsOver
from shoplib.measure import INCH, MM, Style

_INK, _BAND, _LIMIT = "#1b3a5c", "#9db8d2", "#a02020"


def sag_chart(over: SagsOver, title: str, style: Style) -> str:
    """The chart as SVG text, byte for byte the same for the same sags; sizes in the unit of `style`.

    `sag_view.sag_chart_alt` tells it in words. Nothing global is changed, and the sheet is white in dark mode too.
    Larger letters (`letters.drawn_with`) stand on a smaller page that is shown larger.
    """
    one, unit = (INCH, "inches") if style.unit == "in" else (MM, "mm")
    figure = chart_page(4.0)
    figure.subplots_adjust(left=0.15, right=0.96, top=0.91, bottom=0.19)
    axes = figure.subplots()
    spans, least, most, allowed, shop = (
        [float(Fraction(int(size), one)) for size in sizes]
        for sizes in (over.spans, over.least, over.most, over.allowed, over.shop)
    )
    axes.fill_between(spans, least, most, color=_BAND, hatch="///", edgecolor=_INK, linewidth=0.8,
                      label="in years, least to most")
    axes.plot(spans, allowed, color=_LIMIT, linewidth=2, linestyle="--", label="allowed, KCMA A161.1")
    axes.plot(spans, shop, color=_INK, linewidth=1.5, linestyle=":", label="the eye does not see, shop rule")
    axes.set_ylim(0, float(Fraction(over.top, one)))
    axes.set_xlim(spans[0], spans[-1])
    axes.grid(visible=True, color="#cccccc", linewidth=0.6)
    axes.set_title(title, loc="left", fontweight="bold")
    axes.set_xlabel(f"span between supports, {unit}")
    axes.set_ylabel(f"sag in the middle, {unit}")
    axes.legend(loc="upper left", fontsize=9)
    return chart_svg(figure, "sag")
