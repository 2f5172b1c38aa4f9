"""The hardware panel: drawers, gap and height at first, then setback, pulls, screws, the divider, tools on a panel."""

from collections.abc import Callable, Sequence
from dataclasses import asdict
from pathlib import Path
from types import SimpleNamespace

import ipywidgets

from shoplib.draw.pen import draw
from shoplib.lists.writing import Writing
from shoplib.live.choose_one import choose_one
from shoplib.live.hardware_choices import hardware_choices
from shoplib.live.hardware_project import BESIDE as SECOND_BAY
from shoplib.live.hardware_project import (
    KINDS,
    SHELVES,
    TOOLS,
    HardwareChoices,
    Tool,
    hardware_project,
    setting_step,
    starting_hardware,
)
from shoplib.live.hardware_says import findings, message, sum_lengths, sums
from shoplib.live.hardware_views import BESIDE, EDGE, FIRST, NEWEST, PEGS, PULLS, SCREWS, SEEN, Rows, scenes, tables
from shoplib.live.keep_group import keep_group
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.tool_list import read_tools
from shoplib.live.why import drawn, workings
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, write_length, write_measured
from shoplib.measure.noted import noting
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.solved import Cabinet
from shoplib.model.tool_row import ToolRow, tool_row
from shoplib.model.tracing import traced
from shoplib.tables.screws import screws
from shoplib.words.amounts import setting
from shoplib.words.working import working

PICTURE = (380.0, 300.0)


def hardware_style(unit: str) -> Style:
    """How the hardware panel shows lengths."""
    return INCH_STYLE if unit == "in" else MM_STYLE


def hardware_panel(unit: str = "in", folder: Path | None = None) -> Panel:
    """The panel of hardware layout, in inches or millimetres; what is kept of it goes into `folder`.

    >>> panel = hardware_panel("in")
    >>> panel.enter("count", 2)
    >>> panel.message
    'Spacers 5 3/32 in and 17 5/32 in, used on both sides; slides set back 1/16 in.'
    """
    style, start = hardware_style(unit), starting_hardware(unit)
    kept_style = Style(unit, setting_step(unit))  # a file says the step by its style, and plans to the same places
    inch, spare = unit == "in", write_length(screws(unit)["front"].spare, style)

    def length(label: str, ticks: int, inches: tuple[str, str, str], mm: tuple[str, str, str]) -> LengthControl:
        low, high, arrow = inches if inch else mm
        return LengthControl(label, write_length(ticks, style), low, high, style, arrow)

    def thickness(label: str, ticks: int, inches: tuple[str, str], mm: tuple[str, str]) -> LengthControl:
        ends, arrow = (inches, "0.001 in") if inch else (mm, "0.1 mm")
        return LengthControl(label, write_measured(ticks, style), *ends, style, arrow, measured=True)

    tools = ipywidgets.Textarea(
        value=TOOLS[unit], description=f"Tools, each with its width, in {'inches' if inch else 'millimetres'}",
        continuous_update=False, rows=3, style={"description_width": "auto"}, layout={"width": "auto"},
    )
    groups = [
        Group(FIRST, {
            "height": length("Opening, height", start.height, ("8 in", "48 in", "1/8 in"),
                             ("200 mm", "1200 mm", "1 mm")),
            "count": choose_one("Drawers", range(1, 7), start.count),
            "gap": length("Gap between fronts", start.gap, ("1/32 in", "1/2 in", "1/32 in"),
                          ("1 mm", "12 mm", "0.5 mm")),
        }),
        Group(EDGE, {
            "kind": choose_one("Fronts", KINDS, start.kind),
            "front": thickness("Measured thickness of the fronts", start.front, ("0.45 in", "1 in"),
                               ("11 mm", "25 mm")),
            "seen": choose_one("Beside the controls", (NEWEST, *SEEN)),
        }, "A slide begins a little behind the front edge, and behind an inset front, by what its own sheet says."),
        Group(PULLS, {
            "width": length("Opening, width", start.width, ("8 in", "36 in", "1/8 in"), ("200 mm", "900 mm", "1 mm")),
            "pitch": length("Pull, from hole to hole", start.pitch, ("1 in", "16 in", "1/4 in"),
                            ("32 mm", "400 mm", "1 mm")),
        }, "The pull stands in the middle of the front, and its screws pass the box front too."),
        Group(SCREWS, {
            "box": thickness("Measured thickness of the box front", start.box, ("0.3 in", "0.75 in"),
                             ("8 mm", "19 mm")),
        }, f"From inside the box into the front: the longest screw of the table that leaves {spare}."),
        Group(BESIDE, {
            "beside": choose_one("In bay 2", SECOND_BAY, start.beside),
            "shelves": choose_one("Shelves", range(1, 6), start.shelves),
        }, "A divider has two faces: what stands on the other one, where the screws of the slides come?"),
        Group(PEGS, {
            "panel": length("Panel, width for tools", start.panel, ("6 in", "48 in", "1/8 in"),
                            ("150 mm", "1200 mm", "1 mm")),
            "tools": tools,
        }, "What is left of the panel is shared evenly: one space more than there are tools."),
    ]
    controls = {name: control for group in groups for name, control in group.controls.items()}

    def asked(values: SimpleNamespace, tools: tuple[Tool, ...] = ()) -> HardwareChoices:
        named = [name for name in controls if name != "tools"]
        return HardwareChoices(**{name: getattr(values, name) for name in named}, tools=tools)

    def work(values: SimpleNamespace) -> Outcome:
        hung = read_tools(values.tools, unit) if PEGS in values.opened else ()
        return outcome_of(asked(values, hung), values.opened, style)

    def kept_values(kept: Project) -> dict[str, object]:
        choices = asdict(hardware_choices(kept, kept_style))
        return {name: value for name, value in choices.items() if name not in ("panel", "tools", "seen")}

    def follow(_change: object = None) -> None:
        controls["shelves"].layout.display = None if controls["beside"].value == SHELVES else "none"

    controls["beside"].observe(follow, names="value")
    groups.append(keep_group(
        lambda: panel, lambda: hardware_project(asked(panel.values), kept_style), kept_values, folder,
        "The tools and their panel are not kept.",
    ))
    panel = Panel("Hardware layout", groups, work)
    follow()
    return panel


