"""Practice of the joints of cases and drawers in which a board is let into an upright one."""

from collections.abc import Callable

from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.measure import INCH, MM, narrowest, share, thickest
from shoplib.model.box import Box
from shoplib.practice.trial_kind import FAR, Look, Made, Meet, Scale, Stood, Trial, TrialSlip, each_board
from shoplib.practice.trial_slips import beside, forgotten, turned_over

HIDDEN = INCH // 32
"""Room at the end of a tongue or a floating panel is hidden, and so much more or less of it does no harm (common
practice, no source)."""


def _mouth(stock: Stock, plan: Values) -> Box:
    """The half of a cut next to the side's face, where its floor is not met."""
    near = stock.receives.thickness - share(plan["depth"], 2, 1)[0]
    return Box((near, -FAR, -FAR), (FAR, FAR, FAR))


def _stack_aim(stock: Stock, plan: Values) -> int:
    return stock.enters.thickest + plan["fit"]


def _of(name: str) -> Callable[[Stock, Values], int]:
    return lambda _stock, plan: plan[name]


def _stack(board: str, cut: str) -> Scale:
    return Scale("stack", "Stack, width", f"width of the {cut}", "stack", ("side",), _stack_aim,
                 f"as wide as the {board} is thick, and {{fit}} more")


def _depth(cut: str) -> Scale:
    return Scale("depth", "Depth", f"depth of the {cut}", "depth", ("side",), _of("depth"), "{aim}")


def _in(board: str) -> Meet:
    return Meet("enters", board, "side", 0, "home", -1)


def _fit(board: str, cut: str, part: Callable[[Stock, Values], Box] = _mouth) -> tuple[Meet, Look]:
    return (
        Meet("fit", board, "side", 2, "between", part=part),
        Look("fit", "fit", lambda stood: stood.play("fit"), f"The {board} in the {cut}",
             ("", f"Glue a shaving of the same wood to the {board}, away from the face that shows, and fit it again."),
             ("", f"Plane a shaving off the {board}, or move the fence a hair and widen the {cut} on the side "
                  "that does not show.")),
    )


def _floor(board: str, cut: str, name: str = "floor", gap: str = "end gap", allow_more: int | None = None) -> Look:
    def amount(stood: Stood) -> int:
        room = stood.room[name][0] or 0
        return room if room < 0 else thickest([0, room - stood.planned.values.get(gap, 0)])

    return Look(
        "floor", "gap", amount, f"The {board} goes home.",
        (f"The {cut} is {{size}} deeper than it was to be: nothing shows, and so much less wood is left behind it.",
         "Leave it: the face stays closed. Only where the wood behind it gives way is the side lost."),
        (f"The {board} stops {{size}} before it is home: the {cut} is too shallow.",
         f"Run the side once more at the right depth: the {cut} is saved."),
        (f"{board} home", f"{cut} {{size}} too deep", f"{board} stops {{size}} too early"),
        **({} if allow_more is None else {"allow": allow_more}),
    )


def _rabbet(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {"side": {
        "depth": made.of("depth", "side"), "fit": made.of("fence", "side") - stock.enters.thickest,
    }})


_FORGOTTEN = "The side is saved: cut it now, at the setting of the test."
_OTHER_FACE = ("The cut is in the wrong face: make the other hand of the case of this board if it is still wanted, or "
               "a new side.")

def _wrong_face(cut: str) -> TrialSlip:
    return TrialSlip("wrong face", "the side with its outer face down",
                     f"The outer face of the side lay down, and the {cut} is in it.", turned_over("side", 0),
                     _OTHER_FACE)


