"""The caliper panel: readings at several places of one sheet, their mean and the thickest, beside its name."""

from dataclasses import replace
from types import SimpleNamespace

from shoplib.checks.readings import doubts_about, unlike_in
from shoplib.draw.asking import name_of_line
from shoplib.draw.caliper import reading_places, thickness_line
from shoplib.draw.pen import draw
from shoplib.draw.scene import Label, Leader, Scene
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.measured_why import Sizes, why_of
from shoplib.live.panel import Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.tape_panel import PICTURE
from shoplib.measure import (
    INCH,
    INCH_STYLE,
    MM,
    MM_STYLE,
    Style,
    narrowest,
    read_length,
    thickest,
    write_brief,
    write_measured,
)
from shoplib.measure.noted import noting, stated
from shoplib.measure.traced import leaf
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Finding
from shoplib.tables.plywood import PlywoodLimits, plywood_limits

PLACES = ("near left", "near right", "far left", "far right")

NAMES = {"in": ("1/4 in", "1/2 in", "23/32 in", "3/4 in"), "mm": ("6 mm", "9 mm", "12 mm", "15 mm", "18 mm")}
"""What sheets are sold as (common practice, no source)."""

FIRST = {
    "in": ("3/4 in", ("0.722 in", "0.727 in", "0.72 in", "0.731 in")),
    "mm": ("18 mm", ("17.4 mm", "17.5 mm", "17.45 mm", "17.65 mm")),
}
"""The sheet that the panel begins with: its name, and what calipers read at each place."""

