"""What the page on fronts and gaps shows beside its exercises: worked sums and the panel."""

from dataclasses import replace

from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.fronts_shown import ROOM, choices, face, part_off, season_why, solid_front
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.front_panel import DIVIDER, TOO_HIGH, TOO_WIDE, front_panel, front_style, spoilt
from shoplib.live.front_project import KINDS, RULES
from shoplib.live.panel import Panel
from shoplib.measure import to_step, write_brief, write_length
from shoplib.model.front_face import front_too_high, gaps_of
from shoplib.model.season import moisture

COUNT = 4
"""How many fronts the heights are compared with."""


def fronts_panel() -> Panel:
    """The panel of the lesson, in the learner's unit."""
    return in_type(front_panel(unit_in_use()))


def inset_worked(unit: str) -> Worked:
    """From the opening to equal inset fronts; every number is read off the solved case."""
    say, chosen = Say(unit), choices(unit)
    column = face(chosen, unit).bay(1)
    gaps = chosen.count + 1
    left = sum(piece.height for piece in column)
    up, across, gap = say.length(chosen.height), say.length(chosen.width), say.exact(chosen.gap)
    lines = [
        ("gaps, from bottom to top", f"{chosen.count} + 1", str(gaps)),
        ("left for the fronts", f"{up} - {gaps} x {gap}", say.length(left)),
        (
            "each front, height", f"{say.length(left)} / {chosen.count}, down to the next {_mark(unit)}",
            say.length(column[-1].height),
        ),
    ]
    if column[0].height != column[-1].height:
        lines.append(("lowest front", "what is left", say.length(column[0].height)))
    lines.append(("each front, width", f"{across} - 2 x {gap}", say.length(column[0].width)))
    sizes = [
        ("left for the fronts", left), ("each front, height", column[-1].height),
        ("lowest front, height", column[0].height), ("each front, width", column[0].width),
    ]
    title = f"{chosen.count} inset fronts in an opening {across} wide and {up} high, gap {gap}"
    return Worked(title, lines, why_each(sizes, say.style))


def _mark(unit: str) -> str:
    """The mark that sizes of fronts end on."""
    return write_length(front_style(unit).step, front_style(unit))


def overlay_worked(unit: str) -> Worked:
    """The same opening with overlay fronts: alone, and beside a second bay."""
    say, lines = Say(unit), []
    chosen = choices(unit, kind=KINDS[1])
    opening, thick, reveal = say.length(chosen.width), say.exact(chosen.thick), say.exact(chosen.around)
    one = face(chosen, unit)
    side = one.uprights[0][1] - one.pieces[0].x[0]
    lines.append(("overlay on a side", f"{thick} - {reveal}", say.exact(side)))
    lines.append(("front, one bay", f"{opening} + 2 x {say.exact(side)}", say.exact(one.pieces[0].width)))
    two = face(choices(unit, kind=KINDS[1], bays=2), unit)
    first, divider = two.bay(1)[0], two.uprights[1]
    share = first.x[1] - divider[0]
    lines.append(("overlay on a divider", f"({thick} - {say.exact(chosen.gap)}) / 2", say.exact(share)))
    lines.append((
        "front, two bays", f"{opening} + {say.exact(side)} + {say.exact(share)}", say.exact(first.width)
    ))
    down = to_step(first.width, front_style(unit).step, "down")
    lines.append((f"the same, down to the next {_mark(unit)}", "the gap takes the rest", say.length(down)))
    title = f"Overlay fronts before an opening {opening} wide, reveal {reveal}, gap {say.exact(chosen.gap)}"
    sizes = [
        ("overlay on a side", side), ("front, one bay", one.pieces[0].width), ("overlay on a divider", share),
        ("front, two bays", first.width), ("the same, down", down),
    ]
    return Worked(title, lines, why_each(sizes, say.style))


