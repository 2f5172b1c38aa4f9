"""What a person decides about a cabinet: the records that a project file fills in.

Lengths are ticks; the marks `Length` and `Room` say whether nothing is allowed.
"""

from dataclasses import dataclass, field
from typing import Literal

from shoplib.measure import INCH, MM, Style
from shoplib.measure.noted import unmarked
from shoplib.model.cutting import NO_PRICES, USUAL_CUTTING, Buying, Cutting
from shoplib.model.marks import Length, Load, Percent, Reading, Room, WholeTicks, natural
from shoplib.model.sheet import Sheet
from shoplib.tables.slides import Slide, slides


class ImpossibleProject(ValueError):
    """The project asks for something that no set of boards can be; the message is one sentence.

    `key` is the full name of the value to change, `sentence` what is wrong and what would be right.
    """

    def __init__(self, key: str, sentence: str) -> None:
        sentence = unmarked(sentence)
        super().__init__(f"{key}: {sentence}" if key else sentence)
        self.key, self.sentence = key, sentence


@dataclass(frozen=True, slots=True)
class JointChoice(WholeTicks):
    """How one board is let into another.

    `depth` None means half the thickness of the receiving board. `fit` is what the cut is wider
    than the thickest reading, `end_gap` what it is deeper than the board enters. `stop` keeps the
    cut that far from the front edge (0: it runs through); in a drawer box, from the top edge. `tongue` is
    the thickness of the tongue for kind "tongue" (None: half the entering board).

    "pocket screws": butted, and screwed from slanting pockets in the entering board. "finger": equal fingers, each
    `finger` wide (None: an odd count near three quarters of the thickness), as long as the mate is thick. "drawer
    lock", the drawer-front joint: the front's `lip` (None: a third of it) covers the side's end, its `tongue` (None:
    what a groove of a third leaves) stands in a dado of the side, `depth` deep (None: half the side).
    """

    kind: Literal["butt", "pocket screws", "rabbet", "dado", "tongue", "drawer lock", "finger"] = "butt"
    depth: Length | None = None
    fit: Room = 0
    end_gap: Room = 0
    stop: Room = 0
    tongue: Length | None = None
    lip: Length | None = None
    finger: Length | None = None


@dataclass(frozen=True, slots=True)
class Block(WholeTicks):
    """Something in the space to keep out of, placed from the left wall, the floor and the back wall."""

    name: str
    width: Length
    height: Length
    depth: Length
    left: Room = 0
    bottom: Room = 0
    back: Room = 0


@dataclass(frozen=True, slots=True)
class Space(WholeTicks):
    """The space to fill, each size read at two or more places: the smallest governs.

    `clearance_...` is what must stay free in all (both sides together). `floor_fall` is how far the
    floor is out of level over the width. `bring_in` is how the case gets to its place.
    """

    width: tuple[Reading, ...]
    height: tuple[Reading, ...]
    depth: tuple[Reading, ...]
    clearance_width: Room = 0
    clearance_height: Room = 0
    clearance_depth: Room = 0
    floor_fall: Room = 0
    bring_in: Literal["stood up from its back", "stood up from its side", "slid in"] = "slid in"
    room_height: Length | None = None
    door_width: Length | None = None
    door_height: Length | None = None
    blocks: tuple[Block, ...] = ()


@dataclass(frozen=True, slots=True)
class Size(WholeTicks):
    """Where the size of the case comes from.

    "outside": width, height and depth over all boards, closed. "space": all that the space leaves,
    clear of its blocks; nothing else is given then.
    "inside": between the sides, between bottom and top, and from the front edge to the back.
    """

    by: Literal["outside", "space", "inside"] = "outside"
    width: Length | None = None
    height: Length | None = None
    depth: Length | None = None


