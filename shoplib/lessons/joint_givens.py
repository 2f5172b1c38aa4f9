"""What the pages of joints give alike: cuts and rooms by their letters, readings of a sheet, how off a board ends."""

from shoplib.lessons.exercise import Effect, Given, Givens, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import read_length

CALIPER = Twin(read_length("0.001 in"), read_length("0.03 mm"))
"""What a caliper reading may be off and still be right."""


def cut_depth(draw: Draw, what: str) -> Given:
    """`d`, how deep a board is cut; `what` names the cut: "dadoes, depth"."""
    return draw.pick("d", what, inch=("1/4 in", "5/16 in", "3/8 in"), mm=("6 mm", "7 mm", "8 mm"))


def end_gap(draw: Draw, what: str) -> Given:
    """`e`, what stays open before the end of the board that enters; `what` names it."""
    return draw.pick("e", what, inch=("1/32 in", "1/16 in"), mm=("1 mm", "1.5 mm"))


def between(draw: Draw, what: str) -> Given:
    """`I`, from inner face to inner face; `what` names it: "between the sides"."""
    return draw.tape("I", what, inch=("18 5/32 in", "28 5/32 in", "1/4 in"), mm=("461 mm", "721 mm", "5 mm"))


def board_as_ordered(draw: Draw, what: str = "boards") -> Given:
    """`T`, the thickness that boards were ordered in."""
    return draw.pick("T", f"{what}, ordered planed to", inch=("3/4 in",), mm=("20 mm",))


def board_as_measured(draw: Draw, what: str = "boards", name: str = "t") -> Given:
    """`t`, or `name`: what such boards measure, always under it, so that a sum tells which of the two was used."""
    ranges = {"inch": ("0.690 in", "0.712 in", "0.001 in"), "mm": ("18.8 mm", "19.4 mm", "0.05 mm")}
    return draw.reading(name, f"{what}, measured", **ranges)


def three_readings(draw: Draw, mean: Given) -> list[Given]:
    """`thin`, `t` and `thick`: a sheet that reads as much under its `mean` in one corner as over it in another."""
    spread = draw.reading("s", "", inch=("0.010 in", "0.014 in", "0.001 in"), mm=("0.25 mm", "0.35 mm", "0.05 mm"))
    return [
        draw.derived_reading("thin", "thinnest reading", mean.value - spread.value), mean,
        draw.derived_reading("thick", "thickest reading", mean.value + spread.value),
    ]


def close_fit(draw: Draw) -> Given:
    """`f`, what a cut is wider than the thickest reading."""
    return draw.reading("f", "fit", inch=("0.004 in", "0.005 in", "0.001 in"), mm=("0.1 mm", "0.15 mm", "0.05 mm"))


def too_much_or_too_little(over: str, under: str) -> Effect:
    """What a size that is off does: each sentence has `{by}` where the amount stands."""
    def effect(_givens: Givens, off: int, say: Say) -> str:
        return (over if off > 0 else under).format(by=say.amount(off))

    return effect


def short_or_long(
    what: str, long: str = "it strikes the wood before the case is as wide as it is drawn",
    short: str = "it hangs in its dadoes by so much less",
) -> Effect:
    """What a board or a cut does that is off in its length: `what` begins the sentence, `long` or `short` ends it."""
    return too_much_or_too_little(
        f"{what} would be {{by}} too long: {long}.", f"{what} would be {{by}} too short: {short}."
    )
