"""Practice of the joints whose boards reach into each other finger by finger."""

from dataclasses import replace
from functools import partial

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.joints.finger import boundaries
from shoplib.measure import INCH, share
from shoplib.model.board import Board, BoxCut
from shoplib.practice.spreads import THOU
from shoplib.practice.trial_kind import Look, Made, Meet, Scale, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import turned_over

SLIVER = INCH // 32
"""What is left thinner than this at an edge breaks away by itself (common practice, no source)."""


def _stack(_stock: Stock, plan: Values) -> int:
    return plan["finger"] + share(plan["fit"], 2, 1)[0]


def _pin(_stock: Stock, plan: Values) -> int:
    return plan["finger"] - (plan["fit"] - share(plan["fit"], 2, 1)[0])


def _thick(stock: Stock, _plan: Values) -> int:
    return stock.receives.thickest


def _finger(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    """Both boards on the jig: each socket is cut where the one before it stands on the pin.

    The step from socket to socket is what the pin leaves and what the stack cuts, so an error of either is there once
    more with each finger; a mate that starts from the first board's socket goes along with it.
    """
    pair = each_board(kind, stock, plan, {
        "side": {"proud": made.of("depth", "side") - stock.enters.thickest},
        "bottom": {"proud": made.of("depth", "bottom") - stock.receives.thickest},
    })
    wide, left = made.of("stack", "side") - _stack(stock, plan), made.of("pin", "side") - _pin(stock, plan)
    boards = tuple(
        _stepped(board, stock, plan, (left if board.name == "bottom" else 0, left + wide, wide),
                 partial(made.again, "pin", board.name))
        for board in pair.boards
    )
    return replace(pair, boards=boards)


def _stepped(board: Board, stock: Stock, plan: Values, off: tuple[int, int, int], again: partial) -> Board:
    """Sockets moved by what the jig is off: the first by `off[0]`, each by `off[1]` more, all wider by `off[2]`."""
    first, step, wider = off
    own = board.placement.own_axis(1)
    width, edges, strayed, cuts = stock.width, boundaries(stock, plan["finger"]), 0, []
    sockets = sorted((cut for cut in board.cuts if isinstance(cut, BoxCut)), key=lambda cut: cut.low[own])
    for number, cut in enumerate(sockets):
        strayed += again(str(number)) if number else 0
        gone = first + number * step + strayed
        low, high = cut.low[own] + gone, cut.high[own] + gone + wider
        if board.name == "side" and number == 0:
            low = 0
        meant_to_edge = cut.high[own] == width or edges[-1] == cut.high[own]
        if meant_to_edge and width - high < SLIVER:
            high = width
        ends = list(cut.low), list(cut.high)
        ends[0][own], ends[1][own] = low, high if high < width else width
        if ends[0][own] < ends[1][own]:
            cuts.append(replace(cut, low=tuple(ends[0]), high=tuple(ends[1])))
    return replace(board, cuts=tuple(cuts))


FINGER = Trial(
    joint("finger"), "stacked dado set",
    (
        Scale("stack", "Stack, width", "width of a socket", "stack", ("side",), _stack,
              "{aim}, half of {fit} more than a finger", (INCH // 16, 3 * INCH // 50)),
        Scale("pin", "Pin, from the stack", "width of a finger", "pin", ("side",), _pin,
              "{aim}, half of {fit} less than the share of a finger", (INCH // 16, 3 * INCH // 50)),
        Scale("depth", "Depth", "depth of the sockets", "depth", ("bottom", "side"), _thick,
              "as deep as the boards are thick"),
    ),
    _finger,
    Meet("enters", "bottom", "side", 0, "home", -1),
    (Meet("fit", "bottom", "side", 1, "between"),),
    (
        Look("fit", "fit", lambda stood: stood.play("fit"), "The fingers of one board between those of the other",
             ("", "Wrap shavings round the loosest fingers, or cut another pair; glue alone does not fill it."),
             ("", "Move the pin nearer to the stack by that, and cut another pair; one tight finger can be pared.")),
        Look("ends", "gap", lambda stood: -stood.off("bottom", "side", 0, "low"), "The fingers are flush outside.",
             ("The fingers stand {size} proud outside.", "Plane them flush: the joint is saved."),
             ("The fingers end {size} under the face outside.",
              "Plane the face down to them, if the box may lose that."), allow=8 * THOU),
        Look("edges", "gap", lambda stood: stood.off("bottom", "side", 1, "low"), "The edges are flush.",
             ("The bottom stands {size} behind the edge of the side.", "Plane the edges level once it is glued."),
             ("The bottom stands {size} before the edge of the side.", "Plane the edges level once it is glued."),
             allow=INCH // 64),
    ),
    (
        TrialSlip("wrong edge first", "the side with its other edge to the pin first",
                  "The side was turned round: its sockets were stepped from the other edge, and the errors of both "
                  "boards add up.", turned_over("side", 1), "Where it is a few thousandths, pare the last fingers; "
                  "else cut the side anew, from the marked edge."),
    ),
)
