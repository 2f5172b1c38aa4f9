"""The front panel: opening, count and gap at first, then inset or overlay, heights, two bays, one part off, season."""

from dataclasses import asdict, dataclass, fields, replace
from pathlib import Path
from types import SimpleNamespace

from shoplib.draw.front_view import front_view
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.draw.season_view import season_view
from shoplib.live.choose_one import choose_one
from shoplib.live.front_choices import front_choices
from shoplib.live.front_project import IN_LINE, KINDS, ONE_MORE, RULES, FrontChoices, front_project, starting_fronts
from shoplib.live.front_says import findings, gap_rows, message, sums
from shoplib.live.front_season import SOLID, Room, Year, room_table, season_findings, year_of
from shoplib.live.front_why import OFF, why_of_fronts
from shoplib.live.keep_group import keep_group
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.percent_control import PercentControl
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.measure import INCH_STYLE, Style, share, write_brief, write_length, write_measured
from shoplib.measure.noted import noting
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.front_face import Face, divider_off, face_of, front_too_high, front_too_wide
from shoplib.model.project import ImpossibleProject
from shoplib.model.season import HUMIDITIES
from shoplib.model.tracing import traced
from shoplib.tables.wood import woods

PICTURE = (400.0, 300.0)

EDGE, HEIGHTS, BAYS, WRONG, SEASON = (
    "Inset or overlay", "Heights", "Two bays", "One part off", "Solid fronts and the season"
)

NO_PART, TOO_HIGH, TOO_LOW, TOO_WIDE, DIVIDER = (
    "none", "lowest front too high", "lowest front too low", "lowest front too wide", "divider too far right",
)


@dataclass(frozen=True, slots=True)
class Wrong:
    """Which part is off, and by how many ticks."""

    part: str = NO_PART
    over: int = 0


def front_style(unit: str) -> Style:
    """How the front panel shows lengths, and the step that fronts are cut to: 1/64 in, or 0.5 mm, a rule's finest mark.

    >>> front_style("mm")
    Style('mm', '0.5 mm')
    """
    return INCH_STYLE if unit == "in" else Style.of("mm", "0.5 mm")


