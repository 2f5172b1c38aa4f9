"""Each board must come out of its sheet."""

from shoplib.measure import narrowest, thickest, write_brief
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least
from shoplib.words.naming import and_list, boards_in_short


def too_big_by(length: int, width: int, size: tuple[int, int], may_turn: bool) -> int:
    """By how much a piece is too long or too wide for a sheet, `size` its length and width; 0 where it fits.

    Whichever of the two misses by more counts; where the piece may turn, the better way round.

    >>> too_big_by(1300, 2000, (2440, 1220), may_turn=False), too_big_by(1300, 2000, (2440, 1220), may_turn=True)
    (780, 80)
    """
    along = thickest([length - size[0], width - size[1], 0])
    if not may_turn:
        return along
    return narrowest([along, thickest([length - size[1], width - size[0], 0])])


def find_too_big_for_sheet(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each kind of board that no size of its sheet can hold, bought or in the shop, by cut size (edging
    goes on afterwards), and one "note" that names the sheets in use with no size given.

    Solid stock with no size is bought as long and wide as it must be, and what is wider than its boards is glued up
    from several: only its length can be too much.
    """
    kinds: dict[tuple, list[Board]] = {}
    for board in cabinet.boards:
        kinds.setdefault((board.sheet, board.cut_size[:2], board.grain == "none"), []).append(board)
    found, unknown = [], []
    for (name, (length, width), may_turn), boards in kinds.items():
        sheet = cabinet.sheets[name]
        sizes = _sizes(sheet)
        if not sizes:
            if sheet.kind != "solid":
                unknown.append(name)
            continue
        over = [too_big_by(length, width, size, may_turn) for size in sizes]
        if sheet.kind == "solid":
            over = [thickest([length - long, 0]) for long, _ in sizes]
        least = narrowest(over)
        if least:
            found.append(_too_big(cabinet, boards, sheet, sizes[over.index(least)], least))
    if unknown:
        found.append(_no_size(list(dict.fromkeys(unknown))))
    return tuple(found)


def _sizes(sheet: Sheet) -> list[tuple[int, int]]:
    """Every known length and width of this sheet, its own first."""
    own = [] if sheet.length is None or sheet.width is None else [(sheet.length, sheet.width)]
    return own + [(other.length, other.width) for other in (*sheet.sizes, *sheet.on_hand)]


def _too_big(cabinet: Cabinet, boards: list[Board], sheet: Sheet, size: tuple[int, int], over: int) -> Finding:
    style = cabinet.style
    length, width, _ = boards[0].cut_size
    board_names = tuple(board.name for board in boards)
    piece = f"{write_brief(length, style)} x {write_brief(width, style)}"
    whole = f"{write_brief(size[0], style)} x {write_brief(size[1], style)}"
    if sheet.kind == "solid":
        turned, mend = "along the grain", "Get a longer board, or make the piece shorter."
    else:
        turned = "either way round" if boards[0].grain == "none" else "with the grain along it"
        mend = "Use a larger sheet, make the piece smaller, or join it from two."
    text = (
        f"{boards_in_short(boards)}: {piece} does not come out of the {sheet.name}, {whole}, {turned}: "
        f"{at_least(over, style)} too much. {mend}"
    )
    return Finding("stock", "stop", board_names, text, over)


def _no_size(sheets: list[str]) -> Finding:
    text = (
        f"No length and width are given for {and_list(sheets)}, so whether the boards come out of the sheets "
        "was not looked at. Measure a sheet and put its size into the project."
    )
    return Finding("stock", "note", (), text)
