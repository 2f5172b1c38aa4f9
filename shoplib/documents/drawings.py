"""The drawings of a plan: SVG files to look at, and one PDF to print."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import asdict

from shoplib.documents.before_cutting import LOOK, STOP, before_cutting, measure_first
from shoplib.documents.cut_notes import cut_notes
from shoplib.documents.hardware_page import hardware_page, pair_words
from shoplib.documents.joint_pages import butted, joint_scenes, without_cut
from shoplib.documents.standing import standing_words
from shoplib.documents.typeset import typeset
from shoplib.draw.board_drawing import board_drawing
from shoplib.draw.chains import bays, unit_note
from shoplib.draw.elevation import front_elevation
from shoplib.draw.lettering import wrapped
from shoplib.draw.pen import Drawn, draw, draw_to_scale
from shoplib.draw.scene import Scene, Shape
from shoplib.draw.section import section_plan, section_side
from shoplib.draw.slide_lines import carries, worked_faces
from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import Kind, kinds
from shoplib.measure import MM, write_brief
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Finding

_PAPER = {"in": ("us-letter", 215.9, 279.4), "mm": ("a4", 210.0, 297.0)}
"""Paper by unit: Typst's name, width and height in mm (ANSI/ASME Y14.1 size A; ISO 216 A4)."""

_RATIOS = {
    "in": (1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 192),
    "mm": (1, 2, 5, 10, 15, 20, 25, 50, 75, 100, 200),
}
"""Scales to choose from: those of the inch rule and of the metric scale rule (common practice, no source)."""

_ACROSS, _DOWN = 24.0, 26.0
"""Margins of the page in mm, both sides together, as the template sets them."""
_HEADING = 27.0
"""What the headings and the note take on the first page, in mm."""
_LEAST_BOARD, _MOST_BOARD = 70.0, 120.0
"""A board whose drawing would get less height than the first (mm), with another on its page, gets a page to itself
and as much as the second."""
_JOINT = (86.0, 62.0)
"""Room for one joint in mm, two beside one another."""
_LETTER, _LINE = 3.0, 3.8
"""Letter size and line height of the first page's words in mm (8.5 points)."""
_STOPPED = "STOP: this plan does not go together yet. Cut nothing before it is mended."
_WRITE_DOWN = (
    "Write what you read into the project, under \u201cmeasured\u201d (to_measure.toml has the lines), and plan anew."
)
_CAUTIONS = "Before you cut, read the cautions; they head \u201cHardware, and what to test while building\u201d."
_LEAST_VIEW = 90.0
"""A view that would get less height than this in mm under the words of the first page begins a page of its own."""


def drawing_files(cabinet: Cabinet, findings: Iterable[Finding] = ()) -> dict[str, bytes]:
    """File name to content: every drawing as SVG, and `drawings.pdf` with all of them and the hardware page.

    Equal boards share one drawing, which names them all, and says what must be read before they are cut:
    which of the `findings` stop them, and what is to be measured first. Raises ValueError where the cabinet
    has no boards.
    """
    findings = tuple(findings)
    views, joints = dict(_views(cabinet)), dict(_named(joint_scenes(cabinet)))
    boards = dict(_boards(cabinet, findings))
    found = {f"{name}.svg": draw(scene).encode() for name, scene in {**views, **joints, **boards}.items()}
    found["drawings.pdf"] = _pdf(cabinet, findings, views.values(), joints.values(), boards.values())
    return found


def _views(cabinet: Cabinet) -> Iterator[tuple[str, Scene]]:
    """The whole from outside and cut; bays that are cut alike are drawn once."""
    style = cabinet.style
    yield "front-elevation", front_elevation(cabinet, style)
    yield "front-elevation-fronts-off", front_elevation(cabinet, style, fronts=False)
    drawn = set()
    for number in range(1, len(bays(cabinet)) + 1):
        scene = section_side(cabinet, style, number)
        shapes = [item for item in scene.items if isinstance(item, Shape)]
        cut = tuple(shape.rects for shape in shapes if shape.fill.startswith("cut"))
        if cut not in drawn:
            drawn.add(cut)
            yield f"section-bay-{number}", scene
    yield "plan-section", section_plan(cabinet, style)


def _boards(cabinet: Cabinet, findings: tuple[Finding, ...]) -> Iterator[tuple[str, Scene]]:
    """Each kind of board, once for each face that is worked on, and once more where an equal board carries slides
    elsewhere.
    """
    taken: set[str] = set()
    for kind in kinds(cabinet):
        alarms = before_cutting(kind, cabinet, findings)
        pair = (f"With {kind.mirror_of}: {pair_words(kind.first.name)}",) if kind.mirror_of else ()
        for face in worked_faces(kind.first, cabinet):
            scene = board_drawing(kind.first, cabinet, cabinet.style, face, kind.names[1:])
            scene = scene.with_items(legend=pair, alt=" ".join(pair)).with_alarms(alarms)
            yield file_name(f"board {kind.first.name} {face}", taken), scene
        like = (f"Cut as {kind.first.name} is.",)
        for board, face in _carrying_otherwise(kind, cabinet):
            scene = board_drawing(board, cabinet, cabinet.style, face).with_items(legend=like, alt=like[0])
            yield file_name(f"board {board.name} {face}", taken), scene.with_alarms(alarms)


