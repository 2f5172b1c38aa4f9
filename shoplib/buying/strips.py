"""Strip to buy for wood runners and kickers, where the project does not rip it from boards of its own."""

from collections.abc import Iterator

from shoplib.buying.edging import length_unit, running
from shoplib.buying.line import Line
from shoplib.buying.waiting import not_before, stage_waits
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, to_step
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, plural


def strip_lines(cabinet: Cabinet) -> Iterator[Line]:
    """One line for each section; every piece has a little over, to be cut to length on the case as built."""
    if cabinet.project is None or cabinet.project.cutting.strips_from:
        return
    unit = cabinet.style.unit
    over = INCH if unit == "in" else 25 * MM
    found: dict[tuple[int, int], list[Board]] = {}
    for board in cabinet.boards:
        if board.sheet not in cabinet.project.sheets:  # stock that the solver made up for a runner's row
            _, *section = board.size
            found.setdefault((max(section), min(section)), []).append(board)
    writing = Writing(cabinet.style)
    for (wide, thick), boards in found.items():
        needed, spare = running(sum(board.length for board in boards), over * len(boards), unit)
        longest = to_step(max(board.length for board in boards) + over, cabinet.style.step, "up")
        stage = min(board.stage for board in boards)
        roles = [board.role for board in boards]
        counts = [f"{roles.count(role)} {plural(role)}" for role in dict.fromkeys(roles)]
        yield Line(
            "strip",
            f"solid strip {writing.setting(wide)} x {writing.setting(thick)}",
            needed,
            length_unit(unit),
            spare,
            (0, wide, thick),
            stage,
            stage_waits([stage], cabinet),
            not_before([stage], cabinet),
            uses=f"{and_list(counts)}, the longest piece {writing.length(longest)}",
        )
