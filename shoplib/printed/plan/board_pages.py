"""Each kind of board on paper: what leaves the saw, where it is marked out from, and its cuts, drawn and in words."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from shoplib.documents.board_scenes import BoardScene, scenes_of
from shoplib.documents.fitted import Fitted, Room, fitted
from shoplib.documents.paper import Paper
from shoplib.draw.board_drawing import RUNNING, size_lines, size_words
from shoplib.draw.chains import unit_note
from shoplib.draw.scene import BRACKETS, Leader, Line, Scene
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.lies import held_by_no_cut, lies_words
from shoplib.lists.row_words import edging_words, joined_words
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.plan.filled_pages import Way, on_pages
from shoplib.printed.true_scale.reference import reference_words
from shoplib.printed.typeset.blocks import Beside, Block, Framed, Heading, NewPage, Picture, Together, Words
from shoplib.printed.typeset.height_taken import how_high
from shoplib.printed.typeset.pictures import untitled
from shoplib.words.naming import boards_in_short, capital
from shoplib.words.stages import STAGES

HEADING = "Each board with its cuts"

Head = tuple[Heading | Words, ...]

_COLUMNS, _GUTTER = (5, 3), 6.0
"""A drawing beside its words: how the columns share the page, and what lies between them in mm."""
_LEAST, _FOR_EACH = 30.0, 4.5
"""How long in mm a board is drawn at least where it shares a page, and how much more for each of its cuts and slides,
so that their sizes stand apart. Judged by eye on the shipped projects."""
_MOST = 120.0
"""No board is drawn longer than this in mm only because there is room."""
_LOWEST = 25.0
"""Less height than this in mm is no drawing."""
_SPARE = 4.5
"""Mm of each entry that stay white, since words may come out a little higher than reckoned."""
_SHARES = (1 / 3, 1 / 2, 2 / 3, 1.0)
"""Parts of a page that an entry may take."""


def board_pages(cabinet: Cabinet, findings: Iterable[Finding], paper: Paper) -> list[Block]:
    """One entry for each row of the cut list, with its number there, and each face that is worked on drawn.

    The drawings are those of drawings.pdf, several on a page where they are small. An entry says what stops it
    (of the `findings`) and what is to be measured before it is cut.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> pages = board_pages(cabinet_from("finger_jointed_drawers"), (), PAPERS["a4"])
    >>> [block.text for block in pages[2].blocks if isinstance(block, Heading)]
    ['Stage 1: case', 'No. 1: 2 x left side and right side']
    """
    findings, room = tuple(findings), paper.room()
    begins = Heading(HEADING), Words(_begins(cabinet))
    entries, stage = [], 0
    for number, kind in enumerate(kinds(cabinet), start=1):
        head: Head = ()
        if kind.stage != stage:
            stage = kind.stage
            head = (Heading(f"Stage {stage}: {STAGES[stage]}", 2),)
        entries += _entry(head, number, kind, cabinet, findings, room)
    first, *others = on_pages(entries, room[1], how_high(begins, room[0]))
    blocks = [*begins, *(block for way in first for block in way.blocks)]
    for page in others:
        blocks += [NewPage(), *(block for way in page for block in way.blocks)]
    return blocks


def _begins(cabinet: Cabinet) -> str:
    """What holds for all boards and is said once."""
    return (
        f"{unit_note(cabinet.style)} Mark out from the reference end and the reference edge: {RUNNING} "
        f"The reference face is the one that is worked on, of two the one that is drawn first. {BRACKETS}"
    )


def _entry(
    before: Head, number: int, kind: Kind, cabinet: Cabinet, findings: tuple[Finding, ...], room: Room
) -> Iterator[list[Way]]:
    """A board with its first face, then its other faces; no page end parts a face from its words."""
    first, *others = scenes_of(kind, cabinet, findings)
    title = f"No. {number}: {kind.count} x {boards_in_short(kind.boards)}"
    yield _face((*before, Heading(title, 3), *_facts(kind, cabinet)), first, kind, cabinet, room)
    for drawn in others:
        yield _face((Heading(f"No. {number}: {drawn.boards}", 3),), drawn, kind, cabinet, room)


def _facts(kind: Kind, cabinet: Cabinet) -> tuple[Words, ...]:
    """Size at the saw, size with the edging on, the sides to mark out from, what the board goes into, and its place."""
    page = Writing(cabinet.style, units=False)
    grain = "grain along the length" if kind.grain == "length" else "grain either way"
    lines = [Words(f"At the saw: {size_words(kind.cut, page)}, {kind.sheet}, {grain}.", True)]
    edging = edging_words(kind, page)
    if edging:
        lines.append(Words(f"Finished: {size_words(kind.finished, page)} with edging: {edging}."))
    joined = joined_words(kind, cabinet)
    goes = f" Goes in: {joined}." if joined else ""
    return (*lines, Words(f"Reference: {reference_words(kind, cabinet)}.{goes}"), *_places(kind, cabinet, page))


def _places(kind: Kind, cabinet: Cabinet, page: Writing) -> list[Words]:
    """Where boards lie that no cut holds to their place: told of them, and of the uprights that they are marked on."""
    names = set(kind.names)
    return [Words(lies_words(name, cabinet, page)) for name, uprights in held_by_no_cut(cabinet).items()
            if names & {name, *uprights}]


def _face(head: Head, drawn: BoardScene, kind: Kind, cabinet: Cabinet, room: Room) -> list[Way]:
    """One face under the `head`, without what the entry and the beginning of the part say already: at each scale that
    draws the board large enough, the lowest first; where none does, as large as a page lets it be."""
    scene, face = drawn.scene, drawn.called
    sizes = size_lines(kind.first, Writing(cabinet.style, units=False))
    shown = replace(
        scene, note=f"{capital(face)}.",
        legend=tuple(line for line in scene.legend if line not in sizes),
    )
    ways: dict[int, Way] = {}
    tried = list(_ways(head, shown, room, cabinet.style.unit))
    for way, fit in [each for each in tried if each[1].to_scale] or tried:  # a shrunk one's letters are too small
        if fit.ratio not in ways or way.high < ways[fit.ratio].high:
            ways[fit.ratio] = way
    least, longest = MM * (_LEAST + _FOR_EACH * _sizes(shown)), max(kind.first.size)
    enough = [ratio for ratio in ways if longest >= ratio * least] or [min(ways)]
    found = [ways[max(enough)]]
    for ratio in sorted(enough, reverse=True):
        if longest <= ratio * MM * _MOST and ways[ratio].high > found[-1].high:
            found.append(ways[ratio])
    return found


def _ways(head: Head, scene: Scene, room: Room, unit: str) -> Iterator[tuple[Way, Fitted]]:
    """With the words under the drawing, and beside it, in what parts of a page hold it; each with its drawing."""
    column, narrow = ((room[0] - _GUTTER) * part / sum(_COLUMNS) for part in _COLUMNS)
    alone = replace(scene, alarms=(), legend=())
    above, note = how_high(head, room[0]), how_high([_bare(alone)], column)
    round_it, words = how_high([_bare(scene)], room[0]), how_high(_words(scene), narrow)
    for left in (room[1] * share - above - _SPARE for share in _SHARES):
        if left - round_it > _LOWEST:
            drawn = fitted(scene, (room[0], left - round_it), unit)
            blocks = *head, untitled(scene, drawn, BRACKETS)
            yield _way(above + round_it + drawn.height + _SPARE, blocks), drawn
        if left >= words and left - note > _LOWEST:
            drawn = fitted(alone, (column, left - note), unit)
            beside = Beside(((untitled(alone, drawn, BRACKETS),), _words(scene)), _COLUMNS)
            yield _way(above + max(note + drawn.height, words) + _SPARE, (*head, beside)), drawn


def _way(high: float, blocks: tuple[Block, ...]) -> Way:
    return Way(high, (Together(blocks, high),))


def _bare(scene: Scene) -> Picture:
    return Picture("", "", 0, "", 4, f"{scene.note} Scale 1 : 100 when printed at full size.", scene.alarms,
                   scene.legend)


def _words(scene: Scene) -> tuple[Block, ...]:
    """What stands beside a drawing."""
    alarms = (Framed(tuple(Words(line, True) for line in scene.alarms)),) if scene.alarms else ()
    return (*alarms, *(Words(line, small=True) for line in scene.legend))


def _sizes(scene: Scene) -> int:
    """How many cuts carry a letter, and how many slides and runners lie against the face."""
    tags = sum(isinstance(item, Leader) and item.ringed for item in scene.items)
    return tags + sum(isinstance(item, Line) and item.kind == "centre" for item in scene.items) // 4
