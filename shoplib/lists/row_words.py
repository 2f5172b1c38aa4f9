"""One row of the cut list in words: its cuts, its edging, and where its boards go."""

from shoplib.lists.cut_list import Kind
from shoplib.lists.cut_words import cut_words
from shoplib.lists.writing import Writing
from shoplib.model.board import Edge
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short, plural

_CUTS_FOR = {
    "dado": "dadoed into",
    "rabbet": "rabbeted into",
    "groove": "grooved into",
    "tongue": "tongued into",
    "finger": "fingered into",
    "drawer lock": "locked into",
    "pocket screws": "pocket-screwed to",
}


def where_words(kind: Kind, cabinet: Cabinet) -> str:
    """The groups that the boards belong to, and what they enter: "case, dadoed into left side"."""
    groups = and_list(in_short(dict.fromkeys(board.group for board in kind.boards)))
    return ", ".join(part for part in (groups, joined_words(kind, cabinet)) if part)


def joined_words(kind: Kind, cabinet: Cabinet) -> str:
    """What the boards enter: "dadoed into bottom and top"; empty where they enter nothing.

    A single board of the case is told by the names of what it enters, others by what those boards do.
    """
    names = set(kind.names)
    by_name = kind.count == 1 and kind.first.group == "case"
    entered: dict[str, dict[str, set[str]]] = {}
    for joint in cabinet.joints:
        if joint.enters in names:
            receiver = cabinet.by_name[joint.receives]
            what = receiver.name if by_name else (receiver.role or receiver.name)
            entered.setdefault(_CUTS_FOR.get(joint.kind, "against"), {}).setdefault(what, set()).add(receiver.name)
    return ", ".join(
        f"{how} {and_list([plural(what) if len(boards) > 1 else what for what, boards in receivers.items()])}"
        for how, receivers in entered.items()
    )


def kind_cut_words(kind: Kind, cabinet: Cabinet, writing: Writing) -> tuple[str, ...]:
    """The cuts in the boards of this kind, told of its first board.

    Where the same cuts bear other names on another board, because that one stands turned in the
    cabinet, the last phrase says that the first is meant.
    """
    words = cut_words(kind.first, cabinet, writing)
    if any(cut_words(board, cabinet, writing) != words for board in kind.boards[1:]):
        return (*words, "(sides named as on the first of them)")
    return words


def edging_words(kind: Kind, writing: Writing) -> str:
    """Which edges are covered, by what and how thick, edges that are covered alike together; empty where none is.

    The thickness is the edging's, measured as a sheet's is.
    """
    alike: dict[Edge, list[str]] = {}
    for edge, strip in kind.first.edging:
        alike.setdefault(strip, []).append(edge)
    return ", ".join(
        f"{strip.kind} {writing.measured(strip.thickness)} on the {and_list(edges)} edge{'s' * (len(edges) > 1)}"
        for strip, edges in alike.items()
    )
