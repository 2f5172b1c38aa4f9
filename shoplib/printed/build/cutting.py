"""The steps that cut the case: solid wood made ready, boards sawn and trimmed, joints cut setting by setting."""

from collections.abc import Iterable

from shoplib.buying.laid import LaidJob
from shoplib.buying.rough import is_rough
from shoplib.documents.cautions import SLOTS, TOOLS
from shoplib.documents.hardware_page import waste_behind
from shoplib.lists.alike_cuts import NOTCH, POCKET, SCREW_HOLE, AlikeCuts, alike_cuts
from shoplib.lists.cut_list import kinds
from shoplib.lists.dado_stops import channels, stopped_at
from shoplib.lists.writing import Writing
from shoplib.model.board import CASE, Board, BoxCut
from shoplib.model.solved import Cabinet
from shoplib.printed.build.called_for import across_words, template_numbers, templates_called
from shoplib.printed.build.words import SAW_AGAIN
from shoplib.printed.told.on_end import on_end_caution, on_end_ways
from shoplib.printed.told.solid_wood import before_the_saw, planer_caution, solid_sheets, to_size
from shoplib.printed.told.stopped_cuts import SQUARED, stopped_cautions
from shoplib.printed.true_scale.template import PINS
from shoplib.printed.typeset.blocks import Block, Framed, Table, Together, ToTick, Words
from shoplib.words.naming import and_list, boards_in_short, in_short


def solid_wood(cabinet: Cabinet) -> list[Block]:
    """What is done with solid wood before anything is cut of it.

    >>> from shoplib.documents.examples import cabinet_from
    >>> solid_wood(cabinet_from("wheel_wall_drawers"))[0].title
    'At the jointer and the planer'
    """
    own = solid_sheets(cabinet)
    ripped_here = cabinet.project and cabinet.project.cutting.strips_from  # so strips for runners are not bought
    names = [name for name, sheet in cabinet.sheets.items()
             if sheet.kind == "solid" and (name in own or not ripped_here)]
    rough = before_the_saw(cabinet) if own else ()
    return [*([planer_caution(cabinet)] if rough else []), ToTick((
        f"Bring the {and_list(names)} into the shop where the case will be used. Lay it on strips, so that air goes "
        "all round each board, and leave it two weeks or more before you plane it.",
        *rough,
        "Plane all boards of one sheet on the same day, measure their thickness anew, and if it is not what the plan "
        "says, put it into the project and plan again.",
        "Solid wood grows and shrinks across its grain all year. Glue it all over only where the grain of both boards "
        "runs the same way. Where it crosses, as under a runner, drive one screw tight and the others in slots, and "
        "leave the glue out.",
    ))]


def cut_the_case(cabinet: Cabinet, laid: bool = True) -> list[Block]:
    """Saw out and label the boards of stage 1; where none is rough, edge them and cut their joints too.

    `laid`: whether the plan set has the table of joint cuts, which stands behind the sheet layouts.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("small_parts_wall_case")
    >>> [type(block).__name__ for block in cut_the_case(cabinet)]
    ['Framed', 'Framed', 'ToTick', 'Table', 'Together']
    """
    boards = _of_case(cabinet)
    rough = any(is_rough(board, cabinet) for board in boards)
    lines = (
        f"Cut the boards of stage 1 as the sheet layouts say: {boards_in_short(boards)}.",
        "Put its label on each board as it comes off the saw, and mark its reference edge."
        + (" A rough board is trimmed next: write its name on it too, where nothing is cut off." if rough else ""),
    )
    if rough:
        return [_careful(slots=False), ToTick(lines)]
    return _joint_blocks(cabinet, laid, lines)


def trim(cabinet: Cabinet, *jobs: LaidJob) -> list[Block]:
    """Rough boards of the case glued up from their staves and trimmed; `jobs` say which come in staves.

    >>> [type(block).__name__ for block in trim(Cabinet("no boards", (), {}))]
    ['Framed', 'ToTick']
    """
    return [Framed((Words(SAW_AGAIN, grave=True),)), ToTick((
        *to_size(_of_case(cabinet), cabinet, *jobs),
        "Measure each, and hold those of one size against one another: they are alike, or they are trimmed again.",
    ))]


def joints(cabinet: Cabinet, laid: bool = True) -> list[Block]:
    """The boards of stage 1 edged and their joints cut, where they were trimmed first.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> [type(block).__name__ for block in joints(cabinet)]
    ['Framed', 'Framed', 'ToTick', 'Table', 'Together']
    """
    return _joint_blocks(cabinet, laid, ("Put its label on each board that lost it, and mark its reference edge.",))


def _of_case(cabinet: Cabinet) -> list[Board]:
    return [board for board in cabinet.boards if board.stage == CASE]


def _joint_blocks(cabinet: Cabinet, laid: bool, lines: tuple[str, ...]) -> list[Block]:
    boards = _of_case(cabinet)
    table = _settings(boards, cabinet)
    stopped = stopped_cautions(channels(boards))
    alike = [cut for cut in alike_cuts(cabinet) if cut.stage == CASE]
    told = (
        *lines,
        *_sides(boards, _pairs(cabinet)),
        *across_words(cabinet),
        *_before_joints(boards, cabinet),
        *(_set_up(cabinet, laid, bool(stopped)) if table.rows else ()),
        *pocket_lines(boards, cabinet),
    )
    return [
        _careful(bool(table.rows), stopped), *on_end_caution(boards, cabinet), ToTick(told),
        *([table] if table.rows else []), *on_end_ways(boards, cabinet), *alike_table(alike),
    ]


