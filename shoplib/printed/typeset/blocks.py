"""What stands on a printed page, block by block: words, tables, pictures, boxes to fill in.

`papers.typ` sets each in type. Blocks are plain values; `set_in_type` hands them to the one template as they are, each
with its `kind`.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, fields

SQUARE = "\u2610"
"""An empty square to tick, in a cell of a table."""


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading: level 1 of a part, 2 within it, 3 of a step or a drawing."""

    text: str
    level: int = 1


@dataclass(frozen=True, slots=True)
class Words:
    """A paragraph; `grave` in heavy letters, `small` as small as the words under a picture."""

    text: str
    grave: bool = False
    small: bool = False


@dataclass(frozen=True, slots=True)
class Bullets:
    """Lines one below another, each with a dot, or its number from 1 on."""

    lines: tuple[str, ...]
    numbered: bool = False


@dataclass(frozen=True, slots=True)
class ToTick:
    """Lines with an empty square before each, to tick off at the bench."""

    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ToFillIn:
    """What is measured at the bench: a framed box with `title` and `lead`, and each of `lines` with room to write.

    Under `rooms` each line has as many rooms, and they are named above the first.
    """

    title: str
    lines: tuple[str, ...]
    lead: str = ""
    rooms: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Framed:
    """Blocks in a heavy frame, under a title where it has one: cautions, stops."""

    blocks: tuple["Block", ...]
    title: str = ""


@dataclass(frozen=True, slots=True)
class Table:
    """A table with a head that comes again on each page; no page end parts a row. `wide` numbers the columns that take
    the room that is left, one that stands there twice two shares of it; none: the table is as wide as its words."""

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    wide: tuple[int, ...] = ()


def wide_by(rows: Sequence[Sequence[str]], columns: Iterable[int]) -> tuple[int, ...]:
    """What a table has as `wide`: these columns, each with a share for every 12 letters that it asks for, two at least.

    It asks for what lies half way between its longest cell and the one that a quarter of the cells are longer than: a
    column with one long cell is not made wide at the cost of one with many.

    >>> wide_by([("1", "a dado", "the near wall 4 in from the bottom end")], (1, 2))
    (1, 1, 2, 2, 2, 2)
    """
    return tuple(column for column in columns for _ in range(_shares([len(row[column]) for row in rows])))


def _shares(letters: list[int]) -> int:
    usual = sorted(letters)[3 * (len(letters) - 1) // 4]
    return min(max(-(-(max(letters) + usual) // 24), 2), _MOST_SHARES)


_MOST_SHARES = 8


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with its alternative text, `width` in mm; it is never parted from its title and its words."""

    svg: str
    alt: str
    width: float
    title: str = ""
    level: int = 2
    note: str = ""
    alarms: tuple[str, ...] = ()
    legend: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Beside:
    """Blocks in columns beside one another: alike wide, or as the `parts` say, such as (5, 3)."""

    columns: tuple[tuple["Block", ...], ...]
    parts: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Together:
    """Blocks that no page end parts, but where they are higher than a page; `high` in mm is how high at most, 0 where
    that is left to the template to measure."""

    blocks: tuple["Block", ...]
    high: float = 0.0


@dataclass(frozen=True, slots=True)
class NewPage:
    """A new page, standing or lying; pages that follow lie or stand as it does."""

    lying: bool = False


@dataclass(frozen=True, slots=True)
class NextPart:
    """Where a part begins: on a new page, or on this one where half of it is free; it stands or lies as before."""


@dataclass(frozen=True, slots=True)
class Contents:
    """The headings of level 1, each with its page."""


@dataclass(frozen=True, slots=True)
class WholePage:
    """A page of one drawing in true scale that fills the room inside the margins, its corner at their corner."""

    svg: str
    alt: str
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Label:
    """One label: the name of a board, lines about it, and a small picture with its alternative text; before the lines,
    framed, an `alarm` where there is one."""

    title: str
    lines: tuple[str, ...]
    svg: str
    alt: str
    alarm: str = ""


@dataclass(frozen=True, slots=True)
class Labels:
    """A grid of labels with dashed lines to cut along, each `height` mm high, all higher where the words of one are."""

    cells: tuple[Label, ...]
    columns: int
    height: float


Block = (
    Heading | Words | Bullets | ToTick | ToFillIn | Framed | Table | Picture | Beside | Together | NewPage | NextPart
    | Contents | WholePage | Label | Labels
)


def as_data(blocks: Iterable[Block]) -> list[dict]:
    """The blocks for the template.

    >>> as_data([Words("Dry-fit first."), Framed((Words("Two people lift."),), "Cautions")])[1]["blocks"]
    [{'kind': 'Words', 'text': 'Two people lift.', 'grave': False, 'small': False}]
    """
    return [{"kind": type(block).__name__, **{f.name: _value(getattr(block, f.name)) for f in fields(block)}}
            for block in blocks]


def told(blocks: Iterable[Block]) -> str:
    r"""All that is said in the blocks, a line each; drawings and their alternative texts left out.

    >>> told([Words("Dry-fit first."), Beside(((Bullets(("Two people lift.",)),), (Heading("Parts"),)))])
    'Dry-fit first.\nTwo people lift.\nParts'
    """
    return "\n".join(line for block in blocks for f in fields(block) if f.name not in ("svg", "alt")
                     for line in _lines(getattr(block, f.name)))


def _lines(value: object) -> Iterator[str]:
    if isinstance(value, tuple):
        for each in value:
            yield from _lines(each)
    elif isinstance(value, Block):
        yield told([value])
    elif isinstance(value, str) and value:
        yield value


def _value(value: object) -> object:
    if isinstance(value, tuple):
        return [_value(each) for each in value]
    return as_data([value])[0] if isinstance(value, Block) else value
