"""What the page of groove and tongue shows beside what every page of a joint has: three that went wrong."""

from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong


def thin_lip() -> Figure:
    """A groove so near the edge that the wood below it splits off."""
    return gone_wrong(
        "groove", "A groove too near the edge",
        "The strip below the groove is too thin: the first heavy tool in the drawer pushes it off, bottom and all.",
        up={"in": "1/8 in", "mm": "3 mm"},
    )


def no_room() -> Figure:
    """A tongue as long as its dado is deep."""
    return gone_wrong(
        "tongue", "A tongue as long as the dado is deep",
        "Glue has nowhere to go, and a crumb under the tongue holds the shoulder open, however hard you clamp.",
        end_gap={"in": "0 in", "mm": "0 mm"},
    )


def weak_end() -> Figure:
    """A tongue so thick that hardly any wood is left beyond its dado."""
    return gone_wrong(
        "tongue", "A tongue that leaves no short grain to speak of",
        "The thicker the tongue, the less wood stands beyond the dado: here it comes away in the hand.",
        tongue={"in": "9/16 in", "mm": "14 mm"},
    )
