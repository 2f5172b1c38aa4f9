"""How far off each tool and each sheet of the practice bench is: all that is invented, in one place.

Every number here is invented for the bench; common practice, no source. Nobody measured these saws. A learner is
told them all, by `told`, as soon as the pair is cut.
"""

from dataclasses import dataclass

from shoplib.measure import INCH, Style, write_brief

THOU = INCH // 1000
"""A thousandth of an inch."""


@dataclass(frozen=True, slots=True)
class Spreads:
    """The spread (standard deviation) of each error in ticks, or the most of it where every size is as likely.

    Of the saw, drawn once for a learner: `cutter` what the stack cuts wider or narrower than it adds up to, `runout`
    (0 to this) what its wobble adds to the width, `depth` and `fence` what their scales are out. Of each cut anew:
    `width_again`, `depth_again`, `fence_again`. `sheet` is how far a whole sheet is off the thickness it is usually
    found to have, `spot` how far one spot of it is off the rest, `bow` (0 to this) how far a long panel rides up in
    the middle. `caliper` is the spread of one reading.
    """

    cutter: int
    runout: int
    depth: int
    fence: int
    width_again: int
    depth_again: int
    fence_again: int
    sheet: int
    spot: int
    bow: int
    caliper: int


STATED = Spreads(
    cutter=3 * THOU, runout=4 * THOU, depth=8 * THOU, fence=10 * THOU,
    width_again=THOU // 2, depth_again=THOU, fence_again=THOU // 2,
    sheet=4 * THOU, spot=THOU, bow=30 * THOU, caliper=THOU // 2,
)
"""The practice bench. Invented for the bench; common practice, no source."""

NONE = Spreads(*(0,) * 11)
"""A perfect bench: to check the model, and to show what is left when nothing is off."""


def told(spreads: Spreads, style: Style) -> tuple[str, ...]:
    """What is said openly of the model, a sentence for each part of it.

    >>> from shoplib.measure import MM_STYLE
    >>> told(STATED, MM_STYLE)[-1]
    'A caliper reading is off by 0.01 mm as a rule.'
    """
    def size(ticks: int) -> str:
        return write_brief(ticks, style, decimal=True) if ticks else "nothing"

    return (
        "This bench is a model: its errors are invented, and no saw was measured for them. "
        '"As a rule" means the spread: two of three are nearer than that, one of twenty is over twice as far off.',
        f"Your stack cuts wider or narrower than it adds up to, by {size(spreads.cutter)} as a rule; its wobble "
        f"makes each cut wider still, by {size(spreads.runout)} at most.",
        f"Your depth scale is out by {size(spreads.depth)} as a rule and your fence scale by {size(spreads.fence)}: "
        "the same in every cut.",
        f"From one cut to the next the width changes by {size(spreads.width_again)} as a rule, the depth by "
        f"{size(spreads.depth_again)} and the place by {size(spreads.fence_again)}.",
        f"The whole sheet is off what such a sheet is usually found to measure, by {size(spreads.sheet)} as a rule.",
        f"One spot of the sheet is thicker or thinner than the rest by {size(spreads.spot)} as a rule.",
        f"A long panel that is not pressed down rides up to {size(spreads.bow)} over the cutter; pressed down it lies "
        "flat, which a real one may not. A short offcut is flat.",
        f"A caliper reading is off by {size(spreads.caliper)} as a rule.",
    )


def left_out() -> tuple[str, ...]:
    """What the model leaves out, a sentence for each: what a real saw does beside all that.

    >>> left_out()[0]
    'What the stack cuts too wide goes to the side away from the fence; a real wobble cuts to both sides.'
    """
    return (
        "What the stack cuts too wide goes to the side away from the fence; a real wobble cuts to both sides.",
        "Every cut runs straight and square, and its floor is flat: no fence out of line, no steps between cutters.",
        "The sheet lies still: it does not tear out, burn, creep along the fence, or swell with glue and damp.",
        "The bottom and the shelf come cut to length, and their ends are square.",
        "Nothing here can hurt you, and so it teaches nothing of how a saw feels or sounds: that needs a person beside "
        "you.",
    )
