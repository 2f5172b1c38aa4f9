"""A stretch of tape with its marks, and a pointer that stands at a length."""

from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Scene, Shape, Told
from shoplib.measure import INCH, MM, Style, to_step, write_length
from shoplib.measure.tape import tape_parts, tape_steps

_SPAN = {
    "in": {INCH // 8: 4 * INCH, INCH // 16: 3 * INCH, INCH // 32: 2 * INCH, INCH // 64: INCH * 5 // 4},
    "mm": {MM: 60 * MM, MM // 2: 40 * MM},
}
"""How much tape is drawn for each finest mark: the marks then stand far enough apart to be counted."""

_REACH = {"in": (60, 51, 42, 34, 26, 19, 14), "mm": (60, 46, 30, 18)}
"""How far each kind of mark reaches into the tape, in hundredths of its width, the longest first."""


def tape(ticks: int, style: Style, what: str = "", told: bool = True) -> Scene:
    """The tape round the nearest mark to `ticks`, with the pointer at `ticks`, and the steps of the reading below.

    `what` names the length in the title. Where `told` is not set the reading stands nowhere, neither in the
    drawing nor in its words for those who cannot see it, which then lead to it mark by mark. The style is one of
    1/8 to 1/64 in, 1 or 0.5 mm. Raises KeyError for another step.

    >>> tape(INCH * 21 // 8, Style("in", INCH // 16), "pointer").title
    'The pointer: 2 5/8 in'
    """
    mark = to_step(ticks, style.step)
    figure = tape_parts(style)[0]
    span = _SPAN[style.unit][style.step]
    left = max(0, mark // figure * figure - (span - figure) // 2)
    right, wide = left + span, span * 23 // 100
    top, half = wide * 5 // 4, span // 250
    items: list[Item] = [Shape(((left, 0, right, wide),), "cut", "tape")]
    items += _marks(left, right, wide, style)
    items.append(Shape(((ticks - half, wide, ticks + half, top),), "clash", "pointer"))
    items.append(Line((ticks, wide - wide * _REACH[style.unit][0] // 100), (ticks, wide), "hidden"))
    reading = ("" if mark == ticks else "nearest mark ") + write_length(mark, style)
    if told:
        items.append(Leader((ticks, top), "above", reading, size=mark))
        items += _steps(mark, wide, style)
    figures = "inches" if style.unit == "in" else "centimetres: 1 is 10 mm"
    note = f"Marks to {write_length(style.step, style)}; the figures are {figures}. Drawn larger than it is."
    title = f"The {what}: {reading}" if told else "What does the tape say?"
    lines = (Told(title, ((what, mark),)),) if told and mark else ()
    return Scene(title, note, _alt(mark, ticks, style, told), (left, 0, right, top), tuple(items), told=lines)


def _marks(left: int, right: int, wide: int, style: Style) -> list[Item]:
    """Marks from the upper edge of the tape down, and each figure under its mark, clear of the pointer's line."""
    parts, items = tape_parts(style), []
    at = to_step(left, style.step, "up")
    while at <= right:
        kind = next(k for k, part in enumerate(parts) if at % part == 0)
        foot = wide - wide * _REACH[style.unit][kind] // 100
        items.append(Line((at, wide), (at, foot), "edge" if kind == 0 else "thin"))
        room = (right - left) // 24
        if kind == 0 and left <= at - room and at + room <= right:  # under its mark, so that it is no other's
            items.append(Label((at - room, 0, at + room, foot), (str(at // parts[0]),)))
        at += style.step
    return items


def _steps(mark: int, wide: int, style: Style) -> list[Item]:
    """The figure passed, and one dimension for each step after it."""
    first, *finer = tape_steps(mark, style)
    stations = [first.ticks]
    for step in finer:
        stations.append(stations[-1] + step.ticks)
    begin = write_length(first.ticks, style) if first.count else "the end"
    # The end of the tape is told at its left, where no dimension of the next steps runs through the words.
    point, side = ((first.ticks, 0), "below") if first.count else ((0, wide // 8), "left")
    items: list[Item] = [Leader(point, side, f"{begin}, then" if finer else begin, size=first.ticks)]
    if finer:
        texts = tuple(write_length(step.ticks, style, unit=False) for step in finer)
        items.append(Chain("below", 0, tuple(stations), texts, 0))
    return items


def _alt(mark: int, ticks: int, style: Style, told: bool) -> str:
    first, *finer = tape_steps(mark, style)
    figure = f"the figure {first.count}" if first.count else "the end of the tape"
    way = [f"{write_length(step.ticks, style)} further" for step in finer]
    where = " and then ".join([f"past {figure}", *way]) if way else f"at {figure}"
    near = "" if mark == ticks else "nearest to the mark that lies "
    said = f" That is {write_length(mark, style)}." if told else ""
    return f"A stretch of tape with marks to {write_length(style.step, style)}; a pointer stands {near}{where}.{said}"
