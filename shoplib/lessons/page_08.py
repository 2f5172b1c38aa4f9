"""What the page from the cut list to the yard shows beside its exercises: worked sums, cuts in order, what to buy."""

from collections.abc import Sequence
from itertools import groupby

from shoplib.buying.board_measure import write_volume
from shoplib.buying.line import Line
from shoplib.buying.list import buying_list
from shoplib.buying.stock_lines import stocked
from shoplib.documents.buying_file import plain
from shoplib.layout.order import Step
from shoplib.layout.strips import left_beside, run_of, strips
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.large_type import large_in_use
from shoplib.lessons.say import Say
from shoplib.lessons.sheets_shown import called, case_sheets, compared, hub_case, rows, sheets_of, steps, typed
from shoplib.lessons.worked import Worked
from shoplib.live.layout_panel import LayoutPanel, layout_panel
from shoplib.live.print_panel import PrintPanel
from shoplib.measure import read_length, write_measured
from shoplib.measure.traced import leaf

FRONT = {
    "in": ("14 in", "5 in", "1 in", "1/2 in", "1/4 in", "2 in"),
    "mm": ("360 mm", "130 mm", "26 mm", "12 mm", "6 mm", "50 mm"),
}
"""Solid fronts: finished length and width, thickness of the rough board, what each is sawn longer and wider, and what
comes off each end of the board.
"""

FRONTS = 3


def list_worked(unit: str) -> Worked:
    """The cut list of the case for hubs, line by line."""
    say, lines, sizes = Say(unit), [], []
    for row in rows(unit):
        (length, width, thick), (long, wide, _) = row.cut, row.finished
        name = called(row)
        saw = f"{say.length(length)} x {say.length(width)} x {write_measured(thick, say.style)}"
        grain = "grain along the length" if row.grain == "length" else "grain either way"
        lines.append((f"{row.count} x {name}", f"{saw}, {grain}", f"finished {say.length(long)} x {say.length(wide)}"))
        sizes += [
            (f"{name}, length at the saw", length), ("width at the saw", width), ("thickness", thick),
            (f"{name}, finished length", long), ("finished width", wide),
        ]
    return Worked("The cut list of the case for hubs, as it leaves the saw", lines, why_each(sizes, say.style))


def sums_worked(unit: str) -> Worked:
    """The sums that the list must close, and its count."""
    say, case = Say(unit), hub_case(unit)
    side, back = case.by_name["left side"], case.by_name["back"]
    width, strip = side.cut_size[1], side.edging[0][1].thickness
    lines = [(
        "boards, counted in the drawing and at the back", " + ".join(str(row.count) for row in rows(unit)),
        str(len(case.boards)),
    )]
    sizes = []
    chains = [(tuple(what for what, _ in chain.terms), [ticks for _, ticks in chain.terms], chain.total[1])
              for chain in case.sums]
    chains.append((("side at the saw", "strip", "back"), [width, strip, back.thickness], case.outside.size[1]))
    for names, terms, total in chains:
        lines.append((" + ".join(names), " + ".join(map(say.exact, terms)), say.length(total)))
        sizes += [*zip(names, terms, strict=True), (f"{names[0]} and so on, together", total)]
    return Worked("What must come out", lines, why_each(sizes, say.style))


def typed_worked(unit: str) -> Worked:
    """The list as Noor typed it, with a slip in it."""
    say = Say(unit)
    lines = [
        (f"line {number}: {called(row)}", str(row.count), f"{say.length(length)} x {say.length(row.cut[1])}")
        for number, (row, length) in enumerate(typed(unit), 2)
    ]
    sizes = [size for row, length in typed(unit) for size in ((called(row), length), (called(row), row.cut[1]))]
    lines = [("line 1: part", "count", "length x width at the saw"), *lines]
    return Worked("Noor's list, as typed", lines, why_each(sizes, say.style))


