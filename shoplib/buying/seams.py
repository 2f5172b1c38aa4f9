"""The seams of boards that are glued up from staves: glue goes on them too."""

from shoplib.buying.laid import LaidOut


def seam_area(found: LaidOut) -> int:
    """One of the two faces of each seam, as long and as thick as the staves are rough (square ticks).

    A board has a seam fewer than staves. Common practice, no source: it is glued up before it is planed to thickness.
    """
    return sum(
        piece.placed.at.w * sheet.thickness for sheet in found.sheets for piece in sheet.pieces if piece.stave > 1
    )