RABBET = Trial(
    joint("rabbet"), "stacked dado set",
    (
        Scale("fence", "Fence: how much of the stack stands out", "width of the rabbet", "fence", ("side",), _stack_aim,
              "as wide as the bottom is thick, and {fit} more"),
        _depth("rabbet"),
    ),
    _rabbet,
    _in("bottom"),
    (
        Meet("shoulder", "bottom", "side", 2, "between", part=_mouth),
        Meet("cheek", "bottom", "side", 0, "home", -1),
    ),
    (
        Look("corner", "gap", lambda stood: (stood.room["shoulder"][1] or 0) - stood.planned.values["fit"],
             "The bottom is flush with the end of the side, and the shoulder is closed.",
             ("The rabbet is {size} too wide: with the bottom flush, the shoulder stands open by that.",
              "Close the shoulder and plane the end of the side down to the bottom, if the side may lose it."),
             ("The bottom stands {size} beyond the end of the side: the rabbet is too narrow.",
              "Plane the bottom flush, or run the side again with the fence back by that."),
             ("shoulder closed", "shoulder open by {size}", "bottom {size} beyond the end")),
        _floor("bottom", "rabbet", "cheek"),
    ),
    (
        _wrong_face("rabbet"),
        TrialSlip("wrong end", "the side with its upper end to the fence",
                  "The upper end of the side lay against the fence, and the rabbet is there.",
                  turned_over("side", 2), "Turn the side end for end if both ends are alike; else cut the lower end "
                  "too and fill the other rabbet."),
        TrialSlip("forgotten", "the side put aside before the cut", "The side was put aside and never rabbeted.",
                  forgotten("side"), _FORGOTTEN),
    ),
)


def _groove(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {"side": {
        "depth": made.of("depth", "side"), "fit": made.of("stack", "side") - stock.enters.thickest,
        "up": made.of("fence", "side"), "end gap": 0,  # the room is in the bottom's length, not in the side
    }})


_GROOVE_FIT, _GROOVE_LOOK = _fit("bottom", "groove")

GROOVE = Trial(
    joint("groove"), "stacked dado set",
    (
        _stack("bottom", "groove"), _depth("groove"),
        Scale("fence", "Fence, from the lower edge", "wood below the groove", "fence", ("side",), _of("up"), "{aim}"),
    ),
    _groove,
    _in("bottom"),
    (_GROOVE_FIT, Meet("floor", "bottom", "side", 0, "home", -1)),
    (
        _GROOVE_LOOK, _floor("bottom", "groove", allow_more=HIDDEN),
        Look("height", "gap", lambda stood: -stood.off("side", "bottom", 2, "low"),
             "The groove lies at its height.",
             ("The groove lies {size} too high in the side: the bottom does not meet the grooves of the other sides.",
              "Cut the other sides at this same setting: what is alike goes together."),
             ("The groove lies {size} too low in the side: the bottom does not meet the grooves of the other sides.",
              "Cut the other sides at this same setting, if the wood below the groove is enough to hold."),
             ("groove at its height", "groove {size} too high", "groove {size} too low"), felt=False),
    ),
    (
        TrialSlip("wrong edge", "the side with its upper edge to the fence",
                  "The upper edge of the side lay against the fence, and the groove is near it.",
                  turned_over("side", 2),
                  "Turn the side over end for end if its ends are not cut yet; else make a new side."),
        _wrong_face("groove"),
        TrialSlip("wrong side of the line", "with the stack on the wrong side of the line",
                  "The groove was cut below its line, not above it.",
                  beside("side", 2, -1), "Glue a strip into it, plane it flush, and groove the side again."),
    ),
)


def _stopped(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {"side": {
        "depth": made.of("depth", "side"), "fit": made.of("stack", "side") - stock.enters.thickest,
        "stop": made.of("stop", "side"),
    }})


def _behind_stop(stock: Stock, plan: Values) -> Box:
    """The back half of what is in the dado, where its stop is not met."""
    return Box((_mouth(stock, plan).low[0], plan["stop"] + share(stock.width - plan["stop"], 2, 1)[0], -FAR),
               (FAR, FAR, FAR))


_STOPPED_FIT, _STOPPED_LOOK = _fit("shelf", "dado", _behind_stop)

