"""The shelf, the drawer bottom and the chest of the page on what holds, solved and drawn."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

import pint

from shoplib.draw.letters import drawn_with
from shoplib.draw.sag_chart import sag_chart
from shoplib.draw.sag_view import sag_chart_alt, sag_view, widest_within
from shoplib.draw.scene import Scene
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.figure import Figure
from shoplib.lessons.large_type import letters_in_use
from shoplib.lessons.say import Say
from shoplib.live.sag_panel import over_spans, stuff
from shoplib.live.tip_panel import Tipped, chest, fillings, scene_of, tipped
from shoplib.measure import Style, read_length, to_quantity, write_brief
from shoplib.measure.quantity import read_quantity
from shoplib.model.sag import Sag, between, board_sag, shop_sag

PICTURE = (480.0, 320.0)

SHELF = {"in": ("36 in", "12 in", "0.703 in", "75 lb"), "mm": ("900 mm", "300 mm", "17.5 mm", "32 kg")}
"""The shelf for parts: span, depth, measured thickness, and what its boxes weigh together (of the example)."""


PANEL = {"in": "14 in", "mm": "350 mm"}
"""The width of a solid panel in its frame, across the grain."""

WOOD = "white oak, commercial"
MADE, DRIEST, DAMPEST = 45, 35, 60
"""Humidities in percent: of the shop on the day, and of the room where the panel will live."""


@dataclass(frozen=True, slots=True)
class PartsShelf:
    """A shelf full of boxes of parts: lengths in ticks, the weight of the boxes as a force."""

    span: int
    depth: int
    thick: int
    boxes: pint.Quantity
    kind: str = "plywood"

    @property
    def load(self) -> pint.Quantity:
        """The boxes on their area."""
        return self.boxes / (to_quantity(self.span, "inch") * to_quantity(self.depth, "inch"))

    def sag(self, unit: str) -> Sag:
        """How far it sags between supports that let it turn, the safe side."""
        return board_sag(self.span, self.depth, self.thick, stuff(self.kind), self.load, Say(unit).style)


def parts_shelf(unit: str) -> PartsShelf:
    """The shelf of the worked example.

    >>> from shoplib.measure.quantity import write_load
    >>> write_load(parts_shelf("in").load, "in")
    '25 lb/ft2'
    """
    *lengths, boxes = SHELF[unit]
    return PartsShelf(*(read_length(text) for text in lengths), read_quantity(boxes, "force"))


def tool_chest(unit: str, opened: int) -> Tipped:
    """The chest of the workshop, its drawers filled as ASTM F2057 fills them, so many of them open."""
    return tipped(chest(unit), opened, fillings(unit)[1], Say(unit).style)


def sag_why(sag: Sag, style: Style, sizes: Iterable[tuple[str, int]] = ()) -> tuple[str, ...]:
    """Why each length of a sag is so: `sizes` as they were chosen or measured, the sums, then the lines of the beam."""
    span, first, limit, shop = (write_brief(ticks, style, decimal=True) for ticks in (
        sag.span, sag.first_most, sag.allowed, shop_sag(sag.span)))
    return (
        f"sag at once, at most {first} = the sum of the beam with the least stiff figure, below",
        f"sag in years {between(sag.least, sag.most, style)} = 1.5 x the sag at once, stiffest to least stiff",
        f"allowed {limit} = 1/16 in for each foot of the span {span}, and 1/4 in at most",
        f"the eye does not see {shop} = 0.02 in for each foot of the span (shop rule, no source)",
        *(f"{called} {write_brief(ticks, style)} = chosen, or as measured" for called, ticks in sizes),
        *(line[:1].lower() + line[1:] for line in sag.working),
    )


def shelf_why(shelf: PartsShelf, unit: str) -> tuple[str, ...]:
    """The same for a shelf, with its own sizes."""
    style, sag = Say(unit).style, shelf.sag(unit)
    thick = f"thickness {write_brief(shelf.thick, style, decimal=True)} = as measured, of all its layers"
    return (*sag_why(sag, style, [("span", shelf.span), ("depth", shelf.depth)]), thick)


def sagging() -> Figure:
    """The shelf of the worked example under its boxes."""
    unit = unit_in_use()
    shelf = parts_shelf(unit)
    return _drawn(lambda: sag_view(shelf.sag(unit), shelf.thick, "simply supported", Say(unit).style),
                  "The parts shelf under its boxes", shelf_why(shelf, unit))


def of_mdf() -> Figure:
    """The same shelf made of MDF, which is about half as stiff as plywood."""
    unit = unit_in_use()
    shelf = replace(parts_shelf(unit), kind="MDF")
    return _drawn(lambda: sag_view(shelf.sag(unit), shelf.thick, "simply supported", Say(unit).style),
                  "The same shelf of MDF", shelf_why(shelf, unit))


def over_the_span() -> Figure:
    """The sag of that shelf over its span, as a chart."""
    unit = unit_in_use()
    shelf, style = parts_shelf(unit), Say(unit).style
    over = over_spans(shelf.depth, shelf.thick, stuff(shelf.kind), shelf.load, "simply supported", style)
    within, ends = (tuple(write_brief(span, style) for span in spans) for spans in (
        [widest_within(over)], (over.spans[0], over.spans[-1])))
    why = (
        f"span {within[0]} = the widest on the chart at which the most stays within what is allowed",
        f"{ends[0]} to {ends[1]} = the spans of the chart; the load on each foot or metre is the same",
        *shelf_why(shelf, unit),
    )
    with drawn_with(letters_in_use()):
        return Figure(sag_chart(over, "Sag over span, boxes of parts", style), sag_chart_alt(over, style), [], why)


def one_out() -> Figure:
    """The chest with its highest drawer out."""
    return _tipping(1, "One drawer out")


def all_out() -> Figure:
    """The chest with all drawers out at once."""
    return _tipping(4, "All drawers out at once")


def _tipping(opened: int, title: str) -> Figure:
    unit = unit_in_use()
    one = tool_chest(unit, opened)
    style = Say(unit).style
    *reach, depth = (write_brief(size, style) for size in scene_of(one, style).items[-1].sizes)
    why = (f"depth {depth} = the case, from the tipping edge to its rear, chosen",
           *(f"reach {far} = travel of the slide, and what the drawer has before the edge" for far in reach))
    return _drawn(lambda: scene_of(one, style), title, (*why, *one.found.working))


def _drawn(make: Callable[[], Scene], title: str, why: tuple[str, ...]) -> Figure:
    with drawn_with(letters_in_use()):
        scene = replace(make(), title=title)
    figure = Figure.of(scene, PICTURE, [], Say(unit_in_use()).style)
    return replace(figure, why=(*figure.why, *why))
