"""Where dimensions and leaders stand round a drawing: lanes on the four sides, texts that never meet.

Everything here is in units of the page, y down. A dimension's text stands beside its line where its stretch
is long enough, and otherwise in a second row outside, moved along until it touches no neighbour and tied to
its stretch by a thin line.
"""

from itertools import pairwise

from shoplib.draw.lettering import spread, spread_clear, text_width, within
from shoplib.draw.marks import NORMAL, SMALL
from shoplib.draw.scene import Chain, Leader, Running
from shoplib.draw.spilled import Box
from shoplib.draw.uncrossed import uncrossed

_ARROW = 8.0
_HALF_HEAD = 2.3
_RING = 3.0
_LINE_OF_TEXT = NORMAL * 1.2
_DRIFT = 30.0
_OFF = 2.0
"""How far a level text stands off its line: arrowheads that lie under it stay clear of it."""
_OFF_LINES = 3.0
"""How far the white about a turned text goes, which would break a line there."""
_CLOSE, _ALIKE = 10.0, 1.3
"""A text just fits a stretch that is no longer than itself and the first, or the second times one that is too short."""


def _block(text: str) -> tuple[float, float]:
    """Width and height of a text of one line, or of two with the second smaller."""
    first, _, second = text.partition("\n")
    if not second:
        return text_width(first, NORMAL), _LINE_OF_TEXT
    return max(text_width(first, NORMAL), text_width(second, SMALL)), _LINE_OF_TEXT + SMALL * 1.2


def _staggered(centres: list[float], lengths: list[float]) -> list[int]:
    """Row 0 or 1 for each text of a line: every other one of three or more that touch stands in row 1.

    >>> _staggered([0, 10, 20, 90, 100], [10] * 5)
    [0, 1, 0, 0, 0]
    """
    rows, run = [0] * len(centres), 0
    for k in range(1, len(centres) + 1):
        touches = k < len(centres) and centres[k] - centres[k - 1] < (lengths[k] + lengths[k - 1]) / 2 + 0.5
        if not touches:
            if k - run >= 3:
                rows[run:k] = [number % 2 for number in range(k - run)]
            run = k
    return rows


