"""What the page on what holds shows beside its exercises: worked sums and the panels."""

from dataclasses import replace

from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.hold_shown import (
    DAMPEST,
    DRIEST,
    MADE,
    PANEL,
    WOOD,
    parts_shelf,
    sag_why,
    shelf_why,
    tool_chest,
)
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.moving_panel import moving_panel
from shoplib.live.panel import Panel
from shoplib.live.sag_panel import LOADS, sag_panel, stuff
from shoplib.live.screw_panel import screw_panel
from shoplib.live.tip_panel import tip_panel
from shoplib.measure import read_length, share, write_brief
from shoplib.measure.quantity import read_quantity, write_force, write_load
from shoplib.model.sag import Sag, between, bottom_sag, shop_sag
from shoplib.model.season import moisture
from shoplib.model.solid_room import year_round
from shoplib.model.tipping import moment_text
from shoplib.tables.wood import woods

BOTTOM = {"in": ("15 in", "18 in", "0.204 in", "0.472 in"), "mm": ("375 mm", "450 mm", "5.9 mm", "11.9 mm")}
"""A drawer bottom: width and depth between its grooves, a thin sheet and a thicker one as measured."""


def shelf_panel() -> Panel:
    """The first panel of the lesson, in the learner's unit."""
    return in_type(sag_panel(unit_in_use()))


def tipping_panel() -> Panel:
    """The second panel of the lesson, in the learner's unit."""
    return in_type(tip_panel(unit_in_use()))


def screws_panel() -> Panel:
    """The third panel of the lesson, in the learner's unit."""
    return in_type(screw_panel(unit_in_use()))


def wood_panel() -> Panel:
    """The fourth panel of the lesson, in the learner's unit."""
    return in_type(moving_panel(unit_in_use()))


def shelf_worked(unit: str) -> Worked:
    """From the boxes on a shelf to how far it sags, and how far it may."""
    say, shelf = Say(unit), parts_shelf(unit)
    sag, material = shelf.sag(unit), stuff(shelf.kind)
    span, boxes = say.length(shelf.span), write_force(shelf.boxes, unit)
    low, high = (f"{e:.0f}" for e in material.stiffness)
    lines = [
        ("load", f"{boxes} on {span} x {say.length(shelf.depth)}", write_load(shelf.load, unit)),
        ("with its own weight", "", write_force(sag.weight, unit)),
        ("sag at once, at most", f"5 W L^3 / (384 E I) and shear, E {low} MPa", _told(sag.first_most, say)),
        ("sag in years", f"x 1.5, E {low} to {high} MPa", between(sag.least, sag.most, say.style)),
        ("allowed, KCMA A161.1", f"{span} / 192", _told(sag.allowed, say)),
        ("the eye does not see, shop rule", f"{span} / 600", _told(shop_sag(sag.span), say)),
    ]
    title = f"A shelf of plywood, {say.exact(shelf.thick)} thick, full of boxes of parts"
    return Worked(title, lines, shelf_why(shelf, unit))


def mends_worked(unit: str) -> Worked:
    """The same shelf, mended in each of the usual ways: what it comes to sag at most."""
    say, shelf = Say(unit), parts_shelf(unit)
    half = share(shelf.span, 2, 1)[0]
    ways = {
        "as it is": shelf,
        "a divider in the middle": replace(shelf, span=half, boxes=shelf.boxes / 2),
        "two layers glued into one": replace(shelf, thick=2 * shelf.thick),
        "half as deep, half of the boxes": replace(shelf, depth=share(shelf.depth, 2, 1)[0], boxes=shelf.boxes / 2),
        "of MDF": replace(shelf, kind="MDF"),
    }
    sags = {name: way.sag(unit) for name, way in ways.items()}
    lines = [
        (name, f"{say.length(ways[name].span)} long, {say.exact(ways[name].thick)} thick, allowed "
               f"{_told(sag.allowed, say)}", f"{_told(sag.most, say)}, {_verdict(sag)}")
        for name, sag in sags.items()
    ]
    why = dict.fromkeys(line for way in ways.values() for line in shelf_why(way, unit))
    return Worked("The parts shelf, mended: at most, in years", lines, tuple(why))


