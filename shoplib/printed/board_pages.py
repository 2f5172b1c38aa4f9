"""Each kind of board on paper: what leaves the saw, where it is marked out from, and its cuts, drawn and in words."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from shoplib.documents.board_scenes import scenes_of
from shoplib.documents.fitted import Room
from shoplib.draw.board_drawing import RUNNING, size_lines, size_words
from shoplib.draw.chains import unit_note
from shoplib.draw.scene import BRACKETS, Scene
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.row_words import edging_words, joined_words
from shoplib.lists.writing import Writing
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.blocks import Block, Heading, Picture, Together, Words
from shoplib.printed.how_high import how_high
from shoplib.printed.paper import Paper
from shoplib.printed.pictures import picture
from shoplib.printed.reference import reference
from shoplib.words.naming import boards_in_short
from shoplib.words.stages import STAGES

HEADING = "Each board with its cuts"
_LEAST, _MOST = 55.0, 110.0
"""A drawing that would get less height than the first (mm), with another on its page, gets up to the second."""


def board_pages(cabinet: Cabinet, findings: Iterable[Finding], paper: Paper) -> list[Block]:
    """One entry for each row of the cut list, stage by stage, with each face that is worked on drawn.

    The drawings are those of drawings.pdf, two or more on a page where they are small. An entry says what stops it
    (of the `findings`) and what is to be measured before it is cut.
    """
    findings, room = tuple(findings), paper.room()
    blocks: list[Block] = [Heading(HEADING), Words(_begins(cabinet))]
    stage = 0
    for kind in kinds(cabinet):
        if kind.stage != stage:
            stage = kind.stage
            blocks.append(Heading(f"Stage {stage}: {STAGES[stage]}", 2))
        blocks += _entry(kind, cabinet, findings, room)
    return blocks


def _begins(cabinet: Cabinet) -> str:
    """What holds for all boards and is said once."""
    return (
        f"{unit_note(cabinet.style)} Mark out from the reference end and the reference edge: {RUNNING} "
        f"The reference face is the one that is worked on, of two the one that is drawn first. {BRACKETS}"
    )


def _entry(kind: Kind, cabinet: Cabinet, findings: tuple[Finding, ...], room: Room) -> Iterator[Block]:
    """A board with its first face, which no page end parts, then its other faces."""
    (_, first), *others = scenes_of(kind, cabinet, findings)
    title = f"{kind.count} x {boards_in_short(kind.boards)}"
    head = (Heading(title, 3), *(Words(line, n == 0) for n, line in enumerate(_facts(kind, cabinet))))
    yield Together((*head, _drawn(first, kind, cabinet, room, head)))
    for _, scene in others:
        head = (Heading(scene.title.rpartition(": ")[0], 3),)
        yield Together((*head, _drawn(scene, kind, cabinet, room, head)))


def _facts(kind: Kind, cabinet: Cabinet) -> tuple[str, ...]:
    """Size at the saw, size with the edging on, the sides to mark out from, and what the board goes into."""
    page = Writing(cabinet.style, units=False)
    grain = "grain along the length" if kind.grain == "length" else "grain either way"
    lines = [f"At the saw: {size_words(kind.cut, page)}, {kind.sheet}, {grain}."]
    edging = edging_words(kind, page)
    if edging:
        lines.append(f"Finished: {size_words(kind.finished, page)} with edging: {edging}.")
    joined = joined_words(kind, cabinet)
    goes = f" Goes in: {joined}." if joined else ""
    lines.append(f"Reference: {reference(kind.first, cabinet).words}.{goes}")
    return tuple(lines)


def _drawn(scene: Scene, kind: Kind, cabinet: Cabinet, room: Room, head: tuple[Heading | Words, ...]) -> Picture:
    """One face under its `head`, without what the entry and the beginning of the part say already.

    It is as high as leaves room for two such entries on a page, or where that is too little, for one.
    """
    face = scene.title.rpartition(": ")[2]
    sizes = size_lines(kind.first, Writing(cabinet.style, units=False))
    shown = replace(
        scene, note=f"{face[0].upper()}{face[1:]}.",
        legend=tuple(line for line in scene.legend if line not in sizes),
    )
    words = how_high((*head, Picture("", "", 0, "", 4, shown.note, shown.alarms, shown.legend)), room[0])
    half = room[1] / 2 - words
    high = half if half >= _LEAST else min(_MOST, room[1] - words)
    return picture(shown, (room[0], high), cabinet.style.unit, "", said=BRACKETS)
