"""A drawer in its opening cut level and seen from above: slides, box, taper, shims, and the room behind."""

from dataclasses import replace

from shoplib.building.in_opening import back_seat, box_of, depth_of, parts_of, rails_behind, read_of, runs_of
from shoplib.draw.beside import ENLARGED, Beside, beside
from shoplib.draw.chains import bare, stacked, unit_note
from shoplib.draw.look import FROM_ABOVE, cut_through
from shoplib.draw.scene import Chain, Item, Label, Leader, Scene, Shape, Slanted
from shoplib.lists.writing import Writing
from shoplib.measure import Style, narrowest, share, write_brief
from shoplib.model.box import Box
from shoplib.model.drawer_fit import beside as room_beside
from shoplib.model.drawer_fit import mend, taper
from shoplib.model.project import Opening
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import Slide
from shoplib.words.amounts import how_much, true_amount


def drawer_plan(cabinet: Cabinet, style: Style, group: str, slide: Slide) -> Scene:
    """The drawer of that name from above, the front of the case at the foot of the drawing.

    Readings of the opening stand under it (front) and over it (back), that of the depth beside it. The room
    beside the box and a taper are drawn larger than they are, and the drawing says so. Raises KeyError where there is
    no such drawer.

    >>> from shoplib.building.drawer_sizes import rule_and_slide
    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> _, slide = rule_and_slide(cabinet, "bay 1 drawer 1")
    >>> drawer_plan(cabinet, cabinet.style, "bay 1 drawer 1", slide).title
    'From above: side-mount ball-bearing, metric lengths'
    """
    box, read = box_of(cabinet, group), read_of(cabinet, group)
    drawn = beside(box, read)
    boards, slides = parts_of(cabinet, group)
    side, seat = cabinet.by_name["left side"], back_seat(cabinet)
    end, rear = int(side.box.high[1]), int(seat)
    out = max(drawn.front, drawn.back) + int(side.thickness)
    at = int(share(box.low[2] + box.high[2], 2, 1)[0])
    items: list[Item] = [
        drawn.moved(shape) for shape in cut_through(boards, slides, FROM_ABOVE, at)
    ]
    items += _walls(drawn, out, end)
    past = drawn.back + int(side.thickness) // 3
    items.append(Slanted(
        ((drawn.left - past, rear), (drawn.right + past, rear), (drawn.right + past, end), (drawn.left - past, end)),
        "cut back", "back",
    ))
    rails = [board.box for board in rails_behind(cabinet, group)]
    items += [
        Shape(((drawn.left - drawn.back, int(rail.low[1]), drawn.right + drawn.back, int(rail.high[1])),),
              "cut case", "rail", "/") for rail in rails
    ]
    reach = depth_of(cabinet, group)
    spread, wide = taper(read)
    shimmed = mend(spread, slide) == "shim"
    low, high = int(box.low[1]), int(box.high[1])
    if shimmed:
        items += _wedges(drawn, low, high, end)
    items += _names(drawn, slide, low, high, shimmed and wide)
    front = next((board.box for board in boards if board.role == "front"), None)
    runs = runs_of(cabinet, group)
    items += [*_across(drawn, box.size[0], read, style), *_along(box, runs, reach, style)]
    foot = min(0, int(front.low[1])) if front else 0
    text = _said(read, box, reach - runs[1], slide, style, spread, wide)
    note = f"Seen from above, front of the case at the foot. {ENLARGED if drawn.enlarged else ''}".strip()
    return Scene(
        f"From above: {slide.name}", unit_note(style, note), f"{text} {ENLARGED if drawn.enlarged else ''}".strip(),
        (drawn.left - out, foot, drawn.right + out, end), tuple(items),
    )


def _walls(drawn: Beside, out: int, end: int) -> list[Slanted]:
    left = ((drawn.left - out, 0), (drawn.left - drawn.front, 0), (drawn.left - drawn.back, end),
            (drawn.left - out, end))
    right = tuple((drawn.left + drawn.right - x, y) for x, y in left)
    return [Slanted(left, "cut case", "left side", "/"), Slanted(right, "cut case", "right side", "\\")]


def _wedges(drawn: Beside, low: int, high: int, end: int) -> list[Slanted]:
    """What stands between slide and wall: nothing at the narrow end."""
    near, far = drawn.wall(low, end), drawn.wall(high, end)
    left = ((drawn.left - drawn.room, low), (drawn.left - drawn.room, high), (drawn.left - far, high),
            (drawn.left - near, low))
    right = tuple((drawn.left + drawn.right - x, y) for x, y in left)
    return [Slanted(corners, "edging", "shim") for corners in (left, right)]


