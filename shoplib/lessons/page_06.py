"""What the page on hardware layout shows beside its exercises: worked sums and the panel."""

from shoplib.checks.screws import find_meeting_screws
from shoplib.checks.screws_in_cuts import find_screws_in_cuts
from shoplib.draw.lying_case import UPRIGHT
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.hardware_shown import DRAWER, choices, hung, into, solved
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.hardware_project import BESIDE, KINDS, setting_step
from shoplib.live.panel import Panel
from shoplib.measure.traced import leaf_beside
from shoplib.model.hardware_places import front_screw, pull_places, slides_on
from shoplib.model.solved import Screw
from shoplib.tables.screws import ScrewRow, screws


def layout_panel() -> Panel:
    """The panel of the lesson, in the learner's unit."""
    return in_type(hardware_panel(unit_in_use()))


def spacers_worked(unit: str) -> Worked:
    """From the lowest slide to the others; every number is read off the solved case."""
    say, chosen = Say(unit), choices(unit, kind=KINDS[1])
    case = solved(chosen, unit)
    lowest, *others = slides_on(case, UPRIGHT)
    front = case.by_name["bay 1 drawer 2 front"].box.size[2]
    apart = front + case.project.fronts.gap
    step = say.length(apart)
    lines = [
        ("lowest slide, lower edge", "off the plan, from the bottom", say.length(lowest.spacer)),
        ("from slide to slide", f"front {say.length(front)} + gap {say.length(chosen.gap)}", step),
    ]
    before = lowest
    for number, place in enumerate(others, 2):
        lines.append((
            f"spacer {number}", f"{say.length(before.spacer)} + {say.length(place.spacer - before.spacer)}",
            say.length(place.spacer),
        ))
        before = place
    sizes = [("from slide to slide", apart)]
    sizes += [(f"spacer {number}", place.spacer) for number, place in enumerate((lowest, *others), 1)]
    title = f"{chosen.count} inset fronts in an opening {say.length(chosen.height)} high"
    return Worked(title, lines, why_each(sizes, say.style))


def setback_worked(unit: str) -> Worked:
    """Where a slide begins behind overlay and behind inset fronts."""
    say, lines, sizes = Say(unit), [], []
    for kind in KINDS:
        chosen = choices(unit, kind=kind)
        case = solved(chosen, unit)
        place = slides_on(case, UPRIGHT)[0]
        behind = say.exact(case.slides[place.fitting.row].setback)
        how = f"front {say.exact(chosen.front)} + {behind}" if chosen.inset else f"edge of the side + {behind}"
        lines.append((f"{kind.split(',')[0]} front", how, say.exact(place.setback)))
        sizes.append((lines[-1][0], place.setback))
    return Worked("Where the slide begins, from the front edge of the side", lines, why_each(sizes, say.style))


def pulls_worked(unit: str) -> Worked:
    """The two holes of a pull in the lowest front."""
    say, chosen = Say(unit), choices(unit)
    case = solved(chosen, unit)
    front, (one, two) = case.by_name[f"{DRAWER} front"], pull_places(case, f"{DRAWER} front")
    wide, high = say.exact(front.box.size[0]), say.exact(front.box.size[2])
    pitch = say.length(chosen.pitch)
    lines = [
        ("first hole, from the left end", f"({wide} - {pitch}) / 2", say.exact(one.left)),
        ("second hole, from the left end", f"{say.exact(one.left)} + {pitch}", say.exact(two.left)),
        ("both, from the lower edge", f"{high} / 2, to the nearest {say.exact(case.project.step)}", say.length(one.up)),
    ]
    sizes = [
        ("front, width", front.box.size[0]), ("front, height", front.box.size[2]), ("first hole", one.left),
        ("second hole", two.left), ("both, from the lower edge", one.up),
    ]
    return Worked(f"A pull of {pitch} on a front {wide} wide and {high} high", lines, why_each(sizes, say.style))


def screws_worked(unit: str) -> Worked:
    """The longest screw from inside the box, by measured and by nominal thickness."""
    say, case = Say(unit), solved(choices(unit), unit)
    fixed, row = front_screw(case, DRAWER), screws(unit)["front"]
    wood = fixed.through + fixed.into
    lines = [
        ("wood", f"{say.exact(fixed.through)} + {say.exact(fixed.into)}", say.exact(wood)),
        *_longest(wood, row, fixed.screw, say),
        ("left before its point", f"{say.exact(wood)} - {say.exact(fixed.screw.length)}", say.exact(fixed.left)),
    ]
    sizes = [("wood", wood), *_longest_sizes(wood, row, fixed.screw), ("left before its point", fixed.left)]
    return Worked("A screw through the box front into the front", lines, why_each(sizes, say.style))


def _longest_sizes(wood: int, row: ScrewRow, screw: Screw) -> list[tuple[str, int]]:
    """The sizes of `_longest`."""
    longest = wood - leaf_beside(row.spare, "wood kept before the point", "table", wood)
    return [("longest allowed", longest), ("screw", screw.length)]


def _longest(wood: int, row: ScrewRow, screw: Screw, say: Say) -> list[tuple[str, str, str]]:
    """The screw that was chosen for so much wood, and how."""
    sold = ", ".join(say.exact(length) for length in row.lengths)
    return [
        ("longest allowed", f"{say.exact(wood)} - {say.exact(row.spare)}", say.exact(wood - row.spare)),
        ("sold", sold, ""),
        (f"screw, {screw.gauge}", "the longest of these that is no longer", say.exact(screw.length)),
    ]


def tools_worked(unit: str) -> Worked:
    """Four tools on a panel: the space, and the pegs."""
    say, (row, names) = Say(unit), hung(unit)
    tools = " + ".join(say.length(wide) for wide in row.tools)
    left, mark = row.width - sum(row.tools), say.exact(setting_step(unit))
    lines = [
        ("tools together", tools, say.length(sum(row.tools))),
        ("left for spaces", f"{say.length(row.width)} - {say.length(sum(row.tools))}", say.length(left)),
        ("each space", f"{say.length(left)} / {len(names) + 1}, down to the next {mark}", say.length(row.space)),
    ]
    lines += [
        (f"peg of the {name}", "from the left edge", say.length(middle))
        for name, middle in zip(names, row.middles, strict=True)
    ]
    sizes = [
        ("tools together", sum(row.tools)), ("left for spaces", left), ("each space", row.space),
        *((f"peg of the {name}", middle) for name, middle in zip(names, row.middles, strict=True)),
    ]
    title = f"{len(names)} tools on a panel {say.length(row.width)} wide"
    return Worked(title, lines, why_each(sizes, say.style))


def conflicts_worked(unit: str) -> Worked:
    """What stands on the other face of a divider, and what the screws of the slides meet there."""
    say, lines, sizes = Say(unit), [], []
    for beside in BESIDE[1:]:
        case = solved(choices(unit, beside=beside), unit)
        wood, screw = case.by_name["divider 1"].thickness, into(case, "divider 1")
        found = [*find_meeting_screws(case), *find_screws_in_cuts(case)]
        told = f"{say.exact(found[0].amount)} too much" if found else "nothing meets"
        if not lines:
            lines += _longest(wood, screws(unit)["slide"], screw, say)
            sizes += [("divider", wood), *_longest_sizes(wood, screws(unit)["slide"], screw)]
        lines.append((f"in bay 2: {beside}", f"screws {say.exact(screw.length)}, divider {say.exact(wood)}", told))
        if found:
            sizes.append((f"too much, beside {beside}", found[0].amount))
    title = "The slides of three drawers on a divider, and what is on its other face"
    return Worked(title, lines, why_each(sizes, say.style))
