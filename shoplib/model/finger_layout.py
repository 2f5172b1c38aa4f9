"""Where the fingers of a finger joint lie: equal ones from edge to edge of two boards, one board's and the other's."""

from dataclasses import dataclass
from itertools import pairwise

from shoplib.measure import Style, share, to_step, write_brief
from shoplib.model.wood_kept import missing_wood

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Fingers:
    """Fingers from the edge at 0 to the other: `own` are those of the board that has both edges of an odd count.

    `sockets` is the room between them for the `mate` board's fingers, wider by the fit, half of it to either side.
    """

    own: tuple[Span, ...]
    mate: tuple[Span, ...]
    sockets: tuple[Span, ...]


def closing(width: int, step: int) -> list[int]:
    """The widths of finger, in whole steps, of which three or more fill this width; rising.

    >>> closing(90, 5)
    [5, 10, 15, 30]
    """
    most, _ = share(width, step, 1)
    shared = (share(width, count, 1) for count in range(3, most + 1))
    return sorted({size for size, over in shared if size % step == 0 and over == 0})


def usual_finger(width: int, thickness: int, step: int) -> int:
    """The width of finger that an odd count of equal ones leaves, nearest to three quarters of the thickness.

    >>> usual_finger(90, 20, 1)  # seven, where six of 15 would be an even count
    12
    """
    near = to_step(share(3 * thickness, 4, 1)[0], step)
    pairs = share(width, 2 * near, 1)[0] if near else 0
    return share(width, 2 * (pairs or 1) + 1, 1)[0]


def why_not(width: int, finger: int, fit: int, style: Style) -> tuple[str, int] | None:
    """Why such fingers cannot stand on boards of this width, in one sentence, and by how much; None where they can.

    They must be 3 mm thick after the fit, three of them at least, and fill the width: a rest under a tick a finger,
    from a width that was shared, is none.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> why_not(5 * INCH, INCH, 0, INCH_STYLE), why_not(9 * INCH // 2, INCH, 0, INCH_STYLE)[1] == INCH // 2
    (None, True)
    """
    thin = missing_wood("as a finger", finger - fit, style)
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
    Fingers(own=((0, 10), (20, 30)), mate=((10, 20),), sockets=((9, 21),))
    """
    places = list(pairwise(boundaries(width, finger)))
    near = share(fit, 2, 1)[0]
    far = fit - near
    sockets = tuple((low - near, high if high == width else high + far) for low, high in places[1::2])
    return Fingers(tuple(places[::2]), tuple(places[1::2]), sockets)