def _carrying_otherwise(kind: Kind, cabinet: Cabinet) -> Iterator[tuple[Board, str]]:
    """Boards of a kind, and the face, that carry slides where no drawing of the kind shows them yet."""
    shown = carries(kind.first, cabinet)
    for board in kind.boards[1:]:
        for face, rects in sorted(carries(board, cabinet) - shown):
            shown.add((face, rects))
            yield board, face


def _named(scenes: Iterable[Scene]) -> Iterator[tuple[str, Scene]]:
    taken: set[str] = set()
    for scene in scenes:
        yield file_name(scene.title, taken), scene


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


def _pdf(cabinet: Cabinet, findings: tuple[Finding, ...], views: Iterable[Scene], joints: Iterable[Scene],
         boards: Iterable[Scene]) -> bytes:
    unit = cabinet.style.unit
    paper, width, height = _PAPER[unit]
    wide, deep, high = (write_brief(s, cabinet.style) for s in _outside(cabinet))
    lying = (height - _ACROSS, width - _DOWN - _HEADING)
    standing = (width - _ACROSS, height - _DOWN)
    first = _first_words(cabinet, findings)
    taken = sum(_LINE * len(wrapped(line["text"], _LETTER, lying[0] - 4)) for line in first) + 5
    under = (lying[0], lying[1] - taken)
    apart = under[1] < _LEAST_VIEW
    return typeset("drawings.typ", {
        "title": cabinet.name,
        "paper": paper,
        "unit": f"sizes in {'inches' if unit == 'in' else 'millimetres'}",
        "caution": "Work to the written sizes; do not measure from the paper.",
        "summary": f"Outside: {wide} wide, {deep} deep, {high} high.",
        "first": first,
        "apart": apart,
        "views": [_entry(scene, lying if apart or n else under, unit) for n, scene in enumerate(views)],
        "joints": [_entry(scene, _JOINT, unit, unit_note(cabinet.style)) for scene in joints],
        "about_joints": unit_note(cabinet.style),
        "butted": " ".join(filter(None, [*cut_notes(cabinet), butted(cabinet), without_cut(cabinet)])),
        "hardware": [asdict(section) for section in hardware_page(cabinet, findings)],
        "boards": [_entry(scene, (standing[0], _half(scene, standing)), unit) for scene in boards],
    })


def _half(scene: Scene, room: tuple[float, float]) -> float:
    """Height in mm for a board's drawing, so that two of them and their words stand on a page, where they can."""
    said = [scene.noted, *(alarm for alarm in scene.alarms for _ in "ab"), *scene.legend]
    lines = sum(len(wrapped(text, _LETTER, room[0])) for text in said)
    words = _LINE * lines + 18
    half = room[1] / 2 - words
    return half if half >= _LEAST_BOARD else min(_MOST_BOARD, room[1] - words)


def _first_words(cabinet: Cabinet, findings: tuple[Finding, ...]) -> list[dict]:
    """What the first page says before anything is drawn: stops, then what to look at, then what waits."""
    of = {level: told_once([f.text for f in findings if f.level == level]) for level in ("stop", "warn")}
    lines = []
    if of["stop"]:
        lines.append({"grave": True, "text": _STOPPED})
    elif findings:
        lines.append({"grave": False, "text": "Dry-fitted: no check says stop."})
    lines += [{"grave": True, "text": f"{STOP}: {text}"} for text in of["stop"]]
    lines += [{"grave": False, "text": f"{LOOK}: {text}"} for text in of["warn"]]
    lines += [{"grave": False, "text": text} for text in measure_first(cabinet)]
    if cabinet.waiting:
        lines.append({"grave": False, "text": _WRITE_DOWN})
    lines += [{"grave": False, "text": text} for text in standing_words(cabinet)]
    lines.append({"grave": False, "text": _CAUTIONS})
    return lines


def _outside(cabinet: Cabinet) -> tuple[int, int, int]:
    boxes = [board.box for board in cabinet.boards]
    return tuple(max(b.high[k] for b in boxes) - min(b.low[k] for b in boxes) for k in range(3))


def _entry(scene: Scene, room: tuple[float, float], unit: str, said: str = "") -> dict:
    """One picture for the template: the largest usual scale that fits the room (mm).

    `said` is what its note begins with and the page says once for all.
    """
    drawn, ratio = _to_fit(scene, room, unit)
    width, height = drawn.size_mm
    shrink = min(1.0, room[0] / width, room[1] / height)
    scale = f"Scale 1 : {ratio} when printed at full size." if shrink == 1.0 else "Not to scale."
    return {
        "title": scene.title, "note": scene.noted.removeprefix(said).strip(), "alt": scene.alt, "scale": scale,
        "svg": drawn.svg, "width": round(width * shrink, 4), "legend": scene.legend, "alarms": scene.alarms,
    }


def _to_fit(scene: Scene, room: tuple[float, float], unit: str) -> tuple[Drawn, int]:
    """At the largest scale that fits, dimensions included; where none does, at the one nearest to fitting."""
    tried = []
    for ratio in _RATIOS[unit]:
        if max(scene.size[0] / room[0], scene.size[1] / room[1]) > MM * ratio:
            continue
        drawn = draw_to_scale(scene, ratio)
        width, height = drawn.size_mm
        if width <= room[0] and height <= room[1]:
            return drawn, ratio
        tried.append((max(width / room[0], height / room[1]), ratio, drawn))
    _, ratio, drawn = min(tried, key=lambda t: t[:2])
    return drawn, ratio