def outcome_of(choices: HardwareChoices, opened: Sequence[str], style: Style) -> Outcome:
    """Solve the case and show what is open; raises CannotBuild where there is none, in the words of the controls."""
    project = hardware_project(choices, style)
    try:
        cabinet, told = _say(project, choices, opened)
        row = _row(choices, [tool.width for tool in choices.tools], style) if choices.tools else None
    except ImpossibleProject as reason:
        raise CannotBuild(*_in_panel_words(reason)) from None
    shown = [
        Drawing(scene.title, draw(scene, PICTURE, f"drawing/{number}/"), scene.alt)
        for number, scene in enumerate(scenes(cabinet, choices, row, opened, style))
    ]
    return Outcome(
        shown, [_written(rows, style) for rows in tables(cabinet, choices, row, opened)], sums(cabinet, row, style),
        told.findings, told.message,
        why_said(
            told, lambda: _say(traced(project), choices, opened)[1], style, _why(project, choices, opened, style),
        ),
        sums_asked=True, chosen=choices.seen != NEWEST,
    )


def _say(project: Project, choices: HardwareChoices, opened: Sequence[str]) -> tuple[Cabinet, Said]:
    """The project solved, and what the panel says of it."""
    with noting() as notes:
        cabinet = solve(project)
        found = findings(cabinet, choices, opened)
        line = message(cabinet, cabinet.style, found)
    return cabinet, said(notes, found, line)


def _row(choices: HardwareChoices, widths: Sequence[int], style: Style, panel: int | None = None) -> ToolRow:
    return tool_row(choices.panel if panel is None else panel, widths, setting_step(style.unit))


def _in_panel_words(reason: ImpossibleProject) -> tuple[str, str]:
    """The solver's sentence as one about the panel, and what would mend it."""
    why = reason.sentence.partition(";")[0]
    if reason.key == "tools":
        return f"{why[0].upper()}{why[1:]}.", "Take a wider panel, or fewer tools."
    if reason.key.startswith("pulls"):
        return f"{why[0].upper()}{why[1:]}.", "Take a pull whose holes are nearer together, or a wider opening."
    return f"The drawers do not come out: {why}.", "Take fewer drawers, a smaller gap, or a higher opening."


def _written(rows: Rows, style: Style) -> Table:
    page = Writing(style)
    cells = [
        (name, *("none fits" if size is None else page.setting(size) for size in sizes)) for name, sizes in rows.rows
    ]
    asked = tuple(
        column for column in range(1, len(rows.head)) if all(sizes[column - 1] is not None for _, sizes in rows.rows)
    )
    return Table(rows.caption, rows.head, cells, asked, rows.name)


def _why(
    project: Project, choices: HardwareChoices, opened: Sequence[str], style: Style
) -> Callable[[str], tuple[str, ...]]:
    """Answers for each dimension and cell: the same functions, on numbers that carry their names."""

    def explain(name: str) -> tuple[str, ...]:
        cabinet, row = solve(traced(project)), None
        if choices.tools:
            widths = [leaf(tool.width, f"width of {tool.name}", "measured") for tool in choices.tools]
            row = _row(choices, widths, style, leaf(choices.panel, "width of the panel"))
        kind, one, place = name.split("/")
        if kind == "drawing":
            scene = scenes(cabinet, choices, row, opened, style)[int(one)]
            return drawn(scene, place, style)
        if kind == "sum":
            return workings([sum_lengths(cabinet, row)[int(one)][int(place)]], style)
        shown = next(each for each in tables(cabinet, choices, row, opened) if each.name == f"{kind}/")
        called, sizes = shown.rows[int(one)]
        size, column = sizes[int(place) - 1], shown.head[int(place)].lower()
        if size is not None:
            return working(size, f"{called}, {column}", style, setting(size, style))
        raise LookupError(f"the panel shows no size {name!r}")

    return explain
