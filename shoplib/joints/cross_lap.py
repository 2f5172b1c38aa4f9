"""The cross lap: two boards cross, each let half into the other."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Stock, Values
from shoplib.joints.draft import RAIL, Draft, middle
from shoplib.joints.half_lap import LAP
from shoplib.joints.in_case import drawn_apart
from shoplib.joints.in_frame import TIGHT_FIT, laps_hold, stile
from shoplib.measure import share
from shoplib.model.box import Box
from shoplib.model.solved import Joint


def make(stock: Stock, values: Values) -> Pair:
    """A rail across a stile, faces flush. Each notch is as wide as the other board and the fit.

    Taken from the rail: (thickness - lap) * (width of the stile + fit) * width of the rail; from the stile: lap *
    (width of the rail + fit) * width of the stile. Raises CannotCut where a lap is under 3 mm.
    """
    lap, fit, across, width = values["lap"], values["fit"], stock.across, stock.width
    thick = stock.enters.thickness
    laps_hold(stock, lap)
    half = share(stock.enters_length, 2, 1)[0]
    over = Draft("rail", stock.enters, RAIL, Box((-half, 0, 0), (across + half, thick, width)))
    down = share(stock.receives_length, 2, 1)[0]
    under = stile(stock, -down, width + down)
    near = share(fit, 2, 1)[0]
    far = fit - near
    over.take("notch", Box((-near, lap, 0), (across + far, thick, width)), "stile")
    under.take("notch", Box((0, 0, -near), (across, lap, width + far)), "rail")
    return Pair(
        "cross lap", stock, values, (under.board, over.board),
        (Joint("cross lap", "rail", "stile", "+y", lap, fit),),
        (
            Clearance("floor on floor", "rail", "stile", "+y", 0),
            Clearance("fit to the left", "rail", "stile", "-x", far),
            Clearance("fit to the right", "rail", "stile", "+x", near),
            Clearance("fit below", "rail", "stile", "-z", near),
            Clearance("fit above", "rail", "stile", "+z", far),
        ),
        {"stile": (0, 0, 0), "rail": (0, -drawn_apart(stock), 0)},
        ("z", middle(0, width)),
        {
            "floor": ("stile", (middle(0, across), lap, middle(0, width))),
            "shoulder": ("stile", (middle(0, across), middle(0, lap), -near)),
            "lap": ("rail", (middle(0, across), middle(0, lap), middle(0, width))),
        },
    )


CROSS_LAP = JointKind("cross lap", "cross lap", 2, (LAP, TIGHT_FIT), make, lambda stock, values: 0, frame=True)
"""Keeps two crossing rails in one plane; neither is longer for it."""
