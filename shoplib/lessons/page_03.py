"""What the page on joinery allowances shows beside its exercises: worked sums, panels, and what goes wrong."""

from dataclasses import replace

from shoplib.checks import check
from shoplib.draw.joint_lesson import joint_lesson, stop_seen_from_above
from shoplib.draw.joint_wrong import back_to_back, too_narrow, unlike_sides
from shoplib.draw.scene import Scene
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.figure import Figure, dry_fit_says
from shoplib.lessons.joints_shown import READINGS, SOLD_AS, dado_as_wide_as, shown, size, two_bays
from shoplib.lessons.large_type import in_type
from shoplib.live.corner_panel import corner_panel
from shoplib.live.joint_panel import joint_panel, joint_style
from shoplib.live.panel import Panel
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

PICTURE = (420.0, 240.0)


def joints_panel() -> Panel:
    """The panel of the lesson, in the learner's unit."""
    return in_type(joint_panel(unit_in_use()))


def four_corners() -> Panel:
    """Four corner joints of one case side by side, in the learner's unit."""
    return in_type(corner_panel(unit_in_use()))


def picture_of(kind: str) -> Figure:
    """A joint of the lesson cut across, with its usual clearances; a stopped dado from above."""
    unit = unit_in_use()
    case, joint = shown(unit, kind)
    view = stop_seen_from_above if kind == "stopped dado" else joint_lesson
    return _figure(view(case, joint, joint_style(unit)), ())


def loose() -> Figure:
    """A dado as wide as the name of the sheet."""
    unit = unit_in_use()
    case, joint = dado_as_wide_as(lambda sheet: sheet.nominal, unit)
    scene = replace(joint_lesson(case, joint, joint_style(unit)), title="A dado as wide as the name of the sheet")
    return _figure(scene, (
        f"Sold as {SOLD_AS[unit]}, cut {SOLD_AS[unit]} wide: the shelf rattles, and nothing holds it square.",
    ))


def tight() -> Figure:
    """A dado as wide as the mean of the readings, where the sheet is thickest."""
    unit = unit_in_use()
    case, joint = dado_as_wide_as(lambda sheet: sheet.thickness, unit)
    sheet = case.sheets["case sheet"]
    over = sheet.thickest - sheet.thickness
    scene = replace(too_narrow(case, joint, over, joint_style(unit)), title="A dado as wide as the mean")
    return _figure(scene, (
        f"Readings {', '.join(READINGS[unit])}. Cut to the mean, the dado takes its thin end but not its thick one.",
    ))


def wrong_side() -> Figure:
    """A case whose right side was marked on the wrong side of the line: the dado is one shelf too high."""
    unit = unit_in_use()
    case, _ = shown(unit, "dado", fit=0, end_gap=0)
    right = case.by_name["right side"]
    moved = _higher(right, case.by_name["shelf"].thickness)
    wrong = replace(case, boards=tuple(moved if board is right else board for board in case.boards))
    return _figure(unlike_sides(wrong, "shelf", joint_style(unit)), _said(wrong, "stop"))


def too_deep() -> Figure:
    """Dadoes from both sides of a divider, each as deep as it may be alone."""
    unit = unit_in_use()
    case = two_bays(unit, size("deep", unit))
    return _figure(back_to_back(case, joint_style(unit)), _said(case, "stop"))


def _higher(side: Board, by: int) -> Board:
    """The side with its dado moved up by `by`."""
    along = side.placement.own_axis(2)
    cuts = []
    for cut in side.cuts:
        low, high = list(cut.low), list(cut.high)
        low[along], high[along] = low[along] + by, high[along] + by
        cuts.append(replace(cut, low=tuple(low), high=tuple(high)))
    return replace(side, cuts=tuple(cuts))


def _said(case: Cabinet, level: str) -> tuple[str, ...]:
    return tuple(dry_fit_says(found.text) for found in check(case) if found.level == level)


def _figure(scene: Scene, words: tuple[str, ...]) -> Figure:
    return Figure.of(scene, PICTURE, words, joint_style(unit_in_use()))
