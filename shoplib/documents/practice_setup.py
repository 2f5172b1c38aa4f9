"""What the chosen tool is set to, for the cuts of a practice pair: stack, passes, bit or depth stop."""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.documents.practice_cuts import CutRow, channels
from shoplib.draw.pair_section import said
from shoplib.joints.bench_pair import CannotCut, JointKind, Pair, Stock
from shoplib.measure import INCH, MM, Style, largest_fitting, read_length, share, write_brief
from shoplib.model.dado_stack import NEAR, CannotStack, SawLimits, Stack, nearest_stack, stacks
from shoplib.model.passes import CannotPass, passes
from shoplib.model.router_bit import bit_for
from shoplib.tables.dado_sets import DadoSet, dado_sets
from shoplib.tables.router_bits import straight_bits, undersize_bits
from shoplib.tables.setups import Setup

_LONG = 3
"""A cut deeper than three times the bit is wide asks for a long one (common practice, no source)."""

Row = tuple[str, str]
"""What is set, and to what."""


@dataclass(frozen=True, slots=True)
class Tools:
    """The cutters a person has, lengths in ticks: a dado set and what its saw allows, the kerf of a blade, bits.

    The usual ones are worked examples: write down your own.
    """

    dado_set: DadoSet
    saw: SawLimits
    kerf: int
    bits: tuple[int, ...]


