"""The small picture on a label: the face that it lies on, the edges to measure from, the grain, which way is up."""

from shoplib.draw.face_on import FaceOn
from shoplib.draw.true_scale import LETTERS, Area, Item, Layer, Stroke, TextLine, frame, true_svg
from shoplib.measure import MM

_ACROSS, _UP = 30 * MM, 29 * MM
"""The picture of a board, its arrows included."""
_LONG, _SHORT, _ROOM = 20 * MM, 5 * MM, 8 * MM


def picture(face: FaceOn, called: str, edges: tuple[str, str], mark: str) -> tuple[str, str]:
    """The face as it stands in the cabinet, not to scale: edges to measure from, grain, arrow; and its words.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> picture(FaceOn(side, "right"), "inside face", ("front edge", "bottom end"), "")[1].rpartition("; ")[2]
    'the front edge and the bottom end are heavy. The grain runs up and down.'
    """
    wide, high = _shape(face.size)
    left, low = _ROOM + (_ACROSS - _ROOM - wide) // 2, (_UP - high) // 2
    rect = (left, low, left + wide, low + high)
    up = "up" if face.up[0] == 2 else "to the back"
    items: list[Item] = [Area(rect, "#f1efe9"), frame(rect, "thin")]
    datum = rect[0] if face.datum_left else rect[2]
    items.append(Stroke(((datum, rect[1]), (datum, rect[3])), "edge"))
    items.append(Stroke(((rect[0], rect[1]), (rect[2], rect[1])), "edge"))
    items += _arrow((3 * MM, _UP // 2 - 9 * MM), (3 * MM, _UP // 2 + 9 * MM), False)
    items.append(TextLine((3 * MM + MM * 5 // 2, _UP // 2), up, LETTERS, "middle", turned=True))
    grain = _grain(face)
    if grain:
        items += _along_grain(rect, grain)
    if mark:
        items.append(TextLine((_ACROSS, 2 * MM), mark, LETTERS, "end"))
    said = f"The grain runs {grain}." if grain else "The grain may run either way."
    alt = (f"The {called} as it stands in the cabinet, not to scale, with an arrow {up}; the {edges[0]} and the "
           f"{edges[1]} are heavy. {said}")
    return true_svg((_ACROSS, _UP), [Layer(tuple(items))], face.board.name, alt), alt


def _shape(size: tuple[int, int]) -> tuple[int, int]:
    """The board's proportions as far as they can be seen so small."""
    longest = max(size)
    return tuple(max(side * _LONG // longest, _SHORT) for side in size)


def _grain(face: FaceOn) -> str:
    if face.board.grain != "length":
        return ""
    across = face.board.placement.own_axis(face.right[0]) == 0
    return "across" if across else ("up and down" if face.up[0] == 2 else "from front to back")


def _along_grain(rect: tuple[int, int, int, int], grain: str) -> list[Item]:
    """A line with a head at both ends in the middle of the board, named."""
    a, b, c, d = rect
    x, y = (a + c) // 2, (b + d) // 2
    if grain == "across":
        half = (c - a) * 2 // 5
        at = TextLine((x, y + 2 * MM), "grain", LETTERS, "middle") if d - b > 9 * MM else None
        line = _arrow((x - half, y), (x + half, y), True)
    else:
        half = (d - b) * 2 // 5
        at = TextLine((x - 2 * MM, y), "grain", LETTERS, "middle", turned=True) if c - a > 9 * MM else None
        line = _arrow((x, y - half), (x, y + half), True)
    return [*line, at] if at else line


def _arrow(start: tuple[int, int], end: tuple[int, int], both: bool) -> list[Item]:
    """A level or an upright line with a head at its end, or at both."""
    level = start[1] == end[1]
    lines: list[Item] = [Stroke((start, end), "ring")]
    for (x, y), way in ((end, 1), (start, -1)) if both else ((end, 1),):
        back, aside = -way * 2 * MM, MM * 4 // 5
        wings = [(x + back, y + s * aside) if level else (x + s * aside, y + back) for s in (1, -1)]
        lines.append(Stroke((wings[0], (x, y), wings[1]), "ring"))
    return lines
