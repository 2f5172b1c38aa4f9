"""Each board must come out of its sheet."""

from shoplib.measure import narrowest, thickest, write_brief
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least
from shoplib.words.naming import and_list, boards_in_short


def too_big_by(length: int, width: int, sheet: Sheet, may_turn: bool) -> int:
    """By how much a piece is too long or too wide for a sheet of known size; 0 where it fits.

    Whichever of the two misses by more counts; where the piece may turn, the better way round.

    >>> sheet = Sheet("case sheet", "plywood", 18, length=2440, width=1220)
    >>> too_big_by(1300, 2000, sheet, may_turn=False), too_big_by(1300, 2000, sheet, may_turn=True)
    (780, 80)
    """
    along = thickest([length - sheet.length, width - sheet.width, 0])
    if not may_turn:
        return along
    return narrowest([along, thickest([length - sheet.width, width - sheet.length, 0])])


def find_too_big_for_sheet(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each kind of board that its sheet cannot hold, by cut size (edging goes on
    afterwards), and one "note" that names the sheets in use with no size given. Solid stock with no
    size is bought as long and wide as it must be.
    """
    kinds: dict[tuple, list[Board]] = {}
    for board in cabinet.boards:
        kinds.setdefault((board.sheet, board.cut_size[:2], board.grain == "none"), []).append(board)
    found, unknown = [], []
    for (name, size, may_turn), boards in kinds.items():
        sheet = cabinet.sheets[name]
        if sheet.length is None or sheet.width is None:
            if sheet.kind != "solid":
                unknown.append(name)
        elif over := too_big_by(*size, sheet, may_turn):
            found.append(_too_big(cabinet, boards, sheet, over))
    if unknown:
        found.append(_no_size(list(dict.fromkeys(unknown))))
    return tuple(found)


def _too_big(cabinet: Cabinet, boards: list[Board], sheet: Sheet, over: int) -> Finding:
    style = cabinet.style
    length, width, _ = boards[0].cut_size
    board_names = tuple(board.name for board in boards)
    piece = f"{write_brief(length, style)} x {write_brief(width, style)}"
    whole = f"{write_brief(sheet.length, style)} x {write_brief(sheet.width, style)}"
    turned = "either way round" if boards[0].grain == "none" else "with the grain along it"
    text = (
        f"{boards_in_short(boards)}: {piece} does not come out of the {sheet.name}, {whole}, {turned}: "
        f"{at_least(over, style)} too much. "
        "Use a larger sheet, make the piece smaller, or join it from two."
    )
    return Finding("stock", "stop", board_names, text, over)


def _no_size(sheets: list[str]) -> Finding:
    text = (
        f"No length and width are given for {and_list(sheets)}, so whether the boards come out of the sheets "
        "was not looked at. Measure a sheet and put its size into the project."
    )
    return Finding("stock", "note", (), text)
