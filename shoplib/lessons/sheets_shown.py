"""The case for hubs of the page from the cut list to the yard: solved, its list typed, and laid out on half sheets."""

from shoplib.buying.laid import LaidJob, LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.checks import check
from shoplib.documents.hand_list import parse_hand_list
from shoplib.draw.cuts_drawn import cuts_drawn
from shoplib.draw.elevation import front_elevation
from shoplib.draw.sheet_layout import sheet_layout
from shoplib.layout.order import Step, cut_order
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.figure import Figure
from shoplib.lessons.say import Say
from shoplib.lists.compare import Comparison, compare
from shoplib.lists.cut_list import Kind, kinds
from shoplib.measure import read_length, share
from shoplib.model.cabinet import solve
from shoplib.model.cutting import Buying, Cutting
from shoplib.model.project import Back, Bay, Carcass, Edging, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced
from shoplib.words.naming import boards_in_short

SIZES = {
    "in": ("30 in", "24 in", "12 1/2 in", "23/32 in", "1/4 in", "1/4 in"),
    "mm": ("760 mm", "610 mm", "316 mm", "17.4 mm", "6 mm", "6 mm"),
}
"""The case: outside width, height and depth, its sheet and that of the back as measured, the strips on front edges."""

STOCK = {"in": ("48 in", "48 in", "1/4 in", "1/8 in"), "mm": ("1220 mm", "1220 mm", "6 mm", "3.2 mm")}
"""Half sheets, length and width (as commonly sold cut in two, no source), the trim of each edge, and the kerf."""

SOLD = {"in": ("3/4 in", "5/16 in"), "mm": ("18 mm", "6.5 mm")}
"""The names that the two are sold by."""

PRICES = ("38.00", "19.50")
"""Made-up prices of a half sheet."""

SCREWS = {"in": "flat-head screw No. 8 x 2 in", "mm": "flat-head screw 4.0 mm x 50 mm"}

PICTURE = (520.0, 430.0)


def hub_project(unit: str) -> Project:
    """The project of the case: board against board, a divider, two shelves on each side of it."""
    wide, high, deep, thick, thin, strip = (read_length(text) for text in SIZES[unit])
    length, width, trim, kerf = (read_length(text) for text in STOCK[unit])
    sheets = {
        name: Sheet(name, "plywood", read_length(sold), (size,), length, width, price=price, trim=trim)
        for name, size, sold, price in zip(("case sheet", "back sheet"), (thick, thin), SOLD[unit], PRICES, strict=True)
    }
    return Project(
        "case for hubs", Say(unit).style, sheets, Size("outside", wide, high, deep),
        Carcass("case sheet", back=Back("applied", "back sheet")),
        bays=(Bay("shelves", shelves=Shelves(fixed=2)),) * 2,
        edging=(Edging("case", "strip", strip), Edging("shelves", "strip", strip)), cutting=Cutting(kerf),
        buying=Buying({"in": "USD", "mm": "EUR"}[unit], prices={SCREWS[unit]: "6.90 for 50"}), rounding=1,
    )


def hub_case(unit: str) -> Cabinet:
    """The case, solved, its sizes with their workings.

    >>> hub_case("in").by_name["bay 1 shelf 1"].box.size[0] == read_length("13 59/64 in")
    True
    """
    return solve(traced(hub_project(unit)))


def rows(unit: str) -> tuple[Kind, ...]:
    """The lines of its cut list."""
    return kinds(hub_case(unit))


def called(row: Kind) -> str:
    """What a line of the list is called."""
    return boards_in_short(row.boards)


def typed(unit: str) -> tuple[tuple[Kind, int], ...]:
    """The list as Noor typed it: each line with its length, and those of the shelves without the divider."""
    bottom = hub_case(unit).by_name["bottom"].length
    return tuple(
        (row, share(bottom, 2, Say(unit).style.step)[0] if row.first.role == "fixed shelf" else row.cut[0])
        for row in rows(unit)
    )


def compared(unit: str) -> Comparison:
    """Noor's list held against the case."""
    say = Say(unit)
    lines = [
        f"{'; '.join(row.names)},{row.count},{say.length(length)},{say.length(row.cut[1])}"
        for row, length in typed(unit)
    ]
    return compare(hub_case(unit), parse_hand_list("\n".join(["part,count,length,width", *lines])).rows, check)


def sheets_of(unit: str) -> LaidOut:
    """All boards of the case as laid out on half sheets, in the first way that is found."""
    return laid_out(hub_case(unit), seconds=0)


def case_sheets(unit: str) -> LaidJob:
    """Those of the case sheet."""
    return sheets_of(unit).jobs[0]


def steps(found: LaidJob) -> tuple[Step, ...]:
    """The cuts of its sheets in their order; the sheets are "sheet 1" and so on."""
    return cut_order(found.job, [sheet.laid for sheet in found.sheets], [sheet.sawn for sheet in found.sheets])


def case_drawn() -> Figure:
    """The case from the front, with the sizes that it is to have outside."""
    unit = unit_in_use()
    say, case = Say(unit), hub_case(unit)
    wide, deep, high = case.outside.size
    known = f"Outside: {say.length(wide)} wide, {say.length(high)} high, {say.length(deep)} deep."
    sizes = [("outside width", wide), ("outside height", high), ("outside depth", deep)]
    return Figure.of(front_elevation(case, say.style), PICTURE, [known], say.style, sizes)


def first_sheet() -> Figure:
    """The first half sheet with its parts."""
    return _sheet(0)


def second_sheet() -> Figure:
    """The second one, most of which is left."""
    return _sheet(1)


def first_cuts() -> Figure:
    """The cuts of the first half sheet, numbered as in their order."""
    return _cuts(0)


def second_cuts() -> Figure:
    """Those of the second one."""
    return _cuts(1)


def _cuts(number: int) -> Figure:
    unit = unit_in_use()
    style, job = Say(unit).style, case_sheets(unit)
    mine = [step for step in steps(job) if step.sheet == number]
    return Figure.of(cuts_drawn(job.sheets[number], mine, style, f"sheet {number + 1}"), PICTURE, [], style)


def _sheet(number: int) -> Figure:
    unit = unit_in_use()
    style = Say(unit).style
    return Figure.of(sheet_layout(case_sheets(unit).sheets[number], style), PICTURE, [], style)
