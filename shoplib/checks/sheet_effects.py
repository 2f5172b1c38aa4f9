"""What a sheet changes because it measures otherwise than its name says."""

from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.uprights import UPRIGHTS
from shoplib.words.naming import and_list

Effect = tuple[str, int, str]
"""What changes, by how much in all, and which way."""


def tell_what_sheets_change(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One "note" for each sheet whose mean reading is not its nominal thickness, where sizes follow from it.

    A case of given outside gains inside what its boards are thinner than named: n uprights of thickness t
    leave W - n t to the bays, m level boards H - m t to the inside; of given inside, the outside changes
    instead. A box of given outside is B - 2 s wide inside. Inset fronts of thickness f leave D - f to the boxes.
    The amount is how much thinner the sheet is.
    """
    found = []
    for name in dict.fromkeys(board.sheet for board in cabinet.boards):
        sheet = cabinet.sheets[name]
        thinner = sheet.nominal - sheet.thickness
        boards = [board for board in cabinet.boards if board.sheet == name]
        effects = _effects(cabinet, thinner, boards) if sheet.readings and thinner else []
        if effects:
            found.append(_note(cabinet, sheet, thinner, boards, effects))
    return tuple(found)


def _note(cabinet: Cabinet, sheet: Sheet, thinner: int, boards: list[Board], effects: list[Effect]) -> Finding:
    style, word = cabinet.style, "less" if thinner > 0 else "more"
    told = and_list([f"{what} {write_brief(abs(by), style, decimal=True)} {how}" for what, by, how in effects])
    text = (
        f"{sheet.name}: the mean of its readings is {write_brief(sheet.thickness, style, decimal=True)}, "
        f"{write_brief(abs(thinner), style, decimal=True)} {word} than its name says; because of it {told}."
    )
    return Finding("sheets", "note", tuple(board.name for board in boards), text, thinner)


def _effects(cabinet: Cabinet, thinner: int, boards: list[Board]) -> list[Effect]:
    """What changes, by how much in all, and which way."""
    roles = [board.role for board in boards]
    inside = cabinet.project is not None and cabinet.project.size.by == "inside"
    more = thinner > 0
    found = []
    uprights = sum(role in UPRIGHTS for role in roles)
    if uprights and not inside:
        found.append(("the bays are together", uprights * thinner, "wider" if more else "narrower"))
    elif uprights:
        found.append(("the case is", 2 * thinner, "narrower" if more else "wider"))
        if uprights > 2:
            found.append(("the bays are together", (uprights - 2) * thinner, "wider" if more else "narrower"))
    levels = sum(role in ("top", "bottom") for role in roles) + ("stretcher" in roles)
    if levels and not inside:
        found.append(("the inside is", levels * thinner, "higher" if more else "lower"))
    elif levels:
        found.append(("the case is", levels * thinner, "lower" if more else "higher"))
    rows = {cabinet.slides[piece.row].holds for piece in cabinet.hardware if piece.what == "slide"}
    if "box side" in roles and "inside" not in rows:
        found.append(("each box is", 2 * thinner, "wider inside" if more else "narrower inside"))
    if "front" in roles and cabinet.project is not None and cabinet.project.fronts.kind == "inset":
        found.append(("the room behind the fronts is", thinner, "deeper" if more else "shallower"))
    return found
