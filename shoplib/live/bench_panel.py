"""The joint bench: one joint at a time, for the learner's own boards, before there is any project.

It begins with what the calipers read and the setting that matters most, and shows the boards as solids and in
section, what is gained and what is cut.
"""

from functools import cache
from types import SimpleNamespace

from shoplib.checks.pair_fit import fit_pair
from shoplib.checks.pair_limits import pair_limits
from shoplib.checks.readings import unlike_in
from shoplib.draw.asking import sizes
from shoplib.draw.bench_section import bench_section
from shoplib.draw.pair_view import pair_view, telling
from shoplib.draw.parallel import Direction
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.joints import joint
from shoplib.joints.bench_pair import CannotCut, JointKind, Pair, Setting, Stock, Values
from shoplib.live.bench_controls import LOOKS, READINGS, Bench, is_clearance, key_of, shown, told
from shoplib.live.bench_limits import nearest
from shoplib.live.bench_rows import bench_rows, bench_says
from shoplib.live.choose_one import choose_one
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.table import Table
from shoplib.live.why import workings
from shoplib.measure import write_brief
from shoplib.tables.joint_facts import joint_facts
from shoplib.words.working import working

PICTURE = (330.0, 230.0)
"""Width and height that a drawing is fitted to: small enough for letters that can be read on the screen."""

FIRST, MORE, CLEARANCES, REST = "The joint", "More readings", "Clearances", "All the rest"


def bench_panel(name: str = "dado", unit: str = "in") -> Panel:
    """The joint of that name on the bench, in inches or millimetres; ValueError names the joints there are.

    >>> panel = bench_panel("dado", "in")
    >>> panel.enter("depth", "3/8 in")
    >>> panel.message
    'The shelf gains 3/8 in at this end; dado in the side, 0.705 in wide and 3/8 in deep.'
    >>> panel = bench_panel("dado", "mm")
    >>> panel.enter("depth", "15 mm")
    >>> panel.message
    'Depth of the cut: Only 2.5 mm of wood is left under the dado in the side, and 3 mm must stay: 0.5 mm is missing. \
It can be 14.5 mm at most.'
    """
    bench = Bench(joint(name), unit)
    enters, receives = bench.names()
    main, *others = bench.kind.settings
    clear = [setting for setting in others if is_clearance(setting)]
    rest = [setting for setting in others if not is_clearance(setting)]
    groups = [
        Group(FIRST, {
            "reading_1": bench.reading(f"Measured thickness of the {enters}", "reading_1"),
            key_of(main): bench.control(main),
            "look": choose_one("Look at", LOOKS),
        }),
        Group(MORE, {
            "reading_2": bench.reading(f"Second reading of the {enters}", "reading_2"),
            "reading_3": bench.reading(f"Third reading of the {enters}", "reading_3"),
            "receives": bench.reading(f"Measured thickness of the {receives}", "receives"),
        }, "No sheet is the same all over. Sums take the mean of the readings; a cut must take the thickest."),
        *([Group(CLEARANCES, {key_of(one): bench.control(one) for one in clear},
                 "Room to push the boards together, and for glue. They are drawn larger than they are.")]
          if clear else []),
        Group(REST, {**{key_of(one): bench.control(one) for one in rest}, "width": bench.width("Width of the boards")}),
    ]
    panel = Panel(bench.kind.title.capitalize(), groups, lambda values: outcome_of(bench, values))
    _keep_together(panel)
    return panel


def outcome_of(bench: Bench, given: SimpleNamespace) -> Outcome:
    """The joint that the controls say; readings count once their group is open. Raises CannotBuild."""
    stock, values = _asked(bench, given)
    try:
        pair = bench.kind.build(stock, values)
    except CannotCut as refusal:
        raise CannotBuild(*_refused(bench, stock, values, refusal)) from None
    scenes = [*_solids(bench.kind, pair, given.look), section(bench.kind, pair)]
    rows = bench_rows(bench.kind, pair)

    def why(name: str) -> tuple[str, ...]:
        own, chosen = bench.traced(stock, values)
        kind, number, place = name.split("/")
        if kind == "usual":
            setting = bench.kind.settings[int(number)]
            return working(setting.default(own), f"{setting.label}, usual", bench.style)
        again = bench.kind.build(own, chosen)
        if kind == "table":
            row = bench_rows(bench.kind, again)[int(number)]
            return working(row.ticks, row.what, bench.style)
        return workings(sizes(section(bench.kind, again), place), bench.style)

    cells = [(row.what, row.text(bench.style)) for row in rows]
    cut = [Table("What is gained and what is cut", ("What", "Size"), cells, (1,))] if cells else []
    return Outcome(
        [_drawing(scene, f"drawing/{number}/") for number, scene in enumerate(scenes)],
        [*cut, _usual(bench, stock)],
        findings=(*unlike_in(stock.enters, bench.style), *fit_pair(pair), *pair_limits(pair)),
        message=bench_says(bench.kind, pair, bench.style),
        why=why, chosen=True,
    )


