"""Practice of the joints of frames: laps of half the thickness, and tongues between cheeks."""

from dataclasses import replace

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.measure import INCH, MM, share
from shoplib.model.board import Board, Cut
from shoplib.model.box import Box
from shoplib.practice.trial_kind import FAR, Look, Made, Meet, Scale, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import beside, each_cut, forgotten, turned_over

BOTH = ("rail", "stile")


def _half(stock: Stock, _plan: Values) -> int:
    """Half of the thickness, the same for both boards, so that what is off is off in both."""
    return share(stock.enters.thickness, 2, 1)[0]


def _flush() -> Look:
    return Look(
        "flush", "gap", lambda stood: stood.off("rail", "stile", 1, "low"), "The faces are flush.",
        ("The face of the rail lies {size} behind that of the stile: both cuts together are too deep.",
         "Glue a shaving between the cheeks, or plane both faces down to the lower one."),
        ("The face of the rail stands {size} proud of that of the stile: both cuts together are too shallow.",
         "Take half of it off each floor with a shoulder plane or a router plane."),
        ("faces flush", "rail {size} behind", "rail {size} proud"),
    )


_DEPTH = Scale("depth", "Depth of the cut, for both boards", "depth of the lap", "depth", BOTH, _half,
               "half of the thickness, both boards at one setting")


_LAID = Meet("enters", "rail", "stile", 1, "home", 1)


