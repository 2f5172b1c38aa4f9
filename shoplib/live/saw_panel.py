"""The saw panel: a line on a board, the kerf and the side it is sawn on; then equal pieces from one board."""

from types import SimpleNamespace

from shoplib.draw.asking import name_of_line
from shoplib.draw.pen import draw
from shoplib.draw.saw_line import saw_line, sawn_strip
from shoplib.draw.scene import Scene
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.live.measured_why import Sizes, dimensions, why_of
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.tape_panel import PICTURE
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, write_brief
from shoplib.measure.noted import noting
from shoplib.measure.traced import leaf
from shoplib.model.strip import cut_at, equal_pieces
from shoplib.words.amounts import setting

SIDES = {"on its waste side": "waste side", "on the line": "on the line", "on its keep side": "keep side"}
"""What the control offers, and what the sums call it."""

_START = {
    "in": {"line": ("12 in", "2 in", "48 in"), "board": ("48 in", "6 in", "96 in"),
           "kerf": ("1/8 in", "1/32 in", "1/4 in")},
    "mm": {"line": ("300 mm", "50 mm", "1200 mm"), "board": ("1200 mm", "150 mm", "2440 mm"),
           "kerf": ("3 mm", "0.8 mm", "6 mm")},
}


def saw_panel(unit: str = "in") -> Panel:
    """The panel of the line and the kerf, in inches or millimetres.

    >>> panel = saw_panel("in")
    >>> panel.enter("side", "on its keep side")
    >>> panel.message
    'The piece to keep comes out 11 7/8 in: 1/8 in short of the line.'
    """
    style = Style("in", INCH // 32) if unit == "in" else Style("mm", MM // 2)
    coarse = Style("in", INCH // 8) if unit == "in" else Style("mm", MM)
    start = _START[unit]
    groups = [
        Group("A line and a saw", {
            "line": LengthControl("Line at", *start["line"], coarse),
            "side": choose_one("Saw", SIDES),
        }),
        Group("Kerf and board", {
            "kerf": LengthControl("Kerf", *start["kerf"], style),
            "board": LengthControl("Board, length", *start["board"], coarse),
        }, "Saw into an offcut and measure the slot: that is the kerf of this blade."),
        Group("Equal pieces", {
            "count": choose_one("Pieces from the whole board", range(2, 9), 4 if unit == "in" else 3),
        }),
    ]
    return Panel("The line and the kerf", groups, lambda values: saw_outcome(values, unit))


def saw_outcome(values: SimpleNamespace, unit: str) -> Outcome:
    """What the panel shows: `line`, `kerf`, `board` in ticks, `side` and `count` as their controls offer them.

    Raises CannotBuild where the board is too short for the line and the kerf.
    """
    style, side = (INCH_STYLE if unit == "in" else MM_STYLE), SIDES[values.side]
    try:
        pieces = cut_at(values.board, values.line, values.kerf, side)
    except ValueError:
        raise CannotBuild(
            f"The board is {setting(values.board, style)} long: a line at {setting(values.line, style)} leaves "
            "no second piece.", "Take a longer board, or move the line to the left."
        ) from None
    scenes, told = [saw_line(values.line, pieces, side, style)], _say(values, style)
    rows = [
        ("piece to keep", setting(pieces.kept, style)), ("kerf, gone as dust", setting(pieces.kerf, style)),
        ("the rest", setting(pieces.rest, style)),
    ]
    sums = [" + ".join(text for _, text in rows) + f" = {setting(values.board, style)}, the board"]
    if len(values.opened) > 2:
        each, _ = equal_pieces(values.board, values.count, values.kerf)
        rows.append((f"each of {values.count} equal pieces", write_brief(each, style)))
        scenes.append(sawn_strip(values.board, (each,) * values.count, values.kerf, style))
        cuts = values.count - 1
        sums.append(
            f"{values.count} x {write_brief(each, style)} + {cuts} x {setting(values.kerf, style)} = "
            f"{setting(values.board, style)}, the board"
        )
    return Outcome(
        [_drawing(number, scene) for number, scene in enumerate(scenes)],
        [Table("What the board becomes", ("Part", "Length"), rows, (1,))],
        sums,
        message=told.message,
        why=why_said(told, lambda: _say(_named(values), style), style, why_of(lambda: _asked(values, scenes), style)),
        sums_asked=True,
    )


def _say(values: SimpleNamespace, style: Style) -> Said:
    """The line above the picture."""
    kept = cut_at(values.board, values.line, values.kerf, SIDES[values.side]).kept
    short = values.line - kept
    with noting() as notes:
        end = f"{setting(short, style)} short of the line" if short else "just as marked"
        message = f"The piece to keep comes out {setting(kept, style)}: {end}."
    return said(notes, (), message)


def _named(values: SimpleNamespace) -> SimpleNamespace:
    """The same values, whose lengths carry the names of their controls."""
    lengths = {name: leaf(getattr(values, name), name) for name in ("board", "line", "kerf")}
    return SimpleNamespace(**vars(values) | lengths)


def _asked(values: SimpleNamespace, scenes: list[Scene]) -> Sizes:
    """The same sums on numbers that carry their names."""
    values = _named(values)
    board, line, kerf = values.board, values.line, values.kerf
    pieces = cut_at(board, line, kerf, SIDES[values.side])
    named = [("piece to keep", pieces.kept), ("kerf", pieces.kerf), ("the rest", pieces.rest)]
    each = ("each piece", equal_pieces(board, values.count, kerf)[0])
    found = {f"table/{row}/1": size for row, size in enumerate([*named, each])}
    found |= dimensions(scenes[0], 0, [*named, ("marked", line)])
    whole = ("board", board)
    for number, told in enumerate([(*named, whole), (each, ("kerf", kerf), whole)]):
        found |= {f"sum/{number}/{k}": size for k, size in enumerate(told)}
    if len(scenes) > 1:
        found |= dimensions(scenes[1], 1, [each] * values.count)
        found[f"drawing/1/{name_of_line(scenes[1], scenes[1].note)}"] = ("kerf", kerf)
    return found


def _drawing(number: int, scene: Scene) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, f"drawing/{number}/"), scene.alt)