def heights_worked(unit: str) -> Worked:
    """The same opening shared among four fronts by each rule, from the top down."""
    say, lines, told = Say(unit), [], []
    for rule in RULES:
        chosen = choices(unit, count=COUNT, rule=rule)
        column = face(chosen, unit).bay(1)
        named = f"stepped, by {say.length(chosen.difference)}" if rule == "stepped" else rule
        sizes = [say.length(piece.height) for piece in reversed(column)]
        lines.append((named, ", ".join(sizes[:-1]), f"lowest {sizes[-1]}"))
        told += [(f"{rule}: front {piece.number}", piece.height) for piece in reversed(column)]
    title = f"{COUNT} inset fronts in {say.length(chosen.height)}, from the top down"
    return Worked(title, lines, why_each(told, say.style))


def rows_worked(unit: str) -> Worked:
    """The rows of two bays with the same heights, where the lowest front of bay 2 came out too high."""
    say, over, sizes = Say(unit), part_off(unit), []
    spoilt_face = front_too_high(face(choices(unit, bays=2), unit), 2, 1, over)
    lines, floor = [], spoilt_face.floor[1]
    for one, other in zip(spoilt_face.bay(1), spoilt_face.bay(2), strict=True):
        off = other.z[0] - one.z[0]
        edges = f"bay 1: {say.length(one.z[0] - floor)}, bay 2: {say.length(other.z[0] - floor)}"
        row = f"row {one.number}"
        sizes += [(f"{row}, bay {bay.bay},", bay.z[0] - floor) for bay in (one, other)] + [(f"{row}: off", off)]
        lines.append((f"row {one.number}, lower edges", edges, f"{say.length(off)} off" if off else "in line"))
    return Worked(f"Two bays, up from the bottom; in bay 2 the lowest front is {say.length(over)} too high", lines,
                  why_each(sizes, say.style))


def errors_worked(unit: str) -> Worked:
    """One part off by the same amount each time: which gaps it changes, inset and overlay, in two bays."""
    say, lines, over, told = Say(unit), [], part_off(unit), []
    for kind in KINDS:
        chosen = choices(unit, kind=kind, bays=2)
        planned = face(chosen, unit)
        before = {gap.between: gap.size for gap in gaps_of(planned)}
        for part in (TOO_HIGH, TOO_WIDE, DIVIDER):
            changed = [gap for gap in gaps_of(spoilt(planned, part, over)) if gap.size != before.get(gap.between)]
            sizes = " and ".join(dict.fromkeys(say.exact(gap.size) for gap in changed))
            count = f"{len(changed)} of {len(before)}" + (f", now {sizes}" if changed else "")
            called = f"{kind.split(',')[0]}: {part}"
            lines.append((called, "gaps that are not as planned", count))
            told += [(f"{called}, now", gap.size) for gap in changed]
    title = f"One part {say.length(over)} off, gaps planned {say.exact(chosen.gap)}"
    return Worked(title, lines, why_each(told, say.style))


def season_worked(unit: str) -> Worked:
    """A solid front through the year, and its gaps; moisture and movement as the model has them."""
    say, season = Say(unit), solid_front(unit)

    def told(ticks: int) -> str:
        return write_brief(ticks, say.style, decimal=True)  # as the panel and the fold below write it

    lines = [
        (f"moisture content at {humid} % humidity", when, f"{moisture(humid):.2f} %")
        for humid, when in ((season.made, "as made"), (season.driest, "driest"), (season.dampest, "dampest"))
    ]
    height, factor = say.length(season.height), f"{float(season.coefficient):.5f}"
    for humid, name in ((season.driest, "shrinks, driest"), (season.dampest, "grows, dampest")):
        change = abs(moisture(humid) - moisture(season.made))
        moves = told(abs(season.grown(humid)))
        lines.append((name, f"{height} x {factor} x {change:.2f}", moves))
    gap, grows = told(season.gap), told(season.grown(season.dampest))
    to_case = replace(season, beside=0).narrowest_gap()
    lines += [
        ("gap to one like it, driest", f"{gap} + {told(-season.grown(season.driest))}",
         told(season.widest_gap())),
        ("gap to one like it, dampest", f"{gap} - {grows}", told(season.narrowest_gap())),
        ("gap to the case, dampest", f"{gap} - {grows} / 2", told(to_case)),
    ]
    return Worked(f"A front of {ROOM.cut} white oak, {height} high, gap {gap}", lines, season_why(unit, case=True))
