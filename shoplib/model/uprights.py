"""Bays from left to right: how wide each is planned, and which uprights they lie between."""

from itertools import pairwise

from shoplib.measure import MM, narrowest, share, to_step
from shoplib.measure.traced import named
from shoplib.model.board import Board
from shoplib.model.project import Bay, ImpossibleProject
from shoplib.model.solved import Cabinet

UPRIGHTS = ("side", "divider")
"""The roles of the boards that bays lie between."""

FINE = MM // 20
"""What a shop can neither set nor see: 0.05 mm, some 0.002 in; common practice, no source."""


def bay_widths(inside: int, upright: int, bays: tuple[Bay, ...], step: int) -> tuple[int, ...]:
    """The clear width of each bay, in ticks; with the dividers they fill the inside exactly.

    Equal bays are whole steps; what will not divide goes to the middle (the middle bay, or the two
    middle ones alike), so that a case that is planned the same from both sides comes out so. Where all
    of them would differ from a whole step by less than `FINE`, each takes its part of it, and what goes
    between their uprights is cut alike. A bay of width "rest" takes what the given ones leave.

    Right: n equal bays in a case of outside width W and thickness t are (W - (n+1) t) / n.

    >>> bay_widths(100, 4, (Bay(), Bay(), Bay()), 1)
    (30, 32, 30)
    >>> bay_widths(1_616_000, 4_000, (Bay(), Bay(), Bay(), Bay()), 40_000), 401_000 - 400_000 < FINE
    ((401000, 401000, 401000, 401000), True)
    >>> bay_widths(100, 4, (Bay(width=40), Bay(width="rest")), 1)
    (40, 56)

    Raises ImpossibleProject where the bays leave no room.
    """
    room = inside - (len(bays) - 1) * upright
    given = sum(bay.width for bay in bays if not isinstance(bay.width, str))
    rests = [i for i, bay in enumerate(bays) if bay.width == "rest"]
    equals = [i for i, bay in enumerate(bays) if bay.width == "equal"]
    if len(rests) > 1 or (rests and equals):
        raise ImpossibleProject("bays", 'only one bay may take the "rest", beside bays of given width')
    left = room - given
    if (rests or equals) and left <= 0:
        raise ImpossibleProject("bays", "the given widths and the dividers leave nothing for the other bays")
    if not rests and not equals and left != 0:
        raise ImpossibleProject("bays", 'the given widths do not fill the case; let one bay take the "rest"')
    widths = {i: bay.width for i, bay in enumerate(bays) if not isinstance(bay.width, str)}
    if rests:
        widths[rests[0]] = left
    if equals:
        alike = share(left, len(equals), 1)[0]
        fine = abs(alike - to_step(alike, step)) < FINE
        # A fine part of 4 ticks: what stands in the middle of such a bay, or of its half, is a mirror image still.
        part, over = share(left, len(equals), narrowest([4, step]) if fine else step)
        if part <= 0:
            raise ImpossibleProject("bays", "the equal bays come out narrower than the finest step")
        widths.update(dict.fromkeys(equals, part))
        middle = equals[(len(equals) - 1) // 2 : len(equals) // 2 + 1]
        each, odd = share(over, len(middle), 1)
        for i in middle:
            widths[i] += each
        widths[middle[-1]] += odd
    return tuple(named(widths[i], f"width of bay {i + 1}") for i in range(len(bays)))


def uprights(cabinet: Cabinet) -> list[Board]:
    """Sides and dividers from left to right: bay 1 lies between the first and the second.

    >>> uprights(Cabinet("no boards", (), {}))
    []
    """
    found = [board for board in cabinet.boards if board.role in UPRIGHTS and board.group == "case"]
    return sorted(found, key=lambda board: board.box.low[0])


def bays(cabinet: Cabinet) -> list[tuple[int, int]]:
    """The space between each upright and the next, left to right, as (left, right), in ticks.

    >>> bays(Cabinet("no boards", (), {}))
    []
    """
    standing = uprights(cabinet)
    return [(a.box.high[0], b.box.low[0]) for a, b in pairwise(standing) if a.box.high[0] < b.box.low[0]]
