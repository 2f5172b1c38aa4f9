"""Practice of the joints of frames: laps of half the thickness, and tongues between cheeks."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.measure import INCH, share
from shoplib.model.box import Box
from shoplib.practice.trial_kind import FAR, Look, Made, Meet, Scale, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import beside, forgotten, turned_over

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
    )


CROSS_LAP = Trial(
    joint("cross lap"), "stacked dado set",
    (
        _DEPTH,
        Scale("width", "Stops: width of the notch", "width of the notch", "fence", BOTH,
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
