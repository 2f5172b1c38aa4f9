"""Caliper readings of one sheet: where they were taken, and how they lie on a line of thicknesses."""

from collections.abc import Sequence

from shoplib.draw.scene import Disc, Item, Label, Leader, Line, Scene, Shape, Told
from shoplib.measure import INCH, MM, Style, mean, narrowest, thickest, write_brief, write_length

_UNITS = {"in": "inches", "mm": "millimetres"}

_SIDE = {"in": INCH // 100, "mm": MM // 5}


def thickness_line(
    nominal: int, readings: Sequence[tuple[str, int]], style: Style, limits: tuple[int, int] | None = None
) -> Scene:
    """Readings, by the place they were taken at, on a line of thicknesses, with their mean and the thickest.

    `nominal` is the thickness that the sheet is sold by; `limits`, where there are any, are the least and the
    greatest that its standard lets it have.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> read = [("corner", 177 * MM // 10), ("middle", 179 * MM // 10)]
    >>> thickness_line(18 * MM, read, MM_STYLE).alt.partition(". ")[2]
    'Their mean is 17.8 mm, the thickest 17.9 mm; the sheet was sold as 18 mm.'
    """
    sizes = [reading for _, reading in readings]
    middle, most = mean(sizes), thickest(sizes)
    ends = [nominal, *sizes, *(limits or ())]
    room = thickest([(thickest(ends) - narrowest(ends)) // 8, _SIDE[style.unit]])
    left, right = narrowest(ends) - room, thickest(ends) + room
    row = (right - left) // 14
    high = row * (len(readings) + 1)
    items: list[Item] = [Shape(((left, 0, right, high),), "cut", "thickness grows to the right")]
    if limits:
        items.append(Shape(((limits[0], 0, limits[1], high),), "back", "what the standard allows"))
        items.append(Leader((limits[0], 0), "below", f"least {_bare(limits[0], style)}", size=limits[0]))
        items.append(Leader((limits[1], 0), "below", f"greatest {_bare(limits[1], style)}", size=limits[1]))
    items.append(Line((nominal, 0), (nominal, high), "centre"))
    items.append(Leader((nominal, high), "above", f"sold as {_name(nominal, style)}"))
    items.append(Line((middle, 0), (middle, high), "edge"))
    items.append(Leader((middle, 0), "below", f"mean {_bare(middle, style)}", size=middle))
    items.append(Line((most, 0), (most, high), "hidden"))
    items.append(Leader((most, 0), "below", f"thickest {_bare(most, style)}", size=most))
    for number, (place, reading) in enumerate(readings):
        y = high - row * (number + 1)
        items.append(Disc((reading, y), row // 2, "front", f"{place}: {_size(reading, style)}"))
        items.append(Leader((reading, y), "right", f"{place} {_bare(reading, style)}", size=reading))
    told = ", ".join(f"{place} {_size(reading, style)}" for place, reading in readings)
    allowed = f" The standard allows {_size(limits[0], style)} to {_size(limits[1], style)}." if limits else ""
    title = f"Sold as {_name(nominal, style)}; mean of the readings {_size(middle, style)}"
    return Scene(
        title,
        f"Thickness in {_UNITS[style.unit]}, growing to the right, drawn larger than it is.",
        f"Caliper readings on a line of thicknesses: {told}. Their mean is {_size(middle, style)}, the thickest "
        f"{_size(most, style)}; the sheet was sold as {_name(nominal, style)}.{allowed}",
        (left, 0, right, high),
        tuple(items),
        told=(Told(title, (("mean", middle),)),),
    )


def reading_places(readings: Sequence[tuple[str, int]], style: Style) -> Scene:
    """A sheet from above, with the reading beside each place where the calipers reached it (four at most).

    >>> from shoplib.measure import MM, MM_STYLE
    >>> reading_places([("corner", 177 * MM // 10), ("middle", 179 * MM // 10)], MM_STYLE).alt
    'A sheet from above with its readings: corner 17.7 mm; middle 17.9 mm.'
    """
    wide, high = (96 * INCH, 48 * INCH) if style.unit == "in" else (2440 * MM, 1220 * MM)
    off = high // 12
    corners = ((off, off), (wide - off, off), (off, high - off), (wide - off, high - off))
    items: list[Item] = [Shape(((0, 0, wide, high),), "case", "sheet")]
    for (place, reading), (x, y) in zip(readings, corners, strict=False):
        items.append(Disc((x, y), off // 2, "air", place))
        inward = (x, y - off, x + wide // 2 - off, y + off) if x < wide // 2 else (wide // 2, y - off, x, y + off)
        texts = (f"{place}: {_bare(reading, style)}", place)
        items.append(Label(inward, texts, sizes=((place, reading),)))
    told = "; ".join(f"{place} {_size(reading, style)}" for place, reading in readings)
    return Scene(
        "Where the calipers reached",
        f"Thickness in {_UNITS[style.unit]}. The sheet is seen from above, its readings stand beside each place.",
        f"A sheet from above with its readings: {told}.",
        (0, 0, wide, high),
        tuple(items),
    )


def _name(nominal: int, style: Style) -> str:
    """The name that a sheet is sold by: a shop fraction where it is one, else millimetres."""
    if nominal % (INCH // 32) == 0:
        return write_length(nominal, Style("in", INCH // 32))
    return _size(nominal, style if nominal % MM else Style("mm", MM))


def _size(ticks: int, style: Style) -> str:
    """A decimal, no finer than calipers read."""
    return write_brief(ticks, style, decimal=True)


def _bare(ticks: int, style: Style) -> str:
    return _size(ticks, style).removesuffix(f" {style.unit}")
