"""What the page of the drawer-front joint shows beside what every page of a joint has: three that went wrong."""

from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong


def thin_lip() -> Figure:
    """A lip that chips."""
    return gone_wrong(
        "drawer lock", "A lip too thin",
        "The lip is short grain, and everybody's hands are on it: so thin, its edge chips in the first week.",
        lip={"in": "1/8 in", "mm": "3 mm"},
    )


def short_end() -> Figure:
    """A slot so narrow that hardly any of the side stands before its dado."""
    return gone_wrong(
        "drawer lock", "An end too short",
        "The strip of the side before its dado is as short as the slot is narrow: it breaks off when the corner is "
        "knocked together dry.",
        groove={"in": "1/8 in", "mm": "3.5 mm"},
    )


def no_room() -> Figure:
    """A tongue as long as the dado is deep."""
    return gone_wrong(
        "drawer lock", "A tongue that bottoms",
        "No gap before the end of the tongue: glue has nowhere to go, and the inside of the corner stays open.",
        end_gap={"in": "0 in", "mm": "0 mm"},
    )