def _names(drawn: Beside, slide: Slide, low: int, high: int, wide: str | bool) -> list[Item]:
    def on_right(x: int, part: int) -> tuple[int, int]:
        return x, low + (high - low) * part // 12

    inside = (drawn.right - drawn.left) // 12
    runs = "slide" if slide.carries == "hardware" else "runner"
    items: list[Item] = [
        Label((drawn.left + inside, low + inside, drawn.right - inside, high - inside), ("box bottom",), plate=True),
        Leader(on_right(drawn.right - inside // 8, 7), "right", "box side"),
        Leader((drawn.right - 2 * inside, high - inside // 8), "right", "box back"),
        Leader((drawn.right - 2 * inside, low + inside // 8), "right", "box front"),
    ]
    if slide.carries != "shelf":
        items.append(Leader(on_right(drawn.right + drawn.room * 2 // 3, 5), "right", runs))
    if wide:
        over = (max(drawn.front, drawn.back) + 2 * drawn.room) // 3
        items.append(Leader(on_right(drawn.right + over, 10 if wide == "back" else 2), "right", "shim"))
    return items


def _across(drawn: Beside, wide: int, read: Opening, style: Style) -> list[Chain]:
    """Dimension lines across: the box and the room beside it, and the opening in front and at the back."""
    room = room_beside(read.front, wide)
    x0, x1 = drawn.left, drawn.right
    rest, page = read.front - wide - room, Writing(style, units=False)
    return [
        Chain("below", 0, (x0 - drawn.front, x0, x1, x1 + drawn.front),
              (page.setting(room), bare(wide, style), page.setting(rest)), sizes=(room, wide, rest)),
        Chain("below", 1, (x0 - drawn.front, x1 + drawn.front), (f"front {bare(read.front, style)}",),
              sizes=(read.front,)),
        Chain("above", 0, (x0 - drawn.back, x1 + drawn.back), (f"back {bare(read.back, style)}",),
              sizes=(read.back,)),
    ]


def _along(box: Box, runs: tuple[int, int], reach: int, style: Style) -> list[Chain]:
    """Dimension lines in depth: the slide, where one is bought, since it begins and ends elsewhere than the box; the
    box; and the whole depth. Slide and box are as long as each other, so each has its name."""
    spans = {"box": (box.low[1], box.high[1])}
    if runs != spans["box"]:
        spans = {"slide": runs, **spans}
    found: list[Chain] = []
    for name, (low, high) in spans.items():
        at, sizes, texts = [low, high], [high - low], [f"{name} {bare(high - low, style)}"]
        if low > 0:
            at, sizes, texts = [0, *at], [low, *sizes], [stacked(bare(low, style)), *texts]
        if reach > high:
            behind = reach - high
            at, sizes, texts = [*at, reach], [*sizes, behind], [*texts, stacked(bare(behind, style))]
        found.append(Chain("left", len(found), tuple(map(int, at)), tuple(texts), sizes=tuple(sizes)))
    deep = stacked(f"depth {bare(reach, style)}")
    return [*found, Chain("left", len(found), (0, int(reach)), (deep,), sizes=(reach,))]


def _said(read, box, behind: int, slide: Slide, style: Style, spread: int, wide: str) -> str:
    """What the drawing shows, for those who do not see it."""
    shape = f"{how_much(spread, style)} wider at the {wide}" if spread else "as wide at the back as at the front"
    return (
        f"A drawer on {slide.name} seen from above. The opening is {write_brief(read.front, style)} wide at the front "
        f"and {shape}; the box is {write_brief(box.size[0], style)} wide and {write_brief(box.size[1], style)} "
        f"deep, with {write_brief(behind, style)} free behind {'the slides' if slide.carries == 'hardware' else 'it'}."
    )


def box_too_wide(cabinet: Cabinet, style: Style, group: str, slide: Slide, over: int) -> Scene:
    """The same drawing of a box made `over` wider than planned (ticks): it meets its right slide, cross-hatched.

    What it clashes by is less by the play that was left when the planned box was rounded down.

    >>> from shoplib.building.drawer_sizes import rule_and_slide
    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> _, slide = rule_and_slide(cabinet, "bay 1 drawer 1")
    >>> box_too_wide(cabinet, cabinet.style, "bay 1 drawer 1", slide, 2 * MM).alt.rpartition(". ")[2]
    'The box was made 341 mm wide: it meets its right slide by 1.94 mm.'
    """
    scene, box, read = drawer_plan(cabinet, style, group, slide), box_of(cabinet, group), read_of(cabinet, group)
    clash = over + box.size[0] + 2 * slide.side - narrowest([read.front, read.back])
    left, right = int(box.low[0]), int(box.high[0])
    low, high = int(box.low[1]), int(box.high[1])
    seen = max(int(clash), (right - left) // 50)
    planned = [item for item in scene.items if isinstance(item, Chain) and (item.side, item.row) == ("below", 0)]
    kept = tuple(item for item in scene.items if item not in planned)
    wide = box.size[0] + over
    more = (
        Shape(((right, low, right + seen, high),), "clash", "clash", "x"),
        Leader((right + seen // 2, low + (high - low) * 3 // 12), "right", f"clash {true_amount(clash, style)}",
               size=clash),
        Chain("below", 0, (left, right + seen), (bare(wide, style),), sizes=(wide,)),
    )
    alt = f"The box was made {write_brief(wide, style)} wide: it meets its right slide by {true_amount(clash, style)}."
    return replace(scene, title="A box that is too wide", items=kept).with_items(*more, alt=alt)
