"""The cuts of a pair from the joint bench, made again in a board of something larger."""

from collections.abc import Callable, Mapping

from shoplib.joints.bench_pair import Pair
from shoplib.joints.draft import Draft
from shoplib.model.board import BoxCut
from shoplib.model.box import Box

Place = Callable[[Box], Box]
"""Where a place of the bench's pair lies in the larger thing."""


def cut_like(pair: Pair, board: str, draft: Draft, place: Place, names: Mapping[str, str]) -> None:
    """Make every cut that `board` of the pair has in `draft`, at its place; `names` says who is who there.

    Raises TypeError for a pair with holes or slanting cuts: those are not moved so.
    """
    for cut in pair.by_name[board].cuts:
        if not isinstance(cut, BoxCut):
            raise TypeError(f"only box cuts are made again elsewhere, and a {pair.kind} has a {type(cut).__name__}.")
        room = pair.by_name[board].placement.to_world(cut.box)
        draft.take(cut.kind, place(room), names.get(cut.for_board, ""))
