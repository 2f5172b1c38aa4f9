"""The words within a drawing: labels, numbers on lines and the word along the grain, as far as they have room."""

from dataclasses import dataclass

from shoplib.draw.grain import grain_drawn
from shoplib.draw.ground import arrow
from shoplib.draw.labels import alike, fitting, write_label
from shoplib.draw.lettering import text_width
from shoplib.draw.marks import NORMAL, text_element
from shoplib.draw.scene import Grain, Label, Scene, Tag
from shoplib.draw.spilled import Box
from shoplib.draw.tags import place_tags, words_box, write_tags


@dataclass(frozen=True, slots=True)
class Rest:
    """Labels and numbers of lines that have no room within a drawing, and what the words cover that have."""

    labels: tuple[Label, ...]
    numbers: tuple[Tag, ...]
    covered: tuple[Box, ...]


def words_within(scene: Scene, scale: float, asked: str, words: list[str]) -> Rest:
    """Write to `words` the labels, the numbers on lines and the word along the grain that have room, `scale` units of
    the page for a tick; give back what has none.

    >>> scene, words = Scene("t", "n", "a", (0, 0, 200, 20), (Label((0, 0, 200, 20), ("shelf",)),)), []
    >>> words_within(scene, 1.0, "", words).labels, any("shelf" in text for text in words)
    ((), True)
    >>> [label.texts for label in words_within(scene, 0.1, "", []).labels]
    [('shelf',)]
    """
    left, _, _, top = scene.bounds
    items = scene.items
    labels = {number: item for number, item in enumerate(items) if type(item) is Label}
    fits = {number: fitting(item, scale) for number, item in labels.items() if not item.sizes} | alike(scene, scale)
    named = {number: (item, fits[number]) for number, item in labels.items() if fits[number]}
    placed = place_tags((item for item in items if type(item) is Tag), named, left, top, scale)
    for number, fit in placed.fits.items():
        ask = f"{asked}{number}.0" if asked and labels[number].sizes else ""
        write_label(labels[number], left, top, scale, words, ask, fit)
    write_tags(placed, words)
    spilled = [item for number, item in labels.items() if number not in named]
    for item in items:
        if type(item) is Grain and not _grain(item, left, top, scale, words):
            spilled.append(Label(item.rooms[0], ("grain",)))
    covered = [words_box(labels[number], fit, left, top, scale) for number, fit in placed.fits.items()]
    return Rest(tuple(spilled), placed.beside, (*covered, *(box for _, box in placed.boxes)))


def _grain(item: Grain, left: int, top: int, scale: float, words: list[str]) -> bool:
    """Draw the arrow, and the word on white, for lines of slides may run there; False where it has no room."""
    drawn = grain_drawn(item, left, top, scale)
    words.append(arrow(drawn.start, drawn.end))
    if drawn.word:
        (x, y), wide, high = drawn.word, text_width("grain", NORMAL) / 2 + 2, NORMAL * 0.5
        words.append(f'<path d="M{x - wide:.2f} {y - high:.2f}h{2 * wide:.2f}v{2 * high:.2f}h{-2 * wide:.2f}z" '
                     'fill="#ffffff"/>')
        words.append(text_element(x, y, "grain", NORMAL, "middle", False))
    return drawn.word is not None
