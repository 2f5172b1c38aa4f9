"""The words of a typed row (sheet, stage, edging, cuts) held against the plan.

A cell in the plan's own words (one of its phrases stands there unchanged, or "none") is compared phrase by
phrase: what is missing and what is new is told. People who word cuts in their own way are held to the
lengths: one that is nowhere in the plan's words is told. A cell without lengths is not judged.
"""

import re

from shoplib.lists.cut_list import Kind
from shoplib.lists.row_words import edging_words, kind_cut_words
from shoplib.lists.typed import TypedRow
from shoplib.lists.writing import Writing
from shoplib.measure import LengthError, read_length
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

_LENGTH = re.compile(
    r"\d+(?:[ -]\d+/\d+|/\d+|[.,]\d+)?\s*(?:mm|cm|inch|in|\")?(?:\s*\([+-][\d.]+\s*(?:in|mm)\))?",
    re.IGNORECASE,
)


def words_off(row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet) -> list[str]:
    """A sentence for each of the row's words that contradicts the plan of these boards (at least one)."""
    found = []
    name, board, kind = row.names[0], boards[0], Kind(boards)
    exact = Writing(cabinet.style, exact=True)
    if row.stage is not None and row.stage != board.stage:
        found.append(f"{name}: stage {row.stage}, planned {board.stage}.")
    if row.sheet and _plain(row.sheet) != _plain(board.sheet):
        found.append(f"{name}: sheet {row.sheet}, planned {board.sheet}.")
    for what, typed, planned in (
        ("edging", row.edging, edging_words(kind, exact)),
        ("cuts", row.cuts, "; ".join(kind_cut_words(kind, cabinet, exact))),
    ):
        odd = _lengths_not_in(typed, planned, cabinet)
        changed = _phrases_off(typed, planned)
        if changed:
            found.append(f"{name}: {what} {'; '.join(changed)}.")
        elif odd:
            found.append(f"{name}: {what} say {', '.join(odd)}, which the plan does not; planned: {planned or 'none'}.")
    return found


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()


def _phrases_off(typed: str, planned: str) -> list[str]:
    """What a cell in the plan's own words leaves out or adds; nothing where it is in other words."""
    meant = {_plain(phrase): phrase.strip() for phrase in planned.split(";") if phrase.strip()}
    said = {_plain(phrase): phrase.strip() for phrase in typed.split(";") if phrase.strip()}
    own_words = said.keys() & meant.keys() or (meant and said.keys() == {"none"})
    if not own_words:
        return []
    missing = [f"leave out {meant[key]}" for key in meant if key not in said]
    return missing + [f"add {said[key]}" for key in said if key not in meant and key != "none"]


def _lengths_not_in(typed: str, planned: str, cabinet: Cabinet) -> list[str]:
    if not typed or _plain(typed) == _plain(planned):
        return []
    known = [ticks for _, ticks in _lengths(planned, cabinet)]
    near = cabinet.style.step // 2
    return [text for text, ticks in _lengths(typed, cabinet) if all(abs(ticks - k) > near for k in known)]


def _lengths(text: str, cabinet: Cabinet) -> list[tuple[str, int]]:
    """The lengths in a text; a number without a unit is in the project's."""
    found = []
    for match in _LENGTH.finditer(text):
        try:
            found.append((match[0].strip(), read_length(match[0].strip(), unit=cabinet.style.unit, zero=True)))
        except LengthError:
            continue  # not a length at all, such as a fraction in sevenths
    return found
