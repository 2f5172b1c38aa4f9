"""A still picture on the page, with its words under it."""

from base64 import b64encode
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape
from typing import Self

from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.lessons.large_type import letters_in_use, sized
from shoplib.lessons.worked import unbroken


@dataclass(frozen=True, repr=False)
class Figure:
    """An SVG drawing, the words for whoever cannot see it, and paragraphs under it.

    >>> Figure("<svg/>", "A box.", ["It is too long."])
    It is too long.
    """

    svg: str
    alt: str
    words: Sequence[str]

    @classmethod
    def of(cls, scene: Scene, fit: tuple[float, float], words: Sequence[str]) -> Self:
        """The scene drawn into `fit` (width, height), in the type that was chosen."""
        with drawn_with(letters_in_use()):
            return cls(draw(scene, fit), scene.alt, words)

    def __repr__(self) -> str:
        return "\n".join(self.words)

    def _repr_html_(self) -> str:
        # An `img` passes the cleaning that JupyterLab and web viewers give to a saved page.
        picture = b64encode(self.svg.encode()).decode()
        said = "".join(f"<p>{escape(unbroken(line))}</p>" for line in self.words)
        return sized(f'<img alt="{escape(self.alt)}" src="data:image/svg+xml;base64,{picture}"/>{said}')


def dry_fit_says(told: str) -> str:
    """What the dry-fit found, as a line below a picture: after the colon it begins small, as the names of boards do.

    >>> dry_fit_says("The boards together are too wide. Look at bottom first.")
    'The dry-fit says: the boards together are too wide. Look at bottom first.'
    """
    return f"The dry-fit says: {told[:1].lower()}{told[1:]}"
