"""What the panel of a sheet laid out by hand tells: what is to lay, where it can go, how it stands, what came of it."""

from shoplib.layout.best_found import Best
from shoplib.layout.hand import Hand, Place
from shoplib.layout.hand_sawn import shop_cost_by_hand
from shoplib.layout.marks import letter
from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.layout.shop_cost import ShopCost
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.words.amounts import surely
from shoplib.words.areas import area
from shoplib.words.naming import and_list

WAYS = {
    "": "as the strip runs",
    "rip": "a rip, along the sheet",
    "crosscut": "a crosscut, across the sheet",
}
"""Which cut frees a part first, by the word that a move knows it by."""

KINDS = {way: told for way, told in WAYS.items() if way}
"""How a strip is cut off, when nothing is laid in it yet."""

NEW = "new "
"""Begins the value of a new sheet in the list of places; the number of its stock follows."""


def starting_job(unit: str) -> Job:
    """A small case for the parts of a volunteer bicycle workshop, from sheets of one size.

    >>> sum(part.count for part in starting_job("mm").parts)
    14
    """
    step, sizes, sheet, kerf, trim = (
        (INCH // 8, _EIGHTHS, (96 * INCH, 48 * INCH), INCH // 8, INCH // 4) if unit == "in" else
        (MM, _MILLIMETRES, (2440 * MM, 1220 * MM), 3 * MM, 6 * MM)
    )
    parts = tuple(
        Part(name, long * step, wide * step, count, turns)
        for (name, count, turns), (long, wide) in zip(_KINDS_OF_PART, sizes, strict=True)
    )
    return Job(parts, (Stock("plywood", *sheet, cost=1, trim_ends=trim, trim_edges=trim),), kerf)


_KINDS_OF_PART = (
    ("side", 2, False), ("top", 1, False), ("shelf", 3, False), ("divider", 2, False), ("drawer bottom", 4, True),
    ("rail", 2, False),
)
_EIGHTHS = ((240, 120), (272, 120), (264, 116), (112, 116), (122, 104), (264, 28))
_MILLIMETRES = ((760, 380), (864, 380), (838, 368), (356, 368), (387, 330), (838, 89))


def checked(job: Job) -> Job:
    """The job, if it can be counted in sheets: all that is bought costs the same.

    >>> checked(Job((), (Stock("large", 9, 9, cost=5), Stock("small", 8, 8, cost=4))))
    Traceback (most recent call last):
    ...
    shoplib.layout.pieces.LayoutError: a layout by hand is counted in sheets, so all that are bought must cost the same
    """
    if len({stock.cost for stock in job.stock if stock.cost}) > 1:
        raise LayoutError("a layout by hand is counted in sheets, so all that are bought must cost the same")
    return job


def task(hand: Hand) -> str:
    """What is to be done, in one line."""
    many = sum(part.count for part in hand.job.parts)
    stock = and_list([_stock(one, hand.style) for one in hand.job.stock])
    return (f"Lay {many} parts on as few sheets as you can: {stock}. The grain runs along each sheet, and a saw cuts "
            "from edge to edge.")


def part_row(hand: Hand, number: int) -> dict[str, object]:
    """A kind of part as it can be chosen, with how many are still to lay."""
    part, left = hand.job.parts[number], hand.to_lay[number]
    turns = "; may be turned" if part.may_turn else ""
    if part.count == 1:
        left_told = "to lay" if left else "laid"
    else:
        left_told = f"{left} of {part.count} to lay" if left else f"all {part.count} laid"
    size = f"{write_brief(part.length, hand.style)} x {write_brief(part.width, hand.style)}"
    return {"text": f"{letter(number)} {part.name}, {size}{turns}: {left_told}", "left": left}


def places_to_choose(hand: Hand, part: int, turned: bool) -> list[tuple[str, str]]:
    """Where parts can still go: the rest of the strip, the next strip, other offcuts, a new sheet; value and text.

    Offcuts that no part that is left to lay fits into are left out.
    """
    along, beside = hand.place_of(hand.along), hand.place_of(hand.beside)
    others = sorted((one for one in hand.places if one not in (along, beside)), key=lambda one: one.at.area)
    told = {along: "further along this strip", beside: "a new strip beside it"}
    if hand.done:
        return []
    found = [
        (one.letter, f"{one.letter}: {told.get(one, f'offcut on sheet {one.sheet + 1}')}, {_sizes(hand, one)}"
                     f"{'' if fits(hand, one, part, turned) else ' (too small for it)'}")
        for one in (along, beside, *others) if one and _holds_any(hand, one)
    ]
    return found + [
        (f"{NEW}{number}", f"a new sheet: {_stock(stock, hand.style)}")
        for number, stock in enumerate(hand.job.stock) if hand.in_stock(number)
    ]


def fits(hand: Hand, place: Place, part: int, turned: bool) -> bool:
    """Whether a part goes into a place so."""
    wide, high = hand.size_of(part, turned)
    return wide <= place.at.w and high <= place.at.h


def _holds_any(hand: Hand, place: Place) -> bool:
    return any(
        left and (fits(hand, place, part, False) or (hand.job.parts[part].may_turn and fits(hand, place, part, True)))
        for part, left in enumerate(hand.to_lay)
    )


def said_of_move(before: Hand, after: Hand, part: int) -> list[str]:
    """What a move did: what lies where now, by which cuts; and what came of it all once nothing is left to lay."""
    style, one = after.style, after.job.parts[part]
    number = changed_sheet(before, after)
    sheet = after.sheets[number]
    old = before.sheets[number].cuts if number < len(before.sheets) else ()
    cuts = [f"a {cut.kind} at {write_brief(cut.fence, style)}" for cut in sheet.cuts[len(old):]]
    again = dict.fromkeys(cuts)
    by = f", freed by {and_list([_times(cut, cuts.count(cut)) for cut in again])}" if cuts else ""
    laid = before.to_lay[part] - after.to_lay[part]
    if not laid:
        return [f"Cut on sheet {number + 1}: {and_list(cuts)}."]
    return [f"Laid on sheet {number + 1}: {laid} x {one.name}{by}."]


def changed_sheet(before: Hand, after: Hand) -> int:
    """The number of the sheet that a move went on, from 0; the first where it changed several, or none."""
    sheets = enumerate(after.sheets)
    return next((n for n, each in sheets if n >= len(before.sheets) or each is not before.sheets[n]), 0)


def came_of_it(hand: Hand, best: Best | None) -> dict[str, object]:
    """All parts lie: how far that is from the best that was found, and from what no layout can beat.

    Empty as long as something is to lay.
    """
    if not hand.done:
        return {}
    if best is None:
        return {"good": True, "heading": "All parts lie.", "lines": ["The search found no layout to compare with."]}
    bought, least, found = _bought(hand), least_sheets(hand.job, best), _bought(best.hand)
    lines, heading = [f"All parts lie on {_sheets(len(hand.sheets))}."], "As few sheets as the best found."
    if bought > found:
        lines.append(f"The search found a layout that buys {_sheets(found)}, {bought - found} fewer.")
        return {"good": False, "heading": "It can be done with fewer sheets.", "lines": lines}
    if best.searched is not None:
        heading = "Fewer sheets than the search found."
        searched = _sheets(_in_sheets(hand.job, best.searched))
        lines.append(f"The search found none that buys fewer than {searched}: this is the best now.")
    if bought == least:
        lines.append("No layout can buy fewer.")
    elif best.searched is None:
        lines.append(f"The search found none that buys fewer; that {_sheets(least)} would not do is not proven.")
    mine, its = shop_cost_by_hand(hand), best.shop
    lines += _offcuts_compared(hand, best.hand)
    if best.hand == hand:
        lines.append(f"Your cuts take {_at_the_saw(mine)}.")
    else:
        lines.append(f"Your cuts take {_at_the_saw(mine)}; those of the best found take {_at_the_saw(its)}.")
    return {"good": True, "heading": heading, "lines": lines}


def _offcuts_compared(hand: Hand, best: Hand) -> list[str]:
    """The largest offcuts; of more sheets, or of one layout, there is nothing to compare."""
    mine, its = hand.largest, best.largest
    if mine is None or its is None or hand == best or len(hand.sheets) != len(best.sheets):
        return []
    by = mine.at.area - its.at.area
    how = f"{area(abs(by), hand.style)} {'more' if by > 0 else 'less'} than" if by else "as much as"
    return [f"Your largest offcut is {_sizes(hand, mine)}: {how} that of the best found, {_sizes(hand, its)}."]


def figures(hand: Hand, best: Best | None) -> dict[str, object]:
    """The figures of what is laid so far beside those of the best layout found, and the least number of sheets."""
    told = [
        ("Sheets in use", lambda one: str(len(one.sheets))),
        ("Free area on them", lambda one: area(one.area_left, one.style)),
        ("Largest offcut", lambda one: _sizes(one, one.largest) if one.largest else "none"),
        ("Cuts, trimming too", lambda one: str(one.cuts)),
    ]
    rows = [[name, tell(hand), tell(best.hand) if best else "none found"] for name, tell in told]
    if best:
        rows[0][2] += f" (any layout buys at least {least_sheets(hand.job, best)})"
        if hand.done:
            mine = shop_cost_by_hand(hand)
            rows += [["Fence settings", str(mine.settings), str(best.shop.settings)],
                     ["Times that pieces are turned", str(turns(mine)), str(turns(best.shop))]]
    return {"head": ["What is counted", "Laid so far", "Best found"], "rows": rows}


def least_sheets(job: Job, best: Best) -> int:
    """How many sheets any layout must buy at least."""
    return _in_sheets(job, best.least)


def _in_sheets(job: Job, cost: int) -> int:
    """How many sheets are bought for so much."""
    each = max(stock.cost for stock in job.stock)
    return -(-cost // each) if each else 0


def _bought(hand: Hand) -> int:
    return sum(hand.job.stock[sheet.stock].cost > 0 for sheet in hand.sheets)


def _sizes(hand: Hand, place: Place) -> str:
    sides = (write_brief(surely(side, hand.style), hand.style) for side in (place.at.w, place.at.h))
    return " x ".join(sides)


def _stock(stock: Stock, style: Style) -> str:
    there = "" if stock.count is None else f", {stock.count} there"
    return f"{stock.name}, {write_brief(stock.length, style)} x {write_brief(stock.width, style)}{there}"


def _times(cut: str, times: int) -> str:
    return cut if times == 1 else f"{cut}, {times} times"


def _sheets(many: int) -> str:
    return f"{many} sheet{'' if many == 1 else 's'}"


def turns(cost: ShopCost) -> int:
    """How often pieces are turned about, from ripping to crosscutting or back: once less than there are goes of cuts.

    >>> turns(ShopCost(0, 2, 5, stages=3, heaviest=0))
    2
    """
    return max(cost.stages - 1, 0)


def _at_the_saw(cost: ShopCost) -> str:
    """Fence settings and turns, one or many."""
    many, turned = cost.settings, turns(cost)
    settings, about = "setting" if many == 1 else "settings", "turn" if turned == 1 else "turns"
    return f"{many} fence {settings} and {turned or 'no'} {about} of the pieces"
