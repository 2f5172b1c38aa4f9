"""The words of fronts and gaps, with a sketch of each."""

from dataclasses import replace

from shoplib.draw.front_lesson import edge, setting_order
from shoplib.draw.front_view import front_view
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Scene, Shape
from shoplib.draw.word_sketch import BOARD, HIGH, NO_SIZES, WIDE, sketch
from shoplib.lessons.fronts_shown import choices, face
from shoplib.lessons.word import Word
from shoplib.live.front_panel import front_style
from shoplib.live.front_project import starting_fronts

_NOTE = "A sketch without sizes. What is thin is drawn thicker than it is."


def _only(scene: Scene, title: str, alt: str, leaders: tuple[str, ...] = ()) -> Scene:
    """The scene as a sketch of a word: no sizes, and of its leaders these alone."""
    kept = tuple(
        item for item in scene.items
        if not isinstance(item, Chain) and (not isinstance(item, Leader) or item.text in leaders)
    )
    return replace(scene, title=title, note=_NOTE, alt=alt, items=kept)


def _edge(unit: str, inset: bool, title: str, alt: str, leaders: tuple[str, ...] = ()) -> Scene:
    start = starting_fronts(unit)
    scene = edge(start.thick, 2 * start.gap, front_style(unit), inset, sizes=False)
    return _only(scene, title, alt, leaders)


def _inset(unit: str) -> Scene:
    alt = "A side and a front, cut through: the front stands beside the side, flush with it."
    return _edge(unit, True, "Inset", alt)


def _overlay(unit: str) -> Scene:
    alt = "A side and a front, cut through: the front lies before the edge of the side."
    return _edge(unit, False, "Overlay", alt)


def _gap(unit: str) -> Scene:
    start = choices(unit, count=2)
    scene = front_view(face(start, unit), start.gap, front_style(unit))
    plain = [replace(item, texts=(item.texts[-2],)) if isinstance(item, Label) else item for item in scene.items]
    place = next(item for item in plain if isinstance(item, Shape) and item.name == "front 2").rects[0]
    below = next(item for item in plain if isinstance(item, Shape) and item.name == "front 1").rects[0]
    plain.append(Leader(((place[0] + place[2]) // 2, (below[3] + place[1]) // 2), "right", "gap"))
    alt = "Two fronts one above the other in an opening: the strip left open between them is the gap."
    return _only(replace(scene, items=tuple(plain)), "Gap", alt, ("gap",))


def _reveal(unit: str) -> Scene:
    alt = "A side and an overlay front, cut through: beside the front a strip of the side's edge is seen, the reveal."
    return _edge(unit, False, "Reveal", alt, ("reveal",))


def _spacer(unit: str) -> Scene:
    start = starting_fronts(unit)
    first = face(start, unit).pieces[0]
    scene = setting_order(first.width, first.height, start.gap, front_style(unit))
    kept = tuple(item for item in scene.items if not isinstance(item, Line) and getattr(item, "fill", "") != "air")
    alt = "A front in its opening: it stands on two thin pieces, and a third is between it and the left side."
    named = tuple(
        replace(item, text="spacer") if isinstance(item, Leader) and "spacers" in item.text else item for item in kept
    )
    return _only(replace(scene, items=named), "Spacer", alt, ("spacer",))


def _flatsawn(_unit: str) -> Scene:
    high = 2 * BOARD
    items: list[Item] = []
    for low, name in ((0, "quartersawn"), (HIGH // 2, "flatsawn")):
        items.append(Shape(((0, low, WIDE, low + high),), "case", name))
        if name == "flatsawn":
            items += [Line((0, low + high * part // 5), (WIDE, low + high * part // 5), "thin") for part in range(1, 5)]
        else:
            items += [Line((WIDE * part // 20, low), (WIDE * part // 20, low + high), "thin") for part in range(1, 20)]
        items.append(Label((0, low, WIDE, low + high), (name,), plate=True))
    alt = (
        "The ends of two boards. In the flatsawn one the lines of growth run along the wide face, in the quartersawn "
        "one they stand upright on it."
    )
    return sketch("Flatsawn and quartersawn", alt, tuple(items), (0, 0, WIDE, HIGH // 2 + high), NO_SIZES)


WORDS = (
    Word("inset", "Of a front: standing in the opening, flush with the edges of the case.", _inset),
    Word("overlay", "Of a front: lying before the edges of the case; also how much of an edge it covers.", _overlay),
    Word("gap", "The strip left open between two fronts, or between an inset front and the case.", _gap),
    Word("reveal", "The strip of case that an overlay front leaves to be seen beside it.", _reveal),
    Word("spacer", "A piece as thick as a gap, put in while a front is set, and taken out again.", _spacer),
    Word("moisture content", "How heavy the water in a piece of wood is, in percent of the wood without it."),
    Word(
        "flatsawn",
        "Sawn so that the lines of growth run along the wide face; in a quartersawn board they stand upright on it.",
        _flatsawn,
    ),
)
