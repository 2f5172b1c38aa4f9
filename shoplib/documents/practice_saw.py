"""What is set on a table saw for the cuts of a practice pair: stack or passes, heights, and what neither can cut."""

from collections.abc import Iterator

from shoplib.documents.practice_cuts import CutRow, channels
from shoplib.documents.practice_tools import Tools
from shoplib.draw.pair_section import said
from shoplib.joints.bench_pair import Pair
from shoplib.joints.splined_mitre import blade_height, blade_to_fence, mitre_face, toe_to_slot
from shoplib.measure import INCH, MM, Style, largest_fitting, write_brief
from shoplib.model.dado_stack import NEAR, CannotStack, SawLimits, Stack, nearest_stack, stacks
from shoplib.model.passes import CannotPass, Passes, passes
from shoplib.model.reach import CannotReach, refuse_deeper
from shoplib.tables.dado_sets import DadoSet

Row = tuple[str, str]
"""What is set, and to what."""

_ON_EDGE = "shoulder"
"""What is cut from the edge of a rail, for it is as deep as the shoulder above or below the tenon."""


def depths(rows: tuple[CutRow, ...], style: Style) -> Iterator[Row]:
    """Each depth with the cuts that have it."""
    found: dict[str, list[str]] = {}
    for row in rows:
        if row.deep and not row.bored:
            on_edge = ", board on edge" if row.kind == _ON_EDGE else ""
            found.setdefault(said(row.deep, style), []).append(f"{row.kind} in the {row.board}{on_edge}")
    if found:
        yield "Depth to set", _each(found)


def _each(found: dict[str, list[str]]) -> str:
    return "; ".join(f"{size}: {', '.join(dict.fromkeys(cuts))}" for size, cuts in found.items())


def by_stack(rows: tuple[CutRow, ...], tools: Tools, style: Style) -> Iterator[Row]:
    """What a stack cuts, and first what it does not: closed mortises, and what is deeper than it stands out."""
    mine = []
    for row in rows:
        what = f"{row.kind[:1].upper()}{row.kind[1:]} in the {row.board}"
        if row.kind in ("mortise", "haunching"):
            yield what, (
                f"not with the stack: no board is dropped on a turning cutter. Make it first, {said(row.wide, style)} "
                f"wide and {said(row.deep, style)} deep, as the sheet for the router or for hand tools says"
            )
            continue
        try:
            refuse_deeper(row.deep, tools.dado_set.diameter, "a stack", style)
        except CannotReach as fault:
            yield what, f"not with the stack: {fault} {_otherwise(row, tools, style)}"
        else:
            mine.append(row)
    yield from _stack_rows(channels(tuple(mine)), tools, style)
    for row in mine:
        if row.kind == "rabbet" and row.wide >= tools.saw.widest:
            yield f"Rabbet of {said(row.wide, style)}", (
                "no stack is wider than that: cut its shoulder first, then move the fence and clear what stands"
            )
    yield from depths(tuple(mine), style)


def _otherwise(row: CutRow, tools: Tools, style: Style) -> str:
    """How else to cut what is too deep for a stack."""
    try:
        refuse_deeper(row.deep, tools.blade, "a blade", style)
        cuts = passes(row.wide, tools.kerf, _overlap(style), style)
    except (CannotReach, CannotPass):
        return "Cut it by hand, as the sheet for hand tools says"
    return (f"Take a single blade, {said(tools.blade, style)} across, {said(row.deep, style)} high; passes with a kerf "
            f"of {said(tools.kerf, style)}: {_passes_told(cuts, style)}")


_STEPPED = {("rabbet", "rabbet"), ("tongue", "rabbet"), ("bridle", "cheek")}
"""Joint and cut where a single blade makes a step in two cuts: the shoulder flat on the table, the cheek upright."""


def heights(pair: Pair, rows: tuple[CutRow, ...], tools: Tools) -> Iterator[Row]:
    """Each height of the blade with the cuts that need it, and what it does not reach."""
    style, found = pair.stock.style, []
    for row in rows:
        cut = f"{row.kind} in the {row.board}"
        if (pair.kind, row.kind) in _STEPPED:
            cheek, shoulder = (cut, f"shoulder in the {row.board}") if row.kind == "cheek" else (
                f"cheek of the {cut}", f"shoulder of the {cut}"
            )
            found += [(row.deep, f"{shoulder}, board flat"), (row.wide, f"{cheek}, board upright")]
        elif row.deep:
            found.append((row.deep, f"{cut}{', board on edge' if row.kind == _ON_EDGE else ''}"))
    told: dict[str, list[str]] = {}
    for deep, cut in found:
        try:
            refuse_deeper(deep, tools.blade, "a blade", style)
        except CannotReach as fault:
            yield f"{cut[:1].upper()}{cut[1:]}", f"not with this blade: {fault} Cut it by hand"
        else:
            told.setdefault(said(deep, style), []).append(cut)
    if told:
        yield "Height of the blade", _each(told)


