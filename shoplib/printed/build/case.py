"""The steps at the case until it is glued: wood, joints, finish inside, dry run."""

from collections.abc import Iterable

from shoplib.building.clamps import Clamps
from shoplib.building.glue_faces import GlueFace, glue_faces
from shoplib.building.glue_time import USUAL
from shoplib.buying.laid import LaidJob
from shoplib.documents.cautions import LIFTING, SLOTS, TOOLS
from shoplib.lists.alike_cuts import AlikeCuts, alike_cuts
from shoplib.lists.cut_list import kinds
from shoplib.lists.cut_words import channel_ways
from shoplib.lists.dado_stops import stopped_at
from shoplib.lists.sides import EDGES
from shoplib.lists.writing import Writing
from shoplib.model.board import CASE, Board, BoxCut
from shoplib.model.solved import Cabinet
from shoplib.printed.build.called_for import PINS, across_words, template_called
from shoplib.printed.build.words import clamp_table
from shoplib.printed.told.solid_wood import before_the_saw, planer_caution, solid_sheets, to_size
from shoplib.printed.typeset.blocks import Block, Framed, Table, ToFillIn, Together, ToTick, Words
from shoplib.tables.setups import cautions
from shoplib.words.naming import and_list, boards_in_short, in_short


def solid_wood(cabinet: Cabinet) -> list[Block]:
    """What is done with solid wood before anything is cut of it."""
    names = [name for name, sheet in cabinet.sheets.items() if sheet.kind == "solid"]
    rough = before_the_saw(cabinet) if solid_sheets(cabinet) else ()
    return [*([planer_caution()] if rough else []), ToTick((
        f"Bring the {and_list(names)} into the shop where the case will be used. Lay it on strips, so that air goes "
        "all round each board, and leave it two weeks or more before you plane it.",
        *rough,
        "Plane all boards of one sheet on the same day, measure their thickness anew, and if it is not what the plan "
        "says, put it into the project and plan again.",
        "Solid wood grows and shrinks across its grain all year. Glue it all over only where the grain of both boards "
        "runs the same way. Where it crosses, as under a runner, drive one screw tight and the others in slots, and "
        "leave the glue out.",
    ))]


def cut_the_case(cabinet: Cabinet, *jobs: LaidJob) -> list[Block]:
    """Cut, name and edge the boards of stage 1, then cut the joints setting by setting.

    `jobs` are those of the layout, which say what is glued up from staves.
    """
    boards = [board for board in cabinet.boards if board.stage == CASE]
    edged = [board for board in boards if board.edging]
    slots, alike = _settings(boards, cabinet), [cut for cut in alike_cuts(cabinet) if cut.stage == CASE]
    mirrored = [kind for kind in kinds(cabinet) if kind.stage == CASE and kind.mirror_of]
    pairs = tuple(dict.fromkeys(_pair(kind.first, cabinet.by_name[kind.mirror_of]) for kind in mirrored))
    lines = [
        f"Cut the boards of stage 1 as the sheet layouts say: {boards_in_short(boards)}.",
        "Put its label on each board as it comes off the saw, and mark its reference edge.",
        *to_size(boards, cabinet, *jobs),
        *_sides(boards, pairs),
        *across_words(cabinet),
    ]
    if called := template_called(PINS, cabinet):
        lines.append(f"Bore the holes for shelf pins from {called}, before the case is glued.")
    if edged:
        lines.append(
            f"Glue the edging on {boards_in_short(edged)} now, before the joints: every joint is measured from the "
            "finished edge. Trim it flush."
        )
    if slots.rows:
        lines += [
            "Try each setting of the table in an offcut of the same sheet first, with the board that goes in.",
            "Cut all that one row names before you change the width or the depth of the cut."
            + (" Wherever the fence or the stop moves, cut that place on both of a mirrored pair first." if pairs
               else ""),
        ]
        if any("stopped" in row[0] for row in slots.rows):
            lines.append("Square the end of a stopped cut with a chisel.")
    stopped = cautions().only(["stopped cut"]) if any("stopped" in row[0] for row in slots.rows) else ()
    blocks: list[Block] = [
        Framed((
            Words(TOOLS, grave=True), *([Words(SLOTS)] if slots.rows else []),
            *(Words(one.claim.say) for one in stopped),
        )),
        ToTick(tuple(lines)),
        *([slots] if slots.rows else []),
    ]
    return [*blocks, *_alike(alike)]


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


