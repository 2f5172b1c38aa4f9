"""What of a typed list could be compared with the plan, and what could not: a list that agrees agrees in that."""

from dataclasses import dataclass
from typing import Self

from shoplib.lists.typed import TypedRow
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list

_PARTS = ("thickness", "sheet", "cuts", "edging", "grain")
"""What a list need not say; lengths, widths and names it must."""

_MOST = 6
"""Lines that are named; beyond that, how many."""


Unread = tuple[str, int, str]
"""A part, the line, and its text, which is in words that are not read."""


@dataclass(frozen=True, slots=True)
class What:
    """Which parts some line says in words that are read, and what is in words that are not."""

    parts: tuple[str, ...]
    unread: tuple[Unread, ...] = ()

    @classmethod
    def of(cls, rows: tuple[TypedRow, ...], unread: tuple[Unread, ...], cabinet: Cabinet) -> Self:
        """A part of which nothing was read was not compared, but a list is right to be silent of what is not there."""
        odd = {(part, line) for part, line, _ in unread}
        read = {part for part in _PARTS for row in rows if getattr(row, part) and (part, row.line) not in odd}
        read |= {part for part in ("cuts", "edging") if not any(getattr(board, part) for board in cabinet.boards)}
        return cls(tuple(part for part in _PARTS if part in read), unread)

    @property
    def whole(self) -> bool:
        """True where every part was compared."""
        return set(self.parts) == set(_PARTS) and not self.unread

    def told(self) -> list[str]:
        """Two sentences at most: what was compared, what was not.

        >>> What(("cuts",), (("cuts", 3, "as usual"),)).told()[0]
        'Compared: names, lengths, widths and cuts.'
        >>> print(What(("cuts",), (("cuts", 3, "as usual"),)).told()[1])
        Not compared: thickness, sheet, edging and grain, which the list does not say; cuts in line 3 (`as usual` is \
not read).
        """
        sizes = ["names", "lengths", "widths"]
        told = [f"Compared: {and_list([*sizes, *self.parts])}."]
        unread = {part for part, _, _ in self.unread}
        silent = [part for part in _PARTS if part not in self.parts and part not in unread]
        missing = [f"{and_list(silent)}, which the list does not say"] if silent else []
        for part in sorted(unread, key=_PARTS.index):
            lines = list(dict.fromkeys(line for one, line, _ in self.unread if one == part))
            text = next(text for one, _, text in self.unread if one == part)
            missing.append(f"{part} in {_lines(lines)} (`{_short(text)}` is not read)")
        return [*told, f"Not compared: {'; '.join(missing)}."] if missing else told


def parts_said(rows: tuple[TypedRow, ...]) -> tuple[str, ...]:
    """Which of the parts any row says: in the other rows an empty cell then means none."""
    return tuple(part for part in _PARTS if any(getattr(row, part) for row in rows))


def _lines(lines: list[int]) -> str:
    if len(lines) > _MOST:
        return f"{len(lines)} lines"
    return f"line{'s' * (len(lines) > 1)} {and_list([str(line) for line in lines])}"


def _short(text: str) -> str:
    return text if len(text) <= 60 else f"{text[:60]}..."
