"""Marks on a finished drawing: where boards clash."""

from collections.abc import Iterable

from shoplib.draw.look import Look
from shoplib.draw.scene import Leader, Scene, Shape
from shoplib.model.box import Box


def mark(scene: Scene, boxes: Iterable[Box], look: Look, text: str = "clash") -> Scene:
    """The drawing with each box (world) cross-hatched, outlined, and named by a leader on the right.

    `look` is the one that the drawing was made with: FRONT, FROM_RIGHT or FROM_ABOVE.

    >>> from shoplib.draw.look import FRONT
    >>> scene = Scene("Case", "", "A case.", (0, 0, 90, 90))
    >>> mark(scene, [Box((0, 0, 0), (9, 9, 9))], FRONT).alt
    'A case. 1 place is marked: clash.'
    """
    rects = list(dict.fromkeys(look.flat(box) for box in boxes))
    if not rects:
        return scene
    shapes = [Shape((rect,), "clash", text, "x") for rect in rects]
    leaders = [Leader(((a + c) // 2, (b + d) // 2), "right", text) for a, b, c, d in rects]
    places = "place is" if len(rects) == 1 else "places are"
    return scene.with_items(*shapes, *leaders, alt=f"{len(rects)} {places} marked: {text}.")