@dataclass(frozen=True, slots=True)
class Back(WholeTicks):
    """The back: let into a rabbet or groove by `depth`, applied over the rear, or none.

    `setback` is the wood left behind a groove. `end_gap` lets the back float in its groove.
    """

    kind: Literal["rabbet", "groove", "applied", "none"] = "none"
    sheet: str = ""
    depth: Length | None = None
    setback: Room = natural(INCH // 2, 10 * MM)
    fit: Room = 0
    end_gap: Room = 0


@dataclass(frozen=True, slots=True)
class Rail(WholeTicks):
    """A rail from side to side in front of the back: a hanging rail, or a low back to a shelf.

    It is in one piece, and dividers are notched round it. Butted, it is screwed through the sides.
    `at` is the height of its lower edge above the underside of the sides; None puts it under the top.
    """

    width: Length
    sheet: str = ""
    at: Room | None = None
    joint: JointChoice = JointChoice()


@dataclass(frozen=True, slots=True)
class Carcass(WholeTicks):
    """The case: sides, top, bottom, and how they and the dividers are joined."""

    sheet: str
    top: Literal["between", "over", "stretchers", "none"] = "between"
    bottom: Literal["between", "under", "none"] = "between"
    corner: JointChoice = JointChoice()
    divider: JointChoice = JointChoice()
    shelf: JointChoice = JointChoice()
    overhang_sides: Room = 0
    overhang_front: Room = 0
    stretcher_width: Length = natural(4 * INCH, 100 * MM)
    back: Back = Back()
    rails: tuple[Rail, ...] = ()


@dataclass(frozen=True, slots=True)
class Base(WholeTicks):
    """What the case stands on. `setback` is the toe room; `sheet` the stock of its boards."""

    kind: Literal["none", "toe space", "plinth", "feet", "casters"] = "none"
    height: Room = 0
    setback: Room = 0
    sheet: str = ""


@dataclass(frozen=True, slots=True)
class Drawers(WholeTicks):
    """The drawers of a bay, counted from the bottom up, and how their boxes are made.

    `heights`: "equal"; "stepped", each front lower than the one below by `difference`; "ratio", by
    `ratio` from the bottom up; "given", by `given` from the bottom up. What will not divide into
    whole steps goes to the bottom front. `like_bay` keeps the rows in line with another bay.
    `between` puts a strip that shows, or a whole shelf, between the drawers. `across` boxes stand
    side by side in each opening. `front_sheet` is the stock of box fronts, where it is not that of the box. `corner`
    joins front and back to the sides, unless `back_corner` says how the back is joined; the sides run on `behind_back`
    past it, where it then stands in dadoes.
    """

    count: int = 1
    heights: Literal["equal", "stepped", "ratio", "given"] = "equal"
    difference: Room = 0
    ratio: tuple[int, ...] = ()
    given: tuple[Length | Literal["rest"], ...] = ()
    like_bay: int | None = None
    slide: str = "side-mount ball-bearing"
    box_sheet: str = ""
    front_sheet: str = ""
    bottom_sheet: str = ""
    corner: JointChoice = JointChoice("rabbet")
    back_corner: JointChoice | None = None
    behind_back: Room = 0
    bottom: Literal["groove", "under back"] = "groove"
    bottom_up: Length = natural(INCH // 4, 6 * MM)
    bottom_depth: Length = natural(INCH // 4, 5 * MM)
    bottom_fit: Room = 0
    bottom_slack: Room = natural(INCH // 16, 2 * MM)
    room_above: Room = natural(INCH // 4, 6 * MM)
    between: Literal["nothing", "strip", "shelf"] = "nothing"
    strip_width: Length = natural(2 * INCH, 50 * MM)
    across: int = 1


@dataclass(frozen=True, slots=True)
class Shelves(WholeTicks):
    """Shelves of a bay: `fixed` ones evenly spaced or `at` given heights, and `loose` ones on pins.

    Heights are those of the underside above the underside of the sides. `depth` None reaches the back.
    `setbacks` and `depths`, where given, belong to the fixed shelves in turn.
    """

    fixed: int = 0
    at: tuple[Room, ...] = ()
    setbacks: tuple[Room, ...] = ()
    depths: tuple[Length, ...] = ()
    loose: int = 0
    loose_sheet: str = ""
    loose_gap: Room = natural(INCH // 8, 3 * MM)
    loose_setback: Room = 0
    loose_depth: Length | None = None
    pin_diameter: Length = natural(INCH // 4, 5 * MM)
    pin_depth: Length = natural(INCH // 4, 6 * MM)


@dataclass(frozen=True, slots=True)
class PullOut(WholeTicks):
    """An upright panel that runs out on one pair of slides, with pegs for what hangs on it.

    `on` is the wall that carries the slides; the pegs look to the other side. `room` is what hangs
    there, measured from the panel. `cleat_width` is that of the cleat behind its front: room for a screw in
    its middle (common practice, no source).
    """

    on: Literal["left", "right"] = "left"
    sheet: str = ""
    slide: str = "side-mount ball-bearing"
    room: Length = natural(4 * INCH, 100 * MM)
    room_above: Room = natural(INCH // 2, 12 * MM)
    room_below: Room = natural(INCH // 2, 12 * MM)
    peg_diameter: Length = natural(INCH // 2, 12 * MM)
    peg_length: Length = natural(3 * INCH, 75 * MM)
    peg_depth: Length = natural(3 * INCH // 8, 10 * MM)
    peg_rows: int = 3
    peg_columns: int = 3
    cleat_width: Length = natural(3 * INCH // 2, 40 * MM)


@dataclass(frozen=True, slots=True)
class Bay(WholeTicks):
    """The space between two uprights: `width` given, "equal" (shared alike) or "rest" (what is left)."""

    kind: Literal["drawers", "shelves", "pull-out", "open"] = "open"
    width: Length | Literal["equal", "rest"] = "equal"
    drawers: Drawers | None = None
    shelves: Shelves | None = None
    pull_out: PullOut | None = None


@dataclass(frozen=True, slots=True)
class Fronts(WholeTicks):
    """False fronts. Inset ones stand in the opening, overlay ones before the case.

    `gap` is between two fronts, `around` between an inset front and the case, `reveal` the strip of
    case left visible beside an overlay front.
    """

    kind: Literal["inset", "overlay", "none"] = "none"
    sheet: str = ""
    gap: Room = natural(INCH // 8, 3 * MM)
    around: Room = natural(INCH // 8, 3 * MM)
    reveal: Room = natural(INCH // 8, 3 * MM)


@dataclass(frozen=True, slots=True)
class Pulls(WholeTicks):
    """A pull on each front: `pitch` between its two holes (0: one hole), `projection` before the front."""

    pitch: Room = 0
    projection: Length = natural(INCH, 25 * MM)
    hole: Length = natural(3 * INCH // 16, 5 * MM)


@dataclass(frozen=True, slots=True)
class Edging(WholeTicks):
    """Edging of a kind of part: of the case or its shelves, or of the fronts.

    `edges` names the edges that get it; where none is named, the front edges of case and shelves, and
    all four of a front.
    """

    boards: Literal["case", "shelves", "fronts"]
    kind: Literal["band", "strip"]
    thickness: Length
    edges: tuple[Literal["front", "back", "left", "right", "top", "bottom"], ...] = ()


@dataclass(frozen=True, slots=True)
class InUse:
    """How the case is used: what the questions "will it hold, will it move" rest on.

    `put_in` is what lies on shelves and drawer bottoms (KCMA A161.1 tests with 15 lb/ft2, read). `stands`: free on the
    floor, fastened to the building, or hung on a wall by its rail. The shop where solid wood is cut has `made` percent
    of relative humidity, the room where the case stands from `driest` to `dampest` (common practice, no source).
    """

    put_in: Load = "15 lb/ft2"
    stands: Literal["free", "fastened", "hung"] = "free"
    made: Percent = 45
    driest: Percent = 35
    dampest: Percent = 65


@dataclass(frozen=True, slots=True)
class Opening(WholeTicks):
    """An opening as built, read at the front and at the back at the height of its slide."""

    front: Length
    back: Length


@dataclass(frozen=True, slots=True)
class PartSize(WholeTicks):
    """A finished part as measured; a size left out keeps its planned value."""

    length: Length | None = None
    width: Length | None = None


@dataclass(frozen=True, slots=True)
class Measured(WholeTicks):
    """What was measured on the case as built.

    `openings` by the name of the drawer, pull-out or strip that goes in ("bay 1 drawer 2"; boxes side
    by side share that of their row), `depths` by bay, from the front edge to what stands behind the
    boxes, `parts` by the name of the finished board. `openings_again` are openings as they were read once more, with
    the boxes in: fronts and strips are cut to these, and the boxes, which were cut before, are held against them.
    """

    openings: dict[str, Opening] = field(default_factory=dict)
    depths: dict[str, Length] = field(default_factory=dict)
    parts: dict[str, PartSize] = field(default_factory=dict)
    openings_again: dict[str, Opening] = field(default_factory=dict)

    @property
    def latest(self) -> dict[str, Opening]:
        """The openings as they were read last.

        >>> Measured({"bay 1 drawer 1": Opening(9, 9)}, openings_again={"bay 1 drawer 1": Opening(8, 9)}).latest
        {'bay 1 drawer 1': Opening(front=8, back=9)}
        """
        return self.openings | self.openings_again


NOTHING_MEASURED = Measured()


@dataclass(frozen=True, slots=True)
class Project:
    """A whole project. `rounding` is the step that free positions are rounded to (its own style's).

    `slides` are the rows that its drawers and pull-outs choose from; left out, the table's in the unit of the style.

    >>> from shoplib.measure import MM_STYLE
    >>> project = Project("case", MM_STYLE, {}, Size(), Carcass("ply"))
    >>> project.slides["side-hung wood runner"].play == MM
    True
    """

    name: str
    style: Style
    sheets: dict[str, Sheet]
    size: Size
    carcass: Carcass
    space: Space | None = None
    base: Base = Base()
    bays: tuple[Bay, ...] = (Bay(),)
    fronts: Fronts = Fronts()
    pulls: Pulls | None = None
    edging: tuple[Edging, ...] = ()
    measured: Measured = NOTHING_MEASURED
    in_use: InUse = InUse()
    cutting: Cutting = USUAL_CUTTING
    buying: Buying = NO_PRICES
    rounding: int | None = None
    slides: dict[str, Slide] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Take the rows of the table where none are given."""
        if not self.slides:
            object.__setattr__(self, "slides", slides(self.style.unit))

    @property
    def step(self) -> int:
        """The step that free positions are rounded to, in ticks."""
        return self.rounding or self.style.step
