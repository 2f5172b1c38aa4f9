"""Many boards or drawers told in a few words: "left and right box side of drawers 1 to 4 in bays 1 and 3"."""

import re
from collections.abc import Callable, Iterable, Sequence

from shoplib.model.board import Board

_NUMBERED = re.compile(r"(?:(.+?) (\d+) )?(.+?)(?: (\d+(?:\.\d+)?))?", re.ASCII | re.DOTALL)
"""A name such as `bay 1 drawer 2`, `divider 1`, `bay 2 pull-out`, `back`."""

_PLURALS = {"dado": "dadoes", "notch": "notches"}


def and_list(words: Sequence[str]) -> str:
    """The words with commas, and `and` before the last; a comma parts it from words that hold an `and`.

    >>> and_list(["top", "bottom", "back"]), and_list(["dividers 1 and 2", "back"])
    ('top, bottom and back', 'dividers 1 and 2, and back')
    """
    if len(words) < 2:
        return "".join(words)
    comma = "," if any(" and " in word for word in words) else ""
    return f"{', '.join(words[:-1])}{comma} and {words[-1]}"


def capital(text: str) -> str:
    """The text with a capital at its beginning, and nothing else of it changed.

    >>> capital("drawer 1 in bays 1 and 2"), capital("No. 8")
    ('Drawer 1 in bays 1 and 2', 'No. 8')
    """
    return f"{text[:1].upper()}{text[1:]}"


def some_of(words: Sequence[str]) -> str:
    """The first three of the words, and how many more there are.

    >>> some_of(["a.svg", "b.svg"]), some_of(["a.svg", "b.svg", "c.svg", "d.svg", "e.svg"])
    ('a.svg and b.svg', 'a.svg, b.svg, c.svg and 2 more')
    """
    return and_list([*words[:3], *([f"{len(words) - 3} more"] if len(words) > 3 else [])])


def plural(noun: str) -> str:
    """More than one of it.

    >>> plural("dado"), plural("box side"), plural("fixed shelf")
    ('dadoes', 'box sides', 'fixed shelves')
    """
    return _PLURALS.get(noun, "shelves".join(noun.rsplit("shelf", 1)) if noun.endswith("shelf") else f"{noun}s")


def _sheets(stock: str) -> str:
    """More than one sheet of a stock; of what is called by its wood, as "ash", there is no more than one."""
    sheet, on_hand, _ = stock.partition(" on hand")
    return f"{f'{sheet}s' if sheet.endswith('sheet') else sheet}{on_hand}"


def stock_in_short(names: Iterable[str]) -> list[str]:
    """Sheets and rough boards by the names that they are laid out under, told together.

    >>> stock_in_short(["box sheet on hand 1", "box sheet on hand 2", "ash 1", "ash on hand 1", "ash on hand 2"])
    ['box sheets on hand 1 and 2', 'ash 1', 'ash on hand 1 and 2']
    """
    return in_short(names, _sheets)


def in_short(names: Iterable[str], many: Callable[[str], str] = plural) -> list[str]:
    """Names that differ only in their numbers, told together, each once; `many` gives the noun of several.

    >>> in_short(["case", "bay 1 drawer 1", "bay 1 drawer 2", "bay 1 drawer 3", "bay 2 pull-out"])
    ['case', 'bay 1 drawers 1 to 3', 'bay 2 pull-out']
    >>> in_short([f"bay {bay} drawer {number}" for bay in (1, 3) for number in (1, 2, 4)])
    ['drawers 1, 2 and 4 in bays 1 and 3']
    """
    found: dict[tuple[str | None, str], dict[str | None, list[str | None]]] = {}
    for name in dict.fromkeys(names):
        outer, place, inner, number = _NUMBERED.fullmatch(name).groups()
        found.setdefault((outer, inner), {}).setdefault(place, []).append(number)
    told = []
    for (outer, inner), places in found.items():
        alike: dict[tuple[str | None, ...], list[str | None]] = {}
        for place, numbers in places.items():
            alike.setdefault(tuple(numbers), []).append(place)
        for numbers, where in alike.items():
            what = inner if numbers == (None,) else _counted(inner, numbers, many)
            if outer is None:
                told.append(what)
            else:
                several = len(where) > 1
                told.append(f"{what} in {_counted(outer, where, many)}" if several else f"{outer} {where[0]} {what}")
    return told


def boards_in_short(boards: Iterable[Board]) -> str:
    """The boards as one phrase: those of the case by name, those of drawers by what they are, then of which.

    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> boards_in_short([Board(f"bay 1 drawer {n} {end} box side", f"bay 1 drawer {n}", 2, "s", 9, 9, 9, place)
    ...                  for n in (1, 2) for end in ("left", "right")])
    'left and right box side of bay 1 drawers 1 and 2'
    """
    parts: dict[str, list[str]] = {}
    told: list[str] = []
    for board in {board.name: board for board in boards}.values():
        if board.group == "case":
            told.append(board.name)
        else:
            parts.setdefault(board.name.removeprefix(f"{board.group} "), []).append(board.group)
    told = in_short(told)
    together: dict[tuple[str, ...], list[str]] = {}
    for part, groups in parts.items():
        together.setdefault(tuple(groups), []).append(part)
    for groups, of_each in together.items():
        what = _without_repeating(of_each)
        told.append(f"{groups[0]} {what}" if len(groups) == 1 else f"{what} of {and_list(in_short(groups))}")
    return and_list(told)


def _counted(noun: str, numbers: Sequence[str], many: Callable[[str], str]) -> str:
    """The noun with its numbers, runs of three and more as a range: "drawers 1 to 3 and 5"."""
    if len(numbers) == 1:
        return f"{noun} {numbers[0]}"
    runs: list[list[str]] = []
    for number in numbers:
        if runs and "." not in number and "." not in runs[-1][-1] and int(number) == int(runs[-1][-1]) + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    told = []
    for run in runs:
        told += [f"{run[0]} to {run[-1]}"] if len(run) > 2 else run
    return f"{many(noun)} {and_list(told)}"


def _without_repeating(parts: Sequence[str]) -> str:
    """Parts that end in the same words, with those words said once: "left and right box side"."""
    words = [part.split() for part in parts]
    same = 0
    while len(words) > 1 and all(len(w) > same + 1 and w[-same - 1] == words[0][-same - 1] for w in words):
        same += 1
    if not same:
        return and_list(parts)
    heads = and_list([" ".join(w[:-same]) for w in words])
    return f"{heads} {' '.join(words[0][-same:])}"
