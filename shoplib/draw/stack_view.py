"""A stack of a dado set as it goes on the arbor: cutters and shims side by side, their widths to scale."""

from itertools import accumulate, pairwise

from shoplib.draw.chains import unit_note
from shoplib.draw.scene import Chain, Item, Scene, Shape, Told
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.dado_stack import Stack
from shoplib.words.naming import and_list

_TALL = {"outer cutter": 20, "chipper": 17, "shim": 9}
"""How tall each is drawn, in twentieths: shims lie round the arbor, chippers a little in from the outer cutters."""
_FILLS = {"outer cutter": ("cut case", "/"), "chipper": ("cut box", "\\"), "shim": ("hardware", "")}


def stack_view(stack: Stack, title: str, style: Style) -> Scene:
    """The pieces from left to right: an outer cutter, chippers with the shims between them, the other outer cutter.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> stack_view(Stack.of(INCH // 8, (INCH // 8,)), "A stack", INCH_STYLE).legend
    ('From left: outer cutter 0.125, chipper 0.125 and outer cutter 0.125.',)
    """
    pieces = [("outer cutter", stack.outer), *(("chipper", one) for one in stack.chippers),
              *(("shim", one) for one in stack.shims), ("outer cutter", stack.outer)]
    at = [0, *accumulate(size for _, size in pieces)]
    tall, page = at[-1], Writing(style, units=False)
    items: list[Item] = []
    for (left, right), (what, _) in zip(pairwise(map(int, at)), pieces, strict=True):
        half = tall * _TALL[what] // 40
        fill, hatch = _FILLS[what]
        items.append(Shape(((left, tall // 2 - half, right, tall // 2 + half),), fill, what, hatch))
    items.append(Chain("below", 0, (0, int(at[-1])), (page.measured(at[-1]),), sizes=(at[-1],)))
    told = f"From left: {and_list([f'{what} {page.measured(size)}' for what, size in pieces])}."
    note = unit_note(style, "Widths to scale; how far across a cutter is, is not.")
    return Scene(
        title, note, f"A stack on the arbor. {told}", (0, 0, int(at[-1]), int(tall)), tuple(items), (told,),
        told=(Told(told, tuple(pieces)),),
    )
