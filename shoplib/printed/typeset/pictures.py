"""A scene becomes a picture of a page, at the largest usual scale with which it fits its room."""

from shoplib.documents.fitted import Fitted, Room, fitted
from shoplib.draw.scene import Scene
from shoplib.printed.typeset.blocks import Picture


def picture(scene: Scene, room: Room, unit: str, title: str | None = None, level: int = 2) -> Picture:
    """The scene for a room in mm, with its title (or another), note and scale, alarms, legend and alternative text.

    `unit` ("in" or "mm") chooses the scales.

    >>> from shoplib.draw.scene import Shape
    >>> from shoplib.measure import MM
    >>> board = (0, 0, 600 * MM, 300 * MM)
    >>> shelf = Scene("Shelf", "All sizes in millimetres.", "A shelf.", board, (Shape((board,), "case"),))
    >>> made = picture(shelf, (180.0, 90.0), "mm")
    >>> made.title, made.note, made.alt, made.width <= 180
    ('Shelf', 'All sizes in millimetres. Scale 1 : 5 when printed at full size.', 'A shelf.', True)
    """
    return _picture(scene, fitted(scene, room, unit), scene.title if title is None else title, level, scene.noted)


def untitled(scene: Scene, drawn: Fitted, said: str) -> Picture:
    """The scene as it was fitted already, without its title; `said` is a part of its note that the page says once for
    all.

    >>> shelf = Scene("Shelf", "Sizes in brackets are for reference.", "A shelf.", (0, 0, 9, 9))
    >>> untitled(shelf, Fitted("<svg/>", 90.0, 45.0, "Scale 1 : 5.", 5), shelf.note).note
    'Scale 1 : 5.'
    """
    return _picture(scene, drawn, "", 2, scene.noted.replace(said, "").strip())


def _picture(scene: Scene, drawn: Fitted, title: str, level: int, note: str) -> Picture:
    return Picture(
        drawn.svg, scene.alt, drawn.width, title, level, f"{note} {drawn.scale}".strip(), scene.alarms, scene.legend
    )
