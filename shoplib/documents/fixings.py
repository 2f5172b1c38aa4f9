"""What holds the boards together: which screws the plan lists, and what it leaves to the maker."""

from collections.abc import Iterable

from shoplib.buying.brads import brads_into, dry_backs
from shoplib.buying.maker_named import rails_of, through_rail
from shoplib.buying.screws import unfitted, unscrewed
from shoplib.documents.cautions import hangs, on_casters
from shoplib.documents.page_section import Section
from shoplib.lists.butted import screwed_and_open, under_back
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.screwed import BOTTOM_SCREWS
from shoplib.model.solved import Cabinet, Joint
from shoplib.words.naming import and_list, plural

YOURS = "and the screws and brads of the table, their number estimated"
"""How butted boards are fixed for which the plan itself gives no screws, besides by glue."""

_UNGLUED = ("runner", "kicker", "front")
"""Roles of boards that are screwed without glue, so that they can be moved."""


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
    nailed = {*brads_into(cabinet)} & {joint.enters for joint in cabinet.joints if joint.kind == "rabbet"}
    dry = dry_backs(cabinet)
    housed = any(joint.enters in dry and joint.depth for joint in cabinet.joints)
    lines = []
    without = [plural(role) for role in _UNGLUED if any(board.role == role for board in cabinet.boards)]
    without += ["backs of solid wood"] if dry and not housed else []
    glued = f"glue, but none under {and_list(without)};" if without else "glue,"
    if listed:
        but = f", but none under {and_list(without)}" if without else ""
        lines.append(f"With the screws of the table: {against(cabinet, listed)}. Glue them too{but}.")
    if open_:
        lines.append(f"Butted ({glued} {YOURS}): {against(cabinet, open_)}.")
    if any(joint.depth for joint in cabinet.joints):
        fingers = ", or goes between fingers" if any(joint.kind == "finger" for joint in cabinet.joints) else ""
        lines.append(f"What is let into a dado, rabbet or groove{fingers}: glue, no screws or nails; in a groove not "
                     f"even glue.{' A back in a rabbet: glue, and the brads of the table.' if nailed else ''}"
                     f"{' A back of solid wood in a rabbet: the screws of the table, no glue.' if housed else ''}")
    named = [f"{pair.passed.name} to {pair.into.name}" for pair in unfitted(cabinet)]
    named += [f"{one.name} to {other.name}" for one, other in unscrewed(cabinet)]
    if named:
        lines.append(f"No screw of the table will do for {and_list(named)}: nails, glue blocks or dowels of your "
                     "choice; not worked out.")
    if under_back(cabinet):
        by = "the screws of the table" if any(h.what == BOTTOM_SCREWS and h.screws for h in cabinet.hardware) \
            else "nails of your choice"
        lines.append(f"The box bottom lies under the box back: fix it up into the lower edge of the back with {by}, "
                     "without glue.")
    standing = sorted({plural(h.what) if h.what != "foot" else "feet"
                       for h in cabinet.hardware if h.what in ("caster", "foot")})
    if standing:
        lines.append(f"{and_list(standing).capitalize()}: with the screws or bolts that their maker names; "
                     "not worked out.")
    return Section("Fixings", tuple(lines))


def anchoring(cabinet: Cabinet) -> tuple[str, ...]:
    """For a case that stands: through what it is fastened to the building, and what the plan does not give for it.

    Common practice, no source.

    >>> anchoring(Cabinet("no rail", (), {}))[0]
    'Fasten it to the building near its top, with angle brackets on its sides or top into studs or masonry: the plan \
has no rail, and its back is too thin to hold a screw.'
    """
    if hangs(cabinet):
        return ()
    begins = "Wherever it stands still for long, fasten" if on_casters(cabinet) else "Fasten"
    it = f"{begins} it to the building near its top"
    ways = (f"{it}, through its rail into studs or masonry. Screws into studs: {through_rail(cabinet)}.",) \
        if rails_of(cabinet) else (
        f"{it}, with angle brackets on its sides or top into studs or masonry: the plan has no rail, and its "
        "back is too thin to hold a screw.",
        "Or, where it stands under a bench that is itself fastened: with screws up through its top into the bench.",
    )
    return (
        *ways,
        "Pack out what stays hollow where it is fastened, so that the screws do not bend the case.",
        "Brackets and screws are bought by what their maker says they hold: more than the pull in the note on tipping. "
        "How many is not worked out; local codes and, where they call for it, a licensed trade decide how to fasten to "
        "a building.",
    )


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
        "It does not give the screws into the wall, how many and how thick, or the studs; of their length only "
        "what the buying list says. What load the screws, the wall and the rail carry is not worked out. The maker of "
        "the screws says what they carry; local codes and, where they call for it, a licensed trade decide how to "
        "fasten to a building."
    )
    return Section("Hanging it", tuple(lines))


def _hollow(rail: Board, cabinet: Cabinet) -> int:
    """How far the back behind a rail stands off the wall, with the rear of the case against it; 0 without a back."""
    behind = [
        board.box.high[1] for board in cabinet.boards
        if board.role == "back" and board.box.low[2] < rail.box.high[2] and rail.box.low[2] < board.box.high[2]
    ]
    return cabinet.outside.high[1] - behind[0] if behind else 0
