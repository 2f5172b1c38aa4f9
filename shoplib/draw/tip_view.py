"""A case from its right-hand side, drawers out, with the weights that hold it down and those that tip it as arrows."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from shoplib.draw.scene import Chain, Disc, Item, Leader, Line, Rect, Scene, Shape, Slanted
from shoplib.measure import Style, write_brief


@dataclass(frozen=True, slots=True)
class Hangs:
    """A weight as it is drawn: its middle (front to back, up; ticks), its part of the heaviest, whether it holds."""

    of: str
    at: tuple[int, int]
    part: float
    holds: bool


def tip_view(
    case: Rect, fronts: Mapping[str, Rect], opened: Sequence[str], weights: Sequence[Hangs], edge: int, tips: bool,
    style: Style,
) -> Scene:
    """The case (front to back, up), the drawers in it and before it, and the line it would go over, at `edge`.

    A weight that holds has a full arrow, one that tips an open one drawn with dashes: the longer, the heavier.
    """
    rear, floor, top = case[2], case[1], case[3]
    reach = min([rect[0] for name, rect in fronts.items() if name in opened], default=case[0])
    longest, head = (top - floor) * 2 // 5, max((rear - case[0]) // 40, 1)
    items: list[Item] = [Shape((case,), "back", "case")]
    for name, rect in fronts.items():
        items.append(Shape((rect,), "box", f"{name}, open" if name in opened else name))
    low = floor
    for one in weights:
        (y, z), long = one.at, max(round(longest * one.part), 3 * head)
        foot = z - long
        low = min(low, foot)
        items += [
            Disc((y, z), head, "mark" if one.holds else "air", one.of),
            Line((y, z), (y, foot + 2 * head), "edge" if one.holds else "hidden"),
            Slanted(((y - head, foot + 2 * head), (y, foot), (y + head, foot + 2 * head)),
                    "mark" if one.holds else "air", f"{one.of}: {'holds' if one.holds else 'tips'}"),
        ]
    half = 2 * head
    items += [
        Line((reach - half, floor), (rear + half, floor)),
        Line((edge, floor - half), (edge, top), "centre"),
        Slanted(((edge - half, floor - 2 * half), (edge, floor), (edge + half, floor - 2 * half)), "mark",
                "tipping edge"),
        Leader((edge, floor - half), "below", "tipping edge"),
    ]
    at, sizes = ((reach, edge, rear), (edge - reach, rear - edge)) if reach < edge else ((edge, rear), (rear - edge,))
    texts = tuple(write_brief(size, style).replace(f" {style.unit}", "") for size in sizes)
    items.append(Chain("above", 0, at, texts, sizes=sizes))
    unit = "inches" if style.unit == "in" else "millimetres"
    told = f"{len(opened)} drawer{'s' if len(opened) != 1 else ''} out" if opened else "all drawers closed"
    return Scene(
        "What holds and what tips", f"From the right. Sizes in {unit}.",
        f"A case {write_brief(rear - edge, style)} deep from its right-hand side, {told}. Arrows down from the middle "
        "of each weight: full ones behind the tipping edge hold it, dashed ones before it tip it. "
        f"{'It goes over.' if tips else 'It stands.'}",
        (min(reach, case[0]) - half, min(low, floor - 2 * half), rear + half, top), tuple(items),
        ("Full arrow: holds. Dashed, open arrow: tips. The longer, the heavier.",),
    )
