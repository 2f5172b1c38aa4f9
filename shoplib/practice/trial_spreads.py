"""How far off each scale of the trial bench is: all that is invented for the joints other than the dado, in one place.

Every number here is invented for the bench; common practice, no source. Nobody measured these machines. Angles are
counted in hundred-thousandths of a degree.
"""

from dataclasses import dataclass

from shoplib.measure import Style, write_brief
from shoplib.practice.spreads import NONE, STATED, THOU, Spreads

DEGREE = 100_000
"""So many parts make a degree."""

PROTRACTOR = DEGREE // 20
"""A protractor is read to 0.05 degrees."""


@dataclass(frozen=True, slots=True)
class Off:
    """The spread (standard deviation) of a scale: `always` out by this much, and `again` from one cut to the next."""

    always: int
    again: int


@dataclass(frozen=True, slots=True)
class TrialSpreads:
    """What is off at a trial bench: `sheet` has the boards and the caliper, `scales` each sort of scale.

    `protractor` is the spread of one reading of an angle.
    """

    sheet: Spreads
    scales: tuple[tuple[str, Off], ...]
    protractor: int

    def of(self, sort: str) -> Off:
        """The spread of scales of this sort."""
        return dict(self.scales)[sort]


_SCALES = {
    "stack": Off(4 * THOU, THOU // 4),
    "pin": Off(5 * THOU, THOU // 4),
    "depth": Off(8 * THOU, THOU // 2),
    "fence": Off(10 * THOU, THOU // 2),
    "stop": Off(15 * THOU, 2 * THOU),
    "collar": Off(10 * THOU, 2 * THOU),
    "gauge": Off(6 * THOU, THOU // 2),
    "line": Off(6 * THOU, THOU // 4),
    "carrier": Off(6 * THOU, THOU // 4),
    "angle": Off(DEGREE // 4, DEGREE // 100),
}

SPREADS = TrialSpreads(STATED, tuple(_SCALES.items()), DEGREE // 50)
"""The trial bench. Invented for the bench; common practice, no source."""

PERFECT = TrialSpreads(NONE, tuple((sort, Off(0, 0)) for sort in _SCALES), 0)
"""A bench that is never off: to check the model."""

_CALLED = {
    "stack": "What a stack or bit cuts is wider or narrower than it adds up to", "pin": "The pin of the jig is out",
    "depth": "A depth scale is out", "fence": "A fence scale is out", "stop": "A stop is out",
    "collar": "A stop collar is out", "gauge": "A gauge is out", "carrier": "The fence of a carrier is out",
    "line": "A hand saws beside where it means to", "angle": "An angle scale is out",
}


def told(spreads: TrialSpreads, sorts: list[str], style: Style) -> tuple[str, ...]:
    """What is said openly of the model for scales of these sorts, a sentence for each.

    >>> from shoplib.measure import INCH_STYLE
    >>> told(SPREADS, ["fence"], INCH_STYLE)[1]
    'A fence scale is out by 0.01 in as a rule, the same in every cut; and by 0.0005 in more or less from cut to cut.'
    """
    def size(sort: str, amount: int) -> str:
        if sort == "angle":
            return degrees(amount)
        return write_brief(amount, style, decimal=True) if amount else "nothing"

    lines = [
        "This bench is a model: its errors are invented, and no machine was measured for them. "
        '"As a rule" means the spread: two of three are nearer than that, one of twenty is over twice as far off.',
    ]
    for sort in dict.fromkeys(sorts):
        off = spreads.of(sort)
        lines.append(f"{_CALLED[sort]} by {size(sort, off.always)} as a rule, the same in every cut; and by "
                     f"{size(sort, off.again)} more or less from cut to cut.")
    lines.append(f"The boards are off what is usual by {size('', spreads.sheet.sheet)} as a rule, and each sheet by "
                 f"{size('', spreads.sheet.spot)} more or less besides; solid boards are planed alike. A caliper "
                 f"reading is off by {size('', spreads.sheet.caliper)}.")
    if "angle" in sorts:
        lines.append(f"A reading of an angle is off by {degrees(spreads.protractor)} as a rule.")
    return tuple(lines)


def degrees(parts: int) -> str:
    """An angle as it is written.

    >>> degrees(4_495_000), degrees(90 * DEGREE), degrees(-5_000)
    ('44.95 degrees', '90 degrees', '-0.05 degrees')
    """
    whole, rest = divmod(abs(parts), DEGREE)
    number = f"{whole}.{rest:05}".rstrip("0").rstrip(".")
    return f"{'-' if parts < 0 else ''}{number} degrees"


LEFT_OUT = (
    "A test joint is cut in offcuts of the same boards, which are as thick as the boards.",
    "Every cut runs straight, and its floor is flat; wood does not tear, swell or bend. In a press fit it gives, as "
    "much as the fit asks for, and nowhere else.",
    "What is not set here is cut as it is planned.",
    "Nothing here can hurt you, and so it teaches nothing of how a tool feels or sounds: that needs a person beside "
    "you.",
)
"""What the model leaves out."""
