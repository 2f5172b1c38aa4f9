"""How the fingers of drawer boxes are cut: what cuts them, the jig, the test corner, which boards begin."""

from collections.abc import Iterable, Sequence

from shoplib.lists.alike_cuts import SOCKET, AlikeCuts, alike_cuts
from shoplib.lists.writing import Writing
from shoplib.measure import MM, share
from shoplib.model.board import Board, BoxCut
from shoplib.model.solved import Cabinet
from shoplib.printed.told.on_end import on_end_frame, set_up
from shoplib.printed.typeset.blocks import Block, Together, ToTick, Words
from shoplib.tables.setups import setup
from shoplib.words.naming import boards_in_short

FINGER = "finger"
"""The joint, by its name in `data/setups/`."""

BLADE, CHOICE = "single blade in passes", ("stacked dado set", "router")
"""Ways of `data/setups/finger.toml`: the blade alone where its kerf is the socket, else one of two."""

_CLOSE = MM // 20
"""A kerf is as wide as a socket up to so much, which no shop sets (0.05 mm; common practice, no source)."""


def fingers(boards: Iterable[Board], cabinet: Cabinet) -> list[Block]:
    """The cutting of the fingers of these boards, its cautions first; empty where they have none.

    By the blade alone where the kerf of the project is the socket, else by a choice that is named, with its test.

    >>> fingers([], Cabinet("no boards", (), {}))
    []
    """
    boards = list(boards)
    names = {board.name for board in boards}
    cuts = [cut for cut in alike_cuts(cabinet) if cut.kind == SOCKET and names & {board.name for board in cut.boards}]
    if not cuts:
        return []
    wide, tooth = _widths(boards)
    ways = [setup(FINGER, way) for way in ways_of(wide, _kerf(cabinet))]
    return [
        Together((Words(_lead(wide, tooth, cabinet)), on_end_frame(ways))),
        ToTick((*_begin(cuts), *_trial(wide, tooth, cabinet))),
        *(block for way in ways for block in set_up(way)),
        Words("With the fingers cut:", grave=True),
    ]


def ways_of(wide: int, kerf: int) -> tuple[str, ...]:
    """The ways in which sockets so wide can be cut: by the blade alone where its kerf is that width (ticks).

    >>> ways_of(3 * MM, 3 * MM), ways_of(10 * MM, 3 * MM)
    (('single blade in passes',), ('stacked dado set', 'router'))
    """
    return (BLADE,) if abs(wide - kerf) <= _CLOSE else CHOICE


def _kerf(cabinet: Cabinet) -> int:
    return cabinet.project.cutting.kerf if cabinet.project else 0


def _widths(boards: Sequence[Board]) -> tuple[int, int]:
    """How wide a socket is, and the finger left between two (ticks); as wide as the socket where no board has two."""
    for board in boards:
        runs = sorted((cut.low[1], cut.high[1]) for cut in board.cuts
                      if isinstance(cut, BoxCut) and cut.kind == "socket" and cut.low[0] <= 0)
        if len(runs) > 1:
            return max(high - low for low, high in runs), runs[1][0] - runs[0][1]
    cut = next(cut for board in boards for cut in board.cuts if isinstance(cut, BoxCut) and cut.kind == "socket")
    return cut.high[1] - cut.low[1], cut.high[1] - cut.low[1]


def _half_fit(wide: int, tooth: int) -> int:
    """A socket is a finger and half of the fit wide, what stands between two a finger less half of it."""
    return share(wide - tooth, 2, 1)[0]


def _lead(wide: int, tooth: int, cabinet: Cabinet) -> str:
    write = Writing(cabinet.style).measured
    kerf, half = _kerf(cabinet), _half_fit(wide, tooth)
    if ways_of(wide, kerf) == (BLADE,):
        return f"The fingers are cut with the blade alone: its kerf in your project, {write(kerf)}, is the socket."
    alone = (
        f" A single blade cuts {write(kerf)}, by the kerf of your project: it would be another plan, with fingers of "
        f"{write(kerf - half)}." if kerf > half else ""
    )
    return (
        f"Choose what cuts the sockets, {write(wide)} wide, before the jig is made: a dado set, where your saw and the "
        f"rules of your place allow one, or a router with a straight bit.{alone} (Common practice, no source.)"
    )


def _begin(cuts: Iterable[AlikeCuts]) -> list[str]:
    lines = [f"{boards_in_short(cut.boards).capitalize()}: sockets {cut.size}, {cut.place}." for cut in cuts]
    # The plan counts its sockets from one edge, whichever that of the set-up is.
    return [*lines, "Mark that edge on every board: it touches the pin first."]


def _trial(wide: int, tooth: int, cabinet: Cabinet) -> tuple[str, ...]:
    """The test of the cutter, before any board."""
    write = Writing(cabinet.style).measured
    return (
        f"Cut one socket in scrap and put a caliper in it: {write(wide)}. If your cutter makes another width, write a "
        f"finger {write(_half_fit(wide, tooth))} narrower than what you read into the project, plan and print again, "
        "and only then cut boards.",
    )
