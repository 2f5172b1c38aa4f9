"""The dry-fit of a case whose bottom was cut to a wrong number: where it gapes or clashes, drawn large.

The wrong numbers are the slips of the exercise about the bottom; the words come from the dry-fit.
"""

from dataclasses import dataclass, replace

from shoplib.checks import check
from shoplib.draw.chains import bare, unit_note
from shoplib.draw.look import FRONT, cut_through
from shoplib.draw.scene import Chain, Item, Label, Leader, Rect, Scene, Shape
from shoplib.draw.spilled import largest_rooms
from shoplib.lessons.lesson_02 import BOTTOM
from shoplib.measure import MM, write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import true_amount

SEEN = 75 * MM
"""How much of the case is drawn at each end, about 3 in."""

_BREAK = 9 * MM


@dataclass(frozen=True)
class DryFit:
    """What came of it: the bottom's `length`, `by` how much it is over (minus: under), and what the check said."""

    cabinet: Cabinet
    slip: str
    length: int
    by: int
    said: tuple[Finding, ...]


def dry_fit(cabinet: Cabinet, slip: str, nominal: int) -> DryFit:
    """Cut the bottom of a plain case by a slip of the exercise, push it home on the left, and check.

    `nominal` is the thickness by which the case sheet is sold, in ticks. Raises LookupError for a slip
    that the exercise does not have.
    """
    rule = {each.id: each.rule for each in BOTTOM.misconceptions}[slip]
    depth = next(joint.depth for joint in cabinet.joints if joint.enters == "bottom")
    side = cabinet.by_name["left side"].thickness
    length = rule({"W": cabinet.outside.size[0], "T": nominal, "t": side, "d": depth})
    right = cabinet.by_name["bottom"]
    wrong = replace(right, length=length)
    boards = tuple(wrong if board is right else board for board in cabinet.boards)
    fitted = replace(cabinet, boards=boards, findings=())
    stops = tuple(found for found in check(fitted) if found.level == "stop" and "bottom" in found.boards)
    return DryFit(fitted, slip, length, length - right.length, stops)


def picture(fit: DryFit) -> Scene:
    """Both lower corners of the case cut through, with the run between them left out.

    Where the bottom stops short the empty part of the joint is marked; where it is too long, all that goes too far.
    """
    cabinet, style = fit.cabinet, fit.cabinet.style
    bottom, side = cabinet.by_name["bottom"], cabinet.by_name["right side"]
    wide = max(side.box.high[0], bottom.box.high[0])
    high = SEEN * 2 // 3
    shift = 2 * SEEN + _BREAK - wide  # what stands on the right is drawn this much further right (minus: left)
    corners = (((0, 0, SEEN, high), 0), ((wide - SEEN, 0, wide, high), shift))
    boards = [cabinet.by_name[name] for name in ("left side", "right side", "bottom")]
    items: list[Item] = []
    for shape in cut_through(boards, (), FRONT, bottom.box.size[1] // 2):
        for corner, by in corners:
            rects = tuple(_moved(rect, by) for rect in map(lambda r, c=corner: _within(r, c), shape.rects) if rect)
            if shape.hatch and rects:
                items.append(Shape(rects, shape.fill, shape.name, shape.hatch))
                if shape.name != "bottom":
                    # Clear of the bottom, where a gap or a clash is marked.
                    upper = [(a, max(b, bottom.thickness), c, d) for a, b, c, d in rects if d > bottom.thickness]
                    room, *more = largest_rooms(upper)
                    said = (shape.name, shape.name.replace(" ", "\n"))
                    items.append(Label(room, said, plate=True, rooms=tuple(more)))
    items.append(Label((SEEN // 2, 0, SEEN, bottom.thickness), ("bottom",), plate=True))
    floor = side.box.low[0] + next(joint.depth for joint in cabinet.joints if joint.receives == "right side")
    amount, word = true_amount(abs(fit.by), style), "too long" if fit.by > 0 else "gap"
    left, right = sorted((bottom.box.high[0], floor))
    mark = _moved((left, 0, right, bottom.thickness), shift)
    items.append(Shape((mark,), "clash" if fit.by > 0 else "air", word, "x"))
    point = ((mark[0] + mark[2]) // 2, bottom.thickness // 2)
    said = f"{word} {amount.removesuffix(f' {style.unit}')}"
    items.append(Leader(point, "right", said, size=abs(fit.by)))
    ends = (bottom.box.low[0], bottom.box.high[0] + shift)
    items.append(Chain("below", 0, ends, (bare(fit.length, style),), 0, (fit.length,)))
    outside = side.box.high[0]
    items.append(Chain("below", 1, (0, outside + shift), (bare(outside, style),), 0, (outside,)))
    told = f"what is {amount} too long" if fit.by > 0 else f"a gap of {amount}"
    return Scene(
        f"The bottom as it was cut: {bare(fit.length, style)}",
        unit_note(style, "The run between the two ends is left out."),
        f"Both lower corners of the case, cut and seen from the front. The bottom, {write_brief(fit.length, style)} "
        f"long, is home in the left side. At the right side {told} is marked.",
        (0, 0, 2 * SEEN + _BREAK, high),
        tuple(items),
    )


def _within(rect: Rect, frame: Rect) -> Rect | None:
    a, b = max(rect[0], frame[0]), max(rect[1], frame[1])
    c, d = min(rect[2], frame[2]), min(rect[3], frame[3])
    return (a, b, c, d) if a < c and b < d else None


def _moved(rect: Rect, by: int) -> Rect:
    return rect[0] + by, rect[1], rect[2] + by, rect[3]