def slip_worked(unit: str) -> Worked:
    """What the check finds in Noor's list, and what it would do."""
    say = Say(unit)
    (found,) = compared(unit).differences
    row, length = next((row, length) for row, length in typed(unit) if length != row.cut[0])
    bottom = hub_case(unit).by_name["bottom"].length
    lines = [(f"line {line}", "", said) for line, said in found.lines]
    lines += [("so", "", said) for said in found.would[:3]]
    sizes = [("as typed", length), ("planned", row.cut[0]), ("too long", length - row.cut[0]), ("bottom", bottom)]
    return Worked("The check of Noor's list", lines, why_each(sizes, say.style))


def strips_worked(unit: str) -> Worked:
    """How many strips as wide as a side come out of a half sheet, and what is left."""
    say, case = Say(unit), hub_case(unit)
    sheet, kerf = case.project.sheets["case sheet"], case.project.cutting.kerf
    strip = case.by_name["left side"].cut_size[1]
    room, each = sheet.width - 2 * sheet.trim, strip + kerf
    count = strips(sheet.width, strip, kerf, sheet.trim)
    rest = left_beside(sheet.width, strip, kerf, sheet.trim, count)
    wide, thin = say.exact(strip), say.exact(kerf)
    lines = [
        ("half sheet, a full one cut across in two", "", f"{say.length(sheet.length)} x {say.length(sheet.width)}"),
        ("without blade and trim", f"{say.length(sheet.width)} / {wide}", f"{sheet.width // strip} strips"),
        ("both edges trimmed", f"{say.length(sheet.width)} - 2 x {say.exact(sheet.trim)}", say.exact(room)),
        ("strip and blade", f"{wide} + {thin}", say.exact(each)),
        ("strips", f"({say.exact(room)} + {thin}) / {say.exact(each)}, whole ones", f"{count} strips"),
        ("left beside them", f"{say.exact(room)} - {count} x {say.exact(each)}", say.exact(rest)),
    ]
    sizes = [("both edges trimmed", room), ("strip and blade", each), ("strip", strip), ("left beside them", rest)]
    return Worked(f"Strips {wide} wide from a half sheet", lines, why_each(sizes, say.style))


def sheets_worked(unit: str) -> Worked:
    """How many half sheets the case takes, by area and as it is laid out, and what is left."""
    say, found = Say(unit), case_sheets(unit)
    stock = found.job.stock[0]
    parts = sum(part.length * part.width * part.count for part in found.job.parts)
    first, last = found.sheets[0], found.sheets[-1]
    left = max((rest for sheet in found.sheets for rest in sheet.sawn.offcuts), key=lambda rest: rest.area)
    largest = max(found.job.parts, key=lambda part: part.length * part.width)
    again = strips(left.w, largest.length, found.job.kerf) * strips(left.h, largest.width, found.job.kerf)
    lines = [
        ("by area, without the back", "area of all parts / area of a half sheet",
         f"{parts / (stock.length * stock.width):.2f}"),
        ("by layout", f"{len(first.pieces)} parts, then {len(last.pieces)}", f"{len(found.sheets)} half sheets"),
        ("largest offcut", f"of {last.name}, grain along its length", f"{say.exact(left.w)} x {say.exact(left.h)}"),
        ("from it, once more", f"{largest.name}, {say.exact(largest.length)} x {say.exact(largest.width)}",
         f"{again} of them"),
    ]
    told = f"{say.exact(left.w)} x {say.exact(left.h)}"
    why = (
        f"largest offcut {told} = what is left of {last.name} when its parts, their cuts and the trim are off",
        *why_each([(largest.name, largest.length), (largest.name, largest.width)], say.style),
    )
    return Worked("Half sheets for the case", lines, why)


