"""With which spacers the fronts of a cabinet are set: those that it has gaps for."""

from shoplib.building.gaps import open_gaps
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list

_WHERE = {"z": "two under each where a gap lies under it", "x": "one at each side that has a gap"}


def spacers_set(cabinet: Cabinet) -> str:
    """Where the spacers of the gaps stand while fronts are set, from the bottom up; "" where no gap is open.

    An overlay front may have a gap above or below it and none beside it.

    >>> from shoplib.documents.examples import cabinet_from
    >>> spacers_set(cabinet_from("under_bench_case"))
    'two under each where a gap lies under it and one at each side that has a gap'
    """
    ways = {gap.along for gap in open_gaps(cabinet) if gap.size > 0}
    return and_list([words for way, words in _WHERE.items() if way in ways])
