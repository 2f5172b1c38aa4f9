"""What holds for the cuts of a plan alike and is said once: how wide a slot is, and how one ends that stops short."""

from shoplib.draw.board_dimensions import stops_short
from shoplib.lists.cut_words import channel_ways
from shoplib.model.board import BoxCut
from shoplib.model.solved import Cabinet

WIDTHS = (
    "A cut that takes a sheet is as wide as the thickest reading of the sheet plus the fit, which is ease for a dry "
    "joint and room for the glue."
)
TONGUES = (
    "A rabbet that leaves a tongue is set up by the tongue: run the face that the tongue lies at against the fence, so "
    "that the cutter leaves it equally thick everywhere. At the saw the board then stands on its end: against a tall "
    "fence and in a carrier, never held by hand alone. Its depth is that by the mean of the readings."
)
ENDS = "Where a cut stops short, a router leaves its end round: square the end with a chisel."


def cut_notes(cabinet: Cabinet) -> tuple[str, ...]:
    """The sentences that this cabinet's cuts ask for."""
    cuts = [(board, cut) for board in cabinet.boards for cut in board.cuts if isinstance(cut, BoxCut)]
    takes = any(cut.for_board in cabinet.by_name and channel_ways(cut, board) for board, cut in cuts)
    stops = any(stops_short(board, cut) for board, cut in cuts)
    tongues = any(joint.tongue for joint in cabinet.joints)
    return tuple(text for text, holds in ((WIDTHS, takes), (TONGUES, tongues), (ENDS, stops)) if holds)
