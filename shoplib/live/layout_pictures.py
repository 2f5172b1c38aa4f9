"""Which sheets are drawn beside a layout by hand, and in which order."""

from shoplib.draw.layout_by_hand import sheet_by_hand, sheet_to_take
from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.layout.hand import Hand
from shoplib.layout.pieces import Rect
from shoplib.live.layout_choice import Chosen
from shoplib.live.layout_says import changed_sheet

PICTURE = (460.0, 300.0)
"""What the drawing of a sheet is fitted to, in its own units."""

_REMEMBERED = 40
"""So many drawings are kept, for most sheets stay as they are from move to move."""


class Pictures:
    """The drawings of one panel; `letters` is how large they are lettered (`draw.letters`)."""

    def __init__(self, letters: float) -> None:
        self._letters = letters
        self._drawn: dict[Scene, dict[str, str]] = {}

    def of_all(self, hand: Hand) -> list[dict[str, str]]:
        """All sheets, as they are numbered."""
        with drawn_with(self._letters):
            return [self._picture(sheet_by_hand(hand, n)) for n in range(len(hand.sheets))]

    def of_chosen(self, hand: Hand, chosen: Chosen) -> list[dict[str, str]]:
        """The sheet with the chosen place first, or the one that the last part went on, then the others."""
        with drawn_with(self._letters):
            place = hand.place(chosen.place)
            first = [place.sheet] if place else [changed_sheet(hand.before, hand)] if hand.done and hand.before else []
            part = _lying(hand, chosen, place.at) if place else None
            drawn = [self._picture(sheet_by_hand(hand, n, chosen.place, part)) for n in first]
            if chosen.stock is not None and not hand.done:
                usable = hand.job.stock[chosen.stock].usable
                drawn.append(self._picture(sheet_to_take(hand, chosen.stock, _lying(hand, chosen, usable))))
            return drawn + [self._picture(sheet_by_hand(hand, n)) for n in range(len(hand.sheets)) if n not in first]

    def _picture(self, scene: Scene) -> dict[str, str]:
        """Drawn once as long as nothing of it changes."""
        drawn = self._drawn.get(scene)
        if drawn is None:
            if len(self._drawn) > _REMEMBERED:
                self._drawn.clear()
            drawn = self._drawn[scene] = {"svg": draw(scene, PICTURE), "alt": scene.alt}
        return drawn


def _lying(hand: Hand, chosen: Chosen, place: Rect) -> Rect | None:
    """Where the part would lie in a place; None where it is too large for it."""
    wide, high = hand.size_of(chosen.part, chosen.turned)
    can = wide <= place.w and high <= place.h and hand.to_lay[chosen.part]
    return Rect(place.x, place.y, wide, high) if can else None
