"""The slip behind a wrong size, where the numbers give it away."""

from shoplib.lists.typed import Said
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, write_length
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

SIZES = ("length", "width", "thickness")


def slip(board: Board, own: int, said: Said, cabinet: Cabinet) -> str:
    """What may have happened to this size (`own`: 0 length, 1 width, 2 thickness), or an empty text.

    Looked for: the finished size where the cut size is asked, the name of the sheet for its measured
    thickness, millimetres for inches or inches for millimetres, two digits that changed places.
    """
    near = cabinet.style.step // 2
    planned = board.cut_size[own]
    if planned != board.size[own] and abs(said.ticks - board.size[own]) <= near:
        return f"that is the finished {SIZES[own]}; the edging goes on afterwards"
    sheet = cabinet.sheets[board.sheet]
    if own == 2 and abs(said.ticks - sheet.nominal) <= near:
        return "that is what the sheet is sold as, not what it measures"
    if abs(said.ticks * INCH // MM - planned) <= near:
        return "the number is right in inches"
    if abs(said.ticks * MM // INCH - planned) <= near:
        return "the number is right in millimetres"
    if _traded(said.text, planned, cabinet.style):
        return "two of its digits have changed places"
    return ""


def _traded(text: str, planned: int, style: Style) -> bool:
    """True where swapping two digits of the typed text gives the planned size.

    >>> _traded("25 3/8 in", 48_006_000, INCH_STYLE), _traded("25 5/8 in", 48_006_000, INCH_STYLE)
    (True, False)
    >>> _traded("25 3/8 in", 48_006_000, MM_STYLE)
    True
    """
    typed = text.lower().strip()
    metric = "m" in typed or ('"' not in typed and "in" not in typed and style.unit == "mm")
    if metric != (style.unit == "mm"):
        style = MM_STYLE if metric else INCH_STYLE
    right = _digits(write_length(planned, style, unit=False).partition(" (")[0])
    wrong = _digits(typed)
    if len(wrong) != len(right) or wrong == right:
        return False
    odd = [place for place in range(len(right)) if wrong[place] != right[place]]
    return len(odd) == 2 and wrong[odd[0]] == right[odd[1]] and wrong[odd[1]] == right[odd[0]]


def _digits(text: str) -> str:
    return "".join(sign for sign in text if sign.isdigit() or sign in "/.")
