"""Pictures of the lesson on fronts: a case out of square, the order in which a front is set, an edge of a case."""

from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Rect, Scene, Shape, Slanted
from shoplib.measure import Style, write_brief
from shoplib.words.amounts import setting

_UNITS = {"in": "inches", "mm": "millimetres"}


def racked(width: int, height: int, gap: int, lean: int, style: Style) -> Scene:
    """A square inset front in an opening whose top stands `lean` to the right of its bottom; all drawn larger.

    The gap beside the front goes from `gap` at the bottom to `gap` less `lean` at the left of the top, and to `gap`
    and `lean` at the right.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> racked(364 * MM, 140 * MM, 2 * MM, MM, MM_STYLE).alt.partition(". ")[2]
    'At the foot both gaps are 2 mm; at the top the left one is 1 mm and the right one 3 mm.'
    """
    board = width // 14
    times = max(1, min(8, width // (40 * gap)))
    g, over = gap * times, lean * times
    wide, high = width + 2 * g, height + 2 * g

    def case(left: int, right: int, low: int, top: int, name: str) -> Slanted:
        def at(x: int, z: int) -> tuple[int, int]:
            return x + over * z // high, z

        return Slanted((at(left, low), at(right, low), at(right, top), at(left, top)), "case", name)

    items: list[Item] = [
        case(-board, 0, -board, high + board, "left side"),
        case(wide, wide + board, -board, high + board, "right side"),
        case(0, wide, -board, 0, "bottom"), case(0, wide, high, high + board, "top"),
    ]
    front: Rect = (g, g, g + width, g + height)
    items += [Shape((front,), "front", "front"), Label(front, ("front, square",))]
    left, right = gap - lean, gap + lean
    said = [("above left", left), ("above right", right)]
    texts = [setting(each, style) if each > 0 else "none: it strikes" for _, each in said]
    at_top = ((g + over * 9 // 10) // 2, high * 9 // 10), (wide + over // 2 - g // 2, high * 9 // 10)
    items.append(Leader(at_top[0], "left", f"gap {texts[0]}", size=left if left > 0 else 0))
    items.append(Leader(at_top[1], "right", f"gap {texts[1]}", size=right))
    items.append(Leader((g // 2, high // 10), "left", f"gap {setting(gap, style)}", size=gap))
    items.append(Leader((wide - g // 2, high // 10), "right", f"gap {setting(gap, style)}", size=gap))
    return Scene(
        "A square front in a leaning case", f"Gaps and lean are drawn {times} times as large as they are.",
        f"An inset front that is square, in a case whose top leans {write_brief(lean, style)} to the right. At the "
        f"foot both gaps are {setting(gap, style)}; at the top the left one is {texts[0]} and the right "
        f"one {texts[1]}.",
        (-board - over, -board, wide + board + over * 2, high + board), tuple(items),
    )


def setting_order(width: int, height: int, spacer: int, style: Style) -> Scene:
    """An inset front on its spacers with the places of its screws, in the order in which they are set.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> setting_order(364 * MM, 140 * MM, 2 * MM, MM_STYLE).alt.split(". ")[1]
    'It stands on two spacers and against one at its left'
    """
    board, thick = width // 14, max(spacer, width // 40)
    wide, high = width + 2 * thick, height + 2 * thick
    items: list[Item] = [
        Shape(((-board, -board, 0, high + board),), "case", "left side"),
        Shape(((wide, -board, wide + board, high + board),), "case", "right side"),
        Shape(((0, -board, wide, 0),), "case", "bottom"),
        Shape(((0, high, wide, high + board),), "case", "what stands above"),
        Shape(((thick, thick, thick + width, thick + height),), "front", "front"),
    ]
    spacers = [
        (width // 8, 0, width // 4, thick), (width * 3 // 4, 0, width * 7 // 8, thick),
        (0, height // 3, thick, height * 2 // 3),
    ]
    items += [Shape((rect,), "hardware", "spacer") for rect in spacers]
    middle, apart, size = thick + height // 2, width // 7, width // 60
    across = thick + width // 2

    def mark(x: int, z: int) -> list[Item]:
        return [Line((x - size, z - size), (x + size, z + size)), Line((x - size, z + size), (x + size, z - size))]

    pull = [(across - apart, middle), (across + apart, middle)]
    inside = [(thick + width // 6, middle), (thick + width * 5 // 6, middle)]
    for x, z in [*pull, *inside]:
        items += mark(x, z)
    items += [
        Shape(((across - apart, middle - size // 3, across + apart, middle + size // 3),), "air", "the pull, last"),
        Leader((width * 13 // 16, thick // 2), "below", "1 spacers"),
        Leader(pull[0], "above", "2 two screws through the pull holes"),
        Leader(inside[1], "right", "3 two from inside"),
        Leader((across + apart // 2, middle - size // 3), "below", "4 the pull"),
    ]
    return Scene(
        "Setting a front", f"Without sizes; spacers are {setting(spacer, style)}, drawn thicker than they are.",
        "An inset front in its opening, from the front. It stands on two spacers and against one at its left. Crosses "
        "mark two screws through the pull holes in its middle, set first, and two farther out, set from inside the "
        "drawer; the pull, dashed, comes last and fills the holes.",
        (-board, -board, wide + board, high + board), tuple(items),
    )


def edge(thick: int, gap: int, style: Style, inset: bool, sizes: bool = True) -> Scene:
    """A side and a front beside it, cut through and seen from above, the front of the case at the foot.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> edge(18 * MM, 3 * MM, MM_STYLE, inset=True).alt
    'Seen from above and cut through: the front stands behind the edge of the side, with a gap of 3 mm beside it.'
    """
    long = 4 * thick
    side = Shape(((0, 0, thick, long),), "cut case", "side", "\\")
    if inset:
        front: Rect = (thick + gap, 0, thick + gap + long, thick)
        at, texts = (0, thick, thick + gap), (setting(thick, style), setting(gap, style))
        said = f"the front stands behind the edge of the side, with a gap of {setting(gap, style)} beside it"
        words = "gap"
    else:
        front = (gap, -thick, gap + long, 0)
        at, texts = (0, gap, thick), (setting(gap, style), setting(thick - gap, style))
        said = (f"the front lies before the edge of the side, covers {setting(thick - gap, style)} of it and leaves "
                f"{setting(gap, style)} to be seen")
        words = "reveal"
    bare = tuple(text.removesuffix(f" {style.unit}") for text in texts)
    items: list[Item] = [
        side, Shape((front,), "cut front", "front", "/"), Label((0, thick, thick, long), ("side",), plate=True),
        Label(front, (f"front, {'inset' if inset else 'overlay'}", "front"), plate=True),
    ]
    start = (thick if inset else 0) + gap // 2
    items.append(Leader((start, thick // 2), "below", words) if inset else Leader((start, 0), "left", words))
    if sizes:
        items.append(Chain("above", 0, at, bare, None))
    note = f"Sizes in {_UNITS[style.unit]}." if sizes else "A sketch without sizes."
    return Scene(
        f"{'Inset' if inset else 'Overlay'} front, cut through", note, f"Seen from above and cut through: {said}.",
        (0, min(front[1], 0), thick + gap + long, long), tuple(items),
    )
