"""The dado set that a person owns: what goes on the arbor for this sheet and this fit, and what the fit then is.

The cautions of the stacked set stand above all of it, whatever is set.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from html import escape
from types import SimpleNamespace

import ipywidgets

from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.draw.stack_view import stack_view
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import drawn
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, write_measured
from shoplib.measure.noted import noting
from shoplib.measure.traced import leaf
from shoplib.model.dado_stack import CannotStack, SawLimits, Stack, nearest_stack, target_width
from shoplib.tables.dado_sets import DadoSet, dado_sets
from shoplib.tables.fits import fit_class, fit_named, fits
from shoplib.tables.setups import setup
from shoplib.words.working import working

PICTURE = (330.0, 230.0)
CUT, SAW, OWNED = "The cut", "The saw", "What you own"

_FIRST = {"in": "8 in set, inch sizes", "mm": "200 mm set, millimetre sizes"}


def stack_panel(unit: str = "in") -> Panel:
    """The stack for one cut, in inches or millimetres, from the cutters and shims that are ticked.

    >>> stack_panel("in").message
    'On the arbor: 0.7125 in, 0.0005 in narrower than wanted; the thickest place of the sheet gets a push fit.'
    """
    style = INCH_STYLE if unit == "in" else MM_STYLE
    inch = unit == "in"

    def length(label: str, value: str, low: str, high: str, step: str) -> LengthControl:
        return LengthControl(label, value, low, high, style, step, measured=True)

    wanted = [fit.name for fit in fits(unit) if fit.aim is not None]
    sets = sorted(dado_sets().values(), key=lambda each: each.unit != unit)
    ticks = {_key(owned, kind, number): ipywidgets.Checkbox(
        value=True, indent=False, description=f"{kind} {write_measured(piece, _style(owned))}"
    ) for owned in sets for kind, number, piece in _pieces(owned)}
    chosen = choose_one("Dado set", [owned.name for owned in sets], _FIRST[unit])
    groups = [
        Group(CUT, {
            "set": chosen,
            "thick": length("Thickest reading", *(("0.71 in", "0.2 in", "1 in", "0.001 in") if inch else
                                                  ("17.7 mm", "5 mm", "25 mm", "0.05 mm"))),
            "fit": choose_one("Fit", wanted, "push"),
        }),
        Group(SAW, {
            "widest": length("Widest stack that its maker allows", *(
                ("0.8125 in", "0 in", "1 in", "0.0625 in") if inch else ("20.6 mm", "0 mm", "25 mm", "0.1 mm"))),
            "diameter": length("Largest cutter that its maker allows", *(
                ("8 in", "6 in", "10 in", "1 in") if inch else ("203.2 mm", "150 mm", "250 mm", "1 mm"))),
        }, "Both stand in the manual of the saw. 0 means that it takes no dado set at all."),
        Group(OWNED, ticks, "Both outer cutters are on the arbor always; tick the others that you have."),
    ]

    def follow(_change: object = None) -> None:
        for owned in sets:
            for kind, number, _ in _pieces(owned):
                ticks[_key(owned, kind, number)].layout.display = None if owned.name == chosen.value else "none"

    chosen.observe(follow, names="value")
    follow()
    panel = Panel("A stack for this sheet", groups, lambda values: outcome_of(values, style))
    panel.widget.children = (ipywidgets.HTML(cautions_html()), *panel.widget.children)
    return panel


def ticked(panel: Panel) -> DadoSet | None:
    """What is ticked on a stack panel, as a set of its own; None where nothing of the set was left out.

    >>> panel = stack_panel("in")
    >>> ticked(panel) is None
    True
    >>> panel.controls["in_shim_0"].value = False
    >>> ticked(panel).name
    'what you ticked of the 8 in set, inch sizes'
    """
    whole = dado_sets()[panel.controls["set"].value]
    owned = _owned(SimpleNamespace(**{name: control.value for name, control in panel.controls.items()
                                      if name == "set" or isinstance(control, ipywidgets.Checkbox)}))
    return None if owned == whole else replace(owned, name=f"what you ticked of the {whole.name}")


def follow_ticks(panel: Panel, act: Callable[[], None]) -> None:
    """Calls `act` whenever another set is chosen on a stack panel, or a piece of it ticked or not."""
    for name, control in panel.controls.items():
        if name == "set" or isinstance(control, ipywidgets.Checkbox):
            control.observe(lambda _change: act(), names="value")


def cautions_html() -> str:
    """All cautions of the stacked set, those of its saw and its cut among them, as a framed list."""
    rows = "".join(f"<li>{escape(one.claim.say)}</li>" for one in setup("dado", "stacked dado set").cautions)
    return (f'<section style="border: 2px solid; padding: 0.2em 0.8em"><p class="shop-heading">Read first: stacked '
            f"dado set</p><ul>{rows}</ul></section>")


def outcome_of(values: SimpleNamespace, style: Style) -> Outcome:
    """The stack nearest to the thickest reading and the fit, and the next best. Raises CannotBuild."""
    owned = _owned(values)
    cut = _Cut(values.thick, fit_named(values.fit, style.unit).aim)
    try:
        choice = nearest_stack(cut.wanted, owned, SawLimits(values.widest, values.diameter), style)
    except CannotStack as refusal:
        sentence = str(refusal)
        raise CannotBuild(f"{sentence[:1].upper()}{sentence[1:]}") from None
    stacks = [stack for stack in (choice.best, choice.next_best) if stack is not None]
    rows = [("wanted", write_measured(cut.wanted, style), "", values.fit)]
    for what, stack in zip(("nearest", "next best"), stacks, strict=False):
        rows.append((what, write_measured(stack.width, style), _off(stack.width - cut.wanted, style),
                     fit_class(stack.width - values.thick, style.unit).name))
    scene, told = _drawn(choice.best, style), _say(choice.best, cut, style)
    named = cut.named(values.fit)

    def why(name: str) -> tuple[str, ...]:
        traced = [_named(stack) for stack in stacks]
        if name.startswith("drawing/"):
            return drawn(_drawn(traced[0], style), name.split("/")[2], style)
        row, column = map(int, name.split("/")[1:])
        called, size = "width that is wanted", named.wanted
        if row:
            width = traced[row - 1].width
            called, size = ("this stack", width) if column == 1 else ("off by", abs(width - named.wanted))
        return working(size, called, style, write_measured(size, style))

    return Outcome(
        [Drawing(scene.title, draw(scene, PICTURE, "drawing/0/"), scene.alt)],
        [Table("Nearest arrangements", ("Stack", "Cuts", "Off by", "Fit of the thickest place"), rows, (1, 2))],
        message=told.message,
        why=why_said(told, lambda: _say(_named(choice.best), named, style), style, why),
    )


@dataclass(frozen=True, slots=True)
class _Cut:
    """The cut that is to be made: the thickest reading of what enters it, and the fit aimed at. Ticks."""

    thick: int
    aim: int

    @property
    def wanted(self) -> int:
        """How wide it is to be."""
        return target_width([self.thick], self.aim)

    def named(self, fit: str) -> "_Cut":
        """The same on numbers that carry their names."""
        return _Cut(leaf(self.thick, "thickest reading", "measured"), leaf(self.aim, f"aim of a {fit} fit", "table"))


def _named(stack: Stack) -> Stack:
    """The same stack of pieces that carry their names."""
    chippers, shims = (
        [leaf(piece, f"{what} of the set", "table") for piece in pieces]
        for what, pieces in (("chipper", stack.chippers), ("shim", stack.shims))
    )
    return Stack.of(leaf(stack.outer, "outer cutter of the set", "table"), chippers, shims)


def _drawn(stack: Stack, style: Style) -> Scene:
    return stack_view(stack, "On the arbor", style).with_alarms(_alarms())


def _say(stack: Stack, cut: _Cut, style: Style) -> Said:
    """The line above the picture."""
    fit = fit_class(int(stack.width - cut.thick), style.unit).name
    with noting() as notes:
        message = (f"On the arbor: {write_measured(stack.width, style)}, {_off(stack.width - cut.wanted, style)}; the "
                   f"thickest place of the sheet gets a {fit} fit.")
    return said(notes, (), message)


def _off(error: int, style: Style) -> str:
    if not error:
        return "as wanted"
    return f"{write_measured(abs(error), style)} {'wider' if error > 0 else 'narrower'} than wanted"


def _alarms() -> tuple[str, ...]:
    """The two that decide whether there is a stack at all; they stay on the picture of a page that has not run."""
    return tuple(one.claim.say for one in setup("dado", "stacked dado set").cautions if one.of == "dado set")[:2]


def _owned(values: SimpleNamespace) -> DadoSet:
    owned = dado_sets()[values.set]
    kept: dict[str, list[int]] = {"chipper": [], "shim": []}
    for kind, number, piece in _pieces(owned):
        if getattr(values, _key(owned, kind, number)):
            kept[kind].append(piece)
    return replace(owned, chippers=tuple(kept["chipper"]), shims=tuple(kept["shim"]))


def _pieces(owned: DadoSet) -> list[tuple[str, int, int]]:
    return [(kind, number, piece) for kind, pieces in (("chipper", owned.chippers), ("shim", owned.shims))
            for number, piece in enumerate(pieces)]


def _key(owned: DadoSet, kind: str, number: int) -> str:
    return f"{owned.unit}_{kind}_{number}"


def _style(owned: DadoSet) -> Style:
    return INCH_STYLE if owned.unit == "in" else MM_STYLE
