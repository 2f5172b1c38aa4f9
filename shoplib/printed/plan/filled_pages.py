"""Entries that may be drawn smaller or larger are put on pages: as few as can be, then as large as these let them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shoplib.printed.typeset.blocks import Block


@dataclass(frozen=True, slots=True)
class Way:
    """One way to print an entry: its blocks, and how high they are at most, in mm."""

    high: float
    blocks: tuple[Block, ...]


def on_pages(entries: Iterable[Sequence[Way]], room: float, taken: float = 0.0) -> list[list[Way]]:
    """For each page the entries that stand on it, in order; `room` is its height, `taken` what the first has lost.

    The ways of an entry go from its lowest to its highest. Each page gets as many entries as it holds at their lowest;
    what is then left goes to the lowest ones first.

    >>> low, high = Way(40.0, ()), Way(90.0, ())
    >>> [[way.high for way in page] for page in on_pages([[low, high]] * 4, 140.0, 20.0)]
    [[40.0, 40.0, 40.0], [90.0]]
    >>> [[way.high for way in page] for page in on_pages([[low, high]] * 2, 140.0)]
    [[90.0, 40.0]]
    """
    pages: list[tuple[float, list[Sequence[Way]]]] = [(room - taken, [])]
    for ways in entries:
        left, held = pages[-1]
        if held and sum(each[0].high for each in held) + ways[0].high > left:
            pages.append((room, [ways]))
        else:
            held.append(ways)
    return [_filled(held, left) for left, held in pages]


def _filled(entries: list[Sequence[Way]], room: float) -> list[Way]:
    """The entries of one page, each as high as it gets."""
    at = [0] * len(entries)
    left = room - sum(ways[0].high for ways in entries)
    while True:
        rises = [(entries[n][k].high, entries[n][k + 1].high - entries[n][k].high, n)
                 for n, k in enumerate(at) if k + 1 < len(entries[n])]
        rises = [rise for rise in rises if rise[1] <= left]
        if not rises:
            return [ways[k] for ways, k in zip(entries, at, strict=True)]
        _, more, n = min(rises)
        at[n] += 1
        left -= more
