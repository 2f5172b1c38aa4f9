"""The boards of the trial bench as they are usually found, and what is planned with them before anyone measures."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.sheet import Sheet

_THICK = {
    "sheet": {"in": INCH * 705 // 1000, "mm": MM * 178 // 10},
    "drawer": {"in": INCH * 480 // 1000, "mm": MM * 119 // 10},
    "thin": {"in": INCH * 205 // 1000, "mm": MM * 57 // 10},
    "solid": {"in": INCH * 3 // 4, "mm": 19 * MM},
}
"""What a sheet sold as 3/4 in or 18 mm measures, one for drawers, a thin one, and a planed board. Invented for the
bench; common practice, no source."""

_OTHER = {"dovetail": ("drawer", "drawer")}
"""What is practised in other boards than those the joint is shown in: dovetails, in those of a drawer."""


def trial_stock(name: str, unit: str, enters: int | None = None, receives: int | None = None) -> Stock:
    """The two boards of that joint, as thick as is said (ticks), or as they usually are.

    >>> trial_stock("half lap", "mm").across == 60 * MM
    True
    """
    inch = unit == "in"
    practised = joint(name)
    usual = "solid" if practised.group > 1 else "sheet"
    boards = _OTHER.get(name, practised.boards)
    sizes = [given or _THICK[board or usual][unit] for given, board in zip((enters, receives), boards, strict=True)]
    kind = "solid" if usual == "solid" else "plywood"
    sheets = [Sheet(f"{what} board", kind, size, (size,)) for what, size in
              zip(("entering", "receiving"), sizes, strict=True)]
    shown = 4 * INCH if inch else 100 * MM
    style = INCH_STYLE if inch else MM_STYLE
    if practised.frame:
        narrow = practised.usual_width(unit)
        return Stock(*sheets, narrow, narrow, shown, shown, style)
    # Eleven fingers of a cutter close on their boards.
    wide = 11 * (3 * INCH // 8 if inch else 10 * MM) if name == "finger" else shown
    return Stock(*sheets, wide, None, shown, shown, style)


def trial_plan(name: str, unit: str) -> dict[str, int]:
    """What the pair is to be: the joint's usual values for the usual boards, as its page teaches them.

    Only the dowel's hole in the side is less deep, and its task says why (`trial_pegs.SHALLOWER`).

    >>> trial_plan("rabbet", "in") == joint("rabbet").usual(trial_stock("rabbet", "in"))
    True
    """
    kind, stock = joint(name), trial_stock(name, unit)
    plan = kind.usual(stock)
    if name == "dowel":  # a board may be thinner than usual, and the bit must not come near its face
        plan["into side"] -= stock.natural(INCH // 8, 3 * MM)
    return plan
