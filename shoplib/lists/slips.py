"""The slip behind a wrong size, where the numbers give it away."""

from shoplib.lists.typed import Said
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, write_length
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import how_much
from shoplib.words.naming import and_list

SIZES = ("length", "width", "thickness")


def slip(board: Board, own: int, said: Said, cabinet: Cabinet) -> str:
    """What may have happened to this size (`own`: 0 length, 1 width, 2 thickness), or an empty text.

    Looked for: what goes into the joints forgotten, the finished size where the cut size is asked, the
    name of the sheet for its measured thickness, millimetres for inches or inches for millimetres, two
    digits that changed places.
    """
    near = cabinet.style.step // 2
    planned = board.cut_size[own]
    joints = _joints_left_out(board, own, cabinet)
    if joints and abs(said.ticks + sum(joints) - planned) <= near:
        return f"its {SIZES[own]} leaves out the joint{'s' * (len(joints) > 1)}: {_joint_words(joints, cabinet)}"
    if planned != board.size[own] and abs(said.ticks - board.size[own]) <= near:
        return f"that is the finished {SIZES[own]}; the edging goes on afterwards"
    sheet = cabinet.sheets[board.sheet]
    named = abs(said.ticks - sheet.nominal) <= near or _round_above(said.ticks, planned)
    if own == 2 and named:
        return "that is what the sheet is sold as, not what it measures"
    if abs(said.ticks * INCH // MM - planned) <= near:
        return "the number is right in inches"
    if abs(said.ticks * MM // INCH - planned) <= near:
        return "the number is right in millimetres"
    if _traded(said.text, planned, cabinet.style):
        return "two of its digits have changed places"
    return ""


def _round_above(ticks: int, planned: int) -> bool:
    """A whole eighth or a whole millimetre, just above what the sheet measures: how sheets are called.

    Sheets are up to 1/16 in thinner than they are called (common practice, no source).
    """
    return planned < ticks <= planned + INCH // 16 and (ticks % (INCH // 8) == 0 or ticks % MM == 0)


def _joints_left_out(board: Board, own: int, cabinet: Cabinet) -> list[int]:
    """How far the board goes into other boards at its ends, along one of its own axes."""
    return [
        joint.depth - joint.end_gap
        for joint in cabinet.joints
        if joint.enters == board.name
        and joint.depth > joint.end_gap
        and board.placement.own_axis("xyz".index(joint.axis[1])) == own
    ]


def _joint_words(joints: list[int], cabinet: Cabinet) -> str:
    """Both ends: "2 x 3/8 in"; one end, or unlike ends: "1/4 in and 3/8 in"."""
    if len(joints) == 2 and joints[0] == joints[1]:
        return f"2 x {how_much(joints[0], cabinet.style)}"
    return and_list([how_much(one, cabinet.style) for one in joints])


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
