"""Wood that must stay beside a cut: one sentence with what is left, what must stay and what is missing."""

from shoplib.measure import MM, Style, to_step, write_brief
from shoplib.model.board import LEAST_WOOD


def at_least(ticks: int, style: Style) -> str:
    """What must be there, or is missing: up to a whole step, for so much is enough.

    >>> at_least(5 * MM // 4, Style("mm", MM // 2))
    '1.5 mm'
    """
    return write_brief(to_step(ticks, style.step, "up"), style)


def missing_wood(what: str, left: int, style: Style, least: int = LEAST_WOOD) -> tuple[str, int] | None:
    """The sentence and how much is missing, or None where enough wood is left; all in ticks.

    As it is told, what is left and what is missing are together what must stay; the amount beside it is exact.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> missing_wood("under the dado", INCH // 16, INCH_STYLE, INCH // 8)[0]
    'only 1/16 in of wood is left under the dado, and 1/8 in must stay: 1/16 in is missing'
    >>> missing_wood("under the dado", INCH // 100, INCH_STYLE, INCH // 8)[0]
    'less than 1/64 in of wood is left under the dado, and 1/8 in must stay: 1/8 in is missing'
    """
    if left >= least:
        return None
    sure, short = to_step(left, style.step, "down"), least - left
    if sure > 0:
        is_left = f"only {write_brief(sure, style)} of wood is left"
    else:
        is_left = f"less than {write_brief(style.step, style)} of wood is left" if left > 0 else "no wood is left"
    if least < MM:
        return f"{is_left} {what}: {at_least(short, style)} is missing", short
    missing = to_step(least, style.step, "up") - sure
    return f"{is_left} {what}, and {at_least(least, style)} must stay: {write_brief(missing, style)} is missing", short
