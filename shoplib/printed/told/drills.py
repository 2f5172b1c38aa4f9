"""Which drills the screws of a step want: clearance hole and pilot hole, as the hardware page has them."""

from collections.abc import Iterable

from shoplib.buying.screws import BRAD, Need
from shoplib.lists.writing import Writing
from shoplib.measure import narrowest, share, to_step
from shoplib.model.solved import Cabinet
from shoplib.tables.screw_sizes import size_of
from shoplib.words.naming import and_list


def clearance_told(gauges: Iterable[str], cabinet: Cabinet) -> str:
    """The clearance holes of these gauges, such as "11/64 in".

    >>> from shoplib.documents.examples import cabinet_from
    >>> clearance_told(["No. 8"], cabinet_from("under_bench_case"))
    '11/64 in'
    """
    page = Writing(cabinet.style)
    return and_list(list(dict.fromkeys(page.bored(size_of(gauge).clearance) for gauge in gauges)))


def pilot_told(needs: Iterable[Need], cabinet: Cabinet) -> str:
    """The pilot holes of these screws: how wide, and how deep in the second board, 4/9 of the screw or as
    far as it reaches.

    The source of the depth stands with the joint (`data/joints/butt.toml`), of the widths with the gauges. In plywood
    the hole is that for hardwood (common practice, no source).

    >>> from shoplib.buying.screws import planned
    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> pilot_told([need for need in planned(cabinet) if need.use == "toe boards"], cabinet)
    '3/32 in across (in softwood 5/64 in) and 7/8 in deep'
    """
    page, step = Writing(cabinet.style), cabinet.style.step
    told = []
    for gauge, length, passed in dict.fromkeys(
        (need.gauge, need.length, need.passed.thickness) for need in needs if need.head != BRAD
    ):
        size, deep = size_of(gauge), to_step(narrowest([share(4 * length, 9, 1)[0], length - passed]), step)
        told.append(f"{page.bored(size.pilot_hardwood)} across (in softwood {page.bored(size.pilot_softwood)}) and "
                    f"{page.length(deep)} deep")
    return and_list(list(dict.fromkeys(told)))
