"""Of each kind of solid boards that a cabinet is cut from: how much wood it is, and what becomes of it."""

from shoplib.buying.board_measure import Wood
from shoplib.buying.laid import LaidOut, LaidSheet


def wood_used(found: LaidOut) -> dict[str, Wood]:
    """By the name of each solid sheet, the boards that parts are cut from, bought ones and those in the shop.

    They are counted as thick as they come, `rough_thickness` over the planed one. What one stage leaves and a later
    one cuts up is counted once.
    """
    solid = {sheet.sheet.name: sheet.thickness for sheet in found.sheets if sheet.sheet.kind == "solid"}
    return {
        name: _wood([sheet for sheet in found.sheets if sheet.sheet.name == name], thick)
        for name, thick in solid.items()
    }


def _wood(sheets: list[LaidSheet], thick: int) -> Wood:
    whole = sum(one.stock.length * one.stock.width for one in sheets if one.bought or not one.held.left_of)
    rough = sum(piece.placed.at.area for one in sheets for piece in one.pieces)
    kerf, trim = sum(one.sawn.kerf for one in sheets), sum(one.sawn.trim for one in sheets)
    finished = 0
    for board in {piece.board.name: piece.board for one in sheets for piece in one.pieces}.values():
        length, width, thickness = board.cut_size
        finished += length * width * thickness
    return Wood(finished, rough * thick - finished, kerf * thick, trim * thick, (whole - rough - kerf - trim) * thick)
