"""Drawer boxes cut by a wrong number and put together dry: the picture, and what the dry-fit says."""

from dataclasses import replace

from shoplib.building.in_opening import box_of
from shoplib.draw.drawer_plan import box_too_wide
from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.leaning import leaning_opening
from shoplib.draw.look import FROM_ABOVE
from shoplib.draw.scene import Scene
from shoplib.lessons.box_boards import BOTTOM_WIDTH, FRONT
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.drawer_shown import drawer, out_of_true, solved
from shoplib.lessons.figure import Figure, dry_fit_says
from shoplib.lessons.set_exercise import Asked
from shoplib.lessons.together import put_together
from shoplib.live.drawer_panel import drawer_style
from shoplib.live.drawer_project import FRONTS, DrawerChoices, starting_drawer
from shoplib.live.drawer_says import LOWER
from shoplib.measure import read_length
from shoplib.measure.traced import leaf
from shoplib.model.drawer_fit import offcut_over
from shoplib.model.solved import Cabinet

PICTURE = (440.0, 280.0)

WIDER = {"in": "3/32 in", "mm": "2.5 mm"}
"""By how much the other end of the opening is wider, where a box was made to that end."""

SHALLOW = {"in": "1/8 in", "mm": "3 mm"}
"""Corner rabbets much less than half of the side."""


def by_the_wide_end() -> Figure:
    """A box made to the wider reading of its opening."""
    unit = unit_in_use()
    choices = starting_drawer(unit)
    over = leaf(read_length(WIDER[unit]), "what the other end is wider", "measured")
    return _too_wide(replace(choices, back=choices.front + over), over, "A box made to the wide end")


def by_one_offcut() -> Figure:
    """A box front marked with one offcut, though the rabbets are less than half of the side."""
    unit = unit_in_use()
    choices = replace(starting_drawer(unit), rabbet=read_length(SHALLOW[unit]))
    case = solved(choices, unit)
    over = offcut_over(case.sheets["box sheet"].thickness, case.project.bays[0].drawers.corner.depth)
    return _too_wide(choices, over, "A box marked with one offcut")


def _too_wide(choices: DrawerChoices, over: int, title: str) -> Figure:
    """A box whose front and back were cut `over` too long, in words of the dry-fit."""
    unit = unit_in_use()
    case = solved(choices, unit)
    whole = put_together(case, {FRONT: FRONT.right(case) + over})
    scene = replace(box_too_wide(case, drawer_style(unit), LOWER, case.slides[choices.slide], over), title=title)
    said = [told for told in whole.says if told.startswith(("the box is", "its"))]
    return _drawn(scene, [dry_fit_says(f"{told}.") for told in said])


def without_grooves() -> Figure:
    """A bottom as wide as the room between the sides."""
    case = drawer(unit_in_use(), fronts=FRONTS[2])
    side = case.by_name[f"{LOWER} left box side"].thickness
    return _figure(case, BOTTOM_WIDTH, box_of(case, LOWER).size[0] - 2 * side)


def leaning() -> Figure:
    """An opening that is as wide at the back as at the front, and yet out of square."""
    unit = unit_in_use()
    return _drawn(leaning_opening(*out_of_true(unit), drawer_style(unit)), [])


def _figure(case: Cabinet, size: Asked, ticks: int) -> Figure:
    whole = put_together(case, {size: ticks})
    scene = dry_fit(whole.built, case, whole.misfits, View(FROM_ABOVE, f"{LOWER} box bottom"))
    return _drawn(scene, [dry_fit_says(f"{told}.") for told in whole.says])


def _drawn(scene: Scene, words: list[str]) -> Figure:
    return Figure.of(scene, PICTURE, words, drawer_style(unit_in_use()))
