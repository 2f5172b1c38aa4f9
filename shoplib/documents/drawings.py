"""The drawings of a plan: SVG files to look at, and one PDF to print."""

from collections.abc import Iterable, Iterator
from dataclasses import asdict

from shoplib.documents.before_cutting import LOOK, STOP, STOPPED, measure_first
from shoplib.documents.board_scenes import board_scenes, file_name
from shoplib.documents.cut_notes import cut_notes
from shoplib.documents.fitted import LETTER, LINE, Room, fitted, half_page
from shoplib.documents.hardware_page import hardware_page
from shoplib.documents.joint_pages import butted, joint_scenes, without_cut
from shoplib.documents.paper import PAPERS, USUAL
from shoplib.documents.standing import standing_words
from shoplib.documents.typeset import typeset
from shoplib.draw.chains import unit_note
from shoplib.draw.elevation import front_elevation
from shoplib.draw.lettering import wrapped
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene, Shape
from shoplib.draw.section import section_plan, section_side
from shoplib.lists.alike import told_once
from shoplib.measure import write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.uprights import bays

_ACROSS, _DOWN = 24.0, 26.0
"""Margins of the page in mm, both sides together, as the template sets them."""
_HEADING = 27.0
"""What the headings and the note take on the first page, in mm."""
_JOINT = (86.0, 62.0)
"""Room for one joint in mm, two beside one another."""
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
    views, joints = dict(whole_views(cabinet)), dict(_named(joint_scenes(cabinet)))
    boards = dict(board_scenes(cabinet, findings))
    found = {f"{name}.svg": draw(scene).encode() for name, scene in {**views, **joints, **boards}.items()}
    found["drawings.pdf"] = _pdf(cabinet, findings, views.values(), joints.values(), boards.values())
    return found


def whole_views(cabinet: Cabinet) -> Iterator[tuple[str, Scene]]:
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


def _named(scenes: Iterable[Scene]) -> Iterator[tuple[str, Scene]]:
    taken: set[str] = set()
    for scene in scenes:
        yield file_name(scene.title, taken), scene


def _pdf(cabinet: Cabinet, findings: tuple[Finding, ...], views: Iterable[Scene], joints: Iterable[Scene],
         boards: Iterable[Scene]) -> bytes:
    unit = cabinet.style.unit
    paper = PAPERS[USUAL[unit]]
    wide, deep, high = (write_brief(s, cabinet.style) for s in _outside(cabinet))
    lying = (paper.height - _ACROSS, paper.width - _DOWN - _HEADING)
    standing = (paper.width - _ACROSS, paper.height - _DOWN)
    first = _first_words(cabinet, findings)
    taken = sum(LINE * len(wrapped(line["text"], LETTER, lying[0] - 4)) for line in first) + 5
    under = (lying[0], lying[1] - taken)
    apart = under[1] < _LEAST_VIEW
    return typeset("drawings.typ", {
        "title": cabinet.name,
        "paper": paper.typeset,
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
        "boards": [_entry(scene, (standing[0], half_page(scene, standing)), unit) for scene in boards],
    })


def _first_words(cabinet: Cabinet, findings: tuple[Finding, ...]) -> list[dict]:
    """What the first page says before anything is drawn: stops, then what to look at, then what waits."""
    of = {level: told_once([f.text for f in findings if f.level == level]) for level in ("stop", "warn")}
    lines = []
    if of["stop"]:
        lines.append({"grave": True, "text": STOPPED})
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


def _entry(scene: Scene, room: Room, unit: str, said: str = "") -> dict:
    """One picture for the template. `said` is what its note begins with and the page says once for all."""
    drawn = fitted(scene, room, unit)
    return {
        "title": scene.title, "note": scene.noted.removeprefix(said).strip(), "alt": scene.alt, "scale": drawn.scale,
        "svg": drawn.svg, "width": drawn.width, "legend": scene.legend, "alarms": scene.alarms,
    }