def _careful(slots: bool, stopped: tuple[Words, ...] = ()) -> Framed:
    """The cautions: of every tool, of cuts that do not go through, of cuts that stop."""
    return Framed((Words(TOOLS, grave=True), *([Words(SLOTS)] if slots else []), *stopped))


def _before_joints(boards: Iterable[Board], cabinet: Cabinet) -> list[str]:
    """Holes for pins, which no drill reaches later, and the edging, from which every joint is measured."""
    edged = [board for board in boards if board.edging]
    pins = template_numbers(PINS, cabinet)
    return [
        *([f"Bore the holes for shelf pins from {templates_called(pins)}, before the case is glued."] if pins else []),
        *([f"Glue the edging on {boards_in_short(edged)} now, before the joints: every joint is measured from the "
           "finished edge. Trim it flush."] if edged else []),
    ]


def _set_up(cabinet: Cabinet, laid: bool, stopped: bool) -> tuple[str, ...]:
    """How the settings of the table are gone through."""
    pair = " Wherever the fence or the stop moves, cut that place on both of a mirrored pair first."
    where = " How far each stands from its edge: the joint cuts behind the sheet layouts." if laid else ""
    return (
        f"Try each setting of the table in an offcut of the same sheet first, with the board that goes in.{where}",
        "Cut all that one row names before you change the width or the depth of the cut."
        + (pair if _pairs(cabinet) else ""),
        *((SQUARED,) if stopped else ()),
    )


def _pairs(cabinet: Cabinet) -> tuple[tuple[str, str], ...]:
    """Boards of the case that are mirror images of each other, each pair once."""
    mirrored = [kind for kind in kinds(cabinet) if kind.stage == CASE and kind.mirror_of]
    return tuple(dict.fromkeys(_pair(kind.first, cabinet.by_name[kind.mirror_of]) for kind in mirrored))


def _pair(one: Board, other: Board) -> tuple[str, str]:
    return tuple(sorted((one.name, other.name)))


def _sides(boards: Iterable[Board], pairs: Iterable[tuple[str, str]]) -> list[str]:
    """Which boards are mirror images of each other, and a warning where left and right side are none."""
    lines = [
        f"Lay {and_list(in_short(pair))} beside one another like an open book: they are mirror images."
        for pair in pairs
    ]
    sides = [board for board in boards if board.role == "side"]
    if len(sides) == 2 and _pair(*sides) not in pairs and _marks(sides[0]) != _marks(sides[1]):
        lines.append(
            f"{boards_in_short(sides).capitalize()} are not mirror images here: one has cuts that the other has not. "
            "Mark each by its own drawing before you cut."
        )
    return lines


def _marks(board: Board) -> list[tuple[str, tuple[int, ...]]]:
    """What is cut in a board, whichever way it lies."""
    return sorted((cut.kind, tuple(sorted(cut.box.size))) for cut in board.cuts if isinstance(cut, BoxCut))


def pocket_lines(boards: Iterable[Board], cabinet: Cabinet) -> list[str]:
    """A line to tick for the pockets in these boards that are drilled with one collar; their drawings say where.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> pocket_lines(cabinet.boards, cabinet)[0].partition(":")[0]
    'Drill the pockets of rail 1, 4 in all, with the guide, where its drawing shows them'
    """
    names, lines = {board.name for board in boards}, []
    for cut in alike_cuts(cabinet):
        mine = [board for board in cut.boards if board.name in names]
        if cut.kind == POCKET and mine:
            count = sum(one.kind == "pocket" for board in mine for one in board.cuts)
            whose = "their drawings show" if len(mine) > 1 else "its drawing shows"
            lines.append(f"Drill the pockets of {boards_in_short(mine)}, {count} in all, with the guide, where {whose} "
                         f"them: {cut.mind}.")
    return lines


_BORED = f"Before you bore a board, {waste_behind('it')}."


def alike_table(cuts: Iterable[AlikeCuts]) -> list[Block]:
    """Notches, screw holes and pockets, in the order in which they are cut; nothing where there are none.

    >>> alike_table([])
    []
    """
    cuts = tuple(cuts)
    if not cuts:
        return []
    notched, alike = any(cut.kind == NOTCH for cut in cuts), any(len(cut.boards) > 1 for cut in cuts)
    told = (
        "Then these, marked and cut in one go"
        f"{', boards that share a row laid on one another to compare' if alike else ''}. "
        f"{'Saw a notch on the waste side of its lines and pare to them. ' if notched else ''}"
        f"{_BORED if any(cut.kind == SCREW_HOLE for cut in cuts) else ''}"
    )
    rows = tuple((cut.kind, str(cut.count), boards_in_short(cut.boards), cut.size, cut.place) for cut in cuts)
    table = Table(("cut", "cuts", "boards", "size", "where"), rows, (3, 4) if notched else (4,))
    return [Together((Words(told.strip()), table))]


def _settings(boards: Iterable[Board], cabinet: Cabinet) -> Table:
    """Joint cuts that are cut at one setting: kind, width and depth, then the boards, most boards first.

    Those that stop short of a side are told apart from those that run through.
    """
    write = Writing(cabinet.style)
    found: dict[tuple[str, str, int, int], list[Board]] = {}
    for board, cut in channels(boards):
        u, v, w = cut.box.size
        found.setdefault((cut.kind, stopped_at(board, cut, write), min(u, v), w), []).append(board)
    rows = sorted(found.items(), key=lambda item: -len(item[1]))
    return Table(
        ("cut", "wide", "deep", "cuts", "boards"),
        tuple((f"{kind}, {stop}" if stop else kind, write.measured(wide), write.setting(deep), str(len(of)),
               boards_in_short(of)) for (kind, stop, wide, deep), of in rows),
        (0, 4) if any(stop for _, stop, _, _ in found) else (4,),
    )
