"""What the leftovers of a stage are wanted for: stages that are still to come, and parts that are spoiled."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

from shoplib.buying.jobs import Ask, Held, Offered, usable_again
from shoplib.layout.looks import by_looks
from shoplib.layout.offcuts import Least
from shoplib.layout.pieces import Job, Laid, LayoutError, Part, Rect
from shoplib.layout.sawn import Sawn
from shoplib.layout.search import layouts
from shoplib.layout.spare import rank_of_spare, spare

QUICK = 0.06
"""Seconds to find what later stages would cost to buy: mostly the first layouts say it."""

TOO_DEAR = 10**18
"""Stands for what later stages cost where no way was found to lay them out."""


def together(asks: Iterable[Ask]) -> Ask:
    """Several stages of a sheet asked at once."""
    first, *more = asks
    return replace(
        first,
        stages=(*first.stages, *(stage for ask in more for stage in ask.stages)),
        parts=(*first.parts, *(part for ask in more for part in ask.parts)),
        boards=(*first.boards, *(boards for ask in more for boards in ask.boards)),
        letters=(*first.letters, *(letter for ask in more for letter in ask.letters)),
    )


def cheapest_of(job: Job, seconds: float) -> int:
    """The cost of the best layout that is found in about this time; `TOO_DEAR` where none is.

    The same job costs the same each time.

    >>> from shoplib.layout.pieces import Stock
    >>> cheapest_of(Job((Part("back", 60, 30, 4),), (Stock("ply", 100, 70, cost=3),)), 0.1)
    6
    """
    cost = TOO_DEAR
    try:
        for layout in layouts(job, seconds, by_looks()):
            cost = layout.cost
    except LayoutError:
        return TOO_DEAR
    return cost


LeftAfter = Callable[[Sequence[Laid], Sequence[Sawn]], tuple[Held, ...]]
"""What lies in the shop once these sheets are cut so."""


def left_by(on: Offered, held: tuple[Held, ...], least: Least, left_after: Callable) -> LeftAfter:
    """How the leftovers of sheets laid out on `on` are found; `held` lay in the shop before."""

    def left(sheets: Sequence[Laid], cuts: Sequence[Sawn]) -> tuple[Held, ...]:
        lying = [iter(pieces) for pieces in on.held]
        cut = [(next(lying[laid.stock], None), "", done.offcuts) for laid, done in zip(sheets, cuts, strict=True)]
        return usable_again(left_after(held, cut, least))

    return left


def spare_rank(parts: Sequence[Part], kerf: int, left: LeftAfter) -> Callable:
    """How well each of these parts could be made again from what is left, as a rank: less is better."""
    job = Job(tuple(parts), (), kerf)

    def rank(sheets: Sequence[Laid], cuts: Sequence[Sawn]) -> tuple[int, ...]:
        rooms: list[Rect] = [one.usable for one in left(sheets, cuts)]
        return rank_of_spare(spare(job, rooms))

    return rank


def later_cost(job_on: Callable[[tuple[Held, ...]], Job], left: LeftAfter) -> Callable:
    """What the stages to come would cost to buy; `job_on` says what they are on these leftovers."""
    known: dict[tuple, int] = {}

    def cost(sheets: Sequence[Laid], cuts: Sequence[Sawn]) -> int:
        held = left(sheets, cuts)
        key = tuple(sorted((one.length, one.width, one.trim_ends, one.trim_edges) for one in held))
        if key not in known:
            known[key] = cheapest_of(job_on(held), QUICK)
        return known[key]

    return cost
