"""Practice of butted joints: squared ends with screws, dowels, and a loose spline."""

from dataclasses import replace
from math import radians, tan

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.joints.butt import pilot_depth
from shoplib.joints.draft import Draft
from shoplib.measure import INCH, MM, share, thickest
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.box import Box
from shoplib.model.sheet import Sheet
from shoplib.practice.trial_kind import FAR, Look, Made, Meet, Scale, Stood, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import each_cut, forgotten, turned_over
from shoplib.practice.trial_spreads import DEGREE
from shoplib.practice.trial_stand import moved

SIXTEENTH = INCH // 16
_SMALL = (SIXTEENTH, 3 * MM // 2)

SQUARE = 90 * DEGREE

SHALLOWER = "less deep than the joint's rule gives: a board that lies here may be thinner than usual"
"""Why the practice bores less into a side than the bench of the joint."""


def leaning(run: int, angle: int) -> int:
    """How far a line strays sideways over a run that leans by so many parts of a degree, to the nearest tick.

    >>> leaning(1_000_000, 45 * DEGREE), leaning(1_000_000, -DEGREE)
    (1000000, -17455)
    """
    return round(run * tan(radians(angle / DEGREE)))


def _sawn(pair: Pair, name: str, off: int, axis: int = 1) -> Pair:
    """The pair with the end of a board out of square along a world axis: more is gone at its far end where `off` is
    over nothing.
    """
    board = pair.by_name[name]
    low, high = board.box.low[axis], board.box.high[axis]
    run = leaning(high - low, abs(off))
    if not run:
        return pair
    face, last = board.box.low[0], high if off > 0 else low
    outline = [(face, low), (face, high), (face + run, last)]
    along = 3 - axis
    draft = Draft(name, Sheet(board.sheet, "plywood", board.thickness), board.placement.axes, board.box)
    corners = outline if along == 2 else [(q, p) for p, q in outline]
    draft.take_prism("end", along, corners, board.box.low[along], board.box.high[along])
    cut = replace(board, cuts=(*board.cuts, *draft.board.cuts))
    return replace(pair, boards=tuple(cut if each.name == name else each for each in pair.boards))


def _edges(board: str, axis: int) -> tuple[Meet, Meet]:
    """The room before the face of the side at the very ends of the board's end along a world axis."""
    def meet(name: str, last: bool) -> Meet:
        def part(stock: Stock, _plan: Values) -> Box:
            whole = stock.width if axis == 1 else stock.enters.thickness
            low, high = [-FAR] * 3, [FAR] * 3
            low[axis], high[axis] = (whole - 1, whole) if last else (0, 1)
            return Box(tuple(low), tuple(high))

        return Meet(name, board, "side", 0, "read", part=part)

    return meet("near", False), meet("far", True)


def _lean(stood: Stood) -> int:
    """How much farther the end stands off the side at its far end than at its near one."""
    return (stood.room["far"][0] or 0) - (stood.room["near"][0] or 0)


def _corner_leans(stood: Stood) -> int:
    """How far the side leans over its length, where it is drawn close to an end that is out of square."""
    stock = stood.pair.stock
    return share(_lean(stood) * stock.receives_length, stock.enters.thickness, 1)[0]


def _bored(board: str, kind: str, depth: int) -> object:
    return each_cut(board, lambda _, cut: replace(cut, depth=depth) if cut.kind == kind else cut)


def _deep(board: str, kind: str) -> object:
    """A reader of how deep the holes of that kind are in a board, less than planned or more; 0 where there are none."""
    def amount(stood: Stood) -> int:
        depths = [
            next((cut.depth for cut in pair.by_name[board].cuts if isinstance(cut, Hole) and cut.kind == kind), 0)
            for pair in (stood.pair, stood.planned)
        ]
        return depths[0] - depths[1]

    return amount


_AGAIN = "Saw or plane the end square once more, as long as the board may lose that."


def _butt(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    pair = _bored("bottom", "pilot", made.of("collar", "bottom"))(kind.make(stock, plan))
    return _sawn(pair, "bottom", made.of("square", "bottom") - SQUARE)

BUTT = Trial(
    joint("butt"), "drill",
    (
        Scale("square", "Mitre gauge, for the end", "angle of the end", "angle", ("bottom",), lambda *_: SQUARE,
              "{aim}, measured from the front edge"),
        Scale("collar", "Collar on the bit: pilot hole", "depth of the pilot hole", "collar", ("bottom",),
              pilot_depth,
              "2/3 of the thread, and the thread is 2/3 of the screw, which is {screw} long", (INCH // 2, 15 * MM)),
    ),
    _butt,
    Meet("enters", "bottom", "side", 0, "home", -1),
    _edges("bottom", 1),
    (
        Look("square", "gap", _lean, "The end of the bottom stands on the side from front to back: no light between.",
             ("With the front edge closed, the end of the bottom stands open by {size} at the back.", _AGAIN),
             ("With the back edge closed, the end of the bottom stands open by {size} at the front.", _AGAIN),
             ("end square", "open by {size} at the back", "open by {size} at the front")),
        Look("pilot", "gap", _deep("bottom", "pilot"), "The pilot hole is 2/3 of the thread deep.",
             ("The pilot hole is {size} deeper than 2/3 of the thread: so much less whole wood is left for the point.",
              "Leave it, or take a longer screw."),
             ("The pilot hole is {size} too shallow: more of the thread must cut its way through whole wood, and the "
              "end may split.", "Bore it deeper before you drive the screw."),
             ("pilot as deep as meant", "pilot {size} too deep", "pilot {size} too shallow"), allow=SIXTEENTH),
    ),
    (
        TrialSlip("clearance holes forgotten", "the side without its clearance holes",
                  "The side has no clearance holes: the screw bites in both boards, and holds them apart.",
                  forgotten("side", ("clearance",)), "Take the screw out, and bore them now."),
        TrialSlip("pilot holes forgotten", "the bottom without its pilot holes",
                  "The bottom has no pilot holes: near its end it splits.", forgotten("bottom", ("pilot",)),
                  "Where it has not split yet, bore them now."),
        TrialSlip("not flush", "not clamped flush before it is screwed",
                  "The boards were not clamped, and the bottom crept while the screw was driven.",
                  lambda pair: _crept(pair, "bottom"), "Take the screws out, plug the holes, clamp, and bore anew."),
    ),
    ("table saw",),
)


def _crept(pair: Pair, name: str) -> Pair:
    """A board gone up by 1/32 in while it was screwed."""
    boards = (moved(board, (0, 0, INCH // 32)) if board.name == name else board for board in pair.boards)
    return replace(pair, boards=tuple(boards))


def _pocket(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    web = made.of("collar", "shelf")
    pair = each_board(kind, stock, plan, {"shelf": {"web": web}})
    return _sawn(replace(pair, values={**plan, "web": web}), "shelf", made.of("square", "shelf") - SQUARE, 2)

POCKET_SCREWS = Trial(
    joint("pocket screws"), "drill",
    (
        Scale("square", "Tilt of the blade, for the end", "angle of the end", "angle", ("shelf",), lambda *_: SQUARE,
              "{aim}, measured from the lower face"),
        Scale("collar", "Collar on the bit: wood it leaves before the pocket", "wood before the pocket", "collar",
              ("shelf",), lambda _stock, plan: plan["web"], "{aim}, along the screw", _SMALL),
    ),
    _pocket,
    Meet("enters", "shelf", "side", 0, "home", -1),
    _edges("shelf", 2),
    (
        Look("square", "gap", _corner_leans, "The corner is square once the screws draw it close.",
             ("Drawn close, the side leans in by {size} over its length: the end is out of square.", _AGAIN),
             ("Drawn close, the side leans out by {size} over its length: the end is out of square.", _AGAIN),
             ("corner square", "side leans in by {size}", "side leans out by {size}")),
        Look("web", "gap", lambda stood: stood.pair.values["web"] - stood.planned.values["web"],
             "The screw's head bears on as much wood as was meant.",
             ("{size} more wood is left before the pocket: the screw reaches so much less far into the side.",
              "Drill the pocket once more with the collar higher on the bit."),
             ("{size} less wood is left before the pocket: the screw's point comes so much nearer to the outside.",
              "Take a shorter screw."),
             ("wood under the head as meant", "{size} more wood under the head", "{size} less wood under the head"),
             allow=SIXTEENTH // 2),
    ),
    (
        TrialSlip("wrong face", "the pockets in the face that shows",
                  "The pockets are in the upper face of the shelf, where they show.", turned_over("shelf", 2),
                  "Turn the shelf over if both faces are alike; else plug the pockets."),
        TrialSlip("not flush", "not clamped before it is screwed",
                  "The boards were not clamped, and the shelf crept while the screw was driven.",
                  lambda pair: _crept(pair, "shelf"), "Loosen the screws, clamp at the line, and drive them again."),
    ),
    ("table saw",),
)


def _centre(pair: Pair, name: str) -> int:
    """The height at which the holes of a board are bored."""
    board = pair.by_name[name]
    hole = next(cut for cut in board.cuts if isinstance(cut, Hole))
    return board.placement.point_to_world(hole.centre)[2]


def _lined_up(pair: Pair) -> Pair:
    """Put together on its dowels: they stand in the side, and the bottom goes where its holes are over them.

    A dowel that is stopped in one hole goes deeper into the other; where both holes together are too shallow for it,
    the joint stays open.
    """
    stock, plan = pair.stock, pair.values
    deep = {
        name: next(cut.depth for cut in pair.by_name[name].cuts if isinstance(cut, Hole)) for name in ("side", "bottom")
    }
    open_by = thickest([0, plan["into side"] + plan["into end"] - deep["side"] - deep["bottom"]])
    out = thickest([0, plan["into side"] - deep["side"]])
    in_by = thickest([0, plan["into end"] - deep["bottom"] - open_by])
    height = _centre(pair, "side")
    middle = share(stock.enters.thickness, 2, 1)[0]
    gone = {"bottom": (open_by, 0, height - _centre(pair, "bottom"))}
    boards = (
        moved(board, (out - in_by, 0, height - middle)) if board.name.startswith("dowel")
        else moved(board, gone.get(board.name, (0, 0, 0)))
        for board in pair.boards
    )
    return replace(pair, boards=tuple(boards))


def _middle(stock: Stock, _plan: Values) -> int:
    return share(stock.enters.thickness, 2, 1)[0]


def _dowel(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    pair = kind.make(stock, plan)

    def bored(name: str, depth: int) -> object:
        def change(board: Board, cut: Cut) -> Cut:
            if not isinstance(cut, Hole):
                return cut
            x, y, _ = board.placement.point_to_world(cut.centre)
            return replace(cut, centre=board.placement.point_to_board((x, y, made.of(name, name))), depth=depth)

        return each_cut(name, change)

    pair = bored("side", made.of("into side", "side"))(pair)
    return _lined_up(bored("bottom", made.of("into end", "bottom"))(pair))


def _other_face(pair: Pair) -> Pair:
    """The bottom bored with the guide on its inner face."""
    planned = joint("dowel").make(pair.stock, pair.values)
    boards = {board.name: replace(board, placement=planned.by_name[board.name].placement) for board in pair.boards}
    back = replace(pair, boards=tuple(boards.values()))
    return _lined_up(turned_over("bottom", 2)(back))


DOWEL = Trial(
    joint("dowel"), "drill",
    (
        Scale("bottom", "Guide on the bottom, from its outer face", "outer face to a hole in the bottom", "gauge",
              ("bottom",), _middle, "half of the bottom's thickness, to the middle of the hole"),
        Scale("side", "Guide on the side, from its end", "end to a hole in the side", "gauge", ("side",), _middle,
              "the same, so that the holes meet"),
        Scale("into side", "Collar for the side", "depth of the hole in the side", "collar", ("side",),
              lambda _stock, plan: plan["into side"] + plan["end gap"], f"{{aim}}, {SHALLOWER}", _SMALL),
        Scale("into end", "Collar for the end", "depth of the hole in the end", "collar", ("bottom",),
              lambda _stock, plan: plan["into end"] + plan["end gap"], "{aim}"),
    ),
    _dowel,
    Meet("enters", "bottom", "side", 0, "home", -1),
    (),
    (
        Look("closed", "gap", lambda stood: stood.off("bottom", "side", 0, "low"), "The joint is closed.",
             ("The joint stands open by {size}: the dowels meet the bottoms of their holes first.",
              "Saw that off the dowels, or bore the holes deeper."),
             brief=("joint closed", "joint open by {size}", "")),
        Look("flush", "gap", lambda stood: stood.off("bottom", "side", 2, "low"), "The outer faces are flush.",
             ("The bottom stands {size} inside the end of the side.", "Plane the end of the side down to it."),
             ("The bottom stands {size} beyond the end of the side.", "Plane the bottom flush."),
             ("outer faces flush", "bottom {size} inside the end", "bottom {size} beyond the end")),
        Look("wood behind", "gap", _deep("side", "dowel hole"), "The holes leave the wood behind them that was meant.",
             ("The holes in the side are {size} deeper than was meant: so much less wood is left behind them.",
              "Leave them, if the point of the bit does not show; put no longer dowel in."),
             ("The holes in the side are {size} shallower than was meant.",
              "Shorten the dowels where the joint stays open; else leave them."),
             ("holes as deep as meant", "holes {size} deeper", "holes {size} shallower"), allow=SIXTEENTH, felt=False),
    ),
    (
        TrialSlip("wrong reference face", "the bottom bored from its inner face",
                  "The guide lay on the inner face of the bottom: what it is off the middle counts twice.",
                  _other_face, "Plane the step away where it is little; else plug the holes, and bore them again.",
                  ("flush",)),
        TrialSlip("wrong end", "the side bored at its other end",
                  "The guide was laid on the other end of the side, and the holes are there.",
                  turned_over("side", 2), "Turn the side end for end if both ends are alike; else bore it again."),
    ),
)


def _spline(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    pair = kind.make(stock, plan)
    meant = _groove_aims(stock, plan)

    def grooved(name: str, sign: int) -> object:
        def change(board: Board, cut: Cut) -> Cut:
            world = board.placement.to_world(cut.box)
            low, high = list(world.low), list(world.high)
            deeper = made.of("depth", name) - meant["depth"]
            low[0], high[0] = (low[0] - deeper, high[0]) if sign < 0 else (low[0], high[0] + deeper)
            low[2] = made.of("height", name)
            high[2] = low[2] + made.of("stack", name)
            own = board.placement.to_board(Box(tuple(low), tuple(high)))
            return replace(cut, low=own.low, high=own.high) if isinstance(cut, BoxCut) else cut

        return each_cut(name, change)

    return grooved("right board", 1)(grooved("left board", -1)(pair))


def _groove_aims(stock: Stock, plan: Values) -> dict[str, int]:
    near = share(plan["fit"], 2, 1)[0]
    return {
        "height": share(stock.enters.thickness - plan["spline"], 2, 1)[0] - near,
        "stack": plan["spline"] + plan["fit"],
        "depth": share(plan["spline width"], 2, 1)[0] + plan["end gap"],
    }


def _near_edge(sign: int) -> object:
    """The wood within a quarter of the spline's width of the joint, to the left or the right of it."""
    def part(_stock: Stock, plan: Values) -> Box:
        reach = share(plan["spline width"], 4, 1)[0]
        low, high = (0, reach) if sign > 0 else (-reach, 0)
        return Box((low, -FAR, -FAR), (high, FAR, FAR))

    return part


_SIDES = ("left board", "right board")


def _in_groove(name: str, board: str) -> Look:
    return Look(
        name, "fit", lambda stood: stood.play(name), f"The spline in the groove of the {board}",
        ("", "Plane a thicker spline to the groove: the boards are saved."),
        ("", "Plane the spline thinner: the boards are saved."),
        (f"spline in the {board}", "", ""),
    )


SPLINE = Trial(
    joint("spline"), "stacked dado set",
    (
        Scale("height", "Fence, from the face side", "wood before the groove", "fence", _SIDES,
              lambda stock, plan: _groove_aims(stock, plan)["height"],
              "half of what is left of the thickness beside the groove, in both boards", _SMALL),
        Scale("stack", "Stack, width", "width of the groove", "stack", _SIDES,
              lambda stock, plan: _groove_aims(stock, plan)["stack"],
              "{aim}: as wide as the spline is thick, and {fit} more", _SMALL),
        Scale("depth", "Depth", "depth of the groove", "depth", _SIDES,
              lambda stock, plan: _groove_aims(stock, plan)["depth"],
              "{aim}: half of the spline's width, and {end_gap} more"),
    ),
    _spline,
    Meet("enters", "right board", "spline", 0, "home", -1),
    (
        Meet("left", "spline", "left board", 2, "between", part=_near_edge(-1)),
        Meet("right", "right board", "spline", 2, "between", part=_near_edge(1)),
        Meet("left floor", "spline", "left board", 0, "home", -1),
        Meet("right floor", "right board", "spline", 0, "home", -1),
    ),
    (
        _in_groove("left", "left board"), _in_groove("right", "right board"),
        Look("flush", "gap", lambda stood: stood.off("right board", "left board", 2, "low"),
             "The face sides are flush.",
             ("The face side of the right board lies {size} farther in.", "Plane the step away, if it is little."),
             ("The face side of the right board stands {size} farther out.", "Plane the step away, if it is little."),
             ("face sides flush", "right board {size} farther in", "right board {size} farther out")),
        Look("closed", "gap", lambda stood: stood.off("right board", "left board", 0, "low"),
             "Edge stands on edge.",
             ("The edges stand open by {size}: the spline meets the floors of its grooves first.",
              "Plane that off the spline: the boards are saved."),
             brief=("edges closed", "edges open by {size}", "")),
    ),
    (
        TrialSlip("wrong face", "the right board with its other face to the fence",
                  "The right board was grooved from its other face: what the fence is off the middle counts twice.",
                  turned_over("right board", 2), "Plane the step away where it is little; else glue a strip into the "
                  "groove, and cut it again.", ("flush",)),
        TrialSlip("groove forgotten", "the right board put aside before its groove",
                  "The right board was put aside and has no groove.", forgotten("right board"),
                  "The board is saved: groove it now, at the setting of the test."),
    ),
)

