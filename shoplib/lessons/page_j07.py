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


def too_long() -> Figure:
    """Fingers that are left far too long."""
    return gone_wrong(
        "finger", "Fingers left too long",
        "A hair is planed off; so much is work for a saw, and the end grain breaks out at the last finger.",
        width={"in": "4 1/2 in", "mm": "108 mm"}, finger={"in": "1/2 in", "mm": "12 mm"},
        proud={"in": "1/16 in", "mm": "2 mm"},
    )