def front_panel(unit: str = "in", folder: Path | None = None) -> Panel:
    """The panel of fronts and gaps, in inches or millimetres.

    What is saved with it goes into `folder`; None is `my_projects` beside the notebook that is open.

    >>> panel = front_panel("in")
    >>> panel.enter("count", 4)
    >>> panel.message
    'Front 1 is 17 3/4 in wide and 5 27/32 in high; every gap is 1/8 in.'
    """
    style, start = front_style(unit), starting_fronts(unit)
    inch = unit == "in"

    def length(label: str, ticks: int, inches: tuple[str, str, str], mm: tuple[str, str, str]) -> LengthControl:
        low, high, arrow = inches if inch else mm
        return LengthControl(label, write_length(ticks, style), low, high, style, arrow)

    gap_ends = ("1/32 in", "1/2 in", "1/32 in"), ("1 mm", "12 mm", "0.5 mm")
    groups = [
        Group("Three numbers", {
            "height": length("Opening, height", start.height, ("8 in", "48 in", "1/8 in"),
                             ("200 mm", "1200 mm", "1 mm")),
            "count": choose_one("Fronts, one above another", range(1, 7), start.count),
            "gap": length("Gap", start.gap, *gap_ends),
        }),
        Group(EDGE, {
            "kind": choose_one("Fronts", KINDS, start.kind),
            "around": length("Gap to the case, or reveal", start.around, *gap_ends),
            "width": length("Opening, width", start.width, ("8 in", "36 in", "1/8 in"), ("200 mm", "900 mm", "1 mm")),
            "thick": LengthControl(
                "Measured thickness of the case", write_measured(start.thick, style),
                *(("0.6 in", "1 in") if inch else ("15 mm", "25 mm")), style, "0.001 in" if inch else "0.1 mm",
                measured=True,
            ),
        }, "Inset fronts have a gap to the case; beside overlay fronts a strip of the case shows: the reveal."),
        Group(HEIGHTS, {
            "rule": choose_one("Heights", RULES, start.rule),
            "difference": length("Each lower than the one below, by", start.difference, ("1/8 in", "4 in", "1/8 in"),
                                 ("3 mm", "100 mm", "1 mm")),
        }, "The higher fronts stand below. The two series are from an old book of design."),
        Group(BAYS, {
            "bays": choose_one("Bays", (1, 2), 1),
            "rows": choose_one("Fronts of bay 2", (IN_LINE, ONE_MORE), IN_LINE),
        }, "Rows in line let the eye run across both bays."),
        Group(WRONG, {
            "part": choose_one("Off", (NO_PART, TOO_HIGH, TOO_LOW, TOO_WIDE, DIVIDER), NO_PART),
            "over": length("By", share(start.gap, 2, 1)[0], ("1/64 in", "1/2 in", "1/64 in"),
                           ("0.5 mm", "12 mm", "0.5 mm")),
        }, "The fronts are set from the bottom up, each with a spacer on the one below and at its left."),
        Group(SEASON, {
            "wood": choose_one("Fronts of", (SOLID, *woods()), "white oak, commercial"),
            "cut": choose_one("Boards", ("flatsawn", "quartersawn"), "flatsawn"),
            "made": PercentControl("Humidity when they were made", 45, HUMIDITIES[0], HUMIDITIES[-1]),
            "driest": PercentControl("Humidity of the room, driest", 35, HUMIDITIES[0], HUMIDITIES[-1]),
            "dampest": PercentControl("Humidity of the room, dampest", 60, HUMIDITIES[0], HUMIDITIES[-1]),
        }, "Wood moves across its grain; in a drawer front that is its height. Each front is fixed along the middle of "
           "its height and grows half up, half down; the case stands still. The room is at 70 °F (21 °C), and its "
           f"humidity ends at {HUMIDITIES[-1]} %: above, wood takes up more than the 14 % to which the sum holds."),
    ]
    controls = {name: control for group in groups for name, control in group.controls.items()}

    def asked(values: SimpleNamespace) -> FrontChoices:
        choices = FrontChoices(**{field.name: getattr(values, field.name) for field in fields(FrontChoices)})
        return choices if EDGE in values.opened else replace(choices, around=choices.gap)

    def work(values: SimpleNamespace) -> Outcome:
        choices = asked(values)
        wrong = Wrong(values.part, values.over) if WRONG in values.opened else Wrong()
        room = None
        if SEASON in values.opened and values.wood != SOLID:
            room = Room(values.wood, values.cut, values.made, values.driest, values.dampest)
        return outcome_of(choices, wrong, room, style)

    groups.append(keep_group(
        lambda: panel, lambda: front_project(asked(panel.values), style),
        lambda kept: asdict(front_choices(kept, style)), folder, "The part that is off, and the season, are not kept.",
    ))
    panel = Panel("Fronts and gaps", groups, work)
    _show_what_applies(controls)
    return panel


def _show_what_applies(controls: dict) -> None:
    def follow(_change: object = None) -> None:
        for names, there in (
            (("difference",), controls["rule"].value == "stepped"),
            (("rows",), controls["bays"].value == 2),
            (("over",), controls["part"].value != NO_PART),
            (("cut", "made", "driest", "dampest"), controls["wood"].value != SOLID),
        ):
            for name in names:
                controls[name].layout.display = None if there else "none"

    for name in ("rule", "bays", "part", "wood"):
        controls[name].observe(follow, names="value")
    follow()


