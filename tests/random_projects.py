"""Random projects for the tests: every kind of base, back, corner, bay, slide and front, in both systems.

`project(seed)` is the same project for the same seed. Kinds are dealt round in turn, so that each
occurs often; sizes are drawn from what small workshops build. Made-up numbers, no source.
"""

import random
import re
from collections.abc import Callable
from dataclasses import replace

from shoplib.measure import INCH, MM, Style
from shoplib.model.cabinet import solve
from shoplib.model.project import (
    Back,
    Base,
    Bay,
    Block,
    Carcass,
    Drawers,
    Edging,
    Fronts,
    ImpossibleProject,
    JointChoice,
    Project,
    PullOut,
    Pulls,
    Rail,
    Shelves,
    Size,
    Space,
)
from shoplib.model.sheet import Sheet
from shoplib.tables.slides import slides

BASES = ("none", "toe space", "plinth", "feet", "casters")
BACKS = ("rabbet", "groove", "applied", "none")
CORNERS = ("butt", "rabbet", "dado", "tongue")
FRONTS = ("inset", "overlay", "none")
BAYS = ("drawers", "shelves", "pull-out", "open")


def project(seed: int) -> Project:
    """A solvable project; draws again, from the same stream, what no set of boards can be."""
    return project_and_refusals(seed)[0]


def project_and_refusals(seed: int, *, others: bool = True) -> tuple[Project, list[str]]:
    """The same, and the keys for which the draws before it were refused, without their numbers.

    Without `others` there are no pocket screws, fingers and drawer-front joints.
    """
    stream, refused = random.Random(seed), []
    for _ in range(60):
        drawn = _draw(stream, seed)
        if others:
            drawn = _with_other_joints(drawn, random.Random(f"joints {seed} {len(refused)}"))
        try:
            solve(drawn)
        except ImpossibleProject as fault:
            refused.append(re.sub(r"\d+", "", fault.key))
            continue
        return drawn, refused
    raise AssertionError(f"no solvable project in 60 draws for seed {seed}: {refused}")


def kinds_in(drawn: Project) -> dict[str, set[str]]:
    """Which kinds this project shows, for counting."""
    drawers = [bay.drawers for bay in drawn.bays if bay.kind == "drawers"]
    used = {rule.slide for rule in drawers} | {bay.pull_out.slide for bay in drawn.bays if bay.kind == "pull-out"}
    return {
        "base": {drawn.base.kind},
        "back": {drawn.carcass.back.kind},
        "corner": {drawn.carcass.corner.kind},
        "box corner": {rule.corner.kind for rule in drawers},
        "box back": {"as the front" if rule.back_corner is None else rule.back_corner.kind for rule in drawers},
        "shelf": {drawn.carcass.shelf.kind},
        "top": {drawn.carcass.top},
        "bay": {bay.kind for bay in drawn.bays},
        "slide": used,
        "front": {drawn.fronts.kind},
        "heights": {rule.heights for rule in drawers},
        "shelves": set().union(*(_shelf_kinds(bay.shelves) for bay in drawn.bays if bay.kind == "shelves")),
        "drawers in a bay": {"up to 4" if rule.count < 5 else "5 to 8" for rule in drawers},
        "rail": {"at" if rail.at is not None else "under the top" for rail in drawn.carcass.rails},
    }


def _shelf_kinds(rule: Shelves) -> set[str]:
    named = {"fixed": rule.fixed, "at": rule.at, "set back": rule.setbacks, "shallow": rule.depths, "loose": rule.loose}
    return {name for name, there in named.items() if there}


