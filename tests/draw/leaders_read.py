"""The leaders of a drawing read back from its SVG, and the words that they run through.

A leader begins at a dot on what it names; lines of dimensions are drawn alike, so one that begins at a dot of a short
dimension is looked at too. Boxes of words are those of `text_boxes`, measured with the font itself.
"""

import re

from tests.draw.test_pen import text_boxes

Stroke = tuple[float, float, float, float]
Box = tuple[float, float, float, float]

_LINES = re.compile(r'<path d="([^"]*)" fill="none" stroke="#1f3a5f" stroke-width="0.7"/>')
_LINE = re.compile(r"M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)")
_DOT = re.compile(r'<circle cx="([-\d.]+)" cy="([-\d.]+)" r="1.7"/>')
_HEADS = re.compile(r'<path d="([^"]*)" fill="#1f3a5f"/>')
_HEAD = re.compile(r"M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)Z")
_RING = re.compile(r'<circle cx="([-\d.]+)" cy="([-\d.]+)" r="3"/>')
_TOUCHES = 0.5
"""Less than this inside the box of a word, in units of the page, is beside it: an own leader comes so near."""


def strokes(svg: str) -> list[Stroke]:
    """All lines of dimensions and leaders: where each begins and ends."""
    return [tuple(map(float, line)) for path in _LINES.findall(svg) for line in _LINE.findall(path)]


def heads(svg: str) -> list[Box]:
    """The box about each arrowhead of a dimension."""
    corners = [tuple(map(float, head)) for path in _HEADS.findall(svg) for head in _HEAD.findall(path)]
    return [(min(of[::2]), min(of[1::2]), max(of[::2]), max(of[1::2])) for of in corners]


def rings(svg: str) -> list[Box]:
    """The box about each ring that running distances begin at."""
    return [(x - 3, y - 3, x + 3, y + 3) for x, y in (map(float, ring) for ring in _RING.findall(svg))]


def leaders(svg: str) -> list[Stroke]:
    dots = {(float(x), float(y)) for x, y in _DOT.findall(svg)}
    return [stroke for stroke in strokes(svg) if stroke[:2] in dots]


def run_through(svg: str, clear: float = 0.0) -> list[tuple[Stroke, str]]:
    """Each leader that runs through words, and the words; with `clear` so near above or below them as well, for small
    letters stand higher than capitals."""
    return [
        (leader, text) for leader in leaders(svg) for text, (left, top, right, bottom) in text_boxes(svg)
        if meets(leader, (left, top - clear, right, bottom + clear))
    ]


def meets(stroke: Stroke, box: Box) -> bool:
    """Whether a line runs through a box (clipped against its sides, as Liang and Barsky do; from memory)."""
    x, y, x1, y1 = stroke
    low, high = 0.0, 1.0
    for at, by, least, most in ((x, x1 - x, box[0], box[2]), (y, y1 - y, box[1], box[3])):
        least, most = least + _TOUCHES, most - _TOUCHES
        if by == 0.0:
            if not least < at < most:
                return False
            continue
        first, last = sorted(((least - at) / by, (most - at) / by))
        low, high = max(low, first), min(high, last)
    return low < high
