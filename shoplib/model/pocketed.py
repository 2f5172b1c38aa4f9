"""Pocket screws on a blank: its pockets, and the screws that go through them into the other board."""

from shoplib.measure import Style, largest_fitting, narrowest, share, thickest
from shoplib.model.blank import Blank, Outline
from shoplib.model.joinery import Fitting, axis_of, refuse
from shoplib.model.placement import directions
from shoplib.model.pocket import Pocket, pocket_places, pocket_shape, usual_pocket
from shoplib.model.screw_room import room_for_screw
from shoplib.model.solved import Hardware, Screw
from shoplib.model.wood_kept import missing_wood
from shoplib.tables.screws import ScrewRow, screws

POCKET = "pocket screws"
"""What the fitting is called; its row of the screw table is "pocket"."""


def drill_pockets(
    fitting: Fitting, enters: Blank, receives: Blank, face: int, style: Style, back_in_grooves: bool = False
) -> Hardware:
    """Mark the pockets of a butted end and give its screws, none where the other board is too thin for any sold.

    Pockets open on the face that is not seen: the inside of sides, the underside of what lies level, the rear of a
    rail or a box back, the front of a box front. Before a back that stands in grooves, no driver reaches the rear of a
    rail: its pockets open to the front. Raises ImpossibleProject where the board is too thin for them.
    """
    axis, sign = axis_of(fitting.joint.axis)
    thin = enters.thin_axis
    run = 3 - axis - thin
    thick, pocket = enters.sheet.thickness, usual_pocket(enters.sheet.thickness, style)
    shape = pocket_shape(thick, pocket)
    begin, end = _common(enters, receives, run)
    places = pocket_places(end - begin, style)
    for what, left, least in (
        (f"beside the pockets in the {enters.name}", shape.lower[1], 1),
        (f"over the pockets in the {enters.name}", thick - shape.upper[1], None),
        (f"beside the pockets at the edge of the {enters.name}", places[0] - share(pocket.wide + 1, 2, 1)[0], None),
        (f"between the pockets of the {enters.name}", places[1] - places[0] - pocket.wide, None),
    ):
        fault = missing_wood(what, left, style) if least is None else missing_wood(what, left, style, least)
        refuse(f"{fitting.key}.kind", fault and (f"{fault[0]}; choose a thicker sheet or another joint", fault[1]))
    low, high = enters.span(thin)
    up = directions(enters.axes)[2][1] > 0  # whether the face at w = 0 is the lower one in the cabinet
    from_low = up != (enters.role == "box front" or (enters.role == "rail" and back_in_grooves))
    for at in places:
        for kind, outline, size in (("pocket", shape.pocket, pocket.wide), ("shank hole", shape.shank, pocket.hole)):
            corners = []
            for along, above in outline:
                world = [0, 0, 0]
                world[axis] = face - sign * along
                world[thin] = low + above if from_low else high - above
                corners.append((world[(run + 1) % 3], world[(run + 2) % 3]))
            start = begin + at - share(size, 2, 1)[0]
            enters.outlines.append(Outline(kind, run, tuple(corners), start, start + size, receives.name))
    screw = _screw(receives, pocket, len(places), style)
    return Hardware(POCKET, enters.name, enters.group, receives.box, "", (screw,) if screw else ())


def _common(enters: Blank, receives: Blank, run: int) -> tuple[int, int]:
    """The stretch along which the two boards meet."""
    low = thickest([enters.low[run], receives.low[run]])
    return low, narrowest([enters.high[run], receives.high[run]])


def pocket_screw(web: int, into: int, style: Style) -> tuple[ScrewRow, int | None]:
    """The row of screws for pockets, and the longest of them that keeps the spare wood before its point.

    `web` is the wood before the pocket, `into` the board that holds the screw where it is thinnest. It is chosen as if
    it did not lean, so a little more stays; None where no screw is sold so short.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> pocket_screw(INCH * 11 // 32, INCH * 703 // 1000, INCH_STYLE)[1] == 3 * INCH // 4
    True
    """
    row = screws(style.unit)["pocket"]
    return row, largest_fitting(row.lengths, room_for_screw(web, into, row.spare))


def _screw(receives: Blank, pocket: Pocket, count: int, style: Style) -> Screw | None:
    row, length = pocket_screw(pocket.web, receives.sheet.thinnest, style)
    return None if length is None else Screw(row.gauge, length, receives.name, count)
