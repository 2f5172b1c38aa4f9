"""Pictures of single fittings: a front with the holes of its pull, a screw in section, tools on a panel, a divider."""

from collections.abc import Sequence
from itertools import combinations, pairwise

from shoplib.draw.chains import bare, unit_note
from shoplib.draw.look import FRONT
from shoplib.draw.scene import Chain, Disc, Item, Label, Leader, Line, Rect, Running, Scene, Shape, Slanted
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.hardware_places import FrontScrew, pull_places
from shoplib.model.screw_room import screw_body, shank
from shoplib.model.solved import Cabinet
from shoplib.model.tool_row import ToolRow
from shoplib.words.amounts import how_much


def pull_view(cabinet: Cabinet, front: str, style: Style) -> Scene:
    """A front seen from outside, with the holes for its pull from its left end and from its lower edge.

    KeyError where there is no board of that name.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> pull_view(cabinet, "bay 1 drawer 1 front", cabinet.style).alt.partition(". ")[2][:86]
    'Its holes are 107 mm and 235 mm from the left end, and 195 mm from the lower edge, as '
    """
    board, places = cabinet.by_name[front], pull_places(cabinet, front)
    x0, z0, x1, z1 = FRONT.flat(board.box)
    wide, high = x1 - x0, z1 - z0
    items: list[Item] = [Shape(((x0, z0, x1, z1),), "front", front)]
    a, b, c, d = FRONT.flat(cabinet.by_name[f"{board.group} box front"].box)
    corners = ((a, b), (c, b), (c, d), (a, d), (a, b))
    items += [Line(one, two, "hidden") for one, two in pairwise(corners)]
    least = wide // 60
    for place in places:
        x, z = x0 + place.left, z0 + place.up
        items.append(Disc((x, z), max(place.diameter, least), "cut", "hole for the pull"))
        items += [Line((x - least, z), (x + least, z), "centre"), Line((x, z - least), (x, z + least), "centre")]
    half = x0 + wide // 2
    items.append(Line((half, z0), (half, z1), "centre"))
    at = tuple(x0 + place.left for place in places)
    stations = (x0, *at, x1)
    items.append(Chain("below", 0, stations, tuple(
        bare(b - a, style) for a, b in pairwise(stations)), z0))
    items.append(Running("below", 1, x0, at, tuple(bare(place.left, style) for place in places), z0))
    up = z0 + places[0].up
    items.append(Chain("left", 0, (z0, up), (bare(places[0].up, style),), x0))
    page = Writing(style)
    holes = " and ".join(page.length(place.left) for place in places)
    return Scene(
        "Holes for the pull", unit_note(style, "Front seen from outside; the box front behind it is dashed."),
        f"A front {page.length(wide)} wide and {page.length(high)} high. Its holes are {holes} from the left end, and "
        f"{page.length(places[0].up)} from the lower edge, as far left of the middle as right of it.",
        (x0, z0, x1, z1), tuple(items),
    )


