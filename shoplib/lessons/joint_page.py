"""What every page of a joint shows beside its words: the bench, pictures of the joint, and its numbers worked out."""

from dataclasses import replace

from shoplib.draw.scene import Scene
from shoplib.joints import joint
from shoplib.joints.bench_pair import Pair
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.large_type import in_type
from shoplib.lessons.own_set import keep_ticked
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.lists.writing import Writing
from shoplib.live.bench_controls import Bench, meant
from shoplib.live.bench_panel import bench_panel, section, solid
from shoplib.live.bench_rows import bench_rows
from shoplib.live.panel import Panel
from shoplib.live.stack_panel import stack_panel
from shoplib.measure import read_length

PICTURE = (420.0, 260.0)

_UNCUT = ("butt", "pocket screws")
"""Joints whose boards only stand against each other: no cut takes in the thickest reading."""


def bench_of(name: str) -> Panel:
    """The joint of that name on the bench, in the learner's unit."""
    return in_type(bench_panel(name, unit_in_use()))


def stack_of_mine() -> Panel:
    """What goes on the arbor from the cutters that the learner owns, under the cautions of a stacked set."""
    return keep_ticked(in_type(stack_panel(unit_in_use())))


def drawn_apart(name: str) -> Figure:
    """Both boards drawn apart, every part named."""
    return _figure(name, solid(joint(name), pair_of(name, unit_in_use()), True))


def put_together(name: str) -> Figure:
    """The joint as it stands."""
    return _figure(name, solid(joint(name), pair_of(name, unit_in_use()), False))


def in_section(name: str) -> Figure:
    """The joint cut across, with its sizes."""
    return _figure(name, section(joint(name), pair_of(name, unit_in_use())))


def gone_wrong(name: str, title: str, words: str, **given: dict[str, str]) -> Figure:
    """The joint in section with a setting as it should not be: `given` has the text of each by its unit."""
    unit = unit_in_use()
    pair = pair_of(name, unit, **{key: texts[unit] for key, texts in given.items()})
    return Figure.of(replace(section(joint(name), pair), title=title), PICTURE, (words,), pair.stock.style)


def cuts_worked(name: str, unit: str, **given: str) -> Worked:
    """What is gained and what is cut at the usual values, those `given` (setting = text) in their place.

    `width` is that of the boards.
    """
    bench, pair = Bench(joint(name), unit), pair_of(name, unit, **given)
    write = Writing(bench.style)
    rows = bench_rows(bench.kind, pair)
    stock, say = pair.stock, Say(unit)
    lines = [(row.what, "", row.text(bench.style)) for row in rows]
    if name not in _UNCUT:
        readings = ", ".join(write.measured(one) for one in stock.enters.readings)
        lines.insert(0, (f"the {pair.joints[0].enters}, thickest reading", readings,
                         write.measured(stock.enters.thickest)))
    title = f"{bench.kind.title.capitalize()}: what is set" + "".join(f", {key.replace('_', ' ')} {text}"
                                                                     for key, text in given.items())
    sizes = [(row.what, row.ticks) for row in rows]
    told = why_each(sizes, say.style)
    if name not in _UNCUT and not any(line.startswith("thickest reading of ") for line in told):
        told = why_each([(lines[0][0], stock.enters.thickest), *sizes], say.style)  # no cut goes by it
    return Worked(title, lines, told)


def pair_of(name: str, unit: str, **given: str) -> Pair:
    """The pair of the bench's own boards, its numbers with their names; `given` are settings and `width` as text."""
    bench = Bench(joint(name), unit)
    stock = bench.start()
    if "width" in given:
        stock = replace(stock, width=read_length(given.pop("width")))
    settings = {setting.name.replace("-", " "): setting for setting in bench.kind.settings}
    chosen = {}
    for key, text in given.items():
        setting = settings[key.replace("_", " ")]
        if setting.unit == "length":
            chosen[setting.name] = read_length(text, zero=True)
        else:
            chosen[setting.name] = meant(setting, int(text) if setting.unit == "count" else text, stock)
    return bench.kind.build(*bench.traced(stock, bench.kind.values(stock, chosen)))


def _figure(name: str, scene: Scene) -> Figure:
    return Figure.of(scene, PICTURE, (), Bench(joint(name), unit_in_use()).style)
