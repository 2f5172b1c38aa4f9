"""A slide needs a place of its own: no wood may stand in it."""

from shoplib.checks.as_built import AsBuilt
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list


def find_slides_in_wood(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One stop for each drawer or pull-out whose slides stand in the wood of some board."""
    found: dict[str, dict[str, None]] = {}
    built = AsBuilt(cabinet)
    for fitting in cabinet.hardware:
        if fitting.what != "slide":
            continue
        for planned in cabinet.boards:
            board = built.met(planned, fitting.group)
            if board.box.overlaps(fitting.box) and any(piece.overlaps(fitting.box) for piece in board.pieces):
                found.setdefault(fitting.group, {})[board.name] = None
    return tuple(
        Finding(
            "fittings",
            "stop",
            tuple(boards),
            f"{group}: its slides stand in the wood of {and_list(list(boards))}. "
            "Take fewer and higher drawers, or a slide that is less high.",
        )
        for group, boards in found.items()
    )
