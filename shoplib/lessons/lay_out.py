"""`lay_out` on a page: the sheets of a project file as they are cut, and the order of the cuts, in one call."""

from dataclasses import dataclass
from html import escape
from pathlib import Path

from shoplib.buying.laid import LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.buying.spare_parts import spares
from shoplib.documents.cut_order_file import COLUMNS, order_rows
from shoplib.documents.examples import cabinet_from
from shoplib.documents.sheets_words import sheets_words, verdict
from shoplib.draw.sheet_layout import sheet_scenes
from shoplib.lessons.figure import Figure
from shoplib.lessons.large_type import sized
from shoplib.lessons.worked import unbroken

SHOWN = (
    "step", "setting", "piece", "cut", "set_by", "fence", "cuts", "comes_off", "is_left", "mind",
    "not_before", "lift",
)  # fmt: skip
"""Of the columns of cut_order.csv those that stand on the page."""

PICTURE = (620.0, 460.0)


@dataclass(frozen=True, repr=False)
class ShownLayouts:
    """The layouts of a cabinet on a page: the verdict and all that is said of it, a drawing a sheet, the cuts."""

    found: LaidOut

    @property
    def words(self) -> str:
        """What the command `sheets` says on the terminal."""
        left = spares(self.found)
        return f"{verdict(self.found, left)}\n\n{sheets_words(self.found, left)}"

    @property
    def figures(self) -> tuple[Figure, ...]:
        """A drawing of each sheet, board or piece."""
        style = self.found.cabinet.style
        return tuple(Figure.of(scene, PICTURE, (), style) for _, scene in sheet_scenes(self.found))

    def __repr__(self) -> str:
        return self.words

    def _repr_html_(self) -> str:
        pictures = "".join(figure._repr_html_() for figure in self.figures)
        return sized(f"<pre>{escape(self.words)}</pre>{pictures}{self._order()}")

    def _order(self) -> str:
        columns = [COLUMNS.index(name) for name in SHOWN]
        head = "".join(f'<th scope="col">{escape(name.replace("_", " "))}</th>' for name in SHOWN)
        rows = "".join(
            "<tr>" + "".join(f"<td>{escape(unbroken(row[column]))}</td>" for column in columns) + "</tr>"
            for row in order_rows(self.found)
        )
        caption = '<caption style="text-align: left; font-weight: 600">The cuts in their order</caption>'
        return f'<table style="font-size: inherit">{caption}<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def lay_out(project: str | Path, seconds: float = 10.0) -> ShownLayouts:
    """Lay the boards of a project out on sheets and show it: a project file, or the name of a shipped example.

    Interrupting the kernel takes the best layouts so far. Raises ProjectFileError, ImpossibleProject or LayoutError,
    each one sentence.

    >>> print(str(lay_out("finger_jointed_drawers", 1)).splitlines()[0])
    Buy 1 x case sheet 1220 mm x 1220 mm, 1 x thin sheet 1220 mm x 610 mm; use 2
    """
    return ShownLayouts(laid_out(cabinet_from(project), seconds))
