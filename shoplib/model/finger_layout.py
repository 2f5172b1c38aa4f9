"""Where the fingers of a finger joint lie: equal ones from edge to edge of two boards, one board's and the other's."""

from dataclasses import dataclass
from itertools import pairwise

from shoplib.measure import INCH, MM, Style, share, to_step, write_brief
from shoplib.model.wood_kept import missing_wood

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Fingers:
    """Where fingers lie, from the edge at 0 to the other: `own` of the board that has both edges of an odd count.

    One cutter makes all sockets, those of the own board for the `mate` and the mate's for the own one: each begins on a
    whole number of fingers and is half of the fit wider than one, so that the other half is taken off the fingers. Only
    the last socket, which runs out of the edge, ends with the board.
    """

    own: tuple[Span, ...]
    mate: tuple[Span, ...]
    sockets: tuple[Span, ...]
    mate_sockets: tuple[Span, ...]


def closing(width: int, step: int) -> list[int]:
    """The widths of finger, in whole steps, of which three or more fill this width; rising.

    >>> closing(90, 5)
    [5, 10, 15, 30]
    """
    most, _ = share(width, step, 1)
    shared = (share(width, count, 1) for count in range(3, most + 1))
    return sorted({size for size, over in shared if size % step == 0 and over == 0})


def usual_finger(width: int, thickness: int, style: Style) -> int:
    """The cutter, half to all of the thickness wide, whose fingers close on the width; where none does, a share.

    A cutter is a whole sixteenth or millimetre wide. Of several the one with an odd count is taken, so that both edges
    look alike, and nearest to three quarters of the thickness. Where no cutter closes, an odd count shares the width,
    and a stack is shimmed to it.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> usual_finger(45 * INCH // 8, INCH // 2, INCH_STYLE) == 3 * INCH // 8  # fifteen
    True
    """
    cutter = natural_cutter(style)
    near = share(3 * thickness, 4, 1)[0]
    closing_cutters = []
    for count in range(3, share(2 * width, thickness, 1)[0] + 1):
        size, over = share(width, count, 1)
        if not over and not share(size, cutter, 1)[1] and size <= thickness <= 2 * size:
            closing_cutters.append((count % 2 == 0, abs(size - near), count))
    if closing_cutters:
        return share(width, sorted(closing_cutters)[0][2], 1)[0]
    near = to_step(near, style.step)
    pairs = share(width, 2 * near, 1)[0] if near else 0
    return share(width, 2 * (pairs or 1) + 1, 1)[0]


def natural_cutter(style: Style) -> int:
    """What cutters differ by: 1/16 in or 1 mm (common practice, no source).

    >>> from shoplib.measure import MM_STYLE
    >>> natural_cutter(MM_STYLE) == MM
    True
    """
    return INCH // 16 if style.unit == "in" else MM


def why_not(width: int, finger: int, fit: int, style: Style) -> tuple[str, int] | None:
    """Why such fingers cannot stand on boards of this width, in one sentence, and by how much; None where they can.

    They must be 3 mm thick after the fit, three of them at least, and fill the width: a rest under a tick a finger,
    from a width that was shared, is none.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> why_not(5 * INCH, INCH, 0, INCH_STYLE), why_not(9 * INCH // 2, INCH, 0, INCH_STYLE)[1] == INCH // 2
    (None, True)
    """
    thin = missing_wood("as a finger", finger - share(fit, 2, 1)[0], style)
    if thin:
        return thin
    if width < 3 * finger:
        three, wide = write_brief(3 * finger, style), write_brief(width, style)
        over = write_brief(3 * finger - width, style)
        return f"three fingers take {three}, and the boards are {wide} wide: {over} is missing", 3 * finger - width
    count, over = share(width, finger, 1)
    if over < count:
        return None
    hundredths = to_step(width * 100, finger) // finger
    return (
        f"{write_brief(width, style)} is {hundredths // 100}.{hundredths % 100:02} fingers of "
        f"{write_brief(finger, style)}: {count} of them leave {write_brief(over, style)}. Make the boards that much "
        "narrower, or choose a finger that closes",
        over,
    )


def boundaries(width: int, finger: int) -> list[int]:
    """Where fingers meet, from edge to edge: one more than there are fingers.

    >>> boundaries(30, 10)
    [0, 10, 20, 30]
    """
    count, _ = share(width, finger, 1)
    return [at * finger for at in range(count)] + [width]


def fingers(width: int, finger: int, fit: int) -> Fingers:
    """The fingers of both boards; the layout closes on the width, whose last finger takes the ticks left over.

    >>> fingers(30, 10, 2)
    Fingers(own=((0, 10), (20, 30)), mate=((10, 20),), sockets=((10, 21),), mate_sockets=((0, 11), (20, 30)))
    """
    places = list(pairwise(boundaries(width, finger)))
    wider = share(fit, 2, 1)[0]
    cut = tuple((low, high if high == width else high + wider) for low, high in places)
    return Fingers(tuple(places[::2]), tuple(places[1::2]), cut[1::2], cut[::2])
