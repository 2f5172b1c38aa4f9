"""The cutters that a practice sheet is worked for, and the settings that suit the narrowest of them."""

from dataclasses import dataclass

from shoplib.joints.bench_pair import CannotCut, JointKind, Stock
from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.dado_stack import SawLimits
from shoplib.tables.dado_sets import DadoSet, dado_sets
from shoplib.tables.router_bits import straight_bits, undersize_bits
from shoplib.tables.setups import Setup


@dataclass(frozen=True, slots=True)
class Tools:
    """The cutters a person has, in ticks: a dado set and what its saw allows, kerf and diameter of a blade.

    `bits` are those of a router. The usual ones are worked examples: write down your own.
    """

    dado_set: DadoSet
    saw: SawLimits
    kerf: int
    blade: int
    bits: tuple[int, ...]


def usual_tools(style: Style) -> Tools:
    """The tools that the tables give as an example, in the unit of the shop.

    The saw is that of the manuals that were read, 13/16 in wide and 8 in across; where the shop works in millimetres,
    20 mm wide, because a sheet's own caution tells of that limit (`data/cautions.toml`, "dado set"). The kerf, 1/8 in
    or 3 mm, and the blade, 10 in or 250 mm across, are common practice, no source.

    >>> from shoplib.measure import MM_STYLE
    >>> usual_tools(MM_STYLE).kerf == 3 * MM
    True
    """
    owned = next(one for one in dado_sets().values() if one.unit == style.unit)
    inch = style.unit == "in"
    bits = straight_bits(style.unit) + (tuple(undersize_bits()) if inch else ())
    saw = SawLimits(read_length("13/16 in") if inch else 20 * MM, read_length("8 in"))
    kerf, blade = (INCH // 8, 10 * INCH) if inch else (3 * MM, 250 * MM)
    return Tools(owned, saw, kerf, blade, tuple(sorted(bits)))


def suited_values(kind: JointKind, stock: Stock, setup: Setup, tools: Tools) -> dict[str, int]:
    """Settings that make a joint's narrow cuts as wide as the narrowest stack, where the usual ones are narrower.

    A tongue is normally as thick as the cutter is wide (common practice, no source). Empty where nothing is to be
    changed, or where the sheet is too thin for it.

    >>> from shoplib.draw.pair_section import said
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
    if "dado set" not in setup.way.tools or kind.name not in ("tongue", "drawer lock"):
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
