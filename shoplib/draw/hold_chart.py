"""What screws may be asked over the thread that is in the wood, drawn for a panel."""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.draw.scene import Disc, EdgeText, Item, Label, Leader, Line, Scene, Slanted
from shoplib.measure import INCH, MM, Style, write_brief

WIDE, HIGH, BAND = 40_000, 16_000, 3_000
"""The chart and the room for words over it, in hundredths of the unit of the drawing."""
_MOST_LINES = 6


@dataclass(frozen=True, slots=True)
class HeldOver:
    """What may be asked of screws with `thread` (ticks) in the wood, `least` to `most`; `pull` is what pulls on them.

    Forces are numbers in `unit`, "lb" or "kg". Both ends grow evenly with the thread.
    """

    thread: int
    least: float
    most: float
    pull: float
    unit: str


def hold_over_thread(held: HeldOver, style: Style) -> Scene:
    """The band of what may be asked rises evenly with the thread; dashed is what pulls, a dot marks these screws."""
    one, last = (INCH, 2 * INCH) if style.unit == "in" else (MM, 50 * MM)
    last = max(last, int(held.thread))
    marks = [INCH // 2 * k for k in range(1, 2 * last // INCH + 1)] if style.unit == "in" else [
        10 * MM * k for k in range(1, last // (10 * MM) + 1)]
    by = last / int(held.thread)
    top = 1.1 * max(held.pull, held.most * by)

    def place(thread: int, force: float) -> tuple[int, int]:
        return int(thread) * WIDE // last, round(force * HIGH / top)

    items: list[Item] = [
        Slanted(((0, 0), place(last, held.least * by), place(last, held.most * by)), "span", "what may be asked"),
    ] if held.most > held.least else []
    for mark in marks:
        x = place(mark, 0)[0]
        items += [Line((x, 0), (x, HIGH), "grid"), EdgeText((x, 0, x, 0), "below", _bare(mark, style))]
    for force in _steps(top):
        y = place(0, force)[1]
        items += [Line((0, y), (WIDE, y), "grid"), Leader((0, y), "left", f"{force:g}")]
    items += [
        Line((0, 0), (WIDE, 0)), Line((0, 0), (0, HIGH)),
        Line((0, 0), place(last, held.least * by), "curve"), Line((0, 0), place(last, held.most * by), "thin"),
        Line(place(0, held.pull), place(last, held.pull), "hidden"),
        Disc(place(held.thread, held.least), 800, "mark", "these screws"),
        Leader(place(held.thread, held.least), "right", f"thread {write_brief(held.thread, style, decimal=True)}",
               size=held.thread),
        Label((0, HIGH, WIDE, HIGH + BAND), (f"may be asked of all the screws, {held.unit}",)),
    ]
    told = "inches" if one == INCH else "mm"
    return Scene(
        "Hold over thread", "Thick: at least; thin: at most; dashed: what pulls; dot: these screws.",
        f"A chart of what may be asked of the screws over the thread in the wood: it rises evenly, for these screws to "
        f"{held.least:.0f} {held.unit} at least and {held.most:.0f} {held.unit} at most. A dashed line shows what "
        f"pulls on them, {held.pull:.0f} {held.unit}.",
        (0, 0, WIDE, HIGH + BAND), tuple(items), (f"Across: thread in the wood, {told}.",),
    )


def _bare(ticks: int, style: Style) -> str:
    return write_brief(ticks, style).removesuffix(f" {style.unit}")


def _steps(top: float) -> Sequence[float]:
    """Round forces under `top` for the lines of a grid: 1, 2 or 5 apart, or ten, a hundred times that.

    >>> _steps(90)
    [20, 40, 60, 80]
    """
    round_ones = (times * 10**power for power in range(6) for times in (1, 2, 5))
    step = next(each for each in round_ones if top <= _MOST_LINES * each)
    return [step * number for number in range(1, int(top / step) + 1)]
