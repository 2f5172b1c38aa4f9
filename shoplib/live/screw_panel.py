"""The panel of screws pulled straight out: wood, length and count; then the screw and the board; then what pulls."""

from collections.abc import Callable
from types import SimpleNamespace

import pint

from shoplib.draw.hold_chart import HeldOver, hold_over_thread
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.sag_panel import WOODS, stuff
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import drawn
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, write_brief
from shoplib.measure.noted import noting
from shoplib.measure.quantity import read_quantity, write_force
from shoplib.measure.traced import leaf
from shoplib.model.screw_room import shank
from shoplib.model.solved import Finding
from shoplib.model.withdrawal import Holds, holds, thread_in
from shoplib.words.working import working

PICTURE = (400.0, 250.0)
NO_FIGURE = ("particleboard", "MDF")
"""Sheets for which no figure was read."""

GAUGES = {"in": ("No. 6", "No. 8", "No. 10", "No. 12"), "mm": ("3.5 mm", "4.0 mm", "4.5 mm", "5.0 mm")}
PULLS = {"in": ("10 lb", "25 lb", "50 lb", "100 lb", "200 lb", "400 lb"),
         "mm": ("5 kg", "10 kg", "25 kg", "50 kg", "100 kg", "200 kg")}
"""Plain numbers to try: no standard says what pulls on a cleat."""
MOST_SCREWS = 8

SIDE, END = GRAINS = ("a face: the side of the grain", "an end, or the edge of plywood: end grain")
FRONT, CLEAT, RAIL = FASTENS = ("a drawer front and its pull", "a cleat", "a rail that a case hangs from")
ADVICE = {
    FRONT: "The pull itself is held by machine screws with a head inside the front; these screws hold the front on its "
           "box. A drawer that sticks is pulled with as much as it weighs.",
    CLEAT: "What stands out from a cleat turns it, and its upper screws may be pulled with more than it weighs: spread "
           "them, and take more.",
    RAIL: "The weight of the case presses across these screws, and for that no figure was read: it is not in this sum. "
          "Glue the rail too, screw it into something solid behind the wall's face, and follow local rules.",
}

PLYWOOD = ("The formula is for solid wood; plywood is taken as such, by the lightest and the heaviest of its kind "
           "(common practice, no source).")


def screw_panel(unit: str = "in") -> Panel:
    """The panel of screws pulled straight out, in inches or millimetres.

    >>> panel = screw_panel("in")
    >>> panel.enter("count", 4)
    >>> panel.message
    'With 0.547 in of thread in the wood, 4 screws may be asked for 406 lb, pulled straight out.'
    """
    style, inch = (INCH_STYLE, True) if unit == "in" else (MM_STYLE, False)
    groups = [
        Group("Three choices", {
            "kind": choose_one("Into", (*WOODS, "plywood", *NO_FIGURE)),
            "length": LengthControl("Length of the screw", "1 1/4 in" if inch else "32 mm",
                                    *(("1/2 in", "3 in") if inch else ("12 mm", "75 mm")), style,
                                    "1/8 in" if inch else "1 mm"),
            "count": choose_one("How many", range(1, MOST_SCREWS + 1), 2),
        }),
        Group("The screw and its way", {
            "gauge": choose_one("Size", GAUGES[unit], GAUGES[unit][1]),
            "through": LengthControl("Board that it goes through, as measured", "0.703 in" if inch else "17.5 mm",
                                     *(("0.15 in", "1.5 in") if inch else ("4 mm", "38 mm")), style,
                                     "0.001 in" if inch else "0.1 mm", measured=True),
            "grain": choose_one("It goes into", GRAINS),
        }, "A wood screw is threaded on two thirds of its length. " + (
            "A number is the diameter of the shank: 0.060 in, and 0.013 in for each." if inch else
            "A metric size is the diameter of the thread; it is taken for the shank that the formula asks for.")),
        Group("What pulls", {
            "pull": choose_one("Pulled with", PULLS[unit], PULLS[unit][2]),
            "fastens": choose_one("They hold", FASTENS),
        }, "No standard says how much. Weigh what hangs or slides, and take more than that."),
    ]
    return Panel("Screws pulled straight out", groups, lambda values: outcome_of(values, style))


