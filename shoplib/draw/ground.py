"""What lies on the ground of a drawing, under all words: shapes, lines and discs, as SVG text."""

from collections.abc import Iterable
from html import escape

from shoplib.draw.marks import FILL, LINE, dots_path, hatch_path, region_hatch, slanted_hatch
from shoplib.draw.outline import outline
from shoplib.draw.scene import Disc, Line, Region, Shape, Slanted


def ground(items: Iterable[object], left: int, top: int, scale: float) -> list[str]:
    """Each item of a scene that lies under the words, drawn with the point (`left`, `top`) of the scene at the upper
    left corner, `scale` units of the page for a tick.

    >>> ground([Line((0, 0), (10, 5), "edge")], 0, 5, 2.0)
    ['<path d="M0.00 10.00L20.00 0.00" stroke="#1d1f21" stroke-width="1.1"/>']
    """
    return [_DRAWN[type(item)](item, left, top, scale) for item in items if type(item) in _DRAWN]


def arrow(start: tuple[float, float], end: tuple[float, float]) -> str:
    """A line along the grain with a head at both ends, both points on the page.

    >>> arrow((0, 0), (0, 40)).count("<path")  # the line and its two heads
    2
    """
    (x0, y0), (x1, y1) = start, end
    long = max(abs(x1 - x0), abs(y1 - y0)) or 1.0
    a, b = (x1 - x0) / long, (y1 - y0) / long
    heads = "".join(
        f"M{x - s * 9 * a - 3 * b:.2f} {y - s * 9 * b + 3 * a:.2f}L{x:.2f} {y:.2f}"
        f"L{x - s * 9 * a + 3 * b:.2f} {y - s * 9 * b - 3 * a:.2f}"
        for x, y, s in ((x0, y0, -1), (x1, y1, 1))
    )
    line = f'<path d="M{x0:.2f} {y0:.2f}L{x1:.2f} {y1:.2f}" {LINE["grain"]}/>'
    return f'{line}<path d="{heads}" {LINE["grain"]} fill="none"/>'


def _shape(item: Shape, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    if len(item.rects) == 1:
        a, b, c, d = item.rects[0]
        x, y = (a - left) * scale, (top - d) * scale
        path = f"M{x:.2f} {y:.2f}H{(c - left) * scale:.2f}V{(top - b) * scale:.2f}H{x:.2f}Z"
    else:
        path = "".join(
            "M" + "L".join(f"{(x - left) * scale:.2f} {(top - y) * scale:.2f}" for x, y in ring) + "Z"
            for ring in outline(item.rects)
        )
    dash = ' stroke-dasharray="4 3"' if item.fill == "air" else ""
    rule = "" if len(item.rects) == 1 else ' fill-rule="evenodd"'
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"{rule}{dash}'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        lines = "".join(
            hatch_path(
                ((a - left) * scale, (top - d) * scale, (c - left) * scale, (top - b) * scale), item.hatch
            )
            for a, b, c, d in item.rects
        )
        text += f'<path d="{lines}" stroke="{ink}" stroke-width="0.6"/>'
    return text


def _slanted(item: Slanted, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    corners = [((x - left) * scale, (top - y) * scale) for x, y in item.corners]
    path = "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in corners) + "Z"
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        text += f'<path d="{slanted_hatch(corners, item.hatch)}" stroke="{ink}" stroke-width="0.6"/>'
    return text


def _region(item: Region, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    rings = [[((x - left) * scale, (top - y) * scale) for x, y in ring] for ring in item.rings]
    path = "".join("M" + "L".join([f"{x:.2f} {y:.2f}" for x, y in ring]) + "Z" for ring in rings)
    rule = ' fill-rule="evenodd"' if len(rings) > 1 else ""
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"{rule}'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        text += f'<path d="{region_hatch(rings, item.hatch)}" stroke="{ink}" stroke-width="0.6"/>'
    dots = dots_path(rings) if item.dotted else ""
    return f'{text}<path d="{dots}" stroke="{ink}" stroke-width="1.3" stroke-linecap="round"/>' if dots else text


def _line(item: Line, left: int, top: int, scale: float) -> str:
    x0, y0 = (item.start[0] - left) * scale, (top - item.start[1]) * scale
    x1, y1 = (item.end[0] - left) * scale, (top - item.end[1]) * scale
    text = f'<path d="M{x0:.2f} {y0:.2f}L{x1:.2f} {y1:.2f}" {LINE[item.kind]}/>'
    return text if item.kind != "grain" else arrow((x0, y0), (x1, y1))


def _disc(item: Disc, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    x, y = (item.centre[0] - left) * scale, (top - item.centre[1]) * scale
    # A screw hole on a whole side would vanish: it keeps a radius that can be seen.
    radius = max(item.diameter * scale / 2, 1.6)
    start = (f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{radius:.2f}" '
             f'fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"')
    return f"{start}><title>{escape(item.name, quote=False)}</title></circle>" if item.name else f"{start}/>"


_DRAWN = {Shape: _shape, Slanted: _slanted, Region: _region, Line: _line, Disc: _disc}
"""How each kind of item is drawn."""
