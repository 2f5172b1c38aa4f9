"""Where dimensions and leaders stand round a drawing: lanes on the four sides, texts that never meet.

Everything here is in units of the page, y down. A dimension's text stands beside its line where its stretch
is long enough, and otherwise in a second row outside, moved along until it touches no neighbour and tied to
its stretch by a thin line.
"""

from itertools import pairwise

from shoplib.draw.lettering import spread, text_width
from shoplib.draw.marks import NORMAL, SMALL
from shoplib.draw.scene import Chain, Leader, Running

_ARROW = 8.0
_HALF_HEAD = 2.3
_LINE_OF_TEXT = NORMAL * 1.2


class Lanes:
    """Lays out one side after another and gathers the strokes, heads and texts to draw.

    `width` and `height` are the drawn thing's, its upper left corner at (0, 0).
    """

    def __init__(self, width: float, height: float) -> None:
        self.width, self.height = width, height
        self.strokes: list[str] = []
        self.heads: list[str] = []
        self.halos: list[str] = []
        self.rings: list[tuple[float, float, float]] = []
        self.dots: list[tuple[float, float]] = []
        self.texts: list[tuple[float, float, str, float, str, bool]] = []
        self.box = [0.0, 0.0, width, height]
        self.used = {"below": 8.0, "above": 8.0, "left": 8.0, "right": 8.0}

    def place(self, side: str, along: float, out: float) -> tuple[float, float]:
        """The point at `along` the side and `out` from the drawn thing."""
        if side == "below":
            return along, self.height + out
        if side == "above":
            return along, -out
        return (-out, along) if side == "left" else (self.width + out, along)

    def write(self, x: float, y: float, text: str, size: float = NORMAL, anchor: str = "middle",
              turned: bool = False, halo: bool = True) -> None:
        """A line of text with its middle height at y (at x when turned)."""
        wide, high = text_width(text, size), size * 1.2
        start = {"start": 0.0, "middle": -wide / 2, "end": -wide}[anchor]
        if turned:
            left, top, right, bottom = x - high / 2, y - start - wide, x + high / 2, y - start
        else:
            left, top, right, bottom = x + start, y - high / 2, x + start + wide, y + high / 2
        self.reach(left, top, right, bottom)
        self.texts.append((x, y, text, size, anchor, turned))
        if halo:
            self.halos.append(
                f"M{left - 1:.2f} {top + 1:.2f}H{right + 1:.2f}V{bottom - 1:.2f}H{left - 1:.2f}Z"
            )

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

    def chain(self, side: str, out: float, stations: list[float], feet: list[float], item: Chain) -> float:
        """Draw a chain whose lane begins at `out`; give back where the lane ends."""
        flat = side in ("below", "above")
        texts = item.texts
        if stations[0] > stations[-1]:
            stations, feet, texts = stations[::-1], feet[::-1], texts[::-1]
        fits, tight = [], []
        for text, (low, high) in zip(texts, pairwise(stations), strict=True):
            if text:
                need = text_width(text, NORMAL) + 4 if flat else _LINE_OF_TEXT
                (fits if need <= high - low else tight).append((text, low, high))
        band = _LINE_OF_TEXT if flat else max((text_width(f[0], NORMAL) for f in fits), default=0.0) + 6
        line = out + (band if fits else 4.0)
        for text, low, high in fits:
            x, y = self.place(side, (low + high) / 2, line - (band / 2 if flat else 4.0))
            self.write(x, y, text, anchor="middle" if flat else ("start" if side == "left" else "end"))
        for _, low, high in fits + tight:
            self._stroke(self.place(side, low, line), self.place(side, high, line))
            if high - low >= 2.4 * _ARROW:
                self._head(side, low, line, -1)
                self._head(side, high, line, 1)
            else:
                self.dots += [self.place(side, low, line), self.place(side, high, line)]
        self._extend(side, stations, feet, line + 4)
        end = line + 5
        if tight:
            lengths = [text_width(t[0], NORMAL) + 8 if flat else _LINE_OF_TEXT for t in tight]
            centres = spread([(low + high) / 2 for _, low, high in tight], lengths)
            for (text, low, high), centre in zip(tight, centres, strict=True):
                self._stroke(self.place(side, (low + high) / 2, line), self.place(side, centre, line + 9))
                x, y = self.place(side, centre, line + (17 if flat else 11))
                self.write(x, y, text, anchor="middle" if flat else ("end" if side == "left" else "start"))
            end = line + (25 if flat else 13 + max(text_width(t[0], NORMAL) for t in tight))
        return end

    def running(self, side: str, out: float, datum: float, stations: list[float], feet: list[float],
                item: Running) -> float:
        """Draw distances from one datum; give back where the lane ends."""
        order = sorted(range(len(stations)), key=stations.__getitem__)
        line = out + 6
        centres = spread([stations[k] for k in order], [_LINE_OF_TEXT] * len(order))
        x, y = self.place(side, datum, line)
        self.rings.append((x, y, 3.0))
        self._extend(side, [datum], [0.0], line + 4)
        for k, centre in zip(order, centres, strict=True):
            here = stations[k]
            toward = 1 if here >= datum else -1
            self._stroke((x, y), self.place(side, here, line))
            self._head(side, here, line, toward)
            self._stroke(self.place(side, here, line), self.place(side, centre, line + 9))
            a, b = self.place(side, centre, line + 11)
            if side in ("below", "above"):
                self.write(a, b, item.texts[k], anchor="end" if side == "below" else "start", turned=True)
            else:
                self.write(a, b, item.texts[k], anchor="end" if side == "left" else "start")
        self._extend(side, stations, feet, line + 4)
        return line + 14 + max(text_width(text, NORMAL) for text in item.texts)

    def _extend(self, side: str, stations: list[float], feet: list[float], end: float) -> None:
        """Extension lines from `feet` (distance out; negative is inside) to a little beyond the line."""
        for along, foot in zip(stations, feet, strict=True):
            self._stroke(self.place(side, along, foot + 2.5), self.place(side, along, end))
            x, y = self.place(side, along, end)
            self.reach(x, y, x, y)

    def leaders(self, side: str, points: list[tuple[float, float]], items: list[Leader]) -> None:
        """Lines from points of the drawing to texts beside it, in the order of the points."""
        flat = side in ("below", "above")
        places = [point[0] if flat else point[1] for point in points]
        order = sorted(range(len(items)), key=lambda k: (places[k], k))
        sizes = [20.0 if items[k].ringed else text_width(items[k].text, SMALL) + 10 if flat else SMALL * 1.35
                 for k in order]
        out = self.used[side] + 10
        for k, centre in zip(order, spread([places[k] for k in order], sizes), strict=True):
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
                           "middle" if flat else ("end" if side == "left" else "start"))
        widest = max(16.0 if item.ringed or flat else text_width(item.text, SMALL) for item in items)
        self.used[side] = out + widest + 6
