"""A drawer box put together by the joint of a page, as the model has it: four boards, and a bottom in their grooves."""

from collections.abc import Callable

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.lessons.box_boards import bottom_asked
from shoplib.lessons.drawer_givens import bottom_groove, bottom_slack, box_outside, box_stock
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked
from shoplib.lessons.small_box import GROUP, small_box
from shoplib.measure import INCH
from shoplib.model.project import JointChoice
from shoplib.model.solved import Cabinet

SIDES, FRONT = "side", "front"

LEFT_AND_RIGHT = f"{GROUP} left box side", f"{GROUP} right box side"
FRONT_ALONE, BACK_ALONE = (f"{GROUP} box front",), (f"{GROUP} box back",)
FRONT_AND_BACK = *FRONT_ALONE, *BACK_ALONE

SEEN = View(FROM_ABOVE, f"{GROUP} box bottom")
"""Cut through the bottom, seen from above."""

BOTTOM_WIDTH = bottom_asked("width", lambda g: g["B"], "the sides")
BOTTOM_DEPTH = bottom_asked("depth", lambda g: g["L"], "front and back")


def box_givens(draw: Draw) -> list[Given]:
    """`B` and `L`, the box outside; `s`, its stock; `q` and `e`, the grooves of the bottom and its slack."""
    return [
        box_outside(draw),
        draw.pick("L", "box, outside depth", inch=("14 in", "16 in", "18 in"), mm=("350 mm", "400 mm", "450 mm")),
        box_stock(draw), bottom_groove(draw), bottom_slack(draw), Given("metric", "", int(draw.unit == "mm"), ""),
    ]


def joined_box(
    givens: Givens, corner: JointChoice, back_corner: JointChoice | None = None, box_front: int = 0,
) -> Cabinet:
    """The box of these givens with this corner, on slides as long as it is; the rest as in `small_box`."""
    opening = givens["B"] + INCH
    return small_box(
        opening, opening, unit="mm" if givens["metric"] else "in", side=INCH // 2, stock=givens["s"], corner=corner,
        groove=givens["q"], slack=givens["e"], depth=givens["L"] + INCH, back_corner=back_corner, box_front=box_front,
    )


def sides_asked(slips: tuple[Misconception, ...], working: Callable[[Givens, Say], tuple[str, ...]]) -> Asked:
    """The length of the sides."""
    return Asked(SIDES, "Box sides", "length", LEFT_AND_RIGHT, "y", slips, working)


def fronts_asked(slips: tuple[Misconception, ...], working: Callable[[Givens, Say], tuple[str, ...]]) -> Asked:
    """The length of front and back."""
    return Asked(FRONT, "Box front and back", "length", FRONT_AND_BACK, "x", slips, working)
