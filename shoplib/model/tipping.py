"""Whether a case tips over the line it stands on in front: moments of what holds it down and of what tips it."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import atan2, cos, sin

import pint

from shoplib.measure import Style, to_quantity, ureg
from shoplib.measure.quantity import write_force
from shoplib.model.weight import Weight


@dataclass(frozen=True, slots=True)
class Push:
    """A force that pulls the case forward, level, at a height over the floor (ticks)."""

    what: str
    force: pint.Quantity
    height: int


@dataclass(frozen=True, slots=True)
class Stability:
    """Moments about the line that a case tips over: `holding` keeps it down, `tipping` throws it forward.

    `working` has a line for each weight and push.
    """

    holding: pint.Quantity
    tipping: pint.Quantity
    working: tuple[str, ...]

    @property
    def tips(self) -> bool:
        """Whether it goes over."""
        return self.tipping >= self.holding

    @property
    def times(self) -> float | None:
        """How many times what tips it goes into what holds it; None where nothing tips it."""
        return None if self.tipping.magnitude <= 0 else (self.holding / self.tipping).to("dimensionless").magnitude

    def pull_to_hold(self, height: int) -> pint.Quantity:
        """What a fastening at this height over the floor (ticks) must hold, pulled forward; 0 where the case stands."""
        short = (self.tipping - self.holding) / to_quantity(height, "inch")
        return max(short.to("pound_force"), ureg.Quantity(0, "pound_force"))


def stability(
    weights: Iterable[Weight],
    edge: int,
    floor: int,
    style: Style,
    *,
    pushes: Iterable[Push] = (),
    raised: int = 0,
    over: int = 0,
) -> Stability:
    """The moments about the line across the case at `edge` (y) on the `floor` (z), lengths in ticks.

    A weight with its middle behind the line holds, at its least; one before it tips, at its most. `raised` is the block
    under the rear, which stands `over` behind the line: it leans the whole case forward.

    A box of 100 N with its middle 300 mm behind its feet, and 40 N hung 500 mm before them:

    >>> from shoplib.measure import MM, MM_STYLE
    >>> def at(what, newton, y):
    ...     return Weight(what, ureg.Quantity(newton, "newton"), ureg.Quantity(newton, "newton"), (0, y * MM, 0))
    >>> stands = stability([at("case", 100, 300), at("drawer", 40, -500)], 0, 0, MM_STYLE)
    >>> stands.tips, stands.times
    (False, 1.5)
    >>> for line in stands.working:
    ...     print(line)
    case: 10 kg x 300 mm behind the line = 30.0 N m, holds
    drawer: 4.1 kg x 500 mm before it = 20.0 N m, tips
    """
    lean = atan2(raised, over) if raised else 0.0
    holding = tipping = ureg.Quantity(0.0, "newton * meter")
    lines = []
    for one in weights:
        _, y, z = one.middle
        arm = (y - edge) * cos(lean) - (z - floor) * sin(lean)
        holds = arm >= 0
        force = one.low if holds else one.high
        moment = (force * to_quantity(round(abs(arm)), "millimeter")).to("newton * meter")
        holding, tipping = (holding + moment, tipping) if holds else (holding, tipping + moment)
        where = "behind the line" if holds else "before it"
        lines.append(_line(one.of, force, round(abs(arm)), where, moment, "holds" if holds else "tips", style))
    for push in pushes:
        moment = (push.force * to_quantity(push.height, "millimeter")).to("newton * meter")
        tipping += moment
        lines.append(_line(push.what, push.force, push.height, "over the floor", moment, "tips", style))
    return Stability(holding, tipping, tuple(lines))


def moment_text(moment: pint.Quantity, unit: str) -> str:
    """A moment as it is said: pound inches, or newton metres."""
    if unit == "in":
        return f"{moment.to('pound_force * inch').magnitude:,.0f} lb in"
    return f"{moment.to('newton * meter').magnitude:,.1f} N m"


def _line(
    what: str, force: pint.Quantity, arm: int, where: str, moment: pint.Quantity, does: str, style: Style
) -> str:
    length = to_quantity(arm, "inch" if style.unit == "in" else "millimeter").magnitude
    far = f"{length:.1f} in" if style.unit == "in" else f"{length:.0f} mm"
    return (
        f"{what}: {write_force(force, style.unit)} x {far} {where} = {moment_text(moment, style.unit)}, {does}"
    )