class Lanes:
    """Lays out one side after another and gathers the strokes, heads and texts to draw.

    `width` and `height` are the drawn thing's, its upper left corner at (0, 0). `walls` are set for each row: where
    lines of the rows outside it run through it, rising; no text beside its line stands on one.
    """

    def __init__(self, width: float, height: float) -> None:
        self.width, self.height = width, height
        self.strokes: list[str] = []
        self.heads: list[str] = []
        self.halos: list[str] = []
        self.rings: list[tuple[float, float, float]] = []
        self.dots: list[tuple[float, float]] = []
        self.texts: list[tuple[float, float, str, float, str, bool]] = []
        self.asks: list[str] = []
        self.box = [0.0, 0.0, width, height]
        self.used = {"below": 8.0, "above": 8.0, "left": 8.0, "right": 8.0}
        self.walls: list[float] = []

    def place(self, side: str, along: float, out: float) -> tuple[float, float]:
        """The point at `along` the side and `out` from the drawn thing."""
        if side == "below":
            return along, self.height + out
        if side == "above":
            return along, -out
        return (-out, along) if side == "left" else (self.width + out, along)

    def write(self, x: float, y: float, text: str, size: float = NORMAL, anchor: str = "middle",
              turned: bool = False, halo: bool = True, ask: str = "") -> None:
        """A line of text with its middle height at y (at x when turned); `ask` names the dimension it tells."""
        wide, high = text_width(text, size), size * 1.2
        start = {"start": 0.0, "middle": -wide / 2, "end": -wide}[anchor]
        if turned:
            left, top, right, bottom = x - high / 2, y - start - wide, x + high / 2, y - start
        else:
            left, top, right, bottom = x + start, y - high / 2, x + start + wide, y + high / 2
        self.reach(left, top, right, bottom)
        self.texts.append((x, y, text, size, anchor, turned))
        self.asks.append(ask)
        if halo:
            # A second, smaller line closes up to the first, so that no stroke shows between the two.
            top += 1 if size == NORMAL else -1
            self.halos.append(
                f"M{left - 3:.2f} {top:.2f}H{right + 3:.2f}V{bottom - 1:.2f}H{left - 3:.2f}Z"
            )

    def along_edges(self) -> list[Box]:
        """What is covered by the names along the edges, where nothing else is written yet, each box as far as the drawn
        thing: a way out of it that meets the box would run through the name."""
        found = []
        for x, y, text, size, _, turned in self.texts:
            wide, high = text_width(text, size) / 2 + _OFF, size * 0.6
            wide, high = (high, wide) if turned else (wide, high)
            left, right = (min(x - wide, self.width - _OFF), max(x + wide, _OFF)) if turned else (x - wide, x + wide)
            top, bottom = (y - high, y + high) if turned else (min(y - high, self.height - _OFF), max(y + high, _OFF))
            found.append((left, top, right, bottom))
        return found

    def reach(self, left: float, top: float, right: float, bottom: float) -> None:
        """Widen the page to hold this box."""
        box = self.box
        box[0], box[1] = min(box[0], left), min(box[1], top)
        box[2], box[3] = max(box[2], right), max(box[3], bottom)

    def _stroke(self, a: tuple[float, float], b: tuple[float, float]) -> None:
        self.strokes.append(f"M{a[0]:.2f} {a[1]:.2f}L{b[0]:.2f} {b[1]:.2f}")

    def _head(self, side: str, along: float, out: float, toward: float) -> None:
        """An arrowhead whose tip is at `along`, pointing toward rising (+1) or falling (-1) positions."""
        tip = self.place(side, along, out)
        one = self.place(side, along - toward * _ARROW, out - _HALF_HEAD)
        two = self.place(side, along - toward * _ARROW, out + _HALF_HEAD)
        self.heads.append(
            f"M{tip[0]:.2f} {tip[1]:.2f}L{one[0]:.2f} {one[1]:.2f}L{two[0]:.2f} {two[1]:.2f}Z"
        )

    def chain(
        self, side: str, out: float, stations: list[float], feet: list[float], item: Chain, ask: str
    ) -> float:
        """Draw a chain whose lane begins at `out`; give back where the lane ends.

        `ask` names the chain; each of its dimensions is named by it and its number.
        """
        flat = side in ("below", "above")
        texts = [(text, f"{ask}.{k}") for k, text in enumerate(item.texts)]
        if stations[0] > stations[-1]:
            stations, feet, texts = stations[::-1], feet[::-1], texts[::-1]
        fits, tight = [], []
        for text, (low, high) in zip(texts, pairwise(stations), strict=True):
            if text[0]:
                wide, tall = _block(text[0])
                need = wide + 4 if flat else tall + 1
                (fits if need <= high - low else tight).append((text, low, high, wide, tall))
        if flat and tight:
            # A text that just fits would stand on one side of the line, and one that just does not on the other.
            widest = _ALIKE * max(t[2] - t[1] for t in tight)
            tight += [t for t in fits if t[2] - t[1] < max(widest, t[3] + _CLOSE)]
            fits = [t for t in fits if t not in tight]
            tight.sort(key=lambda t: t[1])
        band = max((f[4] + _OFF if flat else f[3] + 6 for f in fits), default=0.0)
        line = out + (band if fits else 4.0)
        for text, low, high, wide, tall in fits:
            gap = tall / 2 + _OFF if flat else wide / 2 + 4
            self._block_at(self.place(side, (low + high) / 2, line - gap), *text)
        for _, low, high, _, _ in fits + tight:
            self._stroke(self.place(side, low, line), self.place(side, high, line))
            if high - low >= 2.4 * _ARROW:
                self._head(side, low, line, -1)
                self._head(side, high, line, 1)
            else:
                self.dots += [self.place(side, low, line), self.place(side, high, line)]
        self._extend(side, stations, feet, line + 4)
        return self._outside(side, line, tight) if tight else line + 5

    def _outside(self, side: str, line: float, tight: list) -> float:
        """Texts too long for their stretches, outside the line and tied to it; give back where they end.

        Where they would stand close one behind the other along a level line, every other one stands a row lower:
        `1/8 0.703 1/8` would read as one size.
        """
        flat = side in ("below", "above")
        wanted = [(low + high) / 2 for _, low, high, _, _ in tight]
        lengths = [wide + 8 if flat else tall + 2 for _, _, _, wide, tall in tight]
        centres, rows = spread_clear(wanted, lengths, self.walls), [0] * len(tight)
        if flat:
            rows = _staggered(centres, lengths)
            if any(rows):
                lower = max(length for length, row in zip(lengths, rows, strict=True) if row)
                # In the first row only the line of a lower text takes room; the lower texts are kept apart by it.
                lengths = [8.0 if row else max(length, lower - 8) for length, row in zip(lengths, rows, strict=True)]
                centres = spread_clear(wanted, lengths, self.walls)
        deep = [max((t[4] if flat else t[3] for t, row in zip(tight, rows, strict=True) if row == k), default=0.0)
                for k in (0, 1)]
        for (text, low, high, wide, tall), centre, row in zip(tight, centres, rows, strict=True):
            start = line + 9 + (deep[0] if row else 0.0)
            self._stroke(self.place(side, (low + high) / 2, line), self.place(side, centre, line + 9))
            if row:
                self._stroke(self.place(side, centre, line + 9), self.place(side, centre, start))
            self._block_at(self.place(side, centre, start + (tall / 2 if flat else 2 + wide / 2)), *text)
        return line + 10 + sum(deep) if flat else line + 13 + deep[0]

    def _block_at(self, middle: tuple[float, float], text: str, ask: str, turned: bool = False) -> None:
        """A text of one or two lines centred on a point, the second line smaller."""
        first, _, second = text.partition("\n")
        x, y = middle
        if not second:
            self.write(x, y, first, turned=turned, ask=ask)
            return
        up, down = -SMALL * 0.6, NORMAL * 0.6
        for words, shift, size in ((first, up, NORMAL), (second, down, SMALL)):
            p, q = (x + shift, y) if turned else (x, y + shift)
            self.write(p, q, words, size, turned=turned, ask=ask)

    def running(self, side: str, out: float, datum: float, stations: list[float], feet: list[float],
                item: Running, ask: str) -> float:
        """Draw distances from one datum; give back where the lane ends. `ask` names them, as in a chain."""
        order = sorted(range(len(stations)), key=stations.__getitem__)
        line = out + 6
        sizes = {k: _block(item.texts[k]) for k in order}
        flat = side in ("below", "above")
        wanted = [stations[k] for k in order]
        centres = spread_clear(wanted, [sizes[k][0] + 8 for k in order], self.walls) if flat else []
        # Level texts are read more easily; they are turned only where they would drift from what they measure.
        level = flat and all(abs(a - b) < _DRIFT for a, b in zip(centres, wanted, strict=True))
        if not level:
            centres = spread_clear(wanted, [sizes[k][1] + 1 for k in order], self.walls, _OFF_LINES)
        reach = 1 if level else 0
        ring = self.place(side, datum, line)
        self.rings.append((*ring, _RING))
        self._extend(side, [datum], [0.0], line + 4)
        for k, centre in zip(order, centres, strict=True):
            here = stations[k]
            self._stroke(ring, self.place(side, here, line))
            before = [abs(here - at) for at in wanted if (at - datum) * (here - at) > 0]
            if min([abs(here - datum) - _RING, *before]) < _ARROW:
                self.dots.append(self.place(side, here, line))  # its head would lie on another, or on the ring
            else:
                self._head(side, here, line, 1 if here >= datum else -1)
            self._stroke(self.place(side, here, line), self.place(side, centre, line + 9))
            middle = self.place(side, centre, line + 11 + sizes[k][reach] / 2)
            self._block_at(middle, item.texts[k], f"{ask}.{k}", turned=flat and not level)
        self._extend(side, stations, feet, line + 4)
        return line + 14 + max(size[reach] for size in sizes.values())

    def _extend(self, side: str, stations: list[float], feet: list[float], end: float) -> None:
        """Extension lines from `feet` (distance out; negative is inside) to a little beyond the line."""
        for along, foot in zip(stations, feet, strict=True):
            self._stroke(self.place(side, along, foot + 2.5), self.place(side, along, end))
            x, y = self.place(side, along, end)
            self.reach(x, y, x, y)

    def leaders(
        self, side: str, points: list[tuple[float, float]], items: list[Leader], asks: list[str],
    ) -> None:
        """Lines from points of the drawing to texts beside it, in the order of the points; `asks` names their sizes."""
        flat = side in ("below", "above")
        places = [point[0] if flat else point[1] for point in points]
        order = sorted(range(len(items)), key=lambda k: (places[k], k))
        sizes = [
            20.0 if items[k].ringed else text_width(items[k].text, SMALL) + 10 if flat else SMALL * 1.35
            for k in order
        ]
        out = self.used[side] + (10 if flat else 6)
        extent = self.width if flat else self.height
        long = dict(zip(order, sizes, strict=True))

        def laid(order: list[int]) -> list[float]:
            lengths = [long[k] for k in order]
            return within(spread([places[k] for k in order], lengths), lengths, extent)

        order = uncrossed(order, laid, lambda k, centre: (points[k], self.place(side, centre, out - 2)))
        for k, centre in zip(order, laid(order), strict=True):
            item, point = items[k], points[k]
            self.dots.append(point)
            self._stroke(point, self.place(side, centre, out - 2))
            if item.ringed:
                x, y = self.place(side, centre, out + 7)
                self.rings.append((x, y, 9.0))
                self.reach(x - 10, y - 10, x + 10, y + 10)
                self.write(x, y, item.text, SMALL, halo=False)
            else:
                x, y = self.place(side, centre, out + (6 if flat else 1))
                self.write(x, y, item.text, SMALL,
                           "middle" if flat else ("end" if side == "left" else "start"), ask=asks[k])
        widest = max(16.0 if item.ringed or flat else text_width(item.text, SMALL) for item in items)
        self.used[side] = out + widest + 6