def usual_tools(style: Style) -> Tools:
    """The tools that the tables give as an example, in the unit of the shop.

    The saw is that of the manuals that were read, 13/16 in wide and 8 in across; the kerf, 1/8 in or 3 mm, is common
    practice, no source.

    >>> from shoplib.measure import MM_STYLE
    >>> usual_tools(MM_STYLE).kerf == 3 * MM
    True
    """
    owned = next(one for one in dado_sets().values() if one.unit == style.unit)
    inch = style.unit == "in"
    bits = straight_bits(style.unit) + (tuple(undersize_bits()) if inch else ())
    saw = SawLimits(read_length("13/16 in"), read_length("8 in"))
    return Tools(owned, saw, INCH // 8 if inch else 3 * MM, tuple(sorted(bits)))


def suited_values(kind: JointKind, stock: Stock, setup: Setup, tools: Tools) -> dict[str, int]:
    """Settings that make a joint's narrow cuts as wide as the narrowest stack, where the usual ones are narrower.

    A tongue is normally as thick as the cutter is wide (common practice, no source). Empty where nothing is to be
    changed, or where the sheet is too thin for it.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.tables.setups import setup
    >>> stock, chosen = stock_of(INCH * 703 // 1000), setup("drawer lock", "stacked dado set")
    >>> {name: said(value, stock.style) for name, value in
    ...  suited_values(joint("drawer lock"), stock, chosen, usual_tools(stock.style)).items()}
    {'groove': '1/4 in', 'lip': '0.205 in'}
    """
    usual = kind.usual(stock)
    narrowest = 2 * tools.dado_set.outer
    if "dado set" not in setup.way.tools or kind.name not in ("tongue", "bridle", "drawer lock"):
        return {}
    slide = narrowest - usual["fit"]
    if kind.name != "drawer lock":
        values = {"tongue": slide} if usual["tongue"] < slide else {}
    elif usual["groove"] < narrowest:
        values = {"groove": narrowest, "lip": stock.receives.thickness - narrowest - slide}
    else:
        values = {}
    try:
        kind.build(stock, values)
    except CannotCut:
        return {}
    return values


def setup_rows(pair: Pair, rows: tuple[CutRow, ...], setup: Setup, tools: Tools) -> tuple[Row, ...]:
    """What to set, row by row, for this pair in this way.

    >>> from shoplib.documents.practice_cuts import cut_rows
    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.tables.setups import setup
    >>> dado = joint("dado").build(stock_of(INCH * 703 // 1000))
    >>> told = setup_rows(dado, cut_rows(dado), setup("dado", "single blade in passes"), usual_tools(dado.stock.style))
    >>> told[1]
    ('Passes for 0.705 in', '7: first and last stand 0.58 in apart (width less kerf), the others between, each no more \
than 7/64 in from its neighbour')
    """
    style = pair.stock.style
    name = setup.way.name
    if "dado set" in setup.way.tools:
        return (*_stacks(channels(rows), tools, style), *_depths(rows, style))
    if name == "single blade in passes":
        kerf = ("Kerf", f"worked for {said(tools.kerf, style)}; measure yours in a scrap: ________")
        return (kerf, *_blade(channels(rows), tools, style), *_depths(rows, style))
    if name == "router":
        return (*_router(channels(rows, mortises=True), tools, style), *_depths(rows, style))
    if name == "drill":
        return tuple(_drill(pair, rows, style))
    return (*_by_hand(rows, style), *_depths(rows, style))


def _depths(rows: tuple[CutRow, ...], style: Style) -> Iterator[Row]:
    """Each depth with the cuts that have it."""
    found: dict[str, list[str]] = {}
    for row in rows:
        if row.deep and not row.bored:
            found.setdefault(said(row.deep, style), []).append(f"{row.kind} in the {row.board}")
    if found:
        yield "Depth to set", "; ".join(f"{depth}: {', '.join(dict.fromkeys(cuts))}" for depth, cuts in found.items())


def _stacks(rows: tuple[CutRow, ...], tools: Tools, style: Style) -> Iterator[Row]:
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


def _blade(rows: tuple[CutRow, ...], tools: Tools, style: Style) -> Iterator[Row]:
    for row in rows:
        what = f"Passes for {said(row.wide, style)}"
        try:
            cuts = passes(row.wide, tools.kerf, _overlap(style), style)
        except CannotPass as fault:
            yield what, f"none: {fault}"
            continue
        count = len(cuts.offsets)
        if count == 1:
            yield what, "1: the kerf is the width"
        else:
            told = f"{count}: first and last stand {said(cuts.last, style)} apart (width less kerf)"
            if count > 2:
                told += f", the others between, each no more than {said(cuts.moves[0], style)} from its neighbour"
            yield what, told


def _router(rows: tuple[CutRow, ...], tools: Tools, style: Style) -> Iterator[Row]:
    for row in rows:
        what = f"Bit for {said(row.wide, style)}"
        try:
            choice = bit_for(row.wide, tools.bits, style)
        except CannotPass as fault:
            yield what, f"none: {fault}"
            continue
        across, down = len(choice.passes.offsets), share(2 * row.deep + choice.bit - 1, choice.bit, 1)[0]
        told = f"{said(choice.bit, style)}"
        if across == 2:
            told += f", then a second pass, the guide moved by {said(choice.left, style)}"
        elif across > 2:
            told += f", {across} passes side by side, the first and the last {said(choice.passes.last, style)} apart"
        told += f"; down in {down} {'pass' if down == 1 else 'passes or more'}"
        yield what, told + (", if the bit is long enough" if row.deep > _LONG * choice.bit else "")


def _drill(pair: Pair, rows: tuple[CutRow, ...], style: Style) -> Iterator[Row]:
    for row in rows:
        if row.bored:
            stop = f"depth stop at {said(row.deep, style)}" if row.deep else row.where
            if row.through:
                stop = "right through"
            bit = f"bit {said(row.wide, style)}"
            if pair.kind == "dowel":
                dowel = said(pair.values["diameter"], style)
                bit = f"bit for a dowel of {dowel}, whose hole is {said(row.wide, style)}"
            yield f"{row.kind[:1].upper()}{row.kind[1:]} in the {row.board}", f"{bit}, {stop}"


def _by_hand(rows: tuple[CutRow, ...], style: Style) -> Iterator[Row]:
    for row in channels(rows, mortises=True):
        yield f"{row.kind[:1].upper()}{row.kind[1:]}", (
            f"{said(row.wide, style)} by the figures; mark it from the mate itself where the order says so"
        )
