"""The splined mitre: two bevelled ends, and a strip in a slot across both, square to the bevel.

The outside corner (toe) lies at x = 0, z = 0. A place is said by how far it lies up the mitre from there, and how far
off it, each by its share of x and z: half of a diagonal each way, so that every corner is a whole tick.
"""

from fractions import Fraction
from math import radians, tan

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Sizes, Stock, Values, must_leave
from shoplib.joints.draft import Draft, middle
from shoplib.joints.in_case import NO_SOURCE, drawn_apart, eighth, level, one_step, side
from shoplib.joints.in_frame import TIGHT_FIT
from shoplib.measure import INCH, MM, narrowest, share, to_step
from shoplib.measure.choose import scaled
from shoplib.model.box import Box
from shoplib.model.placement import Axes
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint

STRIP: Axes = ("+y", "+z", "+x")

THICK = Setting(
    "spline", "thickness of the spline", lambda stock: stock.natural(INCH // 16, 3 * MM // 2),
    lambda stock: stock.part(stock.receives.thickness, 3), eighth, one_step,
    f"1/8 in, the width of a saw's cut ({NO_SOURCE})",
)
DEEP = Setting(
    "slot", "depth of the slot in each mitre", eighth, lambda stock: stock.part(stock.receives.thickness, 4, 3),
    lambda stock: to_step(stock.part(stock.receives.thickness, 5, 2), stock.style.step), one_step,
    f"to about half the thickness ({NO_SOURCE})",
)
HEEL = Setting(
    "heel", "wood between the slot and the heel", eighth, lambda stock: share(stock.receives.thickness, 2, 1)[0],
    eighth, one_step, f"about 1/8 in from the heel in 3/4 stock ({NO_SOURCE})",
)
SLOT_GAP = Setting(
    "end gap", "each slot deeper than half the spline", lambda stock: 0,
    lambda stock: stock.natural(INCH // 16, 3 * MM // 2), lambda stock: stock.natural(INCH // 64, MM // 2), one_step,
    f"both slots together 1/32 to 1/16 in more than the spline ({NO_SOURCE})",
)
STOP = Setting(
    "stop", "slot stopped before each edge", lambda stock: 0, lambda stock: share(stock.width, 3, 1)[0],
    lambda stock: 0, one_step, f"none: the slot runs through, and its end shows ({NO_SOURCE})",
)

_HALF_ROOT = 707_106_781


def leg(length: int) -> int:
    """How far along x (and along z) a line of this length goes that leans by 45 degrees, to the nearest tick.

    >>> leg(1_000_000)
    707107
    """
    return to_step(length * _HALF_ROOT, 10**9) // 10**9


def slanting(stock: Stock, values: Values) -> Sizes:
    """What is set for mitre, slot and spline, each as it is measured: square to the mitre or along it."""
    return (
        ("mitre, along each board", stock.receives.thickness),
        ("slot in each mitre, width", values["spline"] + values["fit"]),
        ("slot in each mitre, depth", values["slot"]),
        ("heel to the slot, along the mitre", values["heel"]),
        ("long point to the slot, along the mitre", toe_to_slot(stock, values)),
        *(
            (f"{what}{f', for the {name}' if name else ''}", size)
            for name, thick in _thicknesses(stock)
            for what, size in (
                ("tip of the blade above the table, leaning 45 degrees", blade_height(stock, values, thick)),
                ("fence from the blade, at the table", blade_to_fence(stock, values, thick)),
            )
            if size > 0
        ),
        ("spline, thickness", values["spline"]),
        ("spline, across the mitre", 2 * (values["slot"] - values["end gap"])),
        ("spline, along the corner", stock.width - 2 * values["stop"]),
        ("slot in each mitre, deeper than the spline goes", values["end gap"]),
    )


def mitre_face(thickness: int) -> int:
    """How long the slant of a mitre is across the board, to the nearest tick.

    >>> mitre_face(1_000_000)
    1414214
    """
    return to_step(thickness * 2 * _HALF_ROOT, 10**9) // 10**9


def _up(stock: Stock, values: Values) -> int:
    """The wall of the slot that is nearer to the toe: how far it lies up the mitre, as its share of x and z."""
    lesser = narrowest([stock.enters.thickness, stock.receives.thickness])
    return lesser - _share(values["heel"]) - _share(values["spline"] + values["fit"])


def _share(length: int) -> int:
    """As `leg`, and a working tells it."""
    return scaled(length, Fraction(_HALF_ROOT, 10**9), "0.7071")


def _thicknesses(stock: Stock) -> tuple[tuple[str, int], ...]:
    """The boards by name that are set up by themselves; one without a name where both are as thick."""
    bottom, upright = stock.enters.thickness, stock.receives.thickness
    return (("", bottom),) if bottom == upright else (("bottom", bottom), ("side", upright))


def toe_to_slot(stock: Stock, values: Values) -> int:
    """How far the slot begins from the long point, along the mitre (ticks); it is marked so, and checked so.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import MM_STYLE
    >>> toe = toe_to_slot(stock_of(19 * MM, style=MM_STYLE), {"heel": 3 * MM, "spline": 3 * MM, "fit": MM // 50})
    >>> round(toe / MM, 2)
    20.85
    """
    return scaled(_up(stock, values), Fraction(2 * _HALF_ROOT, 10**9), "1.4142")


def blade_height(stock: Stock, values: Values, thickness: int) -> int:
    """How high the tip of a blade stands that leans by 45 degrees, for the slot in a board of this thickness (ticks).

    The board lies on its inside face, so that the mitre hangs over and the long point is at its upper face. The
    blade's highest corner cuts the floor of the slot at the wall nearer to the toe: of a slot that ends `out` from the
    heel along the mitre and is `deep`, it stands (out + deep) / square root of 2 above the table.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import MM_STYLE
    >>> values = {"heel": 3 * MM, "spline": 3 * MM, "fit": MM // 50, "slot": 76 * MM // 10}
    >>> round(blade_height(stock_of(19 * MM, style=MM_STYLE), values, 19 * MM) / MM, 2)
    9.63
    """
    return thickness - _up(stock, values) + _share(values["slot"])


def blade_to_fence(stock: Stock, values: Values, thickness: int) -> int:
    """How far a fence at the long point stands from a blade that leans away from it, at the table (ticks).

    Measured from the side of the blade that looks to the fence; less than nothing where the blade comes out of the
    table beyond the long point, so that no fence can stand there.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import MM_STYLE
    >>> values = {"heel": 3 * MM, "spline": 3 * MM, "fit": MM // 50}
    >>> round(blade_to_fence(stock_of(19 * MM, style=MM_STYLE), values, 19 * MM) / MM, 2)
    10.49
    """
    return 2 * _up(stock, values) - thickness


def gapes(face: int, tenths: int) -> int:
    """How wide a mitre face gapes at its end that is so many tenths of a degree off, to the nearest tick.

    Eight cuts, each 0.1 degree off, in stock of 2 in: 2 x 1.4142 x tan 0.8 = 0.0395 in.

    >>> round(gapes(mitre_face(2 * INCH), 8) / INCH, 4)
    0.0395
    """
    return to_step(face * round(tan(radians(tenths / 10)) * 10**9), 10**9) // 10**9


def last_corner(off: int, over: int, face: int, corners: int = 4) -> int:
    """How far the last corner of a frame gapes over the length of its mitre faces, when all others are pulled tight.

    Each corner is `off` over a length `over`, as a square shows it. The corners add up, for angles do; that small
    angles and small gaps grow alike is plain geometry.

    >>> last_corner(2, 60, 20, 4)
    2
    """
    part = Fraction(int(face), int(over))
    return share(corners * off * part.numerator, part.denominator, 1)[0]


def make(stock: Stock, values: Values) -> Pair:
    """Two mitred boards, outsides flush; where they differ in thickness the heel shows a step as high as that.

    Each board loses thickness^2 / 2 * width for its mitre and (spline + fit) * slot * (width - 2 * stop). The spline
    is 2 * (slot - end gap) wide and `spline` thick; its record is the square box round it, from which four corners are
    cut, for boards lie square in a plan. Its grain runs across the mitre. Raises CannotCut where the slot comes
    nearer than 3 mm to a face or the heel.
    """
    stop, width = values["stop"], stock.width
    thick, face = stock.enters.thickness, stock.receives.thickness
    strip, fit, gap, deep = (leg(values[name]) for name in ("spline", "fit", "end gap", "slot"))
    heel = narrowest([thick, face])
    near = share(fit, 2, 1)[0]
    upper = heel - leg(values["heel"])
    lower = upper - strip - fit
    must_leave(stock, "heel", "between the slot and the heel", values["heel"])
    must_leave(stock, "slot", "between the slot and the outside", lower - deep)
    must_leave(stock, "end gap", "of the spline in a slot", deep - gap)
    must_leave(stock, "stop", "of the spline between the stops", width - 2 * stop)
    must_leave(stock, "slot", "behind the slot in the length of a board",
               narrowest([stock.enters_length + face, stock.receives_length + thick]) - upper - deep)
    upright, bottom = side(stock, 0), level(stock, face, "bottom")
    bottom.take_prism("mitre", 1, [(0, 0), (thick, 0), (thick, thick)], 0, width, "side")
    upright.take_prism("mitre", 1, [(0, 0), (0, face), (face, face)], 0, width, "bottom")
    for draft, sign in ((bottom, 1), (upright, -1)):
        slot = [(lower, 0), (upper, 0), (upper, sign * deep), (lower, sign * deep)]
        draft.take_prism("slot", 1, [_at(*place) for place in slot], stop, width - stop, "spline")
    spline = _strip((lower + fit - near, upper - near), deep - gap, (stop, width - stop), values["spline"])
    half, centre = middle(0, width), middle(lower, upper)
    return Pair(
        "splined mitre", stock, values, (upright.board, bottom.board, spline.board),
        (Joint("mitre", "bottom", "side", "-x", face),),
        (
            Clearance("mitre on mitre", "bottom", "side", "-x", 0),
            Clearance("fit towards the heel", "spline", "bottom", "+z", 2 * near),
            Clearance("fit towards the toe", "spline", "side", "-z", 2 * (fit - near)),
            *_ends(gap, near, fit - near),
        ),
        {"side": (0, 0, drawn_apart(stock)), "bottom": (drawn_apart(stock), 0, 0), "spline": (0, 0, 0)},
        ("y", half),
        {
            "mitre face": ("bottom", (middle(0, lower), 0, middle(0, lower))),
            "heel": ("bottom", (heel, 0, heel)),
            "toe": ("bottom", (0, 0, 0)),
            "slot": ("side", (centre - deep, half, centre + deep)),
            "spline": ("spline", (centre, half, centre)),
        },
    )


def _ends(gap: int, towards_bottom: int, towards_side: int) -> tuple[Clearance, ...]:
    """The ends of the spline, where they strike before its faces do; else its moves along a board tell of its faces."""
    bottom = Clearance("end of the spline in the bottom", "spline", "bottom", "+x", 2 * gap)
    mate = Clearance("end of the spline in the side", "spline", "side", "-x", 2 * gap)
    return (*((bottom,) if gap <= towards_bottom else ()), *((mate,) if gap <= towards_side else ()))


def _at(up: int, off: int) -> tuple[int, int]:
    """A place on the mitre's own axes as (z, x), the outline of what runs along y."""
    return up - off, up + off


def _strip(span: tuple[int, int], reach: int, ends: tuple[int, int], thickness: int) -> Draft:
    """The spline: the square box round it, less the four corners."""
    low, high = span[0] - reach, span[1] + reach
    box = Box((low, ends[0], low), (high, ends[1], high))
    draft = Draft("spline", Sheet("spline stock", "plywood", thickness), STRIP, box, grain="none")
    (toe_side, toe_bottom), (heel_side, heel_bottom) = (
        (_at(up, -reach), _at(up, reach)) for up in span
    )
    for corner, one, other in (
        ((low, low), toe_side, toe_bottom), ((high, low), toe_side, heel_side),
        ((high, high), heel_side, heel_bottom), ((low, high), toe_bottom, heel_bottom),
    ):
        draft.take_prism("corner", 1, [corner, one, other], *ends)
    return draft


SPLINED_MITRE = JointKind(
    "splined mitre", "splined mitre", 3, (THICK, DEEP, HEEL, TIGHT_FIT, SLOT_GAP, STOP), make,
    lambda stock, values: stock.receives.thickness, slanting,
)
"""Neat, and weak without its spline (Noyes, Handwork in Wood (1910) pp. 167, 187, read); opens inside in dry air."""
