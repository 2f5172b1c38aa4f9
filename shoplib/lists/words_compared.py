"""The words of a typed row besides its cuts and edging (stage, sheet, grain), and lengths in words not read."""

import re

from shoplib.lists.typed import TypedRow
from shoplib.measure import LengthError, read_length
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

_LENGTH = re.compile(
    r"\d+(?:[ -]\d+/\d+|/\d+|[.,]\d+)?\s*(?:mm|cm|inch|in|\")?(?:\s*\([+-][\d.,]+\s*(?:in|mm)\))?",
    re.IGNORECASE,
)
_GRAIN = {
    "length": "length, l, long, lengthwise, lengthways, along, along the length, with the length",
    "width": "width, w, across, crosswise, widthwise, widthways, across the width, along the width",
    "none": "none, no, any, either, free, -",
}
_GRAIN_WORDS = {word: grain for grain, words in _GRAIN.items() for word in words.split(", ")}


def grain_of(text: str) -> str | None:
    """`length`, `width` or `none`; None where the word is not known.

    >>> grain_of("Lengthwise"), grain_of("across"), grain_of("up and down")
    ('length', 'width', None)
    """
    return _GRAIN_WORDS.get(_plain(text))


def words_off(row: TypedRow, board: Board, name: str) -> list[str]:
    """A sentence for each of stage, sheet and grain that contradicts the plan of this board.

    A list that lets the grain run along the length where the plan leaves it free is right as well.
    """
    found = []
    if row.stage is not None and row.stage != board.stage:
        found.append(f"{name}: stage {row.stage}, planned {board.stage}.")
    if row.sheet and _plain(row.sheet) != _plain(board.sheet):
        found.append(f"{name}: sheet {row.sheet}, planned {board.sheet}.")
    grain = grain_of(row.grain)
    if grain == "width" and board.grain == "length":
        found.append(f"{name}: grain {row.grain}, planned along the length; the board would have its grain across.")
    elif grain == "none" and board.grain == "length":
        found.append(f"{name}: grain {row.grain}, planned along the length; laid out freely it may come out across.")
    return found


def lengths_off(what: str, typed: str, planned: str, cabinet: Cabinet) -> str:
    """For words that are not read: which of their lengths the planned words do not have; empty where none."""
    known = [ticks for _, ticks in _lengths(planned, cabinet)]
    near = cabinet.style.step // 2
    odd = [text for text, ticks in _lengths(typed, cabinet) if all(abs(ticks - k) > near for k in known)]
    return f"{what} say {', '.join(odd)}, which the plan does not; planned: {planned or 'none'}" if odd else ""


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()


def _lengths(text: str, cabinet: Cabinet) -> list[tuple[str, int]]:
    """The lengths in a text; a number without a unit is in the project's."""
    found = []
    for match in _LENGTH.finditer(text):
        try:
            found.append((match[0].strip(), read_length(match[0].strip(), unit=cabinet.style.unit, zero=True)))
        except LengthError:
            continue  # not a length at all, such as a fraction in sevenths
    return found
