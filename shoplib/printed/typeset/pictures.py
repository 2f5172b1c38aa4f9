"""A scene becomes a picture of a page, at the largest usual scale with which it fits its room."""

from shoplib.documents.fitted import Fitted, Room, fitted
from shoplib.draw.scene import Scene
from shoplib.printed.typeset.blocks import Picture


def picture(scene: Scene, room: Room, unit: str, title: str | None = None, level: int = 2, said: str = "") -> Picture:
    """The scene for a room in mm, with its title (or another), note and scale, alarms, legend and alternative text.

    `unit` ("in" or "mm") chooses the scales. `said` is a part of its note that the page says once for all.

    >>> from shoplib.draw.scene import Shape
    >>> from shoplib.measure import MM
    >>> board = (0, 0, 600 * MM, 300 * MM)
    >>> shelf = Scene("Shelf", "All sizes in millimetres.", "A shelf.", board, (Shape((board,), "case"),))
    >>> made = picture(shelf, (180.0, 90.0), "mm")
    >>> made.title, made.note, made.alt, made.width <= 180
    ('Shelf', 'All sizes in millimetres. Scale 1 : 5 when printed at full size.', 'A shelf.', True)
    """
    return picture_of(scene, fitted(scene, room, unit), title, level, said)


def picture_of(scene: Scene, drawn: Fitted, title: str | None = None, level: int = 2, said: str = "") -> Picture:
    """The scene as it was fitted already; all else as in `picture`."""
    note = f"{scene.noted.replace(said, '').strip()} {drawn.scale}".strip()
    shown = scene.title if title is None else title
    return Picture(drawn.svg, scene.alt, drawn.width, shown, level, note, scene.alarms, scene.legend)
