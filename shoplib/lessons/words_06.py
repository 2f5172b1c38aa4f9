"""The words of hardware layout, with a sketch of each."""

from dataclasses import replace

from shoplib.draw.hardware_views import pull_view, screw_view, tools_view
from shoplib.draw.lying_case import lying_case, setback_section
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Running, Scene, Shape
from shoplib.lessons.hardware_shown import DRAWER, choices, hung, solved
from shoplib.lessons.word import Word
from shoplib.live.hardware_panel import hardware_style
from shoplib.live.hardware_project import KINDS
from shoplib.model.hardware_places import front_screw

_NOTE = "A sketch without sizes."


def _only(scene: Scene, title: str, alt: str, *more: Item) -> Scene:
    """The scene as a sketch of a word: no sizes and no names but those in `more`."""
    kept = tuple(item for item in scene.items if not isinstance(item, Chain | Running | Leader | Label))
    return replace(scene, title=title, note=_NOTE, alt=alt, items=(*kept, *more))


def _datum(unit: str) -> Scene:
    scene = lying_case(solved(choices(unit), unit), hardware_style(unit))
    datum = next(item for item in scene.items if isinstance(item, Running)).datum
    alt = "A case on its side, and before it three spacers: all begin at one line, the inside of the bottom."
    return _only(scene, "Datum", alt, Leader((datum, scene.bounds[1]), "left", "datum"))


def _setback(unit: str) -> Scene:
    scene = setback_section(solved(choices(unit, kind=KINDS[1]), unit), hardware_style(unit))
    side = next(item for item in scene.items if isinstance(item, Shape)).rects[0]
    front_end = next(item for item in scene.items if isinstance(item, Chain) and item.row == 1)
    names = [item for item in scene.items if isinstance(item, Label) or getattr(item, "text", "") == "slide"]
    alt = "A side with a slide beside it, cut through: the slide begins behind the front edge of the side."
    return _only(scene, "Setback", alt, *names, replace(front_end, row=0, texts=("setback",), foot=side[0]))


def _gauge(unit: str) -> Scene:
    scene = setback_section(solved(choices(unit, kind=KINDS[1]), unit), hardware_style(unit))
    shapes = [item for item in scene.items if isinstance(item, Shape) and item.name in ("side", "slide")]
    side, slide = (item.rects[0] for item in shapes)
    thin = slide[2] - slide[0]
    piece = Shape(((slide[0], 0, slide[0] + thin, slide[1]),), "cut", "gauge", "x")
    stop = (side[0], -(side[2] - side[0]) // 2, slide[2] + thin, 0)
    alt = "A side cut through, with a slide beside it. A piece with a lip before the edge fills the setback."
    return replace(
        scene, title="Gauge", note=_NOTE, alt=alt, bounds=(side[0], stop[1], slide[2] + thin, scene.bounds[3]),
        items=(*shapes, piece, Shape((stop,), "cut", "lip of the gauge", "x"),
               Leader((slide[0] + thin // 2, slide[1] // 2), "right", "gauge"), Label(side, ("side",), plate=True),
               Leader(((slide[0] + slide[2]) // 2, slide[3] // 2), "right", "slide")),
    )


def _pitch(unit: str) -> Scene:
    scene = pull_view(solved(choices(unit), unit), f"{DRAWER} front", hardware_style(unit))
    chain = next(item for item in scene.items if isinstance(item, Chain) and item.side == "below")
    alt = "A front with two holes in its middle; from hole to hole is the pitch."
    return _only(scene, "Pitch", alt, replace(chain, texts=("", "pitch", "")))


def _pilot(unit: str) -> Scene:
    scene = screw_view(front_screw(solved(choices(unit), unit), DRAWER), hardware_style(unit))
    front = next(item for item in scene.items if isinstance(item, Shape) and item.name == "front").rects[0]
    screw = next(item for item in scene.items if isinstance(item, Shape) and item.name == "screw").rects[0]
    middle, thin = (screw[1] + screw[3]) // 2, (screw[3] - screw[1]) // 3
    end = next(item for item in scene.items if isinstance(item, Chain) and item.side == "below").at[1]
    hole = Shape(((front[0], middle - thin, end, middle + thin),), "air", "pilot hole")
    boards = tuple(item for item in scene.items if isinstance(item, Shape) and item.name != "screw")
    wide = Shape(((0, screw[1], front[0], screw[3]),), "air", "hole in the first board")
    alt = "Two boards cut through. Through the first goes a hole as wide as the screw, into the second a thinner one."
    lines = (Line((0, middle), (end, middle), "centre"), Leader(((front[0] + end) // 2, middle - thin), "below",
                                                                "pilot hole"))
    return replace(scene, title="Pilot hole", note=_NOTE, alt=alt, items=(*boards, wide, hole, *lines))


def _pegs(unit: str) -> Scene:
    row, names = hung(unit)
    scene = tools_view(row, names, hardware_style(unit))
    alt = "A panel with four tools side by side; over each a round peg stands out."
    return _only(scene, "Peg", alt, Leader((row.middles[0], scene.bounds[3] * 5 // 6), "above", "peg"))


WORDS = (
    Word("datum", "The one place that all distances are measured from; for slides, the inside of the bottom.", _datum),
    Word("setback", "How far behind the front edge something begins.", _setback),
    Word("gauge", "A piece with a lip, cut to one size, that sets every slide to the same place.", _gauge),
    Word("pitch", "From the middle of one hole to the middle of the next.", _pitch),
    Word(
        "pilot hole", "A hole thinner than the screw, for its thread, so that the wood does not split.", _pilot,
    ),
    Word("pull-out", "An upright panel on slides that runs out of the case, with what hangs on it."),
    Word("peg", "A round stick that stands out of a panel, for a tool to hang on.", _pegs),
)