_FAR = {"in": INCH * 3 // 32, "mm": MM * 5 // 2}
"""How far from its name a reading can be set."""


def sheet_panel(unit: str = "in") -> Panel:
    """The panel of the calipers, in inches or millimetres; names in the other unit can be chosen too.

    >>> panel = sheet_panel("in")
    >>> panel.message
    'Sums use the mean, 0.7245 in; a cut that receives the sheet uses the thickest reading, 0.727 in.'
    """
    style, arrow = _style(unit), "0.001 in" if unit == "in" else "0.05 mm"
    name, readings = FIRST[unit]
    sold = choose_one("Sold as", (*NAMES[unit], *NAMES["mm" if unit == "in" else "in"]), name)
    controls = {}
    for place, reading in zip(PLACES, readings, strict=True):
        control = LengthControl(place.capitalize(), reading, *_limits(name, style), style, arrow, measured=True)
        controls[place.replace(" ", "_")] = control

    def follow(change: dict) -> None:
        for control in controls.values():
            control.limit(*_limits(change["new"], style))

    sold.observe(follow, names="value")
    near, far = dict(list(controls.items())[:2]), dict(list(controls.items())[2:])
    words = "A sheet is not the same everywhere: two more places, at the far edge."
    groups = [Group("A sheet and two readings", {"sold": sold, **near}), Group("Two more readings", far, words)]
    return Panel("Calipers on a sheet", groups, lambda values: sheet_outcome(values, unit))


def sheet_outcome(values: SimpleNamespace, unit: str) -> Outcome:
    """What the panel shows: `sold` as its control offers it, and the readings of the groups that are open."""
    style, nominal = _style(unit), read_length(values.sold)
    read = [(place, getattr(values, place.replace(" ", "_"))) for place in PLACES[: 2 * len(values.opened)]]
    sheet = Sheet("the sheet", "plywood", nominal, tuple(reading for _, reading in read))
    row = plywood_limits().get(nominal)
    scenes = [
        thickness_line(nominal, read, style, (row.least, row.greatest) if row else None),
        reading_places(read, style),
    ]
    told = _say(sheet, style, values.sold)
    return Outcome(
        [_drawing(number, scene) for number, scene in enumerate(scenes)],
        [_readings(sheet, read, style), *_standard(nominal, values.sold)],
        findings=told.findings,
        message=told.message,
        why=why_said(told, lambda: _say(_named(sheet, read), style, values.sold), style,
                     why_of(lambda: _asked(sheet, read, scenes), style)),
    )


def _say(sheet: Sheet, style: Style, sold: str) -> Said:
    """What the panel says of the readings."""
    with noting() as notes:
        sold = stated(sold, sheet.nominal)
        sheet = replace(sheet, name=f"the {sold} sheet")
        found = (*doubts_about(sheet, style), *unlike_in(sheet, style), *_no_standard(sheet.nominal, sold))
        mean, most = (write_brief(size, style, decimal=True) for size in (sheet.thickness, sheet.thickest))
        message = f"Sums use the mean, {mean}; a cut that receives the sheet uses the thickest reading, {most}."
    return said(notes, found, message)


def _named(sheet: Sheet, read: list[tuple[str, int]]) -> Sheet:
    """The same sheet, whose readings carry the names of their places."""
    readings = tuple(leaf(reading, f"reading {place}", "measured") for place, reading in read)
    return replace(sheet, nominal=leaf(sheet.nominal, "thickness it is sold by"), readings=readings)


def _readings(sheet: Sheet, read: list[tuple[str, int]], style: Style) -> Table:
    rows = [*read, ("mean", sheet.thickness), ("thickest", sheet.thickest),
            ("thickest less thinnest", sheet.thickest - narrowest(sheet.readings))]
    cells = [(what, write_brief(size, style, decimal=True)) for what, size in rows]
    return Table("Caliper readings", ("Where", "Thickness"), cells, (1,))


def _asked(sheet: Sheet, read: list[tuple[str, int]], scenes: list[Scene]) -> Sizes:
    """The same choices on readings that carry the names of their places."""
    nominal, sheet = sheet.nominal, _named(sheet, read)
    readings = sheet.readings
    sizes = [*((f"reading {place}", size) for (place, _), size in zip(read, readings, strict=True)),
             ("mean", sheet.thickness), ("thickest", sheet.thickest),
             ("thickest less thinnest", thickest(readings) - narrowest(readings))]
    found = {f"table/{row}/1": size for row, size in enumerate(sizes)}
    for number, (called, row) in enumerate(_rows_of_standard(nominal)):
        for column, what, limit in ((1, "least", row.least), (2, "greatest", row.greatest)):
            looked_up = leaf(limit, f"{what} thickness, {called}, in PS 1", "table")
            found[f"standard/{number}/{column}"] = (what, looked_up)
    told = dict([(called.removeprefix("reading "), size) for called, size in sizes])
    told |= dict(list(found.values())[len(sizes) : len(sizes) + 2])  # the drawing shows the first row of the standard
    found[f"drawing/0/{name_of_line(scenes[0], scenes[0].title)}"] = ("mean", sheet.thickness)
    for number, scene in enumerate(scenes):
        for item, shown in enumerate(scene.items):
            names = [shown.text.rpartition(" ")[0]] if isinstance(shown, Leader) and shown.size else []
            names += [name for name, _ in shown.sizes] if isinstance(shown, Label) else []
            found |= {f"drawing/{number}/{item}.0": (name, told[name]) for name in names}
    return found


def _rows_of_standard(nominal: int) -> list[tuple[str, PlywoodLimits]]:
    """The limits of PS 1 for a sheet of this name, by how it is finished; none where it has none of that name."""
    surfaces = (("unsanded", "unsanded, touch-sanded, overlaid"), ("sanded", "sanded"))
    rows = [(called, plywood_limits(surface).get(nominal)) for surface, called in surfaces]
    return [(called, row) for called, row in rows if row]


def _standard(nominal: int, sold: str) -> list[Table]:
    """What PS 1 lets a sheet of this name be."""
    rows = []
    for called, row in _rows_of_standard(nominal):
        called += "" if row.confidence == "read" else " (worked out from its rule)"
        rows.append((called, write_measured(row.least, INCH_STYLE), write_measured(row.greatest, INCH_STYLE)))
    head, title = ("Surface", "Least", "Greatest"), f"What PS 1, a plywood standard, allows a sheet called {sold}"
    return [Table(title, head, rows, (1, 2), "standard/")] if rows else []


def _no_standard(nominal: int, sold: str) -> tuple[Finding, ...]:
    """A note where PS 1 has no sheet of this name."""
    if nominal in plywood_limits():
        return ()
    text = (
        f"PS 1, the plywood standard that the workbook knows, names sheets in inches and has none called {sold}. "
        "Ask the yard by which standard this one is made."
    )
    return (Finding("readings", "note", (), text),)


def _style(unit: str) -> Style:
    return INCH_STYLE if unit == "in" else MM_STYLE


def _limits(name: str, style: Style) -> tuple[str, str]:
    nominal, far = read_length(name), _FAR[style.unit]
    return write_measured(nominal - far, style), write_measured(nominal + far, style)


def _drawing(number: int, scene: Scene) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, f"drawing/{number}/"), scene.alt)
