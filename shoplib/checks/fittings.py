"""A slide needs a place of its own, and one under the box needs work that only its own sheet can tell."""

from shoplib.checks.as_built import AsBuilt
from shoplib.checks.geometry import has_wood_in
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short


def find_slides_in_wood(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One stop for each drawer or pull-out whose slides stand in the wood of some board."""
    found: dict[str, dict[str, None]] = {}
    built = AsBuilt(cabinet)
    slides: dict[str, list[Box]] = {}
    for fitting in cabinet.hardware:
        if fitting.what == "slide":
            slides.setdefault(fitting.group, []).append(fitting.box)
    for group, boxes in slides.items():
        room = around(boxes)
        near = [board for board in built.all_met(group) if board.box.overlaps(room)]
        for slide in boxes:
            for board in near:
                if has_wood_in(board, slide):
                    found.setdefault(group, {})[board.name] = None
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


def tell_what_the_sheet_says(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" on the drawers that lie on slides under them: what the plan leaves to the sheet of the slide."""
    rows = cabinet.slides
    groups = dict.fromkeys(
        piece.group
        for piece in cabinet.hardware
        if piece.what == "slide" and piece.row in rows and rows[piece.row].holds == "inside"
    )
    if not groups:
        return ()
    text = (
        f"{and_list(in_short(groups))}: the box lies on its slides and no screw goes into its sides. Notches and hook "
        "holes in its back and the locks under its front are not in this plan: make them by the slide's own sheet."
    )
    return (Finding("fittings", "note", (), text),)
