"""What is chosen of a layout by hand before a move: a part, whether it is turned, and where it goes."""

from dataclasses import dataclass, replace

from shoplib.layout.hand import Hand
from shoplib.live.layout_says import NEW, fits, places_to_choose


@dataclass(frozen=True, slots=True)
class Chosen:
    """Which kind of part, from 0; `place` is the letter of a free place, or `new 0` for a new sheet of the first stock.

    >>> Chosen(0, False, "new 2").stock, Chosen(0, False, "b").where
    (2, 'b')
    """

    part: int
    turned: bool
    place: str

    @property
    def stock(self) -> int | None:
        """Which stock a new sheet is taken of; None where the place lies on a sheet in use."""
        return int(self.place.removeprefix(NEW)) if self.place.startswith(NEW) else None

    @property
    def where(self) -> str | int:
        """The place as a move takes it."""
        return self.place if self.stock is None else self.stock


def still_fitting(hand: Hand, chosen: Chosen) -> Chosen:
    """The same place as long as the part fits into it, else the first that it fits into."""
    place = hand.place(chosen.place)
    return first_fitting(hand, chosen) if place is None or not _fits(hand, chosen, chosen.place) else chosen


def first_fitting(hand: Hand, chosen: Chosen) -> Chosen:
    """The part in the first of the places that it fits into; a new sheet where there is none."""
    for value, _ in places_to_choose(hand, chosen.part, chosen.turned):
        if hand.place(value) is None or _fits(hand, chosen, value):
            return replace(chosen, place=value)
    return replace(chosen, place="")


def left_to_choose(hand: Hand, chosen: Chosen) -> Chosen:
    """A part that is still to lay, the same as before where there are more of it, and a place for it."""
    if not hand.to_lay[chosen.part]:
        part = next((n for n, left in enumerate(hand.to_lay) if left), chosen.part)
        chosen = replace(chosen, part=part, turned=False)
    return first_fitting(hand, chosen)


def _fits(hand: Hand, chosen: Chosen, place: str) -> bool:
    return fits(hand, hand.place(place), chosen.part, chosen.turned)
