"""What drawers and pull-outs run on: bought slides, and runners and kickers of wood, with their heights."""

from dataclasses import dataclass

from shoplib.building.datum import datum
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet, SlideHeight

_NOT_BOUGHT = ("runner", "kicker")
"""Boards that a drawer runs on."""


@dataclass(frozen=True, slots=True)
class Riding:
    """One slide or runner: its `part` ("slide", "runner" or "kicker") and what it is called, on which board of the
    case, of which drawer, and where it lies (world).

    `bought` is a slide with holes of its own; the others are boards of the project.
    """

    part: str
    what: str
    on: str
    group: str
    box: Box
    bought: bool


def riding(cabinet: Cabinet) -> list[Riding]:
    """Everything that drawers and pull-outs run on: bought slides, and runners and kickers of wood.

    >>> riding(Cabinet("no boards", (), {}))
    []
    """
    slides = [fitting for fitting in cabinet.hardware if fitting.what == "slide"]
    return [*(Riding("slide", one.row or "slide", one.on, one.group, one.box, True) for one in slides),
            *_of_wood(cabinet)]


def _of_wood(cabinet: Cabinet) -> list[Riding]:
    receives = {joint.enters: joint.receives for joint in cabinet.joints}
    return [
        Riding(board.role, f"wood {board.role}", receives.get(board.name, ""), board.part_of.name, board.box, False)
        for board in cabinet.boards if board.role in _NOT_BOUGHT
    ]


def heights(cabinet: Cabinet) -> tuple[SlideHeight, ...]:
    """What each spacer is for, and its height: of the slides as the plan has them, then of what is made of wood.

    A drawer's left and right runner lie at one height and are told once; one of 0 lies on the bottom itself.

    >>> heights(Cabinet("no boards", (), {}))
    ()
    """
    floor = datum(cabinet).height
    wood = {(item.group, item.what): item.box.low[2] - floor for item in _of_wood(cabinet)}
    return (*cabinet.spacers, *(SlideHeight(group, what, height) for (group, what), height in wood.items()))


def lies_on_bottom(cabinet: Cabinet) -> bool:
    """Whether a slide or runner lies on the bottom of the case, with no room for a spacer under it.

    >>> lies_on_bottom(Cabinet("no boards", (), {}))
    False
    """
    floor = datum(cabinet).height
    return any(item.box.low[2] == floor for item in riding(cabinet))
