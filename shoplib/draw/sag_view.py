"""A shelf that sags under its load, and its sag over the span, drawn for a panel."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import pairwise

from shoplib.draw.scene import Chain, Disc, EdgeText, Item, Label, Leader, Line, Region, Scene, Shape
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.beam import Held
from shoplib.model.sag import Sag

TIMES = (100, 50, 20, 10, 5, 2, 1)
"""How many times as large a sag may be drawn: the first at which it takes a seventh of the span at most."""

_PARTS = 24
WIDE, HIGH = 40_000, 20_000
"""The chart, in hundredths of the unit of the drawing."""


def times_larger(span: int, sag: int) -> int:
    """How many times as large a sag is drawn, so that it is seen.

    >>> times_larger(36 * INCH, INCH // 10), times_larger(36 * INCH, 3 * INCH)
    (50, 1)
    """
    return next((times for times in TIMES if 7 * sag * times <= span), 1)


def sag_view(sag: Sag, thickness: int, held: Held, style: Style) -> Scene:
    """A board between two supports, from the front, bent as far as it may; its sag is drawn larger, as the note says.

    Dashed is how far its middle may go down.
    """
    span, times = int(sag.span), times_larger(int(sag.span), max(int(sag.most), int(sag.allowed)))
    thick, side = int(thickness), max(int(thickness), span // 40)
    down = [(span * part // _PARTS, round(int(sag.most) * times * _bent(part / _PARTS, held)))
            for part in range(_PARTS + 1)]
    lowest, limit = int(sag.most) * times, int(sag.allowed) * times
    deepest = max(lowest, limit)
    under = -deepest - span // 12
    ring = (*((x, -y) for x, y in down), *((x, thick - y) for x, y in reversed(down)))
    unit = "inches" if style.unit == "in" else "millimetres"
    items: list[Item] = [
        Shape(((-side, under, 0, thick + span // 12),), "case", "support"),
        Shape(((span, under, span + side, thick + span // 12),), "case", "support"),
        Region((ring,), "cut case", "board under its load"),
        Line((0, 0), (span, 0), "thin"),
        Line((0, -limit), (span, -limit), "hidden"),
        Leader((span * 3 // 4, -limit), "right", f"allowed {write_brief(sag.allowed, style, decimal=True)}",
               size=sag.allowed),
        Leader((span // 2, -lowest), "below", f"sag, at most {write_brief(sag.most, style, decimal=True)}",
               size=sag.most),
        Chain("above", 0, (0, span), (_bare(sag.span, style),), sizes=(sag.span,)),
    ]
    told = [write_brief(each, style, decimal=True) for each in (sag.most, sag.allowed)]
    return Scene(
        "The board under its load", f"Sizes in {unit}. The sag is drawn {times} times as large as it is.",
        f"A board {write_brief(sag.span, style)} long between two supports, {held}, bends down in its middle: in years "
        f"by {told[0]} at most. A dashed line under it shows what is allowed, {told[1]}. The sag is drawn {times} "
        "times as large as it is.",
        (-side, under, span + side, thick + span // 12), tuple(items),
        ("Thin: where it was flat. Dashed: how far the middle may go down.",),
    )


def _bare(ticks: int, style: Style) -> str:
    """A length as it stands in a dimension, whose note says the unit."""
    return write_brief(ticks, style).replace(f" {style.unit}", "")


def _bent(along: float, held: Held) -> float:
    """How far down the board is at a part of its span, as a part of its sag in the middle, under an even load."""
    if held == "clamped":
        return 16 * along**2 * (1 - along) ** 2
    return 16 * (along - 2 * along**3 + along**4) / 5


@dataclass(frozen=True, slots=True)
class SagsOver:
    """Sags over spans (ticks): the `least` and the `most` in years, what is `allowed`, and the `shop` rule."""

    spans: Sequence[int]
    least: Sequence[int]
    most: Sequence[int]
    allowed: Sequence[int]
    shop: Sequence[int]

    @property
    def top(self) -> int:
        """The highest sag that a chart shows: twice the most that is allowed anywhere on it."""
        return 2 * max(self.allowed)


def sag_over_span(over: SagsOver, here: int, most: int, style: Style) -> Scene:
    """The chart of a panel; a dot marks the span that is chosen, `here`, with its sag, `most`."""
    low, high, top = over.spans[0], over.spans[-1], over.top
    one, foot, told = (INCH, 12 * INCH, "inches") if style.unit == "in" else (MM, 200 * MM, "mm")

    def place(span: int, sag: int) -> tuple[int, int]:
        return (int(span) - low) * WIDE // (high - low), int(sag) * HIGH // top

    items: list[Item] = [Line((0, 0), (WIDE, 0)), Line((0, 0), (0, HIGH))]
    for span in range(-(-low // foot) * foot, high + 1, foot):
        x = place(span, 0)[0]
        items += [Line((x, 0), (x, HIGH), "grid"), EdgeText((x, 0, x, 0), "below", f"{span // one}")]
    step = INCH // 8 if style.unit == "in" else 2 * MM
    for sag in range(0, top + 1, step):
        y = place(low, sag)[1]
        items += [Line((0, y), (WIDE, y), "grid"), Leader((0, y), "left", f"{(Decimal(sag) / one).normalize():f}")]
    for sags, kind in ((over.most, "curve"), (over.least, "thin")):
        points = [place(*point) for point in zip(over.spans, sags, strict=True) if point[1] <= top]
        items += [Line(a, b, kind) for a, b in pairwise(points)]
    # A line of dashes is one line: in short pieces it would have none.
    knee = over.allowed.index(max(over.allowed))
    for sags, kind, corners in ((over.allowed, "hidden", (0, knee, -1)), (over.shop, "centre", (0, -1))):
        points = [place(over.spans[corner], sags[corner]) for corner in corners]
        items += [Line(a, b, kind) for a, b in pairwise(points) if a != b]
    if most <= top:
        items.append(Disc(place(here, most), 800, "mark", "this board"))
    items.append(Label((0, HIGH, WIDE, HIGH + 3_000), (f"sag in years, {told}",)))
    return Scene(
        "Sag over span", f"Both in {told}. Thick: at most; thin: at least; dot: this board.",
        sag_chart_alt(over, style), (0, 0, WIDE, HIGH + 3_000), tuple(items),
        (f"Across: span, {told}. Dashed: allowed by KCMA. Dash and dot: what the eye does not see, shop rule.",),
    )


def widest_within(over: SagsOver) -> int:
    """The widest span at which the most stays within what is allowed, in ticks; 0 where there is none.

    >>> over = SagsOver((100, 200, 300), (1, 2, 3), (1, 3, 9), (2, 4, 6), (1, 2, 3))
    >>> widest_within(over)
    200
    """
    pairs = zip(over.spans, over.most, over.allowed, strict=True)
    return max((span for span, most, allowed in pairs if most <= allowed), default=0)


def sag_chart_alt(over: SagsOver, style: Style) -> str:
    """The chart in words."""
    within = widest_within(over)
    ends = [write_brief(span, style) for span in (over.spans[0], over.spans[-1])]
    till = f"up to a span of {write_brief(within, style)}" if within else "at no span shown"
    return (
        f"A chart of the sag in years over spans from {ends[0]} to {ends[1]}: a band that rises ever more steeply, and "
        f"two lines, what KCMA allows and what the eye does not see. The upper edge of the band stays within what is "
        f"allowed {till}."
    )