def _half_lap(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    def long(board: str, across: int) -> int:
        return made.of("stop", board) - across

    return each_board(kind, stock, plan, {
        "rail": {"lap": stock.enters.thickness - made.of("depth", "rail"), "long": long("rail", stock.across)},
        "stile": {"lap": made.of("depth", "stile"), "long": long("stile", stock.width)},
    })


def _end(board: str, other: str, axis: int, end: str, sign: int) -> Look:
    return Look(
        f"end of the {board}", "gap", lambda stood: sign * stood.off(board, other, axis, end),
        f"The end of the {board} is as long as was meant.",
        (f"The end of the {board} stands {{size}} longer than was meant.", "Plane it flush: that is what it is for."),
        (f"The end of the {board} is {{size}} shorter than was meant.",
         "Plane the other edge down to it, if there is still something to plane; else cut the shoulder back and lose "
         "the length."),
        (f"{board} as long as meant", f"{board} {{size}} longer", f"{board} {{size}} shorter"),
        allow=INCH // 32, felt=False,
    )


HALF_LAP = Trial(
    joint("half lap"), "stacked dado set",
    (
        _DEPTH,
        Scale("stop", "Stop, from the end to the shoulder", "length of the lap", "stop", BOTH,
              lambda stock, plan: stock.across + plan["long"], "{aim}: the width of the other board, and {long} to "
              "plane off"),
    ),
    _half_lap,
    _LAID,
    (Meet("cheek", "rail", "stile", 1, "sink", 1),),
    (_flush(), _end("rail", "stile", 0, "low", -1), _end("stile", "rail", 2, "high", 1)),
    (
        TrialSlip("wrong face", "the rail from its face side", "The lap of the rail was cut from its face side.",
                  turned_over("rail", 1), "Turn the rail over if both faces are good: its other end must then be cut "
                  "so too."),
        TrialSlip("forgotten", "the rail put aside before the cut", "The rail was put aside and never cut.",
                  forgotten("rail"), "The rail is saved: cut it now, at the setting of the test."),
        TrialSlip("wrong side of the line", "the rail with its cut beyond the shoulder line",
                  "The lap was cut on the wrong side of its shoulder line.", beside("rail", 0, 1),
                  "The rail is too short now: cut it anew, or use it in a smaller frame."),
    ),
)


def _cross_lap(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {
        "rail": {"lap": stock.enters.thickness - made.of("depth", "rail"),
                 "fit": made.of("width", "rail") - stock.across},
        "stile": {"lap": made.of("depth", "stile"), "fit": made.of("width", "stile") - stock.width},
    })


def _back_half(stock: Stock, plan: Values) -> Box:
    """The shoulders of the rail, without its lap."""
    near = plan["lap"] + share(stock.enters.thickness - plan["lap"], 2, 1)[0]
    return Box((-FAR, near, -FAR), (FAR, FAR, FAR))


def _front_half(_stock: Stock, plan: Values) -> Box:
    """The lap of the rail, without what touches the floor."""
    return Box((-FAR, -FAR, -FAR), (FAR, share(plan["lap"], 2, 1)[0], FAR))


def _notch(name: str, board: str, into: str) -> Look:
    return Look(
        name, "fit", lambda stood: stood.play(name), f"The {board} in the notch of the {into}",
        ("", f"Glue a shaving to the edge of the {board}."),
        ("", f"Pare the shoulder of the notch in the {into}, or plane a shaving off the edge of the {board}."),
        (f"{board} in the {into}", "", ""),
    )


CROSS_LAP = Trial(
    joint("cross lap"), "stacked dado set",
    (
        _DEPTH,
        Scale("width", "Distance of the stops: width of the notch", "width of the notch", "fence", BOTH,
              lambda stock, plan: stock.across + plan["fit"], "{aim}: as wide as the other board, and {fit} more"),
    ),
    _cross_lap,
    _LAID,
    (
        Meet("across", "rail", "stile", 0, "between", part=_back_half),
        Meet("up", "rail", "stile", 2, "between", part=_front_half),
        Meet("floor", "rail", "stile", 1, "sink", 1),
    ),
    (_notch("across", "stile", "rail"), _notch("up", "rail", "stile"), _flush()),
    (
        TrialSlip("wrong face", "the rail from its face side", "The notch of the rail was cut from its face side.",
                  turned_over("rail", 1), "Turn the rail over, if both faces are good."),
        TrialSlip("forgotten", "the rail put aside before the cut", "The rail was put aside and never notched.",
                  forgotten("rail"), "The rail is saved: cut it now, at the setting of the test."),
        TrialSlip("wrong side of the line", "the rail with its notch beside the line",
                  "The notch of the rail was cut on the wrong side of its line.", beside("rail", 0, 1),
                  "Glue a block into the notch, plane it flush, and cut again; the face will show it."),
    ),
)


def _swapped(pair: Pair) -> Pair:
    """The rail with a slot as wide as its tongue should be."""
    def change(board: Board, cut: Cut) -> Cut:
        across = board.placement.own_axis(1)
        begin, end = list(cut.low), list(cut.high)
        first = begin[across] == 0
        begin[across], end[across] = end[across] if first else share(board.thickness, 2, 1)[0], (
            share(board.thickness, 2, 1)[0] if first else begin[across]
        )
        return replace(cut, low=tuple(begin), high=tuple(end))

    return each_cut("rail", change)(pair)


def _one_cheek(pair: Pair) -> Pair:
    """The rail without the cheek that is away from its face side."""
    def change(board: Board, cut: Cut) -> Cut | None:
        return cut if board.placement.to_world(cut.box).low[1] == board.box.low[1] else None

    return each_cut("rail", change)(pair)


def _bridle(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    """Slot and tongue are cut from both faces at one setting: each lies in the middle, and what is off is off twice."""
    thick = stock.enters.thickness
    slot = thick - made.of("wall", "one wall") - made.of("wall", "other wall")
    tongue = thick - made.of("cheek", "one cheek") - made.of("cheek", "other cheek")
    return each_board(kind, stock, plan, {"stile": {"fit": slot - plan["tongue"]}, "rail": {"tongue": tongue}})


def _wall(stock: Stock, plan: Values) -> int:
    return share(stock.enters.thickness - plan["tongue"] - plan["fit"], 2, 1)[0]


def _cheek(stock: Stock, plan: Values) -> int:
    return share(stock.enters.thickness - plan["tongue"], 2, 1)[0]


_TONGUE_FIT = Look(
    "fit", "fit", lambda stood: stood.play("fit"), "The tongue in the slot",
    ("", "Glue a shaving to a cheek of the tongue, and fit it again."),
    ("", "Take the same shaving off both cheeks of the tongue."),
)
_NARROW = (INCH // 16, 3 * MM // 2)

BRIDLE = Trial(
    joint("bridle"), "single blade in passes",
    (
        Scale("wall", "Carrier for the slot, from its fence", "wood beside the slot", "carrier",
              ("one wall", "other wall"), _wall,
              "half of what is left of the thickness beside {tongue}, the tongue, and {fit}; the board is turned for "
              "the other wall", _NARROW),
        Scale("cheek", "Carrier for a cheek: what it takes off", "wood cut from a cheek", "carrier",
              ("one cheek", "other cheek"), _cheek,
              "half of what is left of the thickness beside {tongue}, the tongue; the board is turned for the other "
              "cheek", _NARROW),
    ),
    _bridle,
    Meet("enters", "rail", "stile", 0, "home", -1),
    (Meet("fit", "rail", "stile", 1, "between", part=lambda stock, _: Box((-FAR,) * 3, (stock.across, FAR, FAR))),),
    (_TONGUE_FIT, _flush()),
    (
        TrialSlip("wrong cut", "the tongue sawn like the slot: what should stay is cut out",
                  "The rail was cut like the stile: a slot where the tongue should be.", _swapped,
                  "Put a piece of the same wood through both slots: a loose tongue, glued in."),
        TrialSlip("cheek forgotten", "the rail without its second cheek",
                  "The rail was not turned, and only one cheek was cut.", _one_cheek,
                  "The rail is saved: turn it and cut the other cheek at the same setting."),
    ),
)


def _mortise(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    front = made.of("cheek", "face side")
    tenon = stock.enters.thickness - front - made.of("cheek", "other side")
    return each_board(kind, stock, plan, {
        "stile": {"front shoulder": made.of("place", "stile") + share(plan["fit"], 2, 1)[0],
                  "end gap": made.of("depth", "stile") - plan["length"]},
        "rail": {"front shoulder": front, "tenon": tenon},
    })


def _tenon_cheek(stock: Stock, plan: Values) -> int:
    return share(stock.enters.thickness - plan["tenon"], 2, 1)[0]


def _near_shoulder(stock: Stock, plan: Values) -> Box:
    """The half of the tenon next to its shoulder."""
    return Box((stock.across - share(plan["length"], 2, 1)[0], -FAR, -FAR), (stock.across, FAR, FAR))


MORTISE_AND_TENON = Trial(
    joint("mortise and tenon"), "stacked dado set",
    (
        Scale("place", "Gauge for the mortise, from the face side", "wood before the mortise", "gauge", ("stile",),
              lambda stock, plan: _tenon_cheek(stock, plan) - share(plan["fit"], 2, 1)[0],
              "half of what is left of the thickness beside {tenon}, the chisel's width", _NARROW),
        Scale("depth", "Depth of the mortise", "depth of the mortise", "collar", ("stile",),
              lambda _stock, plan: plan["length"] + plan["end gap"], "{aim}"),
        Scale("cheek", "Height of the stack: what a cheek loses", "wood cut from a cheek", "carrier",
              ("face side", "other side"), _tenon_cheek,
              "half of what is left of the thickness beside {tenon}, the tenon; both faces lie down in turn", _NARROW),
    ),
    _mortise,
    Meet("enters", "rail", "stile", 0, "home", -1),
    (
        Meet("fit", "rail", "stile", 1, "between", part=_near_shoulder),
        Meet("shoulder", "rail", "stile", 0, "home", -1),
    ),
    (
        Look("fit", "fit", lambda stood: stood.play("fit"), "The tenon in the mortise",
             ("", "Glue a shaving to a cheek of the tenon, and fit it again."),
             ("", "Take a shaving off the cheek of the tenon that does not spoil the faces.")),
        Look("shoulder", "gap", lambda stood: stood.room["shoulder"][0] or 0, "The shoulders are closed.",
             less=("The shoulders stand open by {size}: the tenon meets the bottom of the mortise first.",
                   "Saw that off the end of the tenon, or deepen the mortise."),
             brief=("shoulders closed", "", "shoulders open by {size}")),
        _flush(),
    ),
    (
        TrialSlip("wrong reference face", "the mortise gauged from the other face",
                  "The mortise was gauged from the other face of the stile: what the gauge is off counts twice.",
                  turned_over("stile", 1), "Plane the faces level where it is little; else plug the mortise and cut it "
                  "again.", ("flush",)),
        TrialSlip("mortise forgotten", "the stile put aside before its mortise",
                  "The stile was put aside and has no mortise.", forgotten("stile"),
                  "The stile is saved: cut the mortise now."),
    ),
    ("drill", "chisel"),
)
