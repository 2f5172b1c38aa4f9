"""What the page on pocket screws shows beside what every page of a joint has: collar, screw, frame, two faults."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock
from shoplib.joints.pocket_screws import along_the_drill
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.lists.writing import Writing
from shoplib.measure import read_length
from shoplib.measure.traced import leaf
from shoplib.model.screw_room import room_for_screw
from shoplib.model.sheet import Sheet
from shoplib.model.slant import slanted

POCKETS = joint("pocket screws")

THICK = {"in": "0.703 in", "mm": "17.5 mm"}
THIN = {"in": "0.59 in", "mm": "14.8 mm"}
_GUIDE = {"in": "1 1/2 in", "mm": "40 mm"}
_SIDE = {"in": ("0.699 in", "1/8 in"), "mm": ("17.3 mm", "3 mm")}
_FRAME = {"in": ("30 in", "1 3/4 in"), "mm": ("760 mm", "45 mm")}


def _stock(thick: str, unit: str) -> Stock:
    measured = leaf(read_length(thick), "measured thickness", "measured")
    return Stock(Sheet("shelf", "plywood", measured), Sheet("side", "plywood", measured), style=Say(unit).style)


def collar_worked(unit: str, sheets: dict[str, str]) -> Worked:
    """The pocket in a sheet of that thickness, along the drill, and where its collar goes on a guide of one's own."""
    say, write, thick = Say(unit), Writing(Say(unit).style), sheets[unit]
    stock = _stock(thick, unit)
    usual = POCKETS.usual(stock)
    run = leaf(along_the_drill(stock, usual), "half the thickness over the sine of 15 degrees", "measured")
    web, guide = usual["web"], leaf(read_length(_GUIDE[unit]), "length of the guide")
    pocket = run - web
    lines = [
        ("from face to end, along the drill", f"half of {thick} / sin 15 degrees", write.measured(run)),
        ("web", "half the thickness, to a mark", say.length(web)),
        ("pocket", f"{write.measured(run)} - {say.length(web)}", write.measured(pocket)),
        ("collar behind the step", f"{_GUIDE[unit]} + {write.measured(pocket)}", write.measured(guide + pocket)),
    ]
    sizes = [(lines[0][0], run), ("web", web), ("pocket", pocket), (lines[3][0], guide + pocket)]
    return Worked(f"A pocket in a sheet that measures {thick}", lines, why_each(sizes, say.style))


def screw_worked(unit: str, sheets: dict[str, str]) -> Worked:
    """The longest screw from a pocket in a sheet of that thickness into a side, and how deep its point comes there."""
    say, write, thick, (thin, spare) = Say(unit), Writing(Say(unit).style), sheets[unit], _SIDE[unit]
    usual = POCKETS.usual(_stock(thick, unit))
    web = usual["web"]
    side = leaf(read_length(thin), "thinnest reading of the side", "measured")
    longest = room_for_screw(web, side, leaf(read_length(spare), "wood to stay before the point"))
    deep = leaf(slanted(longest - web, usual["angle"])[0], "reach times the cosine of 15 degrees", "measured")
    lines = [
        ("web", f"half of {thick}, to a mark", say.length(web)),
        ("longest screw", f"{say.length(web)} + {thin} - {spare}", write.measured(longest)),
        ("its reach past the end", f"{write.measured(longest)} - {say.length(web)}", write.measured(longest - web)),
        ("square to the side, so deep", f"{write.measured(longest - web)} x cos 15 degrees", write.measured(deep)),
    ]
    sizes = [("web", web), (lines[1][0], longest), (lines[2][0], longest - web), (lines[3][0], deep)]
    return Worked(f"Screws from a shelf that measures {thick}", lines, why_each(sizes, say.style))


def frame_worked(unit: str) -> Worked:
    """The rails of a face frame for a case of a given width."""
    say, (wide, narrow) = Say(unit), _FRAME[unit]
    stile = leaf(read_length(narrow), "width of a stile")
    rail = leaf(read_length(wide), "case width") - 2 * stile
    lines = [("rail, between the stiles", f"{wide} - 2 x {narrow}", say.length(rail))]
    return Worked(f"A face frame for a case {wide} wide", lines, why_each([(lines[0][0], rail)], say.style))


def little_web() -> Figure:
    """A pocket that was drilled too deep."""
    return gone_wrong(
        "pocket screws", "A pocket drilled too deep",
        "Hardly any wood stays before the head: it bursts as the screw is drawn tight, and the point may come through.",
        web={"in": "1/4 in", "mm": "6 mm"},
    )


def much_web() -> Figure:
    """A pocket that was drilled too shallow."""
    return gone_wrong(
        "pocket screws", "A pocket drilled too shallow",
        "So much wood stays before the head that the usual screw hardly reaches the side.",
        web={"in": "5/8 in", "mm": "16 mm"},
    )
