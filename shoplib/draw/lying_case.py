"""A case lying on its side, as the slides are set: the spacers against the bottom, and the setback of a slide."""

from shoplib.draw.chains import bare, unit_note
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Rect, Running, Scene, Shape
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.box import Box
from shoplib.model.hardware_places import SlidePlace, slides_on
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list

UPRIGHT = "left side"


def _lying(box: Box) -> Rect:
    """Seen from above, the case lying on its left side: the bottom at the left, the front edge at the foot."""
    return box.low[2], box.low[1], box.high[2], box.high[1]


def lying_case(cabinet: Cabinet, style: Style) -> Scene:
    """The left side from above with the case lying on it: slides, setback, and each spacer laid out before it.

    KeyError where the case has no left side, bottom or top.
    """
    boards, places = cabinet.by_name, slides_on(cabinet, UPRIGHT)
    side, floor = boards[UPRIGHT].box, boards["bottom"].box.high[2]
    items: list[Item] = [Shape((_lying(side),), "case", UPRIGHT)]
    standing = [board for board in cabinet.boards if board.role in ("bottom", "top", "back")]
    for board in standing:
        hatch = "/" if board.role == "back" else "\\"
        fill = "cut back" if board.role == "back" else "cut case"
        items.append(Shape((_lying(board.box),), fill, board.name, hatch))
    items += [Shape((_lying(place.fitting.box),), "hardware", f"slide of {place.fitting.group}") for place in places]
    strip = (side.high[1] - side.low[1]) // 11
    front = _fronts(cabinet)
    foot = min([side.low[1], *(rect[1] for rect in front)]) - strip // 2
    items += [Shape((rect,), "air", "front, set later") for rect in front]
    lowest = foot
    for number, place in enumerate(places, 1):
        top = foot - (number - 1) * (strip + strip // 3)
        lowest = top - strip
        rect = (floor, lowest, floor + place.spacer, top)
        items.append(Shape((rect,), "box", f"spacer {number}"))
        items.append(Label(rect, _named("spacer", number)))
        edge = floor + place.spacer
        items.append(Line((edge, top), (edge, place.fitting.box.low[1]), "hidden"))
    items.append(Line((floor, lowest), (floor, side.low[1]), "hidden"))
    items += _names(cabinet, places)
    at = tuple(floor + place.spacer for place in places)
    items.append(Running("below", 0, floor, at, tuple(bare(place.spacer, style) for place in places), lowest))
    first = places[0]
    back = first.setback
    items.append(Chain(
        "right", 0, (side.low[1], side.low[1] + back), (f"setback {Writing(style, units=False).setting(back)}",),
        places[-1].fitting.box.high[2],
    ))
    told = and_list([Writing(style).length(place.spacer) for place in places])
    bounds = (side.low[2], lowest, side.high[2], side.high[1])
    return Scene(
        "The case on its side, seen from above",
        unit_note(style, "Bottom at the left, front edge at the foot. Distances run from the inside of the bottom."),
        f"The case lies on its left side. {_count(places)} across the side, the front ends "
        f"{Writing(style).setting(back)} behind the front edge; their lower edges lie {told} from the inside of the "
        "bottom. Before the case a spacer is laid out for each, from the bottom to the slide's lower edge. Where "
        "fronts will be is dashed.",
        bounds, tuple(items),
    )


def _count(places: tuple[SlidePlace, ...]) -> str:
    return "One slide runs" if len(places) == 1 else f"{len(places)} slides run"


def _fronts(cabinet: Cabinet) -> list[Rect]:
    return [_lying(board.box) for board in cabinet.boards if board.role == "front" and board.part_of.bay == 1]


def _names(cabinet: Cabinet, places: tuple[SlidePlace, ...]) -> list[Item]:
    boards = cabinet.by_name
    found: list[Item] = [
        Leader(_middle(_lying(boards["bottom"].box)), "above", "bottom"),
        Leader(_middle(_lying(boards["top"].box)), "above", "top"),
    ]
    rects = [_lying(place.fitting.box) for place in places]
    ends = [*(rect[0] for rect in rects[1:]), boards["top"].box.low[2]]
    for number, (rect, end) in enumerate(zip(rects, ends, strict=True), 1):
        room = rect[2], rect[1], max(end, rect[2] + 1), rect[3]
        found.append(Label(room, _named("slide", number), about=rect))
    return found


def _named(what: str, number: int) -> tuple[str, ...]:
    """Never the number alone: it could be that of a slide or of a spacer, or a size."""
    return f"{what} {number}", f"{what}\n{number}", f"{what} {number}"


def _middle(rect: Rect) -> tuple[int, int]:
    return (rect[0] + rect[2]) // 2, (rect[1] + 7 * rect[3]) // 8


def setback_section(cabinet: Cabinet, style: Style) -> Scene:
    """The front edge of the left side with a front and the beginning of a slide, cut through and seen from above."""
    place = slides_on(cabinet, UPRIGHT)[0]
    side, slide = cabinet.by_name[UPRIGHT], place.fitting.box
    front = cabinet.by_name[f"{place.fitting.group} front"].box
    thick = side.thickness
    window = (side.box.low[0], min(front.low[1], 0), slide.high[0] + 3 * thick, 3 * thick + place.setback)

    def cut(box: Box) -> Rect:
        a, b, c, d = box.low[0], box.low[1], box.high[0], box.high[1]
        return max(a, window[0]), max(b, window[1]), min(c, window[2]), min(d, window[3])

    page = Writing(style, units=False)
    box_side = cabinet.by_name[f"{place.fitting.group} left box side"].box
    box_front = cabinet.by_name[f"{place.fitting.group} box front"].box
    shown = [
        (side.box, "cut case", "side", "\\"), (front, "cut front", "front", "/"), (slide, "hardware", "slide", ""),
        (box_side, "cut box", "box side", "\\"), (box_front, "cut box", "box front", "/"),
    ]
    items: list[Item] = [Shape((cut(box),), fill, name, hatch) for box, fill, name, hatch in shown]
    for box, _, name, _ in shown:
        if name in ("side", "front"):
            items.append(Label(cut(box), (name,), plate=True))
    middle = (slide.low[0] + slide.high[0]) // 2
    items.append(Leader((middle, window[3] - thick // 2), "above", "slide"))
    items.append(Leader(((box_side.low[0] + box_side.high[0]) // 2, window[3] - thick // 2), "above", "box side"))
    stations, inset = [0, slide.low[1]], front.high[1] > 0
    if inset:
        stations.insert(1, front.high[1])
        spans = (page.measured(front.high[1]), page.setting(slide.low[1] - front.high[1]))
        items.append(Chain("left", 0, tuple(stations), spans, side.box.low[0]))
        items.append(Chain("left", 1, (0, slide.low[1]), (page.setting(slide.low[1]),), side.box.low[0]))
    else:
        items.append(Chain("left", 0, tuple(stations), (page.setting(slide.low[1]),), side.box.low[0]))
    how = (
        f"The front, {Writing(style).measured(front.high[1])} thick, stands in the opening; the slide begins behind it"
        if inset else "The front lies before the case, and the slide begins a little behind the edge"
    )
    return Scene(
        f"Setback of the slides behind {'an inset' if inset else 'an overlay'} front",
        unit_note(style, "Cut through, seen from above; the front is at the foot."),
        f"{how}: the setback is {Writing(style).setting(place.setback)} from the front edge of the side.",
        window, tuple(items),
    )
