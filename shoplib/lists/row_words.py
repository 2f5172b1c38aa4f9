"""One row of the cut list in words: its cuts, its edging, and where its boards go."""

import re

from shoplib.lists.cut_list import Kind
from shoplib.lists.cut_words import and_list, cut_words, plural
from shoplib.measure import write_length
from shoplib.model.solved import Cabinet

_CUTS_FOR = {
    "dado": "dadoed into",
    "rabbet": "rabbeted into",
    "groove": "grooved into",
    "tongue": "tongued into",
}


def where_words(kind: Kind, cabinet: Cabinet) -> str:
    """The groups that the boards belong to, and what they enter: "case, dadoed into left side".

    A single board is told by the names of what it enters, several by what those boards do.
    """
    groups = and_list(ranges(tuple(dict.fromkeys(board.group for board in kind.boards))))
    names = set(kind.names)
    entered: dict[str, dict[str, set[str]]] = {}
    for joint in cabinet.joints:
        if joint.enters in names:
            receiver = cabinet.by_name[joint.receives]
            what = receiver.name if kind.count == 1 else (receiver.role or receiver.name)
            entered.setdefault(_CUTS_FOR.get(joint.kind, "against"), {}).setdefault(what, set()).add(receiver.name)
    parts = [
        f"{how} {and_list([plural(what) if len(boards) > 1 else what for what, boards in receivers.items()])}"
        for how, receivers in entered.items()
    ]
    return ", ".join([groups, *parts])


def kind_cut_words(kind: Kind, cabinet: Cabinet) -> tuple[str, ...]:
    """The cuts in the boards of this kind, told of its first board.

    Where the same cuts bear other names on another board, because that one stands turned in the
    cabinet, the last phrase says that the first is meant.
    """
    words = cut_words(kind.first, cabinet)
    if any(cut_words(board, cabinet) != words for board in kind.boards[1:]):
        return (*words, "(sides named as on the first of them)")
    return words


def edging_words(kind: Kind, cabinet: Cabinet) -> str:
    """Which edges are covered, by what and how thick; empty where none is."""
    return ", ".join(
        f"{edge} edge {strip.kind} {write_length(strip.thickness, cabinet.style)}" for edge, strip in kind.first.edging
    )


def ranges(names: tuple[str, ...]) -> list[str]:
    """Names that end in numbers one after another, told as a range.

    >>> ranges(("case", "bay 1 drawer 1", "bay 1 drawer 2", "bay 1 drawer 3", "bay 2 drawer 1"))
    ['case', 'bay 1 drawers 1 to 3', 'bay 2 drawer 1']
    """
    runs: list[tuple[str, int, int] | str] = []
    for name in names:
        match = re.fullmatch(r"(.*\D)(\d+)", name)
        if match is None:
            runs.append(name)
            continue
        stem, number = match[1], int(match[2])
        if runs and isinstance(runs[-1], tuple) and runs[-1][0] == stem and runs[-1][2] == number - 1:
            runs[-1] = (stem, runs[-1][1], number)
        else:
            runs.append((stem, number, number))
    return [run if isinstance(run, str) else _range(*run) for run in runs]


def _range(stem: str, first: int, last: int) -> str:
    if first == last:
        return f"{stem}{first}"
    return f"{plural(stem.rstrip())} {first} {'to' if last - first > 1 else 'and'} {last}"