def outcome_of(values: SimpleNamespace, style: Style) -> Outcome:
    """What the screws may be asked, charted, listed and judged.

    Raises CannotBuild for a sheet without a figure, and for a screw that ends in the board it goes through.
    """
    if values.kind in NO_FIGURE:
        raise CannotBuild(f"For screws in {values.kind} no figure was read, so none is shown.",
                          "Choose wood or plywood; for this sheet, a bolt, or what its maker says.", empty=True)
    if values.length <= values.through:
        raise CannotBuild("The screw ends in the board that it goes through.",
                          "Take a longer screw or a thinner board.")
    thread, pull = thread_in(values.length, values.through), read_quantity(values.pull, "force")
    held = holds(stuff(values.kind).gravity, shank(values.gauge), thread, values.count, values.grain == END, style)
    scene = _chart(held, thread, pull, style)
    rows = _rows(held, thread, values.count, style)
    table = Table("What they hold", ("What", "How much"), [row[:2] for row in rows], (1,), "hold/")
    told = _say(values, held, thread, pull, style)

    def traced() -> int:
        return thread_in(leaf(values.length, "screw"), leaf(values.through, "board that it goes through", "measured"))

    return Outcome(
        [Drawing(scene.title, draw(scene, PICTURE, "drawing/0/"), scene.alt)], [table], (), told.findings, told.message,
        why_said(told, lambda: _say(values, held, traced(), pull, style), style,
                 _why(rows, traced, lambda: _chart(held, traced(), pull, style), style)),
    )


def _chart(held: Holds, thread: int, pull: pint.Quantity, style: Style) -> Scene:
    unit = {"in": ("pound_force", "lb"), "mm": ("kilogram_force", "kg")}[style.unit]
    least, most, pulls = (float(force.to(unit[0]).magnitude) for force in (*held.allowable, pull))
    return hold_over_thread(HeldOver(thread, least, most, pulls, unit[1]), style)


def _between(forces: tuple[pint.Quantity, pint.Quantity], style: Style) -> str:
    low, high = (write_force(force, style.unit) for force in forces)
    return low if low == high else f"{low} to {high}"


def _rows(held: Holds, thread: int, count: int, style: Style) -> list[tuple[str, str, tuple[str, ...]]]:
    """What stands in the table, and the lines behind it; the thread has its own."""
    text, lines = _between(held.allowable, style), held.least.working
    asked = f"{text} = {count} x what one may be asked, by the lightest wood of its kind first"
    out = _between(held.ultimate, style)
    return [
        ("thread in the wood", write_brief(thread, style, decimal=True), ()),
        ("one screw may be asked, at least", write_force(held.least.allowable, style.unit), lines),
        ("all of them may be asked", text, (asked, *lines)),
        ("all of them come out at about", out, (f"{out} = {count} x what one comes out at", *lines)),
    ]


def _say(values: SimpleNamespace, held: Holds, thread: int, pull: pint.Quantity, style: Style) -> Said:
    with noting() as notes:
        many = f"{values.count} screws" if values.count > 1 else "one screw"
        message = (f"With {write_brief(thread, style, decimal=True)} of thread in the wood, {many} may be asked for "
                   f"{_between(held.allowable, style)}, pulled straight out.")
        found = [_judged(values, held, pull, style), Finding("screw hold", "note", (), ADVICE[values.fastens])]
        if values.kind == "plywood":
            found.append(Finding("screw hold", "note", (), PLYWOOD))
        return said(notes, found, message)


def _judged(values: SimpleNamespace, held: Holds, pull: pint.Quantity, style: Style) -> Finding:
    pulled, least = (write_force(force, style.unit) for force in (pull, held.allowable[0]))
    if pull <= held.allowable[0]:
        text = (f"A pull of {pulled} is within what they may be asked, in dry wood with a pilot hole. Fasten the case "
                "to the building all the same; local rules come first.")
        return Finding("screw hold", "note", (), text)
    need = -int(-(pull / held.least.allowable).to("dimensionless").magnitude // 1)
    helps = f"{need} such screws would do, or longer or thicker ones." if need <= MOST_SCREWS else (
        "Take longer or thicker ones, a bolt right through, or another way to fasten it.")
    return Finding("screw hold", "warn", (), f"A pull of {pulled} is more than the {least} that they may be asked. "
                   f"{helps}")


def _why(
    rows: list[tuple[str, str, tuple[str, ...]]], traced: Callable[[], int], chart: Callable[[], Scene], style: Style
) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for the cells of the table and the thread in the chart."""

    def explain(name: str) -> tuple[str, ...]:
        kind, *place = name.split("/")
        if kind == "hold":
            _, text, lines = rows[int(place[0])]
            thread = working(traced(), "thread in the wood", style, text if not lines else "")
            return (*lines, *thread, _LIMIT) if lines else (*thread, _LIMIT)
        if kind == "drawing":
            return (*drawn(chart(), place[1], style), _LIMIT)
        raise LookupError(f"the panel shows no size {name!r}")

    return explain


_LIMIT = "a wood screw is threaded on about two thirds of its length (Noyes, Handwork in Wood, 1910)"
