"""The words above and below a drawing on the screen: what must be read first, title and note, and the legend."""

from shoplib.draw.asking import name_of_line
from shoplib.draw.lettering import wrapped
from shoplib.draw.marks import INK, NORMAL, SMALL, TITLE, text_element
from shoplib.draw.scene import Scene


def heading(scene: Scene, words: list[str], left: float, right: float, top: float, asked: str) -> float:
    """Write title, note and what must be read first to `words`, above `top`; give back the new top, on the page.

    >>> words = []
    >>> heading(Scene("Shelf", "Seen from the front", "a", (0, 0, 80, 40)), words, 0, 400, 0, "") < 0
    True
    >>> ["Shelf" in text for text in words]
    [False, True]
    """
    if scene.alarms:
        lines = [line for text in scene.alarms for line in wrapped(text, NORMAL, (right - left) * 0.9 - 12)]
        high = len(lines) * NORMAL * 1.4 + 8
        top -= high + 10
        words.append(f'<rect x="{left:.2f}" y="{top:.2f}" width="{right - left:.2f}" height="{high:.2f}" '
                     f'fill="#ffffff" stroke="{INK}" stroke-width="2"/>')
        for k, line in enumerate(lines):
            words.append(text_element(left + 6, top + 4 + NORMAL * (0.7 + 1.4 * k), line, NORMAL, "start", False, True))
    note = wrapped(scene.noted, SMALL, right - left)
    title = wrapped(scene.title, TITLE * 1.12, right - left)
    top -= 8 + len(note) * SMALL * 1.4
    words += _one_to_pick(scene, scene.note, asked, [
        text_element(left, top + SMALL * (0.7 + 1.4 * k), line, SMALL, "start", False) for k, line in enumerate(note)
    ])
    top -= len(title) * TITLE * 1.35
    words += _one_to_pick(scene, scene.title, asked, [
        text_element(left, top + TITLE * (0.6 + 1.35 * k), line, TITLE, "start", False, bold=True)
        for k, line in enumerate(title)
    ])
    return top


def legend(scene: Scene, words: list[str], left: float, right: float, bottom: float, asked: str) -> float:
    """Write the legend to `words`, below `bottom`; give back the new bottom, on the page.

    >>> words = []
    >>> legend(Scene("Shelf", "n", "a", (0, 0, 80, 40), legend=("1: the cut to length",)), words, 0, 400, 50, "") > 50
    True
    >>> "the cut to length" in words[0]
    True
    """
    for text in scene.legend:
        written = []
        for line in wrapped(text, NORMAL, right - left):
            bottom += NORMAL * 1.5
            written.append(text_element(left, bottom, line, NORMAL, "start", False))
        words += _one_to_pick(scene, text, asked, written)
    return bottom + (NORMAL * 0.7 if scene.legend else 0.0)


def _one_to_pick(scene: Scene, line: str, asked: str, written: list[str]) -> list[str]:
    """What was written of a line, as one thing to pick where the line tells sizes that can be asked."""
    name = name_of_line(scene, line) if asked else ""
    return [f'<g data-ask="{asked}{name}">', *written, "</g>"] if name else written
