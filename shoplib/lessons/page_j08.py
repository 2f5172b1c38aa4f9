"""What the half laps' page shows beside what every page of a joint has: a frame, and two laps that went wrong."""

from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_frame import Corners, frame_of
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf

_FRAME = {"in": ("18 in", "26 in", "2 in", "3 in", "3/4 in"), "mm": ("450 mm", "650 mm", "50 mm", "75 mm", "19 mm")}
"""An opening, wide and high; stiles and rails, wide; all of them, thick."""


def frame_worked(unit: str) -> Worked:
    """The four boards of a frame with half laps, from its opening."""
    say, names = Say(unit), ("opening, width", "opening, height", "stiles, width", "rails, width", "boards, thickness")
    across, up, stile, rail, thick = (
        leaf(read_length(text), name) for text, name in zip(_FRAME[unit], names, strict=True)
    )
    lapped = (Corners(f"{place} rail", "half lap", {"long": 0}) for place in ("top", "bottom"))
    frame = frame_of(*lapped, wide=across + 2 * stile, high=up + 2 * rail, stile=stile, rail=rail, thick=thick,
                     style=say.style)
    rails, stiles = (frame.by_name[name].length for name in ("top rail", "left stile"))
    lines = [
        ("rails", f"{say.length(across)} + 2 x {say.length(stile)}", say.length(rails)),
        ("stiles", f"{say.length(up)} + 2 x {say.length(rail)}", say.length(stiles)),
    ]
    title = f"A frame round an opening {say.length(across)} by {say.length(up)}, half laps at its corners"
    return Worked(title, lines, why_each([("rails, length", rails), ("stiles, length", stiles)], say.style))


def uneven() -> Figure:
    """A gauge that was set to a quarter, which leaves one board much less than half."""
    return gone_wrong(
        "half lap", "Halves that are no halves",
        "The gauge stood at a quarter. The faces are flush all the same, for both were gauged from the same face; but "
        "the rail keeps a quarter, and breaks first.",
        lap={"in": "3/16 in", "mm": "5 mm"},
    )


def slack() -> Figure:
    """A notch that is wider than what lies in it."""
    return gone_wrong(
        "cross lap", "A notch sawn outside its lines",
        "Both kerfs were lost from the board: the crossing racks, and no glue bridges the shoulders.",
        fit={"in": "1/16 in", "mm": "1.5 mm"},
    )
