"""What the page of the finger joint shows beside what every page of a joint has: two that went wrong."""

from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong


def loose() -> Figure:
    """Fingers narrower than their sockets."""
    return gone_wrong(
        "finger", "Fingers that rattle",
        "The pin of the jig stands too near the cutter: every socket is wider than its finger, and glue fills no such "
        "gap.",
        width={"in": "4 1/2 in", "mm": "108 mm"}, finger={"in": "1/2 in", "mm": "12 mm"},
        fit={"in": "1/64 in", "mm": "0.5 mm"},
    )


def too_few() -> Figure:
    """Three broad fingers."""
    return gone_wrong(
        "finger", "Three fingers are too few",
        "What holds is the glue between the cheeks of the fingers, and here there are two pairs of cheeks in all.",
        width={"in": "4 1/2 in", "mm": "108 mm"}, finger={"in": "1 1/2 in", "mm": "36 mm"},
    )
