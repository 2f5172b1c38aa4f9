"""Practice of the joints whose boards reach into each other finger by finger."""

from dataclasses import replace
from functools import partial

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.measure import INCH, MM, narrowest, share, thickest
from shoplib.model.board import Board, BoxCut, Cut
from shoplib.model.finger_layout import boundaries
from shoplib.practice.spreads import THOU
from shoplib.practice.trial_kind import Look, Made, Meet, Scale, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import each_cut, forgotten, turned_over

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
    width, edges, strayed, cuts = stock.width, boundaries(stock.width, plan["finger"]), 0, []
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


_NARROW = (INCH // 16, 3 * MM // 2)

FINGER = Trial(
    joint("finger"), "stacked dado set",
    (
        Scale("stack", "Stack, width", "width of a socket", "stack", ("side",), _stack,
              "{aim}: one equal share of the width, {finger}, and half of {fit} more", _NARROW),
        Scale("pin", "Pin, from the stack", "width of a finger", "pin", ("side",), _pin,
              "{aim}: the same share, {finger}, less the other half of {fit}", _NARROW),
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
              "Plane the face down to them, if the box may lose that."),
             ("fingers flush", "fingers {size} proud", "fingers {size} under the face"), allow=8 * THOU),
        Look("edges", "gap", lambda stood: stood.off("bottom", "side", 1, "low"), "The edges are flush.",
             ("The bottom stands {size} behind the edge of the side.", "Plane the edges level once it is glued."),
             ("The bottom stands {size} before the edge of the side.", "Plane the edges level once it is glued."),
             ("edges flush", "bottom {size} behind the edge", "bottom {size} before the edge"), allow=INCH // 64),
    ),
    (
        TrialSlip("wrong edge first", "the side with its other edge to the pin first",
                  "The side was turned round: its sockets were stepped from the other edge, and the errors of both "
                  "boards add up.", turned_over("side", 1), "Plane the edges level where it is little; else "
                  "cut the side anew, from the marked edge.", ("fit", "edges")),
    ),
)


def _gauge(stock: Stock, _plan: Values) -> int:
    return stock.receives.thickest


def _dovetail(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    """Tails first, the pins marked from them: so the fit is what the saw leaves beside the lines of the pins."""
    pair = kind.make(stock, {**plan, "proud": made.of("gauge", "both boards") - stock.receives.thickest})
    return flanks_moved(replace(pair, values=plan), made.of("line", "pins"))


def flanks_moved(pair: Pair, left: int) -> Pair:
    """Each flank of a pin with so much wood left beside its line; cut past the line where that is under nothing."""
    def change(board: Board, cut: Cut) -> Cut:
        across = (board.placement.own_axis(1) - "uvw".index(cut.along) - 1) % 3
        places = [corner[across] for corner in cut.outline]
        middle = share(narrowest(places) + thickest(places), 2, 1)[0]
        outline = tuple(
            tuple(place + (left if place < middle else -left) if side == across else place
                  for side, place in enumerate(corner))
            for corner in cut.outline
        )
        return replace(cut, outline=outline)

    return each_cut("side", change)(pair)


KERF = 20 * THOU
"""What a fine saw cuts away (common practice, no source)."""

DOVETAIL = Trial(
    joint("dovetail"), "hand tools",
    (
        Scale("gauge", "Marking gauge, for the baselines", "end to the baseline", "gauge", ("both boards",), _gauge,
              "as far from the end as the boards are thick"),
        Scale("line", "Saw, from the line into the waste", "wood left beside a line", "line", ("pins",),
              lambda *_: 0, "none: the saw takes the waste side and leaves the line", _NARROW),
    ),
    _dovetail,
    Meet("enters", "bottom", "side", 2, "home", 1),
    (Meet("fit", "bottom", "side", 1, "between"),),
    (
        Look("fit", "fit", lambda stood: stood.play("fit"), "The tails between the pins",
             ("", "Glue a shaving into each gap: on the flanks it hardly shows."),
             ("", "Pare the flanks of the pins down to the line with a chisel, and try it half way.")),
        Look("ends", "gap", lambda stood: -stood.off("bottom", "side", 0, "low"), "The ends are flush outside.",
             ("The ends stand {size} proud outside.", "Plane them flush: the joint is saved."),
             ("The ends lie {size} under the faces outside.",
              "Plane the faces down to them, if the box may lose that."),
             ("ends flush", "ends {size} proud", "ends {size} under the faces"), allow=8 * THOU),
    ),
    (
        TrialSlip("wrong side of the line", "the pins sawn on the wrong side of the line",
                  "The pins were sawn on the wood side of their lines, and each flank lost a kerf.",
                  lambda pair: flanks_moved(pair, -KERF), "Glue a shaving as thick as the kerf to each flank, or cut "
                  "the pins anew on fresh ends."),
        TrialSlip("wrong face", "the pins marked on the inner face for the outer",
                  "The pins were sawn the other way round: their wide ends look outside.", turned_over("side", 0),
                  "Cut the ends off and begin anew: the boards are shorter by their thickness."),
        TrialSlip("waste forgotten", "the pins sawn, and the waste not chopped out",
                  "The waste between the pins was not chopped out.", forgotten("side"),
                  "The side is saved: chop it out now, from both faces."),
    ),
)
