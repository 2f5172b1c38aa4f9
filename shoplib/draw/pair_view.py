"""The two boards of a joint as solids, together or apart, every part named."""

from collections.abc import Mapping

import numpy as np

from shoplib.draw.hidden import turned_to
from shoplib.draw.parallel import DIRECTIONS, FRONT_RIGHT_ABOVE, Direction
from shoplib.draw.scene import Scene
from shoplib.draw.solid_view import Part, is_seen, solid_view
from shoplib.draw.solids import joined, world_faces
from shoplib.joints.bench_pair import Pair

_WOODS = ("case", "box")
"""Colours of the first two boards of a pair; pins, keys and splines have that of fronts."""


def pair_view(
    pair: Pair, title: str, apart: bool = False, direction: Direction = FRONT_RIGHT_ABOVE,
    called: Mapping[str, str] | None = None,
) -> Scene:
    """The pair as it stands, or its boards drawn apart with the ways along which they come together.

    A part that is a board of its own, such as a spline, is named once.
    `called` are the texts of the parts that are named, by the name of the part; left out, every part has its own name.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> dado = joint("dado").build(stock_of(3 * INCH // 4))
    >>> pair_view(dado, "A dado").alt.split(". ")[0]
    'side and shelf, seen from the front, the right and above'
    >>> pair_view(dado, "A dado, apart", apart=True).alt.split(". ")[0]
    'side and shelf, drawn apart, seen from the front, the right and above'
    """
    woods = dict(zip([board.name for board in pair.boards], _WOODS, strict=False))
    return solid_view(
        pair.boards, title, direction=direction, moved=pair.apart if apart else None,
        woods={board.name: woods.get(board.name, "front") for board in pair.boards},
        parts=[
            Part(name if called is None else called[name], board, point)
            for name, (board, point) in pair.named.items()
            if name not in pair.by_name and (called is None or name in called)
        ],
    )


def telling(pair: Pair, apart: bool = True) -> Direction:
    """The direction from which most named parts of the pair are in sight; of those alike the first of `DIRECTIONS`.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> telling(joint("pocket screws").build(stock_of(3 * INCH // 4))).above
    False
    """
    moved = pair.apart if apart else {}
    faces = joined([world_faces(board, moved.get(board.name, (0, 0, 0))) for board in pair.boards])
    points = [np.array(point) + moved.get(board, (0, 0, 0)) for board, point in pair.named.values()]

    def in_sight(direction: Direction) -> int:
        turned = turned_to(faces, direction)
        return sum(is_seen(point, turned) for point in points)

    return max(DIRECTIONS.values(), key=in_sight)
