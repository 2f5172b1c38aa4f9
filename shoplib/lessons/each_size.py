"""Why each size of a worked figure is so: told under it, folded until somebody wants to know.

A figure hands over its own numbers, solved with their names on them (`model.tracing`): what is told here is what they
were made of, and no sum stands in this module. A number without a working, such as one of a drawn tape, is left out,
and so is one that is nothing but 0.
"""

from collections.abc import Iterable, Iterator
from html import escape
from re import sub

from shoplib.draw.asking import all_sizes
from shoplib.draw.scene import Scene
from shoplib.measure import Style
from shoplib.measure.traced import Traced
from shoplib.words.working import said, working_of

HEADING = "Why each size"


def why_each(sizes: Iterable[tuple[str, int]], style: Style) -> tuple[str, ...]:
    """A line of working for each size (ticks, after what it is called), and for what stands behind it, each once.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.measure.traced import leaf
    >>> inside = leaf(34 * INCH, "case width") - 2 * leaf(INCH // 2, "thickness of the sides")
    >>> why_each([("between the sides", inside), ("a tape", 5 * INCH)], INCH_STYLE)
    ('between the sides 33 in = case width 34 in - 2 x thickness of the sides 1/2 in',)
    """
    return _lines(((said(called, size, style), size) for called, size in sizes), style)


def why_drawn(scene: Scene, sizes: Iterable[tuple[str, int]], style: Style) -> tuple[str, ...]:
    """The same for `sizes`, and then for all that the drawing tells; a dimension is found by how it stands there.

    >>> from shoplib.draw.scene import Chain
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.measure.traced import leaf
    >>> width = Chain("below", 0, (0, leaf(9 * INCH, "bay width")), ("clear 9",))
    >>> why_drawn(Scene("Bay", "inches", "A bay.", (0, 0, 9, 9), (width,)), (), INCH_STYLE)
    ('clear 9 in = bay width 9 in',)
    """
    found = [(said(called, size, style), size) for called, size in sizes]
    for called, text, size in all_sizes(scene):
        found.append((_with_unit(text, style.unit) if text else said(called, size, style), size))
    return _lines(found, style)


def _lines(told: Iterable[tuple[str, int]], style: Style) -> tuple[str, ...]:
    def each() -> Iterator[str]:
        for shown, size in told:
            if isinstance(size, Traced) and any(atom.value for atom, _ in size.sum.terms):
                yield from working_of(size, shown, style)

    return tuple(dict.fromkeys(each()))


def _with_unit(text: str, unit: str) -> str:
    """A text of a drawing, whose note says the unit, as it stands without the note.

    >>> _with_unit("front 16", "in"), _with_unit("7 3/8 (+0.01)", "in"), _with_unit("gap 2 mm", "mm")
    ('front 16 in', '7 3/8 in (+0.01 in)', 'gap 2 mm')
    """
    text = " ".join(text.split())
    return text if text.endswith(f" {unit}") else sub(r"(\d)(?=$|\)| \()", rf"\1 {unit}", text)


def folded(lines: Iterable[str]) -> str:
    """The lines as HTML that opens without a kernel and is read out as a list; nothing where there are none.

    >>> folded(["side 1 in = half of 2 in"]).partition("</summary>")[2]
    '<ul><li>side 1 in = half of 2 in</li></ul></details>'
    >>> folded([])
    ''
    """
    rows = "".join(f"<li>{escape(line)}</li>" for line in lines)
    return f"<details><summary>{HEADING}</summary><ul>{rows}</ul></details>" if rows else ""
