"""The corner panel: one case, four corner joints side by side, and what changes in the cut list."""

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from types import SimpleNamespace

from shoplib.draw.corners import corner_row
from shoplib.draw.pen import draw
from shoplib.lists.cut_words import channel_ways, cut_words
from shoplib.lists.writing import Writing
from shoplib.live.joint_panel import joint_style
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import drawn, workings
from shoplib.measure import INCH, MM, Style
from shoplib.measure.noted import noting
from shoplib.model.cabinet import solve
from shoplib.model.project import Carcass, ImpossibleProject, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced
from shoplib.words.naming import plural
from shoplib.words.working import working

PICTURE = (560.0, 170.0)

CORNERS = ("butt", "rabbet in the sides", "tongue in a dado", "rabbet in the bottom")
"""The four corners, by the board that is cut where two could be."""

_STARTS = {
    "in": ("24 in", "20 in", "0.703 in", "1/4 in", "1/4 in"),
    "mm": ("600 mm", "500 mm", "17.5 mm", "6 mm", "6 mm"),
}


@dataclass(frozen=True, slots=True)
class CornerChoices:
    """What the corner panel asks for; lengths in ticks."""

    width: int
    height: int
    thickness: int
    depth: int
    tongue: int


def corner_project(corner: str, choices: CornerChoices, style: Style) -> Project:
    """The case with one kind of corner; top and bottom alike. It is 12 in or 300 mm deep."""
    joints = {
        "butt": JointChoice(),
        "tongue in a dado": JointChoice("tongue", choices.depth, tongue=choices.tongue),
    }
    sheet = Sheet("case sheet", "plywood", choices.thickness, (choices.thickness,) * 2, 96 * INCH, 48 * INCH)
    carcass = Carcass("case sheet", corner=joints.get(corner, JointChoice("rabbet", choices.depth)))
    if corner == "rabbet in the bottom":
        carcass = replace(carcass, top="over", bottom="under")
    deep = 12 * INCH if style.unit == "in" else 300 * MM
    size = Size("outside", choices.width, choices.height, deep)
    return Project("Parts case", style, {"case sheet": sheet}, size, carcass)


def corner_panel(unit: str = "in") -> Panel:
    """Four corners of one case, in inches or millimetres.

    >>> panel = corner_panel("mm")
    >>> for row in panel.outcome.tables[0].rows[:2]:
    ...     print(*row, sep=" | ")
    bottom and top, length | 565 mm | 577 mm | 577 mm | 600 mm
    sides, length | 500 mm | 500 mm | 500 mm | 477 mm
    """
    style = joint_style(unit)
    width, height, thickness, depth, tongue = _STARTS[unit]

    def length(label: str, value: str, inch: tuple[str, str, str], mm: tuple[str, str, str], **how) -> LengthControl:
        low, high, step = inch if unit == "in" else mm
        return LengthControl(label, value, low, high, style, step, **how)

    groups = [
        Group(
            "The corner",
            {
                "thickness": length(
                    "Measured thickness of the sheet", thickness,
                    ("0.45 in", "0.85 in", "0.001 in"), ("11 mm", "22 mm", "0.1 mm"), measured=True,
                ),
                "depth": length(
                    "Depth of the cut", depth, ("1/16 in", "5/8 in", "1/32 in"), ("1 mm", "16 mm", "0.5 mm")
                ),
            },
        ),
        Group(
            "The case",
            {
                "width": length("Width", width, ("8 in", "48 in", "1/4 in"), ("200 mm", "1200 mm", "5 mm")),
                "height": length("Height", height, ("8 in", "72 in", "1/4 in"), ("200 mm", "1800 mm", "5 mm")),
                "tongue": length(
                    "Thickness of the tongue", tongue, ("1/16 in", "1/2 in", "1/32 in"), ("2 mm", "12 mm", "0.5 mm")
                ),
            },
        ),
    ]

    def work(values: SimpleNamespace) -> Outcome:
        asked = {name: value for name, value in vars(values).items() if name != "opened"}
        return outcome_of(CornerChoices(**asked), style)

    return Panel("Four corners of one case", groups, work)


