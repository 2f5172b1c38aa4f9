"""Workings of sizes that a panel's own function gave, where no project is solved: by the name each carries."""

from collections.abc import Callable, Iterable, Mapping

from shoplib.draw.scene import Chain, Scene
from shoplib.measure import Style
from shoplib.words.working import working

Sizes = Mapping[str, tuple[str, int]]
"""By the name of a table's cell or a drawing's dimension: what the size is called, and the size with its working."""


def dimensions(scene: Scene, number: int, sizes: Iterable[tuple[str, int]]) -> Sizes:
    """The sizes by the names of the dimensions that the drawing of that `number` shows, in their order.

    For drawings that leave a run out, or draw something larger: their own coordinates do not tell the sizes.

    >>> scene = Scene("A board", "", "", (0, 0, 9, 9), (Chain("below", 0, (0, 4, 9), ("12", "")),))
    >>> dimensions(scene, 0, [("board", 12)])
    {'drawing/0/0.0': ('board', 12)}
    """
    names = [
        f"drawing/{number}/{item}.{k}"
        for item, chain in enumerate(scene.items) if isinstance(chain, Chain)
        for k, text in enumerate(chain.texts) if text
    ]
    return dict(zip(names, sizes, strict=True))


def why_of(sizes: Callable[[], Sizes], style: Style) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for a panel: `sizes` works all of them out anew, on numbers that carry their names.

    It is called only when a size is picked.

    >>> from shoplib.measure import INCH, INCH_STYLE, share
    >>> from shoplib.measure.traced import leaf
    >>> why = why_of(lambda: {"table/0/1": ("half", share(leaf(5 * INCH, "the reading"), 2, 1)[0])}, INCH_STYLE)
    >>> why("table/0/1")
    ('half 2 1/2 in = half of the reading 5 in',)
    """

    def explain(name: str) -> tuple[str, ...]:
        called, size = sizes()[name]
        return working(size, called, style)

    return explain