def leaning(pair: Pair, tools: Tools) -> Iterator[Row]:
    """Where blade and fence stand for mitre and slot, the blade leaning by half of the corner."""
    stock, values, style = pair.stock, pair.values, pair.stock.style
    for board in pair.boards[:2]:
        try:
            refuse_deeper(mitre_face(board.thickness), tools.blade, "a blade", style)
        except CannotReach as fault:
            yield f"Mitre on the {board.name}", f"not with this blade, along its slant: {fault} Saw it by hand"
            return
    yield "Tilt of the blade", "45 degrees, for mitres and slots; for the mitre it goes right through the board"
    for thick, names in _by_thickness(pair).items():
        of = "" if len(names) > 1 else f", {names[0]}"
        fence = blade_to_fence(stock, values, thick)
        if fence <= 0:
            yield f"Slot{of}", "not on the saw: there is no room for a fence beside the blade. Take a router"
            continue
        yield f"Height for the slot{of}", (
            f"{said(blade_height(stock, values, thick), style)} from the table to the tip of the leaning blade: so the "
            f"slot is {said(values['slot'], style)} deep, square to the mitre"
        )
        yield f"Fence for the slot{of}", (
            f"{said(fence, style)} from the blade, at the table, the long point against it; check: the slot begins "
            f"{said(toe_to_slot(stock, values), style)} from the long point, along the mitre"
        )


def _by_thickness(pair: Pair) -> dict[int, list[str]]:
    """The two boards, those that are set up alike together."""
    found: dict[int, list[str]] = {}
    for board in pair.boards[:2]:
        found.setdefault(board.thickness, []).append(board.name)
    return found


def _stack_rows(rows: tuple[CutRow, ...], tools: Tools, style: Style) -> Iterator[Row]:
    owned, saw = tools.dado_set, tools.saw
    yield "Worked for", (
        f"{owned.name}, on a saw whose maker allows {said(saw.widest, style)} wide and {said(saw.diameter, style)} "
        "across: your own cutters and the manual of your saw decide"
    )
    if not rows:
        yield "Stack", "no width to match: fence or stop sets where each cut ends; the order below says what to stack"
    for row in rows:
        wanted = said(row.wide, style)
        if row.wide > saw.widest + NEAR and saw.widest:
            yield f"Stack for {wanted}", _wider_than_any(row.wide, owned, saw, style)
            continue
        try:
            choice = nearest_stack(row.wide, owned, saw, style)
        except CannotStack as fault:
            yield f"Stack for {wanted}", f"none: {fault}"
            continue
        cuts = _and_error(choice.best, row.wide, style)
        yield f"Stack for {wanted}", f"{_pieces(choice.best, style)}. It cuts {cuts}"
        if choice.next_best is not None:
            yield "Next best", f"{_pieces(choice.next_best, style)}: {_and_error(choice.next_best, row.wide, style)}"


def _wider_than_any(wide: int, owned: DadoSet, saw: SawLimits, style: Style) -> str:
    """Both walls of a wide notch, then what stands between them."""
    widest = largest_fitting(stacks(owned), saw.widest)
    if widest is None:
        return "none: the saw's maker allows no stack of this set; cut it with a router or by hand"
    cuts = passes(wide, widest, _overlap(style), style)
    return (f"wider than any stack: {len(cuts.offsets)} passes with {said(widest, style)}, the first and the last "
            f"{said(cuts.last, style)} apart: they cut the two walls")


def _pieces(stack: Stack, style: Style) -> str:
    def each(sizes: tuple[int, ...]) -> str:
        return f"{', '.join(said(size, style).removesuffix(f' {style.unit}') for size in sizes)} {style.unit}"

    text = f"2 outer cutters of {said(stack.outer, style)}"
    if stack.chippers:
        text += f"; chippers {each(stack.chippers)}"
    return text + (f"; shims {each(stack.shims)}" if stack.shims else "; no shim")


def _and_error(stack: Stack, target: int, style: Style) -> str:
    width, error = write_brief(stack.width, style, decimal=True), stack.width - target
    if not error:
        return f"{width}, as wanted"
    off = write_brief(abs(error), style, decimal=True)
    return f"{width}, {off} {'wider' if error > 0 else 'narrower'} than wanted"


def _overlap(style: Style) -> int:
    return INCH // 64 if style.unit == "in" else MM // 2


def blade_passes(pair: Pair, rows: tuple[CutRow, ...], tools: Tools) -> Iterator[Row]:
    """How many passes of a single blade make each width; what is a kerf wide is cut in one, its mate fitted to it."""
    style = pair.stock.style
    for row in rows:
        what = f"Passes for {said(row.wide, style)}"
        try:
            cuts = passes(row.wide, tools.kerf, _overlap(style), style)
        except CannotPass as fault:
            yield what, f"none: {fault}"
            continue
        told = _passes_told(cuts, style)
        yield what, f"{told}; fit the {entering(pair)} to it" if 0 < cuts.last <= NEAR else told


def entering(pair: Pair) -> str:
    """What goes into the cuts: a spline, or the board that enters.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> entering(joint("spline").build(stock_of(INCH * 3 // 4))), entering(joint("dado").build(stock_of(INCH * 3 // 4)))
    ('spline', 'shelf')
    """
    return pair.boards[2].name if len(pair.boards) > 2 else pair.joints[0].enters


def _passes_told(cuts: Passes, style: Style) -> str:
    """How many passes, and where they stand; a difference that no fence can be moved by is no second pass."""
    count = len(cuts.offsets)
    if not cuts.last:
        return "1: the kerf is the width"
    if cuts.last <= NEAR:
        return f"1: the kerf is the width but for {said(cuts.last, style)}, and no fence is moved by that"
    told = f"{count}: first and last stand {said(cuts.last, style)} apart (width less kerf)"
    if count > 2:
        told += f", the others between, each no more than {said(cuts.moves[0], style)} from its neighbour"
    return told
