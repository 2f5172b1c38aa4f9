"""The hardware page: where slides, pulls, pegs and casters go, with which screws, and what to test while building."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shoplib.buying.screws import BRAD, estimated, planned
from shoplib.checks.runner_points import driven_at_each_other
from shoplib.documents.cautions import cautions
from shoplib.documents.fixings import fixings, hanging
from shoplib.documents.page_section import Section
from shoplib.documents.slides_section import slides_section
from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, to_step, write_length
from shoplib.model.board import Board, Hole
from shoplib.model.box import Box, around
from shoplib.model.hardware_places import pull_holes, wood_passed
from shoplib.model.screwed import BOTTOM_SCREWS, TOE_SCREWS
from shoplib.model.solved import Cabinet, Finding
from shoplib.tables.screw_sizes import size_of
from shoplib.words.naming import and_list, boards_in_short, in_short, plural

_USES = {
    "front screws": "fronts, from inside the box",
    "rail screws": "rails, through the sides",
    "cleat screws": "cleats, through the panel",
    TOE_SCREWS: "toe boards, through the sides",
    BOTTOM_SCREWS: "box bottoms, up into the back",
    "pocket screws": "butted ends, from pockets",
}


def hardware_page(cabinet: Cabinet, findings: Iterable[Finding] = ()) -> list[Section]:
    """The parts of the page that this cabinet has something for, in the order of the work.

    Lengths stand with their unit; equal rows are told once.
    """
    findings, page = tuple(findings), Writing(cabinet.style)
    diagonals = told_once([f.text for f in findings if f.check == "diagonals"])
    notes = told_once([f.text for f in findings if f.level == "note" and f.check != "diagonals"])
    found = [
        Section("Cautions", cautions(cabinet)),
        Section("Mirrored pairs", _mirrored(cabinet)),
        slides_section(cabinet, page),
        screws_section(cabinet),
        drills_section(cabinet, page),
        fixings(cabinet),
        hanging(cabinet),
        pulls_section(cabinet, page),
        pegs_section(cabinet, page),
        under_section(cabinet, page),
        Section("Diagonals to expect", tuple(diagonals)),
        Section("Notes of the dry-fit", tuple(notes)),
    ]
    return [section for section in found if section.lines or section.rows]


def _mirrored(cabinet: Cabinet) -> tuple[str, ...]:
    """Each pair once."""
    rows = kinds(cabinet)
    named = {name: kind for kind in rows for name in kind.names}
    told: dict[frozenset[str], str] = {}
    for kind in rows:
        if kind.mirror_of:
            twin = named[kind.mirror_of]
            told.setdefault(
                frozenset((kind.names[0], twin.names[0])),
                f"{boards_in_short(kind.boards)}, with {boards_in_short(twin.boards)}: {pair_words(kind.first.name)}",
            )
    return tuple(told.values())


def pair_words(drawn: str) -> str:
    """What to do with a mirrored pair of which the board `drawn` is shown.

    >>> pair_words("left side")
    'cut as a mirrored pair: left side as drawn, its twin mirrored. Lay the two side by side to mark them.'
    """
    return f"cut as a mirrored pair: {drawn} as drawn, its twin mirrored. Lay the two side by side to mark them."


@dataclass(frozen=True, slots=True)
class ScrewRow:
    """So many screws of one gauge and length (ticks), or brads, for one use, into boards of one role."""

    gauge: str
    length: int
    use: str
    into: str
    brads: bool
    count: int


def screw_rows(cabinet: Cabinet) -> tuple[ScrewRow, ...]:
    """The screws of the plan, then those that are estimated; equal ones together.

    >>> screw_rows(Cabinet("no boards", (), {}))
    ()
    """
    counts: dict[tuple[str, int, str, str, bool], int] = {}
    for fitting in cabinet.hardware:
        for screw in fitting.screws:
            into = cabinet.by_name[screw.into]
            use = _USES.get(fitting.what, f"{fitting.what}s")
            if fitting.what == "front screws" and cabinet.by_name[fitting.on].role == "cleat":
                use = "fronts, through the cleat"
            key = (screw.gauge, screw.length, use, into.role or into.name, False)
            counts[key] = counts.get(key, 0) + screw.count
    for need in estimated(cabinet):
        use = f"{plural(need.passed.role)}, estimated"
        key = (need.gauge, need.length, use, need.into.role or need.into.name, need.head == BRAD)
        counts[key] = counts.get(key, 0) + need.count
    return tuple(ScrewRow(*key, count) for key, count in counts.items())


def screws_section(cabinet: Cabinet) -> Section:
    """How many of each, and what they go into."""
    guessed = tuple(estimated(cabinet))
    rows = tuple(
        (f"{BRAD} {row.gauge}" if row.brads else row.gauge, write_length(row.length, cabinet.style), row.use, row.into,
         str(row.count))
        for row in screw_rows(cabinet)
    )
    lines = [
        "Lengths are the longest that do not come through. The table of drills says how to bore for each."
    ] if rows else []
    if guessed:
        lines.append("Estimated numbers go by how far two boards meet; they are those of the buying list, which adds "
                     "some spare ones.")
    return Section(
        "Screws",
        (*lines, *apart_words(cabinet)),
        ("screw", "length", "for", "into", "count"),
        rows,
    )


_DRILLS = (
    "Where a screw goes through a board, bore that board with the clearance hole, so that the screw slips through and "
    "its head draws both together; then, through it, the pilot hole for the thread in the second board, 4/9 of the "
    "screw deep, and never deeper than it reaches. A slide has its own holes: there only the pilot hole is bored.",
    "Tables of drills differ from one another: bore for one screw and drive it in an offcut of the same sheet first. "
    "Where the wood splits or the screw turns hard, take the next larger drill for the pilot hole. Sources: {}.",
)


def drills_section(cabinet: Cabinet, page: Writing) -> Section:
    """The drill for each gauge of screw, from the table that the holes of the drawings come from; none for brads.

    Pocket screws have the bit of their guide. In plywood the pilot hole is that for hardwood (common practice, no
    source).
    """
    every = [*planned(cabinet), *estimated(cabinet)]
    gauges = sorted({need.gauge for need in every if need.head not in (BRAD, "pocket")})
    sizes = [size_of(gauge) for gauge in gauges]
    rows = tuple(
        (size.gauge, *(page.bored(hole) for hole in (size.clearance, size.pilot_hardwood, size.pilot_softwood)))
        for size in sizes
    )
    told = "; ".join(dict.fromkeys(size.source for size in sizes))
    lines = (_DRILLS[0], _DRILLS[1].format(told)) if rows else ()
    return Section(
        "Drills for these screws", lines,
        ("gauge", "clearance hole", "pilot hole, plywood and hardwood", "pilot hole, softwood"), rows,
    )


def apart_words(cabinet: Cabinet) -> tuple[str, ...]:
    """For screws that would meet in an upright: which are set clear of which, a sentence for each upright."""
    apart = write_length(INCH if cabinet.style.unit == "in" else 25 * MM, cabinet.style)
    found: dict[str, list[tuple[str, str]]] = {}
    for pair in driven_at_each_other(cabinet):
        found.setdefault(pair.upright.name, []).append((pair.one.name, pair.other.name))
    return tuple(
        f"From both faces of {upright} the screws would meet point to point: set those of "
        f"{and_list(in_short(other for _, other in pairs))} {apart} farther back than those of "
        f"{and_list(in_short(one for one, _ in pairs))}."
        for upright, pairs in found.items()
    )


def waste_behind(what: str) -> str:
    """How the far rim of a hole is kept whole, the same wherever it is told (common practice, no source).

    >>> waste_behind("the box front")
    'clamp a waste board behind the box front, so that the drill does not break out the rim where it comes through'
    """
    return f"clamp a waste board behind {what}, so that the drill does not break out the rim where it comes through"


def pulls_section(cabinet: Cabinet, page: Writing) -> Section:
    """Holes for pulls, from the left end and the lower edge of each front, and the wood that their screws pass."""
    alike: dict[tuple[str, ...], list[Board]] = {}
    for board in cabinet.boards:
        at = pull_holes(board)
        if board.role != "front" or not at:
            continue
        low = board.box.low
        row = (
            page.bored(next(iter(at.values()))),
            and_list(list(dict.fromkeys(page.length(x - low[0]) for x, _ in at))),
            and_list(list(dict.fromkeys(page.length(z - low[2]) for _, z in at))),
            and_list(list(dict.fromkeys(page.measured(wood_passed(board, place, cabinet)) for place in at))),
        )
        alike.setdefault(row, []).append(board)
    return Section(
        "Holes for pulls",
        (f"Drill from the face that shows; {waste_behind('it')}. The holes in the box front are on the drawings.",
         "The screws of a pull must pass the wood of the last column, and then hold in the pull as deep as its "
         "maker says; what is sold with a pull is often too short for two thicknesses.") if alike else (),
        ("front", "hole", "from the left", "from the bottom edge", "wood that the screws pass"),
        tuple((boards_in_short(boards), *row) for row, boards in alike.items()),
    )


def pegs_section(cabinet: Cabinet, page: Writing) -> Section:
    """Peg holes of every panel: columns from its front edge, rows from its lower edge."""
    rows = []
    for board in cabinet.boards:
        holes = [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind == "peg"]
        if not holes:
            continue
        low = board.box.low
        at = [board.placement.to_world(Box(hole.centre, hole.centre)).low for hole in holes]
        rows.append((
            board.name,
            str(len(holes)),
            f"{page.bored(holes[0].diameter)} across, {page.setting(holes[0].depth)} deep",
            and_list(_places([y - low[1] for _, y, _ in at], page)),
            and_list(_places([z - low[2] for _, _, z in at], page)),
        ))
    return Section("Holes for pegs", (), ("panel", "holes", "size", "from the front edge", "from the bottom edge"),
                   tuple(rows))


def _places(ticks: Sequence[int], page: Writing) -> list[str]:
    return [page.length(place) for place in sorted(set(ticks))]


def under_section(cabinet: Cabinet, page: Writing) -> Section:
    """Casters and feet: from which to which place they reach, from the outside of the case below its top."""
    standing = [b.box for b in cabinet.boards if b.role in ("side", "bottom")]
    rows = []
    for fitting in cabinet.hardware:
        if not standing or fitting.box.high[2] > around(standing).low[2]:
            continue
        low, (x, y, _), (u, v, _) = around(standing).low, fitting.box.low, fitting.box.high
        places = (x - low[0], u - low[0], y - low[1], v - low[1])
        left, right, near, far = (page.length(to_step(place, cabinet.style.step)) for place in places)
        height = page.length(fitting.box.size[2])
        rows.append((fitting.what, fitting.on, f"{left} to {right}", f"{near} to {far}", height))
    return Section(
        "Under the case",
        ("The places are those of a pad that the plan assumes, a sixth of the inside depth square; it is no plate "
         "size. Use the plate of your own caster or foot, near the corner of the case.",) if rows else (),
        ("what", "under", "assumed pad, from the left of the case", "assumed pad, from its front", "height"),
        tuple(rows),
    )
