"""What drawers and pull-outs run on: bought slides, and runners and kickers of wood, with their heights."""

from dataclasses import dataclass

from shoplib.model.box import Box
from shoplib.model.solved import Cabinet

_NOT_BOUGHT = ("runner", "kicker")
"""Boards that a drawer runs on."""


@dataclass(frozen=True, slots=True)
class Riding:
    """One slide or runner: what it is, on which board of the case, of which drawer, and where it lies (world)."""

    what: str
    on: str
    group: str
    box: Box


def riding(cabinet: Cabinet) -> list[Riding]:
    """Everything that drawers and pull-outs run on: bought slides, and runners and kickers of wood.

    >>> riding(Cabinet("no boards", (), {}))
    []
    """
    found = [Riding(h.row or h.what, h.on, h.group, h.box) for h in cabinet.hardware if h.what == "slide"]
    return found + _of_wood(cabinet)


def _of_wood(cabinet: Cabinet) -> list[Riding]:
    receives = {joint.enters: joint.receives for joint in cabinet.joints}
    return [
        Riding(f"wood {board.role}", receives.get(board.name, ""), _drawer_of(board.name, cabinet), board.box)
        for board in cabinet.boards if board.role in _NOT_BOUGHT
    ]


def _drawer_of(name: str, cabinet: Cabinet) -> str:
    """The drawer that a runner, which is part of the case, is named after."""
    return max((group for group in cabinet.groups if name.startswith(f"{group} ")), key=len, default="case")


def heights(cabinet: Cabinet) -> tuple[tuple[str, int], ...]:
    """What each spacer is for, and its height: of the slides as the plan has them, then of what is made of wood.

    A drawer's left and right runner lie at one height and are told once; one of 0 lies on the bottom itself.

    >>> heights(Cabinet("no boards", (), {}))
    ()
    """
    wood = {
        f"{item.group}: under the {item.what}, above the bottom": item.box.low[2] - floor_under(cabinet, item.box)
        for item in _of_wood(cabinet)
    }
    return (*cabinet.spacers, *wood.items())


def lies_on_bottom(cabinet: Cabinet) -> bool:
    """Whether a slide or runner lies on the bottom of the case, with no room for a spacer under it.

    >>> lies_on_bottom(Cabinet("no boards", (), {}))
    False
    """
    return any(item.box.low[2] == floor_under(cabinet, item.box) for item in riding(cabinet))


def floor_under(cabinet: Cabinet, box: Box) -> int:
    """The upper face of the bottom of the case under a fitting.

    >>> floor_under(Cabinet("no boards", (), {}), Box((0, 0, 5), (1, 1, 6)))
    0
    """
    under = [b.box.high[2] for b in cabinet.boards if b.role == "bottom" and b.box.high[2] <= box.low[2]]
    return max(under, default=0)
