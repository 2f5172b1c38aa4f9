"""Two small projects that the tests of lists share: a chest of drawers in inches, a case in millimetres."""

from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.project import (
    Back,
    Base,
    Bay,
    Carcass,
    Drawers,
    Edging,
    Fronts,
    JointChoice,
    Project,
    Shelves,
    Size,
)  # fmt: skip
from shoplib.model.sheet import Sheet

CASE = Sheet("case sheet", "plywood", 3 * INCH // 4, (INCH * 703 // 1000, INCH * 705 // 1000), 96 * INCH, 48 * INCH)
BOX = Sheet("box sheet", "plywood", INCH // 2, (), 60 * INCH, 60 * INCH)
THIN = Sheet("thin sheet", "plywood", INCH // 4, (), 60 * INCH, 60 * INCH, "none")


def chest(**changes) -> Project:
    """Four drawers in one bay, with overlay fronts and a back in a rabbet, in inches."""
    values = {
        "name": "Chest for spoke keys",
        "style": INCH_STYLE,
        "sheets": {sheet.name: sheet for sheet in (CASE, BOX, THIN)},
        "size": Size("outside", 20 * INCH, 30 * INCH, 22 * INCH),
        "carcass": Carcass("case sheet", corner=JointChoice("rabbet"), back=Back("rabbet", "thin sheet", INCH // 4)),
        "bays": (Bay("drawers", drawers=Drawers(4, box_sheet="box sheet", bottom_sheet="thin sheet")),),
        "fronts": Fronts("overlay", "case sheet"),
    }
    return Project(**(values | changes))


def stand(**changes) -> Project:
    """A case of two bays with shelves, edged in front, in millimetres."""
    sheet = Sheet("birch 18", "plywood", 18 * MM, (18 * MM, 18 * MM + MM // 5), 2440 * MM, 1220 * MM)
    values = {
        "name": "Stand for wheels",
        "style": MM_STYLE,
        "sheets": {sheet.name: sheet},
        "size": Size("outside", 900 * MM, 800 * MM, 500 * MM),
        "carcass": Carcass(
            sheet.name,
            corner=JointChoice("dado", 9 * MM),
            divider=JointChoice("dado", 6 * MM),
            shelf=JointChoice("dado", 6 * MM, stop=10 * MM),
        ),
        "bays": (Bay("shelves", shelves=Shelves(fixed=2)), Bay("shelves", shelves=Shelves(fixed=1))),
        "edging": (Edging("case", "band", MM),),
        "base": Base("none"),
    }
    return Project(**(values | changes))
