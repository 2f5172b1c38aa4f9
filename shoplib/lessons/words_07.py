"""The words of what holds, with a sketch of those that can be drawn."""

from dataclasses import replace

from shoplib.draw.sag_view import sag_view
from shoplib.draw.scene import Chain, Leader, Scene
from shoplib.lessons.hold_shown import parts_shelf, tool_chest
from shoplib.lessons.say import Say
from shoplib.lessons.word import Word
from shoplib.live.tip_panel import scene_of

_NOTE = "A sketch without sizes. What is small is drawn larger than it is."


def _only(scene: Scene, title: str, alt: str, texts: dict[str, str]) -> Scene:
    """The scene as a sketch of a word: no sizes, and of its leaders those that begin so, under other words."""
    kept = []
    for item in scene.items:
        if isinstance(item, Leader):
            called = next((word for begins, word in texts.items() if item.text.startswith(begins)), "")
            kept += [replace(item, text=called, size=0)] if called else []
        elif not isinstance(item, Chain):
            kept.append(item)
    return replace(scene, title=title, note=_NOTE, alt=alt, items=tuple(kept), legend=())


def _sag(unit: str) -> Scene:
    shelf = parts_shelf(unit)
    scene = sag_view(shelf.sag(unit), shelf.thick, "simply supported", Say(unit).style)
    alt = "A board between two supports, bent down in its middle: how far it goes down there is its sag."
    return _only(scene, "Sag", alt, {"sag": "sag"})


def _edge(unit: str) -> Scene:
    scene = scene_of(tool_chest(unit, 1), Say(unit).style)
    alt = "A case from its side, a drawer out: a line up from its front edge on the floor is where it would tip."
    return _only(scene, "Tipping edge", alt, {"tipping": "tipping edge"})


WORDS = (
    Word("sag", "How far the middle of a board goes down under its load.", _sag),
    Word("span", "The clear way from one support of a board to the next."),
    Word("stiffness", "How little a material bends under a load. In sums it is the letter E."),
    Word("creep", "What a board bends further, in months and years, under a load that stays."),
    Word("moment", "A weight times its distance from the line about which a thing would turn."),
    Word("tipping edge", "The front line that a case stands on, and over which it would fall.", _edge),
    Word("withdrawal", "Of a screw or nail: being pulled straight out."),
)
