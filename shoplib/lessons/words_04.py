"""The words of drawer clearance, with a sketch of each."""

from dataclasses import replace

from shoplib.draw.drawer_across import drawer_across
from shoplib.draw.drawer_plan import drawer_plan
from shoplib.draw.leaning import leaning_opening
from shoplib.draw.scene import Chain, Label, Leader, Line, Scene
from shoplib.draw.word_sketch import BOARD, HIGH, WIDE, case_front, sketch
from shoplib.lessons.drawer_shown import drawer, out_of_true
from shoplib.lessons.word import Word
from shoplib.live.drawer_panel import drawer_style
from shoplib.live.drawer_project import starting_drawer
from shoplib.live.drawer_says import LOWER
from shoplib.measure import read_length
from shoplib.tables.slides import slides

_NOTE = "A sketch without sizes. What is thin is drawn thicker than it is."


def _only(scene: Scene, title: str, alt: str, named: tuple[str, ...]) -> Scene:
    """The scene of a drawer as a sketch of a word: no sizes, and the names of these parts alone."""
    kept = tuple(
        item for item in scene.items
        if not isinstance(item, Chain | Label) and (not isinstance(item, Leader) or item.text in named)
    )
    return replace(scene, title=title, note=_NOTE, alt=alt, items=kept, legend=())


def _across(slide: str, unit: str) -> Scene:
    return drawer_across(drawer(unit, slide=slide, rabbet=None), drawer_style(unit))


def _plan(unit: str) -> Scene:
    choices = starting_drawer(unit)
    wide = choices.front + read_length("3/32 in" if unit == "in" else "2.5 mm")
    return drawer_plan(drawer(unit, back=wide), drawer_style(unit), LOWER, slides(unit)[choices.slide])


def _opening(_unit: str) -> Scene:
    room = Label((BOARD, BOARD, WIDE - BOARD, HIGH - BOARD), ("opening",))
    alt = "A case from the front; the room between its sides is named opening."
    return sketch("Opening", alt, (*case_front(), room))


def _slide(unit: str) -> Scene:
    alt = "A drawer cut through, from the front: on each side of the box a slide stands between box and case."
    return _only(_across(starting_drawer(unit).slide, unit), "Slide", alt, ("slide",))


def _runner(unit: str) -> Scene:
    alt = "A drawer cut through, from the front: a strip on each side of the case lies in a groove of the box side."
    return _only(_across("side-hung wood runner", unit), "Runner", alt, ("runner",))


def _kicker(unit: str) -> Scene:
    scene = _across("wood runner below with kicker", unit)
    alt = "A drawer cut through, from the front: under each box side lies a runner, and over each a strip, the kicker."
    kicker = next(item for item in scene.items if getattr(item, "name", "").endswith("right kicker"))
    a, b, c, d = kicker.rects[0]
    found = _only(scene, "Kicker", alt, ("runner",))
    return replace(found, items=(*found.items, Leader(((a + c) // 2, (b + d) // 2), "right", "kicker")))


def _taper(unit: str) -> Scene:
    alt = "A drawer from above: the two sides of the opening stand farther apart at the back than at the front."
    scene = _plan(unit)
    chains = [item for item in scene.items if isinstance(item, Chain)]
    ends = {item.side: item for item in chains if item.texts[0].startswith(("front ", "back "))}
    marks = (replace(ends["below"], row=0, texts=("narrower",)), replace(ends["above"], texts=("wider",)))
    return _only(scene, "Taper", alt, ()).with_items(*marks)


def _shim(unit: str) -> Scene:
    alt = "A drawer from above: between each slide and the case lies a thin wedge, thickest at the back."
    return _only(_plan(unit), "Shim", alt, ("shim", "slide"))


def _out_of_square(unit: str) -> Scene:
    alt = "An opening from above: its sides are as far apart at the back as in front, but lean; one diagonal is longer."
    width, *rest = out_of_true(unit)
    scene = leaning_opening(width, *rest, drawer_style(unit))
    longer = next(item for item in scene.items if isinstance(item, Line) and item.kind == "hidden")
    point = longer.start[0] + (longer.end[0] - longer.start[0]) * 3 // 4, longer.end[1] * 3 // 4
    return _only(scene, "Out of square", alt, ()).with_items(Leader(point, "right", "longer"))


WORDS = (
    Word("opening", "The room between two uprights that a drawer goes into.", _opening),
    Word("slide", "A bought pair of metal rails that a drawer rolls out on.", _slide),
    Word("runner", "A strip of wood that a drawer runs on.", _runner),
    Word.of_plan("kicker", sketch=_kicker),
    Word("taper", "By how much an opening is wider at one end than at the other.", _taper),
    Word.of_plan("shim", sketch=_shim),
    Word(
        "out of square",
        "Leaning: the corners are not right angles, and one diagonal is longer than the other.",
        _out_of_square,
    ),
)
