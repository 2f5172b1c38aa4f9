"""What could be made again from what is left: asked before anything is bought, for parts are spoiled now and then."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from operator import attrgetter

from shoplib.layout.pieces import Job, Layout, Part, Rect


@dataclass(frozen=True, slots=True)
class Spare:
    """What the leftovers hold. `again` says of each part how often, at least, it could be cut from them by itself.

    `largest` counts in the parts of the job. `longest` is how long, in ticks along the grain, a piece as wide as that
    part comes out of the leftovers; 0 where none is so wide.
    """

    largest: int
    again: tuple[int, ...]
    longest: int

    @property
    def lost(self) -> tuple[int, ...]:
        """The parts that could not be replaced, counted in the job."""
        return tuple(n for n, number in enumerate(self.again) if number == 0)


def spare(job: Job, left: Iterable[Rect]) -> Spare:
    """What the pieces that are left (offcuts, and stock in the shop that is not used) hold.

    >>> job = Job((Part("top", 50, 20), Part("shelf", 30, 20, 4)), ())
    >>> found = spare(job, [Rect(0, 0, 45, 41), Rect(0, 0, 60, 5)])
    >>> found.again, found.lost, found.longest
    ((0, 2), (0,), 45)
    """
    pieces = tuple(left)
    largest = max(range(len(job.parts)), key=lambda n: (job.parts[n].length * job.parts[n].width, -n))
    part = job.parts[largest]
    lengths = [piece.w for piece in pieces if piece.h >= part.width]
    if part.may_turn:
        lengths += [piece.h for piece in pieces if piece.w >= part.width]
    again = tuple(sum(copies(part, piece, job.kerf) for piece in pieces) for part in job.parts)
    return Spare(largest, again, max(lengths, default=0))


def unused(job: Job, layout: Layout) -> tuple[Rect, ...]:
    """The stock in the shop, which costs nothing, that no part lies on: its trimmed size, for each piece.

    >>> from shoplib.layout.pieces import Stock
    >>> shop = Stock("offcut", 60, 30, count=2, trim_ends=1)
    >>> unused(Job((), (shop, Stock("ply", 100, 50, cost=9))), Layout((), 0, 0))
    (Rect(x=1, y=0, w=58, h=30), Rect(x=1, y=0, w=58, h=30))
    """
    used = [laid.stock for laid in layout.sheets]
    return tuple(
        stock.usable
        for n, stock in enumerate(job.stock)
        if stock.count is not None and stock.cost == 0
        for _ in range(stock.count - used.count(n))
    )


def copies(part: Part, piece: Rect, kerf: int) -> int:
    """How many of a part come out of a piece by cuts from edge to edge: at least so many where it may turn.

    n = (S + k) / (w + k), rounded down, in each direction: the last part needs no blade behind it.

    >>> copies(Part("side", 10, 4), Rect(0, 0, 32, 9), 1), copies(Part("side", 10, 4, 1, True), Rect(0, 0, 14, 10), 0)
    (6, 3)
    """
    x, y, long, wide = piece.w + kerf, piece.h + kerf, part.length + kerf, part.width + kerf
    if not part.may_turn:
        return (x // long) * (y // wide)
    return max(
        _with_turned(*ends, *sizes)
        for ends in ((x, y), (y, x))
        for sizes in ((long, wide), (wide, long))
    )  # fmt: skip


def _with_turned(x: int, y: int, w: int, h: int) -> int:
    """Columns of parts w x h first, turned ones in what is left beside and above them; all grown by the blade."""
    rows = y // h
    if not rows:
        return (x // h) * (y // w)
    return max(
        columns * rows + ((x - columns * w) // h) * (y // w) + (columns * w // h) * ((y - rows * h) // w)
        for columns in range(x // w + 1)
    )


def one_more(job: Job, left: Sequence[Rect]) -> tuple[int, Spare] | None:
    """One more sheet of those that can be bought, and what could be made again with it; None where none can be.

    It is the one with which the fewest parts are lost; of those the cheapest.

    >>> from shoplib.layout.pieces import Stock
    >>> job = Job((Part("top", 50, 20),), (Stock("half", 40, 50, cost=1), Stock("full", 104, 50, cost=2)), 2)
    >>> number, found = one_more(job, [])
    >>> job.stock[number].name, found.again
    ('full', (4,))
    """
    tried = [(n, spare(job, [*left, one.usable])) for n, one in enumerate(job.stock) if one.count is None]
    return min(tried, key=lambda more: (len(more[1].lost), job.stock[more[0]].cost), default=None)


def most_spare(found: Sequence[Spare]) -> int:
    """Which of several layouts of a job leaves the most to make parts again from: the fewest lost, then the largest
    part the most often, then the longest piece as wide as that. Counts from 0.

    >>> most_spare([Spare(0, (0, 3), 40), Spare(0, (0, 2), 45), Spare(0, (0, 0), 49)])
    1
    """
    return min(range(len(found)), key=lambda n: (*rank_of_spare(found[n]), n))


def rank_of_spare(found: Spare) -> tuple[int, ...]:
    """How much a layout leaves to make parts again from, less being better: see `most_spare`.

    >>> rank_of_spare(Spare(0, (0, 3), 40))
    (1, 0, -40)
    """
    return len(found.lost), -found.again[found.largest], -found.longest


def told(
    job: Job,
    found: Spare,
    say: Callable[[int], str],
    more: tuple[int, Spare] | None = None,
    other: Spare | None = None,
    noun: str = "sheet",
) -> tuple[str, ...]:
    """What is left for parts that are spoiled, in sentences; `say` writes a length, `noun` is what the stock is called.

    `more` is what one more sheet would change (`one_more`), `other` what another layout of the same cost leaves.

    >>> from shoplib.layout.pieces import Stock
    >>> job = Job((Part("top", 50, 20), Part("shelf", 30, 20, 4)), (Stock("ply", 104, 50),), 2)
    >>> left = [Rect(0, 0, 45, 41)]
    >>> first, *rest = told(job, spare(job, left), str, one_more(job, left))
    >>> first.partition(": ")[2]
    'of the pieces that are wide enough the longest is 45 long.'
    >>> print(*rest, sep=chr(10))
    Could not be made again from what is left: top.
    With one more sheet of ply, 104 x 50, any one part could be made again; the largest, top, 4 times.
    """
    part = job.parts[found.largest]
    name = f"{part.name} ({say(part.length)} x {say(part.width)})"
    number = found.again[found.largest]
    if number:
        lines = [f"The largest part, {name}, could be made again {_times(number)} from what is left."]
    else:
        longest = "no piece is so wide"
        if found.longest:
            longest = f"of the pieces that are wide enough the longest is {say(found.longest)} long"
        lines = [f"The largest part, {name}, could not be made again from what is left: {longest}."]
    lines.append(
        f"Could not be made again from what is left: {_names(job, found.lost)}."
        if found.lost
        else "Any one part could be made again from what is left."
    )
    if more is not None and found.lost:
        lines.append(told_more(job, found, more, say, noun))
    # What is better by a longer rest alone changes nothing that is told here.
    if other is not None and _better(other, found) and _then(job, other) != _then(job, found):
        lines.append(f"With another layout of the same cost, {_then(job, other)}.")
    return tuple(lines)


def told_more(
    job: Job, found: Spare, more: tuple[int, Spare], say: Callable[[int], str], noun: str = "sheet",
) -> str:
    """What one more sheet (`one_more`) would change for the parts that are lost in `found`, as a sentence.

    One more is the best there is: where as many are lost with it, none of them comes out of any that can be bought.

    >>> from shoplib.layout.pieces import Stock
    >>> job = Job((Part("top", 50, 20),), (Stock("ply", 40, 50),), 2)
    >>> told_more(job, spare(job, []), one_more(job, []), str)
    'One more sheet of ply would not help: each that can be bought is too small for top.'
    """
    stock = job.stock[more[0]]
    if len(more[1].lost) == len(found.lost):
        names = _names(job, found.lost)
        return f"One more {noun} of {stock.name} would not help: each that can be bought is too small for {names}."
    sheet = f"With one more {noun} of {stock.name}, {say(stock.length)} x {say(stock.width)},"
    return f"{sheet} {_then(job, more[1])}."


def _then(job: Job, found: Spare) -> str:
    number = found.again[found.largest]
    largest = f"; the largest, {job.parts[found.largest].name}, {_times(number)}" if number else ""
    if found.lost:
        return f"any one part but {_names(job, found.lost)} could be made again{largest}"
    return f"any one part could be made again{largest if number > 1 else ''}"


def _better(other: Spare, found: Spare) -> bool:
    return most_spare([found, other]) == 1


def _names(job: Job, parts: Iterable[int]) -> str:
    names = list(dict.fromkeys(map(attrgetter("name"), (job.parts[n] for n in parts))))
    if any(" and " in name for name in names):  # such as "left side and right side", which is one kind of part
        return "; ".join(names)
    return ", ".join([*names[:-2], " and ".join(names[-2:])])


def _times(number: int) -> str:
    return {1: "once", 2: "twice"}.get(number, f"{number} times")
