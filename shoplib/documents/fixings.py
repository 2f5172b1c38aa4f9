"""What holds the boards together: which screws the plan lists, and what it leaves to the maker."""

from collections.abc import Iterable

from shoplib.documents.cautions import hangs
from shoplib.documents.page_section import Section
from shoplib.lists.butted import screwed_and_open, under_back
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Joint
from shoplib.words.naming import and_list, plural

YOURS = "glue, and screws or nails of your choice; not worked out"
"""What is said of a fixing that the plan does not give."""


def against(cabinet: Cabinet, joints: Iterable[Joint]) -> str:
    """The joints by what their boards do: "toe boards against sides; backs against bottoms and sides"."""
    met: dict[str, set[str]] = {}
    for joint in joints:
        enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
        met.setdefault(plural(enters.role or enters.name), set()).add(plural(receives.role or receives.name))
    return "; ".join(f"{one} against {and_list(sorted(others))}" for one, others in met.items())


def fixings(cabinet: Cabinet) -> Section:
    """For every way that two boards meet: with the screws of the table, or left to the maker."""
    listed, open_ = screwed_and_open(cabinet)
    lines = []
    if listed:
        lines.append(f"With the screws of the table: {against(cabinet, listed)}.")
    if open_:
        lines.append(f"Butted ({YOURS}): {against(cabinet, open_)}.")
    if any(joint.depth for joint in cabinet.joints):
        fingers = ", or goes between fingers" if any(joint.kind == "finger" for joint in cabinet.joints) else ""
        lines.append(f"What is let into a dado, rabbet or groove{fingers}: {YOURS}.")
    if under_back(cabinet):
        lines.append("The box bottom lies under the box back: fix it up into the lower edge of the back with screws "
                     "or nails of your choice; not worked out.")
    standing = sorted({plural(h.what) if h.what != "foot" else "feet"
                       for h in cabinet.hardware if h.what in ("caster", "foot")})
    if standing:
        lines.append(f"{and_list(standing).capitalize()}: with the screws or bolts that their maker names; "
                     "not worked out.")
    return Section("Fixings", tuple(lines))


def hanging(cabinet: Cabinet) -> Section:
    """For a case with a rail and nothing to stand on: what the plan gives for hanging it, and what it does not."""
    if not hangs(cabinet):
        return Section("Hanging it")
    page, lines = Writing(cabinet.style), []
    for rail in (board for board in cabinet.boards if board.role == "rail"):
        foot = rail.box.low[2] - cabinet.outside.low[2]
        lines.append(
            f"The plan gives {rail.name}, {page.length(rail.width)} wide and {page.measured(rail.thickness)} thick, in "
            f"one piece from side to side, its lower edge {page.length(foot)} above the underside of the case."
        )
        hollow = _hollow(rail, cabinet)
        if hollow:
            lines.append(
                f"Between the back and the wall {page.length(hollow)} stays hollow: pack it out where the screws go "
                "through the rail, or they bow the back."
            )
    lines.append(
        "It does not give the screws into the wall, their number and length, or the studs; and what load the screws, "
        "the wall and the rail carry is not worked out. The maker of the screws says what they carry; local codes "
        "and, where they call for it, a licensed trade decide how to fasten to a building."
    )
    return Section("Hanging it", tuple(lines))


def _hollow(rail: Board, cabinet: Cabinet) -> int:
    """How far the back behind a rail stands off the wall, with the rear of the case against it; 0 without a back."""
    behind = [
        board.box.high[1] for board in cabinet.boards
        if board.role == "back" and board.box.low[2] < rail.box.high[2] and rail.box.low[2] < board.box.high[2]
    ]
    return cabinet.outside.high[1] - behind[0] if behind else 0
