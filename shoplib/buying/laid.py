"""Records of a cabinet as it is laid out: pieces, sheets, jobs, and all of it."""

from dataclasses import dataclass, field

from shoplib.buying.jobs import Ask, Held, Offered, least_kept
from shoplib.buying.kept import lettered, offcut_name
from shoplib.layout.order import SCRAP, Step
from shoplib.layout.pieces import Job, Laid, Layout, Placed, Rect, Stock
from shoplib.layout.sawn import Sawn
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Piece:
    """One part where it lies on its sheet: the board that it becomes, and the letter of its kind.

    `stave` counts from 1 where several are glued up into one board, and is 0 where it is the board itself.
    """

    board: Board
    letter: str
    placed: Placed
    stave: int = 0

    @property
    def name(self) -> str:
        """What it is called: the board, or which of its staves."""
        return f"{self.board.name}, stave {self.stave}" if self.stave else self.board.name


@dataclass(frozen=True, slots=True)
class LaidSheet:
    """One sheet, board or offcut with what is cut from it.

    `name` is written on it in the shop: "case sheet 1". `thickness` is as it comes, a solid board being rough. `held`
    is the piece that lies in the shop, None where it is bought. `pieces` are in the order of `laid.placed`; `sawn` has
    the cuts and what is left.
    """

    name: str
    sheet: Sheet
    stages: tuple[int, ...]
    stock: Stock
    thickness: int
    held: Held | None
    kerf: int
    laid: Laid
    pieces: tuple[Piece, ...]
    sawn: Sawn

    @property
    def bought(self) -> bool:
        """Whether it comes from the yard."""
        return self.held is None

    @property
    def kept(self) -> dict[Rect, str]:
        """The offcuts worth keeping, the largest first, each with its small letter."""
        return lettered(self.sawn.offcuts, least_kept(self.sheet))

    @property
    def left(self) -> dict[Rect, str]:
        """What is written on all that is left: an offcut has its letter, what is too small to keep is scrap."""
        kept = self.kept
        return {rest: offcut_name(self.name, kept[rest]) if rest in kept else SCRAP for rest in self.sawn.offcuts}


@dataclass(frozen=True, slots=True)
class LaidJob:
    """What was laid out together: what was asked, what lay in the shop before it, and what is offered for it; the
    layout that was chosen, its sheets, and the steps that free their parts, setting by setting. `others`
    are layouts that cost the same, of which `among` were looked at when it was chosen.
    """

    ask: Ask
    held: tuple[Held, ...]
    on: Offered
    job: Job
    layout: Layout
    sheets: tuple[LaidSheet, ...]
    steps: tuple[Step, ...]
    others: tuple[Layout, ...] = ()
    among: int = 1


@dataclass(frozen=True, slots=True)
class LaidOut:
    """All sheets of a cabinet, in the order in which they are cut.

    `left` is what lies in the shop at the end, by the name of its sheet: what was not used, and all offcuts. `stopped`:
    the search was stopped before its time, and the best so far was taken. `all_together` is what the stock of a sheet
    would cost with all its stages laid out together, for the sheets that would cost less so.
    """

    cabinet: Cabinet
    jobs: tuple[LaidJob, ...]
    left: dict[str, tuple[Held, ...]]
    stopped: bool = False
    all_together: dict[str, int] = field(default_factory=dict)

    @property
    def sheets(self) -> tuple[LaidSheet, ...]:
        """All of them."""
        return tuple(sheet for job in self.jobs for sheet in job.sheets)
