"""The glue-ups of the case, its back, and the plinth."""

from collections.abc import Iterable

from shoplib.building.clamps import clamps_for
from shoplib.building.glue_faces import ENDS
from shoplib.building.glue_time import USUAL
from shoplib.building.glue_ups import GlueUp
from shoplib.buying.brads import TIMES, Brad, back_brads, brads_into, dry_backs
from shoplib.buying.screws import Need, estimated, planned
from shoplib.checks.diagonals import OUT_OF_SQUARE, diagonals
from shoplib.checks.driver_room import closes, pocket_face
from shoplib.checks.driver_way import driven
from shoplib.lists.butted import screwed_and_open
from shoplib.lists.lies import held_by_no_cut, lies_words
from shoplib.lists.writing import Writing
from shoplib.measure import Style, to_step
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Joint
from shoplib.printed.build.words import clamp_table, diagonals_expected, entry_table, names_in_short, screws_told
from shoplib.printed.told.drills import clearance_told, pilot_told
from shoplib.printed.typeset.blocks import Block, Framed, ToFillIn, Together, ToTick, Words
from shoplib.words.naming import and_list, boards_in_short, capital


def glue_up(go: GlueUp, last: bool, cabinet: Cabinet) -> list[Block]:
    """One go: the boards in their order, the clamps, and with the last the diagonals.

    >>> from shoplib.building.order import build_order
    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> first = next(step.go for step in build_order(cabinet) if step.go)
    >>> [type(block).__name__ for block in glue_up(first, False, cabinet)]
    ['Together', 'ToTick', 'ToFillIn']
    """
    several = clamps_for(go, cabinet)
    clamps = (clamp_table([("this glue-up", several)], cabinet),) if several else ()
    lines = (
        *_places(go, cabinet),
        *_spread(go),
        *(() if last else (_NEXT,)),
        *_pocketed(go, cabinet),
        *((_TIGHTEN,) if several else ()),
        *_screwed(go, cabinet),
        *((_FINGERS,) if any(joint.kind == "finger" for joint in go.joints) else ()),
        *_boards_of_their_own(go, cabinet),
        *((_NOT_SQUARED.format(_what_squares_not(cabinet)),) if last and _what_squares_not(cabinet) else ()),
        _WIPE,
    )
    box = _diagonals(cabinet) if last else _SO_FAR
    table = Together((Words(_counted(len(go.joints))), entry_table(go.entries, cabinet), *clamps))
    return [table, ToTick(lines), *([box] if box else [])]


def _spread(go: GlueUp) -> list[str]:
    scrape = ["Scrape off the hard glue of the glue-up before, wherever a board comes to lie."] if go.standing else []
    walls = ["In a dado the glue belongs on the walls: its bottom carries little."]
    return [
        *scrape,
        "Spread the glue thin, all over one of the two faces of each joint: so much of it is on the buying list.",
        *(walls if any(joint.kind == "dado" for joint in go.joints) else []),
    ]


def _places(go: GlueUp, cabinet: Cabinet) -> list[str]:
    """Where boards lie that no cut holds to their place: drawn before the glue is on."""
    names = [name for name in held_by_no_cut(cabinet) if name in go.boards]
    page = Writing(cabinet.style)
    return [f"{lies_words(name, cabinet, page)} Draw its lines before you spread glue." for name in names]


_NEXT = "Set on dry the boards that come next, without glue, so that what is glued now lies in line."
_TIGHTEN = "Cauls under the jaws, over the joints; tighten from the middle out, by turns, until glue beads."
_FINGERS = "Fingers: glue between all of them; press with cauls that bear beside the fingers, not on them."
_NOT_SQUARED = "{}: leave it in the clamps, its diagonals equal, until the glue is hard."
_WIPE = "Wipe off squeezed-out glue with a damp rag inside, now, and let it set as long as its label says."


def _what_squares_not(cabinet: Cabinet) -> str:
    """Why no back squares the case while its glue sets; empty where one does."""
    if not any(board.role == "back" for board in cabinet.boards):
        return "There is no back to square this case"
    return "The back of solid wood goes on later, dry, and squares nothing" if dry_backs(cabinet) else ""


def _pocketed(go: GlueUp, cabinet: Cabinet) -> list[str]:
    """What is held by pocket screws, and what waits until they are in."""
    pockets = _of_kind(go.joints, "pocket screws", cabinet)
    return [f"{pockets}: with pocket screws{_faces(go.joints, cabinet)}{_before_what(go, cabinet)}. Clamp only while "
            "you drive them; the clamps come off at once."] if pockets else []


