"""The one pen: a scene becomes SVG text, the same for the screen and for paper."""

from dataclasses import replace

from shoplib.draw.ground import ground
from shoplib.draw.lanes import Lanes
from shoplib.draw.letters import ORDINARY, letters
from shoplib.draw.round_about import dimensions, edge_text, leaders
from shoplib.draw.scene import EdgeText, Scene
from shoplib.draw.svg_page import UNIT_MM, Drawn, put_together
from shoplib.draw.words_within import words_within
from shoplib.measure import MM

_LESS = (1.0, 1.3, 1.7)
"""How much smaller than larger letters ask for a thing is drawn, one after another, to make room for them."""

_HARDLY = 0.8
"""As above, for a drawing so full of numbers that it can be made but little smaller."""

_NEARLY = 0.95
"""What part of the wanted size will do: the edge of a page alone takes that much, and the thing is not drawn small
for it."""

_MOST_BESIDE = 2
"""So many numbers at most are put beside a drawing for larger letters: leaders of more would run through one another.
Judged by eye on the sheets of the shipped projects."""


def draw(scene: Scene, fit: tuple[float, float] = (640.0, 440.0), asked: str = "") -> str:
    """The scene for a screen: the drawn thing fills `fit` (width, height) as far as its shape allows.

    The page is wider by the dimensions round it, and scales with the place it is put in. With `asked`, each
    dimension, and each label or line of words that tells sizes, carries `asked` and the name by which `asking` finds
    it again, as `data-ask`.

    Where larger letters are wanted (`letters.drawn_with`) the drawn thing is made smaller until the page is as
    much smaller, as far as its words and numbers allow, and the page is shown larger: only the letters seem to grow.

    >>> scene = Scene("Shelf", "Seen from the front", "A shelf.", (0, 0, 80, 40))
    >>> draw(scene).split(" viewBox")[0], "<title>Shelf</title>" in draw(scene)
    ('<svg xmlns="http://www.w3.org/2000/svg" role="img"', True)
    """
    width, height = scene.size
    scale, larger = min(fit[0] / width, fit[1] / height), letters()
    page = _page(scene, scale, on_paper=False, asked=asked)
    if larger == ORDINARY:
        return page.svg
    best, most = page, 0.0
    for less in _LESS:
        tried = _page(scene, scale / (less * larger), on_paper=False, asked=asked, larger=larger)
        if tried.beside > max(page.beside, _MOST_BESIDE):
            if less == 1.0:
                tried = _page(scene, scale / (_HARDLY * larger), on_paper=False, asked=asked, larger=larger)
                best = best if tried.beside > max(page.beside, _MOST_BESIDE) else tried
            break
        grown = max(page.width, page.height) / max(tried.width, tried.height)  # on a place as wide as it is high
        if grown > most:
            best, most = tried, grown
        if grown >= _NEARLY * larger:
            break
    return best.svg


def draw_to_scale(scene: Scene, ratio: float) -> Drawn:
    """The scene for paper at 1 to `ratio`: the SVG carries its size in millimetres.

    Title, note and legend are left to the page that it stands on. A narrow edge of white goes round it.

    >>> drawn = draw_to_scale(Scene("Shelf", "", "A shelf.", (0, 0, 80 * MM, 40 * MM)), 10)
    >>> [round(size, 2) for size in drawn.size_mm]
    [8.5, 4.5]
    """
    return _page(scene, 1 / (MM * UNIT_MM * ratio), on_paper=True)


def _page(scene: Scene, scale: float, on_paper: bool, asked: str = "", larger: float = ORDINARY) -> Drawn:
    left, _, _, top = scene.bounds
    lanes = Lanes(scene.size[0] * scale, scene.size[1] * scale)
    body = ground(scene.items, left, top, scale)
    edges = [item for item in scene.items if type(item) is EdgeText]
    beyond = [item for item in edges if not edge_text(item, left, top, scale, lanes)]
    words: list[str] = []
    rest = words_within(scene, scale, asked, words)
    rest = replace(rest, covered=(*rest.covered, *lanes.along_edges()))
    leaders(scene, scale, asked, rest, lanes)
    dimensions(scene, scale, lanes)
    for item in beyond:
        edge_text(replace(item, lines=None), left, top, scale, lanes, lanes.used[item.side])
    drawn = put_together(scene, lanes, body, words, on_paper, asked, larger)
    return replace(drawn, beside=len(rest.numbers))