def section(kind: JointKind, pair: Pair) -> Scene:
    """The pair cut across, with what its entering board gains."""
    title = f"{kind.title.capitalize()}, in section"
    return bench_section(pair, title, kind.allowance(pair.stock, pair.values))


def solid(kind: JointKind, pair: Pair, apart: bool) -> Scene:
    """The pair as solids; drawn apart, every part is named, with its other name where countries differ."""
    title = f"{kind.title.capitalize()}, {'drawn apart' if apart else 'put together'}"
    return pair_view(pair, title, apart, seen_from(kind, apart), _called(kind.name, pair) if apart else {})


@cache
def seen_from(kind: JointKind, apart: bool) -> Direction:
    """From where the joint is drawn, whatever its sizes: where most of its parts are in sight at its usual ones."""
    return telling(kind.build(Bench(kind, "in").start()), apart)


def _called(name: str, pair: Pair) -> dict[str, str]:
    known = {part.name: part for part in joint_facts(name).parts}
    return {part: known[part].called if part in known else part for part in pair.named}


def _solids(kind: JointKind, pair: Pair, look: str) -> list[Scene]:
    return [] if look == LOOKS[2] else [solid(kind, pair, look == LOOKS[0])]


def _asked(bench: Bench, given: SimpleNamespace) -> tuple[Stock, dict[str, int]]:
    lengths = {name: getattr(given, name) for name in (*READINGS, "receives", "width")}
    return bench.stock(lengths, 3 if MORE in given.opened else 1), bench.values(given)


def _usual(bench: Bench, stock: Stock) -> Table:
    """What each setting usually is for this stock, and who says so; a count, a slope or a choice is no length."""
    rows, no_lengths = [], []
    for number, setting in enumerate(bench.kind.settings):
        value = setting.default(stock)
        if setting.unit == "length":
            text = write_brief(value, bench.style, bool(value % bench.style.step))
        else:
            text = str(shown(setting, value))
            no_lengths.append(number)
        rows.append((setting.label, text, setting.rule))
    head = ("Setting", "Usual", "Who says so")
    return Table("What is usual for these boards", head, rows, (1,), "usual/", no_lengths)


def _refused(bench: Bench, stock: Stock, values: Values, refusal: CannotCut) -> tuple[str, str]:
    """Why it cannot be cut so, and what would mend it."""
    setting = next((one for one in bench.kind.settings if one.name == refusal.setting), None)
    if setting is None:
        return refusal.sentence, ""
    label = f"{setting.label[:1].upper()}{setting.label[1:]}"
    return f"{label}: {refusal.sentence}", _mend(bench, stock, values, setting)


def _mend(bench: Bench, stock: Stock, values: Values, setting: Setting) -> str:
    """The limit of the setting, as far as its control goes; nothing where that alone does not mend it."""
    def refused(value: int) -> CannotCut | None:
        try:
            bench.kind.make(stock, {**values, setting.name: value})
        except CannotCut as again:
            return again
        return None

    grid, only = bench.grid(setting), setting.only(stock)
    # Of a count no amount of wood says how many fewer.
    many = only is not None or setting.unit != "length"
    can_be = grid if only is None else [value for value in only if value in grid]
    below, above = nearest(refused, values[setting.name], can_be, many)
    near = [told(setting, value, bench.style).removeprefix(setting.label).strip(": ")
            for value in (below, above) if value is not None]
    if len(near) == 2:
        return f"The nearest that can be cut are {near[0]} and {near[1]}."
    if near:
        return f"It can be {near[0]} at {'most' if above is None else 'least'}."
    return "Other boards, or other sizes beside it, would mend that."


def _drawing(scene: Scene, asked: str) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, asked), scene.alt)


def _keep_together(panel: Panel) -> None:
    """Until the further readings are open they move with the first, and so does the other board of the same sheet."""
    first, *others = (panel.controls[name] for name in READINGS)
    if panel.controls["receives"].ticks == first.ticks:
        others.append(panel.controls["receives"])

    def follow(change: dict) -> None:
        if MORE not in panel.opened:
            by = change["new"] - change["old"]
            for other in others:
                other.ticks = _between(other.low, other.ticks + by, other.high)

    first.observe(follow, names="ticks")


def _between(low: int, wanted: int, high: int) -> int:
    return sorted((low, wanted, high))[1]
