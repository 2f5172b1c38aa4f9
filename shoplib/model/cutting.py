"""What a person decides about stock and the saw: sizes at the yard, what lies in the shop, the kerf, the prices."""

from dataclasses import dataclass, field
from typing import Literal

from shoplib.measure import INCH, MM
from shoplib.model.marks import Length, PackPrice, Price, Room, Share, Thing, Weight, WholeTicks, natural


@dataclass(frozen=True, slots=True)
class StockSize(WholeTicks):
    """A size that a sheet or a board can be bought in; `price` is what one costs, empty where it is not known."""

    length: Length
    width: Length
    price: Price = ""


@dataclass(frozen=True, slots=True)
class OnHand(WholeTicks):
    """`count` equal offcuts or rough boards that lie in the shop, and are used before anything is bought.

    `trim` comes off each long edge, `trim_ends` off each end; None is as the sheet says.
    """

    length: Length
    width: Length
    count: int = 1
    trim: Room | None = None
    trim_ends: Room | None = None


@dataclass(frozen=True, slots=True)
class Cutting(WholeTicks):
    """How stock is laid out and cut.

    `kerf` is the width of the saw cut (1/8 in or 3 mm: common practice, no source). `lay_out`: each stage with what
    the stages before left over, or all boards at once. `choose` says which of the layouts of least cost is taken. A
    piece heavier than `one_lifts` is told as one that two people lift (50 lb or 23 kg: common practice, no source).
    Rough solid boards have `rough_length` and `rough_width` over the finished size (H. H. Windsor, Mission Furniture,
    Part Three, 1912, p. 50: 1/2 in and 1/4 in), and `rough_thickness` to be planed off (common practice, no source).
    A part wider than any board is glued up; each of its staves has `jointing` over, for both its edges (common
    practice, no source). `fronts_in_grain_order` cuts the drawer fronts of each bay, or of each row across the case,
    from one board in the order in which they stand. `strips_from` names the solid sheet that strips of edging, wood
    runners and kickers are ripped from; empty where they come from stock of their own. Boards of the stages that are
    `already_cut` are laid out no more, and what was bought with them is not bought again; what they left lies in the
    shop only where it is written under `on_hand`.
    """

    kerf: Room = natural(INCH // 8, 3 * MM)
    lay_out: Literal["stage by stage", "all together"] = "stage by stage"
    choose: Literal["largest offcut", "fewest rips", "fewest settings", "fewest turns", "light pieces"] = (
        "largest offcut"
    )
    one_lifts: Weight = natural("50 lb", "23 kg")
    rough_length: Room = natural(INCH // 2, 12 * MM)
    rough_width: Room = natural(INCH // 4, 6 * MM)
    rough_thickness: Room = natural(INCH // 4, 6 * MM)
    jointing: Room = natural(INCH // 8, 3 * MM)
    fronts_in_grain_order: Literal["no", "down each bay", "along each row"] = "no"
    strips_from: str = ""
    already_cut: Literal["nothing", "case", "case and boxes"] = "nothing"

    @property
    def first_stage(self) -> int:
        """The first stage that is still to be cut, by its number.

        >>> [Cutting(already_cut=cut).first_stage for cut in ("nothing", "case", "case and boxes")]
        [1, 2, 3]
        """
        return 1 + ("nothing", "case", "case and boxes").index(self.already_cut)


@dataclass(frozen=True, slots=True)
class Buying:
    """What the yard asks for: `prices` in `currency`, by the name of the line. `spare_screws` is bought over the count.

    A price is that of one of the unit in which the list counts, or of a box or a roll: `9.80 for 100`.
    """

    currency: str = "USD"
    spare_screws: Share = 10
    prices: dict[Thing, PackPrice] = field(default_factory=dict)


USUAL_CUTTING = Cutting()
NO_PRICES = Buying()
