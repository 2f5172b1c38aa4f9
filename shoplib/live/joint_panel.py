"""The joint panel: a kind, a sheet and a depth, and the joint cut across with what is gained and what is cut."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace

import ipywidgets

from shoplib.checks import check
from shoplib.draw.joint_lesson import joint_lesson, stop_seen_from_above
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.live.choose_one import choose_one
from shoplib.live.joint_choices import joint_choices
from shoplib.live.joint_project import JOINTS, JointChoices, enters_in, joint_project, with_one_shelf
from shoplib.live.joint_rows import in_short, rows
from shoplib.live.keep_group import keep_group
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import drawn
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, narrowest, thickest
from shoplib.measure.noted import noting
from shoplib.model.allowance import allowance
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.solved import Cabinet, Joint
from shoplib.model.tracing import traced
from shoplib.words.working import working

PICTURE = (330.0, 230.0)
"""Width and height that a section is fitted to: small enough for letters that can be read on the screen."""

RECEIVES = "left side"

FIRST, READINGS, CLEARANCES = "The joint", "More readings", "Clearances"

_ABOUT_JOINTS = ("wood left", "joints", "overlap", "seating", "readings")
"""The checks that have something to say about one joint."""

_STARTS = {
    "in": {
        "reading_1": "0.703", "reading_2": "0.699", "reading_3": "0.710",
        "back_1": "0.204", "back_2": "0.201", "back_3": "0.210",
        "depth": "1/4", "fit": "0.004", "end_gap": "1/32", "tongue": "1/4", "stop": "1/2",
    },
    "mm": {
        "reading_1": "17.5", "reading_2": "17.3", "reading_3": "17.7",
        "back_1": "5.9", "back_2": "5.8", "back_3": "6",
        "depth": "6", "fit": "0.1", "end_gap": "1", "tongue": "6", "stop": "12",
    },
}
"""Made-up readings, of a sheet sold as 3/4 in or 18 mm and of a thin one sold as 1/4 in or 6 mm."""


def start(unit: str, name: str) -> str:
    """What a control of the panel begins with, as text with its unit.

    >>> start("mm", "depth")
    '6 mm'
    """
    return f"{_STARTS[unit][name]} {unit}"


def joint_style(unit: str) -> Style:
    """How the panel shows lengths: 1/64 in, or a tenth of a millimetre."""
    return INCH_STYLE if unit == "in" else MM_STYLE


def joint_panel(unit: str = "in", folder: Path | None = None) -> Panel:
    """Every joint of the workbook, one at a time, in inches or millimetres; what is kept of it goes into `folder`.

    >>> panel = joint_panel("in")
    >>> panel.enter("depth", "3/8 in")
    >>> panel.message
    'dado in left side: 0.703 in wide and 3/8 in deep, 0.328 in of wood left; the shelf gains 3/8 in at each end.'
    """
    style = joint_style(unit)

    def length(label: str, name: str, inch: tuple[str, str, str], mm: tuple[str, str, str], **how) -> LengthControl:
        low, high, step = inch if unit == "in" else mm
        return LengthControl(label, start(unit, name), low, high, style, step, **how)

    def reading(label: str, name: str) -> LengthControl:
        thin = name.startswith("back")
        inch = ("0.15 in", "0.3 in", "0.001 in") if thin else ("0.45 in", "0.85 in", "0.001 in")
        mm = ("4 mm", "8 mm", "0.1 mm") if thin else ("11 mm", "22 mm", "0.1 mm")
        return length(label, name, inch, mm, measured=True)

    groups = [
        Group(
            FIRST,
            {
                "kind": choose_one("Joint", JOINTS, "dado"),
                "back_1": reading("Measured thickness of the back", "back_1"),
                "reading_1": reading("Measured thickness of the case sheet", "reading_1"),
                "depth": length(
                    "Depth of the cut", "depth", ("1/16 in", "5/8 in", "1/32 in"), ("1 mm", "16 mm", "0.5 mm")
                ),
                "tongue": length(
                    "Thickness of the tongue", "tongue", ("1/16 in", "1/2 in", "1/32 in"), ("2 mm", "12 mm", "0.5 mm")
                ),
                "stop": length(
                    "Stopped, from the front edge", "stop", ("1/8 in", "10 in", "1/8 in"), ("3 mm", "250 mm", "1 mm")
                ),
            },
        ),
        Group(
            READINGS,
            {
                "reading_2": reading("Second reading of the case sheet", "reading_2"),
                "reading_3": reading("Third reading of the case sheet", "reading_3"),
                "back_2": reading("Second reading of the back", "back_2"),
                "back_3": reading("Third reading of the back", "back_3"),
            },
            "No sheet is the same all over. Sums take the mean of the readings; a cut must take the thickest.",
        ),
        Group(
            CLEARANCES,
            {
                "fit": length("Fit: wider than the thickest", "fit", ("0 in", "1/32 in", "0.001 in"),
                              ("0 mm", "0.8 mm", "0.05 mm"), measured=True),
                "end_gap": length("End gap: deeper than it enters", "end_gap", ("0 in", "1/8 in", "1/64 in"),
                                  ("0 mm", "3 mm", "0.5 mm")),
            },
            "Room for glue and for a hand to push the board in. They are drawn larger than they are. With an end gap "
            "only a shoulder, or other boards home in their joints, keeps the clamps from drawing the case narrow.",
        ),
    ]
    controls = {name: control for group in groups for name, control in group.controls.items()}
    _ask_what_applies(controls)

    def work(values: SimpleNamespace) -> Outcome:
        return outcome_of(choices_from(values), style)

    groups.append(keep_group(
        lambda: panel, lambda: joint_project(choices_from(panel.values), style),
        lambda kept: kept_values(joint_choices(kept, style)), folder,
        "It is a small case with this one kind of joint in it, all others butted.",
    ))
    panel = Panel("Joints", groups, work)
    for own in ("reading", "back"):
        _keep_together(panel, [controls[f"{own}_{number}"] for number in (1, 2, 3)])
    return panel


def choices_from(values: SimpleNamespace) -> JointChoices:
    """What the controls say: readings and clearances count once their group is open, and where they apply."""
    own = "back" if values.kind == "groove" else "reading"
    numbers = (1, 2, 3) if READINGS in values.opened else (1,)
    clear = CLEARANCES in values.opened
    return JointChoices(
        values.kind, tuple(getattr(values, f"{own}_{number}") for number in numbers), values.depth,
        values.reading_1, values.fit if clear else 0, values.end_gap if clear else 0, values.tongue, values.stop,
    )


def kept_values(choices: JointChoices) -> dict[str, object]:
    """What the controls say where they say these choices, three readings among them; only of those that apply."""
    groove = choices.kind == "groove"
    own = {f"{'back' if groove else 'reading'}_{n}": reading for n, reading in enumerate(choices.readings, 1)}
    side = {f"reading_{n}": choices.receives for n in (1, 2, 3)} if groove else {}
    cut = {name: getattr(choices, name) for name, there in _cut_asks(choices.kind).items() if there}
    return {"kind": choices.kind, **own, **side, **cut}


def outcome_of(choices: JointChoices, style: Style) -> Outcome:
    """Solve the small case and show its joint; raises CannotBuild in the words of the controls."""
    project = joint_project(choices, style)
    try:
        cabinet, joint, told = _say(project, choices.kind)
    except ImpossibleProject as reason:
        raise CannotBuild(_in_panel_words(reason)) from None
    views: list[Callable[[Cabinet, Joint], Scene]] = [lambda case, one: joint_lesson(case, one, style)]
    if allowance(cabinet, joint).stop:
        views.append(lambda case, one: stop_seen_from_above(case, one, style))
    scenes = [view(cabinet, joint) for view in views]

    def why(name: str) -> tuple[str, ...]:
        case, one = _solved(traced(project), choices.kind)
        kind, number, place = name.split("/")
        if kind == "table":
            row = rows(case, one)[int(number)]
            return working(row.ticks, row.what, style, row.text(style))
        return drawn(views[int(number)](case, one), place, style)

    cells = [(row.what, row.text(style)) for row in rows(cabinet, joint)]
    return Outcome(
        [_drawing(scene, f"drawing/{number}/") for number, scene in enumerate(scenes)],
        [Table("What is gained and what is cut", ("What", "Size"), cells, (1,))],
        findings=told.findings,
        message=told.message,
        why=why_said(told, lambda: _say(traced(project), choices.kind)[2], style, why),
    )


def _say(project: Project, kind: str) -> tuple[Cabinet, Joint, Said]:
    """The small case and its joint, and what the panel says of it."""
    with noting() as notes:
        cabinet, joint = _solved(project, kind)
        found = [replace(each, text=each.text.replace("bay 1 shelf 1", "shelf"))
                 for each in check(cabinet) if each.check in _ABOUT_JOINTS]
        message = in_short(cabinet, joint, cabinet.style)
    return cabinet, joint, said(notes, found, message)


def _solved(project: Project, kind: str) -> tuple[Cabinet, Joint]:
    cabinet = with_one_shelf(solve(project))
    return cabinet, next(
        joint for joint in cabinet.joints if (joint.enters, joint.receives) == (enters_in(kind), RECEIVES)
    )


def _drawing(scene: Scene, asked: str) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, asked), scene.alt)


_LABELS = {
    "depth": "Depth of the cut", "end_gap": "End gap", "tongue": "Thickness of the tongue", "stop": "Stop",
}


def _in_panel_words(reason: ImpossibleProject) -> str:
    label = _LABELS.get(reason.key.rpartition(".")[2], "Not to be built")
    return f"{label}: {reason.sentence.replace('bay 1 shelf 1', 'shelf').removesuffix('.')}."


def _keep_together(panel: Panel, readings: list[LengthControl]) -> None:
    """Until the further readings are open they move with the first: one sheet is never thick here and thin there."""

    def follow(change: dict) -> None:
        if READINGS not in panel.opened:
            by = change["new"] - change["old"]
            for other in readings[1:]:
                other.ticks = narrowest([thickest([other.low, other.ticks + by]), other.high])

    readings[0].observe(follow, names="ticks")


def _cut_asks(kind: str) -> dict[str, bool]:
    """Which of the controls of the cut a kind of joint asks for."""
    cut = kind != "butt"
    return {"depth": cut, "fit": cut, "end_gap": cut, "tongue": kind.startswith("tongue"),
            "stop": kind.startswith("stopped")}


def _ask_what_applies(controls: dict[str, ipywidgets.Widget]) -> None:
    """Show a control only for the kinds of joint that it changes."""

    def follow(_change: object = None) -> None:
        kind = controls["kind"].value
        groove = kind == "groove"
        applies = _cut_asks(kind) | {f"back_{number}": groove for number in (1, 2, 3)}
        applies |= {f"reading_{number}": not groove for number in (2, 3)}
        for name, shown in applies.items():
            controls[name].layout.display = None if shown else "none"

    controls["kind"].observe(follow, names="value")
    follow()
