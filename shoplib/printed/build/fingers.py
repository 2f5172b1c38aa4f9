"""How the fingers of drawer boxes are cut: the jig, the test corner, and which boards begin with a socket."""

from collections.abc import Iterable

from shoplib.lists.alike_cuts import SOCKET, alike_cuts
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, Together, ToTick, Words
from shoplib.tables.setups import Setup, setup
from shoplib.words.naming import boards_in_short

_WAY = "stacked dado set"
"""The way whose steps are told; the others differ in the cutter, not in the order."""

_LEAD = (
    f"Fingers, told for a {_WAY} where your saw and the rules of your place allow one. With a router or a single blade "
    "the order is the same: the pin of the jig is as wide as that cutter, and so must be the finger of the plan."
)


def fingers(boards: Iterable[Board], cabinet: Cabinet) -> list[Block]:
    """The cutting of the fingers of these boards, its cautions first; empty where they have none."""
    names = {board.name for board in boards}
    cuts = [cut for cut in alike_cuts(cabinet) if cut.kind == SOCKET and names & {board.name for board in cut.boards}]
    if not cuts:
        return []
    told = setup("finger", _WAY)
    of_cut = tuple(one.claim.say for one in told.cautions if one.of in told.cuts)
    caution = Framed((Bullets((*of_cut, _fresh(told, "dado set"))),), "A board stood on end")
    lines = [f"{boards_in_short(cut.boards).capitalize()}: sockets {cut.size}, {cut.place}." for cut in cuts]
    # The plan counts its sockets from one edge, whichever that of the set-up is.
    lines.append("Mark that edge on every board: it touches the pin first.")
    setting = (claim.say for part in (told.stops, told.tear_out) for claim in part)
    trial = [f"Try it first: {claim.say[0].lower()}{claim.say[1:]}" for claim in told.test]
    order = (claim.say for part in (told.measure, told.order) for claim in part)
    return [Together((Words(_LEAD), caution)), ToTick((*lines, *setting, *trial, *order))]


def _fresh(told: Setup, tool: str) -> str:
    """The first caution of a tool: whether it is allowed at all."""
    return next(one.claim.say for one in told.cautions if one.of == tool)