def order_worked(unit: str) -> Worked:
    """All cuts, setting by setting: what is set, and how far from the blade."""
    say, job = Say(unit), case_sheets(unit)
    found = steps(job)
    lines, sizes = [], []
    for setting, mine in ((number, tuple(each)) for number, each in groupby(found, lambda step: step.setting)):
        done = "; ".join(_done(step, job.ask.letters) for step in mine)
        again = " again" if any(step.again for step in mine) else ""
        lines.append((f"{setting}.\u00a0{mine[0].kind}", done, f"{mine[0].set_by} {say.exact(mine[0].fence)}{again}"))
        sizes.append((f"setting {setting}", mine[0].fence))
    return Worked("The cuts of both half sheets, one setting a line", lines, why_each(sizes, say.style))


def _done(step: Step, letters: Sequence[str]) -> str:
    """What comes off at one setting, parts by the letters of the drawing: "from sheet 1, piece 2: C"."""
    if step.kind == "trim":
        [kept] = step.off
        return f"{step.piece.mark}, {'an end' if kept.at.w < step.piece.at.w else 'a long edge'}"
    sheet = f"sheet {step.sheet + 1}, "
    off = (piece.mark.removeprefix(sheet) if piece.part is None else letters[piece.part] for piece in step.off)
    return f"from {step.piece.mark}: {', '.join(off)}"


def solid_worked(unit: str) -> Worked:
    """Three solid drawer fronts in a row out of one board: rough size, length of the board, and how much wood it is."""
    say, kerf = Say(unit), hub_case(unit).project.cutting.kerf
    names = ("front, finished length", "front, finished width", "board, rough thickness", "longer by", "wider by",
             "off each end")
    long, wide, thick, longer, wider, ends = (
        leaf(read_length(text), name) for text, name in zip(FRONT[unit], names, strict=True)
    )
    length, width = long + longer, wide + wider
    board = run_of(length, kerf, ends, FRONTS)
    lines = [
        ("each front, rough length", f"{say.exact(long)} + {say.exact(longer)}", say.exact(length)),
        ("each front, rough width", f"{say.exact(wide)} + {say.exact(wider)}", say.exact(width)),
        (
            "board, at least", f"{FRONTS} x {say.exact(length)} + {FRONTS - 1} x {say.exact(kerf)} + 2 x "
            f"{say.exact(ends)}", say.exact(board),
        ),
        (
            "wood to pay for", f"{say.exact(board)} x {say.exact(width)} x {say.exact(thick)}",
            write_volume(board * width * thick, unit),
        ),
    ]
    sizes = [("rough length", length), ("rough width", width), ("board", board), ("board, thickness", thick)]
    title = f"{FRONTS} solid fronts, {say.exact(long)} x {say.exact(wide)}, from one board"
    return Worked(title, lines, why_each(sizes, say.style))


def buying_worked(unit: str) -> Worked:
    """What is bought for the case."""
    case = hub_case(unit)
    wanted = buying_list(case, stocked(sheets_of(unit).sheets))
    lines = [(line.item, _how_much(line), _cost(line, wanted.currency)) for line in wanted.lines]
    lines.append(("together", f"{len(wanted.unpriced)} lines without a price", f"{wanted.total} {wanted.currency}"))
    return Worked("To buy for the case for hubs", lines)


def _how_much(line: Line) -> str:
    spare = f" + {plain(line.spare)} spare" if line.spare else ""
    return f"{plain(line.needed)} {line.unit}{spare}".replace(" each", "")


def _cost(line: Line, currency: str) -> str:
    if line.price is None:
        return "ask for the price"
    packs = f"{line.packs} x {line.price.amount}"
    for_each = f" for {plain(line.price.pack)}" if line.price.pack != 1 else ""
    return f"{packs}{for_each} = {line.cost} {currency}"


def print_button() -> PrintPanel:
    """The button that prints a project for the bench."""
    return PrintPanel(large=large_in_use())


def by_hand_panel() -> LayoutPanel:
    """The panel of the lesson, in the learner's unit."""
    return layout_panel(unit_in_use(), large=large_in_use())
