"""The small case that the joint panels show: a few choices made into a whole project, so that it can be solved."""

from dataclasses import dataclass, replace

from shoplib.measure import INCH, MM, Style, mean, read_length
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

JOINTS = ("butt", "rabbet", "dado", "stopped dado", "groove", "tongue in a narrower dado")
"""The kinds of joint of the panel, from the plainest to the one with most sums."""


@dataclass(frozen=True, slots=True)
class JointChoices:
    """What the joint panel asks for; lengths in ticks.

    `readings` are those of the sheet that enters, `receives` the thickness of the side where it is another.
    """

    kind: str
    readings: tuple[int, ...]
    depth: int
    receives: int = 0
    fit: int = 0
    end_gap: int = 0
    tongue: int = 0
    stop: int = 0


def shelf_height(unit: str) -> int:
    """How far up the sides the panel's shelf stands, to its underside.

    >>> from shoplib.measure import INCH
    >>> shelf_height("in") == 9 * INCH
    True
    """
    return read_length("9 in" if unit == "in" else "230 mm")


def joint_project(choices: JointChoices, style: Style) -> Project:
    """A case of 24 x 20 x 12 in (600 x 500 x 300 mm) with one kind of joint in it, all others butted."""
    inch = style.unit == "in"
    size = Size("outside", *((24 * INCH, 20 * INCH, 12 * INCH) if inch else (600 * MM, 500 * MM, 300 * MM)))
    clear = {"fit": choices.fit, "end_gap": choices.end_gap}
    corner, shelf, back, bay = JointChoice(), JointChoice(), Back(), Bay()
    sheets = {"case sheet": _sheet("case sheet", choices.readings)}
    match choices.kind:
        case "rabbet":
            corner = JointChoice("rabbet", choices.depth, **clear)
        case "tongue in a narrower dado":
            corner = JointChoice("tongue", choices.depth, tongue=choices.tongue, **clear)
        case "dado" | "stopped dado":
            stop = choices.stop if choices.kind == "stopped dado" else 0
            shelf = JointChoice("dado", choices.depth, stop=stop, **clear)
            bay = Bay("shelves", shelves=Shelves(at=(shelf_height(style.unit),)))
        case "groove":
            sheets = {
                "case sheet": _sheet("case sheet", (choices.receives,)),
                "back sheet": _sheet("back sheet", choices.readings),
            }
            setback = INCH // 2 if inch else 12 * MM
            back = Back("groove", "back sheet", choices.depth, setback, **clear)
    carcass = Carcass("case sheet", corner=corner, shelf=shelf, back=back)
    return Project("Parts case", style, sheets, size, carcass, bays=(bay,))


def enters_in(kind: str) -> str:
    """The board that the panel shows entering the left side."""
    return {"dado": "shelf", "stopped dado": "shelf", "groove": "back"}.get(kind, "bottom")


def with_one_shelf(cabinet: Cabinet) -> Cabinet:
    """The cabinet with its only shelf called "shelf", and not by the bay that it lies in."""

    def name(old: str) -> str:
        return "shelf" if old == "bay 1 shelf 1" else old

    boards = tuple(
        replace(
            board, name=name(board.name),
            cuts=tuple(replace(cut, for_board=name(cut.for_board)) for cut in board.cuts),
        )
        for board in cabinet.boards
    )
    joints = tuple(replace(joint, enters=name(joint.enters)) for joint in cabinet.joints)
    return replace(cabinet, boards=boards, joints=joints)


def _sheet(name: str, readings: tuple[int, ...]) -> Sheet:
    """Stock with its readings; one alone stands for the mean of several, so no doubt is raised about it.

    The panel asks what it measures, not what it was sold as, and no name is made up: it goes by its mean.
    """
    many = readings if len(readings) > 1 else readings * 2
    return Sheet(name, "plywood", mean(many), many, 96 * INCH, 48 * INCH)