def _draw(r: random.Random, seed: int) -> Project:
    inch = seed % 2 == 0
    unit = INCH // 4 if inch else 5 * MM
    style = Style("in", INCH // r.choice([16, 32, 64])) if inch else Style("mm", r.choice([MM // 2, MM, MM // 10]))

    def between(low_mm: int, high_mm: int) -> int:
        return r.randint(low_mm * MM // unit, high_mm * MM // unit) * unit

    def sheet(name: str, nominal: int) -> Sheet:
        fine = INCH // 1000 if inch else MM // 100
        real = nominal - r.randint(0, 8 * MM // 10 // fine) * fine
        readings = tuple(real + r.randint(-8, 8) * fine for _ in range(r.randint(1, 4)))
        return Sheet(name, "plywood", nominal, readings, *panel, r.choice(["length", "none"]))

    panel = (96 * INCH, 48 * INCH) if inch else (2440 * MM, 1220 * MM)
    sheets = {
        "case sheet": sheet("case sheet", r.choice([15, 18]) * MM if not inch else INCH * 3 // r.choice([4, 5])),
        "box sheet": sheet("box sheet", 12 * MM if not inch else INCH // 2),
        "thin sheet": sheet("thin sheet", 6 * MM if not inch else INCH // 4),
        "front sheet": sheet("front sheet", 18 * MM if not inch else INCH * 3 // 4),
    }
    case = sheets["case sheet"].thickness
    fine_fit = r.choice([0, INCH // 250 if inch else MM // 10])

    def joint(kind: str, share: int = 2) -> JointChoice:
        depth = case // r.choice([share, 3])
        gap = r.choice([0, MM // 2])
        stop = r.choice([0, 0, 20 * MM])
        return JointChoice(kind, depth, fine_fit, gap if kind != "butt" else 0, stop if kind == "dado" else 0)

    base_kind = BASES[seed % 5]
    tall = r.choice([(400, 900), (900, 1800)])
    base = Base(
        base_kind,
        between(60, 120) if base_kind != "none" else 0,
        between(0, 80) if base_kind in ("toe space", "plinth") else 0,
    )
    bottom = r.choice(["between", "between", "under"]) if base_kind != "toe space" else "between"
    top = r.choice(["between", "over", "stretchers"])
    back_kind = BACKS[seed // 5 % 4]
    back = Back(
        back_kind,
        "" if back_kind == "none" else "thin sheet",
        case // 3 if back_kind in ("rabbet", "groove") else None,
        r.choice([10, 15]) * MM if back_kind == "groove" else INCH // 2,
        fine_fit if back_kind in ("rabbet", "groove") else 0,
        r.choice([0, MM // 2]) if back_kind in ("rabbet", "groove") else 0,
    )
    corner = joint(CORNERS[seed // 3 % 4])
    carcass = Carcass(
        sheet="case sheet",
        top=top,
        bottom=bottom,
        corner=replace(corner, stop=0),
        divider=joint(r.choice(["butt", "dado", "tongue"]), 3),
        shelf=joint(r.choice(["butt", "dado", "dado", "tongue"]), 3),
        overhang_sides=between(0, 20) if top == "over" else 0,
        overhang_front=between(0, 20) if top == "over" else 0,
        stretcher_width=between(60, 90),
        back=back,
        rails=(_rail(r, between, joint, tall[0]),) if r.random() < 0.4 else (),
    )
    if top != "stretchers":  # drawn all the same, so that the stream stays as it was
        carcass = replace(carcass, stretcher_width=Carcass("").stretcher_width)
    front_kind = FRONTS[seed // 2 % 3]
    fronts = Fronts(
        front_kind,
        "" if front_kind == "none" else r.choice(["front sheet", "case sheet"]),
        r.choice([2, 3]) * MM,
        r.choice([2, 3]) * MM,
        r.choice([1, 3]) * MM,
    )
    if front_kind != "overlay":
        fronts = replace(fronts, reveal=Fronts().reveal)
    count = r.choice([1, 2, 2, 3, 3])
    kinds = [BAYS[(seed + seed // 7) % 4]] + [r.choice(("drawers", *BAYS)) for _ in range(count - 1)]
    size = Size("outside", between(450, 700) * count, between(*tall), between(420, 650))
    low = base.height if base_kind in ("toe space", "plinth") else 0
    bays = tuple(_bay(r, kind, inch, fine_fit, size.height - low, between) for kind in kinds)
    if seed % 7 == 0:
        size = Size("inside", size.width, size.height, size.depth)
    space = None
    if seed % 7 == 3:
        space = Space(
            (size.width, size.width + unit),
            (size.height, size.height + unit),
            (size.depth, size.depth + unit),
            clearance_width=2 * unit,
            clearance_height=2 * unit,
            bring_in=r.choice(["slid in", "stood up from its back"]),
            blocks=(Block("pipe", size.width, between(30, 90), between(20, 60), bottom=between(0, 50)),)
            if r.random() < 0.5
            else (),
        )
        size = Size("space")
    edging = (Edging(r.choice(["case", "fronts"]), r.choice(["band", "strip"]), MM),) if r.random() < 0.3 else ()
    pulls = Pulls(r.choice([0, 96 * MM]), 30 * MM, 5 * MM) if front_kind != "none" and r.random() < 0.6 else None
    return Project(f"random {seed}", style, sheets, size, carcass, space, base, bays, fronts, pulls, edging)


def _with_other_joints(drawn: Project, r: random.Random) -> Project:
    """The project with pocket screws, fingers or drawer-front joints in some places, where they can stand.

    They are drawn from a stream of their own, so that the rest of the project stays as it was before they came.
    """
    carcass = drawn.carcass
    fit = carcass.corner.fit
    kind = r.choice(["", "", "", "pocket screws", "finger"])
    at_the_ends = drawn.base.kind != "toe space" and not carcass.overhang_sides
    if kind == "pocket screws" or (kind == "finger" and at_the_ends):
        carcass = replace(carcass, corner=JointChoice(kind, fit=fit if kind == "finger" else 0))
    for place in ("divider", "shelf"):
        if r.random() < 0.25:
            carcass = replace(carcass, **{place: JointChoice("pocket screws")})
    if r.random() < 0.2:
        carcass = replace(carcass, rails=tuple(replace(rail, joint=JointChoice("pocket screws", fit=rail.joint.fit))
                                               for rail in carcass.rails))
    bays = tuple(
        replace(bay, drawers=_with_other_corners(bay.drawers, drawn, r)) if bay.drawers else bay for bay in drawn.bays
    )
    return replace(drawn, carcass=carcass, bays=bays)


def _with_other_corners(rule: Drawers, drawn: Project, r: random.Random) -> Drawers:
    """A box whose front, or whose back, is joined in another way, and its sides longer than it."""
    slide, inch, fit = slides()[rule.slide], drawn.style.unit == "in", rule.corner.fit
    kind = r.choice(["", "", *["pocket screws"] * 3, "finger", "finger", "drawer lock", "drawer lock"])
    sizes = r.choice([{}, {"lip": INCH // 8 if inch else 3 * MM, "tongue": 4 * MM}])
    gap, finger, other = r.choice([0, MM // 2]), r.choice([None, 3 * INCH // 8 if inch else 8 * MM]), r.random()
    dado = JointChoice("dado", r.choice([None, 4 * MM]), fit, stop=r.choice([0, 8 * MM]))
    back = r.choice([dado, JointChoice(), JointChoice("tongue", 5 * MM, fit)])
    if kind == "pocket screws" and slide.largest_side is None and rule.count < 7:  # lower boxes have no room for two
        rule = replace(rule, corner=JointChoice(kind), box_sheet="front sheet")
    elif kind == "finger" and slide.carries != "side strip":
        rule = replace(rule, corner=JointChoice(kind, fit=fit, finger=finger if rule.bottom == "groove" else None))
    elif kind == "drawer lock" and slide.carries != "side strip":
        sizes = sizes if drawn.style.step <= INCH // 32 else {"lip": INCH // 8, "tongue": 4 * MM}
        rule = replace(rule, corner=JointChoice(kind, fit=fit, end_gap=gap, **sizes))
    if other < 0.55:
        rule = replace(rule, back_corner=back, behind_back=r.choice([12, 20]) * MM)
    return rule


def _rail(r: random.Random, between: Callable, joint: Callable, height_mm: int) -> Rail:
    at = r.choice([None, between(150, height_mm - 200)])
    return Rail(between(50, 90), at=at, joint=r.choice([JointChoice(), replace(joint("dado", 3), stop=0)]))


def _bay(r: random.Random, kind: str, inch: bool, fit: int, height: int, between: Callable) -> Bay:
    """A bay in a case that is so high from the foot of its sides up."""
    if kind == "drawers":
        names = list(slides())
        slide = r.choice([*names, *[name for name in names if not name.startswith("side-mount")] * 3])
        shelf = slide == "box rides on the shelf"
        most = height // (110 * MM)  # more would leave some of their boxes no height over their bottoms
        count = r.randint(1, most if most < 8 else 8)
        rule = r.choice(["equal", "stepped", "ratio", "given"])
        given = [between(60, 110) for _ in range(count)]
        given[r.randrange(count)] = "rest"
        drawers = Drawers(
            count=count,
            heights=rule,
            difference=(20 if count < 5 else 5) * MM if rule == "stepped" else 0,
            ratio=tuple(range(count + 8, 8, -1)) if rule == "ratio" else (),
            given=tuple(given) if rule == "given" else (),
            slide=slide,
            box_sheet="box sheet",
            bottom_sheet="thin sheet",
            corner=JointChoice(r.choice(["rabbet", "butt", "tongue"]), r.choice([None, 4 * MM]), fit),
            bottom=r.choice(["groove", "under back"]),
            bottom_up=8 * MM,
            bottom_depth=r.choice([4 * MM, 5 * MM]),
            bottom_fit=fit,
            bottom_slack=r.choice([0, MM]),
            between="shelf" if shelf else r.choice(["nothing", "nothing", "strip", "shelf"]),
            across=r.choice([1, 1, 2, 3]) if shelf else 1,
        )
        return Bay("drawers", "equal", drawers)
    if kind == "shelves":
        shelves = r.choice([_fixed_shelves, _shelves_at, _loose_shelves])(r, height, between)
        return Bay("shelves", "equal", None, shelves)
    if kind == "pull-out":
        slide = "side-mount ball-bearing" if inch else "side-mount ball-bearing, metric lengths"
        panel = PullOut(on=r.choice(["left", "right"]), slide=slide, room=r.choice([80, 120]) * MM)
        return Bay("pull-out", "equal", None, None, panel)
    return Bay("open", "equal")


def _fixed_shelves(r: random.Random, height: int, between: Callable) -> Shelves:
    count = r.randint(1, 3)
    setbacks = tuple(between(0, 60) for _ in range(count)) if r.random() < 0.9 else ()
    return Shelves(fixed=count, setbacks=setbacks)


def _shelves_at(r: random.Random, height: int, between: Callable) -> Shelves:
    """Shelves at heights above the foot of the sides, clear of a bottom over a toe space and of a rail's edge."""
    part = height // 4
    at = [number * part + between(0, 40) for number in range(1, r.randint(2, 4))]
    r.shuffle(at)
    depths = tuple(between(150, 250) for _ in at) if r.random() < 0.75 else ()
    return Shelves(at=tuple(at), depths=depths)


def _loose_shelves(r: random.Random, height: int, between: Callable) -> Shelves:
    return Shelves(loose=r.randint(1, 3))
