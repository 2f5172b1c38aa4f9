"""The words of joinery allowances, with a sketch of each."""

from collections.abc import Callable
from dataclasses import replace

from shoplib.draw.joint_lesson import joint_lesson, stop_seen_from_above
from shoplib.draw.scene import Chain, Item, Leader, Line, Point, Scene, Shape
from shoplib.lessons.joints_shown import shown
from shoplib.lessons.word import Word
from shoplib.live.joint_panel import joint_style

_NOTE = "A sketch without sizes. What is thin is drawn thicker than it is."


def _sketch(word: str, alt: str, scene: Scene, *more: Item) -> Scene:
    """The scene of a joint as a sketch of one word: no sizes, and no line of what was before."""
    kept = tuple(item for item in scene.items if not isinstance(item, Chain | Line))
    return replace(scene, title=word, note=_NOTE, alt=alt, items=(*kept, *more), legend=())


def _joint(kind: str, unit: str, **other: int) -> Scene:
    case, joint = shown(unit, kind, **other)
    return joint_lesson(case, joint, joint_style(unit))


def _corner(scene: Scene, name: str, right: bool, top: bool) -> Point:
    """A corner of the tongue or board `name` of the scene: of its piece that reaches farthest to the left."""
    shape = next(item for item in scene.items if isinstance(item, Shape) and item.name == name)
    rect = min(shape.rects, key=lambda one: one[0])
    return rect[2] if right else rect[0], rect[3] if top else rect[1]


def _near_wall(unit: str) -> Scene:
    scene = _joint("dado", unit)
    case, _ = shown(unit, "dado")
    face, low = case.by_name["left side"].box.high[0], case.by_name["shelf"].box.low[2]
    named = Leader((face - scene.size[0] // 30, low), "below", "near wall")
    alt = "A shelf in a dado of the side: the lower wall of the dado, on which the shelf rests, is the near wall."
    return _sketch("Near wall", alt, scene, named)


def _groove(unit: str) -> Scene:
    alt = "A side cut level and seen from above: the thin back stands in a channel that runs up the side."
    scene = _joint("groove", unit)
    x, y = _corner(scene, "back", right=False, top=True)
    return _sketch("Groove", alt, scene, Leader((x - scene.size[0] // 60, y), "left", "groove"))


def _tongue(unit: str) -> Scene:
    scene = _joint("tongue in a narrower dado", unit)
    x, y = _corner(scene, "bottom", right=False, top=True)
    named = Leader((x + scene.size[0] // 20, y - scene.size[1] // 40), "left", "tongue")
    alt = "The end of a board is cut away below; the thin part that is left stands in a dado of the other board."
    return _sketch("Tongue", alt, scene, named)


def _shoulder(unit: str) -> Scene:
    scene = _joint("tongue in a narrower dado", unit)
    case, _ = shown(unit, "tongue in a narrower dado")
    face, low = case.by_name["left side"].box.high[0], case.by_name["bottom"].box.low[2]
    named = Leader((face, low + scene.size[1] // 12), "left", "shoulder")
    alt = "Under the tongue the board ends in a square step, the shoulder, which closes against the face of the side."
    return _sketch("Shoulder", alt, scene, named)


def _stop(unit: str) -> Scene:
    case, joint = shown(unit, "stopped dado")
    scene = stop_seen_from_above(case, joint, joint_style(unit))
    left, bottom, *_ = scene.bounds
    named = Leader((left + scene.size[0] // 6, bottom + scene.size[1] // 12), "left", "stopped end")
    alt = "A side and a shelf from above: the dado ends before the front edge, and a corner of the shelf is notched."
    return _sketch("Stopped dado", alt, scene, named)


def _clearance(word: str, alt: str, upper: bool) -> Callable[[str], Scene]:
    def drawn(unit: str) -> Scene:
        scene = _joint("dado", unit, **({"end_gap": 0} if upper else {"fit": 0}))
        x, y = _corner(scene, "shelf", right=False, top=upper)
        size = scene.size[0] // 60
        point = (x + 4 * size, y + size) if upper else (x - size, y + 4 * size)
        return _sketch(word, alt, scene, Leader(point, "above" if upper else "below", word.lower()))

    return drawn


WORDS = (
    Word.of_plan("near wall", "A shelf rests on it.", _near_wall),
    Word("groove", "A channel that runs with the grain of a board; a dado runs across it.", _groove),
    Word("tongue", "What is left of a board's end where a rabbet was cut, thin enough for a narrower dado.", _tongue),
    Word("shoulder", "The square step beside a tongue, which closes against the face of the other board.", _shoulder),
    Word(
        "stopped dado", "A dado that ends before it reaches the edge, so that it does not show from the front.", _stop,
    ),
    Word(
        "fit", "How much wider a cut is than the thickest place of what goes into it.",
        _clearance("Fit", "A shelf in a dado: the dado is a little wider than the shelf is thick.", upper=True),
    ),
    Word(
        "end gap", "How much deeper a cut is than the board enters, which leaves room for glue.",
        _clearance("End gap", "A shelf in a dado: its end stops a little short of the floor of the dado.", upper=False),
    ),
)