SIZES: tuple[tuple[str, Callable[[Cabinet], int]], ...] = (
    ("bottom and top, length", lambda case: case.by_name["bottom"].length),
    ("sides, length", lambda case: case.by_name["left side"].length),
    ("between the sides", lambda case: case.by_name["right side"].box.low[0] - case.by_name["left side"].box.high[0]),
    ("between bottom and top", lambda case: case.by_name["top"].box.low[2] - case.by_name["bottom"].box.high[2]),
)
"""The sizes that are compared: the boards, and the room inside, which stays."""


CUT_BOARDS = ("left side", "bottom")
"""The boards whose cuts are compared: one of two that are alike."""


def outcome_of(choices: CornerChoices, style: Style) -> Outcome:
    """Solve the case four times and set the four side by side; raises CannotBuild in the words of the controls."""
    projects = [corner_project(corner, choices, style) for corner in CORNERS]
    try:
        cases = [solve(project) for project in projects]
    except ImpossibleProject as reason:
        label = "Thickness of the tongue" if reason.key.endswith(".tongue") else "Depth of the cut"
        raise CannotBuild(f"{label}: {reason.sentence.removesuffix('.')}.") from None
    write = Writing(style)
    sizes = [(what, *(write.length(size(case)) for case in cases)) for what, size in SIZES]
    head = ("What", *CORNERS)
    cuts = [
        (corner, *(_cuts(case, name, write) for name in CUT_BOARDS))
        for corner, case in zip(CORNERS, cases, strict=True)
    ]
    scene = corner_row(list(zip(CORNERS, cases, strict=True)), style)

    def why(name: str) -> tuple[str, ...]:
        known = [solve(traced(project)) for project in projects]
        kind, number, place = name.split("/")
        if kind == "table":
            what, size = SIZES[int(number)]
            ticks = size(known[int(place) - 1])
            return working(ticks, what, style, write.length(ticks))
        if kind == "cuts":
            return workings(_cut_sizes(known[int(number)], CUT_BOARDS[int(place) - 1]), style)
        seen = corner_row(list(zip(CORNERS, known, strict=True)), style)
        return drawn(seen, place, style)

    told = _say(cases, write)
    return Outcome(
        [Drawing(scene.title, draw(scene, PICTURE, "drawing/0/"), scene.alt)],
        [
            Table("The cut list: sizes", head, sizes, (1, 2, 3, 4)),
            Table(
                "The cut list: cuts, width x depth", ("Corner", "In each side", "In bottom and in top"), cuts, (1, 2),
                "cuts/",
            ),
        ],
        message=told.message,
        why=why_said(told, lambda: _say([solve(traced(project)) for project in projects], write), style, why),
    )


def _say(cases: Sequence[Cabinet], write: Writing) -> Said:
    """The line above the picture."""
    longest, shortest = (pick(case.by_name["bottom"].length for case in cases) for pick in (max, min))
    with noting() as notes:
        line = f"Same outside, same inside; the bottom is {write.length(shortest)} to {write.length(longest)} long."
    return said(notes, (), line)


def _cut_sizes(case: Cabinet, name: str) -> list[tuple[str, int]]:
    """Width and depth of each kind of cut in a board, in ticks, each after what it is called."""
    board, found = case.by_name[name], {}
    for cut in board.cuts:
        deep, wide, _ = channel_ways(cut, board)
        for what, way in (("width", wide), ("depth", deep)):
            found.setdefault((f"{cut.kind}, {what}", int(cut.high[way] - cut.low[way])), cut.high[way] - cut.low[way])
    return [(called, size) for (called, _), size in found.items()]


def _cuts(case: Cabinet, name: str, write: Writing) -> str:
    """The cuts of a board by kind, width and depth, each with how many there are; where they lie is left out."""
    heads = Counter(phrase.partition(" for the ")[0] for phrase in cut_words(case.by_name[name], case, write))
    told = []
    for head, count in heads.items():
        kind, _, sizes = head.replace(" wide, ", " x ").removesuffix(" deep").partition(" ")
        told.append(f"{count} {plural(kind)} {sizes}")
    return "; ".join(told) or "none"
