"""The pen's alphabet: colours and hatches of the fills, kinds of line, letter sizes, and SVG pieces as text.

The colours differ in lightness as well as in hue, so that they stay apart for colour-blind readers and in
grey print; cut wood is hatched, hidden lines are dashed and a clash is cross-hatched, so that colour is never
the only sign.
"""

from collections.abc import Sequence
from html import escape

INK = "#1d1f21"
DIMENSION = "#1f3a5f"
FONT = "DejaVu Sans, Arial, sans-serif"

TITLE, NORMAL, SMALL = 15.0, 11.5, 10.0
"""Letter sizes in units of the drawing."""

FILL = {
    "case": ("#f1e2c0", "#5b4a2b", 1.0),
    "box": ("#d3e2ee", "#2f4a63", 1.0),
    "front": ("#cfa36c", "#4a3010", 1.4),
    "back": ("#ebe8e1", "#77736a", 0.8),
    "edging": ("#8f5a2a", "#4a3010", 0.8),
    "hardware": ("#8d939c", "#33373d", 0.8),
    "cut": ("#fbf6ea", "#2b2416", 1.3),
    "cut case": ("#f1e2c0", "#2b2416", 1.5),
    "cut box": ("#d3e2ee", "#1c3047", 1.5),
    "cut front": ("#cfa36c", "#2b2416", 1.5),
    "cut back": ("#ebe8e1", "#2b2416", 1.3),
    "air": ("#ffffff", "#44484d", 0.9),
    "clash": ("#f7c9a8", "#a33b00", 2.0),
    "span": ("#f1e2c0", "none", 0.0),
    "mark": (DIMENSION, DIMENSION, 1.0),
}
"""For each fill: paint, line colour, line width."""

FILL |= {
    f"{wood} {tone}": (paint, ink, 1.0)
    for wood, ink, paints in (
        ("case", "#4a3b20", ("#fbf3e0", "#efdfba", "#d6bd8a", "#ad9260")),
        ("box", "#263f57", ("#edf4f9", "#cfdfec", "#a9c3d8", "#7f9fb8")),
        ("front", "#4a3010", ("#ecd0a9", "#d3a873", "#b3854f", "#8a6231")),
        ("back", "#56524a", ("#faf9f6", "#e6e3dc", "#cbc7bc", "#a39e92")),
    )
    for tone, paint in zip(("light", "half", "dark", "deep"), paints, strict=True)
}
"""The faces of a solid: those that look up, to the front, aside, and the walls of holes."""

LINE = {
    "edge": 'stroke="#1d1f21" stroke-width="1.1"',
    "hidden": 'stroke="#44484d" stroke-width="0.9" stroke-dasharray="5 3"',
    "centre": 'stroke="#44484d" stroke-width="0.8" stroke-dasharray="9 3 2 3"',
    "thin": 'stroke="#44484d" stroke-width="0.7"',
    "band": 'stroke="#8f5a2a" stroke-width="4"',
    "grain": 'stroke="#5b4a2b" stroke-width="1.2"',
    "together": f'stroke="{DIMENSION}" stroke-width="0.8" stroke-dasharray="3 3"',
    "hatch": 'stroke="#6b6250" stroke-width="0.5"',
    "grid": 'stroke="#c4c6c8" stroke-width="0.7"',
    "curve": f'stroke="{DIMENSION}" stroke-width="2.2" stroke-linecap="round"',
}

DOT_STEP, DOT_CLEAR = 5.0, 1.5
HATCH_STEP = {"/": 7.0, "\\": 7.0, "x": 6.0}


def text_element(x: float, y: float, words: str, size: float, anchor: str, turned: bool,
                 bold: bool = False, ask: str = "") -> str:
    """One line of text, its middle height at `y`; `turned` reads upward. `ask` is the name of its dimension.

    >>> text_element(10, 20, "A < B", NORMAL, "middle", False)
    '<text x="10.00" y="24.14" text-anchor="middle">A &lt; B</text>'
    """
    # Half the height of a capital below the middle is the base line; no renderer disagrees about that.
    base = 0.36 * size
    if turned:
        place = f'transform="translate({x + base:.2f} {y:.2f}) rotate(-90)"'
    else:
        place = f'x="{x:.2f}" y="{y + base:.2f}"'
    extra = f' text-anchor="{anchor}"' if anchor != "start" else ""
    if size != NORMAL:
        extra += f' font-size="{size:g}"'
    if bold:
        extra += ' font-weight="bold"'
    if ask:
        extra += f' data-ask="{ask}"'
    return f"<text {place}{extra}>{escape(words, quote=False)}</text>"


