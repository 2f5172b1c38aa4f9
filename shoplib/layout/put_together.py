"""Sheets of many layouts put together to a cheaper one: by whole numbers, or most of them with the others laid anew.

New sheets are looked for at the prices of the linear program (`columns.py`), one beside the other until no part is
left that pays: sheets that have no part in common lower its cost much faster than many that are alike. Then sheets
that it takes most of are kept, and the beam lays out what they leave, which is little enough to be searched well.
"""

from collections.abc import Callable
from itertools import cycle

import numpy as np

from shoplib.layout.beam import Beam
from shoplib.layout.columns import Columns
from shoplib.layout.grown import Sheet

SWEEPS = {False: 2, True: 12}
"""Times that the parts are laid out on single sheets at the prices, before sheets are put together; more where many
parts are equal, for a few searches then are all that it takes."""

TRIES = 48
"""Choices of sheets that are kept."""

AGAIN = 8
"""Choices after which the linear program is asked again, with the sheets that were found meanwhile."""

RESTS = (2, 3, 4, 5)
"""How many sheets are laid out anew."""

WIDE, NARROW = 96, 64
"""Widths of the beam for single sheets, and for what is laid out anew."""

ALIKE = 12
"""Sheets remembered of one search for a single one."""

ONE_SHEET = ((0.0, 0.1), (0.03, 0.3), (0.1, 0.6))
"""Guides for single sheets (see `Beam._score`): what is left over counts, and little whether much lies there yet."""

GUIDES = ((0.1, 1.0), (0.0, 1.0), (0.1, 1.5))
"""The same for what is laid out anew."""


def put_together(
    beam: Beam, columns: Columns, best: list[Sheet], seed: int, left: Callable[[], float]
) -> list[Sheet] | None:
    """A layout cheaper than the best one, or None where none is found or the seconds that are `left` are over."""
    for turn in range(SWEEPS[beam.repeats]):
        _sweep(beam, columns, SWEEPS[beam.repeats] * seed + turn, left)
    if left() <= 0:
        return None
    return columns.whole(beam.grown.cost_of(best) - 1, min(1.0, left())) or _laid_anew(beam, columns, best, seed, left)


def _sweep(beam: Beam, columns: Columns, seed: int, left: Callable[[], float]) -> None:
    """Sheets that are worth more than they cost, one beside the other."""
    prices, kept, rest = columns.prices()[1], [], beam.grown.count.copy()
    guide = ONE_SHEET[seed % len(ONE_SHEET)]
    while left() > 0:
        found = beam.price(WIDE, guide, prices, ALIKE, seed + len(kept), kept)
        if not found:
            return
        columns.add_all(found)
        # The best one as often as its parts go: where many are equal, that is how they will be cut.
        holds = np.bincount([lie.kind for lie in found[0].lies], minlength=len(rest))
        often = int((rest[holds > 0] // holds[holds > 0]).min())
        rest -= often * holds
        kept += [found[0]] * often


def _laid_anew(
    beam: Beam, columns: Columns, best: list[Sheet], seed: int, left: Callable[[], float]
) -> list[Sheet] | None:
    """A layout of which the linear program chose most sheets, and the beam laid the others out."""
    most = beam.grown.cost_of(best) - 1
    chance = np.random.default_rng(seed)
    for turn, sheets, guide in zip(range(TRIES), cycle(RESTS), cycle(GUIDES), strict=False):
        if left() <= 0:
            return None
        if turn % AGAIN == 0:
            columns.add_all(beam.closed_sheets())
            columns.prices()
        kept = columns.likely(most - sheets * most // len(best), chance)
        if not kept:
            continue
        beam.shake(turn)
        found = beam.run(NARROW, guide, most, lambda: left() <= 0, kept)
        if found:
            return found[0]
    return None
