"""What the chosen tool is set to, for the cuts of a practice pair: stack, passes, bit or depth stop."""

from collections.abc import Iterator

from shoplib.documents.practice_cuts import CutRow, channels
from shoplib.documents.practice_saw import Row, blade_passes, by_stack, depths, entering, heights, leaning
from shoplib.documents.practice_tools import Tools
from shoplib.draw.pair_section import said
from shoplib.joints.bench_pair import Pair
from shoplib.joints.pocket_screws import along_the_drill
from shoplib.measure import Style
from shoplib.model.dado_stack import NEAR
from shoplib.model.passes import CannotPass
from shoplib.model.pocket import point_in
from shoplib.model.pocketed import pocket_screw
from shoplib.model.router_bit import bit_for
from shoplib.tables.setups import Setup

_LONG = 3
"""A cut deeper than three times the bit is wide asks for a long one (common practice, no source)."""


def setup_rows(pair: Pair, rows: tuple[CutRow, ...], setup: Setup, tools: Tools) -> tuple[Row, ...]:
    """What to set, row by row, for this pair in this way.

    >>> from shoplib.documents.practice_cuts import cut_rows
    >>> from shoplib.documents.practice_tools import usual_tools
    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
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
        return (*by_stack(rows, tools, style), *_ends_long(pair, style))
    if name == "single blade in passes":
        kerf = ("Kerf", f"worked for {said(tools.kerf, style)}; measure yours in a scrap: ________")
        high = leaning(pair, tools) if pair.kind == "splined mitre" else heights(pair, rows, tools)
        return (kerf, *blade_passes(pair, channels(rows), tools), *high, *_ends_long(pair, style))
    if name == "router":
        return (*_router(pair, channels(rows, mortises=True), tools), *depths(rows, style), *_ends_long(pair, style))
    if name == "drill":
        return (*_drill(pair, rows, style), *(_pocket(pair) if pair.kind == "pocket screws" else ()))
    return (*_by_hand(rows, style), *depths(rows, style), *_ends_long(pair, style))


def _ends_long(pair: Pair, style: Style) -> Iterator[Row]:
    """How far in the shoulder stands where the end is left long, to be planed flush."""
    long, stock = pair.values.get("long", 0), pair.stock
    if long:
        mates = {stock.across: ["rail"]}
        mates.setdefault(stock.width, []).append("stile")
        for mate, boards in mates.items():
            yield f"End to shoulder, {' and '.join(boards)}", (
                f"{said(mate + long, style)}: {said(mate, style)}, the width of the mate, and {said(long, style)} left "
                "long"
            )


def _router(pair: Pair, rows: tuple[CutRow, ...], tools: Tools) -> Iterator[Row]:
    style = pair.stock.style
    for row in rows:
        what = f"Bit for {said(row.wide, style)}"
        try:
            choice = bit_for(row.wide, tools.bits, style)
        except CannotPass as fault:
            yield what, f"none: {fault}"
            continue
        across, down = len(choice.passes.offsets), choice.down(row.deep)
        told = f"{said(choice.bit, style)}"
        if 0 < choice.left <= NEAR:
            told += (f", one pass: {said(choice.left, style)} less, and no guide is moved by that; fit the "
                     f"{entering(pair)} to it")
        elif across == 2:
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
            elif pair.kind == "pocket screws":
                stop = "as deep as the collar lets it"
            bit = f"bit {said(row.wide, style)}"
            if pair.kind == "dowel":
                dowel = said(pair.values["diameter"], style)
                bit = f"bit for a dowel of {dowel}, whose hole is {said(row.wide, style)}"
            yield f"{row.kind[:1].upper()}{row.kind[1:]} in the {row.board}", f"{bit}, {stop}"


def _pocket(pair: Pair) -> Iterator[Row]:
    """Where the collar goes, which screw to take, and how deep its point comes through the slant."""
    stock, values, style = pair.stock, pair.values, pair.stock.style
    run, web = along_the_drill(stock, values), values["web"]
    yield "Collar", (
        f"behind the step of the bit, the length of your guide and {said(run - web, style)}: {said(run, style)} along "
        f"the drill from face to end (half the thickness / sin {values['angle']} degrees) less {said(web, style)}, "
        "the web"
    )
    into = stock.receives.thinnest
    row, longest = pocket_screw(web, into, style)
    room = (f"{said(web, style)} of web and {said(into, style)} of side at its thinnest, less {said(row.spare, style)} "
            f"to stay before the point, counted straight, are {said(web + into - row.spare, style)}")
    if longest is None:
        yield "Screw", f"none is sold so short: {room}"
    else:
        yield "Screw", (f"{row.gauge}, {said(longest, style)}: {room}; through the slant its point stands "
                        f"{said(point_in(longest, web, values['angle']), style)} deep in the side")


def _by_hand(rows: tuple[CutRow, ...], style: Style) -> Iterator[Row]:
    for row in channels(rows, mortises=True):
        yield f"{row.kind[:1].upper()}{row.kind[1:]}", (
            f"{said(row.wide, style)} by the figures; mark it from the mate itself where the order says so"
        )