def bottoms_worked(unit: str) -> Worked:
    """A drawer bottom of two sheets under the load of the card."""
    say, lines, why = Say(unit), [], []
    wide, deep, *sheets = (read_length(text) for text in BOTTOM[unit])
    load = read_quantity(LOADS[unit][1])
    for thick in sheets:
        sag = bottom_sag(wide, deep, thick, stuff("plywood"), load, say.style)
        lines.append((f"{say.exact(thick)} plywood", f"strip {say.length(sag.span)} long, allowed "
                      f"{_told(sag.allowed, say)}", f"{between(sag.least, sag.most, say.style)}, {_verdict(sag)}"))
        why += sag_why(sag, say.style, [("width", wide), ("depth", deep)])
        why.append(f"thickness {say.exact(thick)} = as measured")
    title = f"A drawer bottom {say.length(wide)} x {say.length(deep)}, {write_load(load, unit)}"
    return Worked(title, lines, tuple(dict.fromkeys(why)))


def tipping_worked(unit: str) -> Worked:
    """The moments of the workshop's chest with one drawer out, and with more of them."""
    one = tool_chest(unit, 1)
    lines = [_moment(line) for line in one.found.working]
    lines += [("all that holds", "", moment_text(one.found.holding, unit)),
              ("all that tips", "", moment_text(one.found.tipping, unit))]
    for opened in range(1, 5):
        found = tool_chest(unit, opened).found
        comes_to = f"{found.times:.2f}, {'goes over' if found.tips else 'stands'}"
        lines.append((f"{opened} of 4 open", "what holds / what tips", comes_to))
    return Worked("Moments of a chest about its front edge, drawers filled, the highest one out", lines,
                  one.found.working)


def movement_worked(unit: str) -> Worked:
    """A solid panel in its frame through the year: how much it grows and shrinks, and the room that it needs."""
    say, width = Say(unit), read_length(PANEL[unit])
    lines = [
        (f"moisture content at {humid} % humidity", when, f"{moisture(humid):.2f} %")
        for humid, when in ((MADE, "as made"), (DAMPEST, "dampest"), (DRIEST, "driest"))
    ]
    why = []
    for cut in ("flatsawn", "quartersawn"):
        coefficient = woods()[WOOD].coefficient(cut)
        moves = year_round(width, coefficient, MADE, DRIEST, DAMPEST)
        wide = f"{say.length(width)} x {float(coefficient):.5f} x"
        rows = [
            (f"{cut}: grows, dampest", f"{wide} {moisture(DAMPEST) - moisture(MADE):.2f}", _told(moves.grows, say)),
            (f"{cut}: shrinks, driest", f"{wide} {moisture(MADE) - moisture(DRIEST):.2f}", _told(moves.shrinks, say)),
            (f"{cut}: least room in each groove", "half of what it grows", _told(share(moves.grows, 2, 1)[0], say)),
        ]
        lines += rows
        why += [f"{what} {comes_to} = {how}" for what, how, comes_to in rows]
        why.append(f"{cut} {WOOD}: {float(coefficient):.5f} of its width for each 1 % of moisture (Wood Handbook)")
    why += [f"{moisture(humid):.2f} % of moisture at {humid} % humidity" for humid in (MADE, DRIEST, DAMPEST)]
    return Worked(f"A solid panel of {WOOD}, {say.length(width)} wide, made at {MADE} % humidity", lines, tuple(why))


def _told(ticks: int, say: Say) -> str:
    return write_brief(ticks, say.style, decimal=True)


def _verdict(sag: Sag) -> str:
    return "too much" if sag.too_much else "within"


def _moment(line: str) -> tuple[str, str, str]:
    what, _, rest = line.partition(": ")
    how, _, comes = rest.rpartition(" = ")
    return what, how, comes