def _screwed(go: GlueUp, cabinet: Cabinet) -> list[str]:
    """What is held by screws besides its glue."""
    later = _screwed_later(go.joints, cabinet)
    butted = _of_kind(later, "butt", cabinet)
    if not butted:
        return []
    ends = [joint for joint in later if joint.kind == "butt"]
    it, needs = "them" if len({joint.enters for joint in ends}) > 1 else "it", _needs(ends, cabinet)
    if not needs:
        return [f"{butted}: butted, so glue alone does not hold {it}, and no screw of the table will do: the hardware "
                "page says what may."]
    clearance = clearance_told([need.gauge for need in needs], cabinet)
    holes = f"bore clearance holes {clearance} across where the drawings have none, and" \
        if any(not need.counted for need in needs) else "bore"
    return [
        f"{butted}: butted, so glue alone does not hold {it}. In the clamps, {holes} through each clearance hole a "
        f"pilot hole into the end behind it, {pilot_told(needs, cabinet)}; drive the screws of the buying list, "
        f"{_driven(ends, cabinet)}. Keep fingers away from where a screw may come out."
    ]


def _boards_of_their_own(go: GlueUp, cabinet: Cabinet) -> list[str]:
    """A toe board, which is glued at its ends alone, and a back that floats."""
    of_role = {role: [e.board for e in go.entries if cabinet.by_name[e.board].role == role]
               for role in ("toe board", "back")}
    toe, floats = of_role["toe board"], of_role["back"]
    return [
        *([f"{names_in_short(toe, cabinet).capitalize()}: glue on its ends only. Its upper edge lies dry under the "
           "bottom; nothing is masked there."] if toe else []),
        *([f"{and_list(floats).capitalize()} goes into its grooves now, without glue: it cannot go in later."]
          if floats else []),
    ]


_SO_FAR = ToFillIn(
    "Diagonals so far.", ("One:", "The other:"),
    "Measure from corner to corner over what stands, with the boards set on dry that close it, before the glue sets: "
    f"what is out of square now stays so. They must be equal; {OUT_OF_SQUARE}. Where nothing closes it yet, hold a "
    "square into its corners.",
)
"""Said at each glue-up but the last, whose diagonals are those of the case (common practice, no source)."""


def _faces(joints: Iterable[Joint], cabinet: Cabinet) -> str:
    """Which face of the boards the pockets are in, where it is one for all; each board's drawing shows it."""
    faces = {pocket_face(cabinet.by_name[joint.enters]) for joint in joints if joint.kind == "pocket screws"}
    return f", from the pockets in the {faces.pop()} face" if len(faces) == 1 else ""


def _before_what(go: GlueUp, cabinet: Cabinet) -> str:
    """What of this go is set on only when the screws are in, for then no driver gets at them any more."""
    screws = driven(cabinet)
    later = [entry.board for entry in go.entries if closes(entry, screws, cabinet)]
    if not later:
        return ""
    goes = "goes" if len(later) == 1 else "go"
    return f". Drive them before {names_in_short(later, cabinet)} {goes} on: after it there is no room for the driver"


def _counted(count: int) -> str:
    minutes = count * USUAL.a_joint + USUAL.clamping
    told = (f"{count} joint{'s' if count != 1 else ''} to glue: about {minutes} of the {USUAL.open_time} minutes "
            "(common practice, no source; your label decides).")
    if count > USUAL.joints:
        told += (
            " That is more than one person glues in this time, and no board of it can wait: have a second person "
            "spread glue, or take a glue that stays open longer, and dry-run it twice."
        )
    return told


def _of_kind(joints: Iterable[Joint], kind: str, cabinet: Cabinet) -> str:
    names = list(dict.fromkeys(joint.enters for joint in joints if joint.kind == kind))
    told = names_in_short(names, cabinet)
    return capital(told)


def _screwed_later(joints: Iterable[Joint], cabinet: Cabinet) -> list[Joint]:
    """Of these, the joints that are held by screws besides the glue."""
    every = {joint for several in screwed_and_open(cabinet) for joint in several}
    return [joint for joint in joints if joint in every]


def _needs(butted: Iterable[Joint], cabinet: Cabinet) -> list[Need]:
    """The screws that hold the boards that are butted by these joints."""
    pairs = {frozenset((joint.enters, joint.receives)) for joint in butted}
    return [need for need in (*planned(cabinet), *estimated(cabinet)) if {need.passed.name, need.into.name} in pairs]


def _driven(butted: Iterable[Joint], cabinet: Cabinet) -> str:
    """How many screws, and which, hold each board that is butted by these joints, equal ones together."""
    mine: dict[str, list[Joint]] = {}
    for joint in butted:
        mine.setdefault(joint.enters, []).append(joint)
    alike: dict[str, list[str]] = {}
    for name, joints in mine.items():
        alike.setdefault(screws_told(_needs(joints, cabinet), cabinet), []).append(name)
    if len(mine) == 1:
        return "".join(alike)
    return "; ".join(f"{'each ' if len(names) > 1 else ''}for {names_in_short(names, cabinet)}: {told}"
                     for told, names in alike.items())


