"""What can be typed of saw and sheet in a layout by hand: how it stands, as it was typed, and what is wrong with it."""

from shoplib.layout.hand import Hand
from shoplib.measure import LengthError, Style, read_length, write_brief, write_length
from shoplib.model.possible import no_such_kerf
from shoplib.words.quoted import in_quotes

FIELDS = {"kerf": "Kerf", "trim": "Trim, each edge"}
"""What can be typed of saw and sheet, by name."""


class Typed:
    """The fields of one panel; a text that was refused stays in its field until it is mended."""

    def __init__(self) -> None:
        self._typed: dict[str, str] = {}
        self._faults: dict[str, str] = {}

    def clear(self) -> None:
        """Each field says again what stands."""
        self._typed.clear()
        self._faults.clear()

    def read(self, name: str, typed: str, style: Style) -> int | str:
        """The size that was typed, in ticks, or one sentence that says why it is none.

        >>> from shoplib.measure import INCH_STYLE
        >>> Typed().read("kerf", "1/8", INCH_STYLE) == 25.4 * 80_000 / 8
        True
        """
        self._typed[name] = typed
        try:
            size = read_length(typed, what=FIELDS[name].lower(), unit=style.unit, zero=True)
        except LengthError as fault:
            return sentence(fault)
        none = no_such_kerf(size, style) if name == "kerf" else ""
        return sentence(f"{none}.") if none else size

    def refuse(self, name: str, said: str) -> None:
        """Say beside the field what is wrong with what was typed."""
        self._faults[name] = in_quotes(said)

    def accept(self, name: str) -> None:
        """Nothing is wrong with it."""
        self._faults.pop(name, None)

    def shown(self, name: str, hand: Hand) -> dict[str, str]:
        """One field as the page shows it: what was typed last, what stands where that was refused, and why it was."""
        size = hand.job.kerf if name == "kerf" else hand.job.stock[0].trim_ends
        typed = self._typed.get(name, write_length(size, hand.style, unit=False))
        stands = f"stands at {write_brief(size, hand.style)}" if name in self._faults else ""
        return {"name": name, "label": FIELDS[name], "typed": typed, "fault": self._faults.get(name, ""),
                "stands": stands}


def sentence(fault: object) -> str:
    """What is wrong, with a capital.

    >>> sentence(ValueError("the kerf is too wide."))
    'The kerf is too wide.'
    """
    said = str(fault)
    return f"{said[:1].upper()}{said[1:]}"
