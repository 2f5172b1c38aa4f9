"""Wood that must stay beside a cut: one sentence with what is left, what must stay and what is missing."""

from shoplib.measure import MM, Style, to_step, write_brief
from shoplib.model.board import LEAST_WOOD


def at_least(ticks: int, style: Style) -> str:
    """What must be there, or is missing: up to a whole step, for so much is enough.

    >>> at_least(5 * MM // 4, Style("mm", MM // 2))
    '1.5 mm'
    """
    return write_brief(to_step(ticks, style.step, "up"), style)


def at_most(ticks: int, style: Style) -> str:
    """What is there: down to a whole step, for so much is sure; a decimal where it is under one step.

    >>> at_most(5 * MM // 4, Style("mm", MM // 2))
    '1 mm'
    """
    return write_brief(to_step(ticks, style.step, "down") or ticks, style)


def missing_wood(what: str, left: int, style: Style, least: int = LEAST_WOOD) -> tuple[str, int] | None:
    """The sentence and how much is missing, or None where enough wood is left; all in ticks.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> missing_wood("under the dado", INCH // 16, INCH_STYLE, INCH // 8)[0]
    'only 1/16 in of wood is left under the dado, and 1/8 in must stay: 1/16 in is missing'
    """
    if left >= least:
        return None
    short = least - left
    is_left = f"only {at_most(left, style)} of wood is left" if left > 0 else "no wood is left"
    must = f", and {at_least(least, style)} must stay" if least >= MM else ""
    return f"{is_left} {what}{must}: {at_least(short, style)} is missing", short
