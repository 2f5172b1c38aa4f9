"""The sizes of a drawing by name, so that one that is picked on it can be explained."""

import re
from collections.abc import Iterator

from shoplib.draw.scene import Chain, Label, Leader, Running, Scene

_LAST_SIZE = re.compile(
    r"(-?\d+ \d+/\d+|-?\d+/\d+|-?\d+(?:\.\d+)?)(?: (?:in|mm))?(?: \(([+-][\d.]+)(?: (?:in|mm))?\))?$"
)

TOLD = "told"
"""Instead of the number of an item: a line of title, note or legend."""


def name_of_line(scene: Scene, line: str) -> str:
    """By which name `sizes` finds what a line of title, note or legend tells; "" where it tells none.

    >>> from shoplib.draw.scene import Told
    >>> note = "Each kerf is 4."
    >>> scene = Scene("Bench", note, "A bench.", (0, 0, 9, 9), told=(Told(note, (("kerf", 4),)),))
    >>> name_of_line(scene, note), name_of_line(scene, scene.title)
    ('told.0', '')
    """
    return next((f"{TOLD}.{number}" for number, told in enumerate(scene.told) if told.line == line), "")


def dimension(scene: Scene, ask: str) -> int:
    """The length that a dimension tells, in ticks, by the name that `draw(..., asked=True)` gave it.

    It is read off the scene, so a scene drawn of a cabinet that carries its working carries it too. Raises
    LookupError for a name that the scene does not have.

    >>> scene = Scene("Bench", "inches", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 4, 9), ("4", "5")),))
    >>> dimension(scene, "0.1")
    5
    """
    number, _, k = ask.partition(".")
    try:
        item, place = scene.items[int(number)], int(k)
        if isinstance(item, Chain):
            if item.sizes:
                return item.sizes[place]
            return item.at[place + 1] - item.at[place]
        if isinstance(item, Running):
            return abs(item.at[place] - item.datum)
        if isinstance(item, Leader) and item.size and place == 0:
            return item.size
    except (ValueError, IndexError):
        pass
    raise LookupError(f"{scene.title}: there is no dimension {ask!r}")


def sizes(scene: Scene, ask: str) -> tuple[tuple[str, int], ...]:
    """What is told under a name that `draw(..., asked=True)` gave, each size after what it is called, in ticks.

    A dimension tells one, a label or a line of words all that stand in it. Raises LookupError for a name that the
    scene does not have.

    >>> front = Label((0, 0, 9, 4), ("front 1: 9 x 4", "1"), sizes=(("width", 9), ("height", 4)))
    >>> sizes(Scene("Front", "inches", "A front.", (0, 0, 9, 4), (front,)), "0.0")
    (('width', 9), ('height', 4))
    """
    number, _, k = ask.partition(".")
    if number == TOLD and k.isdecimal() and int(k) < len(scene.told):
        return scene.told[int(k)].sizes
    if number.isdecimal() and int(number) < len(scene.items) and k == "0":
        item = scene.items[int(number)]
        if isinstance(item, Label) and item.sizes:
            return item.sizes
    return (("this size", dimension(scene, ask)),)


def written(scene: Scene, ask: str, unit: str) -> str:
    """How a dimension stands in its drawing, with the unit that the note of the drawing says; "" for what else is told.

    >>> scene = Scene("Bench", "inches", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 4), ("front 4 (+0.01)",)),))
    >>> written(scene, "0.0", "in"), written(scene, "told.0", "in")
    ('4 in (+0.01 in)', '')
    """
    number, _, k = ask.partition(".")
    item = scene.items[int(number)] if number.isdecimal() and int(number) < len(scene.items) else None
    text = item.texts[int(k)] if isinstance(item, Chain | Running) else item.text if isinstance(item, Leader) else ""
    found = _LAST_SIZE.search(" ".join(text.split()))
    if found is None:
        return ""
    size, rest = found.groups()
    return f"{size} {unit} ({rest} {unit})" if rest else f"{size} {unit}"


def all_sizes(scene: Scene) -> Iterator[tuple[str, str, int]]:
    """Every size that the drawing tells, in a dimension, a label, its title, its note or its legend: what it is called,
    its text there, and its ticks.

    A label or a line of words has one text for several sizes, so each comes by its name and without a text.

    >>> scene = Scene("Bench", "inches", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 4, 9), ("", "5")),))
    >>> list(all_sizes(scene))
    [('dimension', '5', 5)]
    """
    for number, item in enumerate(scene.items):
        if isinstance(item, Label):
            yield from ((called, "", size) for called, size in item.sizes)
        elif isinstance(item, Leader):
            if item.size:
                yield "dimension", item.text, item.size
        elif isinstance(item, Chain | Running):
            for place, text in enumerate(item.texts):
                if text:
                    yield "dimension", text, abs(dimension(scene, f"{number}.{place}"))
    for line in (scene.title, scene.note, *scene.legend):  # a title may have been replaced since it told something
        for told in scene.told:
            if told.line == line:
                yield from ((called, "", size) for called, size in told.sizes)
