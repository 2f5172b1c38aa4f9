"""Names and sizes that are written on what they name: which text fits, where, how large; and what goes outside."""

from collections.abc import Iterable

from shoplib.draw.lettering import text_width
from shoplib.draw.marks import NORMAL, SMALL, text_element
from shoplib.draw.scene import Chain, Label, Leader, Rect, Running, Scene, Shape
from shoplib.draw.spilled import Box, nearest, way_out

Fit = tuple[int, Rect, bool, float]
"""Which text of a label fits, in which room, whether it is turned, and how large its letters are."""


def write_label(item: Label, left: int, top: int, scale: float, words: list[str], ask: str, found: Fit) -> None:
    """Write the text that was `found` to fit. One that tells its sizes is a thing to pick, by the name `ask`."""
    number, (a, b, c, d), turned, size = found
    x, y = ((a + c) / 2 - left) * scale, (top - (b + d) / 2) * scale
    words += _words(x, y, item.texts[number].split("\n"), size, turned, item.plate,
                    ask if number < len(item.texts) - 1 else "")


def fitting(item: Label, scale: float, first: int = 0) -> Fit | None:
    """The first text, from number `first` on, that fits.

    >>> shelf = Label((0, 0, 60, 20), ("shelf of the case", "shelf"))
    >>> number, room, turned, size = fitting(shelf, 1.0)
    >>> number, turned, fitting(shelf, 0.2)
    (1, False, None)
    """
    blocks = [text.split("\n") for text in item.texts]
    measured = [(len(lines), max([text_width(line, 1.0) for line in lines])) for lines in blocks]
    for room in (item.room, *item.rooms):
        wide, high = (room[2] - room[0]) * scale - 5, (room[3] - room[1]) * scale - 3
        numbers = range(first, len(blocks))
        ways = [(number, turned) for turned in (False, True) for number in numbers]
        for number, turned in sorted(ways) if item.fullest else ways:
            along, across = (high, wide) if turned else (wide, high)
            lines, widest = measured[number]
            tall = lines * 1.2 - (0.2 if item.fullest else 0.0)  # a line by itself has none below it
            if widest * SMALL <= along and tall * SMALL <= across:
                size = NORMAL if widest * NORMAL <= along and tall * NORMAL <= across else SMALL
                return number, room, turned, size
    return None


def alike(scene: Scene, scale: float) -> dict[int, Fit | None]:
    """How each label with sizes fits, by the number of its item: where one has room for its last text alone, which
    tells none, the others as wide tell none either.

    >>> sizes = ("40 × 60", "1240 × 600 × 18 mm")
    >>> labels = [Label((0, 0, 90, 20), (size, "side"), sizes=(("width", 40),)) for size in sizes]
    >>> [fitting(label, 1.0)[0] for label in labels]  # the second has no room for its sizes
    [0, 1]
    >>> [fit[0] for fit in alike(Scene("t", "n", "a", (0, 0, 90, 20), tuple(labels)), 1.0).values()]
    [1, 1]
    """
    fits = {
        number: fitting(item, scale) for number, item in enumerate(scene.items) if type(item) is Label and item.sizes
    }
    wide = {number: scene.items[number].room[2] - scene.items[number].room[0] for number in fits}
    last = {number: len(scene.items[number].texts) - 1 for number in fits}
    silent = {wide[number] for number, fit in fits.items() if not fit or fit[0] == last[number]}
    return {
        number: fit and fitting(scene.items[number], scale, last[number])
        if wide[number] in silent and fit and fit[0] < last[number] else fit
        for number, fit in fits.items()
    }


def _words(x: float, y: float, lines: list[str], size: float, turned: bool, plate: bool, ask: str) -> list[str]:
    """Lines of text about a point, on white where `plate` is set."""
    found = []
    if plate:
        widest = max(text_width(line, 1.0) for line in lines)
        p, q = widest * size / 2 + 2, len(lines) * size * 0.6
        p, q = (q, p) if turned else (p, q)
        found.append(f'<path d="M{x - p:.2f} {y - q:.2f}h{2 * p:.2f}v{2 * q:.2f}h{-2 * p:.2f}z" fill="#ffffff"/>')
    first = -(len(lines) - 1) * size * 0.6
    found.append(f'<g data-ask="{ask}">' if ask else "")
    for k, line in enumerate(lines):
        shift = first + k * size * 1.2
        p, q = (x + shift, y) if turned else (x, y + shift)
        found.append(text_element(p, q, line, size, "middle", turned))
    found.append("</g>" if ask else "")
    return found


def spilled_out(
    labels: list[Label], scene: Scene, scale: float, words: Iterable[Box] = ()
) -> list[tuple[Leader, tuple[float, float]]]:
    """Leaders for the names that fit nowhere on what they name, each with its point on the page: their ways keep off
    the boxes of the `words` that are written, where they can."""
    if not labels:
        return []
    left, _, _, top = scene.bounds

    def page(rect: Rect) -> tuple[float, float, float, float]:
        a, b, c, d = rect
        return (a - left) * scale, (top - d) * scale, (c - left) * scale, (top - b) * scale

    size = scene.size[0] * scale, scene.size[1] * scale
    others = [page(rect) for item in scene.items if type(item) is Shape for rect in item.rects]
    spans: dict[str, list[tuple[float, float]]] = {}
    for item in scene.items:
        if type(item) is Chain or type(item) is Running:
            flat = item.side in ("below", "above")
            at = sorted((t - left) * scale if flat else (top - t) * scale for t in item.at)
            spans.setdefault(item.side, []).append((at[0], at[-1]))
    found: list[tuple[Leader, tuple[float, float]]] = []
    taken = [*words] + [
        way_out(item.side, at[item.side in ("left", "right")], (*at, *at), size)
        for item in scene.items if type(item) is Leader
        for at in [page((*item.point, *item.point))[:2]]
    ]
    for label in labels:
        rect = label.about or label.room
        side, point = nearest(page(rect), size, spans, others, label.sides, taken)
        taken.append(way_out(side, point[side in ("left", "right")], (*point, *point), size))
        middle = (rect[0] + rect[2]) // 2, (rect[1] + rect[3]) // 2
        found.append((Leader(middle, side, label.texts[-1].replace("\n", " ")), point))
    return found
