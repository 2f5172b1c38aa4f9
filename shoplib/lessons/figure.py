"""A still picture on the page, with its words under it."""

from base64 import b64encode
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from html import escape
from typing import Self

from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.lessons.each_size import folded, why_drawn
from shoplib.lessons.large_type import letters_in_use, sized
from shoplib.lessons.worked import unbroken
from shoplib.measure import Style


@dataclass(frozen=True, repr=False)
class Figure:
    """An SVG drawing, the words for whoever cannot see it, and paragraphs under it.

    `why` are the workings of its sizes, folded below.

    >>> Figure("<svg/>", "A box.", ["It is too long."])
    It is too long.
    """

    svg: str
    alt: str
    words: Sequence[str]
    why: Sequence[str] = ()

    @classmethod
    def of(
        cls, scene: Scene, fit: tuple[float, float], words: Sequence[str], style: Style,
        sizes: Iterable[tuple[str, int]] = (),
    ) -> Self:
        """The scene drawn into `fit` (width, height), in the type that was chosen.

        Below it, in `style`, why each of its dimensions is so, and each of the `sizes` that it tells in words alone.
        """
        with drawn_with(letters_in_use()):
            return cls(draw(scene, fit), scene.alt, words, why_drawn(scene, sizes, style))

    def __repr__(self) -> str:
        return "\n".join(self.words)

    def _repr_html_(self) -> str:
        # An `img` passes the cleaning that JupyterLab and web viewers give to a saved page.
        picture = b64encode(self.svg.encode()).decode()
        said = "".join(f"<p>{escape(unbroken(line))}</p>" for line in self.words)
        why = folded(map(unbroken, self.why))
        return sized(f'<img alt="{escape(self.alt)}" src="data:image/svg+xml;base64,{picture}"/>{said}{why}')


def dry_fit_says(told: str) -> str:
    """What the dry-fit found, as a line below a picture: after the colon it begins small, as the names of boards do.

    >>> dry_fit_says("The boards together are too wide. Look at bottom first.")
    'The dry-fit says: the boards together are too wide. Look at bottom first.'
    """
    return f"The dry-fit says: {told[:1].lower()}{told[1:]}"
