"""The boards together must come to the outside sizes that the plan states."""

from shoplib.measure import write_brief
from shoplib.model.box import around
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much

_SIZES = ("width", "depth", "height")
_LOW_END = ("left", "front", "underside")
_HIGH_END = ("right", "back", "top")


def find_outside_difference(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each of width, depth and height in which the box over all boards is another one
    than `cabinet.outside`. The amount is the difference: more than stated is positive.
    """
    if not cabinet.boards:
        return ()
    found = []
    whole, stated = around([board.box for board in cabinet.boards]), cabinet.outside
    for axis, size in enumerate(_SIZES):
        low, high = whole.low[axis] - stated.low[axis], whole.high[axis] - stated.high[axis]
        if low or high:
            found.append(_finding(cabinet, axis, size, low, high))
    return tuple(found)


def tell_height_on_casters(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" where the cabinet stands on casters or feet: which height is that of the boards, and which is not."""
    below = [fitting for fitting in cabinet.hardware if fitting.what in ("caster", "foot")]
    whole, boards = cabinet.envelope.size[2], cabinet.outside.size[2]
    if not below or whole == boards:
        return ()
    what = "casters" if below[0].what == "caster" else "feet"
    by = cabinet.project.size.by if cabinet.project else "outside"
    given = {
        "outside": "size.height is that of the boards alone",
        "inside": "size.height is that of the inside alone",
        "space": f"the height of the space counts the {what} in",
    }[by]
    style = cabinet.style
    text = (
        f"On its {what} the cabinet stands {write_brief(whole, style)} high: {write_brief(boards, style)} of boards "
        f"and {write_brief(whole - boards, style)} below them; {given}."
    )
    return (Finding("outside", "note", (), text, whole),)


def _finding(cabinet: Cabinet, axis: int, size: str, low: int, high: int) -> Finding:
    style = cabinet.style
    whole = around([board.box for board in cabinet.boards])
    ends = [board for board in cabinet.boards if low and board.box.low[axis] == whole.low[axis]]
    ends += [board for board in cabinet.boards if high and board.box.high[axis] == whole.high[axis]]
    boards = tuple(dict.fromkeys(board.name for board in ends))
    difference = high - low
    if difference == 0:
        end = (_LOW_END if low < 0 else _HIGH_END)[axis]
        text = (
            f"The boards come to the stated {size} but stand {how_much(abs(low), style)} too far "
            f"to the {end}. Move {boards[0]} and what is joined to it back by as much."
        )
        return Finding("outside", "stop", boards, text, abs(low))
    word = "more" if difference > 0 else "less"
    text = (
        f"The boards together come to a {size} of {write_brief(whole.size[axis], style)}, "
        f"{how_much(abs(difference), style)} {word} than the outside {size} of "
        f"{write_brief(cabinet.outside.size[axis], style)}. "
        f"Look at {boards[0]} first: it reaches the end that is off."
    )
    return Finding("outside", "stop", boards, text, difference)
