"""The road of solid wood from rough boards to finished ones: what is done before the saw cuts, and after them.

All of it is common practice, no source; the manuals of jointer and planer decide what they take.
"""

from collections.abc import Callable, Iterable, Iterator

from shoplib.buying.board_words import BEFORE_CUTTING, glue_ups, rough_sizes
from shoplib.buying.laid import LaidJob
from shoplib.buying.rough import is_rough, ripped_whole
from shoplib.documents.cut_order_words import rough_cautions
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Block, Bullets, Framed
from shoplib.words.naming import and_list, boards_in_short, capital


def solid_sheets(cabinet: Cabinet) -> tuple[str, ...]:
    """The sheets of the project that are rough boards of solid wood.

    >>> solid_sheets(Cabinet("no boards", (), {}))
    ()
    """
    project = cabinet.project
    return tuple(name for name, sheet in project.sheets.items() if sheet.kind == "solid") if project else ()


def rough_boards(boards: Iterable[Board], cabinet: Cabinet) -> list[Board]:
    """Those that leave the saw larger than finished; strips are ripped to their size at once.

    >>> rough_boards([], Cabinet("no boards", (), {}))
    []
    """
    return [board for board in boards if is_rough(board, cabinet)]


def planer_caution(cabinet: Cabinet) -> Block:
    """The cautions for flattening and planing, in a frame.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> planer_caution(cabinet).title
    'At the jointer and the planer'
    """
    return Framed((Bullets(rough_cautions(cabinet)),), "At the jointer and the planer")


def before_the_saw(cabinet: Cabinet) -> tuple[str, ...]:
    """What is done with rough boards while they are long: flat, to thickness, one edge straight.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> before_the_saw(cabinet)[2][:44]
    'Before the first saw cut, each board whole: '
    """
    solid = solid_sheets(cabinet)
    write = Writing(cabinet.style)
    thick = and_list([f"{name} to {write.setting(cabinet.project.sheets[name].thickness)}" for name in solid])
    flat, eyes, short = BEFORE_CUTTING
    return (
        f"{rough_sizes(cabinet.project.cutting, cabinet.style)} The cut list has the finished sizes, the sheet layouts "
        "the rough ones. Strips are only longer.",
        f"{eyes} {flat}",
        "Before the first saw cut, each board whole: flatten one face at the jointer, or with a hand plane where the "
        f"board is wider than it; plane the other face until the board is as thick as the plan says ({thick}); "
        "joint one edge straight and square.",
        f"{short} Where a long board is too bowed to be planed whole, crosscut it first at a line between two parts, "
        "each piece longer than the manual asks.",
        "Only then make the saw cuts of the sheet layouts. The jointed edge runs along the fence, and is jointed anew "
        "where a rip shows that the board has moved. A rough edge never runs along the fence.",
    )


def to_size(boards: Iterable[Board], cabinet: Cabinet, *jobs: LaidJob) -> tuple[str, ...]:
    """What is done with rough boards off the saw, before they are edged and jointed; nothing where none are.

    `jobs` are those that the boards are laid out in, which say what comes in staves.

    >>> to_size([], Cabinet("no boards", (), {}))
    ()
    """
    rough = rough_boards(boards, cabinet)
    return (*_staves(rough, cabinet, jobs), *_trimmed(rough, cabinet)) if rough else ()


def _staves(rough: list[Board], cabinet: Cabinet, jobs: tuple[LaidJob, ...]) -> tuple[str, ...]:
    if not jobs:
        return ("A board for which your boards are too narrow is glued up from staves before it is trimmed.",)
    names, jointing = {board.name for board in rough}, cabinet.project.cutting.jointing
    staved = [
        line for job in jobs if names & {board.name for boards in job.ask.boards for board in boards}
        for line in glue_ups(job.ask, jointing, cabinet.style)
    ]
    if not staved:
        return ()
    return (
        *(capital(line) for line in staved),
        "Staves: joint the edges that meet, lay the grain all one way, try them dry without a gap, glue and clamp flat."
        " Scrape the glue off when it is dry, and plane the panel flat by hand, or in a planer that takes its width.",
    )


def _trimmed(rough: list[Board], cabinet: Cabinet) -> tuple[str, ...]:
    """How they are trimmed, and then a line for each size; what is short got its width while it was part of more."""
    write, short = Writing(cabinet.style).length, [board for board in rough if _has_width(board, cabinet)]
    long = [board for board in rough if board not in short]
    return (
        *((
            "They are rough still. Trim them to the finished sizes of the cut list, length x width: joint one edge, "
            "rip to width with that edge along the fence, crosscut one end square, then the other with the first "
            "against a stop. All that are equally wide, or equally long, at one setting.",
            *_to_sizes(long, lambda board: f"{write(board.cut_size[0])} x {write(board.cut_size[1])}"),
        ) if long else ()),
        *((
            "Too short for jointer and fence: these have their width from the longer piece that they were ripped in, "
            "and are only crosscut, on a sled or a mitre gauge with a stop, never along the fence. Where one is still "
            "wider, or its edge is not true, plane it by hand to a line.",
            *_to_sizes(short, lambda board: f"{write(board.cut_size[0])} long, {write(board.cut_size[1])} wide by now"),
        ) if short else ()),
    )


def _has_width(board: Board, cabinet: Cabinet) -> bool:
    length = board.cut_size[0] + cabinet.project.cutting.rough_length
    return ripped_whole(board, cabinet.sheets[board.sheet], length, cabinet.style)


def _to_sizes(boards: list[Board], told: Callable[[Board], str]) -> Iterator[str]:
    sizes: dict[str, list[Board]] = {}
    for board in boards:
        sizes.setdefault(told(board), []).append(board)
    return (f"{capital(boards_in_short(some))}: to {size}." for size, some in sizes.items())
