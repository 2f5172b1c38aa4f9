"""The panel of a case that may tip: depth, height and drawers out at first, then what is in them, then what pulls."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from types import SimpleNamespace

from shoplib.draw.asking import sizes
from shoplib.draw.look import FROM_RIGHT
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.draw.tip_view import Hangs, tip_view
from shoplib.live.carcass_project import CaseChoices, case_project, starting_case
from shoplib.live.carcass_refusals import refusal
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import said
from shoplib.live.table import Table
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, write_brief, write_length
from shoplib.measure.noted import noting
from shoplib.measure.quantity import read_quantity, write_filling, write_force
from shoplib.model.cabinet import solve
from shoplib.model.laden import Stand, as_one, drawer_groups, in_use, room_in, stand_of
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.tipping import Push, Stability, moment_text, stability
from shoplib.model.weight import Weight
from shoplib.tables.loads import loads

PICTURE = (420.0, 320.0)
EMPTY = "nothing"
FREE, FAST = FASTENED = ("standing free", "fastened to the wall at its top")
STILL, PULLED, LEANT = DONE = ("nothing", "a pull at its top", "a weight on an open drawer")
MOST_DRAWERS = 6


@dataclass(frozen=True, slots=True)
class Tipped:
    """A case with so many drawers open: its moments, where it stands, and its weights, each drawer with its content."""

    found: Stability
    stand: Stand
    weights: tuple[Weight, ...]
    opened: tuple[str, ...]
    cabinet: Cabinet


def fillings(unit: str) -> tuple[str, ...]:
    """What may lie in the drawers: nothing, the filling of ASTM F2057, twice and four times as much.

    >>> fillings("in")
    ('nothing', '8.5 lb/ft3', '17 lb/ft3', '34 lb/ft3')
    """
    first = read_quantity(loads()["drawer_fill"].value, "filling")
    return (EMPTY, *(write_filling(first * times, unit) for times in (1, 2, 4)))


def chest(unit: str, **changes: object) -> CaseChoices:
    """The chest of drawers that the panel begins with, in inches or whole millimetres, with some choices changed.

    >>> chest("in").drawers
    4
    """
    start = starting_case(unit)
    return replace(start, holds="drawers", drawers=4, **changes)


def tipped(
    choices: CaseChoices, opened: int, filling: str, style: Style, done: str = STILL
) -> Tipped:
    """The moments of the case with its `opened` highest drawers out. Raises CannotBuild where it cannot be built."""
    if opened > choices.drawers:
        raise CannotBuild(f"The case has {choices.drawers} drawers, and {opened} are to be open.",
                          "Open fewer, or take more drawers.")
    try:
        cabinet = solve(case_project(choices, style))
    except ImpossibleProject as reason:
        raise refusal(reason) from None
    stand, groups = stand_of(cabinet), drawer_groups(cabinet)
    out = groups[len(groups) - opened:]
    load = None if filling == EMPTY else read_quantity(filling, "filling")
    weights = _drawer_by_drawer(in_use(cabinet, load, out), groups)
    pushes: tuple[Push, ...] = ()
    if done == PULLED:
        pushes = (Push("the pull", read_quantity(loads()["pull_at_top"].value, "force"), stand.height),)
    if done == LEANT and out:
        weights = (*weights, _leaning(cabinet, out[0]))
    return Tipped(stability(weights, stand.edge, stand.floor, style, pushes=pushes), stand, weights, out, cabinet)


def _drawer_by_drawer(weights: tuple[Weight, ...], groups: tuple[str, ...]) -> tuple[Weight, ...]:
    """Each drawer as one weight with what lies in it, under its short name."""
    found = [one for one in weights if not any(one.of.endswith(group) for group in groups)]
    for group in groups:
        parts = tuple(one for one in weights if one.of.endswith(group))
        found.append(as_one(group.removeprefix("bay 1 "), parts))
    return tuple(found)


def _leaning(cabinet: Cabinet, group: str) -> Weight:
    """The weight of a child on the front of an open drawer."""
    run = next(travel.vector for travel in cabinet.travel if travel.group == group)
    force = read_quantity(loads()["child"].value, "force")
    front = min(board.box.low[1] for board in cabinet.groups[group]) + run[1]
    return Weight("weight on the drawer", force, force, (0, front, room_in(cabinet, group).high[2]))


def tip_panel(unit: str = "in") -> Panel:
    """The panel of a case with drawers out, in inches or millimetres.

    >>> panel = tip_panel("in")
    >>> panel.enter("out", 4)
    >>> panel.message
    'With 4 of 4 drawers open it goes over.'
    """
    style, inch = (INCH_STYLE, True) if unit == "in" else (MM_STYLE, False)
    start = chest(unit)

    def length(label: str, ticks: int, low: str, high: str) -> LengthControl:
        return LengthControl(label, write_length(ticks, style), low, high, style, "1/4 in" if inch else "5 mm")

    filled = fillings(unit)
    child, pull = (write_force(read_quantity(loads()[row].value, "force"), unit) for row in ("child", "pull_at_top"))
    groups = [
        Group("Three numbers", {
            "depth": length("Depth", start.depth, *(("14 in", "30 in") if inch else ("360 mm", "760 mm"))),
            "height": length("Height", start.height, *(("20 in", "60 in") if inch else ("500 mm", "1500 mm"))),
            "out": choose_one("Drawers open", range(MOST_DRAWERS + 1), 1),
        }),
        Group("What is in them", {
            "filling": choose_one("In each drawer", filled, filled[1]),
            "drawers": choose_one("Drawers", range(1, MOST_DRAWERS + 1), start.drawers),
            "width": length("Width", start.width, *(("14 in", "36 in") if inch else ("350 mm", "900 mm"))),
        }, f"{filled[1]} is the filling of ASTM F2057, from memory. A drawer full of spanners is heavier: weigh one."),
        Group("Pulled, leant on, fastened", {
            "done": choose_one("Besides", DONE),
            "fastened": choose_one("The case is", FASTENED),
        }, f"A pull of {pull} at its top, or {child} on an open drawer: those of ASTM F2057, from memory."),
    ]
    return Panel("A case with drawers out", groups, lambda values: outcome_of(values, style))


def outcome_of(values: SimpleNamespace, style: Style) -> Outcome:
    """The moments about the tipping edge, drawn and listed; raises CannotBuild where the case cannot be built."""
    choices = chest(style.unit, depth=values.depth, height=values.height, width=values.width)
    choices = replace(choices, drawers=values.drawers)
    one = tipped(choices, values.out, values.filling, style, values.done)
    scene = scene_of(one, style)
    rows, why = _rows(one, style)
    table = Table("Moments about the tipping edge", ("What", "Weight x distance", "Moment"), rows, (1, 2), "moment/")
    with noting() as notes:
        fast = values.fastened == FAST
        told = said(notes, findings(one, fast, values.done, style), message(one, values.drawers, fast))
    return Outcome(
        [Drawing(scene.title, draw(scene, PICTURE, "drawing/0/"), scene.alt)], [table], (), told.findings, told.message,
        _explain(scene, rows, why, style),
    )


def scene_of(one: Tipped, style: Style) -> Scene:
    """The case from its side, with its weights."""
    cabinet, edge = one.cabinet, one.stand.edge
    run = {travel.group: travel.vector[1] for travel in cabinet.travel if travel.group in one.opened}
    fronts = {}
    for group in drawer_groups(cabinet):
        flat = [FROM_RIGHT.flat(board.box) for board in cabinet.groups[group]]
        by = run.get(group, 0)
        fronts[group] = (min(r[0] for r in flat) + by, min(r[1] for r in flat), max(r[2] for r in flat) + by,
                         max(r[3] for r in flat))
    case = FROM_RIGHT.flat(cabinet.outside)
    most = max(each.high for each in one.weights)
    hangs = [Hangs(each.of, each.middle[1:], (each.high / most).to("dimensionless").magnitude, each.middle[1] >= edge)
             for each in one.weights]
    return tip_view(case, fronts, one.opened, hangs, edge, one.found.tips, style)


def message(one: Tipped, drawers: int, fast: bool) -> str:
    """The line above the picture; `fast` where it is fastened to the wall."""
    opened = f"With {len(one.opened)} of {drawers} drawers open it" if one.opened else "With all drawers closed it"
    if one.found.tips:
        return f"{opened} {'would go over; its fastening alone holds it' if fast else 'goes over'}."
    times = one.found.times
    return f"{opened} stands" + ("; nothing tips it." if times is None else f", held {times:.1f} times over.")


def findings(one: Tipped, fast: bool, done: str, style: Style) -> list[Finding]:
    """Whether it goes over, and the advice that stands always: fasten it, open one drawer at a time, local rules."""
    always = (
        "Fasten it to the wall or to its neighbour all the same, open one drawer at a time, and put what is heavy into "
        "the lowest. Local rules, and the sheet that comes with the fastening, decide; this is no test."
    )
    found = []
    if one.found.tips:
        pull = write_force(one.found.pull_to_hold(one.stand.height), style.unit)
        told = (f"The fastening at its top alone keeps it up, and must hold at least {pull} there." if fast else
                f"It goes over. A fastening at its top would have to hold at least {pull} there.")
        found.append(Finding("tipping", "note" if fast else "warn", (), told))
    elif one.found.times is not None and one.found.times < 1.5 and not fast:
        found.append(Finding("tipping", "warn", (), "It stands, but a push or an uneven floor may be enough."))
    if done == LEANT and not one.opened:
        found.append(Finding("tipping", "note", (), "No drawer is open, so nothing can lie on one."))
    return [*found, Finding("tipping", "note", (), always)]


def _rows(one: Tipped, style: Style) -> tuple[list[tuple[str, str, str]], list[tuple[str, ...]]]:
    """The rows of the table, and behind each its working: the lines of `stability`, and what they come to."""
    unit, rows, why = style.unit, [], []
    known = {each.of: each for each in one.weights}
    for line in one.found.working:
        what, _, rest = line.partition(": ")
        how, _, comes = rest.rpartition(" = ")
        rows.append((what, how, comes))
        why.append((line, *_weighs(known.get(what), unit)))
    holding, tipping = (moment_text(each, unit) for each in (one.found.holding, one.found.tipping))
    rows += [("all that holds", "", holding), ("all that tips", "", tipping)]
    why += [tuple(line for line in one.found.working if line.endswith(does)) for does in ("holds", "tips")]
    return rows, why


def _weighs(weight: Weight | None, unit: str) -> tuple[str, ...]:
    if weight is None:
        return ("the pull = the pull of ASTM F2057 (from memory), at the height of the case",)
    low, high = (write_force(force, unit) for force in (weight.low, weight.high))
    if weight.of == "weight on the drawer":
        return (f"weight {low} = what the STURDY Act names, on the front edge of the drawer (from memory)",)
    return (
        f"weight {low} to {high} = its boards, wood x how heavy its sheet is (least to most), with what lies in it",
        "behind the tipping edge the least of it counts, before it the most: the careful side",
    )


def _explain(
    scene: Scene, rows: list[tuple[str, str, str]], why: list[tuple[str, ...]], style: Style
) -> Callable[[str], tuple[str, ...]]:
    def explain(name: str) -> tuple[str, ...]:
        kind, number, *place = name.split("/")
        if kind == "moment":
            row = int(number)
            lines = why[row]
            return lines if lines else (f"{rows[row][2]} = nothing stands before the edge",)
        if kind == "drawing":
            ((_, ticks),) = sizes(scene, place[0])
            reach = place[0].endswith(".0") and len(_chain(scene)) > 1
            what = "travel of the slide, and the front before the edge" if reach else "depth chosen"
            return (f"this size {write_brief(ticks, style)} = {what}",)
        raise LookupError(f"the panel shows no size {name!r}")

    return explain


def _chain(scene: Scene) -> tuple[int, ...]:
    return scene.items[-1].sizes