def hatch_path(box: tuple[float, float, float, float], kind: str) -> str:
    """Slanting lines over a box of the page (left, top, right, bottom); they run on from box to box.

    >>> hatch_path((0, 0, 7, 7), "/")
    'M0.0 7.0L7.0 0.0'
    """
    left, top, right, bottom = box
    step = HATCH_STEP[kind]
    parts = []
    if kind in "/x":
        # Lines x + y = k.
        k = (int((left + top) // step) + 1) * step
        while k < right + bottom:
            x0 = left if left > k - bottom else k - bottom
            x1 = right if right < k - top else k - top
            parts.append(f"M{x0:.1f} {k - x0:.1f}L{x1:.1f} {k - x1:.1f}")
            k += step
    if kind in "\\x":
        # Lines x - y = k.
        k = (int((left - bottom) // step) + 1) * step
        while k < right - top:
            x0 = left if left > k + top else k + top
            x1 = right if right < k + bottom else k + bottom
            parts.append(f"M{x0:.1f} {x0 - k:.1f}L{x1:.1f} {x1 - k:.1f}")
            k += step
    return "".join(parts)


def dots_path(rings: Sequence[Sequence[tuple[float, float]]]) -> str:
    """Dots in rows, staggered, over a figure of the page; they stand clear of its level ends.

    >>> dots_path([[(0, 0), (12, 0), (12, 8), (0, 8)]])
    'M2.5 2.5h0M7.5 2.5h0M5.0 7.5h0M10.0 7.5h0'
    """
    heights = [y for ring in rings for _, y in ring]
    parts = []
    row = int(min(heights) // DOT_STEP)
    while (row + 0.5) * DOT_STEP < max(heights):
        y = (row + 0.5) * DOT_STEP
        crossed = sorted(
            x0 + (y - y0) / (y1 - y0) * (x1 - x0)
            for ring in rings for (x0, y0), (x1, y1) in zip(ring, (*ring[1:], ring[0]), strict=True)
            if (y0 <= y) != (y1 <= y)
        )
        shift = DOT_STEP / 2 if row % 2 == 0 else 0.0
        for left, right in zip(crossed[::2], crossed[1::2], strict=True):
            k = int((left + DOT_CLEAR - shift) // DOT_STEP) + 1
            while k * DOT_STEP + shift <= right - DOT_CLEAR:
                parts.append(f"M{k * DOT_STEP + shift:.1f} {y:.1f}h0")
                k += 1
        row += 1
    return "".join(parts)


def region_hatch(rings: Sequence[Sequence[tuple[float, float]]], kind: str) -> str:
    """Slanting lines over a figure of any outline, in step with those of `hatch_path`; rings within are left open.

    >>> region_hatch([[(0, 0), (7, 0), (7, 8), (0, 8)]], "/")
    'M0.0 7.0L7.0 0.0M6.0 8.0L7.0 7.0'
    """
    step, sign = HATCH_STEP[kind], 1 if kind == "/" else -1
    edges = [(one, other) for ring in rings for one, other in zip(ring, [*ring[1:], ring[0]], strict=True)]
    levels = [x + sign * y for ring in rings for x, y in ring]
    parts = []
    k = (min(levels) // step + 1) * step
    while k < max(levels):
        met = []
        for (a, b), (c, d) in edges:
            before, now = a + sign * b, c + sign * d
            if (before <= k) != (now <= k):  # a corner on the line is met by one of its two edges
                part = (k - before) / (now - before)
                met.append((a + part * (c - a), b + part * (d - b)))
        met.sort()
        for (a, b), (c, d) in zip(met[::2], met[1::2], strict=True):
            parts.append(f"M{a:.1f} {b:.1f}L{c:.1f} {d:.1f}")
        k += step
    return "".join(parts)


def slanted_hatch(corners: Sequence[tuple[float, float]], kind: str) -> str:
    """Slanting lines over a convex figure of the page, in step with those of `hatch_path`.

    >>> slanted_hatch([(0, 0), (7, 0), (7, 8), (0, 8)], "/")
    'M0.0 7.0L7.0 0.0M6.0 8.0L7.0 7.0'
    """
    step, sign = HATCH_STEP[kind], 1 if kind == "/" else -1
    levels = [x + sign * y for x, y in corners]
    parts = []
    k = (min(levels) // step + 1) * step
    while k < max(levels):
        found = set()
        for number, (x, y) in enumerate(corners):
            before, now = levels[number - 1], levels[number]
            if (before - k) * (now - k) <= 0 and before != now:
                part, (x0, y0) = (k - before) / (now - before), corners[number - 1]
                found.add((round(x0 + part * (x - x0), 1), round(y0 + part * (y - y0), 1)))
        if len(found) >= 2:
            (a, b), (c, d) = min(found), max(found)
            parts.append(f"M{a:.1f} {b:.1f}L{c:.1f} {d:.1f}")
        k += step
    return "".join(parts)
