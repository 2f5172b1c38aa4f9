"""What the steps of the build order share: how a board comes in, which clamps, diagonals with room to write."""

from collections.abc import Collection, Iterable, Sequence

from shoplib.building.clamps import Clamps
from shoplib.building.glue_ups import closed_by
from shoplib.buying.screws import Need
from shoplib.checks.diagonals import diagonals
from shoplib.checks.parting import Entry
from shoplib.lists.writing import Writing
from shoplib.measure import to_step
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Table
from shoplib.words.naming import and_list, boards_in_short, in_short

COMES = {"+x": "from the left", "-x": "from the right", "+y": "from the front", "-y": "from the back",
         "+z": "from below", "-z": "from above"}
"""From where a board comes that moves along a world direction; the case is thought of as it will stand."""
SAW_AGAIN = (
    "At the saw and the router as in the case: guards on, push blocks, eye and ear protection, hands away from the "
    "line of the cut."
)
"""For every step that cuts boards again."""
PRESS = {"x": "from side to side", "y": "from front to back", "z": "from top to bottom"}


def names_in_short(names: Iterable[str], cabinet: Cabinet) -> str:
    """Boards by name, told together.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> names_in_short(("divider 1", "divider 2"), cabinet)
    'dividers 1 and 2'
    """
    return boards_in_short(cabinet.by_name[name] for name in names)


def cut_to_size(names: Iterable[str], cabinet: Cabinet, how: str = "from the new sizes") -> str:
    """The line that has boards cut after the case stands; of a stage that the project says is cut, that they are.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cut_to_size(["divider 1"], cabinet_from("under_bench_case"))
    'Cut from the new sizes: divider 1.'
    """
    boards = [cabinet.by_name[name] for name in names]
    cut = any(board.stage < cabinet.first_stage for board in boards)
    return f"{'Already cut' if cut else f'Cut {how}'}: {boards_in_short(boards)}."


def screws_told(needs: Iterable[Need], cabinet: Cabinet) -> str:
    """Screws by number and size, such as "4 of No. 8 × 2 in".

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> from shoplib.buying.screws import planned
    >>> screws_told([need for need in planned(cabinet) if need.use == "rails"], cabinet)
    '4 of No. 8 × 2 in'
    """
    sums: dict[str, int] = {}
    for need in needs:
        size = f"{need.gauge} × {Writing(cabinet.style).length(need.length)}"
        sums[size] = sums.get(size, 0) + need.count
    return and_list([f"{count} of {size}" for size, count in sums.items()])


def entry_table(entries: Sequence[Entry], cabinet: Cabinet, group: str = "case") -> Table:
    """The boards in the order in which they go in, from where, and what they meet there.

    Boards that come in one after another alike share a row.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> entry_table([Entry("bottom"), Entry("divider 1", ("bottom",), "-z")], cabinet).rows[1]
    ('2', 'divider 1', 'from above', 'into the dado of bottom')
    """
    rows: list[tuple[list[str], str, str]] = []
    for entry in entries:
        comes = COMES[entry.way] if entry.way else "lies ready" if not entry.onto else ""
        met = _met(entry, cabinet, group)
        if rows and rows[-1][1:] == (comes, met):
            rows[-1][0].append(entry.board)
        else:
            rows.append(([entry.board], comes, met))
    return Table(
        ("", "board", "comes", "joint"),
        tuple((str(n), _short(names, group), comes, met) for n, (names, comes, met) in enumerate(rows, start=1)),
        (3,),
    )


def _met(entry: Entry, cabinet: Cabinet, group: str) -> str:
    """The joints that a board closes: "into the dado of bottom", "its rabbet takes top"."""
    told: dict[str, list[str]] = {}
    for joint in closed_by(entry, cabinet):
        enters = joint.enters == entry.board
        how = _INTO.get(joint.kind, _WITH) if enters else _TAKES.get(joint.kind, _WITH)
        told.setdefault(how.format(joint.kind), []).append(joint.receives if enters else joint.enters)
    return "; ".join(f"{how} {_short(others, group)}" for how, others in told.items())


_WITH = "{} with"
_INTO = {"butt": "against", "rabbet": "into the rabbet of", "dado": "into the dado of", "groove": "into the groove of",
         "tongue": "its tongue into", "finger": "fingers with"}
_TAKES = {"butt": "against", "rabbet": "its rabbet takes", "dado": "its dado takes", "groove": "its groove takes",
          "tongue": "its dado takes the tongue of", "finger": "fingers with"}
"""How a joint is told of the board that enters, and of the one that receives."""


def _short(names: Sequence[str], group: str) -> str:
    return and_list(in_short(name.removeprefix(f"{group} ") for name in names))


def clamp_table(goes: Iterable[tuple[str, Sequence[Clamps]]], cabinet: Cabinet, group: str = "case") -> Table:
    """A row for each set of clamps: the go it is for, how many, which way, how far they reach, what to take.

    >>> clamp_table([], Cabinet("no boards", (), {})).rows
    ()
    """
    def over(ticks: int) -> str:
        return Writing(cabinet.style).length(to_step(ticks, cabinet.style.step, "up"))

    rows = [
        (title, str(clamps.count), PRESS[clamps.axis], over(clamps.across), over(clamps.reach),
         over(clamps.sold) if clamps.sold else "none so long: two hooked together, or pipe clamps",
         _short(clamps.over, group))
        for title, several in goes for clamps in several
    ]
    return Table(("for", "clamps", "press", "over", "reach", "take", "over the joints of"), tuple(rows), (6,))


def diagonals_expected(cabinet: Cabinet, of: str, names: Collection[str]) -> str:
    """What both diagonals of the "case", or of the "box" that these boards are of, measure; empty where none are known.

    >>> from shoplib.documents.examples import cabinet_from
    >>> diagonals_expected(cabinet_from("finger_jointed_drawers"), "case", ["left side"])
    'Both diagonals of the case, over the outer corners of its front, should measure 488.5 mm.'
    """
    found = [one for one in diagonals(cabinet) if one.of == of and not {*one.boards}.isdisjoint(names)]
    return " ".join(f"{one.expected(cabinet.style)}." for one in found)
