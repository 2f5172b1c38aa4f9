"""The steps at the case between its joints and its glue: finish inside, dry run."""

from collections.abc import Iterable

from shoplib.building.clamps import Clamps
from shoplib.building.glue_faces import GlueFace, glue_faces
from shoplib.building.glue_time import USUAL
from shoplib.buying.brads import dry_backs
from shoplib.documents.cautions import LIFTING
from shoplib.lists.sides import EDGES
from shoplib.lists.writing import Writing
from shoplib.model.board import CASE, Board
from shoplib.model.solved import Cabinet
from shoplib.printed.build.words import clamp_table
from shoplib.printed.typeset.blocks import Block, Framed, Table, ToFillIn, Together, ToTick, Words
from shoplib.words.naming import and_list, boards_in_short, in_short


def finish_inside(cabinet: Cabinet) -> list[Block]:
    """Which faces look inside, and which strips stay bare for the glue.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> [type(block).__name__ for block in finish_inside(cabinet)]
    ['ToTick', 'Together']
    """
    faces = glue_faces(cabinet)
    bare = [b.name for b in cabinet.boards if b.role == "back" and b.name not in {face.board for face in faces}]
    dry = dry_backs(cabinet)
    floats = [name for name in bare if name not in dry]
    lines = [
        f"These look inside: {_inside(cabinet)}. Their finish is easy now and hard later.",
        "Mask the glue faces of the table with tape: glue does not hold on finish. Press the tape down along the line, "
        "and pull it off while the last coat is still soft.",
        "Give both faces of a thin or loose board the same coats, or it bows.",
    ]
    if floats:
        lines.append(f"Nothing is masked for {and_list(floats)}: it floats in its grooves. Keep finish out of them.")
    if dry:
        lines.append(f"Nothing is masked for {and_list(dry)}: it is screwed on without glue. Finish its edges too.")
    table = _masks(faces, cabinet)
    if not table.rows:
        return [ToTick(tuple(lines))]
    return [ToTick(tuple(lines)), Together((Words("Leave bare for the glue:"), table))]


def _inside(cabinet: Cabinet) -> str:
    """The faces that look inside, by the roles that this case has."""
    roles = {board.role for board in cabinet.groups.get("case", ()) if board.stage == CASE}
    told = [words for role, words in (
        ("side", "the inside faces of the sides"), ("bottom", "the upper face of the bottom"),
        ("top", "the underside of the top"), ("stretcher", "the stretchers all round"),
        ("divider", "both faces of the dividers"), ("fixed shelf", "both faces of the fixed shelves"),
        ("loose shelf", "both faces of the loose shelves"), ("back", "the front face of the back"),
        ("rail", "the front face of the rail"),
    ) if role in roles]
    return and_list(told)


def _masks(faces: Iterable[GlueFace], cabinet: Cabinet) -> Table:
    """A row for each board and kind of glue face; boards that are masked alike share it."""
    write = Writing(cabinet.style)
    of_board: dict[str, dict[tuple[str, int], list[GlueFace]]] = {}
    for face in faces:
        of_board.setdefault(face.board, {}).setdefault((face.what, face.strip), []).append(face)
    rows: dict[tuple[str, str], list[str]] = {}
    for name, of_kind in of_board.items():
        for (what, strip), several in of_kind.items():
            wide = write.setting(strip) if strip else "all of it"
            rows.setdefault((_place(what, several, cabinet.by_name[name]), wide), []).append(name)
    return Table(
        ("board", "glue face", "strip"),
        tuple((boards_in_short(cabinet.by_name[name] for name in names), place, wide)
              for (place, wide), names in rows.items()),
        (1,),
    )


def _place(what: str, faces: list[GlueFace], board: Board) -> str:
    ends = _ends(faces, board)
    others = and_list(in_short(dict.fromkeys(face.to for face in faces)))
    return {
        "faces": f"along the {ends}, on both faces",
        "face": f"along the {ends}, on the face that looks inside",
        "end": f"the {ends} itself",
        "fingers": f"between the fingers for {others}",
        "cut": f"in the cut{'s' if len(faces) > 1 else ''} for {others}",
        "spot": f"where {others} lie{'' if len(faces) > 1 else 's'} against it",
    }[what]


def _ends(faces: list[GlueFace], board: Board) -> str:
    """The sides where the strips lie, such as "left and right end, and bottom edge"."""
    looks: dict[str, list[str]] = {}
    for end in dict.fromkeys(face.end for face in faces if face.end):
        noun = ("end", "edge", "face")[board.placement.own_axis(EDGES[end][0])]
        looks.setdefault(noun, []).append(end)
    return and_list([f"{and_list(ways)} {noun}" for noun, ways in looks.items()])


def dry_run(cabinet: Cabinet, goes: list[tuple[str, tuple[Clamps, ...]]]) -> list[Block]:
    """The whole case once without glue, with its clamps, against the clock.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> [type(block).__name__ for block in dry_run(cabinet, [])]
    ['Framed', 'ToTick', 'ToFillIn']
    """
    others = ("back", "loose shelf", "plinth")
    stiff = [board for board in cabinet.boards if board.stage == CASE and board.role not in others]
    longest = max(stiff, key=lambda board: board.length)
    back = ", its back in place" if any(board.role == "back" for board in cabinet.boards) else ""
    blocks: list[Block] = [
        Framed((Words(LIFTING, grave=True),)),
        ToTick((
            "Lay out on the bench all that the glue-up needs: clamps, cauls, glue, brush, damp rag, tape, mallet with "
            "a block, paper to catch drips.",
            f"Put the case together without glue, in the order of the next steps, clamps and all{back}. Every joint "
            "must close under hand pressure or a light tap. One that does not is mended now.",
            "Measure the diagonals. Look along the front edges: they lie in one plane.",
            "A bowed board is pulled straight by its joint: lay a caul, a straight stiff batten, over it on both "
            "faces, tighten the clamp in the middle first, and go on from the middle out. The longest board is "
            f"{longest.name}: try it here. What hand-tight clamps do not straighten is cut anew.",
            "Do it again, and take the time.",
        )),
        _CLOCK,
    ]
    table = clamp_table(goes, cabinet)
    if table.rows:
        blocks += [Words(_CLAMPS), table]
    elif goes:
        blocks.append(Words("Pocket screws draw these joints together: two clamps that hold a corner while you drive "
                            "them are enough."))
    return blocks


_CLOCK = ToFillIn(
    "The clock", ("The dry run of the longest glue-up took (minutes):", "Open time on the label of your glue:"),
    f"Counted here: {USUAL.a_joint} minute a joint and {USUAL.clamping} minutes for clamps and diagonals, in an open "
    f"time of {USUAL.open_time} minutes, so up to {USUAL.joints} joints in one glue-up (common practice, no source). "
    "The label of your glue decides. Is your glue faster, or the dry run slower? Glue fewer boards at once and set the "
    "rest on dry, or take a glue that stays open longer.",
)

_CLAMPS = (
    "Clamps, by number and reach: the reach is the size over the boards with a caul under each jaw and a little play; "
    "take the next length that is sold (lengths from memory). Where you have fewer, stiff cauls spread the pressure."
)
