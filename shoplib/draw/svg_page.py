"""A drawing as a page of SVG: everything that was drawn and written, put together."""

from dataclasses import dataclass
from html import escape

from shoplib.draw.heading import heading, legend
from shoplib.draw.lanes import Lanes
from shoplib.draw.marks import DIMENSION, FONT, INK, NORMAL, text_element
from shoplib.draw.scene import Scene

UNIT_MM = 0.25
"""On paper one unit of the drawing is 0.25 mm, which makes the ordinary letters 8.2 points high."""

_LEAST_WIDTH = 420.0
"""No page on the screen is narrower, or its heading would be broken into many lines."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """SVG text and the size of its page, in units of the drawing; how many numbers of lines had no room in it and stand
    beside it."""

    svg: str
    width: float
    height: float
    beside: int = 0

    @property
    def size_mm(self) -> tuple[float, float]:
        """Width and height on paper, for a drawing made to scale."""
        return self.width * UNIT_MM, self.height * UNIT_MM


def put_together(
    scene: Scene, lanes: Lanes, body: list[str], words: list[str], on_paper: bool, asked: str, larger: float
) -> Drawn:
    """Heading above and legend below (on the screen), and everything put together: `body` is what lies on the ground,
    `words` what is written within, `lanes` hold what stands round it. On the screen letters are `larger` times as large
    as the ordinary ones; paper has margins of its own.

    >>> scene, lanes = Scene("Shelf", "Seen from the front", "A shelf.", (0, 0, 80, 40)), Lanes(80, 40)
    >>> put_together(scene, lanes, [], [], True, "", 1.0).size_mm
    (20.5, 10.5)
    >>> "Seen from the front" in put_together(scene, lanes, [], [], False, "", 1.0).svg
    True
    """
    x0, y0, x1, y1 = lanes.box
    if not on_paper:
        x1 = max(x1, x0 + _LEAST_WIDTH / larger)
        y0, y1 = heading(scene, words, x0, x1, y0, asked), legend(scene, words, x0, x1, y1, asked)
    edge = 1 if on_paper else 8  # paper has margins of its own
    x0, y0, x1, y1 = x0 - edge, y0 - edge, x1 + edge, y1 + edge
    width, height = x1 - x0, y1 - y0
    size = (f'width="{width * UNIT_MM:.4f}mm" height="{height * UNIT_MM:.4f}mm"' if on_paper else
            f'width="{width * larger:.0f}" height="{height * larger:.0f}" style="max-width:100%;height:auto"')
    discs = "".join(f'<circle cx="{x:.2f}" cy="{y:.2f}" r="1.7"/>' for x, y in lanes.dots)
    rings = "".join(f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{r:g}"/>' for x, y, r in lanes.rings)
    told = zip(lanes.texts, lanes.asks, strict=True)
    dimension_words = "".join(text_element(*text, ask=asked and ask and asked + ask) for text, ask in told)
    svg = "".join((
        '<svg xmlns="http://www.w3.org/2000/svg" role="img" ',
        f'viewBox="{x0:.2f} {y0:.2f} {width:.2f} {height:.2f}" {size}>',
        f"<title>{escape(scene.title, quote=False)}</title><desc>{escape(scene.alt, quote=False)}</desc>",
        f'<rect x="{x0:.2f}" y="{y0:.2f}" width="{width:.2f}" height="{height:.2f}" fill="#ffffff"/>',
        f'<g stroke-linejoin="round" fill="none">{"".join(body)}</g>',
        f'<path d="{"".join(lanes.strokes)}" fill="none" stroke="{DIMENSION}" stroke-width="0.7"/>',
        f'<path d="{"".join(lanes.halos)}" fill="#ffffff"/>',
        f'<path d="{"".join(lanes.heads)}" fill="{DIMENSION}"/>',
        f'<g fill="{DIMENSION}">{discs}</g><g fill="#ffffff" stroke="{DIMENSION}">{rings}</g>',
        f'<g font-family="{FONT}" font-size="{NORMAL:g}" fill="{INK}">{"".join(words)}',
        f'<g fill="{DIMENSION}">{dimension_words}</g></g></svg>',
    ))
    return Drawn(svg, width, height)
