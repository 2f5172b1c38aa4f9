"""A panel of boards edge to edge with loose splines, put together from the pairs of the joint bench."""

from dataclasses import replace

from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock
from shoplib.joints.draft import LYING, Draft
from shoplib.joints.spline import ALONG_THE_JOINT
from shoplib.lessons.joint_cuts import cut_like
from shoplib.measure import Style, share
from shoplib.model.box import Box, around
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet


def spline_for(groove: int, other: int, gap: int) -> int:
    """How wide a spline is between two grooves so deep, each `gap` deeper than the spline goes.

    >>> spline_for(16, 14, 1)
    28
    """
    return groove - gap + other - gap


def splined_panel(
    *, wide: int, count: int, long: int, thick: int, groove: int, gap: int, style: Style
) -> Cabinet:
    """`count` equal boards that come to `wide`, grooved so deep, a spline in each seam; lengths in ticks.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> panel = splined_panel(wide=18 * INCH, count=3, long=30 * INCH, thick=3 * INCH // 4, groove=INCH // 2,
    ...                       gap=INCH // 32, style=INCH_STYLE)
    >>> [board.name for board in panel.boards]
    ['board 1', 'board 2', 'board 3', 'spline 1', 'spline 2']
    >>> panel.by_name["board 2"].width == 6 * INCH, panel.by_name["spline 1"].length == 15 * INCH // 16
    (True, True)
    """
    each = share(wide, count, 1)[0]
    sheet = Sheet("boards", "solid", thick, (thick, thick))
    stock = Stock(sheet, sheet, each, enters_length=long, style=style)
    pair = joint("spline").build(stock, {"spline width": spline_for(groove, groove, gap), "end gap": gap})
    strip = pair.by_name["spline"]
    loose = Sheet("splines", "plywood", strip.thickness, (strip.thickness, strip.thickness))
    boards = [
        Draft(f"board {at + 1}", sheet, ALONG_THE_JOINT, Box((at * each, 0, 0), ((at + 1) * each, long, thick)))
        for at in range(count)
    ]
    splines, joints = [], []
    for at in range(1, count):
        seam = (at * each, 0, 0)
        names = {"left board": f"board {at}", "right board": f"board {at + 1}", "spline": f"spline {at}"}
        for name, draft in (("left board", boards[at - 1]), ("right board", boards[at])):
            cut_like(pair, name, draft, lambda box, seam=seam: box.moved(seam), names)
        splines.append(Draft(names["spline"], loose, LYING, strip.box.moved(seam)))
        joints += [replace(one, enters=names[one.enters], receives=names[one.receives]) for one in pair.joints]
    # A strip goes in last, between what stands: it holds no board off before both its gaps are used up.
    made = (*(draft.board for draft in boards), *(replace(draft.board, role="strip") for draft in splines))
    outside = around([board.box for board in made])
    sheets = {one.name: one for one in (sheet, loose)}
    return Cabinet("panel", made, sheets, tuple(joints), style=style, outside=outside, envelope=outside)
