"""Every kind of board as it is drawn for paper: each worked face once, with what must be read before it is cut."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from shoplib.documents.before_cutting import before_cutting
from shoplib.documents.hardware_page import pair_words
from shoplib.draw.board_drawing import board_drawing, boards_called, face_called
from shoplib.draw.scene import Scene
from shoplib.draw.slide_lines import carries, worked_faces
from shoplib.lists.cut_list import Kind, kinds
from shoplib.model.board import Board
from shoplib.model.hardware_places import pull_holes
from shoplib.model.solved import Cabinet, Finding


@dataclass(frozen=True, slots=True)
class BoardScene:
    """A drawing of a kind of board: the `board` that is drawn and its `face`, what is drawn (`boards`) and which of its
    faces it is (`called`) in words, and the drawing.
    """

    board: Board
    face: str
    boards: str
    called: str
    scene: Scene


def board_scenes(cabinet: Cabinet, findings: Iterable[Finding] = ()) -> Iterator[tuple[str, Scene]]:
    """Each kind of board, once for each face that is worked on, and once more where an equal board carries slides
    elsewhere; with each a name for its file.
    """
    findings, taken = tuple(findings), set[str]()
    for kind in kinds(cabinet):
        for drawn in scenes_of(kind, cabinet, findings):
            yield file_name(f"board {drawn.board.name} {drawn.face}", taken), drawn.scene


def scenes_of(kind: Kind, cabinet: Cabinet, findings: Iterable[Finding] = ()) -> Iterator[BoardScene]:
    """The drawings of one kind, each with its board and its face."""
    alarms = before_cutting(kind, cabinet, findings)
    pair = (f"With {kind.mirror_of}: {pair_words(kind.first.name)}",) if kind.mirror_of else ()
    bored = _bored_last(kind.first, cabinet)
    for face in worked_faces(kind.first, cabinet):
        scene = board_drawing(kind.first, cabinet, cabinet.style, face, kind.names[1:])
        scene = scene.with_items(legend=(*pair, *bored), alt=" ".join((*pair, *bored))).with_alarms(alarms)
        boards = boards_called(kind.first, cabinet, kind.names[1:])
        yield BoardScene(kind.first, face, boards, face_called(kind.first, cabinet, face), scene)
    like = (f"Cut as {kind.first.name} is.",)
    for board, face in _carrying_otherwise(kind, cabinet):
        scene = board_drawing(board, cabinet, cabinet.style, face).with_items(legend=like, alt=like[0])
        yield BoardScene(board, face, board.name, face_called(board, cabinet, face), scene.with_alarms(alarms))


def _bored_last(board: Board, cabinet: Cabinet) -> tuple[str, ...]:
    """That holes for a pull wait for a front that is screwed on by its gaps; one that is all of its drawer may be
    bored alone (common practice, no source)."""
    roles = {one.role for one in cabinet.groups[board.group]}
    if not pull_holes(board) or "front" not in roles:
        return ()
    through = " through front and box front in one. Bored before, they may not meet" if "box front" in roles else ""
    return (f"The pull holes wait until the front is screwed on and its gaps are right; then bore them{through}.",)


def _carrying_otherwise(kind: Kind, cabinet: Cabinet) -> Iterator[tuple[Board, str]]:
    """Boards of a kind, and the face, that carry slides where no drawing of the kind shows them yet."""
    shown = carries(kind.first, cabinet)
    for board in kind.boards[1:]:
        for face, rects in sorted(carries(board, cabinet) - shown):
            shown.add((face, rects))
            yield board, face


def file_name(text: str, taken: set[str]) -> str:
    """A name that every file system takes: small letters, digits, hyphens; numbered where it stands already.

    >>> file_name("board 1/2 in: Seitenwand links", set())
    'board-1-2-in-seitenwand-links'
    """
    stem = re.sub(r"[^a-z0-9]+", "-", text.lower()).strip("-")[:80] or "board"
    name, number = stem, 1
    while name in taken:
        number += 1
        name = f"{stem}-{number}"
    taken.add(name)
    return name
