"""How a thickness is asked for: a yard that deals in inches may still name a thin sheet or a band in millimetres."""

from shoplib.buying.board_measure import quarters
from shoplib.lists.writing import Writing
from shoplib.measure import MM, Style, write_brief, write_mm


def thick_words(ticks: int, style: Style) -> str:
    """A mark of the rule as such, and what is none but whole tenths of a millimetre in these.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> [thick_words(ticks, INCH_STYLE) for ticks in (23 * INCH // 32, 52 * MM // 10, INCH // 50)]
    ['23/32 in', '5.2 mm', '0.02 in']
    """
    named = style.unit == "in" and ticks % style.step and ticks % (MM // 10) == 0
    return f"{write_mm(ticks)} mm" if named else Writing(style).setting(ticks)


def rough_words(rough: int, style: Style) -> str:
    """How thick a rough board is, as the yard says it.

    >>> from shoplib.measure import INCH, INCH_STYLE, MM_STYLE
    >>> rough_words(INCH, INCH_STYLE), rough_words(24 * MM, MM_STYLE)
    ('4/4 rough', '24 mm rough')
    """
    return f"{quarters(rough) if style.unit == 'in' else write_brief(rough, style)} rough"
