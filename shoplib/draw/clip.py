"""What of a rectangle lies inside a frame: a detail of a drawing shows no more."""

from shoplib.draw.scene import Rect


def within(rect: Rect, frame: Rect) -> Rect | None:
    """The part of the rectangle inside the frame, or None where there is none.

    >>> within((0, 0, 9, 9), (4, 4, 20, 6)), within((0, 0, 1, 1), (4, 4, 5, 5))
    ((4, 4, 9, 6), None)
    """
    left, bottom = max(rect[0], frame[0]), max(rect[1], frame[1])
    right, top = min(rect[2], frame[2]), min(rect[3], frame[3])
    return (left, bottom, right, top) if left < right and bottom < top else None