STOPPED_DADO = Trial(
    joint("stopped dado"), "stacked dado set",
    (
        _stack("shelf", "dado"), _depth("dado"),
        Scale("stop", "Stop block, from the front edge", "wood before the dado", "stop", ("side",), _of("stop"),
              "{aim}"),
    ),
    _stopped,
    _in("shelf"),
    (
        _STOPPED_FIT,
        Meet("stop", "shelf", "side", 1, "home", -1, part=_mouth),
        Meet("floor", "shelf", "side", 0, "home", -1),
    ),
    (
        _STOPPED_LOOK, _floor("shelf", "dado"),
        Look("front", "gap", lambda stood: stood.room["stop"][0] or 0, "The front edges are flush.",
             ("The dado begins {size} nearer to the front edge than the notch covers: a gap is left before the shelf.",
              "Nothing shows while the shoulder of the shelf covers it; let in a slip of wood where it does not."),
             ("The shelf stands {size} behind the front edge of the side: its notch strikes the stop of the dado.",
              "Pare the end of the dado back to the line with a chisel, or deepen the notch of the shelf by that."),
             ("front edges flush", "gap of {size} before the shelf", "shelf {size} behind the front edge"),
             allow=INCH // 64, felt=False),
    ),
    (
        TrialSlip("wrong end of the cut", "the side with its back edge foremost",
                  "The stop was measured from the back edge: the dado is open at the front.",
                  turned_over("side", 1), "Let in a piece of the same wood at the front edge, or cut a new side."),
        _wrong_face("dado"),
        TrialSlip("wrong side of the line", "with the stack on the wrong side of the line",
                  "The dado was cut below its line, not above it.", beside("side", 2, -1),
                  "Fill the dado with a strip, glued and planed flush, and cut it again where it belongs."),
    ),
)


def _tongue(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {
        "side": {"depth": made.of("depth", "side"), "fit": made.of("stack", "side") - plan["tongue"]},
        "bottom": {"tongue": made.of("tongue", "bottom")},
    })


def _tongue_alone(stock: Stock, _plan: Values) -> Box:
    return Box((-FAR, -FAR, -FAR), (stock.receives.thickness, FAR, FAR))


_TONGUE_FIT, _TONGUE_LOOK = _fit("bottom", "dado")
_SMALL = (INCH // 16, 3 * MM // 2)

TONGUE = Trial(
    joint("tongue"), "stacked dado set",
    (
        Scale("stack", "Stack, width of the dado", "width of the dado", "stack", ("side",),
              lambda _stock, plan: plan["tongue"] + plan["fit"], "{aim}, {fit} more than the tongue", _SMALL),
        Scale("depth", "Depth of the dado", "depth of the dado", "depth", ("side",), _of("depth"), "{aim}", _SMALL),
        Scale("tongue", "Fence for the rabbet: what it leaves as the tongue", "thickness of the tongue", "fence",
              ("bottom",), _of("tongue"), "{aim}", _SMALL),
    ),
    _tongue,
    _in("bottom"),
    (
        _TONGUE_FIT,
        Meet("end", "bottom", "side", 0, "read", part=_tongue_alone),
        Meet("shoulder", "bottom", "side", 0, "home", -1),
    ),
    (
        _TONGUE_LOOK,
        Look("shoulder", "gap", lambda stood: stood.room["shoulder"][0] or 0,
             "The shoulder is closed on the face of the side.",
             less=("The shoulder stands open by {size}: the tongue meets the floor of the dado first.",
                   "Take that off the end of the tongue with a shoulder plane, or run the dado deeper."),
             brief=("shoulder closed", "", "shoulder open by {size}")),
        Look("flush", "gap", lambda stood: stood.off("bottom", "side", 2, "low"),
             "The outer faces are flush.",
             ("The bottom stands {size} inside the end of the side.", "Plane the end of the side down to it."),
             ("The bottom stands {size} beyond the end of the side.", "Plane the bottom flush."),
             ("outer faces flush", "bottom {size} inside the end", "bottom {size} beyond the end")),
    ),
    (
        TrialSlip("wrong face", "the bottom with its rabbet in the other face",
                  "The bottom was rabbeted in its inner face: the tongue is flush with the outer one.",
                  turned_over("bottom", 2), "Turn the bottom over if both faces are alike; else cut it anew."),
        TrialSlip("dado forgotten", "the side put aside before its dado",
                  "The side was put aside and never dadoed.", forgotten("side"), _FORGOTTEN),
        TrialSlip("wrong end", "the side with its upper end to the fence",
                  "The dado was measured from the upper end of the side.", turned_over("side", 2),
                  "Turn the side end for end if both ends are alike; else fill the dado and cut it again."),
    ),
)


def _drawer(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    return each_board(kind, stock, plan, {
        "front": {"lip": made.of("lip", "front")},
        "side": {"fit": plan["groove"] - made.of("fence", "side"),
                 "tongue length": made.of("depth", "side") - plan["end gap"]},
    })


def _near_inside(stock: Stock, plan: Values) -> Box:
    """The half of the side's dado next to its inner face, where the end of the tongue is not met."""
    return Box((stock.enters.thickness - share(plan["tongue length"], 2, 1)[0], -FAR, -FAR), (FAR, FAR, FAR))


DRAWER_LOCK = Trial(
    joint("drawer lock"), "stacked dado set",
    (
        Scale("lip", "Fence for the groove: what it leaves as the lip", "thickness of the lip", "fence", ("front",),
              _of("lip"), "{aim}", _SMALL),
        Scale("fence", "Fence for the dado, from the end of the side", "wood before the dado in the side", "fence",
              ("side",), lambda _stock, plan: plan["groove"] - plan["fit"], "{aim}, {fit} less than the groove is wide",
              _SMALL),
        Scale("depth", "Depth of the dado in the side", "depth of the dado", "depth", ("side",),
              lambda _stock, plan: plan["tongue length"] + plan["end gap"], "{aim}", _SMALL),
    ),
    _drawer,
    Meet("enters", "side", "front", 1, "home", -1),
    (
        Meet("fit", "side", "front", 1, "between", part=_near_inside),
        Meet("end", "side", "front", 0, "home", 1),
    ),
    (
        Look("fit", "fit", lambda stood: stood.play("fit"),
             "The end of the side between the lip and the tongue of the front",
             ("", "Glue a shaving to the inner side of the lip, and fit it again."),
             ("", "Plane a shaving off the tongue, on its inner side, or off the end of the side.")),
        Look("tongue", "gap", lambda stood: narrowest([stood.room["end"][1] or 0, 0]),
             "The side is flush with the end of the front.",
             less=("The side stands {size} outside the end of the front: the tongue meets the floor of its dado first.",
                   "Take that off the end of the tongue, or run the dado deeper: both boards are saved."),
             brief=("side flush", "", "side {size} outside the end")),
        Look("lip", "gap", lambda stood: stood.off("side", "front", 1, "low"),
             "The side stands as far behind the face of the front as was meant.",
             ("The lip is {size} too thick: the drawer comes out longer by that.",
              "Plane the face of the front down by that, if it may lose it."),
             ("The lip is {size} too thin: the drawer comes out shorter by that.",
              "Leave it: where the slide allows it, nothing is lost."),
             ("lip as thick as meant", "lip {size} too thick", "lip {size} too thin"),
             allow=INCH // 64, felt=False),
    ),
    (
        TrialSlip("wrong face", "the side with its dado in the outer face",
                  "The dado of the side is in its outer face: the side is one of the other hand, upside down.",
                  turned_over("side", 0), "Turn the side over, if its edges are still alike: it serves at the other "
                  "end of the front."),
        TrialSlip("dado forgotten", "the side put aside before its dado",
                  "The side was put aside and never dadoed.", forgotten("side"), _FORGOTTEN),
    ),
)
