"""The tape panel: a pointer on a tape, its reading in words; then the halves of it, and the other unit."""

from types import SimpleNamespace

from shoplib.draw.asking import name_of_line
from shoplib.draw.pen import draw
from shoplib.draw.scene import Leader, Scene
from shoplib.draw.tape import tape
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.measured_why import Sizes, dimensions, why_of
from shoplib.live.panel import Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.measure import INCH_STYLE, MM_STYLE, Style, read_length, share, to_step, write_brief, write_length
from shoplib.measure.noted import noting
from shoplib.measure.tape import tape_steps
from shoplib.measure.traced import leaf
from shoplib.words.tape import tape_words

PICTURE = (420.0, 280.0)
"""Width and height that a drawing is fitted to, in the picture's own units."""

MARKS = {"in": ("1/8 in", "1/16 in", "1/32 in", "1/64 in"), "mm": ("1 mm", "0.5 mm")}
"""The finest marks that a tape may have."""

_USUAL = {"in": "1/16 in", "mm": "1 mm"}
"""What most tapes are divided to (common practice, no source)."""

_START = {"in": ("2 5/8 in", "0 in", "24 in"), "mm": ("67 mm", "0 mm", "600 mm")}

_TIMES = {"once": 1, "twice": 2, "three times": 3}


def tape_panel(unit: str = "in") -> Panel:
    """The panel of the tape, in inches or millimetres.

    >>> panel = tape_panel("in")
    >>> panel.message
    '2 inches, then the half, then an eighth: 2 5/8 in.'
    >>> panel.unfold()
    >>> panel.outcome.tables[0].rows[1]
    ('half', '1 5/16 in', '33.34 mm')
    """
    pointer = LengthControl("Pointer", *_START[unit], Style.of(unit, _USUAL[unit]))
    marks = choose_one("Finest marks", MARKS[unit], _USUAL[unit])
    marks.observe(lambda change: pointer.show_in(Style.of(unit, change["new"])), names="value")
    words = "A half that falls between two marks is told to the nearest one, with what it is off."
    groups = [
        Group("A tape and a pointer", {"pointer": pointer, "marks": marks}),
        Group("Halves, and the other unit", {"halves": choose_one("Halve it", _TIMES)}, words),
    ]
    return Panel("Reading a tape", groups, lambda values: tape_outcome(values, unit))


def tape_outcome(values: SimpleNamespace, unit: str) -> Outcome:
    """What the panel shows: `pointer` in ticks, `marks` and `halves` as their controls offer them."""
    style, whole = Style.of(unit, values.marks), [INCH_STYLE, MM_STYLE] if unit == "in" else [MM_STYLE, INCH_STYLE]
    scenes, told = [tape(values.pointer, style, "pointer")], _say(values.pointer, style)
    tables: list[Table] = []
    if len(values.opened) > 1:
        rows = halved(values.pointer, _TIMES[values.halves])
        scenes.append(tape(rows[-1][1], style, rows[-1][0]))
        tables.append(_table(rows, unit))
    return Outcome(
        [_drawing(number, scene) for number, scene in enumerate(scenes)],
        tables,
        message=told.message,
        why=why_said(
            told, lambda: _say(leaf(values.pointer, "pointer"), style), style,
            lambda name: why_of(lambda: _asked(values, scenes, style), whole[_in_other_unit(name)])(name),
        ),
    )


def _say(pointer: int, style: Style) -> Said:
    """The line above the picture."""
    with noting() as notes:
        line = tape_words(pointer, style)
    return said(notes, (), line)


def _in_other_unit(name: str) -> bool:
    """Whether the size of that name stands in the column of the other unit."""
    return name.startswith("table/") and name.endswith("/2")


def halved(ticks: int, times: int) -> list[tuple[str, int]]:
    """A length, its half, the half of that, and so on, each with its name.

    >>> halved(40, 2)
    [('reading', 40), ('half', 20), ('quarter', 10)]
    """
    rows = [("reading", ticks)]
    for name in ("half", "quarter", "eighth part")[:times]:
        rows.append((name, share(rows[-1][1], 2, 1)[0]))
    return rows


def _asked(values: SimpleNamespace, scenes: list[Scene], style: Style) -> Sizes:
    rows = halved(leaf(values.pointer, "pointer"), _TIMES[values.halves])
    found = {f"table/{number}/{column}": row for number, row in enumerate(rows) for column in (1, 2)}
    drawn = [rows[0], rows[-1]]
    for number, scene in enumerate(scenes):
        what, size = drawn[number]
        mark = (what if size % style.step == 0 else f"{what}, at the nearest mark", to_step(size, style.step))
        figure, steps = _steps(int(mark[1]), style)
        found |= dimensions(scene, number, steps)
        found[f"drawing/{number}/{name_of_line(scene, scene.title)}"] = mark
        leaders = [item for item, shown in enumerate(scene.items) if isinstance(shown, Leader) and shown.size]
        found |= {f"drawing/{number}/{item}.0": told for item, told in zip(leaders, (mark, figure), strict=False)}
    return found


def _steps(ticks: int, style: Style) -> tuple[tuple[str, int], list[tuple[str, int]]]:
    """The figure passed, and the steps after it, each as what it is of the way from one figure to the next."""
    first, *finer = tape_steps(ticks, style)
    figure = leaf(first.part, "one inch" if style.unit == "in" else "one figure")
    steps = [("this step", step.count * share(figure, first.part // step.part, 1)[0]) for step in finer]
    return ("the figure passed", first.count * figure), steps


def _table(rows: list[tuple[str, int]], unit: str) -> Table:
    """Both units, the learner's first: shop fractions to 1/64 in, and hundredths of a millimetre."""
    columns = [("In inches", _inches), ("In millimetres", _millimetres)]
    (first, own), (second, other) = columns if unit == "in" else columns[::-1]
    cells = [(name, own(ticks), other(ticks)) for name, ticks in rows]
    return Table("Halves, in both units", ("Length", first, second), cells, (1, 2))


def _inches(ticks: int) -> str:
    return write_brief(ticks, INCH_STYLE)


def _millimetres(ticks: int) -> str:
    """To a hundredth: 25.4 mm to the inch, exactly (NIST SP 811, appendix B.8)."""
    exact = to_step(ticks, read_length("0.01 mm"))
    return write_length(exact, MM_STYLE) if exact % MM_STYLE.step == 0 else write_brief(exact, MM_STYLE, decimal=True)


def _drawing(number: int, scene: Scene) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, f"drawing/{number}/"), scene.alt)