def outcome_of(choices: FrontChoices, wrong: Wrong, room: Room | None, style: Style) -> Outcome:
    """Solve and draw the fronts; `room` is the season's, None for fronts of sheet goods, which hardly move.

    Raises CannotBuild where no fronts can be, in the words of the controls.
    """
    _refuse(choices, wrong, room)
    project = front_project(choices, style)
    try:
        cabinet = solve(project)
    except ImpossibleProject as reason:
        mend = "Take fewer fronts, a smaller difference, or a higher opening."
        raise CannotBuild(_in_panel_words(reason.sentence), mend) from None

    planned = face_of(cabinet, choices.inset)
    face = spoilt(planned, wrong.part, wrong.over)
    year = year_of(room, planned, choices.gap) if room is not None else None
    scene = front_view(face, choices.gap, style)
    drawings = [_drawing(scene)]
    tables = [_fronts(face, style), Table("Gaps", ("Gap", "Width"), gap_rows(face, style), (1,), "gap/")]
    told = _say(planned, face, year, choices, wrong, style)
    if year is not None:
        drawn = season_view(year.tightest.season, style)
        drawings.append(Drawing(drawn.title, draw(drawn, PICTURE), drawn.alt))
        tables.append(room_table(year.tightest, style))
    why = why_of_fronts(project, choices, lambda face, over: spoilt(face, wrong.part, over), wrong.over, style, room)

    def again() -> Said:
        off = replace(wrong, over=leaf(wrong.over, OFF, "measured"))
        face = face_of(solve(traced(project)), choices.inset)
        year = year_of(room, face, choices.gap) if room is not None else None
        return _say(face, spoilt(face, off.part, off.over), year, choices, off, style)

    return Outcome(
        drawings, tables, sums(planned, choices, style), told.findings, told.message,
        why_said(told, again, style, why), sums_asked=True,
    )


def _say(
    planned: Face, face: Face, year: Year | None, choices: FrontChoices, wrong: Wrong, style: Style,
) -> Said:
    """What the panel says of the `face` that came of fronts `planned` so, and of their year."""
    with noting() as notes:
        found = findings(face, planned, choices, wrong.part, wrong.over if wrong.part != NO_PART else 0, style)
        if year is not None:
            found += season_findings(year, style)
        line = message(face, style)
    return said(notes, found, line)


def spoilt(face: Face, part: str, over: int) -> Face:
    """The face with one part off by `over`."""
    if part in (TOO_HIGH, TOO_LOW):
        return front_too_high(face, 1, 1, over if part == TOO_HIGH else -over)
    if part == TOO_WIDE:
        return front_too_wide(face, 1, 1, over)
    if part == DIVIDER:
        return divider_off(face, 1, over)
    return face


def _refuse(choices: FrontChoices, wrong: Wrong, room: Room | None) -> None:
    most = choices.count + (choices.bays == 2 and choices.rows == ONE_MORE)
    if choices.rule == RULES[3] and most > 6:
        raise CannotBuild(
            "The freer series has six heights, and bay 2 would have seven fronts.", "Take one front less."
        )
    if wrong.part == DIVIDER and choices.bays == 1:
        raise CannotBuild("One bay has no divider that could be off.", "Take two bays, or let another part be off.")
    if room is not None and room.driest > room.dampest:
        raise CannotBuild(
            f"The room is {room.driest} % humid at its driest and {room.dampest} % at its dampest.",
            "Make the driest humidity the lower one.",
        )


def _in_panel_words(sentence: str) -> str:
    """The solver's sentence about one drawer, as a sentence about the fronts."""
    why = sentence.partition(";")[0].replace("it leaves drawer", "the difference leaves front")
    return f"The fronts do not come out: {why}."


def _drawing(scene: Scene) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, "drawing/0/"), scene.alt)


def _fronts(face: Face, style: Style) -> Table:
    rows = [
        (f"front {piece.number}" if face.bays == 1 else f"bay {piece.bay} front {piece.number}",
         write_brief(piece.width, style), write_brief(piece.height, style))
        for piece in face.pieces
    ]
    return Table("Fronts, from the bottom up", ("Front", "Width", "Height"), rows, (1, 2), "front/")
