"""How far a cutter of a table saw stands out of the table, upright or leaning: deeper it cannot cut."""

from shoplib.measure import INCH, INCH_STYLE, MM, Style, share, write_brief


class CannotReach(ValueError):
    """The cut is deeper than the cutter stands out; the message is one sentence with the amounts."""


def reach_of(diameter: int, style: Style = INCH_STYLE) -> int:
    """How deep a cutter of this diameter cuts at most, in ticks: half of it, less 2 in (50 mm) for flange and table.

    Common practice, no source: saws differ, and the manual of one's own decides.

    >>> reach_of(8 * INCH) == 2 * INCH, reach_of(10 * INCH) == 3 * INCH
    (True, True)
    """
    return share(diameter, 2, 1)[0] - (2 * INCH if style.unit == "in" else 50 * MM)


def refuse_deeper(depth: int, diameter: int, what: str, style: Style = INCH_STYLE) -> None:
    """Raises CannotReach where a cutter of this diameter does not reach so deep; `what` is what it is called.

    >>> refuse_deeper(11 * INCH // 4, 8 * INCH, "a stack")
    Traceback (most recent call last):
    shoplib.model.reach.CannotReach: a stack 8 in across stands about 2 in out of the table at most, and this cut is \
2 3/4 in deep.
    """
    most = reach_of(diameter, style)
    if depth > most:
        raise CannotReach(
            f"{what} {write_brief(diameter, style)} across stands about {write_brief(most, style)} out of the table at "
            f"most, and this cut is {write_brief(depth, style)} deep."
        )
