"""The fronts that the page shows, as it begins and with other choices, and its pictures of what goes wrong."""

from dataclasses import replace

from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.front_lesson import edge, racked, setting_order
from shoplib.draw.front_view import front_view
from shoplib.draw.letters import drawn_with
from shoplib.draw.look import FRONT
from shoplib.draw.scene import Scene
from shoplib.draw.season_chart import season_chart
from shoplib.draw.season_view import season_alt
from shoplib.lessons.bay_fronts import FRONTS, LOWEST, MIDDLE, TOP
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.figure import Figure, dry_fit_says
from shoplib.lessons.large_type import letters_in_use
from shoplib.lessons.together import put_together
from shoplib.live.front_panel import front_style
from shoplib.live.front_project import KINDS, FrontChoices, front_project, starting_fronts
from shoplib.live.front_season import Room, season_for
from shoplib.live.front_why import in_season
from shoplib.measure import read_length, share
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.front_face import Face, face_of, front_too_high
from shoplib.model.season import Season
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced

PICTURE = (440.0, 280.0)

ROOM = Room("white oak, commercial", "flatsawn", 45, 35, 65)
"""The room of the worked example: its wood, and its humidities as made, driest and dampest."""

LEAN = {"in": "5/32 in", "mm": "4 mm"}

OFF = {"in": "1/16 in", "mm": "1.5 mm"}


def choices(unit: str, **other: object) -> FrontChoices:
    """What the panel begins with, with other choices in place of some."""
    return replace(starting_fronts(unit), **other)


def solved(chosen: FrontChoices, unit: str) -> Cabinet:
    """The case as the panel would solve it."""
    return solve(traced(front_project(chosen, front_style(unit))))


def face(chosen: FrontChoices, unit: str) -> Face:
    """Its fronts as seen from the front."""
    return face_of(solved(chosen, unit), chosen.inset)


def solid_front(unit: str) -> Season:
    """A solid front of the worked example and the gap to another like it, through the year."""
    height = read_length("8 in" if unit == "in" else "200 mm")
    return season_for(ROOM, starting_fronts(unit).gap, height, height)


def part_off(unit: str) -> int:
    """What one part is off in the pictures and sums of errors, in ticks that carry their name."""
    return leaf(read_length(OFF[unit]), "what the part is off", "measured")


def season_why(unit: str, case: bool = False) -> list[str]:
    """The sums of the handbook behind the year of that front: its height and its gap, driest and dampest.

    With `case`, its gap to the case too, when the room is dampest.
    """
    season, style = solid_front(unit), front_style(unit)
    asked = [(season, row, place) for row in (1, 2) for place in ("2", "3")]
    asked += [(replace(season, beside=0), 2, "3")] * case
    return list(dict.fromkeys(line for one in asked for line in in_season(*one, style)))


def edges() -> Figure:
    """A side with an overlay front, cut through."""
    return _edge(inset=False)


def inset_edge() -> Figure:
    """A side with an inset front, cut through."""
    return _edge(inset=True)


def _edge(inset: bool) -> Figure:
    unit = unit_in_use()
    project = traced(front_project(choices(unit, kind=KINDS[not inset]), front_style(unit)))
    gap = project.fronts.around if inset else project.fronts.reveal
    return _drawn(edge(project.sheets["case sheet"].thickness, gap, front_style(unit), inset), [])


def order() -> Figure:
    """In what order a front is set."""
    unit = unit_in_use()
    start = starting_fronts(unit)
    first = face(start, unit).pieces[0]
    return _drawn(setting_order(first.width, first.height, start.gap, front_style(unit)), [])


def leaning() -> Figure:
    """A square front in a case out of square."""
    unit = unit_in_use()
    start = starting_fronts(unit)
    first = face(start, unit).pieces[0]
    lean = leaf(read_length(LEAN[unit]), "what the top leans", "measured")
    gap = solved(start, unit).project.fronts.around
    return _drawn(racked(first.width, first.height, gap, lean, front_style(unit)), [])


def gap_forgotten() -> Figure:
    """Three fronts that share the opening less one gap each: (O - n g) / n."""
    unit = unit_in_use()
    chosen = choices(unit, gap=2 * starting_fronts(unit).gap)
    chosen = replace(chosen, around=chosen.gap)
    case = solved(chosen, unit)
    height, gap = case.project.size.height, case.project.fronts.gap
    each = share(height - chosen.count * gap, chosen.count, 1)[0]
    built = put_together(case, {one: each for one in (LOWEST, MIDDLE, TOP)})
    scene = dry_fit(built.built, case, built.misfits, View(FRONT, FRONTS[1]))
    return _drawn(scene, [dry_fit_says(f"{told}.") for told in built.says])


def one_too_high() -> Figure:
    """The lowest of three fronts a little too high, the others set on it with spacers; beside it a bay as planned."""
    unit = unit_in_use()
    chosen, style = choices(unit, bays=2), front_style(unit)
    wrong = front_too_high(face(chosen, unit), 1, 1, part_off(unit))
    return _drawn(front_view(wrong, chosen.gap, style), [])


def year() -> Figure:
    """The solid front of the worked example, through the year."""
    unit = unit_in_use()
    season, style = solid_front(unit), front_style(unit)
    with drawn_with(letters_in_use()):
        return Figure(season_chart(season, style), season_alt(season, style), [], season_why(unit))


def _drawn(scene: Scene, words: list[str]) -> Figure:
    return Figure.of(scene, PICTURE, words, front_style(unit_in_use()))
