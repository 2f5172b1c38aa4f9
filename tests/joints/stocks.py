"""Random stock and settings for any joint of the bench."""

from dataclasses import replace

from hypothesis import assume
from hypothesis import strategies as st

from shoplib.joints.bench_pair import CannotCut, Stock
from shoplib.measure import INCH_STYLE, MM, MM_STYLE
from shoplib.model.sheet import Sheet


@st.composite
def sheets(draw, name, low=9, high=45):
    thickness = draw(st.integers(low * MM, high * MM))
    around = st.integers(thickness - MM // 4, thickness + MM // 4)
    readings = tuple(draw(st.lists(around, max_size=3)))
    return Sheet(name, draw(st.sampled_from(["plywood", "solid"])), thickness, readings)


@st.composite
def stocks(draw):
    """Two boards of 9 to 45 mm by readings, 40 to 400 mm wide, of a shop in inches or in millimetres."""
    return Stock(
        draw(sheets("entering stock")),
        draw(sheets("receiving stock")),
        draw(st.integers(40 * MM, 400 * MM)),
        draw(st.none() | st.integers(40 * MM, 120 * MM)),
        draw(st.integers(100 * MM, 300 * MM)),
        draw(st.integers(100 * MM, 300 * MM)),
        draw(st.sampled_from([INCH_STYLE, MM_STYLE])),
    )


def tried(data, kind, stock):
    """A pair of this stock with settings drawn from within their limits; what is refused is drawn anew."""
    given = {}
    if kind.name == "finger":  # a width that nobody chose closes on no finger that somebody did
        count = data.draw(st.integers(3, 20), "fingers")
        given["finger"] = data.draw(st.integers(4 * MM, 30 * MM), "finger")
        stock = replace(stock, width=count * given["finger"])
    if kind.name == "mortise and tenon" and data.draw(st.booleans(), "two rails"):
        square = data.draw(st.integers(max(30 * MM, stock.enters.thickness), 60 * MM), "leg")
        stock = replace(stock, receives=Sheet("leg stock", "solid", square), receives_width=square)
        given["rails"] = 2
    for setting in kind.settings:
        low, high, step = setting.low(stock), setting.high(stock), setting.step(stock)
        if high > low and setting.name not in given and data.draw(st.booleans(), f"set {setting.name}"):
            given[setting.name] = low + data.draw(st.integers(0, (high - low) // step), setting.name) * step
    try:
        return kind.build(stock, given)
    except CannotCut as refused:
        assert refused.amount > 0 and refused.setting in {setting.name for setting in kind.settings}
        assume(False)
