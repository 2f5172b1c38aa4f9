"""The whole cabinet on paper: pictures that fill their room, for nobody measures from lines that run aslant."""

from shoplib.documents.fitted import Room, words_height
from shoplib.documents.paper import Paper
from shoplib.draw.pen import draw_to_scale
from shoplib.draw.scene import Scene
from shoplib.draw.whole_view import assembled_view, drawers_apart, exploded_view
from shoplib.measure import MM
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Beside, Block, Heading, Picture, Together, Words
from shoplib.words.naming import and_list

TITLE = "The whole"
IN_FILES = "See the pictures among the files, drawn as large as they need."
"""Where a picture is found that no page has room for."""

_HEADING = 12.0
"""What the heading of a page takes, in mm."""
_GUTTER = 6.0
"""What lies between two pictures beside one another, in mm."""
_NEAR = 0.995
"""A drawing that fills so much of its room, fills it."""
_TRIES = 8
_LEAST = 0.45
"""So large at least, by what its room would hold without words, the thing itself is drawn: a smaller one is a blot
between its names."""


def filling(scene: Scene, room: Room) -> Picture:
    """The scene as large as its room (width and height in mm) lets it be, its words beside it included, at no usual
    scale. Letters keep their size. ValueError where its words leave it too little room.

    >>> from shoplib.draw.scene import Leader, Shape
    >>> board = (0, 0, 600 * MM, 300 * MM)
    >>> scene = Scene("Shelf", "", "A shelf.", board, (Shape((board,), "case"), Leader((0, 0), "left", "shelf")))
    >>> 179 < filling(scene, (180.0, 200.0)).width <= 180
    True
    >>> filling(scene, (180.0, -5.0))
    Traceback (most recent call last):
    ...
    ValueError: Shelf: 180 x -5 mm are too little room for the drawing with its words
    """
    # Words beside the drawing hardly change with its scale: what they took the last time is left free the next.
    scale = bare = min(room[0] / scene.size[0], room[1] / scene.size[1]) * MM
    if bare <= 0:
        raise _too_small(scene, room)
    best = None
    for _ in range(_TRIES):
        drawn = draw_to_scale(scene, 1 / scale)
        part = max(size / there for size, there in zip(drawn.size_mm, room, strict=True))
        if part <= 1.0 and (best is None or scale > best[0]):
            best = scale, drawn
            if part >= _NEAR:
                break
        beside = [size - own / MM * scale for size, own in zip(drawn.size_mm, scene.size, strict=True)]
        free = min((there - taken) / own for there, taken, own in zip(room, beside, scene.size, strict=True)) * MM
        scale = max(free, scale / 4) * (1.0 if part <= 1.0 else 0.998)
    shrink = 1.0 if best else 1 / part
    scale, drawn = best or (scale, drawn)
    if scale * shrink < _LEAST * bare:
        raise _too_small(scene, room)
    return Picture(
        drawn.svg, scene.alt, round(drawn.size_mm[0] * shrink, 4), scene.title, note=scene.noted, alarms=scene.alarms,
        legend=scene.legend,
    )


def _too_small(scene: Scene, room: Room) -> ValueError:
    return ValueError(f"{scene.title}: {room[0]:.0f} x {room[1]:.0f} mm are too little room for the drawing with its "
                      "words")


def exploded_picture(cabinet: Cabinet, room: Room) -> Picture:
    """The exploded view for a room in mm, its title, note and legend included. ValueError where that is too small.

    >>> from shoplib.documents.examples import cabinet_from
    >>> exploded = exploded_picture(cabinet_from("finger_jointed_drawers"), (180.0, 250.0))
    >>> exploded.title, exploded.width <= 180
    ('Exploded view: Finger-jointed drawers', True)
    """
    return _within(exploded_view(cabinet), room)


def whole_pages(cabinet: Cabinet, paper: Paper) -> list[Block]:
    """The closed cabinet on a page of its own, or above what the exploded view of a large one leaves together: a drawer
    of each build, two beside one another. One with more names than half a page has room for keeps its page to itself.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> heading, page = whole_pages(cabinet_from("finger_jointed_drawers"), PAPERS["a4"])
    >>> [picture.title for picture in page.blocks]
    ['Assembled view: Finger-jointed drawers']
    """
    width, height = paper.room()
    apart = [scene for _, scene in drawers_apart(cabinet)]
    whole = width, height - _HEADING
    half = width, whole[1] / 2
    closed = _row([assembled_view(cabinet)], half if apart else whole, whole)
    return [Heading(TITLE), closed, *(_row(apart[at:at + 2], half, whole) for at in range(0, len(apart), 2))]


def _row(scenes: list[Scene], *rooms: Room) -> Block:
    """Pictures beside one another, each as wide as the others: in the first of these rooms of a page that holds them.

    What none holds is to be looked at in its file.
    """
    for room in rooms:
        narrow = (room[0] - _GUTTER * (len(scenes) - 1)) / len(scenes)
        try:
            pictures = [_within(scene, (narrow, room[1])) for scene in scenes]
        except ValueError:
            continue
        return Together((pictures[0] if len(scenes) == 1 else Beside(tuple((one,) for one in pictures)),))
    return Words(f"{and_list([scene.title for scene in scenes])}: a page has no room for all names. {IN_FILES}")


def _within(scene: Scene, room: Room) -> Picture:
    return filling(scene, (room[0], room[1] - words_height(scene, room[0])))
