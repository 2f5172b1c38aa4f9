"""Areas of sheets in words: square feet or square metres."""

from shoplib.measure import FOOT, MM, Style

_WHOLE = {"in": (FOOT, "sq ft"), "mm": (1000 * MM, "m²")}


def area(square_ticks: int, style: Style) -> str:
    """An area in the style's unit to two places.

    >>> from shoplib.measure import INCH, INCH_STYLE, MM_STYLE
    >>> area(96 * INCH * 48 * INCH, INCH_STYLE), area(600 * MM * 250 * MM, MM_STYLE), area(18 * INCH * INCH, INCH_STYLE)
    ('32 sq ft', '0.15 m²', '0.13 sq ft')
    """
    side, unit = _WHOLE[style.unit]
    hundredths = (200 * square_ticks + side * side) // (2 * side * side)
    whole, rest = divmod(hundredths, 100)
    return f"{whole}{f'.{rest:02}'.rstrip('0') if rest else ''} {unit}"
