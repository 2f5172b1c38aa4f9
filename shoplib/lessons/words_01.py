"""The words of measuring, with a sketch of each."""

from dataclasses import replace

from shoplib.draw.caliper import thickness_line
from shoplib.draw.saw_line import saw_line
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Scene, Shape
from shoplib.draw.word_sketch import BOARD, HIGH, UNIT_NOTE, WIDE, sketch
from shoplib.lessons.say import Say
from shoplib.lessons.word import Word
from shoplib.measure import read_length
from shoplib.model.strip import cut_at

_SHEET = {"in": ("3/4 in", "0.725"), "mm": ("18 mm", "17.5")}

_READINGS = {"in": ("0.722 in", "0.727 in", "0.731 in"), "mm": ("17.4 mm", "17.5 mm", "17.65 mm")}

_CUT = {"in": ("48 in", "12 in", "1/8 in"), "mm": ("1200 mm", "300 mm", "3 mm")}

_MARKS = {"in": (16, (8, 4, 2, 1), "one inch"), "mm": (10, (5, 1), "one figure")}
"""Marks in one figure of a tape, which of them are longer than the rest, and how long the figure is."""


def _mark(unit: str) -> Scene:
    count, kinds, figure = _MARKS[unit]
    high, step = HIGH // 2, WIDE // (count + 2)
    items: list[Item] = [Shape(((0, 0, WIDE, high),), "cut", "tape")]
    for number in range(count + 1):
        kind = 0 if number in (0, count) else 1 + next(k for k, every in enumerate(kinds) if number % every == 0)
        x = step * (number + 1)
        items.append(Line((x, high), (x, high * (4 + 3 * kind) // 20), "edge" if kind == 0 else "thin"))
    items.append(Chain("below", 0, (step, step * (count + 1)), (figure,), 0))
    items.append(Leader((step * (count // 2 + 1), high), "above", "the longest mark between"))
    alt = "A piece of tape: long marks at both ends of a figure, and shorter and shorter ones between."
    return sketch("Mark", alt, tuple(items), (0, 0, WIDE, high))


def _calipers(unit: str) -> Scene:
    jaw, beam, gap = BOARD, HIGH * 2 // 3, WIDE // 4
    left, right = WIDE // 4, WIDE // 4 + gap
    items: tuple[Item, ...] = (
        Shape(((left, beam // 6, right, beam * 2 // 3),), "cut case", "sheet", "/"),
        Shape(((0, beam, WIDE, beam + BOARD),), "hardware", "beam"),
        Shape(((left - jaw, 0, left, beam),), "hardware", "fixed jaw"),
        Shape(((right, 0, right + jaw, beam),), "hardware", "sliding jaw"),
        Label((left, beam // 6, right, beam * 2 // 3), ("sheet",), plate=True),
        Chain("below", 0, (left, right), (_SHEET[unit][1],), 0),
    )
    alt = f"Two jaws close on the edge of a sheet; the calipers read {_SHEET[unit][1]} {unit}."
    return sketch("Calipers", alt, items, (0, 0, WIDE, beam + BOARD), UNIT_NOTE[unit])


def _nominal(unit: str) -> Scene:
    return _edge(unit, "Nominal thickness", f"sold as {_SHEET[unit][0]}", "")


def _actual(unit: str) -> Scene:
    return _edge(unit, "Actual thickness", "the same sheet", _SHEET[unit][1])


def _edge(unit: str, title: str, told: str, measured: str) -> Scene:
    """The edge of a sheet, with what is told of it and what calipers read."""
    thick = 4 * BOARD
    plies = tuple(Line((0, thick * ply // 5), (WIDE, thick * ply // 5), "thin") for ply in range(1, 5))
    items: tuple[Item, ...] = (
        Shape(((0, 0, WIDE, thick),), "cut case", "edge of the sheet"), *plies,
        Label((0, 0, WIDE, thick), (told,), plate=True),
    )
    if measured:
        items += (Chain("right", 0, (0, thick), (measured,), WIDE),)
    read = f"; calipers read {measured} {unit}" if measured else ""
    return sketch(title, f"The edge of a sheet: {told}{read}.", items, (0, 0, WIDE, thick), UNIT_NOTE[unit])


def _mean(unit: str) -> Scene:
    places = zip(("one place", "another", "a third"), _READINGS[unit], strict=True)
    readings = [(place, read_length(text)) for place, text in places]
    return thickness_line(read_length(_SHEET[unit][0]), readings, Say(unit).style)


def _kerf(unit: str) -> Scene:
    board, line, kerf = (read_length(text) for text in _CUT[unit])
    return saw_line(line, cut_at(board, line, kerf, "on the line"), "on the line", Say(unit).style)


def _waste_side(unit: str) -> Scene:
    board, line, kerf = (read_length(text) for text in _CUT[unit])
    scene = saw_line(line, cut_at(board, line, kerf, "waste side"), "waste side", Say(unit).style)
    return replace(scene, items=tuple(
        replace(item, texts=("waste side", "waste\nside")) if isinstance(item, Label) and item.texts[0] == "the rest"
        else item for item in scene.items
    ))


WORDS = (
    Word("mark", "A line on a tape. On an inch tape each kind of mark halves the one before it.", _mark),
    Word("calipers", "Two jaws that close on a thing and tell how thick it is, far finer than a tape.", _calipers),
    Word(
        "nominal thickness",
        "The name that a sheet is sold by. What calipers read is mostly less, and stands in the sums.",
        _nominal,
    ),
    Word("actual thickness", "What calipers read on the sheet in hand.", _actual),
    Word("mean", "All readings added up and shared by their number: one number for the whole sheet.", _mean),
    Word("kerf", "The slot that a saw leaves, or its width: wood that has become dust.", _kerf),
    Word("waste side", "The side of a line that is not kept. The blade belongs there.", _waste_side),
)
