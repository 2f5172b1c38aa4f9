"""What the page of bridle, mortise and tenon shows beside what every page of a joint has: a frame with both, and two
that went wrong.
"""

from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_frame import Corners, frame_of
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf

_FRAME = {
    "in": ("22 in", "32 in", "2 in", "3 in", "3/4 in", "1 1/4 in", "1/16 in"),
    "mm": ("550 mm", "800 mm", "50 mm", "75 mm", "19 mm", "32 mm", "1.5 mm"),
}
"""A frame outside, wide and high; stiles and rails, wide; all of them, thick; tenons, long, and their room."""

_NAMES = (
    "frame, outside width", "frame, outside height", "stiles, width", "rails, width", "boards, thickness",
    "tenons, length", "mortises deeper by",
)


def frame_worked(unit: str) -> Worked:
    """The boards of a frame whose top rail has bridles, and its bottom rail tenons."""
    say = Say(unit)
    wide, high, stile, rail, thick, long, room = (
        leaf(read_length(text), name) for text, name in zip(_FRAME[unit], _NAMES, strict=True)
    )
    frame = frame_of(
        Corners("top rail", "bridle", {"long": 0}),
        Corners("bottom rail", "mortise and tenon", {"length": long, "end gap": room}),
        wide=wide, high=high, stile=stile, rail=rail, thick=thick, style=say.style,
    )
    top, bottom, stiles = (frame.by_name[name].length for name in ("top rail", "bottom rail", "left stile"))
    mortise = next(one.depth for one in frame.joints if one.end_gap)
    shoulders = wide - 2 * stile
    lines = [
        ("top rail, with bridles", f"{say.length(shoulders)} + 2 x {say.length(stile)}", say.length(top)),
        ("bottom rail, with tenons", f"{say.length(shoulders)} + 2 x {say.length(long)}", say.length(bottom)),
        ("mortises, deep", f"{say.length(long)} + {say.length(room)}", say.length(mortise)),
        ("stiles", "", say.length(stiles)),
    ]
    sizes = [("shoulder to shoulder", shoulders), ("top rail, length", top), ("bottom rail, length", bottom),
             ("mortises, depth", mortise), ("stiles, length", stiles)]
    title = f"A frame {say.length(wide)} by {say.length(high)} outside, stiles {say.length(stile)} wide"
    return Worked(title, lines, why_each(sizes, say.style))


def thin_fork() -> Figure:
    """A bridle with a tongue far over a third."""
    return gone_wrong(
        "bridle", "A tongue too thick for its fork",
        "Driven in, it splits the fork from the bottom of the slot: hardly any cheek is left on either side.",
        tongue={"in": "15/32 in", "mm": "12 mm"},
    )


def no_room() -> Figure:
    """A tenon that strikes the bottom of its mortise."""
    return gone_wrong(
        "mortise and tenon", "A tenon that strikes first",
        "The tenon is as long as its mortise is deep: glue and a crumb of wood keep the shoulders open.",
        end_gap={"in": "0 in", "mm": "0 mm"},
    )
