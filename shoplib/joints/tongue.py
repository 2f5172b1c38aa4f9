"""The tongue in dado (housed tongue; dado and rabbet; barefaced tongue): a corner that the sheet's thickness spares."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import (
    FIT,
    GLUE_GAP,
    NO_SOURCE,
    depth,
    depth_less_gap,
    drawn_apart,
    eighth,
    level,
    one_step,
    side,
)
from shoplib.measure import INCH, MM, to_step
from shoplib.model.box import Box
from shoplib.model.solved import Joint

DEPTH = depth(
    "a third of the side: 1/4 in 3/4 (common practice, no source); Foster, Carpentry and Woodwork (1911) Fig. 148, "
    "scaled from the figure, 0.48 of it",
    lambda stock: stock.part(stock.receives.thickness, 3),
)
TONGUE = Setting(
    "tongue", "thickness of the tongue", eighth, lambda stock: stock.enters.thinnest - eighth(stock),
    lambda stock: to_step(stock.part(stock.enters.thickness, 3), stock.natural(INCH // 32, MM // 2)), one_step,
    f"a third to a half, normally the width of the cutter ({NO_SOURCE}); Foster Fig. 148, scaled from the figure, 0.52",
)
FACE = Setting(
    "face", "which face the tongue is flush with", lambda stock: 0, lambda stock: 1, lambda stock: 0, lambda stock: 1,
    "the inner face, so that short grain is left beyond the dado: Foster Fig. 148", "choice", ("inner", "outer"),
)
BEYOND = Setting(
    "beyond", "side beyond the board's outer face", lambda stock: 0, lambda stock: stock.natural(4 * INCH, 100 * MM),
    lambda stock: 0, one_step, "none at a corner: outside faces are flush (geometry)",
)


def make(stock: Stock, values: Values) -> Pair:
    """A rabbeted board, its tongue in a dado of the side.

    Taken from the side: depth * (tongue + fit) * width; from the board: (depth - end gap) * (thickness - tongue) *
    width. At a corner the dado begins thickness - tongue from the end. Raises CannotCut where under the dado or
    between it and the end of the side less than 3 mm is left; as much as the tongue is thick is better (common
    practice, no source).
    """
    deep, fit, gap, tongue = values["depth"], values["fit"], values["end gap"], values["tongue"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    must_leave(stock, "depth", "under the dado in the side", stock.receives.thinnest - deep)
    must_leave(stock, "end gap", "of the tongue in the dado", deep - gap, stock.style.step)
    must_leave(stock, "tongue", "as the tongue", tongue)
    must_leave(stock, "tongue", "to cut away beside the tongue", thick - tongue, stock.style.step)
    low = 0 if values["face"] else thick - tongue
    must_leave(stock, "beyond", "between the dado and the end of the side", low + values["beyond"])
    upright, board = side(stock, -values["beyond"]), level(stock, deep - gap, "bottom")
    upright.take("dado", Box((face - deep, 0, low), (face, width, low + tongue + fit)), "bottom")
    end = face - deep + gap
    waste = (tongue, thick) if values["face"] else (0, thick - tongue)
    board.take("rabbet", Box((end, 0, waste[0]), (face, width, waste[1])), "side")
    entered = Box((end, 0, low), (face, width, low + tongue))
    half, centre = middle(0, width), middle(low, low + tongue)
    return Pair(
        "tongue", stock, values, (upright.board, board.board),
        (Joint("tongue", "bottom", "side", "-x", deep, fit, gap, tongue),),
        (
            Clearance("shoulder on the side's face", "bottom", "side", "-x", 0),
            Clearance("end of the tongue and bottom of the dado", "bottom", "side", "-x", gap, entered),
            Clearance("tongue on the lower wall", "bottom", "side", "-z", 0),
            Clearance("fit over the tongue", "bottom", "side", "+z", fit),
        ),
        {"side": (0, 0, 0), "bottom": (drawn_apart(stock), 0, 0)},
        ("y", half),
        {
            "tongue": ("bottom", (end, 0, centre)),
            "shoulder": ("bottom", (face, 0, middle(*waste))),
            "dado": ("side", (face - deep, 0, centre)),
            "short grain": ("side", (middle(face - deep, face), 0, middle(-values["beyond"], low))),
        },
    )


TONGUE_IN_DADO = JointKind("tongue", "tongue in dado", 1, (DEPTH, FIT, GLUE_GAP, TONGUE, FACE, BEYOND), make,
                           depth_less_gap)
"""Small boxes and case corners, glued without nails (Noyes, Handwork in Wood (1910) p. 187, read)."""
