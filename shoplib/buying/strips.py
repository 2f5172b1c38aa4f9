"""Strip to buy for wood runners and kickers, where the project does not rip it from boards of its own."""

from collections.abc import Iterator

from shoplib.buying.edging import length_unit, running
from shoplib.buying.line import Line
from shoplib.buying.rough import Strip, strips_of
from shoplib.buying.waiting import stage_waits
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, to_step
from shoplib.model.solved import Cabinet


def strip_lines(cabinet: Cabinet) -> Iterator[Line]:
    """One line for each section; every piece has a little over, to be cut to length on the case as built."""
    if cabinet.project is None or cabinet.project.cutting.strips_from:
        return
    unit = cabinet.style.unit
    over = INCH if unit == "in" else 25 * MM
    found: dict[tuple[int, int], list[Strip]] = {}
    for strip in strips_of(cabinet):
        if set(strip.boards) <= cabinet.by_name.keys():  # the others are edging
            found.setdefault((strip.wide, strip.thick), []).append(strip)
    for (wide, thick), strips in found.items():
        pieces = sum(len(strip.boards) for strip in strips)
        net = sum(strip.length * len(strip.boards) for strip in strips)
        writing = Writing(cabinet.style)
        needed, spare = running(net, over * pieces, unit)
        longest = to_step(max(strip.length for strip in strips) + over, cabinet.style.step, "up")
        stage = min(strip.stage for strip in strips)
        yield Line(
            "strip",
            f"solid strip {writing.setting(wide)} x {writing.setting(thick)}",
            needed,
            length_unit(unit),
            spare,
            (0, wide, thick),
            stage,
            stage_waits([stage], cabinet),
            uses=f"{pieces} runners and kickers, the longest piece {writing.length(longest)}",
        )