def _diagonals(cabinet: Cabinet) -> ToFillIn | None:
    expected = diagonals_expected(cabinet, "case", cabinet.by_name)
    how = f"Write both down before the glue sets. They must be equal; {OUT_OF_SQUARE}."
    return ToFillIn("Diagonals of the case.", ("One:", "The other:"), f"{expected} {how}") if expected else None


def back(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """The back, last of the case: glued and nailed it holds the case square; of solid wood it is screwed on dry.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [type(block).__name__ for block in back(("back",), cabinet_from("rolling_stand"))]
    ['Framed', 'ToTick', 'ToFillIn']
    """
    dry = [cabinet.by_name[name] for name in names if name in dry_backs(cabinet)]
    trimmed = [f"{one.expected(cabinet.style)}; {one.mend}." for one in diagonals(cabinet) if {*one.boards} <= {*names}]
    blocks: list[Block] = [_brads(name, brad, cabinet.style) for name, brad in back_brads(cabinet).items()]
    blocks.append(ToTick((
        *trimmed,
        "Lay the case on its front edges, on a flat floor with paper under it.",
        *([line for board in dry for line in _screwed_dry(board, cabinet)] if dry else _nailed(names, cabinet)),
        f"Check from the front that {boards_in_short(cabinet.by_name[n] for n in names)} touches the edges of dividers "
        f"and shelves{'' if dry else ', and let it set'}.",
    )))
    box = None if dry else _diagonals(cabinet)
    return [*blocks, box] if box else blocks


def _nailed(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    return [
        "A thin line of glue all round; lay the back in from behind; first a brad in each corner.",
        "Measure the diagonals of the case again before the glue sets and before the other brads: equalise them, then "
        "drive the rest from the corners on, one each hand's width.",
        *(f"{name.capitalize()}: {sum(counts.values())} brads in all: "
          f"{and_list([f'{count} into {on}' for on, count in counts.items()])}. Draw the middle of each divider and "
          "shelf on the back first, so that no brad misses its edge."
          for name, counts in brads_into(cabinet).items() if name in names),
    ]


def _screwed_dry(board: Board, cabinet: Cabinet) -> list[str]:
    """How a back of solid wood is held at the middle of its width, and free to move on both sides of it.

    Common practice, no source. Its width moves, not its length: the screw in the middle of each end holds it there.
    """
    along = board.placement.axes[0][1]
    needs = [need for need in estimated(cabinet) if need.passed == board]
    into: dict[str, list[Need]] = {}
    for need in needs:
        into.setdefault(screws_told([need], cabinet), []).append(need)
    told = and_list([
        f"{screws} into {'each of ' if len(some) > 1 else ''}{names_in_short([n.into.name for n in some], cabinet)}"
        for screws, some in into.items()
    ])
    ends = f"{ENDS[f'-{along}']} and {ENDS[f'+{along}']} end"
    return [
        f"{board.name.capitalize()} is of solid wood and moves with the season: no glue, or it splits. Lay it in from "
        "behind, dry, when the glue of the case is hard.",
        *([f"Screws: {told}; behind each a pilot hole {pilot_told(needs, cabinet)}. At its {ends} one goes through a "
           "round hole in the middle of its width, which stays there; all others through slots across the grain, with "
           "room for the head along the whole slot, driven until they just touch."] if told else []),
    ]


def _brads(name: str, brad: Brad, style: Style) -> Framed:
    """How long and where, and where the hands stay."""
    write = Writing(style)
    inset = write.length(to_step(brad.inset, style.step))
    return Framed((
        Words(
            "Brads can turn in the wood and come out of a face. Keep your hand two brad lengths away, "
            f"{write.length(2 * brad.length)}, never behind the edge; wear eye protection; air line off before you "
            "clear the nailer.", grave=True,
        ),
        Words(
            f"{name.capitalize()}: brads {write.length(brad.length)} long, about {TIMES} times what they pass. They "
            f"pass {write.measured(brad.passes)} and hold in {write.measured(brad.holds)}. Set them {inset} from "
            "the edge of the back, in the middle of what lies behind, leaning a little to the outside, away from the "
            "inside face (common practice, no source; lengths from memory).",
        ),
    ))


def plinth(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """The plinth is a frame of its own that the case is set on.

    >>> len(plinth((), Cabinet("no boards", (), {}))[0].lines)
    2
    """
    return [ToTick((
        f"Glue and screw the frame: {names_in_short(names, cabinet)}. Clamp it, and make its diagonals equal.",
        "Set the case on it with two people, its setbacks as the drawings give them, and screw up into the bottom from "
        "inside the frame, where the case will not move on it any more.",
    ))]


def captured(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """What is said where no order brings the boards together: a check has stopped such a plan.

    >>> captured((), Cabinet("no boards", (), {}))[0].grave
    True
    """
    return [Words(
        f"STOP: no straight move brings {names_in_short(names, cabinet)} together one by one. Mend what the checks "
        "stop, and plan again; cut nothing before.", grave=True,
    )]
