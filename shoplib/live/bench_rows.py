"""What the joint bench tells of a pair in numbers: what is gained, and the cuts of each board with their sizes."""

from itertools import pairwise, product

from shoplib.joints.bench_pair import JointKind, Pair
from shoplib.lists.cut_words import channel_ways
from shoplib.live.joint_rows import Row
from shoplib.measure import Style, narrowest, thickest
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.words.naming import plural

_HOLES = ("clearance", "pilot")
"""Holes that are called by what they are for."""


def bench_rows(kind: JointKind, pair: Pair) -> tuple[Row, ...]:
    """A row for what the entering board gains, and for every size of every cut; equal cuts are told once.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> dado = joint("dado")
    >>> for row in bench_rows(dado, dado.build(stock_of(3 * INCH // 4))):
    ...     print(row.what, row.text(INCH_STYLE))
    shelf gains at this end 1/4 in
    dado in the side, width 0.752 in
    dado in the side, depth 1/4 in
    dado in the side, wood left under it 1/2 in
    """
    gain = kind.allowance(pair.stock, pair.values)
    found = [Row(f"{pair.joints[0].enters} gains at this end", gain)] if gain else []
    found += [Row(what, ticks) for what, ticks in kind.beside(pair.stock, pair.values)]
    for board in pair.boards:
        alike: dict[tuple, list[Cut]] = {}
        for cut in board.cuts:
            alike.setdefault((cut.kind, _sizes(board, cut)), []).append(cut)
        for (cut_kind, sizes), cuts in alike.items():
            called = f"{cut_kind} hole" if cut_kind in _HOLES else cut_kind
            many = f"{len(cuts)} {plural(called)}" if len(cuts) > 1 else called
            found += [Row(f"{many} in the {board.name}, {what}", ticks) for what, ticks in sizes]
    return tuple(found)


def bench_says(kind: JointKind, pair: Pair, style: Style) -> str:
    """The joint in one sentence, for the line above its picture.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> dado = joint("dado")
    >>> bench_says(dado, dado.build(stock_of(3 * INCH // 4)), INCH_STYLE)
    'The shelf gains 1/4 in at this end; dado in the side, 0.752 in wide and 1/4 in deep.'
    """
    gain = kind.allowance(pair.stock, pair.values)
    enters = pair.joints[0].enters
    gains = f"The {enters} gains {Row('', gain).text(style)} at this end" if gain else f"The {enters} gains nothing"
    for board in pair.boards:
        for cut in board.cuts:
            sizes = dict(_sizes(board, cut))
            if "width" in sizes:
                wide, deep = (Row("", sizes[what]).text(style) for what in ("width", "depth"))
                return f"{gains}; {cut.kind} in the {board.name}, {wide} wide and {deep} deep."
    return f"{gains}."


def _sizes(board: Board, cut: Cut) -> tuple[tuple[str, int], ...]:
    """What is set for one cut, each size after what it is called; a slanting cut is set by its settings alone."""
    if isinstance(cut, Hole):
        return (("across", cut.diameter), ("depth", cut.depth))
    if not isinstance(cut, BoxCut):
        return ()
    extent = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
    ways = channel_ways(cut, board)
    if ways is None:
        return (("along the length", extent[0]), ("across", extent[1]))
    deep, wide, _ = ways
    sizes = (("width", extent[wide]), ("depth", extent[deep]))
    return (*sizes, ("wood left under it", _left_under(board, cut))) if deep == 2 else sizes


def _left_under(board: Board, cut: BoxCut) -> int:
    """The least wood that all cuts together leave in the thickness where this one goes, beside what is cut through."""
    cuts = [other for other in board.cuts if isinstance(other, BoxCut)]
    edges = [
        sorted({cut.low[k], cut.high[k]} | {end for other in cuts for end in (other.low[k], other.high[k])
                                            if cut.low[k] < end < cut.high[k]})
        for k in (0, 1)
    ]
    left = [_wood(board, [other for other in cuts if all(
        other.low[k] <= low and high <= other.high[k] for k, (low, high) in enumerate(patch))])
        for patch in product(*(pairwise(ends) for ends in edges))]
    return narrowest([wood for wood in left if wood > 0])


def _wood(board: Board, cuts: list[BoxCut]) -> int:
    """What cuts over one place leave in the thickness; what two of them take is counted once."""
    left, taken_to = board.thickness, 0
    for cut in sorted(cuts, key=lambda one: one.low[2]):
        begins = thickest([cut.low[2], taken_to])
        if cut.high[2] > begins:
            left, taken_to = left - (cut.high[2] - begins), cut.high[2]
    return left
