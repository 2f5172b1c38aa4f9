"""The stopped dado (gain; stopped housing): it ends before the front edge, and the shelf is notched round the stop."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.dado import DEPTH
from shoplib.joints.draft import middle
from shoplib.joints.in_case import END_GAP, FIT, depth_less_gap, drawn_apart, level, one_step, reading_spread, side
from shoplib.measure import INCH, MM, share
from shoplib.model.box import Box
from shoplib.model.solved import Joint

STOP = Setting(
    "stop", "stop behind the front edge", lambda stock: stock.natural(INCH // 4, 6 * MM),
    lambda stock: share(stock.width, 2, 1)[0], lambda stock: stock.natural(INCH // 2, 12 * MM), one_step,
    "1/2 in, Windsor, Mission Furniture part 3 (1912), dictionary stand (read)",
)


def make(stock: Stock, values: Values) -> Pair:
    """A shelf flush with the side's front edge, its notch round the stop.

    Taken from the side: depth * (thickest + fit) * (width - stop); from the shelf: (depth - end gap) * stop *
    thickness. Raises CannotCut where under the dado, before the stop or behind it too little is left.
    """
    deep, fit, gap, stop = values["depth"], values["fit"], values["end gap"], values["stop"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    must_leave(stock, "depth", "under the dado in the side", stock.receives.thinnest - deep)
    must_leave(stock, "end gap", "of the shelf in the dado", deep - gap, stock.style.step)
    must_leave(stock, "stop", "before the stop", stop)
    must_leave(stock, "stop", "of the shelf behind the stop", width - stop)
    top, end = stock.enters.thickest + fit, face - deep + gap
    upright, shelf = side(stock, -share(stock.receives_length, 2, 1)[0]), level(stock, deep - gap)
    upright.take("dado", Box((face - deep, stop, 0), (face, width, top)), "shelf")
    shelf.take("notch", Box((end, 0, 0), (face, stop, thick)), "side")
    entered = Box((end, stop, 0), (face, width, thick))
    half = middle(stop, width)
    return Pair(
        "stopped dado", stock, values, (upright.board, shelf.board),
        (Joint("dado", "shelf", "side", "-x", deep, fit, gap),),
        (
            Clearance("shoulder on the side's face", "shelf", "side", "-x", 0),
            Clearance("end of the shelf and bottom of the dado", "shelf", "side", "-x", gap, entered),
            Clearance("notch against the stop", "shelf", "side", "-y", 0),
            Clearance("shelf on the lower wall", "shelf", "side", "-z", 0),
            Clearance("fit under the upper wall", "shelf", "side", "+z", fit + reading_spread(stock)),
        ),
        {"side": (0, 0, 0), "shelf": (drawn_apart(stock), 0, 0)},
        ("z", middle(0, thick)),
        {
            "bottom": ("side", (face - deep, half, middle(0, thick))),
            "wall": ("side", (middle(face - deep, face), half, top)),
            "stop": ("side", (middle(face - deep, face), stop, middle(0, thick))),
            "notch": ("shelf", (face, middle(0, stop), middle(0, thick))),
            "end of the shelf": ("shelf", (end, half, middle(0, middle(0, thick)))),
        },
    )


STOPPED_DADO = JointKind(
    "stopped dado", "stopped dado", 1, (DEPTH, FIT, END_GAP, STOP), make, depth_less_gap
)
"""As the dado, with nothing to be seen from the front."""
