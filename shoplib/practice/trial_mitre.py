"""Practice of the splined mitre: what the blade's tilt is off counts twice where two mitres meet."""

from dataclasses import replace

from shoplib.checks.pair_fit import ways
from shoplib.joints import joint
from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.joints.splined_mitre import blade_height, blade_to_fence, leg, mitre_face
from shoplib.measure import INCH, MM, narrowest, share
from shoplib.model.board import Board, Cut, PrismCut
from shoplib.model.box import Box
from shoplib.practice.trial_kind import FAR, Look, Made, Meet, Scale, Stood, Trial, TrialSlip, each_board
from shoplib.practice.trial_pegs import leaning
from shoplib.practice.trial_slips import each_cut, forgotten, turned_over
from shoplib.practice.trial_spreads import DEGREE
from shoplib.practice.trial_stand import moved

HALF_SQUARE = 45 * DEGREE
BOTH = ("bottom", "side")


def _mitred(name: str, angle: int) -> object:
    """The mitre of a board sawn at this angle, from the same toe: a change at the heel.

    Its slot is sawn from the mitre as it came out, so it reaches as far out as there is wood.
    """
    def change(board: Board, cut: Cut) -> Cut:
        if not isinstance(cut, PrismCut) or angle == HALF_SQUARE:
            return cut
        if cut.kind == "slot":
            one, other, *floor = cut.outline
            return replace(cut, outline=(_beyond(one, floor[1]), _beyond(other, floor[0]), *floor))
        thick = board.thickness
        more = leaning(thick, angle) - thick
        # The corner of the waste at the heel is the one that is away from the end and from the outer face.
        along = board.placement.own_axis(0 if name == "bottom" else 2)
        side = (along - "uvw".index(cut.along) - 1) % 3
        ends = sorted({corner[side] for corner in cut.outline})
        far = ends[0] if abs(ends[0] - board.length // 2) < abs(ends[-1] - board.length // 2) else ends[-1]
        step = more if far == ends[-1] else -more
        outline = tuple(
            tuple(place + step if number == side and corner[side] == far else place
                  for number, place in enumerate(corner))
            for corner in cut.outline
        )
        return replace(cut, outline=outline)

    return each_cut(name, change)


def _beyond(corner: tuple[int, int], floor: tuple[int, int]) -> tuple[int, int]:
    """As far again beyond a corner as an eighth of the way from the floor."""
    return tuple(a + share(a - b, 8, 1)[0] for a, b in zip(corner, floor, strict=True))


def _height(stock: Stock, plan: Values) -> int:
    return blade_height(stock, plan, stock.enters.thickness)


def _slot(stock: Stock, plan: Values, height: int) -> int:
    """How deep a blade cuts that stands so high and leans by 45 degrees: what it is higher, times the root of 2."""
    return plan["slot"] + mitre_face(height - _height(stock, plan))


def _mitre(kind: JointKind, stock: Stock, plan: Values, made: Made) -> Pair:
    slots = {name: _slot(stock, plan, made.of("height", name)) for name in BOTH}
    pair = each_board(kind, stock, plan, {name: {"slot": deep} for name, deep in slots.items()})
    for name in BOTH:
        pair = _mitred(name, made.of("tilt", name))(pair)
    return _pressed(replace(pair, values={**plan, "slot": narrowest(list(slots.values()))}))


def _pressed(pair: Pair) -> Pair:
    """The boards pressed together square to the mitre, as the spline guides them: where the heels meet first, the
    bottom stands off by as much.
    """
    bottom, side = pair.by_name["bottom"], pair.by_name["side"]
    # Going down, the bottom meets the side a little farther out, so a tick or two may be wanting still.
    while (back := ways(bottom, side, 0)[0]) is not None and back < 0:
        half = int(-back // 2) + 1
        bottom = moved(bottom, (half, 0, -half))
    return replace(pair, boards=tuple(bottom if board.name == "bottom" else board for board in pair.boards))


def _at_heel(stock: Stock, _plan: Values) -> Box:
    top = stock.enters.thickness
    return Box((-FAR, -FAR, top - 1), (FAR, FAR, top))


def open_at_heel(stood: Stood) -> int:
    """How far the mitre stands open at its heel, square to it; at its toe where that is under nothing."""
    stands_off = stood.off("bottom", "side", 0, "low")
    return -leg(2 * stands_off) if stands_off else leg(stood.room["heel"][0] or 0)


SPLINED_MITRE = Trial(
    joint("splined mitre"), "single blade in passes",
    (
        Scale("tilt", "Tilt of the blade", "angle of the mitre", "angle", BOTH, lambda *_: HALF_SQUARE, "{aim}, both "
              "boards at one setting"),
        Scale("height", "Height of the leaning blade, for the slot", "inner face to the far corner of the slot",
              "depth", BOTH, _height, "{aim} from the table to the tip, which makes a slot {slot} deep, square to the "
              "mitre; the fence stands {fence} from the blade, at the table, with the long point against it",
              (INCH // 16, 3 * MM // 2),
              lambda stock, plan: {"fence": blade_to_fence(stock, plan, stock.enters.thickness)}),
    ),
    _mitre,
    Meet("enters", "bottom", "side", 0, "home", -1),
    (Meet("heel", "bottom", "side", 0, "read", part=_at_heel),),
    (
        Look("mitre", "gap", open_at_heel, "The mitre is closed from toe to heel.",
             ("The mitre stands open by {size} at its heel, inside: both mitres lean too much.",
              "Plane the toes a little on a shooting board for mitres, if both boards may lose that."),
             ("The mitre stands open by {size} at its toe, outside: both mitres lean too little.",
              "Plane the heels a little on a shooting board for mitres: the outside lengths stay."),
             ("mitre closed", "open by {size} at the heel", "open by {size} at the toe")),
        Look("slot", "gap", lambda stood: stood.pair.values["slot"] - stood.planned.values["slot"],
             "The spline goes in with room at its ends.",
             ("The slots are {size} deeper than was meant: so much less wood is left before the outside.",
              "Leave it where wood enough is left; the spline still holds."),
             ("The slots are {size} too shallow: the spline holds the mitre open.",
              "Plane the spline narrower by twice that: the boards are saved."),
             ("slots as deep as meant", "slots {size} too deep", "slots {size} too shallow"), allow=INCH // 64),
    ),
    (
        TrialSlip("wrong face down", "the bottom with its other face down",
                  "The bottom was mitred with its other face down: its mitre leans the same way as that of its mate.",
                  turned_over("bottom", 2, ("mitre",)), "Cut the mitre anew from the other face: the board loses its "
                  "thickness in length."),
        TrialSlip("slot forgotten", "the bottom put aside before its slot",
                  "The bottom has no slot: the spline stands in its way.", forgotten("bottom", ("slot",)),
                  "The board is saved: cut the slot now."),
    ),
)
