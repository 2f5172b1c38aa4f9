"""The short names of several boards read back: `left and right box side of drawers 1 to 4 in bays 1 and 3`.

This undoes `boards_in_short` and `all_of`. A phrase is read only where every name that it comes to is a board's.
"""

import re
from collections.abc import Iterable

from shoplib.model.board import Board
from shoplib.words.naming import plural

_NUMBER = r"\d+(?:\.\d+)?"
_NUMBERS = rf"{_NUMBER}(?:(?:, and |, | and | to ){_NUMBER})*"
_BETWEEN = re.compile(r"(?:, and |, | and )(?!\d)")
"""What parts two names; between two numbers it parts the numbers of one name."""

_IN_SEVERAL = re.compile(rf"(.+) in (\S+) ({_NUMBERS})")
_NUMBERED = re.compile(rf"(.+?) ({_NUMBERS})")
_ALL_OF_A_ROLE = re.compile(r"both (.+)|all (\d{1,4}) (.+)")
_WHOLE = re.compile(r"\d{1,4}")

_MOST = 60
"""Names in one phrase; no row of a plan takes so many."""

_LONGEST = 2000
"""Signs of a phrase that is read; all the boards of a large case take half of that."""

_MOST_NUMBERS = 100
"""Numbers that a run comes to; no case has so many drawers in a bay."""


class Names:
    """The names that the boards of a cabinet may be told by."""

    def __init__(self, boards: Iterable[Board]) -> None:
        self._boards: dict[str, str] = {}
        self._groups: set[str] = set()
        self._roles: dict[str, list[str]] = {}
        for board in boards:
            name = plain(board.name)
            self._boards[name] = board.name
            self._groups.add(plain(board.group))
            self._roles.setdefault(plain(plural(board.role or board.name)), []).append(name)

    def read(self, phrase: str) -> tuple[str, ...] | None:
        """The boards by their own names, in the order told; None where the phrase names anything else.

        >>> from shoplib.model.placement import Placement
        >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
        >>> names = Names(Board(f"divider {n}", "case", 1, "s", 9, 9, 9, place) for n in (1, 2, 3))
        >>> names.read("Dividers 1 and 3"), names.read("dividers 1 to 4")
        (('divider 1', 'divider 3'), None)
        """
        if len(phrase) > _LONGEST:
            return None
        text = plain(phrase)
        between = list(_BETWEEN.finditer(text))
        if len(between) >= _MOST:
            return None
        starts = [0, *(one.end() for one in between)]
        stops = [*(one.start() for one in between), len(text)]
        # A comma parts names rather than an `and` alone, which may also stand between two parts of one drawer.
        by_comma = [True, *("," in one[0] for one in between)]
        # So far[n]: the boards that the first n names come to.
        so_far: list[list[str] | None] = [[], *([None] * len(stops))]
        for until, stop in enumerate(stops, 1):
            for first in sorted(range(until), key=lambda at: not by_comma[at]):
                before = so_far[first]
                several = None if before is None else self._several(text[starts[first] : stop])
                if several:
                    so_far[until] = [*before, *several]
                    break
        read = so_far[-1]
        return None if read is None else tuple(self._boards[name] for name in read)

    def _several(self, text: str) -> list[str] | None:
        """Boards told in one: by their role, by number, or as parts of groups. None, or empty, where it tells none."""
        every = _ALL_OF_A_ROLE.fullmatch(text)
        if every:
            of_role = self._roles.get(every[1] or every[3], [])
            return of_role if len(of_role) == int(every[2] or 2) else None
        names = _spelt_out(text)
        if all(name in self._boards for name in names):
            return names
        what, of, whose = text.partition(" of ")
        if of:
            groups: list[str] = []
            for one in _BETWEEN.split(whose):
                some = _spelt_out(one)
                if not self._groups.issuperset(some):
                    return None
                groups += some
            return self._parts(what, groups)
        return next(
            (
                parts
                for group in self._groups
                if text.startswith(f"{group} ") and (parts := self._parts(text.removeprefix(f"{group} "), [group]))
            ),
            None,
        )

    def _parts(self, what: str, groups: list[str]) -> list[str] | None:
        """These parts of each of the groups; the first ones may leave their last words to the last one."""
        # A comma before the `and` would part two phrases, not two parts of one.
        *before, last = what.rsplit(" and ", 1)
        heads = before[0].split(", ") if before else []
        words = last.split()
        for shared in range(len(words)):
            tail = words[len(words) - shared :]
            parts = [*(" ".join([head, *tail]) for head in heads), last]
            names = [f"{group} {part}" for part in parts for group in groups]
            if all(name in self._boards for name in names):
                return names
        return None


def plain(name: str) -> str:
    """The name with single spaces, in small letters."""
    return " ".join(name.split()).casefold()


def _spelt_out(text: str) -> list[str]:
    """Each name of a run of numbers: "dividers 1 to 3", "drawers 1 and 2 in bays 1 and 3"; else the text itself."""
    several = _IN_SEVERAL.fullmatch(text)
    if several and _singular(several[2]):
        inner, outer = _numbered(several[1]), _singular(several[2])
        return [f"{outer} {number} {name}" for number in _each(several[3]) for name in inner]
    return _numbered(text)


def _numbered(text: str) -> list[str]:
    numbered = _NUMBERED.fullmatch(text)
    numbers = _each(numbered[2]) if numbered else []
    if len(numbers) > 1 and _singular(numbered[1]):
        return [f"{_singular(numbered[1])} {number}" for number in numbers]
    return [text]


def _each(numbers: str) -> list[str]:
    """Every number of "1 to 3 and 5"; none of more than a hundred.

    >>> _each("1 to 3 and 5"), _each("1 to 99999999"), _each("3 to 1")
    (['1', '2', '3', '5'], [], [])
    """
    found = []
    for run in re.split(r", and |, | and ", numbers):
        first, _, last = run.partition(" to ")
        if not last:
            found.append(run)
        elif _WHOLE.fullmatch(first) and _WHOLE.fullmatch(last):
            found += [str(number) for number in range(int(first), int(last) + 1)]
        if len(found) > _MOST_NUMBERS:
            return []
    return found


def _singular(noun: str) -> str:
    """The noun of which this is the plural; empty where it is none."""
    one = f"{noun.removesuffix('shelves')}shelf" if noun.endswith("shelves") else noun.removesuffix("s")
    return one if plural(one) == noun else ""