def screw_view(fixed: FrontScrew, style: Style) -> Scene:
    """The longest screw from inside a box into its front, cut through: box front at the left, front at the right.

    Without a screw, where none is short enough, the two boards alone.
    """
    s, f = fixed.through, fixed.into
    whole, high = s + f, (s + f) * 3 // 5
    page = Writing(style, units=False)
    items: list[Item] = [
        Shape(((0, 0, s, high),), "cut box", "box front", "\\"),
        Shape(((s, 0, whole, high),), "cut front", "front", "/"),
        Label((0, high * 4 // 5, s, high), ("box front", "box\nfront"), plate=True),
        Label((s, high * 4 // 5, whole, high), ("front",), plate=True),
        Chain("above", 0, (0, s, whole), (page.measured(s), page.measured(f))),
    ]
    if fixed.screw is None:
        told = "No screw of the table is short enough."
    else:
        long, half = fixed.screw.length, shank(fixed.screw.gauge) // 2
        middle, point = high * 2 // 5, shank(fixed.screw.gauge)
        items += [
            Shape(((0, middle - half, long - point, middle + half),), "hardware", "screw"),
            Slanted(((long - point, middle - half), (long, middle), (long - point, middle + half)), "hardware"),
            Slanted(((0, middle - 2 * half), (2 * half, middle - half), (2 * half, middle + half),
                     (0, middle + 2 * half)), "hardware"),
            Chain("below", 0, (0, long), (bare(long, style),), middle),
            Chain("below", 1, tuple(sorted((long, whole))), (page.setting(abs(fixed.left)),), 0, (fixed.left,)),
        ]
        size = Writing(style).setting(abs(fixed.left))
        told = f"A {fixed.screw.gauge} screw {Writing(style).length(long)} long goes in from the left; "
        told += f"before its point {size} of wood is left." if fixed.left >= 0 else f"its point comes out by {size}."
    return Scene(
        "The screw from the box into the front", unit_note(style, "Cut through; the inside of the box is at the left."),
        f"A box front {Writing(style).measured(s)} thick, and against it a front {Writing(style).measured(f)} thick, "
        f"at their thinnest readings. {told}",
        (0, 0, max(whole, whole - fixed.left if fixed.screw else 0), high), tuple(items),
    )


def tools_view(row: ToolRow, names: Sequence[str], style: Style) -> Scene:
    """Tools as wide as they are, side by side on a panel, with their even spaces and the places of their pegs."""
    high = max(row.width * 2 // 5, 1)
    low, tall = high * 2 // 5, high * 4 // 5
    items: list[Item] = [Shape(((0, 0, row.width, high),), "case", "panel")]
    half = row.space // 2
    for name, left, wide, middle in zip(names, row.lefts, row.tools, row.middles, strict=True):
        rect = (left, low, left + wide, tall)
        items.append(Shape((rect,), "box", name))
        under = (left - half, 0, left + wide + half, low)
        items.append(Label(under, (name.replace(" ", "\n"), name), rooms=(rect,), about=rect))
        items.append(Disc((middle, (tall + high) // 2), row.width // 60, "hardware", f"peg of {name}"))
    page = Writing(style, units=False)
    stations, texts = [0], []
    for left, wide in zip(row.lefts, row.tools, strict=True):
        texts += [page.length(left - stations[-1]), ""]
        stations += [left, left + wide]
    texts.append(page.length(row.width - stations[-1]))
    items.append(Chain("below", 0, (*stations, row.width), tuple(texts)))
    items.append(Running("above", 0, 0, row.middles, tuple(page.length(place) for place in row.middles)))
    told = Writing(style)
    each = "; ".join(f"{name} {told.length(place)}" for name, place in zip(names, row.middles, strict=True))
    return Scene(
        "Tools on the panel", unit_note(style, "Below: the spaces. Above: pegs, from the left edge."),
        f"A panel {told.length(row.width)} wide with {len(names)} tools and {len(names) + 1} spaces of "
        f"{told.length(row.space)}. Pegs from the left edge: {each}.",
        (0, 0, row.width, high), tuple(items),
    )


def divider_view(cabinet: Cabinet, divider: str, style: Style) -> Scene:
    """A divider cut through from the front, where the screws of slides come nearest to something on its other face.

    What wants the same wood is cross-hatched. KeyError where there is no board of that name.
    """
    board = cabinet.by_name[divider]
    bodies = [
        (fitting, screw, screw_body(fitting, screw, board.box))
        for fitting in cabinet.hardware if fitting.what == "slide" and fitting.on == divider
        for screw in fitting.screws if screw.into == divider
    ]
    others = [(f"{cut.kind} of {cut.for_board}", board.placement.to_world(cut.box)) for cut in board.cuts
              if cut.kind in ("dado", "rabbet", "groove") and cut.for_board and cabinet.by_name[cut.for_board].part_of]
    clashes = _clashes([body for _, _, body in bodies], [cut for _, cut in others])
    thick = board.thickness
    about = clashes[0] if clashes else bodies[0][2]
    middle = (about.low[2] + about.high[2]) // 2
    window = (board.box.low[0] - thick, middle - 2 * thick, board.box.high[0] + thick, middle + 2 * thick)

    def seen(box: Box) -> Rect | None:
        a, b, c, d = FRONT.flat(box)
        rect = max(a, window[0]), max(b, window[1]), min(c, window[2]), min(d, window[3])
        return rect if rect[0] < rect[2] and rect[1] < rect[3] else None

    items: list[Item] = _shown(cabinet, board, seen)
    said = []
    for fitting, screw, body in bodies:
        rect = seen(body)
        if rect is not None:
            items.append(Shape((rect,), "hardware", f"screw of {fitting.group}"))
            left = fitting.box.high[0] <= board.box.low[0]
            length = how_much(screw.length, style)
            side = "left" if left else "right"
            point = rect[0] if left else rect[2], (rect[1] + rect[3]) // 2
            items.append(Leader(point, side, f"screw {length}", size=screw.length))
            said.append(f"a screw of {length} from the {side}")
    for clash in clashes:
        rect = seen(clash)
        if rect is not None:
            items.append(Shape((rect,), "clash", "both want this wood", "x"))
            items.append(Leader(((rect[0] + rect[2]) // 2, rect[1]), "below", "both want this wood"))
            break
    items.append(Chain("above", 0, (board.box.low[0], board.box.high[0]),
                       (Writing(style, units=False).measured(thick),)))
    found = "Where both want the same wood is cross-hatched." if clashes else "Nothing meets here."
    return Scene(
        f"Through {divider}", unit_note(style, "Cut through, seen from the front; the board runs on beyond the frame."),
        f"{divider.capitalize()}, {Writing(style).measured(thick)} thick, with {' and '.join(said)}. {found}",
        window, tuple(items),
    )


def _shown(cabinet: Cabinet, divider: Board, seen) -> list[Item]:
    """The wood of the divider, what stands in its cuts, and the slides beside it, inside the frame."""
    items: list[Item] = []
    wood = [rect for rect in map(seen, divider.pieces) if rect]
    items.append(Shape(tuple(wood), "cut case", divider.name, "\\"))
    for board in cabinet.boards:
        rect = seen(board.box) if board.role == "fixed shelf" else None
        if rect:
            items.append(Shape((rect,), "cut case", board.name, "/"))
    for fitting in cabinet.hardware:
        rect = seen(fitting.box) if fitting.what == "slide" and fitting.on == divider.name else None
        if rect:
            items.append(Shape((rect,), "hardware", f"slide of {fitting.group}"))
    return items


def _clashes(bodies: Sequence[Box], cuts: Sequence[Box]) -> list[Box]:
    """Where screws share wood with one another or reach into a cut, the largest first."""
    pairs = [*combinations(bodies, 2), *((body, cut) for body in bodies for cut in cuts)]
    found = [common for one, other in pairs if (common := one.common(other)) and min(common.size) > 0]
    return sorted(found, key=lambda box: -box.volume)
