"""What the dado's own page shows beside what every page of a joint has: two dadoes that went wrong."""

from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong


def loose() -> Figure:
    """A dado as wide as a set that was never tried."""
    return gone_wrong(
        "dado", "A dado too wide",
        "The stack was built to the name of the sheet. The shelf drops in and rocks; glue fills no such gap.",
        fit={"in": "0.04 in", "mm": "1 mm"},
    )


def too_deep() -> Figure:
    """A dado that leaves hardly any side."""
    return gone_wrong(
        "dado", "A dado too deep",
        "So little is left that the side breaks along the dado while it is carried.",
        depth={"in": "9/16 in", "mm": "14 mm"},
    )