def _alike(cuts: Iterable[AlikeCuts]) -> list[Block]:
    """Notches and screw holes, in the order in which they are cut."""
    rows = tuple((cut.kind, str(cut.count), boards_in_short(cut.boards), cut.size, cut.place) for cut in cuts)
    if not rows:
        return []
    table = Table(("cut", "cuts", "boards", "size", "where"), rows, (3, 4))
    return [Together((
        Words("Then these, marked and cut in one go, boards that share a row laid on one another to compare. Saw a "
              "notch on the waste side of its lines and pare to them; bore with a waste board behind."),
        table,
    ))]


def _settings(boards: Iterable[Board], cabinet: Cabinet) -> Table:
    """Joint cuts that are cut at one setting: kind, width and depth, then the boards, most boards first.

    Those that stop short of a side are told apart from those that run through.
    """
    write = Writing(cabinet.style)
    found: dict[tuple[str, int, int], list[Board]] = {}
    for board in boards:
        for cut in board.cuts:
            if isinstance(cut, BoxCut) and cut.kind in ("dado", "rabbet", "groove"):
                u, v, w = cut.box.size
                stop = stopped_at(board, cut, write) if channel_ways(cut, board) else ""
                kind = f"{cut.kind}, {stop}" if stop else cut.kind
                found.setdefault((kind, min(u, v), w), []).append(board)
    rows = sorted(found.items(), key=lambda item: -len(item[1]))
    return Table(
        ("cut", "wide", "deep", "cuts", "boards"),
        tuple((kind, write.measured(wide), write.setting(deep), str(len(of)), boards_in_short(of))
              for (kind, wide, deep), of in rows),
        (0, 4) if any("stopped" in kind for kind, _, _ in found) else (4,),
    )


def finish_inside(cabinet: Cabinet) -> list[Block]:
    """Which faces look inside, and which strips stay bare for the glue."""
    faces = glue_faces(cabinet)
    floats = [b.name for b in cabinet.boards if b.role == "back" and b.name not in {face.board for face in faces}]
    lines = [
        f"These look inside: {_inside(cabinet)}. Their finish is easy now and hard later.",
        "Mask the glue faces of the table with tape: glue does not hold on finish. Press the tape down along the line, "
        "and pull it off while the last coat is still soft.",
        "Give both faces of a thin or loose board the same coats, or it bows.",
    ]
    if floats:
        lines.append(f"Nothing is masked for {and_list(floats)}: it floats in its grooves. Keep finish out of them.")
    table = _masks(faces, cabinet)
    masked: tuple[Block, ...] = (Words("Leave bare for the glue:"), table)
    if not table.rows:
        return [ToTick(tuple(lines))]
    return [ToTick(tuple(lines)), *([Together(masked)] if len(table.rows) <= _SHORT else masked)]


_SHORT = 16
"""A table of so many rows is not parted by the end of a page."""


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
    """The whole case once without glue, with its clamps, against the clock."""
    others = ("back", "loose shelf", "plinth")
    stiff = [board for board in cabinet.boards if board.stage == CASE and board.role not in others]
    longest = max(stiff, key=lambda board: board.length)
    blocks: list[Block] = [
        Framed((Words(LIFTING, grave=True),)),
        ToTick((
            "Lay out on the bench all that the glue-up needs: clamps, cauls, glue, brush, damp rag, tape, mallet with "
            "a block, paper to catch drips.",
            "Put the case together without glue, in the order of the next steps, clamps and all, its back in place if "
            "it has one. Every joint must close under hand pressure or a light tap. One that does not is mended now.",
            "Measure the diagonals. Look along the front edges: they lie in one plane.",
            "A bowed board is pulled straight by its joint: lay a caul, a straight stiff batten, over it on both "
            "faces, tighten the clamp in the middle first, and go on from the middle out. The longest board is "
            f"{longest.name}: try it here. What hand-tight clamps do not straighten is cut anew.",
            "Do it again, and take the time.",
        )),
        ToFillIn(
            "The clock", ("The dry run of the longest glue-up took (minutes):", "Open time on the label of your glue:"),
            f"Counted here: {USUAL.a_joint} minute a joint and {USUAL.clamping} minutes for clamps and diagonals, in "
            f"an open time of {USUAL.open_time} minutes, so up to {USUAL.joints} joints in one glue-up (common "
            "practice, no source). The label of your glue decides. Is your glue faster, or the dry run slower? Glue "
            "fewer boards at once and set the rest on dry, or take a glue that stays open longer.",
        ),
    ]
    table = clamp_table(goes, cabinet)
    if table.rows:
        blocks += [Words(_CLAMPS), table]
    elif goes:
        blocks.append(Words("Pocket screws draw these joints together: two clamps that hold a corner while you drive "
                            "them are enough."))
    return blocks


_CLAMPS = (
    "Clamps, by number and reach: the reach is the size over the boards with a caul under each jaw and a little play; "
    "take the next length that is sold (lengths from memory). Where you have fewer, stiff cauls spread the pressure."
)
