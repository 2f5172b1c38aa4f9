"""The hardware page: where slides, pulls, pegs and casters go, with which screws, and what to test while building."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.measure import INCH_STYLE, MM, MM_STYLE, Style, to_step, write_length
from shoplib.model.board import Board, Hole
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, boards_in_short, in_short

_NOT_BOUGHT = ("runner", "kicker")
"""Boards that a drawer runs on."""
_USES = {
    "front screws": "fronts, from inside the box",
    "rail screws": "rails, through the sides",
    "cleat screws": "cleats, through the panel",
}


@dataclass(frozen=True, slots=True)
class Section:
    """One headed part of the page: lines of text, then a table where it has rows."""

    title: str
    lines: tuple[str, ...] = ()
    head: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = field(default=())


def hardware_page(cabinet: Cabinet, findings: Iterable[Finding] = ()) -> list[Section]:
    """The parts of the page that this cabinet has something for, in the order of the work.

    Lengths stand with their unit; equal rows are told once.
    """
    findings, page = tuple(findings), Writing(cabinet.style)
    diagonals = told_once([f.text for f in findings if f.check == "diagonals"])
    notes = told_once([f.text for f in findings if f.level == "note" and f.check != "diagonals"])
    found = [
        Section("Mirrored pairs", _mirrored(cabinet)),
        _slides(cabinet, page),
        _screws(cabinet, page),
        _pulls(cabinet, page),
        _pegs(cabinet, page),
        _under(cabinet, page),
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
class Riding:
    """One slide or runner: what it is, on which board of the case, of which drawer, and where it lies (world)."""

    what: str
    on: str
    group: str
    box: Box


def riding(cabinet: Cabinet) -> list[Riding]:
    """Everything that drawers and pull-outs run on: bought slides, and runners and kickers of wood."""
    found = [Riding(h.row or h.what, h.on, h.group, h.box) for h in cabinet.hardware if h.what == "slide"]
    against = {joint.enters: joint.receives for joint in cabinet.joints}
    found += [
        Riding(f"wood {board.role}", against.get(board.name, ""), board.group, board.box)
        for board in cabinet.boards if board.role in _NOT_BOUGHT
    ]
    return found


def _slides(cabinet: Cabinet, page: Writing) -> Section:
    """Heights from the bottom of the case (the spacer) and setbacks, on the case and on the box."""
    alike: dict[tuple[str, ...], list[str]] = {}
    for item in riding(cabinet):
        upright = cabinet.by_name.get(item.on)
        low, length = item.box.low, item.box.size[1]
        floor = _floor(cabinet, item.box)
        moving = _moving(cabinet, item.group)
        row = (
            item.what,
            page.length(length),
            page.length(low[2] - floor),
            page.length(low[1] - upright.box.low[1]) if upright else "",
            _above(low[2] - moving.low[2], page) if moving else "",
            page.length(low[1] - moving.low[1]) if moving else "",
        )
        alike.setdefault(row, []).append(item.group)
    rows = [(and_list(in_short(dict.fromkeys(groups))), *row) for row, groups in alike.items()]
    return Section(
        "Slides and runners",
        ("Make a spacer as high as the column says and rest the slide on it, left and right alike. "
         "Fix one screw in a slot first, try the drawer, then set the others. Follow the sheet that comes "
         "with the slide where it says otherwise.",) if rows else (),
        ("for", "slide", "length", "spacer: lower edge above the bottom of the case", "set back on the case",
         "lower edge on the box, from its lower edge", "set back on the box"),
        tuple(rows),
    )


def _above(ticks: int, page: Writing) -> str:
    """A height from the foot of the box, which a runner may lie below."""
    return page.length(ticks) if ticks >= 0 else f"{page.length(-ticks)} below it"


def _floor(cabinet: Cabinet, box: Box) -> int:
    """The upper face of the bottom of the case under a fitting."""
    under = [b.box.high[2] for b in cabinet.boards if b.role == "bottom" and b.box.high[2] <= box.low[2]]
    return max(under, default=0)


def _moving(cabinet: Cabinet, group: str) -> Box | None:
    """The box of a drawer, or the panel of a pull-out, without its front."""
    boards = [b.box for b in cabinet.groups.get(group, ()) if b.role.startswith("box ") or b.role == "panel"]
    return around(boards) if boards else None


def _screws(cabinet: Cabinet, page: Writing) -> Section:
    """How many of each, and what they go into."""
    counts: dict[tuple[str, int, str, str], int] = {}
    for fitting in cabinet.hardware:
        for screw in fitting.screws:
            into = cabinet.by_name[screw.into]
            use = _USES.get(fitting.what, f"{fitting.what}s")
            if fitting.what == "front screws" and cabinet.by_name[fitting.on].role == "cleat":
                use = "fronts, through the cleat"
            key = (screw.gauge, screw.length, use, into.role or into.name)
            counts[key] = counts.get(key, 0) + screw.count
    rows = tuple(
        (gauge, _as_bought(length, cabinet.style), use, into, str(count))
        for (gauge, length, use, into), count in counts.items()
    )
    return Section(
        "Screws",
        ("Lengths are the longest that do not come through. Drill pilot holes.",) if rows else (),
        ("screw", "length", "for", "into", "count"),
        rows,
    )


def _as_bought(length: int, style: Style) -> str:
    """Screws are sold by the inch; a metric page says about how long that is.

    >>> from shoplib.measure import INCH, MM_STYLE
    >>> _as_bought(5 * INCH // 8, MM_STYLE)
    '5/8 in (about 16 mm)'
    """
    text = write_length(length, INCH_STYLE)
    return text if style.unit == "in" else f"{text} (about {write_length(to_step(length, MM), MM_STYLE)})"


def _pulls(cabinet: Cabinet, page: Writing) -> Section:
    """Holes for pulls, from the left end and the lower edge of each front."""
    alike: dict[tuple[str, str, str], list[Board]] = {}
    for board in cabinet.boards:
        holes = [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind.startswith("pull")]
        if board.role != "front" or not holes:
            continue
        low = board.box.low
        at = [board.placement.to_world(Box(hole.centre, hole.centre)).low for hole in holes]
        row = (
            page.setting(holes[0].diameter),
            and_list(list(dict.fromkeys(page.length(x - low[0]) for x, _, _ in at))),
            and_list(list(dict.fromkeys(page.length(z - low[2]) for _, _, z in at))),
        )
        alike.setdefault(row, []).append(board)
    return Section(
        "Holes for pulls",
        ("Drill from the face that shows, into waste, so that the rim does not break out. The holes in the "
         "box front are on the drawings.",) if alike else (),
        ("front", "hole", "from the left", "from the bottom edge"),
        tuple((boards_in_short(boards), *row) for row, boards in alike.items()),
    )


def _pegs(cabinet: Cabinet, page: Writing) -> Section:
    """Peg holes of every panel: columns from its front edge, rows from its lower edge."""
    rows = []
    for board in cabinet.boards:
        holes = [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind.startswith("peg")]
        if not holes:
            continue
        low = board.box.low
        at = [board.placement.to_world(Box(hole.centre, hole.centre)).low for hole in holes]
        rows.append((
            board.name,
            str(len(holes)),
            f"{page.setting(holes[0].diameter)} across, {page.setting(holes[0].depth)} deep",
            and_list(_places([y - low[1] for _, y, _ in at], page)),
            and_list(_places([z - low[2] for _, _, z in at], page)),
        ))
    return Section("Holes for pegs", (), ("panel", "holes", "size", "from the front edge", "from the bottom edge"),
                   tuple(rows))


def _places(ticks: Sequence[int], page: Writing) -> list[str]:
    return [page.length(place) for place in sorted(set(ticks))]


def _under(cabinet: Cabinet, page: Writing) -> Section:
    """Casters and feet: from which to which place they reach, from the outside of the case below its top."""
    standing = [b.box for b in cabinet.boards if b.role in ("side", "bottom")]
    rows = []
    for fitting in cabinet.hardware:
        if not standing or fitting.box.high[2] > around(standing).low[2]:
            continue
        low, (x, y, _), (u, v, _) = around(standing).low, fitting.box.low, fitting.box.high
        rows.append((
            fitting.what, fitting.on, f"{page.length(x - low[0])} to {page.length(u - low[0])}",
            f"{page.length(y - low[1])} to {page.length(v - low[1])}", page.length(fitting.box.size[2]),
        ))
    return Section("Under the case", (),
                   ("what", "under", "from the left of the case", "from its front", "height"), tuple(rows))
